#include "app/document/store_link.hpp"

#include <QFileInfo>

namespace app {
namespace {

std::unique_ptr<QLockFile> lockOf(const QString& path)
{
    auto lock = std::make_unique<QLockFile>(path + QStringLiteral(".lock"));
    lock->setStaleLockTime(
        0); // however long it is open; a crashed program's lock is told by its id
    return lock;
}

/// The number of the last step that stands.
std::int64_t numberOf(const std::vector<const Edit*>& edits, std::size_t done)
{
    return done == 0 ? 0 : edits[done - 1]->step().number;
}

/// A commit can be on the disk although its last breath failed: the file then says so.
bool isAt(const QString& path, const Edition& edition)
{
    try {
        return editionOf(path) == edition;
    } catch (const StoreError&) {
        return false;
    }
}

bool isEmpty(const Record& record, std::int64_t done)
{
    return record.change.empty() && record.dropped.empty() && record.written.empty() &&
           record.photos.empty() && record.done == done;
}

} // namespace

StoreLink::StoreLink(const QString& path)
    : path_(QFileInfo(path).absoluteFilePath()), lock_(lockOf(path_))
{
    const QFileInfo file(path_);
    if (!lock_->tryLock(0))
        access_ =
            lock_->error() == QLockFile::LockFailedError ? Access::otherWindow : Access::readOnly;
    else if (file.exists() && !file.isWritable())
        access_ = Access::readOnly;
}

void StoreLink::holds(const GardenSnapshot& garden, const Edition& edition,
                      const std::vector<const Edit*>& edits, std::size_t done)
{
    stored_ = garden;
    edition_ = edition;
    steps_.clear();
    for (const Edit* edit : edits)
        steps_[edit->step().number] = edit->revision();
    done_ = numberOf(edits, done);
    photos_.clear();
}

Record StoreLink::recordOf(const GardenSnapshot& garden, const std::vector<const Edit*>& edits,
                           std::size_t done) const
{
    Record record;
    if (garden != stored_)
        record.change = difference(*stored_, *garden);
    auto left = steps_;
    for (const Edit* edit : edits) {
        const auto found = left.find(edit->step().number);
        if (found == left.end() || found->second != edit->revision())
            record.written.push_back(edit->step());
        if (found != left.end())
            left.erase(found);
    }
    for (const auto& [number, revision] : left)
        record.dropped.push_back(number);
    record.done = numberOf(edits, done);
    record.photos = photos_;
    return record;
}

void StoreLink::write(const GardenSnapshot& garden, const std::vector<const Edit*>& edits,
                      std::size_t done)
{
    const Record record = recordOf(garden, edits, done);
    Edition edition = edition_;
    if (!isEmpty(record, done_)) {
        ++edition.count;
        try {
            edition = recordEdit(path_, edition_, record);
        } catch (const StoreError&) {
            if (!isAt(path_, edition))
                throw;
        }
    }
    holds(garden, edition, edits, done);
}

} // namespace app
