#include "model/advice/who.hpp"

#include "model/advice/limits.hpp"
#include "model/advice/shared_work.hpp"
#include "model/geometry/angle.hpp"
#include "tests/model/advice/limb_from.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace model::advice {
namespace {

/// Each threshold speaks just past its limit and is silent just before. The publication behind
/// each is ruleFacts(rule).source; the figures here are theirs, typed again.
class WhoCuts : public testing::Test {
protected:
    WhoCuts()
    {
        Limb trunk;
        trunk.id = "trunk";
        trunk.stations = {{{0, 0, 0}, 0.3, {}}, {{0, 0, 6}, 0.1, {}}};
        tree.limbs = {trunk, limbFrom("limb", trunk, 2.0, {1.0, 0, 0}, 0.04)};
        planned.cut = {CutKind::removal, "limb", 0.0, {}, {}, {}};
        planned.diameter_m = 0.03;
        planned.length_m = 1.0;
        planned.mass_kg = 2.0;
        Piece piece;
        piece.limb = "limb";
        piece.cut_m = {0, 0, 2.0};
        piece.diameter_m = 0.03;
        piece.mass_kg = 2.0;
        piece.tool = Tool::loppers;
        piece.dropRadius_m = 1.0;
        planned.pieces = {piece};
    }

    Labour labour() { return whoCuts(garden, tree, planned, fallingPart(tree, planned.cut)); }
    bool says(Rule rule, Severity severity)
    {
        const auto found = labour().findings;
        return std::ranges::any_of(
            found, [&](const Finding& f) { return f.rule == rule && f.severity == severity; });
    }
    void sawAt(double height_m, double diameter_m)
    {
        planned.pieces.front().cut_m.z = height_m;
        planned.pieces.front().tool = toolFor(diameter_m, height_m);
    }
    /// A strip of ground 1 m wide whose near edge lies so far east of the cut.
    static Polygon eastOf(double away_m)
    {
        return {{away_m, -5}, {away_m + 1, -5}, {away_m + 1, 5}, {away_m, 5}};
    }

    Garden garden;
    Tree tree;
    PlannedCut planned;
};

TEST_F(WhoCuts, LetsOneDoSmallLowWoodAlone)
{
    EXPECT_EQ(labour().who, Who::oneself);
    EXPECT_TRUE(labour().findings.empty());
}

TEST_F(WhoCuts, AsksForAHelperWhereAPoleSawIsNeeded) // 7 ft
{
    sawAt(2.09, 0.05);
    EXPECT_EQ(labour().who, Who::oneself);
    sawAt(2.11, 0.05);
    EXPECT_TRUE(says(Rule::overHead, Severity::warn));
    EXPECT_EQ(labour().who, Who::withHelper);
}

TEST_F(WhoCuts, LetsAPolePrunerTakeShootsAndSmallWoodAlone)
{
    sawAt(2.2, 0.0);
    EXPECT_EQ(labour().who, Who::oneself);
    sawAt(4.5, 0.03);
    EXPECT_EQ(labour().who, Who::oneself);
}

TEST_F(WhoCuts, SendsForAnArboristBeyondAPole) // 15 ft
{
    sawAt(4.59, 0.0);
    EXPECT_NE(labour().who, Who::arborist);
    sawAt(4.61, 0.0);
    EXPECT_TRUE(says(Rule::beyondPoleSaw, Severity::block));
}

TEST_F(WhoCuts, SendsForAnArboristForWoundsOver100mm)
{
    planned.diameter_m = 0.0999;
    EXPECT_NE(labour().who, Who::arborist);
    planned.diameter_m = 0.1001;
    EXPECT_TRUE(says(Rule::cutOver100mm, Severity::block));
}

TEST_F(WhoCuts, WeighsTheHeaviestPieceOnly) // 16 kg one person, 33 kg two
{
    planned.pieces.push_back(planned.pieces.front());
    planned.mass_kg = 30.0;
    planned.pieces[0].mass_kg = 15.9;
    EXPECT_EQ(labour().who, Who::oneself);
    planned.pieces[0].mass_kg = 16.1;
    EXPECT_TRUE(says(Rule::heavyPiece, Severity::warn));
    planned.pieces[0].mass_kg = 32.9;
    EXPECT_NE(labour().who, Who::arborist);
    planned.pieces[0].mass_kg = 33.1;
    EXPECT_TRUE(says(Rule::veryHeavyPiece, Severity::block));
    planned.diameter_m = 0.0; // shoots come down one by one
    EXPECT_EQ(labour().who, Who::oneself);
}

// Published: 29 CFR 1910.269: 10 ft (3.05 m) up to 50 kV, 4 in (0.10 m) more for each 10 kV above;
// so 3.05 + 0.1 x (145 - 50) / 10 = 4.0 m at 145 kV. The limb swings 1 m about its cut.
TEST_F(WhoCuts, KeepsAwayFromWires)
{
    const auto wireAt = [&](double away_m, std::optional<double> voltage_kV) {
        garden.lines = {{"wire", "", {{-50, -away_m, 2.0}, {50, -away_m, 2.0}}, voltage_kV, {}}};
    };
    wireAt(1.0 + 3.06, {});
    EXPECT_TRUE(says(Rule::nearLine, Severity::warn)); // but within 10 m: ask first
    EXPECT_FALSE(says(Rule::nearLine, Severity::block));
    wireAt(1.0 + 3.04, {});
    EXPECT_TRUE(says(Rule::nearLine, Severity::block));
    wireAt(1.0 + 3.04, 50.0);
    EXPECT_TRUE(says(Rule::nearLine, Severity::block));
    wireAt(1.0 + 4.01, 145.0);
    EXPECT_FALSE(says(Rule::nearLine, Severity::block));
    wireAt(1.0 + 3.99, 145.0);
    EXPECT_TRUE(says(Rule::nearLine, Severity::block));
    // HSE: within 10 m on plan of the wood (its half thickness, 2 cm) ask the operator first.
    wireAt(10.01 + 0.02, {});
    EXPECT_EQ(labour().who, Who::oneself);
    wireAt(9.99 + 0.02, {});
    EXPECT_TRUE(says(Rule::nearLine, Severity::warn));
}

// Published: HSE tree work page; Arboricultural Association guide 2.4.7: within 10 m on plan the
// network operator is asked before any work.
TEST_F(WhoCuts, StartsNothingWithinTenMetresOfAWireInTheUnitedKingdom)
{
    garden.place.timeZone = "Europe/London";
    const auto wireAt = [&](double away_m) {
        garden.lines = {{"wire", "", {{-50, -away_m, 2.0}, {50, -away_m, 2.0}}, {}, {}}};
    };
    wireAt(10.01 + 0.02);
    EXPECT_EQ(labour().who, Who::oneself);
    wireAt(9.99 + 0.02);
    EXPECT_TRUE(says(Rule::nearLine, Severity::block));
    garden.place.timeZone = "Europe/Paris";
    EXPECT_TRUE(says(Rule::nearLine, Severity::warn));
    garden.place = {52.5, -1.9, 0.0, ""}; // Birmingham, no zone given
    EXPECT_TRUE(says(Rule::nearLine, Severity::block));
    garden.place = {48.9, 2.3, 0.0, ""}; // Paris
    EXPECT_TRUE(says(Rule::nearLine, Severity::warn));
}

// ANSI A300-1995 5.3.1: a limb too big to hold in one hand; 25 mm (1 in), as for three cuts.
TEST_F(WhoCuts, SendsForAnArboristForABrokenLimbThatOneHandCannotHold)
{
    tree.limbs[1].defects = {{DefectKind::broken, 0.0, {}, {}, {}, "", {}}};
    tree.limbs[1].stations[0].diameter_m = 0.0249;
    EXPECT_EQ(labour().who, Who::oneself);
    EXPECT_EQ(whoForTree(tree).who, Who::oneself);
    tree.limbs[1].stations[0].diameter_m = 0.0251;
    EXPECT_TRUE(says(Rule::brokenWood, Severity::block));
    EXPECT_EQ(whoForTree(tree).who, Who::arborist);
    tree.limbs[1].defects[0].kind = DefectKind::rubbing;
    EXPECT_EQ(labour().who, Who::oneself);
}

TEST_F(WhoCuts, LooksAtBuildingsWithinReachOfAPiece)
{
    garden.structures = {{"shed", "", StructureKind::building, eastOf(1.01), 2.5, {}}};
    EXPECT_EQ(labour().who, Who::oneself);
    garden.structures.front().outline_m = eastOf(0.99);
    EXPECT_TRUE(says(Rule::targetBelow, Severity::warn));
    planned.diameter_m = 0.051; // heavy wood
    EXPECT_TRUE(says(Rule::targetBelow, Severity::block));
    planned.diameter_m = 0.049;
    EXPECT_FALSE(says(Rule::targetBelow, Severity::block));
    planned.mass_kg = 16.1;
    EXPECT_TRUE(says(Rule::targetBelow, Severity::block));
    garden.structures.front().kind = StructureKind::fence;
    EXPECT_TRUE(says(Rule::targetBelow, Severity::warn));
    garden.structures.front().kind = StructureKind::pond;
    EXPECT_EQ(labour().who, Who::oneself);
}

TEST_F(WhoCuts, LooksAsFarAsAPieceIsThrown)
{
    garden.structures = {{"shed", "", StructureKind::building, eastOf(2.9), 2.5, {}}};
    planned.pieces.front().dropRadius_m = 3.0;
    EXPECT_TRUE(says(Rule::targetBelow, Severity::warn));
    planned.pieces.front().dropRadius_m = 2.8;
    EXPECT_FALSE(says(Rule::targetBelow, Severity::warn));
}

// Published: OSHA storm-response matrix, 20 ft (6 m) beyond the drop zone.
TEST_F(WhoCuts, KeepsPeopleSixMetresBeyondTheDropZone)
{
    garden.strips = {{"path", "", StripUse::path, eastOf(7.01), {}, {}}};
    EXPECT_EQ(labour().who, Who::oneself);
    garden.strips.front().outline_m = eastOf(6.99);
    EXPECT_TRUE(says(Rule::peopleBelow, Severity::warn));
    garden.strips.front().use = StripUse::mower; // nobody mows meanwhile
    EXPECT_EQ(labour().who, Who::oneself);
}

// Common practice, no source: traffic is stopped by those who may.
TEST_F(WhoCuts, LeavesWhatFallsBesideARoadToAnArborist)
{
    garden.strips = {{"lane", "", StripUse::road, eastOf(7.01), {}, {}}};
    EXPECT_EQ(labour().who, Who::oneself);
    garden.strips.front().outline_m = eastOf(6.99);
    EXPECT_TRUE(says(Rule::peopleBelow, Severity::block));
    EXPECT_EQ(labour().who, Who::arborist);
}

TEST_F(WhoCuts, SendsForAnArboristForACrackOnTheLimbOrUnderIt)
{
    tree.limbs[1].defects = {{DefectKind::crack, 0.5, {}, {}, {}, "", {}}};
    EXPECT_TRUE(says(Rule::crackedOrHollow, Severity::block));
    tree.limbs[1].defects.clear();
    tree.limbs[0].defects = {{DefectKind::cavity, 0.5, {}, {}, {}, "", {}}};
    EXPECT_TRUE(says(Rule::crackedOrHollow, Severity::block));
}

bool treeSays(const Tree& tree, Rule rule)
{
    const auto found = whoForTree(tree).findings;
    return std::ranges::any_of(found, [&](const Finding& f) { return f.rule == rule; });
}

TEST_F(WhoCuts, JudgesDeadLimbsByTheTreesHeight) // 15 ft
{
    tree.limbs[1].defects = {{DefectKind::dead, 0.0, {}, {}, {}, "", {}}};
    tree.limbs[0].stations[1].position_m.z = 4.55;
    EXPECT_FALSE(treeSays(tree, Rule::deadWood));
    tree.limbs[0].stations[1].position_m.z = 4.65;
    EXPECT_TRUE(treeSays(tree, Rule::deadWood));
}

TEST_F(WhoCuts, JudgesTheLeanOfTheStem)
{
    const auto lean = [&](double lean_deg) {
        tree.limbs[0].stations[1].position_m = {6.0 * std::tan(radians(lean_deg)), 0, 6};
        return treeSays(tree, Rule::leaningStem);
    };
    EXPECT_FALSE(lean(14.9));
    EXPECT_TRUE(lean(15.1));
}

TEST_F(WhoCuts, ReadsEverySignAndTheLaw)
{
    EXPECT_EQ(whoForTree(tree).who, Who::oneself);
    for (const auto sign :
         {Sign::fungus, Sign::oozing, Sign::heavingSoil, Sign::newLean, Sign::hungBranch,
          Sign::deadTop, Sign::rootsCut, Sign::cavityAtBase, Sign::batsOrHole}) {
        tree.observations = {{sign, "", {}}};
        EXPECT_EQ(whoForTree(tree).who, Who::arborist) << static_cast<int>(sign);
    }
    tree.observations = {{Sign::nest, "", {}}}; // decides when, not who
    EXPECT_EQ(whoForTree(tree).who, Who::oneself);
    tree.protection = Protection::listed;
    EXPECT_TRUE(treeSays(tree, Rule::protectedTree));
}

TEST_F(WhoCuts, SendsForAnArboristForALimbThatTheGustWouldBreak)
{
    load::TreeLoad loads;
    loads.limbs.resize(2);
    loads.limbs[0].limb = 0;
    loads.limbs[1].limb = 1;
    for (auto& limb : loads.limbs)
        limb.hasStrength = true;
    loads.limbs[1].utilisation = 0.99;
    EXPECT_EQ(whoForLoads(tree, loads).who, Who::oneself);
    loads.limbs[1].utilisation = 1.0;
    EXPECT_EQ(whoForLoads(tree, loads).who, Who::arborist);
}

/// A job of three cuts, of which the second is an arborist's.
class SharedJob : public WhoCuts {
protected:
    SharedJob()
    {
        tree.limbs.push_back(limbFrom("thick", tree.limbs[0], 3.0, {0, 1.5, 0.5}, 0.1));
        tree.limbs.push_back(limbFrom("north", tree.limbs[0], 1.5, {0, -1.0, 0}, 0.03));
        for (const char* limb : {"limb", "thick", "north"}) {
            suggestion.cuts.push_back(planned);
            suggestion.cuts.back().cut.limb = limb;
            suggestion.cuts.back().pieces.front().cut_m =
                tree.limbs[limbIndex(tree, limb)].stations.front().position_m;
        }
        suggestion.cuts[1].labour.who = Who::arborist;
    }
    Suggestion suggestion;
};

TEST_F(SharedJob, LeavesTheGardenerWhatNoRuleForbids)
{
    const auto shared = sharedWork(tree, suggestion, {});
    EXPECT_EQ(shared.gardener, (std::vector<std::size_t>{0, 2}));
    EXPECT_EQ(shared.arborist, (std::vector<std::size_t>{1}));
}

TEST_F(SharedJob, LeavesNothingWhenTheWholeTreeIsInDoubt)
{
    tree.observations = {{Sign::fungus, "", {}}};
    const auto shared = sharedWork(tree, suggestion, whoForTree(tree));
    EXPECT_TRUE(shared.wholeTree);
    EXPECT_TRUE(shared.gardener.empty());
}

TEST_F(SharedJob, KeepsTheGardenerFromUnderAFaultyLimb)
{
    Labour labour;
    labour.findings = {{Rule::crackedOrHollow, Severity::block, "overhead", {}, {}}};
    // It hangs over the cut at the north limb's union, and not over the east limb's.
    auto overhead = limbFrom("overhead", tree.limbs[0], 4.0, {0, -3.0, 0}, 0.1);
    for (auto& station : overhead.stations)
        station.position_m.y -= 0.2;
    tree.limbs.push_back(overhead);
    for (auto& piece : suggestion.cuts[2].pieces)
        piece.cut_m.y = -1.0;
    const auto shared = sharedWork(tree, suggestion, labour);
    EXPECT_EQ(shared.gardener, (std::vector<std::size_t>{0}));
}

TEST_F(SharedJob, WaitsForTheArboristWhereOuterWoodComesFirst)
{
    tree.limbs.push_back(limbFrom("spur", tree.limbs[1], 0.8, {0, 0, 0.5}, 0.02));
    suggestion.cuts[0].cut.limb = "spur"; // the arborist's
    suggestion.cuts[0].labour.who = Who::arborist;
    suggestion.cuts[1].cut.limb = "limb"; // would be the gardener's, but for the spur
    suggestion.cuts[1].labour.who = Who::oneself;
    const auto shared = sharedWork(tree, suggestion, {});
    EXPECT_EQ(shared.gardener, (std::vector<std::size_t>{2}));
}

} // namespace
} // namespace model::advice
