#include "model/load/wind_load.hpp"

#include "model/crown/silhouette.hpp"
#include "model/load/drag.hpp"
#include "model/load/wind.hpp"

#include <algorithm>
#include <cmath>

namespace model::load {
namespace {

/// Sums over pieces, from each direction.
struct Sums {
    PerBearing leaf_N{};
    PerBearing outline_m2{}; ///< of single pieces
    PerBearing wood_N{};
    PerBearing dense_m2{}; ///< outline times relative density
    double leaf_m2{};      ///< leaf area
};

void add(Sums& whole, const Sums& part)
{
    for (std::size_t i = 0; i < kHalfTurn; ++i) {
        whole.leaf_N[i] += part.leaf_N[i];
        whole.outline_m2[i] += part.outline_m2[i];
        whole.wood_N[i] += part.wood_N[i];
        whole.dense_m2[i] += part.dense_m2[i];
    }
    whole.leaf_m2 += part.leaf_m2;
}

Vec3 dragCentre(const Piece& piece)
{
    if (piece.bare()) {
        const double at = piece.length_m * (piece.thick_m + 2.0 * piece.thin_m) /
                          (3.0 * (piece.thick_m + piece.thin_m));
        return piece.from_m + at * piece.direction;
    }
    return piece.from_m + piece.length_m / 2.0 * piece.direction -
           Vec3{0.0, 0.0, piece.hang_m / 2.0};
}

/// Drag per area of outline at a height, Pa.
double dragPressure_Pa(const Piece& piece, const Wind& wind, double height_m)
{
    const double gust = wind.gust_m_s * gustShare(wind.exposure, height_m);
    const double pressure = dynamicPressure_Pa(wind.airDensity_kg_m3, gust);
    if (piece.bare())
        return pressure * kBareWoodDrag;
    return pressure * crownDragCoefficient(wind.dragGroup, gust) * wind.leafShare * piece.density;
}

PieceDrag dragOn(const Piece& piece, const Wind& wind, Sums& sums)
{
    PieceDrag drag;
    drag.centre_m = dragCentre(piece);
    const double pressure = dragPressure_Pa(piece, wind, drag.centre_m.z);
    const Vec3 run = piece.length_m * piece.direction;
    for (std::size_t i = 0; i < kHalfTurn; ++i) {
        const Vec3 towards = blowsTowards(i);
        const double across = std::abs(run.x * towards.y - run.y * towards.x);
        const double seen = std::sqrt(across * across + run.z * run.z);
        if (piece.bare()) {
            drag.force_N[i] = pressure * seen * (piece.thick_m + piece.thin_m) / 2.0;
            sums.wood_N[i] += drag.force_N[i];
            continue;
        }
        const double area = across * piece.hang_m + 2.0 * piece.radius_m * seen + piece.ends_m2;
        drag.force_N[i] = pressure * area;
        sums.leaf_N[i] += drag.force_N[i];
        sums.outline_m2[i] += area;
        sums.dense_m2[i] += area * piece.density;
    }
    sums.leaf_m2 += piece.leaf_m2;
    return drag;
}

/// What is left of summed drag: no more than the outline of all together, and no more for each
/// m2 of leaf than the crown has (L9).
double shareLeft(const Sums& sums, const Visible& visible, double outlinePerLeaf, std::size_t i)
{
    const double summed = sums.leaf_N[i] + sums.wood_N[i];
    if (summed <= 0.0)
        return 1.0;
    double leaf = 0.0;
    if (sums.outline_m2[i] > 0.0)
        leaf = visible.leaf_m2 / sums.outline_m2[i];
    if (outlinePerLeaf > 0.0 && sums.dense_m2[i] > 0.0)
        leaf = std::min(leaf, sums.leaf_m2 * outlinePerLeaf / sums.dense_m2[i]);
    return (sums.leaf_N[i] * leaf + sums.wood_N[i] * visible.woodShare) / summed;
}

} // namespace

WindLoad windLoad(const Tree& tree, const LimbOrder& order, const std::vector<LeafyBody>& bodies,
                  const std::vector<LimbPieces>& limbs, const Wind& wind)
{
    const std::size_t count = limbs.size();
    WindLoad load{std::vector<std::vector<PieceDrag>>(count),
                  std::vector<std::vector<PerBearing>>(count)};
    std::vector<std::vector<Sums>> sums(count); // as WindLoad::share
    for (auto limb = order.rootFirst.rbegin(); limb != order.rootFirst.rend(); ++limb) {
        const auto& children = order.children[*limb];
        sums[*limb].resize(1);
        load.share[*limb].resize(children.size() + 1);
        load.pieces[*limb].reserve(limbs[*limb].pieces.size());
        for (const auto& piece : limbs[*limb].pieces)
            load.pieces[*limb].push_back(dragOn(piece, wind, sums[*limb].front()));
        for (auto child = children.rbegin(); child != children.rend(); ++child) {
            sums[*limb].push_back(sums[*limb].back());
            add(sums[*limb].back(), sums[*child].back());
        }
    }
    Silhouettes silhouettes(tree, order, bodies);
    for (std::size_t i = 0; i < kHalfTurn; ++i) {
        silhouettes.lookAlong(kBearingStep_deg * static_cast<double>(i));
        for (std::size_t limb = 0; limb < count; ++limb)
            for (std::size_t outermost = 0; outermost < sums[limb].size(); ++outermost)
                load.share[limb][outermost][i] =
                    shareLeft(sums[limb][outermost], silhouettes.visible(limb, outermost),
                              wind.outlinePerLeaf, i);
    }
    return load;
}

} // namespace model::load
