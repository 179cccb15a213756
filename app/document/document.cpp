#include "app/document/document.hpp"

#include "app/document/garden_file.hpp"
#include "model/document/validate.hpp"

#include <QFileInfo>

namespace app {

Document::Document(const model::Tables& tables, QObject* parent)
    : QObject(parent), tables_(tables), garden_(std::make_shared<const model::Garden>())
{
    connect(&history_, &QUndoStack::cleanChanged, this, &Document::fileChanged);
}

QString Document::name() const
{
    if (!path_.isEmpty())
        return QFileInfo(path_).completeBaseName();
    return garden_->name.empty() ? tr("New garden") : QString::fromStdString(garden_->name);
}

QString Document::change(const QString& name, model::Garden after, int gesture)
{
    const auto faults = model::validate(after);
    if (!faults.empty())
        return tr("That can't be drawn: it needs %1.")
            .arg(QString::fromStdString(faults.front().expected));
    if (after == *garden_)
        return {};
    history_.push(new Edit(name, garden_, std::make_shared<const model::Garden>(std::move(after)),
                           gesture, [this](const GardenSnapshot& garden) { show(garden); }));
    return {};
}

QString Document::open(const QString& path)
{
    auto file = readGardenFile(path, tables_);
    if (file.garden)
        replace(std::move(*file.garden), path);
    return file.problem;
}

QString Document::save()
{
    const QFileInfo now(path_);
    if (now.exists() && now.lastModified() != fileTime_)
        return tr("%1 was changed by another program after it was opened here. Save your garden "
                  "under another name, so that neither is lost.")
            .arg(now.fileName());
    return write(path_);
}

QString Document::saveAs(const QString& path)
{
    return write(path);
}

void Document::start(model::Garden garden)
{
    replace(std::move(garden), {});
}

void Document::show(const GardenSnapshot& garden)
{
    garden_ = garden;
    emit gardenChanged();
}

void Document::replace(model::Garden garden, const QString& path)
{
    garden_ = std::make_shared<const model::Garden>(std::move(garden));
    path_ = path;
    fileTime_ = QFileInfo(path).lastModified();
    history_.clear();
    emit replaced();
    emit gardenChanged();
    emit fileChanged();
}

QString Document::write(const QString& path)
{
    const QString problem = writeGardenFile(path, *garden_);
    if (!problem.isEmpty())
        return problem;
    path_ = path;
    fileTime_ = QFileInfo(path).lastModified();
    history_.setClean();
    emit fileChanged();
    return {};
}

} // namespace app
