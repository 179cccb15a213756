// The marks of the suggested cuts on the side view.

#include "app/drawing/side_scene.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

constexpr double kOverhang = 9.0; // pixels that a saw stroke reaches beyond the bark
constexpr double kBadgeGap = 26.0;

/// A stroke square across the limb as it is seen, and a badge beside it, away from the stem.
SceneCut sawn(const model::Limb& limb, double at_m, const SideInput& input)
{
    const auto point = model::axisPoint(limb, at_m);
    const QPointF at = input.frame.toCanvas(point.position_m);
    const QPointF ahead = input.frame.toCanvas(point.position_m + point.direction) - at;
    const double seen = std::hypot(ahead.x(), ahead.y());
    const QPointF along = seen > 1e-6 ? ahead / seen : QPointF(1.0, 0.0);
    const QPointF side(-along.y(), along.x());
    const double half = point.diameter_m * input.frame.pixelsPerMetre / 2.0 + kOverhang;
    const QPointF up = side.y() < 0.0 ? side : -side;
    SceneCut cut;
    cut.stroke = {at - side * half, at + side * half};
    cut.badge = at + up * (half + kBadgeGap / 2.0);
    return cut;
}

/// The level to which hanging shoots are lifted, as wide as the limb's leaf.
SceneCut lifted(const model::Limb& limb, double height_m, const SideInput& input)
{
    double left = 1e9;
    double right = -1e9;
    const auto& leaf = limb.foliage;
    const double from_m = leaf ? leaf->from_m : 0.0;
    const double radius = (leaf ? leaf->radius_m : 0.2) * input.frame.pixelsPerMetre;
    for (const auto& station : model::stretch(limb, from_m, model::length_m(limb))) {
        const double x = input.frame.toCanvas(station.position_m).x();
        left = std::min(left, x - radius);
        right = std::max(right, x + radius);
    }
    const double y = input.frame.foot.y() - height_m * input.frame.pixelsPerMetre;
    SceneCut cut;
    cut.stroke = {left, y, right, y};
    cut.badge = {(left + right) / 2.0 < input.frame.foot.x() ? left - 4.0 : right + 4.0, y};
    return cut;
}

bool coversOne(const QPointF& badge, const std::vector<SceneCut>& cuts, std::size_t before)
{
    return std::any_of(cuts.begin(), cuts.begin() + static_cast<long>(before),
                       [&](const auto& cut) {
                           const QPointF apart = badge - cut.badge;
                           return std::hypot(apart.x(), apart.y()) < kBadgeGap;
                       });
}

/// Badges that would cover each other make room, the later one higher up.
void spread(std::vector<SceneCut>& cuts)
{
    for (std::size_t i = 1; i < cuts.size(); ++i)
        while (coversOne(cuts[i].badge, cuts, i))
            cuts[i].badge += QPointF(0.0, -kBadgeGap / 2.0);
}

} // namespace

void addCuts(SideScene& scene, const SideInput& input)
{
    if (!input.cuts)
        return;
    int number = 0;
    for (const auto& planned : *input.cuts) {
        ++number;
        const auto limb = std::ranges::find(input.drawn.limbs, planned.cut.limb, &model::Limb::id);
        if (limb == input.drawn.limbs.end())
            continue;
        auto cut = planned.cut.kind == model::CutKind::lifting
                       ? lifted(*limb, planned.cut.height_m.value_or(0.0), input)
                       : sawn(*limb,
                              planned.cut.kind == model::CutKind::thinning ||
                                      planned.cut.kind == model::CutKind::renewal
                                  ? 0.6 * model::length_m(*limb)
                                  : planned.cut.at_m,
                              input);
        cut.number = number;
        cut.kind = planned.cut.kind;
        scene.cuts.push_back(cut);
    }
    spread(scene.cuts);
}

} // namespace app
