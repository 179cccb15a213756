#pragma once

#include "app/document/edit.hpp"

#include <QLockFile>

#include <map>
#include <memory>

namespace app {

/// A garden file that is open here: what it holds, and whether it may be written.
class StoreLink {
public:
    enum class Access {
        writable,
        readOnly,    ///< the file, its folder or its disk can't be written
        otherWindow, ///< another window has it open; it alone may write
    };

    /// Takes hold of a file that is about to be read or written. Never waits.
    explicit StoreLink(const QString& path);

    [[nodiscard]] const QString& path() const { return path_; }
    [[nodiscard]] Access access() const { return access_; }

    /// Tells what the file holds now.
    void holds(const GardenSnapshot& garden, const Edition& edition,
               const std::vector<const Edit*>& edits, std::size_t done);
    /// Brings the file to what is shown, as one transaction; nothing when it is there already.
    /// \param edits   the whole history, oldest first; \param done  how many of them stand
    /// \throws StoreError  the file is as it was
    void write(const GardenSnapshot& garden, const std::vector<const Edit*>& edits,
               std::size_t done);
    /// Photos to go along with the next write.
    void addPhoto(const std::string& name, const QByteArray& bytes) { photos_[name] = bytes; }
    [[nodiscard]] const Photos& waitingPhotos() const { return photos_; }

private:
    [[nodiscard]] Record recordOf(const GardenSnapshot& garden,
                                  const std::vector<const Edit*>& edits, std::size_t done) const;

    QString path_;
    std::unique_ptr<QLockFile> lock_;
    Access access_{Access::writable};
    GardenSnapshot stored_;
    Edition edition_;
    std::map<std::int64_t, int> steps_; ///< number of each step in the file to its revision
    std::int64_t done_{};
    Photos photos_;
};

} // namespace app
