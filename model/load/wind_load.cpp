#include "model/load/wind_load.hpp"

#include "model/load/drag.hpp"

#include <algorithm>
#include <cmath>

namespace model::load {
namespace {

/// Where the drag on a piece takes hold of its limb. Shoots that hang are cords: their drag comes
/// in where they hang, with no lever of its own (L18).
Vec3 dragCentre(const Piece& piece)
{
    const double at = piece.bare() ? piece.length_m * (piece.thick_m + 2.0 * piece.thin_m) /
                                         (3.0 * (piece.thick_m + piece.thin_m))
                                   : piece.length_m / 2.0;
    return piece.from_m + at * piece.direction;
}

/// Drag per area of outline at a height, Pa.
double dragPressure_Pa(const Piece& piece, const Wind& wind, double gust_m_s)
{
    const double pressure = dynamicPressure_Pa(wind.airDensity_kg_m3, gust_m_s);
    if (piece.bare())
        return pressure * kBareWoodDrag;
    return pressure * crownDragCoefficient(wind.dragGroup, gust_m_s) * wind.leafShare *
           piece.density;
}

/// Still-air outline of a piece from each direction, m2 (L18).
PerBearing outlines_m2(const Piece& piece)
{
    const auto& towards = directions();
    const Vec3 run = piece.length_m * piece.direction;
    const double width = piece.bare() ? (piece.thick_m + piece.thin_m) / 2.0 : 2.0 * piece.radius_m;
    PerBearing area{};
    for (std::size_t i = 0; i < kHalfTurn; ++i) {
        const double across = std::abs(run.x * towards.north[i] - run.y * towards.east[i]);
        area[i] = across * piece.hang_m + width * std::sqrt(across * across + run.z * run.z) +
                  piece.ends_m2;
    }
    return area;
}

} // namespace

void add(LeeSums& whole, const LeeSums& part)
{
    for (std::size_t i = 0; i < kHalfTurn; ++i) {
        whole.leaf_N[i] += part.leaf_N[i];
        whole.wood_N[i] += part.wood_N[i];
        whole.outline_m2[i] += part.outline_m2[i];
        whole.dense_m2[i] += part.dense_m2[i];
    }
    whole.leaf_m2 += part.leaf_m2;
}

std::vector<PieceDrag> dragOnPieces(const std::vector<Piece>& pieces, const Wind& wind)
{
    const GustProfile profile(wind.exposure);
    std::vector<PieceDrag> drags(pieces.size());
    for (std::size_t n = 0; n < pieces.size(); ++n) {
        auto& drag = drags[n];
        drag.centre_m = dragCentre(pieces[n]);
        const double hang = pieces[n].bare() ? 0.0 : pieces[n].hang_m;
        const double gust = wind.gust_m_s * profile.at(drag.centre_m.z - hang / 2.0);
        const double pressure = dragPressure_Pa(pieces[n], wind, gust);
        drag.outline_m2 = outlines_m2(pieces[n]);
        for (std::size_t i = 0; i < kHalfTurn; ++i)
            drag.force_N[i] = pressure * drag.outline_m2[i];
    }
    return drags;
}

std::vector<LeeSums> leeSums(const WindLoad& load, const LimbOrder& order,
                             const std::vector<Piece>& pieces, std::size_t limb)
{
    const auto& children = order.children[limb];
    std::vector<LeeSums> sums(children.size() + 1);
    auto& own = sums.front();
    for (std::size_t n = 0; n < pieces.size(); ++n) {
        const auto& drag = load.pieces[limb][n];
        const bool bare = pieces[n].bare();
        auto& force = bare ? own.wood_N : own.leaf_N;
        for (std::size_t i = 0; i < kHalfTurn; ++i)
            force[i] += drag.force_N[i];
        own.leaf_m2 += pieces[n].leaf_m2;
        for (std::size_t i = 0; i < kHalfTurn && !bare; ++i) {
            own.outline_m2[i] += drag.outline_m2[i];
            own.dense_m2[i] += drag.outline_m2[i] * pieces[n].density;
        }
    }
    for (std::size_t outermost = 1; outermost < sums.size(); ++outermost) {
        sums[outermost] = sums[outermost - 1];
        add(sums[outermost], load.sums[children[children.size() - outermost]].back());
    }
    return sums;
}

void sumLeaf(WindLoad& load, const LimbOrder& order, const std::vector<Piece>& pieces,
             std::size_t limb)
{
    const auto& children = order.children[limb];
    auto& sums = load.sums[limb];
    double leaf_m2 = 0.0;
    for (const auto& piece : pieces)
        leaf_m2 += piece.leaf_m2;
    sums.front().leaf_m2 = leaf_m2;
    for (std::size_t outermost = 1; outermost < sums.size(); ++outermost) {
        leaf_m2 += load.sums[children[children.size() - outermost]].back().leaf_m2;
        sums[outermost].leaf_m2 = leaf_m2;
    }
}

double leafCap(const LeeSums& sums, double outlinePerLeaf, std::size_t bearing)
{
    if (outlinePerLeaf <= 0.0 || sums.dense_m2[bearing] <= 0.0)
        return HUGE_VAL;
    return sums.leaf_m2 * outlinePerLeaf / sums.dense_m2[bearing];
}

void leaveLee(WindLoad& load, const Silhouettes& silhouettes, std::size_t limb)
{
    const auto& sums = load.sums[limb];
    load.outlineLeft[limb].resize(sums.size());
    load.share[limb].resize(sums.size());
    for (std::size_t outermost = 0; outermost < sums.size(); ++outermost)
        for (std::size_t i = 0; i < kHalfTurn; ++i) {
            const auto& sum = sums[outermost];
            const auto& visible = silhouettes.visible(limb, outermost, i);
            const double outline =
                sum.outline_m2[i] > 0.0 ? visible.leaf_m2 / sum.outline_m2[i] : 0.0;
            const double leaf = std::min(outline, leafCap(sum, load.outlinePerLeaf, i));
            const double summed = sum.leaf_N[i] + sum.wood_N[i];
            load.outlineLeft[limb][outermost][i] = outline;
            load.share[limb][outermost][i] =
                summed > 0.0 ? (sum.leaf_N[i] * leaf + sum.wood_N[i] * visible.woodShare) / summed
                             : 1.0;
        }
}

} // namespace model::load
