#pragma once

#include "app/view/fact_model.hpp"
#include "app/view/workspace.hpp"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace app {

/// What the gardener wants of the chosen tree besides headroom, and what became of each wish. Every
/// goal is part of the garden and can be undone.
class GoalsViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")
    Q_PROPERTY(app::FactModel* goals READ goals CONSTANT FINAL)
    Q_PROPERTY(bool canOpenMiddle READ canOpenMiddle NOTIFY changed FINAL)
    Q_PROPERTY(QStringList plantings READ plantings NOTIFY changed FINAL)
    Q_PROPERTY(bool hasTree READ hasTree NOTIFY changed FINAL)

public:
    explicit GoalsViewModel(Workspace& workspace, QObject* parent = nullptr);

    /// In the order of the tree; `figure` says what became of it.
    [[nodiscard]] FactModel* goals() { return &goals_; }
    /// Names of the plantings that can be given light, in the garden's order.
    [[nodiscard]] QStringList plantings() const;
    [[nodiscard]] bool hasTree() const { return workspace_.tree() != nullptr; }

    /// Each adds one goal as a step that can be undone; one about the same thing is replaced. What
    /// can't be read goes to the workspace's problem line, and nothing is changed.
    Q_INVOKABLE void keep(const QString& limb);
    Q_INVOKABLE void lose(const QString& limb);
    /// \param share  of a limb's expected strength, as typed: "80 %"; empty: 100 %
    Q_INVOKABLE bool relieve(const QString& share);
    /// \param hours  of sun a day, as typed; empty: what the plant needs at least
    Q_INVOKABLE bool light(int planting, const QString& hours);
    /// \param moles  a square metre and day, as typed; empty: what the plant needs at least
    Q_INVOKABLE bool lightForGrowth(int planting, const QString& moles);
    /// \param gust  that every limb is to bear, as typed: "90 km/h"
    Q_INVOKABLE bool bear(const QString& gust);
    Q_INVOKABLE bool takeAtMost(const QString& share);
    /// \param row  of goals()
    /// A fruit tree that isn't asked for it yet.
    [[nodiscard]] bool canOpenMiddle() const;
    Q_INVOKABLE void openMiddle();
    Q_INVOKABLE void remove(int row);

signals:
    void changed();

private:
    void refresh();
    bool put(const QString& name, model::Goal goal);
    bool refuse(const QString& found, const QString& expected);

    Workspace& workspace_;
    FactModel goals_;
};

} // namespace app
