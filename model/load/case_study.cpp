#include "model/load/case_study.hpp"

#include "model/constants.hpp"
#include "model/load/drag.hpp"
#include "model/load/elastic_tree.hpp"
#include "model/load/strength.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <utility>

namespace model::load {
namespace {

/// Takes the elements along to their new places; new places start empty.
template <typename Element>
void rearrange(std::vector<Element>& elements, const std::vector<std::size_t>& from)
{
    std::vector<Element> arranged(from.size());
    for (std::size_t i = 0; i < from.size(); ++i)
        if (from[i] != kNoLimb)
            arranged[i] = std::move(elements[from[i]]);
    elements = std::move(arranged);
}

bool inOrder(const std::vector<std::size_t>& from, std::size_t before)
{
    if (from.size() != before)
        return false;
    for (std::size_t i = 0; i < from.size(); ++i)
        if (from[i] != i)
            return false;
    return true;
}

double dragShare(const Species& species, const Conditions& conditions)
{
    return conditions.inLeaf ? 1.0 : leaflessShare(species.practice.leafHabit);
}

} // namespace

CaseStudy::CaseStudy(const Species& species, const Place& place, Exposure exposure,
                     const Conditions& conditions)
    : species_(species),
      conditions_(conditions), wind_{conditions.gust_m_s,
                                     airDensity_kg_m3(place.altitude_m, conditions.air_C), exposure,
                                     species.wood.dragGroup, dragShare(species, conditions)},
      silhouettes_(halfTurn_deg(kBearingStep_deg))
{
    if (!(conditions.gust_m_s >= 0.0) || !std::isfinite(conditions.gust_m_s))
        throw std::domain_error("loadCase: the gust must be a finite speed, not negative");
    case_.wood_kg_m3 = species.wood.limbDensity_kg_m3.value;
    case_.greenMor_Pa = species.wood.greenMor_Pa.value;
}

Redrawn CaseStudy::redraw(const Tree& tree, const Foliation& foliation)
{
    auto order = limbOrder(tree);
    Redrawn redrawn;
    redrawn.from = known(tree);
    carryOver(redrawn.from);
    redrawn.own = learn(tree, order, redrawn.from);
    redrawn.beyond = beyond(order, redrawn);
    case_.order = std::move(order);

    const double perLeaf =
        foliation.leafArea_m2 > 0.0 ? foliation.outlineArea_m2 / foliation.leafArea_m2 : 0.0;
    const bool otherLeaf = hangsOtherwise(foliation);
    const bool otherCap = perLeaf != case_.wind.outlinePerLeaf;
    foliation_ = foliation;
    case_.wind.outlinePerLeaf = perLeaf;

    std::vector<LeafyBody> bodies;
    for (std::size_t i = 0; i < tree.limbs.size(); ++i)
        if (redrawn.own[i])
            bodies.insert(bodies.end(), keys_[i].bodies.begin(), keys_[i].bodies.end());
    cut({tree, case_.order, foliation, species_, conditions_}, redrawn.own, otherLeaf);
    const bool otherLines = silhouettes_.redraw(tree, case_.order, bodies, redrawn);
    if (otherLines)
        redrawn.beyond.assign(tree.limbs.size(), true);
    const auto otherDrag = redrawn.beyond;
    if (otherLeaf || otherCap)
        redrawn.beyond.assign(tree.limbs.size(), true);
    prop(tree, redrawn.beyond);
    sumUp(redrawn.beyond, otherDrag);
    return redrawn;
}

/// Whether all leaf weighs something else than before.
bool CaseStudy::hangsOtherwise(const Foliation& foliation) const
{
    if (foliation.leafPerSharingVolume_1_m != foliation_.leafPerSharingVolume_1_m)
        return true;
    // Ice is capped by what falls on the crown.
    return conditions_.glaze_m > 0.0 && (foliation.leafArea_m2 != foliation_.leafArea_m2 ||
                                         foliation.crownArea_m2 != foliation_.crownArea_m2 ||
                                         foliation.outlineArea_m2 != foliation_.outlineArea_m2);
}

std::vector<std::size_t> CaseStudy::known(const Tree& tree) const
{
    std::vector<std::size_t> from(tree.limbs.size(), kNoLimb);
    for (std::size_t i = 0; i < from.size(); ++i) {
        const auto& id = tree.limbs[i].id;
        const auto same = [&id](const Key& key) { return key.limb.id == id; };
        if (i < keys_.size() && same(keys_[i])) { // as a rule they stay in their places
            from[i] = i;
            continue;
        }
        const auto found = std::ranges::find_if(keys_, same);
        if (found != keys_.end())
            from[i] = static_cast<std::size_t>(found - keys_.begin());
    }
    return from;
}

void CaseStudy::carryOver(const std::vector<std::size_t>& from)
{
    if (inOrder(from, keys_.size()))
        return;
    rearrange(keys_, from);
    rearrange(case_.limbs, from);
    rearrange(case_.wind.pieces, from);
    rearrange(case_.wind.sums, from);
    rearrange(case_.wind.share, from);
    rearrange(case_.wind.outlineLeft, from);
    rearrange(case_.weights, from);
    rearrange(case_.drags, from);
}

/// Which limbs have other pieces than before.
std::vector<bool> CaseStudy::learn(const Tree& tree, const LimbOrder& order,
                                   const std::vector<std::size_t>& from)
{
    const auto onDeadWood = growsFromDeadWood(tree, order);
    std::vector<bool> own(tree.limbs.size(), false);
    std::vector<double> joints_m;
    for (std::size_t i = 0; i < own.size(); ++i) {
        joints_m.clear();
        for (const auto child : order.children[i])
            joints_m.push_back(tree.limbs[child].attachedAt_m);
        auto& key = keys_[i];
        const double ratio = aspectRatio(tree, order, i);
        own[i] = from[i] == kNoLimb || key.aspectRatio != ratio ||
                 key.onDeadWood != onDeadWood[i] || key.joints_m != joints_m ||
                 key.limb != tree.limbs[i];
        if (!own[i])
            continue;
        key = {tree.limbs[i], joints_m, ratio, onDeadWood[i]};
        appendLeafyBodies(tree.limbs[i], i, key.bodies);
    }
    return own;
}

/// Which limbs bear something else than before.
std::vector<bool> CaseStudy::beyond(const LimbOrder& order, const Redrawn& redrawn) const
{
    const auto& before = case_.order.children;
    std::vector<bool> beyond = redrawn.own;
    for (auto limb = order.rootFirst.rbegin(); limb != order.rootFirst.rend(); ++limb) {
        const auto& children = order.children[*limb];
        for (std::size_t n = 0; n < children.size() && !beyond[*limb]; ++n)
            beyond[*limb] =
                beyond[children[n]] || redrawn.from[children[n]] != before[redrawn.from[*limb]][n];
    }
    return beyond;
}

void CaseStudy::cut(const Cutting& cutting, const std::vector<bool>& own, bool all)
{
    for (std::size_t i = 0; i < own.size(); ++i) {
        if (!own[i] && !all)
            continue;
        const auto& key = keys_[i];
        if (!own[i] && conditions_.glaze_m == 0.0) {
            hangLeafOn(cutting, key.bodies, case_.limbs[i]);
            continue;
        }
        case_.limbs[i] = cutLimb(cutting, i, key.bodies, key.aspectRatio, key.onDeadWood);
        if (own[i])
            case_.wind.pieces[i] = dragOnPieces(case_.limbs[i].pieces, wind_);
    }
}

/// Takes off what props push up with under all that has come on since the tree was drawn (L30).
/// What one bears hangs on limbs all over the tree, so all are asked again. \param beyond  is told
/// which limbs bear something else by that
void CaseStudy::prop(const Tree& tree, std::vector<bool>& beyond)
{
    const bool wasPropped = case_.propped;
    const auto hasProps = [](const Limb& limb) { return !limb.props.empty(); };
    case_.propped = std::ranges::any_of(tree.limbs, hasProps);
    if (!case_.propped && !wasPropped)
        return;
    std::vector<std::vector<double>> before;
    for (auto& cut : case_.limbs) {
        auto& own = before.emplace_back();
        for (auto& piece : cut.pieces)
            own.push_back(std::exchange(piece.prop_kg, 0.0));
    }
    const auto elastic = elasticTree(tree, case_.order, case_.limbs, species_);
    const auto pushes = propPushes_N(elastic, drawnWeight(case_.limbs, species_),
                                     hungWeight(case_.limbs, species_));
    for (std::size_t i = 0; i < pushes.size(); ++i)
        case_.limbs[elastic.props[i].limb].pieces[elastic.props[i].piece].prop_kg +=
            pushes[i] / kGravity_m_s2;
    for (std::size_t limb = 0; limb < before.size(); ++limb)
        if (!std::ranges::equal(before[limb], case_.limbs[limb].pieces, {}, {}, &Piece::prop_kg))
            for (auto on = limb; on != kNoLimb; on = case_.order.parent[on])
                beyond[on] = true;
}

/// Sums what some limbs bear. \param wholly  of those, the ones whose drag is another too
void CaseStudy::sumUp(const std::vector<bool>& limbs, const std::vector<bool>& wholly)
{
    case_.standing = standingFactors(case_.order, case_.limbs);
    const auto& order = case_.order;
    auto& wind = case_.wind;
    for (auto limb = order.rootFirst.rbegin(); limb != order.rootFirst.rend(); ++limb) {
        if (!limbs[*limb])
            continue;
        const auto& pieces = case_.limbs[*limb].pieces;
        if (!wholly[*limb]) {
            sumLeaf(wind, order, pieces, *limb);
            leaveLee(wind, silhouettes_, *limb);
            case_.weights[*limb] = weightOfLimb(case_, *limb);
            continue;
        }
        wind.sums[*limb] = leeSums(wind, order, pieces, *limb);
        leaveLee(wind, silhouettes_, *limb);
        walkToBase(
            case_, *limb,
            [&](std::size_t piece, const Weight& weight, const DragSums& drag, const PerBearing&) {
                if (piece != 0)
                    return;
                case_.weights[*limb] = weight;
                case_.drags[*limb] = drag;
            });
    }
}

LoadCase loadCase(const Tree& tree, const Foliation& foliation, const Species& species,
                  const Place& place, Exposure exposure, const Conditions& conditions)
{
    CaseStudy study(species, place, exposure, conditions);
    (void)study.redraw(tree, foliation);
    return std::move(study).take();
}

} // namespace model::load
