#pragma once

#include "app/view/cut_model.hpp"
#include "app/view/goals_view_model.hpp"
#include "app/view/trial_view_model.hpp"
#include "app/view/workspace.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace app {

/// The suggested work: the cuts in order, what they take of the leaf against what may go, who
/// should do them and why, and the cautions that stand under everything.
class WorkViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the page by the window")
    Q_PROPERTY(QString outcome READ outcome NOTIFY changed FINAL)
    Q_PROPERTY(app::Tone::Value outcomeTone READ outcomeTone NOTIFY changed FINAL)
    Q_PROPERTY(app::CutModel* cuts READ cuts CONSTANT FINAL)
    Q_PROPERTY(app::GoalsViewModel* goals READ goals CONSTANT FINAL)
    Q_PROPERTY(app::TrialViewModel* trial READ trial CONSTANT FINAL)
    Q_PROPERTY(double leafShare READ leafShare NOTIFY changed FINAL)
    Q_PROPERTY(double allowance READ allowance NOTIFY changed FINAL)
    Q_PROPERTY(QString leafText READ leafText NOTIFY changed FINAL)
    Q_PROPERTY(QStringList allowanceReasons READ allowanceReasons NOTIFY changed FINAL)
    Q_PROPERTY(QStringList notes READ notes NOTIFY changed FINAL)
    Q_PROPERTY(QStringList binding READ binding NOTIFY changed FINAL)
    Q_PROPERTY(QString proof READ proof NOTIFY changed FINAL)
    Q_PROPERTY(QString firstHold READ firstHold NOTIFY changed FINAL)
    Q_PROPERTY(QStringList otherHolds READ otherHolds NOTIFY changed FINAL)
    Q_PROPERTY(QString shoots READ shoots NOTIFY changed FINAL)
    Q_PROPERTY(QString who READ who NOTIFY changed FINAL)
    Q_PROPERTY(app::Tone::Value whoTone READ whoTone NOTIFY changed FINAL)
    Q_PROPERTY(QStringList whoReasons READ whoReasons NOTIFY changed FINAL)
    Q_PROPERTY(QStringList cautions READ cautions CONSTANT FINAL)
    Q_PROPERTY(QString cautionsInSight READ cautionsInSight CONSTANT FINAL)
    Q_PROPERTY(QString allCautions READ allCautions CONSTANT FINAL)
    Q_PROPERTY(bool isKnown READ isKnown NOTIFY changed FINAL)
    Q_PROPERTY(bool isCurrent READ isCurrent NOTIFY changed FINAL)

public:
    explicit WorkViewModel(Workspace& workspace, QObject* parent = nullptr);

    [[nodiscard]] QString outcome() const;
    [[nodiscard]] Tone::Value outcomeTone() const;
    [[nodiscard]] CutModel* cuts() { return &cuts_; }
    [[nodiscard]] GoalsViewModel* goals() { return &goals_; }
    [[nodiscard]] TrialViewModel* trial() { return &trial_; }
    [[nodiscard]] double leafShare() const; ///< 0 .. 1, all cuts together
    [[nodiscard]] double allowance() const; ///< 0 .. 1, what may go now
    [[nodiscard]] QString leafText() const;
    [[nodiscard]] QStringList allowanceReasons() const;
    [[nodiscard]] QStringList notes() const;   ///< what goes for all of the cuts
    [[nodiscard]] QStringList binding() const; ///< the rules that stand in the way
    [[nodiscard]] QString proof() const;       ///< how far the search got, in words
    [[nodiscard]] QString firstHold() const;   ///< of holds(); empty if there is none
    [[nodiscard]] QStringList otherHolds() const;
    [[nodiscard]] QStringList holds() const; ///< when each strip is lost again, the first first
    [[nodiscard]] QString shoots() const;    ///< how fast the shoots grow, and who says so
    [[nodiscard]] QString who() const;
    [[nodiscard]] Tone::Value whoTone() const;
    [[nodiscard]] QStringList whoReasons() const;
    [[nodiscard]] QStringList cautions() const;
    [[nodiscard]] QString cautionsInSight() const; ///< what stands under the answers at all times
    [[nodiscard]] QString allCautions() const;     ///< all of them, a line each
    [[nodiscard]] bool isKnown() const { return workspace_.treeAssessment() != nullptr; }
    [[nodiscard]] bool isCurrent() const { return workspace_.isCurrent(); }

    Q_INVOKABLE void choose(const QString& limb) { workspace_.chooseLimb(limb.toStdString()); }

signals:
    void changed();

private:
    void refresh();
    [[nodiscard]] const model::advice::Suggestion* suggestion() const;
    [[nodiscard]] QStringList worded(const std::vector<model::advice::Finding>& findings) const;

    Workspace& workspace_;
    CutModel cuts_;
    GoalsViewModel goals_;
    TrialViewModel trial_;
};

} // namespace app
