#pragma once

#include "app/view/plan_handle_model.hpp"
#include "app/view/side_view_model.hpp"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <optional>

namespace app {

/// The handles by which the chosen limb is made thicker and its leafy part longer, wider and
/// hanging lower, on the side view. In the handles' model a corner is a Part. A drag and a run of
/// nudges of one handle undo in one step each.
class LimbShapeViewModel final : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("handed to the page by the window")
    Q_PROPERTY(app::PlanHandleModel* handles READ handles CONSTANT FINAL)

public:
    enum Part {
        Thickness, ///< of the wood at the union
        LeafStart, ///< where along the limb leaves start
        LeafWidth, ///< radius of the leafy body
        Hanging,   ///< length of the hanging shoots
    };
    Q_ENUM(Part)

    LimbShapeViewModel(Workspace& workspace, SideViewModel& side, QObject* parent = nullptr);

    [[nodiscard]] PlanHandleModel* handles() { return &handles_; }

    Q_INVOKABLE void grab(int part);
    Q_INVOKABLE void dragTo(double x, double y);
    Q_INVOKABLE void drop();
    /// More (over 0) or less by whole steps of the reader's small length, a tenth of it for
    /// thickness.
    Q_INVOKABLE void nudge(int part, int steps);

private:
    void refresh();
    [[nodiscard]] bool has(Part part) const;
    [[nodiscard]] QPointF at(Part part) const;
    [[nodiscard]] double value_m(Part part) const;
    [[nodiscard]] double valueUnder(Part part, QPointF hand) const;
    void set(Part part, double value_m, int gesture);

    Workspace& workspace_;
    SideViewModel& side_;
    PlanHandleModel handles_;
    struct Held {
        Part part{};
        std::string limb;
        int gesture{};
    };
    std::optional<Held> held_;
    std::optional<Held> nudged_;
};

} // namespace app
