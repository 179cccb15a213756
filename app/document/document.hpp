#pragma once

#include "app/document/edit.hpp"
#include "app/document/store_link.hpp"
#include "model/species/species.hpp"

#include <QDateTime>
#include <QFileSystemWatcher>
#include <QObject>
#include <QTimer>
#include <QUndoStack>

namespace app {

/// Steps of history that are kept, in the window and in the garden's file.
inline constexpr int kHistorySteps = 1000;

/// The open garden: its value, its history, its file. Everything that changes the garden goes
/// through change(), so that it can be undone, and nothing that was drawn is ever dropped
/// without being asked about (isDirty()).
///
/// A garden file (docs/garden-file.md) takes in each step as it happens; a garden in JSON form is
/// written by save().
class Document final : public QObject {
    Q_OBJECT

public:
    /// \param tables  outlives the document
    explicit Document(const model::Tables& tables, QObject* parent = nullptr);
    ~Document() override;

    [[nodiscard]] const GardenSnapshot& garden() const { return garden_; }
    [[nodiscard]] QUndoStack& history() { return history_; }
    /// Something is shown that no file holds.
    [[nodiscard]] bool isDirty() const { return link_ ? unwritten_ : !history_.isClean(); }

    /// Where the garden was opened from or saved to; empty for an example or a new garden.
    [[nodiscard]] const QString& path() const { return path_; }
    /// What the window calls it: the file's name, or the garden's own.
    [[nodiscard]] QString name() const;
    /// The file takes in each edit by itself: there is nothing to save.
    [[nodiscard]] bool savesItself() const;
    /// Another window has the file open: here it is only shown.
    [[nodiscard]] bool isOnlyShown() const;
    /// What stands between the garden and its file, as a sentence fit to show; empty: nothing.
    [[nodiscard]] const QString& fileProblem() const { return fileProblem_; }

    /// Shows another garden, as one step called `name`. A garden that is no different makes no
    /// step. One that can't be reckoned with is refused: the reason comes back as a sentence
    /// and the old garden stays. \param gesture  see Edit; newGesture() gives a fresh number
    QString change(const QString& name, model::Garden after, int gesture = 0);
    [[nodiscard]] int newGesture() { return ++lastGesture_; }

    /// A photo that a change names, before that change; `name` as in model::Photo.
    void addPhoto(const std::string& name, const QByteArray& bytes);
    /// A photo as it came from the camera, or small; null when it can't be had.
    [[nodiscard]] QByteArray photo(const std::string& name) const;
    [[nodiscard]] QByteArray thumbnail(const std::string& name) const;

    /// Each of these gives back why it failed, as a sentence fit to show, or nothing. A failed
    /// open leaves the open garden as it is; a failed save leaves the file as it was. Saving as
    /// "….json" makes the JSON form, any other name a garden file.
    [[nodiscard]] QString open(const QString& path);
    [[nodiscard]] QString save();
    [[nodiscard]] QString saveAs(const QString& path);

    /// Opens a garden that has no file yet.
    void start(model::Garden garden);

    /// Writes what waits, such as the last bit of a drag. \returns whether all is in the file
    bool flush();

signals:
    void gardenChanged();      ///< another value is shown: after an edit, an undo, or opening
    void replaced();           ///< another garden was opened; gardenChanged() follows
    void fileChanged();        ///< path(), name(), isDirty(), savesItself() or isOnlyShown()
    void fileProblemChanged(); ///< also when the same problem came up again

private:
    void show(const GardenChange& change);
    void replace(GardenSnapshot garden, const QString& path, std::unique_ptr<StoreLink> link,
                 const StepHistory& history, const Edition& edition);
    void attach(const QString& path, std::unique_ptr<StoreLink> link, const Edition& edition);
    [[nodiscard]] QString problemOfAccess() const;
    [[nodiscard]] QString openStore(const QString& path);
    [[nodiscard]] QString openLinked(std::unique_ptr<StoreLink>& link);
    [[nodiscard]] QString openDocument(const QString& path);
    [[nodiscard]] QString openRecovered(const QString& path, const StoreError& error);
    [[nodiscard]] QString saveAsStore(const QString& path);
    [[nodiscard]] QString saveAsDocument(const QString& path);
    [[nodiscard]] std::vector<std::string> allPhotos() const;
    [[nodiscard]] QString writePhotosBeside(const QString& path);
    void stepTaken(int gesture);
    void setUnwritten(bool unwritten);
    void setFileProblem(const QString& problem);
    void lookAfterFile();
    void watch();
    [[nodiscard]] std::vector<const Edit*> edits() const;
    [[nodiscard]] StepHistory steps() const;

    const model::Tables& tables_;
    GardenSnapshot garden_;
    QUndoStack history_;
    QString path_;
    QDateTime fileTime_; ///< of a JSON file when it was last read or written here
    int lastGesture_{};
    std::int64_t lastStep_{};

    std::unique_ptr<StoreLink> link_; ///< to a garden file; none for the JSON form
    Photos newPhotos_;                ///< that no file holds yet, where there is no link
    QTimer waiting_;                  ///< a drag is written now and then, not at each move
    std::unique_ptr<QFileSystemWatcher> watcher_; ///< of a garden file; none without event loop
    QTimer looking_; ///< a disk that is taken away does not always tell the watcher
    QString fileProblem_;
    bool unwritten_{};
    bool pushing_{};   ///< change() looks after the file itself
    bool restoring_{}; ///< steps are put back that the garden has already
};

} // namespace app
