#include "model/load/relief.hpp"

#include "model/load/section_change.hpp"
#include "model/load/weather.hpp"
#include "model/sketch/reshape.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace model::load {
namespace {

/// A hundredth of a percent of the tree's leaf: less is no cut to speak of.
constexpr double kLeastLeaf = 1e-4;

/// The limb and those that carry it, down to the stem.
std::vector<std::size_t> carriers(const LimbOrder& order, std::size_t limb)
{
    std::vector<std::size_t> found;
    for (; limb != kNoLimb; limb = order.parent[limb])
        found.push_back(limb);
    return found;
}

/// What thinning is asked of: the tree's loads, and what its limbs would break in.
struct Thinnings {
    const LoadStudy& load;
    const LoadCase* reference{};
    std::vector<MiddleBreak> breaks; ///< empty: not asked for
    double icePerLeafArea_kg_m2{};
};

/// Moment and utilisation, for all of the leaf at the rate of its first shoots.
void slopeOfLoad(const Thinnings& asked, std::size_t limb, std::size_t cut, const OwnLeaf& leaf,
                 LimbRelief& relief)
{
    const auto& load = asked.load.loadCase();
    const auto& at = asked.load.governing()[limb];
    const auto section = loadedSection(load, limb, at);
    const auto change = thinningSlope(load, limb, at, cut, leaf, asked.icePerLeafArea_kg_m2);
    const double windPart = at.duration < 1.0 ? 0.0 : 1.0; // weight alone governs for long
    const auto response = respond(section.section, section.direction,
                                  section.pulls.weight + windPart * section.pulls.wind,
                                  change.weight + windPart * change.wind);
    const auto& reported = asked.load.load().limbs[limb];
    relief.moment_Nm = -response.bendingSlope_Nm;
    if (at.hasStrength)
        relief.utilisation = -response.stressSlope_Pa / reported.strength_Pa;
}

/// The gust gained: the wind has to make up for the stress that went (L32).
void slopeOfGust(const Thinnings& asked, std::size_t limb, std::size_t cut, const OwnLeaf& leaf,
                 LimbRelief& relief)
{
    const auto& broken = asked.breaks[limb];
    if (!broken.breaks || broken.perGust <= 0.0)
        return;
    const auto section = loadedSection(*asked.reference, limb, broken.at);
    const auto change =
        thinningSlope(*asked.reference, limb, broken.at, cut, leaf, asked.icePerLeafArea_kg_m2);
    const auto pull = section.pulls.weight + broken.times * section.pulls.wind;
    const auto thinned = respond(section.section, section.direction, pull,
                                 change.weight + broken.times * change.wind);
    const auto blown = respond(section.section, section.direction, pull, section.pulls.wind);
    if (blown.stressSlope_Pa > 0.0)
        relief.breaking_m_s = -thinned.stressSlope_Pa / blown.stressSlope_Pa / broken.perGust;
}

double slopeOfBase_Nm(const Thinnings& asked, std::size_t cut, const OwnLeaf& leaf)
{
    const auto& load = asked.load.loadCase();
    const std::size_t trunk = load.order.trunk;
    const Vec3 up{0.0, 0.0, 1.0};
    double most = -1.0;
    double slope = 0.0;
    for (std::size_t i = 0; i < 2 * kHalfTurn; ++i) {
        Governing foot;
        foot.wind = {i % kHalfTurn, i >= kHalfTurn};
        foot.beyond.weight = load.weights[trunk];
        foot.beyond.drag = load.drags[trunk].from(foot.wind.bearing);
        const auto section = loadedSection(load, trunk, foot);
        const Pull pull = section.pulls.weight + section.pulls.wind;
        const double bending = bending_Nm(pull.moment_Nm, up);
        if (bending <= most)
            continue;
        most = bending;
        const auto change = thinningSlope(load, trunk, foot, cut, leaf, asked.icePerLeafArea_kg_m2);
        slope = respond(section.section, up, pull, change.weight + change.wind).bendingSlope_Nm;
    }
    return slope;
}

void perPercent(CutRelief& relief)
{
    const double percent = 100.0 * relief.leafShare;
    relief.base_Nm /= percent;
    for (auto& limb : relief.limbs) {
        limb.moment_Nm /= percent;
        limb.utilisation /= percent;
        limb.breaking_m_s /= percent;
    }
}

double sum(const std::vector<double>& areas)
{
    double total = 0.0;
    for (const double area : areas)
        total += area;
    return total;
}

/// The load of each limb by its id, for a cut puts limbs in other places.
std::map<std::string, std::size_t> places(const Tree& tree)
{
    std::map<std::string, std::size_t> found;
    for (std::size_t i = 0; i < tree.limbs.size(); ++i)
        found[tree.limbs[i].id] = i;
    return found;
}

/// Tries the removals of one tree, one after the other, on one study of its loads.
class Removals {
public:
    Removals(const Tree& tree, const Foliation& foliation, const Species& species,
             const Place& place, Exposure exposure, const Conditions& conditions, bool withGusts)
        : tree_(tree), foliation_(foliation), species_(species), exposure_(exposure),
          withGusts_(withGusts), study_(tree, foliation, species, place, exposure, conditions),
          reference_(species, place, exposure, atReference(conditions)), ranges_(species),
          order_(study_.loadCase().order), before_(study_.load())
    {
        if (!withGusts_)
            return;
        (void)reference_.redraw(tree, foliation);
        const BreakingLimbs limbs(tree, reference_.loadCase(), species, exposure);
        for (std::size_t i = 0; i < tree.limbs.size(); ++i)
            gusts_.push_back(ranges_.of(limbs, i));
    }

    CutRelief of(std::size_t limb)
    {
        const Tree after = sketch::removeLimb(tree_, tree_.limbs[limb].id);
        const auto where = places(after);
        const auto& load = study_.redraw(after, foliation_);
        if (withGusts_)
            (void)reference_.redraw(after, foliation_);
        CutRelief relief;
        relief.cut = limb;
        relief.kind = CutKind::removal;
        relief.base_Nm = before_.baseMoment_Nm - load.baseMoment_Nm;
        std::optional<BreakingLimbs> breaking;
        if (withGusts_)
            breaking.emplace(after, reference_.loadCase(), species_, exposure_);
        for (const auto carrier : carriers(order_, order_.parent[limb])) {
            const auto then = where.at(tree_.limbs[carrier].id);
            relief.limbs.push_back(relieved(carrier, load.limbs[then]));
            if (breaking && gusts_[carrier].hasStrength)
                relief.limbs.back().breaking_m_s =
                    ranges_.of(*breaking, then).p50_m_s - gusts_[carrier].p50_m_s;
        }
        return relief;
    }

    [[nodiscard]] const LimbOrder& order() const { return order_; }

private:
    static Conditions atReference(Conditions conditions)
    {
        conditions.gust_m_s = kReferenceGust_m_s;
        return conditions;
    }
    [[nodiscard]] LimbRelief relieved(std::size_t limb, const LimbLoad& after) const
    {
        const auto& before = before_.limbs[limb];
        const bool known = before.hasStrength && after.hasStrength;
        return {limb, before.moment_Nm - after.moment_Nm,
                known ? before.utilisation - after.utilisation : 0.0, 0.0};
    }

    const Tree& tree_;
    const Foliation& foliation_;
    const Species& species_;
    Exposure exposure_;
    bool withGusts_;
    LoadStudy study_;
    CaseStudy reference_;
    GustRanges ranges_;
    LimbOrder order_;
    TreeLoad before_;
    std::vector<BreakingGust> gusts_;
};

} // namespace

std::vector<CutRelief> thinningReliefs(const Tree& tree, const Foliation& foliation,
                                       const Species& species, const Conditions& conditions,
                                       const LoadStudy& load, const LoadCase* reference,
                                       const BreakingLimbs* breaking)
{
    const bool inLeaf = conditions.inLeaf || species.practice.leafHabit == LeafHabit::evergreen;
    Thinnings asked{load,
                    reference,
                    {},
                    glazePerLeafArea_kg_m2(species, foliation, inLeaf, conditions.glaze_m)};
    for (std::size_t i = 0; breaking && i < tree.limbs.size(); ++i)
        asked.breaks.push_back(breaking->middle(i));
    const auto areas = leafAreaByLimb_m2(tree, foliation);
    const double total = sum(areas);
    std::vector<CutRelief> reliefs;
    for (std::size_t cut = 0; cut < areas.size(); ++cut) {
        if (areas[cut] <= kLeastLeaf * total)
            continue;
        const auto leaf = ownLeaf(load.loadCase(), cut, asked.icePerLeafArea_kg_m2);
        const auto atReference =
            reference ? ownLeaf(*reference, cut, asked.icePerLeafArea_kg_m2) : OwnLeaf{};
        CutRelief relief{
            cut, CutKind::thinning, areas[cut] / total, -slopeOfBase_Nm(asked, cut, leaf), {}};
        for (const auto limb : carriers(load.loadCase().order, cut)) {
            relief.limbs.push_back({limb, 0.0, 0.0, 0.0});
            slopeOfLoad(asked, limb, cut, leaf, relief.limbs.back());
            if (reference && breaking)
                slopeOfGust(asked, limb, cut, atReference, relief.limbs.back());
        }
        perPercent(relief);
        reliefs.push_back(relief);
    }
    return reliefs;
}

std::vector<CutRelief> removalReliefs(const Tree& tree, const Foliation& foliation,
                                      const Species& species, const Place& place, Exposure exposure,
                                      const Conditions& conditions, bool withGusts)
{
    const auto areas = leafAreaByLimb_m2(tree, foliation);
    const double total = sum(areas);
    Removals removals(tree, foliation, species, place, exposure, conditions, withGusts);
    std::vector<CutRelief> reliefs;
    for (std::size_t cut = 0; cut < areas.size(); ++cut) {
        double leaf = 0.0;
        for (const auto limb : limbAndBeyond(removals.order(), cut))
            leaf += areas[limb];
        if (cut == removals.order().trunk || leaf <= kLeastLeaf * total)
            continue;
        auto relief = removals.of(cut);
        relief.leafShare = leaf / total;
        perPercent(relief);
        reliefs.push_back(std::move(relief));
    }
    return reliefs;
}

std::vector<CutRelief> allReliefs(const Tree& tree, const Foliation& foliation,
                                  const Species& species, const Place& place, Exposure exposure,
                                  const Conditions& conditions)
{
    Conditions atReference = conditions;
    atReference.gust_m_s = kReferenceGust_m_s;
    const auto reference = loadCase(tree, foliation, species, place, exposure, atReference);
    const BreakingLimbs breaking(tree, reference, species, exposure);
    const LoadStudy study(tree, foliation, species, place, exposure, conditions);
    auto reliefs =
        thinningReliefs(tree, foliation, species, conditions, study, &reference, &breaking);
    auto removals = removalReliefs(tree, foliation, species, place, exposure, conditions);
    reliefs.insert(reliefs.end(), removals.begin(), removals.end());
    return reliefs;
}

} // namespace model::load
