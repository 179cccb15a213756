#include "model/light/daylight.hpp"
#include "model/light/shadow.hpp"
#include "model/light/shadow_study.hpp"
#include "tests/model/load/samples.hpp"

#include <gtest/gtest.h>

using namespace model;
using namespace model::light;

namespace {

Garden twoTrees()
{
    Garden garden;
    garden.trees = {load::spreading(2, 4, 2), load::spreading(1, 3, 1)};
    garden.trees[0].id = "first";
    garden.trees[1].id = "second";
    garden.trees[1].position_m = {6.0, 2.0};
    return garden;
}

const SunPosition kAfternoon{.elevation_deg = 40.0, .azimuth_deg = 230.0, .distance_au = 1.0};

bool isCovered(const Shadows& shadows, Point2 at)
{
    for (const auto& part : shadows)
        for (const auto& piece : *part) {
            bool inside = covers(piece.rings.front(), at);
            for (std::size_t hole = 1; hole < piece.rings.size(); ++hole)
                inside = inside && !covers(piece.rings[hole], at);
            if (inside)
                return true;
        }
    return false;
}

bool isCovered(const Region& region, Point2 at)
{
    return isCovered(Shadows{std::make_shared<const Region>(region)}, at);
}

void expectSame(const Shadows& a, const Shadows& b)
{
    ASSERT_EQ(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i) {
        ASSERT_EQ(a[i]->size(), b[i]->size());
        for (std::size_t part = 0; part < a[i]->size(); ++part)
            EXPECT_EQ((*a[i])[part].rings, (*b[i])[part].rings);
    }
}

} // namespace

// Brute force: point by point, what lies in a part lies in the shadow of one of the trees.
TEST(ShadowStudy, CoversWhatTheShadowsOfTheTreesCover)
{
    const auto garden = twoTrees();
    const auto parts = ShadowStudy().redraw(garden, kAfternoon);
    const auto first = shadow(garden.trees[0], kAfternoon);
    const auto second = shadow(garden.trees[1], kAfternoon);
    int shaded = 0;
    int points = 0;
    for (double x = -4.0; x < 18.0; x += 0.37)
        for (double y = -4.0; y < 18.0; y += 0.41) {
            const bool inside = isCovered(parts, {x, y});
            EXPECT_EQ(inside, isCovered(first, {x, y}) || isCovered(second, {x, y}));
            shaded += inside ? 1 : 0;
            ++points;
        }
    EXPECT_GT(shaded, 100);
    EXPECT_LT(shaded, points);
}

// Law: whatever was drawn before, the shadows are those of a garden seen for the first time.
TEST(ShadowStudy, GivesAfterManyStepsWhatItGivesAtOnce)
{
    auto garden = twoTrees();
    ShadowStudy study;
    auto before = study.redraw(garden, kAfternoon);
    garden.trees[0].limbs[2].stations.back().position_m.x += 0.5;
    auto now = study.redraw(garden, kAfternoon);
    expectSame(now, ShadowStudy().redraw(garden, kAfternoon));
    EXPECT_EQ(now[1], before[1]); // kept
    EXPECT_NE(now[2], before[2]);
    garden.trees[0].limbs.erase(garden.trees[0].limbs.begin() + 2);
    expectSame(study.redraw(garden, kAfternoon), ShadowStudy().redraw(garden, kAfternoon));
    garden.trees[1].position_m.y += 1.0;
    expectSame(study.redraw(garden, kAfternoon), ShadowStudy().redraw(garden, kAfternoon));
    SunPosition later = kAfternoon;
    later.azimuth_deg = 250.0;
    expectSame(study.redraw(garden, later), ShadowStudy().redraw(garden, later));
    garden.slope.emplace();
    garden.slope->gradient = 0.1;
    expectSame(study.redraw(garden, later), ShadowStudy().redraw(garden, later));
}

TEST(ShadowStudy, ThereIsNoneAtNight)
{
    for (const auto& part : ShadowStudy().redraw(twoTrees(), {.elevation_deg = -5.0}))
        EXPECT_TRUE(part->empty());
}
