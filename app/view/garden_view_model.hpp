#pragma once

#include "app/view/workspace.hpp"

#include <QObject>
#include <QStringList>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace app {

/// A garden that comes with the program.
struct Example {
    QString name;
    QString path;
};

/// The frame around the pages: the open garden's file, its history, its trees, and what went wrong.
class GardenViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the window")
    Q_PROPERTY(QString title READ title NOTIFY fileChanged FINAL)
    Q_PROPERTY(QString gardenName READ gardenName NOTIFY fileChanged FINAL)
    Q_PROPERTY(bool isDirty READ isDirty NOTIFY fileChanged FINAL)
    Q_PROPERTY(bool hasFile READ hasFile NOTIFY fileChanged FINAL)
    Q_PROPERTY(bool savesItself READ savesItself NOTIFY fileChanged FINAL)
    Q_PROPERTY(bool isOnlyShown READ isOnlyShown NOTIFY fileChanged FINAL)
    Q_PROPERTY(QString saveState READ saveState NOTIFY fileChanged FINAL)
    Q_PROPERTY(QUrl suggestedFile READ suggestedFile NOTIFY fileChanged FINAL)
    Q_PROPERTY(QString undoName READ undoName NOTIFY historyChanged FINAL)
    Q_PROPERTY(QString redoName READ redoName NOTIFY historyChanged FINAL)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY historyChanged FINAL)
    Q_PROPERTY(bool canRedo READ canRedo NOTIFY historyChanged FINAL)
    Q_PROPERTY(QStringList trees READ trees NOTIFY treesChanged FINAL)
    Q_PROPERTY(int treeIndex READ treeIndex NOTIFY treesChanged FINAL)
    Q_PROPERTY(QString treeFacts READ treeFacts NOTIFY treesChanged FINAL)
    Q_PROPERTY(QStringList examples READ examples CONSTANT FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged FINAL)
    Q_PROPERTY(bool isBusy READ isBusy NOTIFY busyChanged FINAL)

public:
    GardenViewModel(Workspace& workspace, std::vector<Example> examples, QObject* parent = nullptr);

    [[nodiscard]] QString title() const; ///< with the [*] mark already put in
    [[nodiscard]] QString gardenName() const;
    [[nodiscard]] bool isDirty() const { return workspace_.document().isDirty(); }
    [[nodiscard]] bool hasFile() const { return !workspace_.document().path().isEmpty(); }
    /// Each edit goes into the file by itself.
    [[nodiscard]] bool savesItself() const { return workspace_.document().savesItself(); }
    /// Another window has it open.
    [[nodiscard]] bool isOnlyShown() const { return workspace_.document().isOnlyShown(); }
    [[nodiscard]] QString saveState() const;  ///< whether it is saved, in a word or two
    [[nodiscard]] QUrl suggestedFile() const; ///< where "save as" starts
    [[nodiscard]] QString undoName() const;
    [[nodiscard]] QString redoName() const;
    [[nodiscard]] bool canUndo() const;
    [[nodiscard]] bool canRedo() const;
    [[nodiscard]] QStringList trees() const;
    [[nodiscard]] int treeIndex() const;
    [[nodiscard]] QString treeFacts() const; ///< species, height, girth in words
    [[nodiscard]] QStringList examples() const;
    [[nodiscard]] QString problem() const { return workspace_.problem(); }
    [[nodiscard]] bool isBusy() const { return workspace_.isBusy(); }

    /// Each gives back whether it worked; if not, problem() says why.
    Q_INVOKABLE bool open(const QUrl& file);
    Q_INVOKABLE bool openExample(int index);
    /// Writes what a drag has not written yet, before isDirty is asked about.
    Q_INVOKABLE void settle() { workspace_.document().flush(); }
    Q_INVOKABLE bool save();
    Q_INVOKABLE bool saveAs(const QUrl& file);
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    Q_INVOKABLE void chooseTree(int index);
    Q_INVOKABLE void dismissProblem() { workspace_.dismissProblem(); }

signals:
    void fileChanged();
    void historyChanged();
    void treesChanged();
    void problemChanged();
    void busyChanged();

private:
    bool worked(const QString& problem);

    Workspace& workspace_;
    std::vector<Example> examples_;
};

} // namespace app
