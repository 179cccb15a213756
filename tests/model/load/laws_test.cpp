#include "model/advice/prune.hpp"
#include "model/load/drag.hpp"
#include "model/load/limb_load.hpp"
#include "model/load/strength.hpp"
#include "model/load/wind.hpp"
#include "tests/model/load/samples.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>

namespace model::load {
namespace {

TreeLoad loads(const Tree& tree, const Foliation& foliation, double gust,
               const Species& species = redMaple())
{
    return treeLoad(tree, foliation, species, kSeaside, Exposure::scattered, {.gust_m_s = gust});
}

TEST(TreeLoad, DoublesWithTheWeightHungOn)
{
    auto tree = spreading(11, 5, 3);
    const Foliation bare;
    for (auto& limb : tree.limbs)
        limb.fruit_kg = limb.parent ? 6.0 : 0.0;
    const auto once = loads(tree, bare, 0.0, weightless());
    for (auto& limb : tree.limbs)
        limb.fruit_kg *= 2.0;
    const auto twice = loads(tree, bare, 0.0, weightless());
    for (std::size_t i = 0; i < tree.limbs.size(); ++i) {
        EXPECT_NEAR(twice.limbs[i].moment_Nm, 2.0 * once.limbs[i].moment_Nm, 1e-6);
        EXPECT_NEAR(twice.limbs[i].utilisation, 2.0 * once.limbs[i].utilisation, 1e-9);
    }
}

// Nothing but the bearing changes when tree and wind turn together. The steps are whole tens of
// degrees, since those are the bearings reckoned with.
TEST(TreeLoad, TurnsWithTheTree)
{
    const auto tree = spreading(12, 6, 3, 0.8);
    const auto foliation = foliate(tree, redMaple());
    const auto before = loads(tree, foliation, 28.0);
    for (const double angle : {10.0, 130.0, 270.0}) {
        const auto after = loads(turned(tree, angle), foliation, 28.0);
        EXPECT_NEAR(after.baseMoment_Nm, before.baseMoment_Nm, 1e-6 * before.baseMoment_Nm);
        for (std::size_t i = 0; i < tree.limbs.size(); ++i) {
            EXPECT_NEAR(after.limbs[i].utilisation, before.limbs[i].utilisation, 1e-6);
            EXPECT_NEAR(after.limbs[i].torsion_Nm, before.limbs[i].torsion_Nm, 0.01);
        }
    }
}

TEST(TreeLoad, HeedsNoOrderOfLimbs)
{
    const auto tree = spreading(13, 5, 3);
    const auto foliation = foliate(tree, redMaple());
    auto shuffled = tree;
    std::ranges::reverse(shuffled.limbs);
    const auto one = loads(tree, foliation, 25.0);
    const auto other = loads(shuffled, foliation, 25.0);
    for (std::size_t i = 0; i < tree.limbs.size(); ++i)
        EXPECT_NEAR(one.limbs[i].utilisation, other.limbs[tree.limbs.size() - 1 - i].utilisation,
                    1e-9);
}

// More stations on the same straight limb are the same limb, to within what the lines that meet its
// thin bare wood make of it.
TEST(TreeLoad, HeedsNoStationsBetween)
{
    auto tree = cantilever(straight("stem", {0, 0, 0}, {0, 0, 4}, 0.3, 0.2));
    tree.limbs.push_back(
        leafy(growing(straight("limb", {0, 0, 3}, {3, 1, 4}, 0.12, 0.04), "stem", 3.0), 0.8, 0.7));
    const auto foliation = foliate(tree, redMaple());
    const auto coarse = loads(tree, foliation, 25.0);
    tree.limbs[1].stations = {};
    const auto whole = straight("limb", {0, 0, 3}, {3, 1, 4}, 0.12, 0.04);
    for (int i = 0; i <= 9; ++i) {
        const auto point = axisPoint(whole, length_m(whole) * i / 9.0);
        tree.limbs[1].stations.push_back({point.position_m, point.diameter_m, {}});
    }
    const auto fine = loads(tree, foliation, 25.0);
    for (std::size_t i = 0; i < 2; ++i)
        EXPECT_NEAR(fine.limbs[i].utilisation / coarse.limbs[i].utilisation, 1.0, 0.01);
}

TEST(TreeLoad, OfASingleLimbFallsWithEveryPieceCutOff)
{
    auto tree = cantilever(straight("stem", {0, 0, 0}, {0, 0, 4}, 0.3, 0.2));
    tree.limbs.push_back(
        leafy(growing(straight("limb", {0, 0, 3}, {4, 1, 4}, 0.12, 0.04), "stem", 3.0), 0.8, 0.7));
    const auto foliation = foliate(tree, redMaple());
    for (const double gust : {0.0, 25.0}) {
        double mass = 1e9;
        double base = 1e9;
        for (double kept = 4.0; kept > 0.5; kept -= 0.25) {
            const auto cut = advice::afterCut(
                tree, {CutKind::reduction, "limb", kept, std::nullopt, std::nullopt, {}});
            const auto load = loads(cut, foliation, gust);
            EXPECT_LT(load.limbs[1].mass_kg, mass);
            EXPECT_LT(load.baseMoment_Nm, base) << gust << " " << kept;
            mass = load.limbs[1].mass_kg;
            base = load.baseMoment_Nm;
        }
    }
}

// Closed form: a cord has no moment anywhere, so one that hangs from a limb passes on the drag on
// it where it hangs: wind across a level limb does not twist it, however long its shoots.
TEST(TreeLoad, OfHangingShootsDoesNotTwistALevelLimb)
{
    const auto torsion = [](double hanging_m) {
        Tree tree = cantilever(straight("stem", {0, 0, 0}, {0, 0, 5.0}, 0.30, 0.28));
        tree.limbs.push_back(
            leafy(growing(straight("limb", {0, 0, 4.5}, {0, 4.0, 4.5}, 0.10, 0.03), "stem", 4.5),
                  0.5, 0.3, hanging_m));
        const auto load = loads(tree, foliate(tree, redMaple()), 25.0).limbs[1];
        EXPECT_GT(load.windMoment_Nm, 100.0);
        return load.torsion_Nm;
    };
    EXPECT_NEAR(torsion(0.0), 0.0, 1e-9);
    EXPECT_NEAR(torsion(3.0), 0.0, 1e-9);
}

// Cutting one limb leaves the limbs that don't carry it as they were.
TEST(TreeLoad, OfOtherLimbsStaysWhenOneIsRemoved)
{
    const auto tree = spreading(14, 5, 3);
    const auto foliation = foliate(tree, redMaple());
    const auto before = loads(tree, foliation, 25.0);
    const auto removed = tree.limbs.back().id; // a scaffold with laterals
    const auto cut =
        advice::afterCut(tree, {CutKind::removal, removed, 0.0, std::nullopt, std::nullopt, {}});
    const auto after = loads(cut, foliation, 25.0);
    const auto trunk = limbOrder(tree).trunk;
    for (std::size_t i = 0; i < cut.limbs.size(); ++i) {
        const auto was = limbIndex(tree, cut.limbs[i].id);
        if (was != trunk) {
            EXPECT_NEAR(after.limbs[i].utilisation, before.limbs[was].utilisation, 0.02)
                << cut.limbs[i].id;
        }
    }
    EXPECT_LT(after.mass_kg, before.mass_kg);
}

// Published: thinning lowers wind load in step with the mass removed (Smiley & Kane 2006, AUF 32);
// strain on a pruned limb falls in proportion to the dose (Gilman, Miesbauer & Masters 2015, AUF
// 41:1).
TEST(TreeLoad, WindFallsInStepWithThinning)
{
    const auto tree = spreading(15, 5, 3);
    const auto foliation = foliate(tree, redMaple());
    const auto before = loads(tree, foliation, 25.0);
    const auto limb = tree.limbs.size() - 2; // a lateral: its own leaf is all that it holds
    for (const double share : {0.1, 0.25, 0.5}) {
        const auto thinned = advice::afterCut(
            tree, {CutKind::thinning, tree.limbs[limb].id, 0.0, std::nullopt, share, {}});
        const auto after = loads(thinned, foliation, 25.0);
        OUTSIDE_NEAR(after.limbs[limb].wind_N / before.limbs[limb].wind_N, 1.0 - share, 0.03);
    }
}

TEST(TreeLoad, GivesDeadAndCrackedWoodNoStrength)
{
    auto tree = spreading(16, 4, 2);
    const auto foliation = foliate(tree, redMaple());
    const auto limb = limbIndex(tree, "1");
    const auto lateral = limbIndex(tree, "1b");
    const auto sound = loads(tree, foliation, 25.0);
    for (const auto kind : {DefectKind::dead, DefectKind::broken, DefectKind::crack}) {
        auto ill = tree;
        Defect defect;
        defect.kind = kind;
        defect.at_m = 1.0;
        ill.limbs[limb].defects.push_back(defect);
        const auto load = loads(ill, foliation, 25.0);
        EXPECT_FALSE(load.limbs[limb].hasStrength);
        EXPECT_DOUBLE_EQ(load.limbs[limb].strength_Pa, 0.0);
        EXPECT_GE(load.limbs[limb].utilisation, 1.0);
        EXPECT_TRUE(std::isfinite(load.limbs[limb].utilisation));
        EXPECT_GE(load.limbs[limb].governingAt_m, 1.0 - 1e-6);
        // A limb that grows from dead or broken wood is lost with it; beyond a crack it still has
        // its own.
        EXPECT_EQ(load.limbs[lateral].hasStrength, kind == DefectKind::crack);
        EXPECT_DOUBLE_EQ(load.limbs[limb].mass_kg, sound.limbs[limb].mass_kg);
    }
}

TEST(TreeLoad, OfAHollowLimbRisesByWhatTheSectionLost)
{
    auto tree = cantilever(straight("stem", {0, 0, 0}, {0, 0, 4}, 0.3, 0.2));
    tree.limbs.push_back(
        leafy(growing(straight("limb", {0, 0, 3}, {3, 1, 4}, 0.12, 0.12), "stem", 3.0), 0.8, 0.7));
    const auto foliation = foliate(tree, redMaple());
    const auto sound = loads(tree, foliation, 25.0);
    Defect hollow;
    hollow.kind = DefectKind::cavity;
    hollow.residualWall_m = 0.01;
    tree.limbs[1].defects.push_back(hollow);
    const auto ill = loads(tree, foliation, 25.0);
    const double lost = 1.0 - std::pow(1.0 - 2.0 * 0.01 / 0.12, 4);
    EXPECT_GT(ill.limbs[1].stress_Pa, sound.limbs[1].stress_Pa / lost * 0.99);
    EXPECT_LT(ill.limbs[1].stress_Pa, sound.limbs[1].stress_Pa / lost * 1.05);
    EXPECT_TRUE(ill.limbs[1].hasStrength);
    tree.limbs[1].defects.front().residualWall_m = 0.0;
    EXPECT_FALSE(loads(tree, foliation, 25.0).limbs[1].hasStrength);
}

// Published worked ratio: bare, deciduous crowns keep 0.5 to 0.71 of their drag (Tanaka et al.
// 2011); evergreens keep theirs, whatever the season is said to be.
TEST(TreeLoad, HeedsLeavesByHabit)
{
    const auto tree = spreading(17, 5, 3);
    auto species = redMaple();
    const auto foliation = foliate(tree, species);
    const auto load = [&](bool inLeaf) {
        return treeLoad(tree, foliation, species, kSeaside, Exposure::scattered,
                        {.gust_m_s = 25.0, .inLeaf = inLeaf});
    };
    species.practice.leafHabit = LeafHabit::deciduous;
    EXPECT_LT(load(false).baseMoment_Nm, load(true).baseMoment_Nm);
    EXPECT_DOUBLE_EQ(load(false).leaf_kg, 0.0);
    species.practice.leafHabit = LeafHabit::evergreen;
    EXPECT_DOUBLE_EQ(load(false).baseMoment_Nm, load(true).baseMoment_Nm);
}

// Published: drag for each unit of branch mass stays when other branches are cut away (Rudnicki et
// al. 2004, Vollsinger et al. 2005): no limb drags more for its leaf than the crown for all of it.
TEST(LeafCap, HoldsForEveryLimb)
{
    const auto tree = spreading(18, 6, 4);
    const auto foliation = foliate(tree, redMaple());
    const auto order = limbOrder(tree);
    const auto areas = leafAreaByLimb_m2(tree, foliation);
    const auto load = loads(tree, foliation, 28.0);
    const auto total = foliation.leafArea_m2;
    const double gust = 28.0 * gustShare(Exposure::scattered, height_m(tree));
    const double q = dynamicPressure_Pa(1.225, gust);
    const double crown =
        q * crownDragCoefficient(DragGroup::medium, gust) * foliation.outlineArea_m2;
    for (std::size_t i = 0; i < tree.limbs.size(); ++i) {
        double leaf = 0.0;
        double bare = 0.0;
        for (const auto limb : limbAndBeyond(order, i)) {
            leaf += areas[limb];
            bare += q * tree.limbs[limb].stations.front().diameter_m * length_m(tree.limbs[limb]);
        }
        EXPECT_LE(load.limbs[i].wind_N, crown * leaf / total + bare) << tree.limbs[i].id;
    }
}

} // namespace
} // namespace model::load
