#include "model/light/daylight.hpp"

#include <gtest/gtest.h>

using namespace model;
using namespace model::light;
using std::chrono::days;
using std::chrono::sys_days;
using std::chrono::year;
using std::chrono::year_month_day;

namespace {

const Place kBoston{42.5, -71.0, 0.0, {}};
const Place kSouthernEngland{51.5, 0.0, 0.0, {}};

Species of(LeafHabit habit)
{
    Species species;
    species.practice.leafHabit = habit;
    return species;
}
double share(const Place& place, int dayOfYear, LeafHabit habit = LeafHabit::deciduous)
{
    const year_month_day date{sys_days{year{2025} / 1 / 1} + days{dayOfYear - 1}};
    return leafShare(of(habit), place, date);
}

} // namespace

// From memory, low confidence (docs/methods/light.md, L14): buds of red maple and red oak burst
// about day 120-125 in central New England, half of the leaves are down about day 290-295; oak
// leafs about day 108-115 in southern England and is bare about day 330.
TEST(LeafShare, FollowsTheKnownPlaces)
{
    EXPECT_EQ(share(kBoston, 118), 0.0);
    EXPECT_GT(share(kBoston, 127), 0.0);
    EXPECT_EQ(share(kBoston, 200), 1.0);
    EXPECT_NEAR(share(kBoston, 292), 0.5, 0.02);
    EXPECT_EQ(share(kBoston, 310), 0.0);
    EXPECT_EQ(share(kSouthernEngland, 107), 0.0);
    EXPECT_GT(share(kSouthernEngland, 116), 0.0);
    EXPECT_EQ(share(kSouthernEngland, 331), 0.0);
}

// Published: Hopkins 1919, spring 4 days later per degree of latitude and per 400 ft of height,
// 4 days later per 5 degrees of longitude east.
TEST(LeafShare, ComesLaterPolewardsAndUphill)
{
    const auto burst = [](const Place& place) {
        int day = 1;
        while (share(place, day) == 0.0)
            ++day;
        return day;
    };
    const int boston = burst(kBoston);
    EXPECT_EQ(burst({44.5, -71.0, 0.0, {}}), boston + 8);
    EXPECT_EQ(burst({42.5, -71.0, 243.84, {}}), boston + 8);
    EXPECT_EQ(burst({42.5, -81.0, 0.0, {}}), boston - 8);
}

// Law: half a year apart between the hemispheres.
TEST(LeafShare, IsHalfAYearLaterInTheSouth)
{
    const Place north{45.0, 10.0, 0.0, {}};
    const Place south{-45.0, 10.0, 0.0, {}};
    EXPECT_EQ(share(north, 200), 1.0);
    EXPECT_EQ(share(south, 200), 0.0);
    EXPECT_EQ(share(south, 18), 1.0);
    EXPECT_EQ(share(north, 18), 0.0);
}

// Law: evergreens keep their leaf, semi-evergreens half of it, everywhere on earth the share is
// one and every deciduous tree has a summer and a winter.
TEST(LeafShare, StaysInItsBoundsEverywhere)
{
    for (double latitude = -70.0; latitude <= 70.0; latitude += 7.0)
        for (const double longitude : {-120.0, -71.0, 0.0, 100.0}) {
            const Place place{latitude, longitude, 1500.0, {}};
            double most = 0.0;
            double least = 1.0;
            for (int day = 1; day <= 365; ++day) {
                const double leaf = share(place, day);
                EXPECT_GE(leaf, 0.0);
                EXPECT_LE(leaf, 1.0);
                most = std::max(most, leaf);
                least = std::min(least, leaf);
                EXPECT_EQ(share(place, day, LeafHabit::evergreen), 1.0);
                EXPECT_GE(share(place, day, LeafHabit::semiEvergreen), 0.5);
            }
            EXPECT_EQ(most, 1.0) << latitude << ' ' << longitude;
            EXPECT_EQ(least, 0.0) << latitude << ' ' << longitude;
        }
}

namespace {

double shareOn(unsigned month, unsigned day, const Place& place, const LeafDates& seen)
{
    return leafShare(of(LeafHabit::deciduous), place,
                     year{2025} / std::chrono::month{month} / std::chrono::day{day}, seen);
}

} // namespace

// Law: the gardener's own dates stand in place of the rule's, and the days count on from them.
TEST(LeafShare, FollowsTheDatesThatTheGardenerHasSeen)
{
    using namespace std::chrono;
    const LeafDates seen{April / 20, October / 10};
    EXPECT_EQ(shareOn(4, 20, kBoston, seen), 0.0);
    EXPECT_NEAR(shareOn(5, 2, kBoston, seen), 12.0 / 25.0, 1e-12);
    EXPECT_EQ(shareOn(5, 15, kBoston, seen), 1.0);
    EXPECT_NEAR(shareOn(10, 10, kBoston, seen), 0.5, 1e-12);
    EXPECT_EQ(shareOn(10, 24, kBoston, seen), 0.0);
}

// Law: in the south a tree is in leaf over the turn of the year; the calendar is the same.
TEST(LeafShare, FollowsSeenDatesOverTheTurnOfTheYear)
{
    using namespace std::chrono;
    const Place hobart{-42.9, 147.3, 0.0, {}};
    const LeafDates seen{September / 15, May / 1};
    EXPECT_EQ(shareOn(8, 1, hobart, seen), 0.0);
    EXPECT_EQ(shareOn(12, 31, hobart, seen), 1.0);
    EXPECT_EQ(shareOn(1, 1, hobart, seen), 1.0);
    EXPECT_NEAR(shareOn(5, 1, hobart, seen), 0.5, 0.04);
    EXPECT_EQ(shareOn(6, 1, hobart, seen), 0.0);
}

TEST(LeafShare, KeepsTheRuleForTheDateThatWasNotSeen)
{
    using namespace std::chrono;
    const LeafDates late{June / 1, {}};
    EXPECT_EQ(shareOn(5, 31, kBoston, late), 0.0);
    EXPECT_NEAR(shareOn(10, 19, kBoston, late), shareOn(10, 19, kBoston, {}), 1e-12);
    const LeafDates veryLate{October / 1, {}};
    EXPECT_EQ(shareOn(11, 1, kBoston, veryLate), 1.0); // a summer is never under eight weeks
}
