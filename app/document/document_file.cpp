// How a document comes from its file and goes there; document.cpp is how it changes.
#include "app/document/document.hpp"

#include "app/document/file_sentences.hpp"
#include "app/document/garden_file.hpp"
#include "app/document/photo_files.hpp"
#include "app/store/photo_rows.hpp"
#include "app/store/recover_garden.hpp"
#include "app/store/schema.hpp"
#include "model/document/validate.hpp"

#include <QFileInfo>

#include <algorithm>

namespace app {
namespace {

GardenSnapshot snapshot(model::Garden garden)
{
    return std::make_shared<const model::Garden>(std::move(garden));
}

bool isSameFile(const QString& a, const QString& b)
{
    return !a.isEmpty() && QFileInfo(a).absoluteFilePath() == QFileInfo(b).absoluteFilePath();
}

} // namespace

QString Document::open(const QString& path)
{
    flush();
    return isGardenStore(path) ? openStore(path) : openDocument(path);
}

QString Document::openDocument(const QString& path)
{
    auto file = readGardenFile(path, tables_);
    if (file.garden)
        replace(snapshot(std::move(*file.garden)), path, nullptr, {}, {});
    return file.problem;
}

QString Document::openStore(const QString& path)
{
    // Its own lock would stand in the way of opening the same file again.
    auto link =
        link_ && isSameFile(path_, path) ? std::move(link_) : std::make_unique<StoreLink>(path);
    const bool was = path_ == link->path();
    QString problem;
    try {
        problem = openLinked(link);
    } catch (const StoreError& error) {
        problem = notReadSentence(path, error.faults());
    }
    if (was && link && !link_)
        link_ = std::move(link);
    return problem;
}

QString Document::openLinked(std::unique_ptr<StoreLink>& link)
{
    const QString path = link->path();
    const bool writable = link->access() == StoreLink::Access::writable;
    try {
        StoredGarden stored = loadGarden(path);
        if (const auto faults = model::unknownNames(stored.garden, tables_); !faults.empty())
            return notReadSentence(path, faults);
        const QString copy = writable ? raiseGarden(path) : QString();
        if (link->access() == StoreLink::Access::otherWindow)
            stored.history = {};
        replace(snapshot(std::move(stored.garden)), path, std::move(link), stored.history,
                stored.edition);
        if (!copy.isEmpty())
            setFileProblem(raisedSentence(path, copy));
        return {};
    } catch (const StoreError& error) {
        if (error.kind() != StoreError::Kind::damaged || !writable)
            throw;
        link.reset();
        return openRecovered(path, error);
    }
}

QString Document::openRecovered(const QString& path, const StoreError& error)
{
    const QString to = recoveredName(path);
    Recovery recovery;
    try {
        recovery = recoverGarden(path, to);
    } catch (const StoreError&) {
        return notReadSentence(path, error.faults());
    }
    const QString problem = openStore(to);
    if (problem.isEmpty())
        setFileProblem(recoveredSentence(path, to, recovery));
    return problem;
}

QString Document::save()
{
    if (link_) {
        if (!isDirty() || flush())
            return {};
        return fileProblem_;
    }
    const QFileInfo now(path_);
    if (now.exists() && now.lastModified() != fileTime_)
        return tr("%1 was changed by another program after it was opened here. Save your garden "
                  "under another name, so that neither is lost.")
            .arg(now.fileName());
    return saveAsDocument(path_);
}

QString Document::saveAs(const QString& path)
{
    if (link_ && savesItself() && isSameFile(path_, path))
        return save();
    const bool isJson = path.endsWith(QLatin1String(".json"), Qt::CaseInsensitive);
    return isJson ? saveAsDocument(path) : saveAsStore(path);
}

QString Document::saveAsDocument(const QString& path)
{
    QString problem; // photos first: no garden names one that isn't there
    if (!isSameFile(path, path_))
        problem = writePhotosBeside(path);
    else
        for (const auto& [name, bytes] : newPhotos_)
            if (problem.isEmpty())
                problem = writePhotoFile(path, name, bytes);
    if (problem.isEmpty())
        problem = writeGardenFile(path, *garden_);
    if (!problem.isEmpty())
        return problem;
    newPhotos_.clear();
    unwritten_ = false;
    fileProblem_.clear();
    attach(path, nullptr, {});
    emit fileChanged();
    emit fileProblemChanged();
    return {};
}

QString Document::writePhotosBeside(const QString& path)
{
    for (const auto& name : photosOf(*garden_)) {
        const QByteArray bytes = photo(name);
        const QString problem = bytes.isNull() ? QString() : writePhotoFile(path, name, bytes);
        if (!problem.isEmpty())
            return problem;
    }
    return {};
}

std::vector<std::string> Document::allPhotos() const
{
    auto names = photosOf(*garden_);
    const auto& waiting = link_ ? link_->waitingPhotos() : newPhotos_;
    for (const auto& [name, bytes] : waiting)
        names.push_back(name);
    try {
        if (link_)
            for (auto& name : photoNames(path_))
                names.push_back(std::move(name));
    } catch (const StoreError&) {
        // the old file is out of reach: what it alone holds can't come along
    }
    std::ranges::sort(names);
    names.erase(std::unique(names.begin(), names.end()), names.end());
    return names;
}

QString Document::saveAsStore(const QString& path)
{
    auto link = std::make_unique<StoreLink>(path);
    if (link->access() == StoreLink::Access::otherWindow)
        return openElsewhereSentence(path);
    int missing = 0;
    Edition edition;
    try {
        edition = writeGardenStore(path, *garden_, steps(), allPhotos(), [&](const auto& name) {
            QByteArray bytes = photo(name);
            missing += bytes.isNull() ? 1 : 0;
            return bytes;
        });
    } catch (const StoreError& error) {
        return notWrittenSentence(path, error);
    }
    newPhotos_.clear();
    unwritten_ = false;
    fileProblem_ = missing == 0 ? QString() : withoutPhotosSentence(path, missing);
    attach(path, std::move(link), edition);
    emit fileChanged();
    emit fileProblemChanged();
    return {};
}

} // namespace app
