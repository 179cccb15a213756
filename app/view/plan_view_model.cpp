#include "app/view/plan_view_model.hpp"

#include "app/drawing/side_frame.hpp"
#include "app/view/limb_title.hpp"
#include "model/geometry/angle.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace app {
namespace {

// Pixels for a metre: a whole estate, a thumb's breadth.
constexpr double kLeastScale = 0.5;
constexpr double kGreatestScale = 400.0;
constexpr double kUnderButtons = 44.0; // pixels that the page's buttons take along the top
constexpr double kBelowButtons = 8.0;

} // namespace

PlanViewModel::PlanViewModel(Workspace& workspace, SideViewModel& side, QObject* parent)
    : QObject(parent), workspace_(workspace), side_(side)
{
    connect(&workspace_, &Workspace::treeChanged, this, &PlanViewModel::refit);
    connect(&workspace_.document(), &Document::replaced, this, [this] { moved_ = false; });
    connect(&workspace_, &Workspace::shadowChanged, this, &PlanViewModel::sceneChanged);
    connect(&side_, &SideViewModel::sceneChanged, this, &PlanViewModel::sceneChanged);
}

PlanScene PlanViewModel::scene() const
{
    const auto* shadow = workspace_.shadow();
    const auto* wind = worstWind();
    auto scene = planScene(
        {workspace_.garden(), workspace_.tree(), frame_, side_.bearing(),
         shadow ? &shadow->shadows : nullptr, shadow ? &shadow->sun : nullptr, workspace_.units(),
         map_.get(), wind ? std::optional(wind->governingBearing_deg) : std::nullopt,
         wind ? tr("worst wind for %1").arg(limbTitle(workspace_.quickTree()->limbs.at(wind->limb)))
              : QString()});
    for (const auto corner : overlay_.chosen_m)
        scene.chosen << frame_.toCanvas(corner);
    if (overlay_.chosenCloses && !scene.chosen.isEmpty())
        scene.chosen << scene.chosen.constFirst();
    for (const auto corner : overlay_.draft_m)
        scene.draft << frame_.toCanvas(corner);
    scene.draftCloses = overlay_.draftCloses;
    scene.underButtons = kUnderButtons;
    return scene;
}

/// Of the chosen limb, or else of the one that the gust asks most of; null where no wind does it.
const model::load::LimbLoad* PlanViewModel::worstWind() const
{
    if (!workspace_.quick() || !workspace_.quickTree())
        return nullptr;
    const auto* load = workspace_.load(workspace_.limbId());
    if (!load)
        for (const auto& each : workspace_.quick()->load.limbs)
            if (each.hasStrength && (!load || each.utilisation > load->utilisation))
                load = &each;
    const bool byWind = load && load->hasStrength && load->duration >= 1.0;
    return byWind && load->windMoment_Nm > 0.0 ? load : nullptr;
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
    frame_.canvas = canvas_;
    const bool held = std::exchange(held_, false); // another canvas is no edit
    refit();
    held_ = held;
}

void PlanViewModel::hold(bool held)
{
    held_ = held;
    refit();
}

void PlanViewModel::showOverlay(Overlay overlay)
{
    overlay_ = std::move(overlay);
    emit sceneChanged();
}

void PlanViewModel::zoom(double x, double y, double factor)
{
    const auto under = frame_.toPlace({x, y});
    frame_.pixelsPerMetre = std::clamp(frame_.pixelsPerMetre * factor, kLeastScale, kGreatestScale);
    const auto now = frame_.toPlace({x, y});
    frame_.middle_m = frame_.middle_m + (under - now);
    moved_ = true;
    emit frameChanged();
    emit sceneChanged();
}

void PlanViewModel::zoomMiddle(double factor)
{
    zoom(canvas_.width() / 2.0, canvas_.height() / 2.0, factor);
}

void PlanViewModel::pan(double right, double down)
{
    frame_.middle_m = frame_.middle_m +
                      model::Point2{-right / frame_.pixelsPerMetre, down / frame_.pixelsPerMetre};
    moved_ = true;
    emit frameChanged();
    emit sceneChanged();
}

void PlanViewModel::fit()
{
    moved_ = false;
    const bool held = std::exchange(held_, false);
    refit();
    held_ = held;
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
    if (!held_ && !moved_)
        frame_ = fittedPlanFrame(workspace_.garden(), workspace_.tree(), canvas_,
                                 kUnderButtons + kBelowButtons);
    emit frameChanged();
    emit sceneChanged();
}

} // namespace app
