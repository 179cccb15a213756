#pragma once

#include <QString>

namespace app {

/// A file that is written beside another and takes its place when it is whole. Unless it does, it
/// is taken away again.
class NewFile {
public:
    /// \throws StoreError  when the folder is missing
    explicit NewFile(const QString& place);
    ~NewFile();
    NewFile(const NewFile&) = delete;
    NewFile& operator=(const NewFile&) = delete;

    [[nodiscard]] const QString& path() const { return path_; }
    /// Puts it in the other's place in one step, on the disk before it returns.
    /// \throws StoreError
    void takePlace();

private:
    QString place_;
    QString path_;
};

/// Copies a file to a name that is not taken, on the disk before it returns.
/// \throws StoreError
void copyFile(const QString& from, const QString& to);

} // namespace app
