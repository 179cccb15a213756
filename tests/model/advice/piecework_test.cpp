#include "model/advice/piecework.hpp"
#include "tests/outside/outside_check.hpp"

#include "model/advice/cut_work.hpp"
#include "model/advice/debris.hpp"
#include "model/advice/drop_zone.hpp"
#include "model/advice/limits.hpp"
#include "model/advice/work_order.hpp"
#include "model/constants.hpp"
#include "model/geometry/angle.hpp"
#include "tests/model/advice/limb_from.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

namespace model::advice {
namespace {

Species oakLike()
{
    Species species;
    species.wood.basicSpecificGravity.value = 0.56;
    species.wood.limbDensity_kg_m3.value = 1000.0;
    return species;
}

/// A trunk with one limb at `height_m` that runs level to the east, bare.
Tree oneLimb(double height_m, double length_m, double thick_m)
{
    Tree tree;
    tree.id = "tree";
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.4, {}}, {{0, 0, 8}, 0.2, {}}};
    tree.limbs = {trunk, limbFrom("limb", trunk, height_m, {length_m, 0, 0}, thick_m)};
    return tree;
}

Cut removal(const char* limb)
{
    return {CutKind::removal, limb, 0.0, {}, {}, {}};
}

double mass_kg(const std::vector<Piece>& pieces)
{
    return std::accumulate(pieces.begin(), pieces.end(), 0.0,
                           [](double sum, const Piece& piece) { return sum + piece.mass_kg; });
}

// Published: Iowa State University Extension, equipment to prune trees and shrubs: hand shears up
// to 3/4 in, loppers from there to 1 1/2 in, a saw above.
TEST(Tool, IsTheLightestThatCutsSoThickFromTheGround)
{
    constexpr double inch_m = 0.0254;
    EXPECT_EQ(toolFor(0.74 * inch_m, 1.5), Tool::secateurs);
    EXPECT_EQ(toolFor(0.76 * inch_m, 1.5), Tool::loppers);
    EXPECT_EQ(toolFor(1.49 * inch_m, 1.5), Tool::loppers);
    EXPECT_EQ(toolFor(1.51 * inch_m, 1.5), Tool::handSaw);
    EXPECT_EQ(toolFor(0.2, 2.09), Tool::handSaw);
    EXPECT_EQ(toolFor(0.2, 2.11), Tool::poleSaw);
    EXPECT_EQ(toolFor(1.25 * inch_m, 2.11), Tool::polePruner);
    EXPECT_EQ(toolFor(1.27 * inch_m, 2.11), Tool::poleSaw);
    EXPECT_EQ(toolFor(0.0, 4.59), Tool::polePruner);
    EXPECT_EQ(toolFor(0.0, 4.61), Tool::outOfReach);
}

// Closed form: a bare limb 6 m long that tapers from 100 to 50 mm has
// pi/12 x 6 x (0.01 + 0.005 + 0.0025) m3 of wood, 27.5 kg at 1000 kg/m3.
TEST(Pieces, AreNoHeavierThanOnePersonHoldsAndAddUpToTheLimb)
{
    const auto tree = oneLimb(1.8, 6.0, 0.10);
    const auto all = pieces(tree, removal("limb"), {}, oakLike());
    OUTSIDE_NEAR(mass_kg(all), 1000.0 * std::numbers::pi / 12.0 * 6.0 * 0.0175, 1e-6);
    ASSERT_EQ(all.size(), 3u); // three lengths of 2 m
    for (const auto& piece : all) {
        EXPECT_LE(piece.mass_kg, kHeavyPiece_kg);
        OUTSIDE_NEAR(piece.length_m, 2.0, 1e-6);
        EXPECT_TRUE(piece.threeCuts);
    }
    EXPECT_GT(all[0].at_m, all[1].at_m); // the tip first
    EXPECT_EQ(all.back().at_m, 0.0);     // the wound last
    OUTSIDE_NEAR(all.back().diameter_m, 0.10, 1e-9);
}

TEST(Pieces, AreSawnWhereAPoleReachesAndHeavierThatFarOut)
{
    auto tree = oneLimb(4.0, 0.1, 0.12);
    // It rises past the reach of a pole and stays out there.
    tree.limbs[1].stations = {
        {{0, 0, 4.0}, 0.12, {}}, {{0, 0.5, 5.5}, 0.12, {}}, {{0, 4.5, 5.5}, 0.12, {}}};
    const auto all = pieces(tree, removal("limb"), {}, oakLike());
    EXPECT_GT(all.front().mass_kg, kVeryHeavyPiece_kg);
    for (const auto& piece : all)
        EXPECT_LE(piece.cut_m.z, kPoleSawReach_m);
}

// Law: however a limb forks, its lengths weigh together what the limb weighs, and none is heavier
// than a person holds while all of it is within reach.
TEST(Pieces, AddUpOnForkedLimbs)
{
    std::mt19937 random(5);
    const auto pick = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    for (int round = 0; round < 60; ++round) {
        auto tree = oneLimb(1.5, pick(2.0, 6.0), pick(0.05, 0.15));
        const auto limb = tree.limbs[1];
        for (int i = 0; i < 4; ++i) {
            auto lateral = limbFrom("lateral" + std::to_string(i), limb, pick(0.2, length_m(limb)),
                                    {pick(-2, 2), pick(-2, 2), pick(0, 2)}, pick(0.02, 0.06));
            lateral.foliage = Foliage{0.2, 0.4, 0.0, {}, FoliageDensity::medium, 0.0, {}};
            lateral.fruit_kg = pick(0.0, 4.0);
            tree.limbs.push_back(lateral);
        }
        Foliation foliation;
        foliation.leafArea_m2 = 20.0;
        foliation.leafPerSharingVolume_1_m = 1.5;
        const Garden garden;
        const auto planned = plannedCut(garden, tree, removal("limb"), foliation, oakLike());
        EXPECT_NEAR(mass_kg(planned.pieces), planned.mass_kg, 1e-6 * planned.mass_kg);
        for (const auto& piece : planned.pieces)
            EXPECT_LE(piece.mass_kg, kHeavyPiece_kg + 2.0) << round; // a lateral at most on top
        EXPECT_EQ(planned.pieces.back().limb, "limb");
        EXPECT_EQ(planned.pieces.back().at_m, 0.0);
        const auto cut = Cut{CutKind::reduction, "limb", length_m(limb) / 2.0, {}, {}, {}};
        const auto shorter = plannedCut(garden, tree, cut, foliation, oakLike());
        EXPECT_NEAR(mass_kg(shorter.pieces), shorter.mass_kg, 1e-6 * planned.mass_kg);
    }
}

/// Where a rod let go after it has swung to `below` lies at the farthest, by small steps in time.
double byStepsInTime_m(const Falling& piece, double below)
{
    constexpr double kStep_s = 1e-4;
    double angle = -radians(piece.slope_deg);
    double spin = 0.0;
    while (angle < below) { // a rod about its end: I = m L2 / 3
        const double turn = 1.5 * kGravity_m_s2 * std::cos(angle) / piece.length_m;
        angle += kStep_s * (spin + 0.5 * kStep_s * turn);
        spin += kStep_s * 1.5 * kGravity_m_s2 * std::cos(angle) / piece.length_m;
        if (spin <= 0.0)
            break; // it stands upright and doesn't start
    }
    const double half = piece.length_m / 2.0;
    double x = half * std::cos(angle);
    double z = piece.height_m - half * std::sin(angle);
    const double vx = -half * spin * std::sin(angle);
    double vz = -half * spin * std::cos(angle);
    if (z <= 0.0)
        return piece.length_m; // it stands on the ground before it is let go
    while (z > 0.0) {
        x += kStep_s * vx;
        z += kStep_s * (vz - 0.5 * kStep_s * kGravity_m_s2);
        vz -= kStep_s * kGravity_m_s2;
    }
    return std::abs(x) + half;
}

// Brute force: the swing and the fall in steps of a tenth of a millisecond.
TEST(DropZone, ReachesAsFarAsASwingingRodIsThrown)
{
    for (const double length_m : {1.0, 2.0, 4.0})
        for (const double height_m : {2.0, 4.0, 8.0})
            for (const double slope_deg : {-60.0, 0.0, 45.0}) {
                const Falling piece{length_m, height_m, slope_deg};
                double most_m = length_m;
                for (double below = -slope_deg; below <= 90.0; below += 2.0)
                    most_m = std::max(most_m, byStepsInTime_m(piece, radians(below)));
                OUTSIDE_NEAR(dropRadius_m(piece), most_m, 0.03 * most_m)
                    << length_m << ' ' << height_m << ' ' << slope_deg;
            }
}

// Closed form: let go when it hangs straight, a rod that started level flies
// sqrt(3 g L)/2 x sqrt((2 h - L)/g) back under the tree.
TEST(DropZone, IsAtLeastTheThrowOfARodThatHangsStraight)
{
    const double length_m = 2.0;
    const double height_m = 2.5;
    const double thrown_m =
        0.5 * std::sqrt(3.0 * length_m * (2.0 * height_m - length_m)) + length_m / 2.0;
    EXPECT_GE(dropRadius_m({length_m, height_m, 0.0}), thrown_m - 1e-9);
    EXPECT_LT(dropRadius_m({length_m, height_m, 0.0}), 1.2 * thrown_m);
}

TEST(DropZone, NamesWhatLiesInItAndNothingElse)
{
    const auto tree = oneLimb(2.0, 2.0, 0.04);
    auto piece = pieces(tree, removal("limb"), {}, oakLike()).back();
    piece.dropRadius_m = 3.0;
    const auto square = [](double west) {
        return Polygon{{west, -1}, {west + 1, -1}, {west + 1, 1}, {west, 1}};
    };
    Garden garden;
    garden.plantings = {{"near-bed", "", PlantingKind::bed, "", square(2.9), 0.0, {}},
                        {"far-bed", "", PlantingKind::bed, "", square(3.1), 0.0, {}},
                        {"lawn", "", PlantingKind::lawn, "", square(0.0), 0.0, {}}};
    garden.strips = {{"path", "", StripUse::path, square(-1.0), {}, {}}};
    garden.structures = {{"shed", "", StructureKind::building, square(-3.9), 2.5, {}},
                         {"pond", "", StructureKind::pond, square(0.0), 0.0, {}}};
    garden.lines = {{"low-wire", "", {{-9, 2.5, 1.9}, {9, 2.5, 1.9}}, {}, {}},
                    {"high-wire", "", {{-9, 2.5, 6.0}, {9, 2.5, 6.0}}, {}, {}}};
    std::vector<std::string> found;
    for (const auto& each : inDropZone(garden, tree, {&piece, 1}))
        found.push_back(each.id);
    std::ranges::sort(found);
    EXPECT_EQ(found, (std::vector<std::string>{"low-wire", "near-bed", "path", "shed"}));
}

// Published: 250 lb of loose yard debris in a cubic yard (Oregon Department of Environmental
// Quality, materials recovery survey, as posted 2005); chips of green wood 473 lb in a cubic yard,
// and brush shrinks to a quarter when it is chipped (FEMA 325, from memory).
TEST(Debris, PacksAsPublishedHeapsDo)
{
    constexpr double kPerYard = 0.45359237 / (0.9144 * 0.9144 * 0.9144);
    OUTSIDE_NEAR(kBrushDense_kg_m3, 250.0 * kPerYard, 0.5);
    OUTSIDE_NEAR(kBrush_kg_m3, 473.0 / 4.0 * kPerYard, 0.5);
    OUTSIDE_NEAR(kBrushLoose_kg_m3, 46.69 * kPerYard, 0.5); // EPA, green prunings, from memory
    Piece piece;
    piece.mass_kg = 100.0;
    piece.logs_kg = 30.0;
    piece.logs_m3 = 0.03;
    piece.diameter_m = 0.08;
    Piece shoots;
    shoots.mass_kg = 7.0;
    const std::vector<Piece> all{piece, shoots};
    const auto debris = debrisOf(all);
    EXPECT_DOUBLE_EQ(debris.mass_kg, 107.0);
    EXPECT_DOUBLE_EQ(debris.brush_m3, 77.0 / 70.0);
    EXPECT_DOUBLE_EQ(debris.logs_m3, 0.03 / 0.65);
    EXPECT_EQ(debris.pieces, 1);
}

TEST(WorkOrder, TakesWhatGrowsFromALimbBeforeTheLimb)
{
    auto tree = oneLimb(2.0, 3.0, 0.1);
    tree.limbs.push_back(limbFrom("low-spur", tree.limbs[1], 1.0, {0, 0, -1.5}, 0.03));
    tree.limbs.push_back(limbFrom("high", tree.limbs[0], 5.0, {0, 2, 0}, 0.06));
    const Cut shorten{CutKind::reduction, "limb", 2.0, {}, {}, {}};
    const Cut thin{CutKind::thinning, "limb", 0.0, {}, 0.2, {}};
    const Cut lift{CutKind::lifting, "high", 0.0, 2.2, {}, {}};
    const auto order =
        inWorkingOrder(tree, {thin, shorten, removal("low-spur"), removal("high"), lift});
    std::vector<std::pair<std::string, CutKind>> shown;
    for (const auto& cut : order)
        shown.emplace_back(cut.limb, cut.kind);
    // "high" can't be lifted any more once it is off; the spur comes before the limb it grows
    // from; the shortened limb is thinned last.
    EXPECT_EQ(shown, (std::vector<std::pair<std::string, CutKind>>{{"high", CutKind::lifting},
                                                                   {"high", CutKind::removal},
                                                                   {"low-spur", CutKind::removal},
                                                                   {"limb", CutKind::reduction},
                                                                   {"limb", CutKind::thinning}}));
}

TEST(WorkOrder, LiftsFirstAndThenFromTheTopDown)
{
    auto tree = oneLimb(2.0, 3.0, 0.1);
    tree.limbs.push_back(limbFrom("high", tree.limbs[0], 5.0, {0, 2, 0}, 0.06));
    tree.limbs.push_back(limbFrom("middle", tree.limbs[0], 4.0, {0, -2, 0}, 0.06));
    const Cut lift{CutKind::lifting, "limb", 0.0, 2.2, {}, {}};
    const auto order = inWorkingOrder(tree, {removal("middle"), removal("high"), lift});
    EXPECT_EQ(order[0].limb, "limb");
    EXPECT_EQ(order[1].limb, "high");
    EXPECT_EQ(order[2].limb, "middle");
}

} // namespace
} // namespace model::advice
