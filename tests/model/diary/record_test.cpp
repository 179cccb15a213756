#include "model/diary/record.hpp"
#include "tests/outside/outside_check.hpp"

#include "model/advice/prune.hpp"
#include "model/growth/measured_growth.hpp"
#include "model/growth/shoot_rate.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <stdexcept>

namespace model::diary {
namespace {

using namespace std::chrono_literals;

Limb limb(const char* id, std::optional<std::string> parent, double attached_m, Vec3 from, Vec3 to,
          double diameter_m)
{
    Limb made;
    made.id = id;
    made.parent = std::move(parent);
    made.attachedAt_m = attached_m;
    made.stations = {{from, diameter_m, {}}, {to, diameter_m / 2.0, {}}};
    made.foliage = Foliage{0.2, 0.4, 0.0, {}, FoliageDensity::medium, 0.0, {}};
    return made;
}

/// A trunk, a limb to the east at 2 m and a twig on that.
Tree smallTree()
{
    Tree tree;
    tree.id = "tree";
    tree.limbs = {limb("trunk", {}, 0.0, {0, 0, 0}, {0, 0, 6}, 0.3),
                  limb("east", "trunk", 2.0, {0, 0, 2}, {3, 0, 2.5}, 0.08),
                  limb("twig", "east", 1.0, {1, 0, 2.2}, {1, 1, 2.4}, 0.03)};
    return tree;
}

Visit visitOn(std::chrono::year_month_day date, std::vector<Cut> cuts)
{
    Visit visit;
    visit.date = date;
    visit.cuts = std::move(cuts);
    return visit;
}

const Cut kTakeEast{CutKind::removal, "east", 0.0, {}, {}, {}};
const Cut kTakeTwig{CutKind::removal, "twig", 0.0, {}, {}, {}};
const Cut kShortenEast{CutKind::reduction, "east", 1.5, {}, {}, {}};

// Closed form: the trunk bears the wound, where the limb joined it, as wide as the limb was.
TEST(Wounds, LieOnTheLimbThatStays)
{
    const auto wounds = woundsOf(smallTree(), {kTakeEast});
    ASSERT_EQ(wounds.size(), 1U);
    EXPECT_EQ(wounds[0].limb, "trunk");
    EXPECT_DOUBLE_EQ(wounds[0].at_m, 2.0);
    EXPECT_DOUBLE_EQ(wounds[0].diameter_m, 0.08);
    // Half way between 8 and 4 cm by length.
    const auto shortened = woundsOf(smallTree(), {kShortenEast});
    const double length = length_m(smallTree().limbs[1]);
    EXPECT_EQ(shortened.at(0).limb, "east");
    OUTSIDE_NEAR(shortened.at(0).diameter_m, 0.08 - 0.04 * 1.5 / length, 1e-12);
}

TEST(Wounds, AreNotKeptOnWhatGoesWithIt)
{
    EXPECT_EQ(woundsOf(smallTree(), {kTakeTwig, kTakeEast}).size(), 1U);
    EXPECT_TRUE(woundsOf(smallTree(), {{CutKind::lifting, "east", 0.0, 2.0, {}, {}},
                                       {CutKind::removal, "gone long since", 0.0, {}, {}, {}}})
                    .empty());
}

// Law: nothing of the tree changes but its visits.
TEST(WithVisit, ChangesNothingElse)
{
    const auto before = smallTree();
    auto after = withVisit(before, visitOn(2025y / 7 / 14, {kTakeEast}), false);
    ASSERT_EQ(after.visits.size(), 1U);
    EXPECT_EQ(after.visits[0].id, "2025-07-14");
    EXPECT_EQ(after.visits[0].wounds.size(), 1U);
    after.visits.clear();
    EXPECT_EQ(after, before);
}

TEST(WithVisit, StandsAmongTheOthersByItsDateUnderAnIdOfItsOwn)
{
    auto tree = withVisit(smallTree(), visitOn(2025y / 7 / 14, {}), false);
    tree = withVisit(tree, visitOn(2026y / 1 / 1, {}), false);
    tree = withVisit(tree, visitOn(2025y / 7 / 14, {}), false);
    tree = withVisit(tree, visitOn(2020y / 1 / 1, {}), false);
    ASSERT_EQ(tree.visits.size(), 4U);
    EXPECT_EQ(tree.visits[0].id, "2020-01-01");
    EXPECT_EQ(tree.visits[1].id, "2025-07-14");
    EXPECT_EQ(tree.visits[2].id, "2025-07-14-2");
    EXPECT_EQ(tree.visits[3].id, "2026-01-01");
}

TEST(WithVisit, CutsTheSketchAndKeepsWhatItWas)
{
    const auto before = smallTree();
    const auto after = withVisit(before, visitOn(2025y / 7 / 14, {kTakeEast}), true);
    EXPECT_EQ(after.limbs, advice::afterCut(before, kTakeEast).limbs);
    ASSERT_EQ(after.visits[0].limbsBefore.size(), 2U);
    EXPECT_EQ(after.visits[0].limbsBefore[0], before.limbs[1]);
    EXPECT_THROW((void)withVisit(before,
                                 visitOn(2025y / 7 / 14, {{CutKind::removal, "no", 0, {}, {}, {}}}),
                                 true),
                 std::domain_error);
}

/// The limbs by name: what was put back may stand in another order.
std::vector<Limb> sorted(std::vector<Limb> limbs)
{
    std::ranges::sort(limbs, {}, &Limb::id);
    return limbs;
}

// Law: walking back through the diary gives every sketch as it was.
TEST(Sketches, AreGivenBackVisitByVisit)
{
    const auto first = smallTree();
    const auto second = withVisit(first, visitOn(2024y / 7 / 1, {kShortenEast}), true);
    const auto third = withVisit(second, visitOn(2025y / 7 / 1, {kTakeEast}), true);
    const auto all = sketches(third);
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].visit, "2025-07-01");
    EXPECT_EQ(sorted(all[0].after.limbs), sorted(third.limbs));
    EXPECT_EQ(sorted(all[0].before.limbs), sorted(second.limbs));
    EXPECT_EQ(sorted(all[1].after.limbs), sorted(second.limbs));
    EXPECT_EQ(sorted(all[1].before.limbs), sorted(first.limbs));
}

TEST(Sketches, LeaveOutWhatHasNothingToGrowFromAnyMore)
{
    auto tree = withVisit(smallTree(), visitOn(2025y / 7 / 1, {kTakeTwig}), true);
    std::erase_if(tree.limbs, [](const Limb& one) { return one.id == "east"; });
    EXPECT_EQ(sketches(tree)[0].before.limbs.size(), 1U);
}

const Place kEngland{51.5, 0.0, 50.0, "Europe/London"};

Visit taped(std::chrono::year_month_day date, std::optional<Vec3> before, std::optional<Vec3> after)
{
    Visit visit;
    visit.date = date;
    visit.tips = {{"east", before, after, {}}};
    return visit;
}

// Closed form: 3-4-5.
TEST(MeasuredGrowth, IsTheWayThatATipHasCome)
{
    auto tree = smallTree();
    tree.visits = {taped(2024y / 1 / 10, Vec3{3, 0, 2}, {}),
                   taped(2025y / 1 / 10, Vec3{3.3, 0, 2.4}, {})};
    const auto grown = growth::measuredGrowth(tree, ShootPattern::longSeason, kEngland);
    ASSERT_EQ(grown.size(), 1U);
    EXPECT_EQ(grown[0].at, growth::MeasuredAt::tip);
    OUTSIDE_NEAR(grown[0].years, 1.0, 1e-9);
    OUTSIDE_NEAR(grown[0].moved_m, 0.5, 1e-12);
}

// Law: a tip that ran ahead of the species' range raises the rate, one that lagged lowers it.
TEST(MeasuredGrowth, OfTipsTeachesTheRate)
{
    Species species;
    species.practice.shootLow_m = 0.4;
    species.practice.shootHigh_m = 1.0;
    auto tree = smallTree();
    const double untaught = growth::shootRate(tree, species, kEngland, 0.0).mean_m;
    tree.visits = {taped(2024y / 1 / 10, {}, Vec3{3, 0, 2}),
                   taped(2025y / 1 / 10, Vec3{4.2, 0, 2}, {})};
    const auto fast = growth::shootRate(tree, species, kEngland, 0.0);
    EXPECT_EQ(fast.measurements, 1);
    EXPECT_GT(fast.mean_m, untaught);
    tree.visits[1].tips[0].before_m = Vec3{3.1, 0, 2};
    EXPECT_LT(growth::shootRate(tree, species, kEngland, 0.0).mean_m, untaught);
}

TEST(LeftOver, IsTheNewestTapeUnlessSomethingWasCutSince)
{
    auto tree = smallTree();
    Visit tape;
    tape.date = 2024y / 1 / 10;
    tape.headroom = {{"path", 2.4, {}, {}}};
    Visit cut = visitOn(2025y / 1 / 10, {kTakeTwig});
    tree.visits = {cut, tape}; // in any order
    const auto then = growth::leftOver(tree, "path", 2024y / 6 / 1);
    ASSERT_TRUE(then);
    EXPECT_DOUBLE_EQ(then->height_m, 2.4);
    EXPECT_FALSE(growth::leftOver(tree, "path", 2025y / 6 / 1));
    EXPECT_FALSE(growth::leftOver(tree, "lawn", 2024y / 6 / 1));
}

} // namespace
} // namespace model::diary
