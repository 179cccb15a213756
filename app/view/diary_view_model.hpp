#pragma once

#include "app/assess/diary_works.hpp"
#include "app/assess/newest_wins.hpp"
#include "app/view/due_model.hpp"
#include "app/view/fact_model.hpp"
#include "app/view/photos_view_model.hpp"
#include "app/view/visit_form.hpp"
#include "app/view/visit_model.hpp"
#include "app/view/workspace.hpp"
#include "app/words/wording.hpp"
#include "model/diary/record.hpp"

#include <QObject>
#include <QStringList>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include <algorithm>
#include <memory>

namespace app {

/// The diary page: what is due in the garden, and for the chosen tree its visits with the sketch
/// before and after, the leaf taken by season against the guideline, growth, and wounds.
class DiaryViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the page by the window")
    Q_PROPERTY(app::DueModel* due READ due CONSTANT FINAL)
    Q_PROPERTY(QString dueHeadline READ dueHeadline NOTIFY changed FINAL)
    Q_PROPERTY(app::Tone::Value dueTone READ dueTone NOTIFY changed FINAL)
    Q_PROPERTY(bool isBusy READ isBusy NOTIFY busyChanged FINAL)
    Q_PROPERTY(app::VisitModel* visits READ visits CONSTANT FINAL)
    Q_PROPERTY(bool hasPictures READ hasPictures NOTIFY changed FINAL)
    Q_PROPERTY(QString treeTitle READ treeTitle NOTIFY changed FINAL)
    Q_PROPERTY(QString nextDue READ nextDue NOTIFY changed FINAL)
    Q_PROPERTY(double taken READ taken NOTIFY changed FINAL)
    Q_PROPERTY(double guideline READ guideline NOTIFY changed FINAL)
    Q_PROPERTY(QString leafText READ leafText NOTIFY changed FINAL)
    Q_PROPERTY(QString allowanceText READ allowanceText NOTIFY changed FINAL)
    Q_PROPERTY(app::FactModel* seasons READ seasons CONSTANT FINAL)
    Q_PROPERTY(QStringList growth READ growth NOTIFY changed FINAL)
    Q_PROPERTY(QString shoots READ shoots NOTIFY changed FINAL)
    Q_PROPERTY(QStringList wounds READ wounds NOTIFY changed FINAL)
    Q_PROPERTY(QList<bool> woundsOpen READ woundsOpen NOTIFY changed FINAL)
    Q_PROPERTY(app::PhotosViewModel* photos READ photos CONSTANT FINAL)
    Q_PROPERTY(app::VisitForm* form READ form CONSTANT FINAL)
    Q_PROPERTY(QUrl suggestedCalendar READ suggestedCalendar NOTIFY changed FINAL)

public:
    DiaryViewModel(Workspace& workspace, DiaryWork work, QObject* parent = nullptr);

    [[nodiscard]] DueModel* due() { return &due_; }
    [[nodiscard]] QString dueHeadline() const;
    [[nodiscard]] Tone::Value dueTone() const;
    [[nodiscard]] bool isBusy() const { return worker_.isBusy(); }
    [[nodiscard]] VisitModel* visits() { return &visits_; }
    [[nodiscard]] bool hasPictures() const
    {
        return std::ranges::any_of(visits_.lines(), &VisitLine::hasPictures);
    }
    [[nodiscard]] QString treeTitle() const;
    [[nodiscard]] QString nextDue() const;       ///< of the chosen tree, in a sentence
    [[nodiscard]] double taken() const;          ///< in the season of the day, 0 .. 1
    [[nodiscard]] double guideline() const;      ///< what may go in a season
    [[nodiscard]] QString leafText() const;      ///< the season of the day in a sentence
    [[nodiscard]] QString allowanceText() const; ///< what may go now, counted as plans are
    [[nodiscard]] FactModel* seasons() { return &seasons_; }
    [[nodiscard]] QStringList growth() const;
    [[nodiscard]] QString shoots() const;
    [[nodiscard]] QStringList wounds() const;
    [[nodiscard]] QList<bool> woundsOpen() const; ///< of wounds(): may be noted as closed
    [[nodiscard]] PhotosViewModel* photos() { return &photos_; }
    [[nodiscard]] VisitForm* form() { return &form_; }
    [[nodiscard]] QUrl suggestedCalendar() const; ///< where the export starts

    /// The sketches of a row of visits(); null for none.
    [[nodiscard]] const model::diary::Sketches* sketchesOf(int row) const;
    /// The way the pictures of the chosen tree look.
    [[nodiscard]] double bearing_deg() const;

    /// Chooses a tree by its id.
    Q_INVOKABLE void chooseTree(const QString& tree);
    /// Chooses a tree and opens the form for a visit to it.
    Q_INVOKABLE void startVisit(const QString& tree);
    /// Notes that a wound, a row of wounds(), was seen closed on the day asked about; one step.
    Q_INVOKABLE void noteClosed(int row);
    /// Takes a visit out of the diary, by its id; one step. The sketch stays as it is.
    Q_INVOKABLE void removeVisit(const QString& visit);
    /// Writes the whole garden's reminders; false if that failed, and then the garden's problem()
    /// says why.
    Q_INVOKABLE bool exportCalendar(const QUrl& file);

signals:
    void changed();
    void busyChanged();

private:
    void ask();
    void take(const GardenSnapshot& garden, std::chrono::year_month_day date,
              std::vector<model::diary::TreeDiary> diaries);
    void refresh();
    void refreshDue();
    void refreshSeasons();
    /// The chosen tree's diary, and the tree as it stood then; null before the first answer.
    [[nodiscard]] const model::diary::TreeDiary* diary() const;
    [[nodiscard]] const model::Tree* treeOf(const std::string& id) const;
    [[nodiscard]] Wording wordingFor(const model::Tree& tree) const;
    [[nodiscard]] std::vector<model::diary::Due> dueList() const;

    Workspace& workspace_;
    DiaryWork work_;
    GardenSnapshot garden_; ///< that the diaries answer for
    std::chrono::year_month_day date_;
    std::vector<model::diary::TreeDiary> diaries_;
    std::vector<model::diary::Sketches> sketches_;
    DueModel due_;
    VisitModel visits_;
    FactModel seasons_;
    PhotosViewModel photos_;
    VisitForm form_;
    NewestWins worker_; ///< last, so that its thread ends first
};

} // namespace app
