#include "app/document/document.hpp"

#include "app/document/file_sentences.hpp"
#include "app/document/photo_files.hpp"
#include "app/store/photo_rows.hpp"
#include "app/words/fault_place.hpp"
#include "app/words/fault_words.hpp"
#include "model/document/validate.hpp"

#include <QCoreApplication>
#include <QFileInfo>
#include <QScopedValueRollback>

namespace app {
namespace {

/// While a drag goes on its file is written this often at most.
constexpr int kDragWrite_ms = 250;
/// A garden's file is looked for this often.
constexpr int kLook_ms = 2000;

} // namespace

Document::Document(const model::Tables& tables, QObject* parent)
    : QObject(parent), tables_(tables), garden_(std::make_shared<const model::Garden>())
{
    history_.setUndoLimit(kHistorySteps);
    waiting_.setSingleShot(true);
    waiting_.setInterval(kDragWrite_ms);
    looking_.setInterval(kLook_ms);
    connect(&looking_, &QTimer::timeout, this, &Document::lookAfterFile);
    connect(&waiting_, &QTimer::timeout, this, &Document::flush);
    connect(&history_, &QUndoStack::cleanChanged, this, &Document::fileChanged);
    connect(&history_, &QUndoStack::indexChanged, this, [this] {
        if (!pushing_ && !restoring_)
            stepTaken(0);
    });
}

Document::~Document()
{
    history_.disconnect(this);
    flush();
}

QString Document::name() const
{
    if (!path_.isEmpty())
        return QFileInfo(path_).completeBaseName();
    return garden_->name.empty() ? tr("New garden") : QString::fromStdString(garden_->name);
}

bool Document::savesItself() const
{
    return link_ && link_->access() == StoreLink::Access::writable;
}

bool Document::isOnlyShown() const
{
    return link_ && link_->access() == StoreLink::Access::otherWindow;
}

QString Document::change(const QString& name, model::Garden after, int gesture)
{
    if (isOnlyShown())
        return openElsewhereSentence(path_);
    const auto faults = model::validate(after);
    if (!faults.empty())
        return refusedDrawing(faults.front(), after);
    if (after == *garden_)
        return {};
    Step step{++lastStep_, name.toStdString(), gesture, difference(*garden_, after)};
    {
        const QScopedValueRollback pushing(pushing_, true);
        history_.push(new Edit(std::move(step), Edit::Origin::here,
                               [this](const GardenChange& change) { show(change); }));
    }
    stepTaken(gesture);
    return {};
}

void Document::show(const GardenChange& change)
{
    if (restoring_)
        return;
    auto reading = applied(*garden_, change);
    if (reading.garden && !pushing_) // a step of an older program may not suit this one
        reading.faults = model::validate(*reading.garden);
    if (!reading.faults.empty())
        return setFileProblem(tr("This step can't be gone back to: it needs %1.")
                                  .arg(faultWords(reading.faults.front().expected)));
    garden_ = std::make_shared<const model::Garden>(std::move(*reading.garden));
    emit gardenChanged();
}

void Document::stepTaken(int gesture)
{
    if (!link_)
        return;
    setUnwritten(true);
    if (gesture == 0 || QCoreApplication::instance() == nullptr) // no event loop: no timer
        flush();
    else if (!waiting_.isActive())
        waiting_.start();
}

bool Document::flush()
{
    waiting_.stop();
    if (!link_ || !unwritten_)
        return !isDirty();
    if (!savesItself()) {
        setFileProblem(problemOfAccess());
        return false;
    }
    try {
        link_->write(garden_, edits(), static_cast<std::size_t>(history_.index()));
        setUnwritten(false);
        if (!fileProblem_.isEmpty())
            setFileProblem({});
        watch();
    } catch (const StoreError& error) {
        setFileProblem(notWrittenSentence(path_, error));
    }
    return !unwritten_;
}

void Document::setUnwritten(bool unwritten)
{
    if (unwritten == unwritten_)
        return;
    unwritten_ = unwritten;
    emit fileChanged();
}

void Document::setFileProblem(const QString& problem)
{
    fileProblem_ = problem;
    emit fileProblemChanged();
}

/// A file that is moved or whose disk is taken away is told at once, not at the next edit.
void Document::lookAfterFile()
{
    if (!savesItself() || QFileInfo::exists(path_))
        return watch();
    if (unwritten_) // it was told
        return;
    setUnwritten(true);
    setFileProblem(notWrittenSentence(path_, StoreError(StoreError::Kind::missing, "no file", "")));
}

void Document::watch()
{
    if (!savesItself() || QCoreApplication::instance() == nullptr || !QFileInfo::exists(path_))
        return;
    if (!watcher_) {
        watcher_ = std::make_unique<QFileSystemWatcher>();
        connect(watcher_.get(), &QFileSystemWatcher::fileChanged, this, &Document::lookAfterFile);
    }
    if (!watcher_->files().contains(path_))
        watcher_->addPath(path_);
    if (!looking_.isActive())
        looking_.start();
}

std::vector<const Edit*> Document::edits() const
{
    std::vector<const Edit*> edits;
    for (int i = 0; i < history_.count(); ++i)
        edits.push_back(static_cast<const Edit*>(history_.command(i)));
    return edits;
}

StepHistory Document::steps() const
{
    StepHistory history;
    for (const Edit* edit : edits())
        history.steps.push_back(edit->step());
    if (history_.index() > 0)
        history.done = history.steps[static_cast<std::size_t>(history_.index()) - 1].number;
    return history;
}

void Document::addPhoto(const std::string& name, const QByteArray& bytes)
{
    if (link_)
        link_->addPhoto(name, bytes);
    else
        newPhotos_[name] = bytes;
}

QByteArray Document::photo(const std::string& name) const
{
    const auto& waiting = link_ ? link_->waitingPhotos() : newPhotos_;
    if (const auto found = waiting.find(name); found != waiting.end())
        return found->second;
    if (!link_)
        return path_.isEmpty() ? QByteArray() : readPhotoFile(path_, name);
    try {
        return loadPhoto(path_, name);
    } catch (const StoreError&) {
        return {};
    }
}

QByteArray Document::thumbnail(const std::string& name) const
{
    try {
        if (link_ && !link_->waitingPhotos().contains(name))
            return loadThumbnail(path_, name);
    } catch (const StoreError&) {
        return {};
    }
    return smallPhoto(photo(name));
}

void Document::replace(GardenSnapshot garden, const QString& path, std::unique_ptr<StoreLink> link,
                       const StepHistory& history, const Edition& edition)
{
    const QScopedValueRollback restoring(restoring_, true);
    waiting_.stop();
    garden_ = std::move(garden);
    newPhotos_.clear();
    unwritten_ = false;
    history_.clear();
    int done = 0;
    for (const Step& step : history.steps) {
        history_.push(new Edit(step, Edit::Origin::file,
                               [this](const GardenChange& change) { show(change); }));
        lastStep_ = std::max(lastStep_, step.number);
        lastGesture_ = std::max(lastGesture_, step.gesture);
        done += step.number <= history.done ? 1 : 0;
    }
    history_.setIndex(done);
    attach(path, std::move(link), edition);
    fileProblem_ = problemOfAccess();
    emit replaced();
    emit gardenChanged();
    emit fileChanged();
    emit fileProblemChanged();
}

/// The garden shown is what this file holds.
void Document::attach(const QString& path, std::unique_ptr<StoreLink> link, const Edition& edition)
{
    path_ = path;
    link_ = std::move(link);
    fileTime_ = QFileInfo(path).lastModified();
    history_.setClean();
    if (link_)
        link_->holds(garden_, edition, edits(), static_cast<std::size_t>(history_.index()));
    watcher_.reset();
    looking_.stop();
    watch();
}

QString Document::problemOfAccess() const
{
    if (isOnlyShown())
        return openElsewhereSentence(path_);
    return link_ && !savesItself() ? readOnlySentence(path_) : QString();
}

void Document::start(model::Garden garden)
{
    flush();
    replace(std::make_shared<const model::Garden>(std::move(garden)), {}, nullptr, {}, {});
}

} // namespace app
