#include "app/drawing/side_scene.hpp"

#include "app/drawing/scale_bar.hpp"

#include <algorithm>

namespace app {
namespace {

constexpr double kSideBarAim = 110.0; // pixels
constexpr double kHeightRoom = 44.0;  // beside the tree, for the figure of its height

void addScale(SideScene& scene, const SideInput& input)
{
    const double length_m = scaleBarLength_m(input.frame.pixelsPerMetre, kSideBarAim, input.units);
    const QPointF end(scene.canvas.width() - 24.0, 24.0);
    scene.scaleBar = {end - QPointF(length_m * input.frame.pixelsPerMetre, 0.0), end};
    scene.scaleText = input.units.length(length_m);

    const double top_m = model::height_m(input.shown);
    scene.topY = input.frame.toCanvas({0.0, 0.0, top_m}).y();
    const double beside = (reach_m(input.drawn) + 0.6) * input.frame.pixelsPerMetre;
    const double left = input.frame.foot.x() - beside;
    scene.heightX = left > kHeightRoom ? left : input.frame.foot.x() + beside;
    scene.heightText = input.units.roughLength(top_m);
}

} // namespace

SideScene sideScene(const SideInput& input)
{
    SideScene scene;
    scene.canvas = input.canvas;
    scene.groundY = input.frame.foot.y();
    scene.leafShare = input.leafShare;
    addGround(scene, input);
    addLeaves(scene, input);
    addLimbs(scene, input);
    addHeadroom(scene, input);
    addCuts(scene, input);
    addScale(scene, input);
    return scene;
}

} // namespace app
