#pragma once

#include "app/view/photos_view_model.hpp"
#include "app/view/strip_model.hpp"
#include "app/view/tick_model.hpp"
#include "app/view/typed_visit.hpp"
#include "app/view/visit_cuts.hpp"
#include "app/view/workspace.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace app {

/// A visit being written: the plan's cuts to tick, or cuts by hand for an earlier one, and what was
/// measured. Texts are as a person types them, in the reader's units; save() reads them.
class VisitForm final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the diary")
    Q_PROPERTY(bool isOpen READ isOpen NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(app::TickModel* ticks READ ticks CONSTANT FINAL)
    Q_PROPERTY(app::StripModel* strips READ strips CONSTANT FINAL)
    Q_PROPERTY(QString date MEMBER date_ NOTIFY changed FINAL)
    Q_PROPERTY(QString by MEMBER by_ NOTIFY changed FINAL)
    Q_PROPERTY(QString leaf MEMBER leaf_ NOTIFY changed FINAL)
    Q_PROPERTY(QString leafHint READ leafHint NOTIFY changed FINAL)
    Q_PROPERTY(QString air MEMBER air_ NOTIFY changed FINAL)
    Q_PROPERTY(QString humidity MEMBER humidity_ NOTIFY changed FINAL)
    Q_PROPERTY(QString gust MEMBER gust_ NOTIFY changed FINAL)
    Q_PROPERTY(QString note MEMBER note_ NOTIFY changed FINAL)
    Q_PROPERTY(QString nextDue MEMBER nextDue_ NOTIFY changed FINAL)
    Q_PROPERTY(bool cutsSketch READ cutsSketch WRITE setCutsSketch NOTIFY changed FINAL)
    Q_PROPERTY(bool canCutSketch READ canCutSketch NOTIFY changed FINAL)
    Q_PROPERTY(QStringList freeCuts READ freeCuts NOTIFY changed FINAL)
    Q_PROPERTY(QStringList tips READ tips NOTIFY changed FINAL)
    Q_PROPERTY(QStringList photoFiles READ photoFiles NOTIFY changed FINAL)
    Q_PROPERTY(QStringList photoNotes READ photoNotes NOTIFY changed FINAL)
    Q_PROPERTY(QStringList cutKinds READ cutKinds CONSTANT FINAL)
    Q_PROPERTY(QStringList limbs READ limbs NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    /// \param photos  shows what is handed in here; outlives the form
    VisitForm(Workspace& workspace, PhotosViewModel& photos, QObject* parent = nullptr);

    [[nodiscard]] bool isOpen() const { return isOpen_; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] TickModel* ticks() { return &ticks_; }
    [[nodiscard]] StripModel* strips() { return &strips_; }
    [[nodiscard]] QString leafHint() const; ///< what stands if nothing is typed
    [[nodiscard]] bool cutsSketch() const { return cutsSketch_ && canCutSketch(); }
    void setCutsSketch(bool cuts);
    /// Some cut was made, and every one of them is of a limb that is drawn.
    [[nodiscard]] bool canCutSketch() const;
    [[nodiscard]] QStringList freeCuts() const; ///< as the diary will tell them
    [[nodiscard]] QStringList tips() const;     ///< the limbs whose tips are noted, in words
    [[nodiscard]] QStringList photoFiles() const;
    [[nodiscard]] QStringList photoNotes() const; ///< the words under each
    [[nodiscard]] QStringList cutKinds() const;
    [[nodiscard]] QStringList limbs() const; ///< names of the limbs drawn
    /// Why the visit can't be written, in a sentence; empty: nothing is wrong, as far as is known.
    [[nodiscard]] QString problem() const { return problem_; }

    /// Opens an empty form for the chosen tree, on the day asked about.
    Q_INVOKABLE void start();
    Q_INVOKABLE void close();
    /// \param kind   index into cutKinds()
    /// \param limb   a limb's name; one that is not drawn any more may be named too
    /// \param amount a length (shortened to, lifted to) or a share (thinned by); empty for a
    /// removal
    Q_INVOKABLE bool addCut(int kind, const QString& limb, const QString& amount);
    Q_INVOKABLE void removeCut(int index);
    /// Notes where the tip of a limb, a row of limbs(), is drawn: two visits with the same tip
    /// teach how fast this tree grows.
    Q_INVOKABLE void addTip(int limb);
    Q_INVOKABLE void removeTip(int index);
    /// Takes photos in, to be kept with the visit; false, with problem(), if one couldn't be.
    Q_INVOKABLE bool addPhotos(const QList<QUrl>& files);
    Q_INVOKABLE void setPhotoNote(int index, const QString& note);
    Q_INVOKABLE void removePhoto(int index);
    /// Writes the visit as one step that can be undone, and closes the form; false if something
    /// typed can't be read: then problem() says what.
    Q_INVOKABLE bool save();

signals:
    void changed();

private:
    void takePlan();
    void takeStrips();
    bool refuse(const QString& problem);

    Workspace& workspace_;
    PhotosViewModel& photos_;
    bool isOpen_{};
    std::string tree_;
    VisitCuts cuts_;
    std::vector<std::string> tips_; ///< ids of limbs
    std::vector<model::Photo> taken_;
    TickModel ticks_;
    StripModel strips_;
    QString date_;
    QString by_;
    QString leaf_;
    QString air_;
    QString humidity_;
    QString gust_;
    QString note_;
    QString nextDue_;
    bool cutsSketch_{true};
    QString problem_;
};

} // namespace app
