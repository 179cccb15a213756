#include "app/view/plan_view_model.hpp"

#include "app/drawing/side_frame.hpp"
#include "model/geometry/angle.hpp"

#include <algorithm>
#include <cmath>

namespace app {

PlanViewModel::PlanViewModel(Workspace& workspace, SideViewModel& side, QObject* parent)
    : QObject(parent), workspace_(workspace), side_(side)
{
    connect(&workspace_, &Workspace::treeChanged, this, &PlanViewModel::refit);
    connect(&workspace_, &Workspace::shadowChanged, this, &PlanViewModel::sceneChanged);
    connect(&side_, &SideViewModel::sceneChanged, this, &PlanViewModel::sceneChanged);
}

PlanScene PlanViewModel::scene() const
{
    const auto* shadow = workspace_.shadow();
    return planScene({workspace_.garden(), workspace_.tree(), frame_, side_.bearing(),
                      shadow ? &shadow->byTree : nullptr, shadow ? &shadow->sun : nullptr,
                      workspace_.units(), map_.get()});
}

QPointF PlanViewModel::eye() const
{
    const auto* tree = workspace_.tree();
    if (!tree)
        return {};
    const auto away = model::bearingDirection(side_.bearing() + 180.0);
    return frame_.toCanvas(tree->position_m) +
           eyeDistance(*tree, frame_) * QPointF(away.x, -away.y);
}

QString PlanViewModel::summary() const
{
    const auto& garden = workspace_.garden();
    return tr("Plan of %1, north up: %n trees.", nullptr, static_cast<int>(garden.trees.size()))
        .arg(QString::fromStdString(garden.name));
}

void PlanViewModel::showMap(std::shared_ptr<const SunMap> map)
{
    map_ = std::move(map);
    emit sceneChanged();
}

void PlanViewModel::resize(double width, double height)
{
    if (width <= 0.0 || height <= 0.0)
        return;
    canvas_ = {width, height};
    refit();
}

void PlanViewModel::walkTo(double x, double y)
{
    const auto* tree = workspace_.tree();
    if (!tree)
        return;
    const QPointF inwards = frame_.toCanvas(tree->position_m) - QPointF(x, y);
    if (inwards.isNull())
        return;
    side_.setBearing(std::round(model::degrees(std::atan2(inwards.x(), -inwards.y()))));
}

void PlanViewModel::chooseTreeAt(double x, double y)
{
    const auto at = frame_.toPlace({x, y});
    const model::Tree* best = nullptr;
    double least = 1.0; // share of the way from the stem to the crown's edge
    for (const auto& tree : workspace_.garden().trees) {
        const double share = model::norm(tree.position_m - at) / std::max(0.5, reach_m(tree));
        if (share < least) {
            least = share;
            best = &tree;
        }
    }
    if (best)
        workspace_.chooseTree(best->id);
}

void PlanViewModel::refit()
{
    frame_ = fittedPlanFrame(workspace_.garden(), workspace_.tree(), canvas_);
    emit sceneChanged();
}

} // namespace app
