#include "model/advice/prune.hpp"
#include "model/load/relief.hpp"
#include "model/load/section_change.hpp"
#include "tests/model/load/samples.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

namespace model::load {
namespace {

constexpr Conditions kWindy{.gust_m_s = 28.0};

/// Stress and bending at one section in one wind, by a full load case of a tree.
Response atSection(const Tree& tree, const Foliation& foliation, std::size_t limb, Governing at)
{
    const auto load = loadCase(tree, foliation, redMaple(), kSeaside, Exposure::scattered, kWindy);
    const auto ends = beyondPieces(load, limb, at.wind.bearing);
    at.beyond = at.along_m > 0.0
                    ? beyondWithin(load, limb, at.piece, at.along_m, ends, at.wind.bearing)
                    : ends[at.piece];
    const auto section = loadedSection(load, limb, at);
    return respond(section.section, section.direction, section.pulls.weight + section.pulls.wind,
                   {});
}

Tree thinnedBy(Tree tree, std::size_t limb, double share)
{
    auto& thinned = tree.limbs[limb].foliage->thinned;
    thinned = 1.0 - (1.0 - thinned) * (1.0 - share);
    return tree;
}

const LimbRelief& ofLimb(const CutRelief& relief, std::size_t limb)
{
    return *std::ranges::find(relief.limbs, limb, &LimbRelief::limb);
}

// Outside: differences of whole load cases of trees thinned by one and by two small steps. They err
// by the third derivative times the step squared, 1e-10, and by rounding, 1e-10. One-sided, for
// leaf can only be taken: where outline and leaf limit alike (L9) adding some is another matter.
TEST(ThinningRelief, IsTheDerivativeOfTheFullAssessment)
{
    constexpr double kStep = 1e-5;
    double largest = 0.0;
    for (const unsigned seed : {41U, 42U, 43U}) {
        const auto tree = spreading(seed, 5, 3, seed == 43U ? 0.7 : 0.0);
        const auto foliation = foliate(tree, redMaple());
        const LoadStudy study(tree, foliation, redMaple(), kSeaside, Exposure::scattered, kWindy);
        const auto reliefs =
            thinningReliefs(tree, foliation, redMaple(), kWindy, study, nullptr, nullptr);
        EXPECT_EQ(reliefs.size(), 20U);
        for (const auto& cut : reliefs) {
            const auto once = thinnedBy(tree, cut.cut, kStep);
            const auto twice = thinnedBy(tree, cut.cut, 2.0 * kStep);
            for (const auto& limb : cut.limbs) {
                const auto& at = study.governing()[limb.limb];
                const auto f0 = atSection(tree, foliation, limb.limb, at);
                const auto f1 = atSection(once, foliation, limb.limb, at);
                const auto f2 = atSection(twice, foliation, limb.limb, at);
                const double percents = 100.0 * cut.leafShare * 2.0 * kStep;
                const auto& load = study.load().limbs[limb.limb];
                const double moment =
                    (3.0 * f0.bending_Nm - 4.0 * f1.bending_Nm + f2.bending_Nm) / percents;
                const double use = (3.0 * f0.stress_Pa - 4.0 * f1.stress_Pa + f2.stress_Pa) /
                                   percents / load.strength_Pa;
                OUTSIDE_NEAR(limb.moment_Nm, moment, 1e-6 * std::max(1.0, std::abs(moment)));
                OUTSIDE_NEAR(limb.utilisation, use, 1e-6 * std::max(0.01, std::abs(use)));
                largest = std::max(largest, std::abs(limb.moment_Nm - moment) /
                                                std::max(1.0, std::abs(moment)));
            }
        }
    }
    std::printf("largest difference from finite differences: %.1e\n", largest);
}

// The place that governs may move, but at first it makes no difference: a small thinning assessed
// whole agrees with the derivative.
TEST(ThinningRelief, ForetellsASmallCutAssessedWhole)
{
    constexpr double kShare = 0.01;
    const auto tree = spreading(44, 5, 3);
    const auto foliation = foliate(tree, redMaple());
    const LoadStudy study(tree, foliation, redMaple(), kSeaside, Exposure::scattered, kWindy);
    for (const auto& cut :
         thinningReliefs(tree, foliation, redMaple(), kWindy, study, nullptr, nullptr)) {
        const auto after = treeLoad(thinnedBy(tree, cut.cut, kShare), foliation, redMaple(),
                                    kSeaside, Exposure::scattered, kWindy);
        const double percents = 100.0 * cut.leafShare * kShare;
        EXPECT_NEAR(cut.base_Nm * percents, study.load().baseMoment_Nm - after.baseMoment_Nm,
                    0.02 * std::abs(cut.base_Nm * percents) + 0.01);
        for (const auto& limb : cut.limbs) {
            const double gained =
                study.load().limbs[limb.limb].utilisation - after.limbs[limb.limb].utilisation;
            EXPECT_NEAR(limb.utilisation * percents, gained, 0.02 * std::abs(gained) + 2e-6);
        }
    }
}

// Outside of the derivative: breaking gusts of the thinned tree by the full 512 draws. Draws that
// could not have stood are left out, and the law of drag is held, hence a tenth.
TEST(ThinningRelief, ForetellsTheBreakingGust)
{
    constexpr double kShare = 0.02;
    const auto tree = spreading(45, 4, 3);
    const auto foliation = foliate(tree, redMaple());
    Conditions at = kWindy;
    at.gust_m_s = kReferenceGust_m_s;
    const auto reference = loadCase(tree, foliation, redMaple(), kSeaside, Exposure::scattered, at);
    const BreakingLimbs breaking(tree, reference, redMaple(), Exposure::scattered);
    const LoadStudy study(tree, foliation, redMaple(), kSeaside, Exposure::scattered, kWindy);
    const auto gusts = [&](const Tree& of) {
        return breakingGusts(of, foliation, redMaple(), kSeaside, Exposure::scattered, kWindy);
    };
    const auto before = gusts(tree);
    for (const auto& cut :
         thinningReliefs(tree, foliation, redMaple(), kWindy, study, &reference, &breaking)) {
        const auto after = gusts(thinnedBy(tree, cut.cut, kShare));
        for (const auto& limb : cut.limbs) {
            const double gained = after[limb.limb].p50_m_s - before[limb.limb].p50_m_s;
            const double foretold = 100.0 * cut.leafShare * kShare * limb.breaking_m_s;
            if (after[limb.limb].p50_m_s >= kGreatestGust_m_s)
                continue;
            OUTSIDE_NEAR(foretold, gained, 0.1 * std::abs(gained) + 0.01)
                << tree.limbs[cut.cut].id << " for " << tree.limbs[limb.limb].id;
        }
    }
}

// Law: a removal is told of as it would be assessed.
TEST(RemovalRelief, IsTheDifferenceThatTheWholeCutMakes)
{
    const auto tree = spreading(46, 4, 3);
    const auto foliation = foliate(tree, redMaple());
    const auto load = [&](const Tree& of) {
        return treeLoad(of, foliation, redMaple(), kSeaside, Exposure::scattered, kWindy);
    };
    const auto gusts = [&](const Tree& of) {
        return breakingGusts(of, foliation, redMaple(), kSeaside, Exposure::scattered, kWindy);
    };
    const auto before = load(tree);
    const auto gustsBefore = gusts(tree);
    const auto order = limbOrder(tree);
    const auto reliefs =
        removalReliefs(tree, foliation, redMaple(), kSeaside, Exposure::scattered, kWindy);
    EXPECT_EQ(reliefs.size(), tree.limbs.size() - 1);
    for (const auto& cut : reliefs) {
        const auto cutTree =
            advice::afterCut(tree, {CutKind::removal, tree.limbs[cut.cut].id, 0.0, {}, {}, {}});
        const auto after = load(cutTree);
        const auto gustsAfter = gusts(cutTree);
        const double percents = 100.0 * cut.leafShare;
        EXPECT_NEAR(cut.base_Nm * percents, before.baseMoment_Nm - after.baseMoment_Nm, 1e-6);
        EXPECT_EQ(cut.limbs.back().limb, order.trunk);
        for (const auto& limb : cut.limbs) {
            const auto then = limbIndex(cutTree, tree.limbs[limb.limb].id);
            EXPECT_NEAR(limb.moment_Nm * percents,
                        before.limbs[limb.limb].moment_Nm - after.limbs[then].moment_Nm, 1e-6);
            EXPECT_NEAR(limb.utilisation * percents,
                        before.limbs[limb.limb].utilisation - after.limbs[then].utilisation, 1e-9);
            EXPECT_NEAR(limb.breaking_m_s * percents,
                        gustsAfter[then].p50_m_s - gustsBefore[limb.limb].p50_m_s, 1e-9);
        }
    }
}

// Published: strain on a pruned limb falls in proportion to the dose of leaf taken (Gilman,
// Miesbauer & Masters 2015, AUF 41:1). A limb that bears only its own leaf loses its wind in
// proportion, and with it about the same share of its moment.
TEST(ThinningRelief, OfALimbWithAllItsLeafIsAsTheDose)
{
    const auto tree = spreading(47, 5, 3);
    const auto foliation = foliate(tree, redMaple());
    const LoadStudy study(tree, foliation, redMaple(), kSeaside, Exposure::scattered, kWindy);
    const auto order = limbOrder(tree);
    for (const auto& cut :
         thinningReliefs(tree, foliation, redMaple(), kWindy, study, nullptr, nullptr)) {
        if (!order.children[cut.cut].empty())
            continue;
        const double all = 100.0 * cut.leafShare * ofLimb(cut, cut.cut).moment_Nm;
        const double share = all / study.load().limbs[cut.cut].moment_Nm;
        OUTSIDE_WITHIN(share, 0.6, 1.05) << tree.limbs[cut.cut].id;
    }
}

TEST(ThinningRelief, LeavesOutLimbsWithoutLeaf)
{
    auto tree = spreading(48, 3, 2);
    tree.limbs.back().foliage.reset();
    const auto foliation = foliate(tree, redMaple());
    const LoadStudy study(tree, foliation, redMaple(), kSeaside, Exposure::scattered, kWindy);
    for (const auto& cut :
         thinningReliefs(tree, foliation, redMaple(), kWindy, study, nullptr, nullptr)) {
        EXPECT_NE(cut.cut, tree.limbs.size() - 1);
        EXPECT_NE(cut.cut, limbOrder(tree).trunk);
        EXPECT_GT(cut.leafShare, 0.0);
    }
}

} // namespace
} // namespace model::load
