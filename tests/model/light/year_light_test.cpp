#include "model/advice/prune.hpp"
#include "model/light/daylight.hpp"
#include "model/light/year_light.hpp"
#include "tests/outside/outside_check.hpp"

#include "garden_of.hpp"

#include <gtest/gtest.h>

using namespace model;
using namespace model::light;
using std::chrono::year;

namespace {

Limb branch(const std::string& id, const std::string& parent, double at_m, Vec3 from, Vec3 to)
{
    Limb limb;
    limb.id = id;
    limb.parent = parent;
    limb.attachedAt_m = at_m;
    limb.stations = {{from, 0.06}, {to, 0.02}};
    Foliage leaf;
    leaf.from_m = 0.3;
    leaf.radius_m = 0.6;
    limb.foliage = leaf;
    return limb;
}

/// A round crown with three limbs, one of which bears a fourth.
Tree branchedTree(const std::string& id, Point2 at)
{
    auto tree = made::ballTree(id, at, 4.0, 1.2);
    tree.limbs.push_back(branch("north", "trunk", 2.0, {0, 0, 2}, {0, 3, 3}));
    tree.limbs.push_back(branch("east", "trunk", 2.5, {0, 0, 2.5}, {3, 0, 3.5}));
    tree.limbs.push_back(branch("south", "trunk", 3.0, {0, 0, 3}, {0, -3, 4}));
    tree.limbs.push_back(branch("twig", "north", 1.6, {0, 1.5, 2.5}, {1.5, 2.5, 3.5}));
    return tree;
}

LightQuestion quick()
{
    LightQuestion question;
    question.year = year{2025};
    question.detail = {std::chrono::minutes{20}, 1, 60, true, 1};
    return question;
}

struct Made {
    Garden garden = made::garden(48.0);
    Tables tables = made::tables(LeafHabit::deciduous);
    std::vector<Foliation> sketched;

    Made()
    {
        garden.trees.push_back(branchedTree("near", {0.0, -2.5}));
        garden.trees.push_back(made::ballTree("far", {-1.0, -7.0}, 5.0, 2.0));
        sketched = foliations(garden, tables);
    }
    std::vector<SurfaceLight> light(const LightQuestion& question) const
    {
        return yearOfLight(garden, sketched, tables, question);
    }
};

} // namespace

// Law: with nothing in the garden all three ways of counting agree, and the sun of a day is that
// of plantingSun().
TEST(YearOfLight, IsTheOpenSkysWithoutTrees)
{
    const auto garden = made::garden(48.0);
    const auto light = yearOfLight(garden, {}, made::tables(), quick()).front();
    for (const auto& month : light.months) {
        EXPECT_NEAR(month.standing.sun_h, month.open.sun_h, 1e-6);
        EXPECT_NEAR(month.standing.dli_mol, month.open.dli_mol, 1e-5);
    }
    const auto june16 =
        plantingSun(garden, made::tables(), year{2025} / std::chrono::June / 16).front();
    EXPECT_NEAR(light.months[5].open.sun_h, june16.openSky_h, 1e-6);
    EXPECT_EQ(light.lightClass, LightClass::fullSun);
}

// Published: summer full sun is about 45 mol outdoors in Houston (30 N) and under 20 in winter
// (USGA Green Section); those are means with cloud, ours here is a cloudless day.
TEST(YearOfLight, GivesAClearDaysMolesOfTheRightSize)
{
    const auto light = yearOfLight(made::garden(30.0), {}, made::tables(), quick()).front();
    OUTSIDE_WITHIN(light.months[5].open.dli_mol, 45.0, 65.0);
    auto cloudy = quick();
    cloudy.weather.sunshineShare.fill(0.55);
    const auto mean = yearOfLight(made::garden(30.0), {}, made::tables(), cloudy).front();
    OUTSIDE_NEAR(mean.months[5].open.dli_mol, 45.0, 5.0);
    EXPECT_LT(mean.months[11].open.dli_mol, 22.0);
    OUTSIDE_NEAR(mean.months[5].open.sun_h, 0.55 * light.months[5].open.sun_h, 1e-9);
}

// Law: an only tree takes the same first or last; two trees give back less one by one than they
// take one by one.
TEST(YearOfLight, CountsTreesFirstAndLast)
{
    Made two;
    const auto light = two.light(quick()).front();
    const auto& september = light.months[8];
    ASSERT_EQ(september.trees.size(), 2U);
    for (const auto& tree : september.trees) {
        EXPECT_GT(tree.removal.sun_h, 0.0);
        EXPECT_LE(tree.removal.sun_h, tree.firstIn.sun_h + 1e-9);
        EXPECT_LE(tree.removal.dli_mol, tree.firstIn.dli_mol + 1e-9);
    }
    const double both = september.withoutTrees.dli_mol - september.standing.dli_mol;
    EXPECT_LE(september.trees[0].removal.dli_mol + september.trees[1].removal.dli_mol, both + 1e-6);
    EXPECT_GE(september.trees[0].firstIn.dli_mol + september.trees[1].firstIn.dli_mol, both - 1e-6);

    two.garden.trees.pop_back();
    two.sketched.pop_back();
    const auto only = two.light(quick()).front().months[8];
    EXPECT_NEAR(only.trees[0].removal.sun_h, only.trees[0].firstIn.sun_h, 1e-6);
    EXPECT_NEAR(only.open.sun_h - only.standing.sun_h, only.trees[0].removal.sun_h, 1e-6);
}

// Law: what a limb's removal gives back is what the garden has more once it is cut off; with the
// trunk goes the tree.
TEST(YearOfLight, GivesBackForALimbWhatItsRemovalBrings)
{
    Made made;
    const auto before = made.light(quick()).front().months[5];
    const auto& limbs = before.limbs.at(0);
    EXPECT_NEAR(limbs[0].removal.sun_h, before.trees[0].removal.sun_h, 1e-6);
    EXPECT_NEAR(limbs[0].firstIn.dli_mol, before.trees[0].firstIn.dli_mol, 1e-5);
    for (const auto* id : {"north", "east", "south", "twig"}) {
        Made cut = made;
        cut.garden.trees[0] =
            advice::afterCut(made.garden.trees[0], {CutKind::removal, id, 0.0, {}, {}, {}});
        const auto after = cut.light(quick()).front().months[5];
        const auto& limb = limbs[limbIndex(made.garden.trees[0], id)];
        EXPECT_NEAR(after.standing.sun_h - before.standing.sun_h, limb.removal.sun_h, 1e-5) << id;
        EXPECT_NEAR(after.standing.dli_mol - before.standing.dli_mol, limb.removal.dli_mol, 1e-4)
            << id;
    }
    EXPECT_GT(limbs[1].removal.sun_h, limbs[4].removal.sun_h); // "north" bears "twig"
}

// Law: the leafless half of the year lets more light through.
TEST(YearOfLight, KnowsLeafOnAndLeafOff)
{
    const Made made;
    const auto light = made.light(quick()).front();
    const auto share = [](const MonthLight& month) {
        return month.standing.sun_h / month.open.sun_h;
    };
    EXPECT_GT(share(light.months[2]), share(light.months[8])); // much the same sun, no leaves
}

// Law: the number of threads changes nothing, to the last bit.
TEST(YearOfLight, DoesNotDependOnTheNumberOfThreads)
{
    const Made made;
    auto question = quick();
    const auto one = made.light(question);
    question.detail.threads = 3;
    const auto three = made.light(question);
    ASSERT_EQ(one.size(), three.size());
    for (std::size_t m = 0; m < 12; ++m) {
        EXPECT_EQ(one[0].months[m].standing.sun_h, three[0].months[m].standing.sun_h);
        EXPECT_EQ(one[0].months[m].standing.dli_mol, three[0].months[m].standing.dli_mol);
    }
}

// Law: of a hedge's faces the south's has more sun than the north's in spring, east and west share
// the day, and each sees half of the sky; south of the equator it is the north's.
TEST(YearOfLight, TellsTheFacesOfAHedge)
{
    for (const double latitude : {48.0, -48.0}) {
        auto garden = made::garden(latitude);
        garden.plantings.front().kind = PlantingKind::hedge;
        garden.plantings.front().height_m = 2.0;
        const auto light = yearOfLight(garden, {}, made::tables(), quick());
        ASSERT_EQ(light.size(), 5U);
        const auto march = [&](double bearing) {
            for (const auto& surface : light)
                if (surface.facing_deg && std::abs(*surface.facing_deg - bearing) < 1e-6)
                    return surface.months[2].standing;
            return DayLight{};
        };
        const double sunny = latitude > 0.0 ? 180.0 : 0.0;
        EXPECT_GT(march(sunny).sun_h, march(180.0 - sunny).sun_h);
        EXPECT_GT(march(sunny).dli_mol, march(180.0 - sunny).dli_mol);
        EXPECT_NEAR(march(90.0).sun_h, march(270.0).sun_h, 0.35);
        EXPECT_GT(march(180.0 - sunny).dli_mol, 1.0); // sky light
    }
}

// Law: a wish to stop is heard, and gives nothing rather than half.
TEST(YearOfLight, StopsWhenAsked)
{
    const Made made;
    const std::atomic<bool> stop{true};
    EXPECT_TRUE(yearOfLight(made.garden, made.sketched, made.tables, quick(), &stop).empty());
}

TEST(YearOfLight, AnswersForOnePlantingAlone)
{
    Made made;
    made.garden.plantings.push_back(made::bed({5.0, 5.0}, 1.0));
    made.garden.plantings.back().id = "other";
    auto question = quick();
    question.onlyPlanting = "other";
    const auto light = made.light(question);
    ASSERT_EQ(light.size(), 1U);
    EXPECT_EQ(light.front().planting, "other");
}
