#include "model/headroom/lowest_place.hpp"

#include <algorithm>
#include <cmath>

namespace model::headroom {
namespace {

/// Height of the axis from which the underside over a point hangs: that of the place along the body
/// at s = s0 - k sqrt(r^2 - d^2) / sqrt(1 + k^2), kept on the body (H1).
double axisHeight_m(const Curtain& curtain, Point2 at)
{
    const Point2 run = plan(curtain.b) - plan(curtain.a);
    const double length = norm(run);
    if (length <= 0.0)
        return std::min(curtain.a.z, curtain.b.z);
    const Point2 off = at - plan(curtain.a);
    const double along = (off.x * run.x + off.y * run.y) / length;
    const double aside = (off.x * run.y - off.y * run.x) / length;
    const double half =
        std::sqrt(std::max(0.0, curtain.radius_m * curtain.radius_m - aside * aside));
    const double climb = (curtain.b.z - curtain.a.z) / length;
    const double s = std::clamp(along - climb * half / std::sqrt(1.0 + climb * climb), 0.0, length);
    return curtain.a.z + climb * s;
}

class Lowest {
public:
    Lowest(Point2 tree, Polygon strip) : tree_(tree), strip_(std::move(strip))
    {
        for (auto& corner : strip_)
            corner = corner - tree_;
    }
    [[nodiscard]] const Polygon& strip() const { return strip_; }

    void take(const Curtain& solid, std::size_t limb, bool isLeaf)
    {
        const auto low = lowestOver(solid, strip_);
        if (!low || (found_ && low->height_m >= under_m_))
            return;
        under_m_ = low->height_m;
        const double axis_m = axisHeight_m(solid, low->at_m);
        found_ = LowestPlace{limb,
                             isLeaf,
                             low->at_m + tree_,
                             axis_m,
                             std::max(0.0, axis_m - solid.hang_m - low->height_m),
                             solid.hang_m,
                             std::max(0.0, low->height_m)};
    }
    [[nodiscard]] const std::optional<LowestPlace>& found() const { return found_; }

private:
    Point2 tree_;
    Polygon strip_; ///< tree frame
    std::optional<LowestPlace> found_;
    double under_m_{}; ///< before what lies in the ground is called 0
};

} // namespace

std::optional<LowestPlace> lowestPlace(const Tree& tree, const Polygon& strip)
{
    Lowest lowest(tree.position_m, strip);
    const bool walkedRound = stemStandsIn(tree, lowest.strip());
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb)
        if (tree.limbs[limb].parent || !walkedRound)
            for (const auto& wood : woodSolids(tree.limbs[limb]))
                lowest.take(wood, limb, false);
    for (const auto& body : leafyBodies(tree))
        lowest.take(body.solid, body.limb, true);
    return lowest.found();
}

} // namespace model::headroom
