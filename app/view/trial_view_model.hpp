#pragma once

#include "app/assess/newest_wins.hpp"
#include "app/view/cut_model.hpp"
#include "app/view/fact_model.hpp"
#include "app/view/workspace.hpp"
#include "model/assessment/trial.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace app {

/// Cuts that the gardener tries out on the drawing before anybody picks up a saw: what falls, what
/// they do for headroom, loads and light, and which rule they break. They are no part of the
/// garden.
class TrialViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")
    Q_PROPERTY(QString chosenLimb READ chosenLimb NOTIFY chosenChanged FINAL)
    Q_PROPERTY(bool canRenew READ canRenew NOTIFY chosenChanged FINAL)
    Q_PROPERTY(bool canOpenMiddle READ canOpenMiddle NOTIFY changed FINAL)
    Q_PROPERTY(bool hasSuggested READ hasSuggested NOTIFY changed FINAL)
    Q_PROPERTY(int count READ count NOTIFY changed FINAL)
    Q_PROPERTY(QString headline READ headline NOTIFY changed FINAL)
    Q_PROPERTY(app::Tone::Value tone READ tone NOTIFY changed FINAL)
    Q_PROPERTY(app::CutModel* cuts READ cuts CONSTANT FINAL)
    Q_PROPERTY(app::FactModel* effects READ effects CONSTANT FINAL)
    Q_PROPERTY(double leafShare READ leafShare NOTIFY changed FINAL)
    Q_PROPERTY(double allowance READ allowance NOTIFY changed FINAL)
    Q_PROPERTY(QString leafText READ leafText NOTIFY changed FINAL)
    Q_PROPERTY(QStringList broken READ broken NOTIFY changed FINAL)
    Q_PROPERTY(QString who READ who NOTIFY changed FINAL)
    Q_PROPERTY(bool isBusy READ isBusy NOTIFY changed FINAL)

public:
    explicit TrialViewModel(Workspace& workspace, QObject* parent = nullptr);

    /// Name of the limb that takeChosenLimb() means; empty: none can be taken.
    [[nodiscard]] QString chosenLimb() const;
    [[nodiscard]] bool canRenew() const;      ///< the chosen limb is of a fruit tree, and leafy
    [[nodiscard]] bool canOpenMiddle() const; ///< upright limbs fill the middle of a fruit tree
    [[nodiscard]] bool hasSuggested() const;
    [[nodiscard]] int count() const { return static_cast<int>(wanted_.size()); }
    [[nodiscard]] QString headline() const { return headline_; }
    [[nodiscard]] Tone::Value tone() const { return tone_; }
    [[nodiscard]] CutModel* cuts() { return &cuts_; }
    [[nodiscard]] FactModel* effects() { return &effects_; } ///< before and after
    [[nodiscard]] double leafShare() const;                  ///< 0 .. 1, all tried cuts together
    [[nodiscard]] double allowance() const;
    [[nodiscard]] QString leafText() const;
    [[nodiscard]] QStringList broken() const { return broken_; } ///< rules, with what breaks them
    [[nodiscard]] QString who() const { return who_; }
    [[nodiscard]] bool isBusy() const { return worker_.isBusy(); }

    /// Tries these in place of what was tried before.
    void tryOut(std::vector<model::Cut> cuts);
    /// Tries the cut that a saw at this place means; one more at the same place takes it back.
    Q_INVOKABLE void sawAt(const QString& limb, double at_m);
    Q_INVOKABLE void takeChosenLimb();  ///< at its union
    Q_INVOKABLE void renewChosenLimb(); ///< by the most that is usual for the fruit
    Q_INVOKABLE void openMiddle();      ///< without the limbs that fill it
    Q_INVOKABLE void takeSuggested();   ///< starts from the suggested cuts
    Q_INVOKABLE void putBack(int row);  ///< of cuts()
    Q_INVOKABLE void clear();

signals:
    void changed();
    void chosenChanged();

private:
    void reckon();
    void take(const model::Trial& trial, const model::Garden& garden);
    void add(const model::Cut& cut);
    void onGarden();

    Workspace& workspace_;
    std::string tree_; ///< the cuts are on
    std::vector<model::Cut> wanted_;
    CutModel cuts_;
    FactModel effects_;
    QString headline_;
    Tone::Value tone_{Tone::Plain};
    QStringList broken_;
    QString who_;
    std::shared_ptr<const model::Trial> trial_;
    NewestWins worker_{std::chrono::milliseconds(0)}; ///< last, so that its thread ends first
};

} // namespace app
