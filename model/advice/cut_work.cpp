#include "model/advice/cut_work.hpp"

#include "model/advice/fruit_wood.hpp"
#include "model/advice/limits.hpp"
#include "model/advice/piecework.hpp"
#include "model/advice/prune.hpp"
#include "model/advice/who.hpp"
#include "model/crown/mass.hpp"

#include <algorithm>
#include <numeric>

namespace model::advice {
namespace {

double mass_kg(const Tree& tree, const Foliation& foliation, const Species& species)
{
    const auto masses = limbMasses(tree, foliation, species);
    return std::accumulate(masses.begin(), masses.end(), 0.0,
                           [](double sum, const LimbMass& m) { return sum + m.total_kg(); });
}

double leaf_m2(const Tree& tree, const Foliation& foliation)
{
    const auto areas = leafAreaByLimb_m2(tree, foliation);
    return std::accumulate(areas.begin(), areas.end(), 0.0);
}

/// The thickest lateral at the cut: the one that takes over.
std::size_t successor(const Tree& tree, std::size_t limb, double at_m)
{
    std::size_t best = kNoLimb;
    for (std::size_t i = 0; i < tree.limbs.size(); ++i) {
        const auto& lateral = tree.limbs[i];
        if (lateral.parent != tree.limbs[limb].id || lateral.attachedAt_m > at_m + 1e-6)
            continue;
        const bool outer =
            best == kNoLimb || lateral.attachedAt_m > tree.limbs[best].attachedAt_m ||
            (lateral.attachedAt_m == tree.limbs[best].attachedAt_m &&
             lateral.stations.front().diameter_m > tree.limbs[best].stations.front().diameter_m);
        if (outer)
            best = i;
    }
    return best;
}

void measureRemoval(const Tree& tree, std::size_t limb, PlannedCut& planned)
{
    const auto& whole = tree.limbs[limb];
    planned.aboveGround_m = whole.stations.front().position_m.z;
    planned.diameter_m = whole.stations.front().diameter_m;
    planned.length_m = length_m(whole);
    const auto parent = limbIndex(tree, *whole.parent);
    const double ratio =
        planned.diameter_m / axisPoint(tree.limbs[parent], whole.attachedAt_m).diameter_m;
    if (ratio > kBranchToStem)
        planned.notes.push_back(
            {Rule::branchToStem, Severity::warn, whole.id, ratio, kBranchToStem});
}

void measureReduction(const Tree& tree, std::size_t limb, PlannedCut& planned)
{
    const auto& whole = tree.limbs[limb];
    const auto cut = axisPoint(whole, planned.cut.at_m);
    planned.aboveGround_m = cut.position_m.z;
    planned.diameter_m = cut.diameter_m;
    planned.length_m = length_m(whole) - planned.cut.at_m;
    const auto lateral = successor(tree, limb, planned.cut.at_m);
    if (lateral == kNoLimb)
        return;
    planned.lateral = tree.limbs[lateral].id;
    const double ratio = tree.limbs[lateral].stations.front().diameter_m / cut.diameter_m;
    if (ratio < kLateralGood)
        planned.notes.push_back(
            {Rule::lateralThird, Severity::inform, planned.lateral, ratio, kLateralGood});
}

void measureShoots(const Tree& tree, PlannedCut& planned)
{
    planned.aboveGround_m = shootHeight_m(tree, planned.cut);
    planned.length_m = shootLength_m(tree, planned.cut);
}

void noteDropZone(const Garden& garden, const Tree& tree, PlannedCut& planned)
{
    planned.inZone = inDropZone(garden, tree, planned.pieces);
    for (const auto& found : planned.inZone)
        if (found.kind == Under::planting && planned.diameter_m > 0.0)
            planned.notes.push_back(
                {Rule::plantingBelow, Severity::warn, found.id, found.gap_m, found.radius_m});
}

double leafWithBeyond_m2(const Tree& tree, std::size_t limb, const Foliation& foliation)
{
    const auto areas = leafAreaByLimb_m2(tree, foliation);
    double sum = 0.0;
    for (const auto i : limbAndBeyond(limbOrder(tree), limb))
        sum += areas[i];
    return sum;
}

void noteWound(const Species& species, PlannedCut& planned)
{
    if (planned.diameter_m <= kWoundSmall_m)
        return;
    const auto note = [&](Rule rule) {
        planned.notes.push_back(
            {rule, Severity::warn, planned.cut.limb, planned.diameter_m, kWoundSmall_m});
    };
    note(Rule::cutOver50mm);
    if (species.practice.decayResistance == Decay::poor)
        note(Rule::poorHealer);
}

/// What a fruit grower would say of the cut.
void noteFruit(const Tree& tree, const Species& species, PlannedCut& planned)
{
    if (const auto note = renewalShareNote(species, planned.cut))
        planned.notes.push_back(*note);
    if (planned.cut.kind != CutKind::removal || !yearlyRenewal(species.latin))
        return;
    for (const auto limb : middleLimbs(tree))
        if (tree.limbs[limb].id == planned.cut.limb)
            planned.notes.push_back(
                {Rule::openMiddle, Severity::inform, planned.cut.limb, std::nullopt, std::nullopt});
}

void appendLimb(const Limb& limb, std::size_t index, FallingPart& part)
{
    Tree alone;
    alone.limbs = {limb};
    for (const auto& body : leafyBodies(alone))
        part.solids.push_back(body.solid);
    const auto wood = woodSolids(limb);
    part.solids.insert(part.solids.end(), wood.begin(), wood.end());
    part.limbs.push_back(index);
}

Limb beyond(const Limb& limb, double at_m)
{
    Limb rest = limb;
    rest.stations = stretch(limb, at_m, length_m(limb));
    if (rest.foliage)
        rest.foliage->from_m = std::max(0.0, limb.foliage->from_m - at_m);
    return rest;
}

} // namespace

FallingPart fallingPart(const Tree& tree, const Cut& cut)
{
    const auto limb = limbIndex(tree, cut.limb);
    const auto& whole = tree.limbs.at(limb);
    FallingPart part;
    part.cut_m = axisPoint(whole, cut.kind == CutKind::reduction ? cut.at_m : 0.0).position_m;
    if (cut.kind == CutKind::removal || cut.kind == CutKind::reduction) {
        const Tree after = afterCut(tree, cut);
        for (std::size_t i = 0; i < tree.limbs.size(); ++i)
            if (limbIndex(after, tree.limbs[i].id) == kNoLimb)
                appendLimb(tree.limbs[i], i, part);
        if (cut.kind == CutKind::reduction)
            appendLimb(beyond(whole, cut.at_m), limb, part);
        return part;
    }
    for (const auto& body : leafyBodies(tree)) // shoots are cut all along the leafy part
        if (body.limb == limb)
            part.solids.push_back(body.solid);
    part.limbs.push_back(limb);
    return part;
}

PlannedCut plannedCut(const Garden& garden, const Tree& tree, const Cut& cut,
                      const Foliation& foliation, const Species& species)
{
    const auto limb = limbIndex(tree, cut.limb);
    const Tree after = afterCut(tree, cut);
    PlannedCut planned;
    planned.cut = cut;
    planned.mass_kg = mass_kg(tree, foliation, species) - mass_kg(after, foliation, species);
    const double gone_m2 = leaf_m2(tree, foliation) - leaf_m2(after, foliation);
    planned.leafShare = foliation.leafArea_m2 > 0.0 ? gone_m2 / foliation.leafArea_m2 : 0.0;
    if (cut.kind == CutKind::removal) {
        measureRemoval(tree, limb, planned);
    } else if (cut.kind == CutKind::reduction) {
        measureReduction(tree, limb, planned);
        const double share = gone_m2 / std::max(1e-9, leafWithBeyond_m2(tree, limb, foliation));
        if (share > kLimbShareWarn)
            planned.notes.push_back(
                {Rule::limbShare, Severity::warn, cut.limb, share, kLimbShareWarn});
    } else {
        measureShoots(tree, planned);
    }
    noteWound(species, planned);
    noteFruit(tree, species, planned);
    planned.pieces = pieces(tree, cut, foliation, species);
    noteDropZone(garden, tree, planned);
    planned.labour = whoCuts(garden, tree, planned, fallingPart(tree, cut));
    return planned;
}

} // namespace model::advice
