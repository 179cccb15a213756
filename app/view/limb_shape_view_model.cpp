#include "app/view/limb_shape_view_model.hpp"

#include "app/view/limb_title.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

constexpr double kOffBark = 16.0; // pixels from the bark to the handle of thickness
constexpr double kOffHem = 12.0; // pixels below the shoots, so that short ones can be taken hold of
constexpr double kThinnest_m = 0.004;
constexpr double kLeastLeaf_m = 0.05;
constexpr double kLeastLeafy_m = 0.05; // along the limb

double step_m(const Units& units, LimbShapeViewModel::Part part)
{
    const double step = units.measures() == Measures::unitedStates ? 0.0508 : 0.05;
    return part == LimbShapeViewModel::Thickness ? step / 10.0 : step;
}

/// Where along a limb its leafy body is widest drawn: the middle of the leafy part.
double leafMiddle_m(const model::Limb& limb)
{
    return (limb.foliage->from_m + model::length_m(limb)) / 2.0;
}

} // namespace

LimbShapeViewModel::LimbShapeViewModel(Workspace& workspace, SideViewModel& side, QObject* parent)
    : QObject(parent), workspace_(workspace), side_(side)
{
    connect(&side_, &SideViewModel::sceneChanged, this, &LimbShapeViewModel::refresh);
    connect(&workspace_, &Workspace::limbChosen, this, [this] {
        nudged_.reset();
        refresh();
    });
}

bool LimbShapeViewModel::has(Part part) const
{
    const auto* limb = workspace_.limb();
    return limb && !workspace_.showsAfter() && (part == Thickness || limb->foliage);
}

double LimbShapeViewModel::value_m(Part part) const
{
    const auto& limb = *workspace_.limb();
    switch (part) {
    case Thickness:
        return limb.stations.front().diameter_m;
    case LeafStart:
        return limb.foliage->from_m;
    case LeafWidth:
        return limb.foliage->radius_m;
    case Hanging:
        break;
    }
    return limb.foliage->hanging_m;
}

QPointF LimbShapeViewModel::at(Part part) const
{
    const auto& limb = *workspace_.limb();
    const auto& frame = side_.frame();
    const double scale = frame.pixelsPerMetre;
    switch (part) {
    case Thickness: {
        const auto axis = model::axisPoint(limb, 0.15 * model::length_m(limb));
        const QPointF out =
            frame.toCanvas(axis.position_m + axis.direction) - frame.toCanvas(axis.position_m);
        const double length = std::max(1e-6, std::hypot(out.x(), out.y()));
        return frame.toCanvas(axis.position_m) +
               (value_m(part) / 2.0 * scale + kOffBark) * QPointF(-out.y(), out.x()) / length;
    }
    case LeafStart:
        return frame.toCanvas(model::axisPoint(limb, value_m(part)).position_m);
    case LeafWidth:
        return frame.toCanvas(model::axisPoint(limb, leafMiddle_m(limb)).position_m) -
               QPointF(0.0, value_m(part) * scale);
    case Hanging:
        break;
    }
    return frame.toCanvas(model::axisPoint(limb, leafMiddle_m(limb)).position_m) +
           QPointF(0.0, (limb.foliage->radius_m + value_m(part)) * scale + kOffHem);
}

double LimbShapeViewModel::valueUnder(Part part, QPointF hand) const
{
    const auto& limb = *workspace_.limb();
    const auto& frame = side_.frame();
    const double scale = frame.pixelsPerMetre;
    const auto from = [&](double along_m) {
        return hand - frame.toCanvas(model::axisPoint(limb, along_m).position_m);
    };
    switch (part) {
    case Thickness: {
        const QPointF off = from(0.15 * model::length_m(limb));
        return 2.0 * std::max(0.0, std::hypot(off.x(), off.y()) - kOffBark) / scale;
    }
    case LeafStart: {
        const auto middle = model::axisPoint(limb, value_m(part)).position_m;
        return model::nearestAlong_m(limb, frame.toPlace(hand, frame.depth_m(middle)));
    }
    case LeafWidth: {
        const QPointF off = from(leafMiddle_m(limb));
        return std::hypot(off.x(), off.y()) / scale;
    }
    case Hanging:
        break;
    }
    return (from(leafMiddle_m(limb)).y() - kOffHem) / scale - limb.foliage->radius_m;
}

void LimbShapeViewModel::set(Part part, double value_m, int gesture)
{
    if (!has(part))
        return;
    auto tree = *workspace_.tree();
    auto& limb = tree.limbs.at(model::limbIndex(tree, workspace_.limbId()));
    const QString name = part == Thickness ? tr("change the girth of %1")
                         : part == Hanging ? tr("change the hanging shoots of %1")
                                           : tr("change the leaf of %1");
    switch (part) {
    case Thickness: { // the whole limb, in proportion
        const double times = std::max(kThinnest_m, value_m) / limb.stations.front().diameter_m;
        for (auto& station : limb.stations)
            station.diameter_m = std::max(kThinnest_m, station.diameter_m * times);
        break;
    }
    case LeafStart:
        limb.foliage->from_m =
            std::clamp(value_m, 0.0, std::max(0.0, model::length_m(limb) - kLeastLeafy_m));
        break;
    case LeafWidth:
        limb.foliage->radius_m = std::max(kLeastLeaf_m, value_m);
        break;
    case Hanging:
        limb.foliage->hanging_m = std::max(0.0, value_m);
        break;
    }
    const QString step = name.arg(limbTitle(limb));
    workspace_.changeTree(step, std::move(tree), gesture);
}

void LimbShapeViewModel::grab(int part)
{
    if (has(static_cast<Part>(part)))
        held_ =
            Held{static_cast<Part>(part), workspace_.limbId(), workspace_.document().newGesture()};
    side_.hold(held_.has_value());
}

void LimbShapeViewModel::dragTo(double x, double y)
{
    if (held_ && held_->limb == workspace_.limbId())
        set(held_->part, valueUnder(held_->part, {x, y}), held_->gesture);
}

void LimbShapeViewModel::drop()
{
    held_.reset();
    side_.hold(false);
    workspace_.say({});
}

void LimbShapeViewModel::nudge(int part, int steps)
{
    const auto which = static_cast<Part>(part);
    if (!has(which))
        return;
    if (!nudged_ || nudged_->part != which || nudged_->limb != workspace_.limbId())
        nudged_ = Held{which, workspace_.limbId(), workspace_.document().newGesture()};
    set(which, value_m(which) + steps * step_m(workspace_.units(), which), nudged_->gesture);
}

void LimbShapeViewModel::refresh()
{
    std::vector<PlanHandleModel::Handle> handles;
    const auto add = [&](Part part, const QString& label) {
        if (has(part))
            handles.push_back({QString::fromStdString(workspace_.limbId()), part, at(part), label});
    };
    if (const auto* limb = workspace_.limb()) {
        const QString title = limbTitle(*limb);
        add(Thickness, tr("Thickness of %1").arg(title));
        add(LeafStart, tr("Where the leaf of %1 starts").arg(title));
        add(LeafWidth, tr("How wide the leaf of %1 is").arg(title));
        add(Hanging, tr("How low the shoots of %1 hang").arg(title));
    }
    handles_.show(std::move(handles));
}

} // namespace app
