#include "model/load/sag.hpp"

#include "model/crown/mass.hpp"
#include "model/load/bending.hpp"
#include "model/load/elastic_tree.hpp"
#include "model/load/stiffness.hpp"

#include <algorithm>
#include <cmath>

namespace model::load {
namespace {

constexpr double kSameCut_m = 1e-6;

/// Where a place of the drawn tree lies in the bent one.
Vec3 moved(const LimbPieces& cut, const std::vector<BentShape::BentPiece>& bent, double at_m)
{
    const auto& pieces = cut.pieces;
    const auto next = std::ranges::upper_bound(pieces, at_m, {}, &Piece::at_m);
    const auto i = static_cast<std::size_t>(std::max<std::ptrdiff_t>(0, next - pieces.begin() - 1));
    const double share = std::clamp((at_m - pieces[i].at_m) / pieces[i].length_m, 0.0, 1.0);
    const double a = (1.0 - share) * (1.0 - 2.0 * share);
    const double b = 4.0 * share * (1.0 - share);
    const double c = share * (2.0 * share - 1.0);
    return a * bent[i].start_m + b * bent[i].middle_m + c * bent[i].end_m;
}

LimbSag sagOf(std::size_t limb, const LimbPieces& cut,
              const std::vector<BentShape::BentPiece>& bent)
{
    LimbSag sag;
    sag.limb = limb;
    for (std::size_t i = 0; i < cut.pieces.size(); ++i) {
        const auto& piece = cut.pieces[i];
        const Vec3 drawn = piece.from_m + piece.length_m * piece.direction;
        sag.tip_m = drawn.z - bent[i].end_m.z;
        if (sag.tip_m > sag.most_m) {
            sag.most_m = sag.tip_m;
            sag.mostAt_m = piece.at_m + piece.length_m;
        }
    }
    return sag;
}

/// The limb with its stations where they hang. Shoots that were once lifted to a height sink with
/// their limb: by no less than the lowest of its leafy part does.
Limb hung(const Limb& limb, const LimbPieces& cut, const std::vector<BentShape::BentPiece>& bent)
{
    Limb moving = limb;
    double at = 0.0;
    for (std::size_t s = 0; s < limb.stations.size(); ++s) {
        if (s > 0)
            at += norm(limb.stations[s].position_m - limb.stations[s - 1].position_m);
        moving.stations[s].position_m = moved(cut, bent, at);
    }
    if (moving.foliage && moving.foliage->hem_m)
        moving.foliage->hem_m = std::max(0.0, *moving.foliage->hem_m - largestDrop_m(limb, moving));
    return moving;
}

Sag hang(const Tree& tree, const std::vector<LimbPieces>& limbs, const BentShape& shape,
         const std::vector<PropPlace>& props)
{
    Sag sag;
    sag.tree = tree;
    sag.settled = shape.settled;
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb) {
        sag.limbs.push_back(sagOf(limb, limbs[limb], shape.limbs[limb]));
        sag.tree.limbs[limb] = hung(tree.limbs[limb], limbs[limb], shape.limbs[limb]);
    }
    for (std::size_t i = 0; i < props.size(); ++i)
        sag.limbs[props[i].limb].prop_N += shape.push_N[i];
    return sag;
}

/// How much of a limb a cut tree still has, m; 0: it is gone.
double keptLength_m(const Limb& limb, const Tree& after)
{
    const auto now = limbIndex(after, limb.id);
    return now == kNoLimb ? 0.0 : length_m(after.limbs[now]);
}

/// The pieces of `before` with the leaf and twigs that are left on them in `after`.
std::vector<LimbPieces> withoutCutLeaf(std::vector<LimbPieces> limbs, const Tree& before,
                                       const Tree& after, const Foliation& foliation)
{
    const auto leafAfter_m2 = leafAreaByLimb_m2(after, foliation);
    for (std::size_t limb = 0; limb < limbs.size(); ++limb) {
        const auto now = limbIndex(after, before.limbs[limb].id);
        const double length = keptLength_m(before.limbs[limb], after);
        double kept_m2 = 0.0;
        for (const auto& piece : limbs[limb].pieces)
            kept_m2 += piece.at_m < length - kSameCut_m ? piece.leaf_m2 : 0.0;
        const double share = now == kNoLimb || kept_m2 <= 0.0 ? 0.0 : leafAfter_m2[now] / kept_m2;
        for (auto& piece : limbs[limb].pieces)
            piece.leafy_kg *= share;
    }
    return limbs;
}

} // namespace

double largestDrop_m(const Limb& drawn, const Limb& sagging)
{
    double drop = 0.0;
    for (std::size_t s = 0; s < drawn.stations.size(); ++s)
        drop = std::max(drop, drawn.stations[s].position_m.z - sagging.stations[s].position_m.z);
    return drop;
}

Sag sagUnder(const Tree& tree, const Foliation& foliation, const Species& species,
             const Conditions& conditions)
{
    Rest none;
    return sagUnder(tree, foliation, species, conditions, none);
}

Sag sagUnder(const Tree& tree, const Foliation& foliation, const Species& species,
             const Conditions& conditions, Rest& rest)
{
    const auto order = limbOrder(tree);
    const auto limbs = cutLimbs(tree, order, foliation, species, conditions);
    const auto elastic = elasticTree(tree, order, limbs, species);
    const auto shape = bend(elastic, drawnWeight(limbs, species), hungWeight(limbs, species), rest);
    return hang(tree, limbs, shape, elastic.props);
}

Sag springBack(const Tree& before, const Tree& after, const Foliation& foliation,
               const Species& species)
{
    const Conditions dry{.inFruit = false};
    const auto order = limbOrder(before);
    const auto limbs = cutLimbs(before, order, foliation, species, dry);
    auto now_kg = hungWeight(withoutCutLeaf(limbs, before, after, foliation), species);
    for (std::size_t limb = 0; limb < limbs.size(); ++limb)
        for (std::size_t i = 0; i < limbs[limb].pieces.size(); ++i)
            if (limbs[limb].pieces[i].at_m >= keptLength_m(before.limbs[limb], after) - kSameCut_m)
                now_kg[limb][i] = {};
    const auto elastic = elasticTree(before, order, limbs, species);
    const auto shape = bend(elastic, drawnWeight(limbs, species), now_kg);
    const auto whole = hang(before, limbs, shape, elastic.props);
    Sag result;
    result.tree = after;
    result.settled = shape.settled;
    for (std::size_t now = 0; now < after.limbs.size(); ++now) {
        const auto was = limbIndex(before, after.limbs[now].id);
        LimbPieces kept = limbs[was];
        auto bent = shape.limbs[was];
        const double end = length_m(after.limbs[now]);
        while (kept.pieces.size() > 1 && kept.pieces.back().at_m >= end - kSameCut_m) {
            kept.pieces.pop_back();
            bent.pop_back();
        }
        result.limbs.push_back(sagOf(now, kept, bent));
        result.limbs.back().prop_N = whole.limbs[was].prop_N;
        result.tree.limbs[now] = hung(after.limbs[now], kept, bent);
    }
    return result;
}

} // namespace model::load
