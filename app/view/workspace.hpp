#pragma once

#include "app/assess/assessor.hpp"
#include "app/document/document.hpp"
#include "app/format/units.hpp"
#include "model/assessment/trial.hpp"

#include <QObject>

#include <optional>

namespace app {

/// What all pages share: the open garden, the tree chosen in it, what is asked about it, and the
/// newest answers. Pages change it through verbs and listen to its signals; it words nothing.
class Workspace final : public QObject {
    Q_OBJECT

public:
    /// \param tables  outlives the workspace
    Workspace(const model::Tables& tables, Units units, Works works,
              std::chrono::year_month_day today, QObject* parent = nullptr);

    [[nodiscard]] Document& document() { return document_; }
    [[nodiscard]] const Document& document() const { return document_; }
    [[nodiscard]] const model::Tables& tables() const { return tables_; }
    [[nodiscard]] const Units& units() const { return units_; }
    /// Everything is read and typed in these from now on.
    void setMeasures(Measures measures);
    [[nodiscard]] const model::Garden& garden() const { return *document_.garden(); }

    /// The chosen tree as the gardener drew it; null in a garden without trees.
    [[nodiscard]] const model::Tree* tree() const;
    [[nodiscard]] const model::Species* species() const;
    void chooseTree(const std::string& id);

    /// The chosen limb; null when none is.
    [[nodiscard]] const model::Limb* limb() const;
    [[nodiscard]] const std::string& limbId() const { return limb_; }
    void chooseLimb(const std::string& id);

    [[nodiscard]] double gust_m_s() const;
    void setGust_m_s(double gust_m_s);
    [[nodiscard]] std::chrono::year_month_day date() const { return date_; }
    void setDate(std::chrono::year_month_day date);
    /// The hour by the clock of the garden's place, 0 .. 24; sun time where it names no time zone.
    [[nodiscard]] double hour() const { return hour_; }
    void setHour(double hour);
    [[nodiscard]] model::light::Instant instant() const;

    /// Whether the pages show the tree as it stands or after the suggested cuts.
    [[nodiscard]] bool showsAfter() const { return showsAfter_; }
    void setShowsAfter(bool after);

    /// The newest answers; null before the first. They may answer an older ask: see isCurrent().
    [[nodiscard]] const QuickAnswer* quick() const { return quick_.get(); }
    [[nodiscard]] const ShadowAnswer* shadow() const { return shadow_.get(); }
    [[nodiscard]] const model::Assessment* assessment() const { return full_.get(); }
    [[nodiscard]] const model::TreeAssessment* treeAssessment() const;
    /// The tree that quick() answers for, as it stood then; null before the first answer.
    [[nodiscard]] const model::Tree* quickTree() const;
    /// The garden and the tree that treeAssessment() answers for; null while that is.
    [[nodiscard]] const model::Garden* assessedGarden() const;
    [[nodiscard]] const model::Tree* assessedTree() const;
    /// The full assessment answers exactly what is shown now.
    [[nodiscard]] bool isCurrent() const;
    [[nodiscard]] bool isBusy() const { return assessor_.isBusy(); }
    /// Cuts, light and ranges are being worked out for what is shown now.
    [[nodiscard]] bool isAssessing() const { return assessor_.isAssessing() && !isCurrent(); }
    /// Gives that up; what is answered under the hand goes on being answered. It is taken up again
    /// by goOn(), and with the next change.
    void stop();
    void goOn();
    /// It was given up, and nothing has changed since.
    [[nodiscard]] bool isStopped() const { return isStopped_ && !isCurrent(); }

    /// Load on a limb of the chosen tree as it stands, by the quick answer; null: not known.
    [[nodiscard]] const model::load::LimbLoad* load(const std::string& limb) const;
    /// The same after the suggested cuts; null: not known, or the limb is gone.
    [[nodiscard]] const model::load::LimbLoad* loadAfter(const std::string& limb) const;
    /// The chosen tree after the suggested cuts, or after those that are tried out while any are;
    /// blank: not known, or nothing to cut.
    [[nodiscard]] const std::optional<model::Tree>& treeAfter() const
    {
        return trial_ ? trialTree_ : treeAfter_;
    }
    /// The cuts that treeAfter() has: those tried out, else those suggested; null: not known.
    [[nodiscard]] const std::vector<model::advice::PlannedCut>* shownCuts() const;

    /// What is tried out on the chosen tree as it stands; null: nothing.
    [[nodiscard]] const model::Trial* trial() const { return trial_.get(); }
    void setTrial(std::shared_ptr<const model::Trial> trial);

    /// Replaces the chosen tree as one named step; a refusal becomes problem().
    /// \returns false if it was refused
    bool changeTree(const QString& name, model::Tree after, int gesture = 0);

    /// What went wrong last, as a sentence; else what stands between the garden and its file until
    /// it is dismissed. Empty: nothing.
    [[nodiscard]] const QString& problem() const
    {
        return problem_.isEmpty() ? fileProblem_ : problem_;
    }
    void say(const QString& problem);
    void dismissProblem();

signals:
    void treeChanged(); ///< another tree, or the same with other limbs
    void limbChosen();
    void askChanged();   ///< gust, date or hour
    void unitsChanged(); ///< other measures; all the other signals follow
    void quickChanged();
    void shadowChanged();
    void fullChanged(); ///< a new full assessment, or it has become old
    void showsAfterChanged();
    void busyChanged();
    void problemChanged();

private:
    void ask();
    void forget();
    void onReplaced();
    void onGarden();
    void takeFull(const Ask& ask, const std::shared_ptr<const model::Assessment>& assessment);

    const model::Tables& tables_;
    Units units_;
    Document document_;
    std::string tree_;
    std::string limb_;
    std::chrono::year_month_day date_;
    double hour_{14.0};
    std::optional<double> gust_m_s_; ///< blank: the garden's own
    bool showsAfter_{};
    bool isStopped_{};
    QString problem_;
    QString fileProblem_; ///< as the document has it; empty once dismissed

    std::shared_ptr<const QuickAnswer> quick_;
    Ask quickAsk_;
    std::shared_ptr<const ShadowAnswer> shadow_;
    std::shared_ptr<const model::Assessment> full_;
    Ask fullAsk_;
    std::optional<model::Tree> treeAfter_;
    std::shared_ptr<const model::Trial> trial_;
    std::optional<model::Tree> trialTree_;
    Assessor assessor_; ///< last, so that its thread ends first
};

} // namespace app
