#pragma once

#include "app/document/new_photo.hpp"
#include "app/view/workspace.hpp"

#include <QCache>
#include <QImage>
#include <QObject>
#include <QStringList>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace app {

/// The photos of the chosen tree and of the visits to it: taken in, looked at, told about, taken
/// away again. Each change is one step that can be undone. A photo is called by its file's name in
/// the garden, and belongs to a visit (its id) or to the tree itself (an empty one).
class PhotosViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the diary")
    Q_PROPERTY(QStringList treeFiles READ treeFiles NOTIFY changed FINAL)
    Q_PROPERTY(QStringList treeNotes READ treeNotes NOTIFY changed FINAL)
    Q_PROPERTY(bool canAdd READ canAdd NOTIFY changed FINAL)
    Q_PROPERTY(QStringList nameFilters READ nameFilters CONSTANT FINAL)
    Q_PROPERTY(bool isOpen READ isOpen NOTIFY shownChanged FINAL)
    Q_PROPERTY(QString file READ file NOTIFY shownChanged FINAL)
    Q_PROPERTY(QString note READ note NOTIFY shownChanged FINAL)
    Q_PROPERTY(QString title READ title NOTIFY shownChanged FINAL)
    Q_PROPERTY(int place READ place NOTIFY shownChanged FINAL)
    Q_PROPERTY(int count READ count NOTIFY shownChanged FINAL)

public:
    explicit PhotosViewModel(Workspace& workspace, QObject* parent = nullptr);

    [[nodiscard]] QStringList treeFiles() const;
    [[nodiscard]] QStringList treeNotes() const;
    [[nodiscard]] bool canAdd() const { return workspace_.tree() != nullptr; }
    [[nodiscard]] QStringList nameFilters() const; ///< of a dialog that chooses photos

    /// The photo that is looked at in large.
    [[nodiscard]] bool isOpen() const { return !file_.isEmpty(); }
    [[nodiscard]] const QString& file() const { return file_; }
    [[nodiscard]] QString note() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] int place() const; ///< among count(), from 0
    [[nodiscard]] int count() const;

    /// Takes files in; false if one couldn't be: then the garden's problem() says which, and why.
    Q_INVOKABLE bool add(const QString& visit, const QList<QUrl>& files);
    Q_INVOKABLE void show(const QString& visit, const QString& file);
    Q_INVOKABLE void step(int by); ///< to the next or the one before
    Q_INVOKABLE void close();
    Q_INVOKABLE void setNote(const QString& note); ///< of the photo that is shown
    Q_INVOKABLE void remove();                     ///< the photo that is shown

    /// Small, and as large as a window shows it; null when it can't be had.
    [[nodiscard]] QImage small(const QString& file) const;
    [[nodiscard]] QImage large(const QString& file) const;

    /// Photos of a visit that is still being written, for small() and large().
    void hold(const NewPhoto& photo);
    void release();
    [[nodiscard]] const Photos& held() const { return held_; }

signals:
    void changed();
    void shownChanged();

private:
    [[nodiscard]] const std::vector<model::Photo>* photosOf(const QString& visit) const;
    [[nodiscard]] const model::Photo* shown() const;
    [[nodiscard]] QByteArray bytesOf(const QString& file) const;
    void onTree();

    Workspace& workspace_;
    QString visit_; ///< that the shown photo belongs to
    QString file_;
    Photos held_;
    mutable QCache<QString, QImage> small_;
    mutable QCache<QString, QImage> large_;
};

} // namespace app
