#include "tests/model/examples/sketched_tree.hpp"

#include "model/sketch/grow.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace {

using model::Limb;
using model::Tree;
using model::Vec3;

constexpr double kBreast_m = 1.37;
constexpr int kScaffolds = 10;

Limb stem(const MeasuredTree& of)
{
    Limb stem;
    stem.id = "stem";
    const double breast_m = of.stem_cm / 100.0;
    const double top_m = 0.9 * of.height_m;
    stem.stations = {{{0.0, 0.0, 0.0}, 1.12 * breast_m},
                     {{0.0, 0.0, kBreast_m}, breast_m},
                     {{0.0, 0.0, top_m}, 0.15 * breast_m}};
    return stem;
}

Vec3 towards(double bearing_rad)
{
    return {std::sin(bearing_rad), std::cos(bearing_rad), 0.0};
}

std::string draw(Tree& tree, const std::string& from, double along_m, Vec3 run)
{
    const auto parent = limbIndex(tree, from);
    const Vec3 start = axisPoint(tree.limbs[parent], along_m).position_m;
    const model::sketch::Grip grip{parent, along_m, start, 0.0};
    Limb limb = limbFromStroke(
        tree, grip, {{start, start + 0.5 * run + Vec3{0.0, 0.0, 0.06 * norm(run)}, start + run}});
    tree.limbs.push_back(limb);
    return limb.id;
}

} // namespace

Tree sketchedTree(const MeasuredTree& of)
{
    Tree tree;
    tree.species = of.species;
    tree.limbs.push_back(stem(of));
    const double base_m = std::max(kBreast_m + 0.2, 0.25 * of.height_m);
    const double middle_m = 0.5 * (base_m + of.height_m);
    const double half_m = of.height_m - middle_m;
    const double leafy_m = 0.13 * of.crown_m;
    for (int i = 0; i < kScaffolds; ++i) {
        const double from_m = base_m + (0.78 * of.height_m - base_m) * (i + 0.5) / kScaffolds;
        const double up = (from_m + 0.1 * of.height_m - middle_m) / half_m;
        const double reach_m = 0.46 * of.crown_m * std::sqrt(std::max(0.1, 1.0 - up * up));
        const double bearing = 2.4 * i; // the golden angle
        const auto scaffold =
            draw(tree, "stem", from_m, reach_m * towards(bearing) + Vec3{0.0, 0.0, 0.4 * reach_m});
        if (i == 0) { // the others take after it
            tree.limbs.back().foliage.emplace();
            tree.limbs.back().foliage->radius_m = leafy_m;
            tree.limbs.back().foliage->from_m = 0.4 * length_m(tree.limbs.back());
        }
        for (const double side : {-0.9, 0.9})
            draw(tree, scaffold, (side < 0.0 ? 0.45 : 0.65) * 1.08 * reach_m,
                 0.45 * reach_m * towards(bearing + side) + Vec3{0.0, 0.0, 0.15 * reach_m});
    }
    return tree;
}
