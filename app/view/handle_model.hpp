#pragma once

#include "app/drawing/side_frame.hpp"
#include "app/format/units.hpp"
#include "app/view/steady_rows.hpp"
#include "model/garden/tree.hpp"

#include <QPointF>
#include <QtQml/qqmlregistration.h>

namespace app {

/// A handle on the side view: a station of a limb.
struct SideHandle {
    QString limb; ///< id
    int station{};
    QPointF at;
    bool isEnd{};
    bool isChosen{};
    QString limbName;
    double height_m{}; ///< above the tree's base
    double diameter_m{};
    Measures measures{}; ///< in which its label is said
    [[nodiscard]] bool sameThing(const SideHandle& other) const
    {
        return limb == other.limb && station == other.station;
    }
    friend bool operator==(const SideHandle&, const SideHandle&) = default;
};

/// The handles on the side view: one for each station of each limb. Only limb ends and the
/// stations of the chosen limb are shown.
class HandleModel : public SteadyRows<SideHandle> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to a view-model")

public:
    enum Role {
        X = Qt::UserRole + 1,
        Y,
        LimbId,
        Station,
        IsEnd,
        IsUnion,
        IsChosen,
        IsShown,
        Label
    };

    using SteadyRows::SteadyRows;

    /// \param tree  null: no handles
    void show(const model::Tree* tree, const SideFrame& frame, const std::string& chosenLimb,
              const Units& units);

    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    // Said when it is asked for: most of a tree's hundreds of handles stay as they were.
    [[nodiscard]] QString label(const SideHandle& handle) const;

    QLocale locale_;
};

} // namespace app
