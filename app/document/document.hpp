#pragma once

#include "app/document/edit.hpp"
#include "model/species/species.hpp"

#include <QDateTime>
#include <QObject>
#include <QUndoStack>

namespace app {

/// The open garden: its value, its history, its file. Everything that changes the garden goes
/// through change(), so that it can be undone, and nothing that was drawn is ever dropped
/// without being asked about (isDirty()).
class Document final : public QObject {
    Q_OBJECT

public:
    /// \param tables  outlives the document
    explicit Document(const model::Tables& tables, QObject* parent = nullptr);

    [[nodiscard]] const GardenSnapshot& garden() const { return garden_; }
    [[nodiscard]] QUndoStack& history() { return history_; }
    [[nodiscard]] bool isDirty() const { return !history_.isClean(); }

    /// Where the garden was opened from or saved to; empty for an example or a new garden.
    [[nodiscard]] const QString& path() const { return path_; }
    /// What the window calls it: the file's name, or the garden's own.
    [[nodiscard]] QString name() const;

    /// Shows another garden, as one step called `name`. A garden that is no different makes no
    /// step. One that can't be reckoned with is refused: the reason comes back as a sentence
    /// and the old garden stays. \param gesture  see Edit; newGesture() gives a fresh number
    QString change(const QString& name, model::Garden after, int gesture = 0);
    [[nodiscard]] int newGesture() { return ++lastGesture_; }

    /// Each of these gives back why it failed, as a sentence fit to show, or nothing. A failed
    /// open leaves the open garden as it is; a failed save leaves the file as it was.
    [[nodiscard]] QString open(const QString& path);
    [[nodiscard]] QString save();
    [[nodiscard]] QString saveAs(const QString& path);

    /// Opens a garden that has no file yet.
    void start(model::Garden garden);

signals:
    void gardenChanged(); ///< another value is shown: after an edit, an undo, or opening
    void replaced();      ///< another garden was opened; gardenChanged() follows
    void fileChanged();   ///< path(), name() or isDirty()

private:
    void show(const GardenSnapshot& garden);
    void replace(model::Garden garden, const QString& path);
    [[nodiscard]] QString write(const QString& path);

    const model::Tables& tables_;
    GardenSnapshot garden_;
    QUndoStack history_;
    QString path_;
    QDateTime fileTime_; ///< of the file when it was last read or written here
    int lastGesture_{};
};

} // namespace app
