#pragma once

#include "app/view/steady_rows.hpp"

#include <QPointF>
#include <QtQml/qqmlregistration.h>

namespace app {

/// A handle on the plan.
struct PlanHandle {
    QString thing; ///< id
    int corner{};  ///< -1: the whole thing
    QPointF at;
    QString label;
    [[nodiscard]] bool sameThing(const PlanHandle& other) const
    {
        return thing == other.thing && corner == other.corner;
    }
    friend bool operator==(const PlanHandle&, const PlanHandle&) = default;
};

/// The handles on the plan: one for each corner of the chosen thing and one that moves it whole, or
/// one for each tree.
class PlanHandleModel : public SteadyRows<PlanHandle> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")

public:
    enum Role { X = Qt::UserRole + 1, Y, ThingId, Corner, IsWhole, Label };

    using Handle = PlanHandle;
    using SteadyRows::SteadyRows;

    void show(std::vector<Handle> handles) { showRows(std::move(handles)); }

    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

} // namespace app
