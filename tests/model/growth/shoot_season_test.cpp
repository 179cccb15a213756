#include "model/growth/shoot_season.hpp"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace model::growth {
namespace {

using namespace std::chrono_literals;
using std::chrono::days;
using std::chrono::sys_days;
using std::chrono::year;

constexpr std::array kPatterns{ShootPattern::shortFlush, ShootPattern::springFlush,
                               ShootPattern::longSeason};

const Place kDurham{35.99, -78.90, 120.0, "America/New_York"};
const Place kEngland{51.5, 0.0, 50.0, "Europe/London"};

double doneBy(ShootPattern pattern, const Place& place, std::chrono::year_month_day date)
{
    const sys_days newYear{date.year() / std::chrono::January / 1};
    return growthClock(pattern, place, sys_days{date}) - growthClock(pattern, place, newYear);
}

// Kramer 1943, Plant Physiology 18: 239-251 (abstract): all species began at the end of March or
// the beginning of April at Durham, North Carolina. The dates there come from Hopkins' rule, which
// the study knew nothing of; a week either way is a tenth of the year's growth in spring.
TEST(ShootSeason, FollowsElevenSpeciesAtDurham)
{
    constexpr double kWeek = 0.11;
    EXPECT_LE(doneBy(ShootPattern::longSeason, kDurham, 2025y / 3 / 20), 0.0);
    EXPECT_GT(doneBy(ShootPattern::springFlush, kDurham, 2025y / 4 / 10), 0.0);
    // white ash, red oak, white oak, black walnut: about half by 1 May, ceased in July or early
    // August
    EXPECT_NEAR(doneBy(ShootPattern::springFlush, kDurham, 2025y / 5 / 1), 0.50, kWeek);
    EXPECT_NEAR(doneBy(ShootPattern::springFlush, kDurham, 2025y / 8 / 7), 1.00, 1e-9);
    EXPECT_LT(doneBy(ShootPattern::springFlush, kDurham, 2025y / 7 / 1), 1.0);
    // red and white pine: 65 % by 1 May, 90 % by 1 June
    EXPECT_NEAR(doneBy(ShootPattern::shortFlush, kDurham, 2025y / 5 / 1), 0.65, kWeek);
    EXPECT_NEAR(doneBy(ShootPattern::shortFlush, kDurham, 2025y / 6 / 1), 0.90, 0.05);
    // yellow-poplar: as much in each month from April to July, ceased in September
    const double april = doneBy(ShootPattern::longSeason, kDurham, 2025y / 5 / 1);
    const double july = doneBy(ShootPattern::longSeason, kDurham, 2025y / 8 / 1) -
                        doneBy(ShootPattern::longSeason, kDurham, 2025y / 7 / 1);
    EXPECT_NEAR(april, july, 0.03);
    EXPECT_LT(doneBy(ShootPattern::longSeason, kDurham, 2025y / 8 / 31), 1.0);
    EXPECT_NEAR(doneBy(ShootPattern::longSeason, kDurham, 2025y / 9 / 30), 1.0, 1e-9);
}

// Minckler & Woerheide 1968, Forest Science 14: 212-216 (abstract): planted cottonwood in southern
// Illinois grew from the last week of April until some week between 17 August and 5 October, half
// of the trees beyond 14 September. The rule knows no species: by it cottonwood starts a month
// early there, and ends inside the published span. With the day on which its buds were seen to
// break it starts when it was seen to, and still ends inside the span.
TEST(ShootSeason, StartsWhenTheBudsWereSeenToBreak)
{
    const Place illinois{37.5, -89.0, 110.0, ""};
    const LeafDates seen{std::chrono::April / 24, std::nullopt};
    const auto done = [&](std::chrono::year_month_day date) {
        const sys_days winter{2025y / 1 / 15};
        return growthClock(ShootPattern::longSeason, illinois, sys_days{date}, seen) -
               growthClock(ShootPattern::longSeason, illinois, winter, seen);
    };
    EXPECT_LE(done(2025y / 4 / 23), 1e-9);
    EXPECT_GT(done(2025y / 4 / 30), 0.0);
    EXPECT_LT(done(2025y / 8 / 17), 1.0 - 1e-6);
    EXPECT_NEAR(done(2025y / 10 / 5), 1.0, 1e-9);
    EXPECT_GT(doneBy(ShootPattern::longSeason, illinois, 2025y / 4 / 23), 0.0);
}

TEST(ShootSeason, EndsWithCottonwoodInIllinois)
{
    const Place illinois{37.5, -89.0, 110.0, ""};
    EXPECT_LT(doneBy(ShootPattern::longSeason, illinois, 2025y / 8 / 17), 1.0);
    EXPECT_NEAR(doneBy(ShootPattern::longSeason, illinois, 2025y / 10 / 5), 1.0, 1e-9);
}

// Law.
TEST(ShootSeason, GrowsOneYearAYearAndNeverBack)
{
    for (const auto pattern : kPatterns)
        for (const auto& place : {kDurham, kEngland, Place{-33.9, 151.2, 20.0, ""}}) {
            const sys_days start{2023y / 1 / 1};
            double before = growthClock(pattern, place, start);
            for (int i = 1; i < 5 * 366; ++i) {
                const double now = growthClock(pattern, place, start + days{i});
                ASSERT_GE(now, before - 1e-12) << i;
                ASSERT_LT(now - before, 0.05) << i;
                before = now;
            }
            EXPECT_NEAR(growthClock(pattern, place, sys_days{2026y / 3 / 1}) -
                            growthClock(pattern, place, sys_days{2023y / 3 / 1}),
                        3.0, 0.05);
        }
}

// Law: the same season half a year later on the other side of the equator.
TEST(ShootSeason, IsTheSameInTheSouthHalfAYearLater)
{
    const Place south{-51.5, 0.0, 50.0, ""};
    for (const auto pattern : kPatterns)
        for (const int month : {1, 5, 6, 8, 11}) {
            const sys_days north{year{2025} / month / 10};
            const double there = growthClock(pattern, south, north + days{183});
            const double here = growthClock(pattern, kEngland, north);
            EXPECT_NEAR(there - std::floor(there), here - std::floor(here), 0.03) << month;
        }
}

TEST(ShootSeason, NamesTheFirstDayByWhichSomethingHasGrown)
{
    const sys_days from{2025y / 6 / 3};
    for (const auto pattern : kPatterns)
        for (const double years : {0.01, 0.2, 0.9, 3.7}) {
            const auto day = grownBy(pattern, kEngland, from, years);
            const double start = growthClock(pattern, kEngland, from);
            EXPECT_GE(growthClock(pattern, kEngland, day) - start, years);
            EXPECT_LT(growthClock(pattern, kEngland, day - days{1}) - start, years);
        }
    EXPECT_EQ(grownBy(ShootPattern::longSeason, kEngland, from, 30.0), from + days{20 * 366});
}

} // namespace
} // namespace model::growth
