#include "model/advice/allowance.hpp"

#include <gtest/gtest.h>

namespace model::advice {
namespace {

using namespace std::chrono_literals;

constexpr auto kToday = 2026y / 6 / 15;

Visit visitOn(std::chrono::year_month_day date, std::optional<double> share)
{
    Visit visit;
    visit.id = "v";
    visit.date = date;
    visit.leafShare = share;
    visit.cuts.push_back({CutKind::removal, "a", 0.0, {}, {}, {}});
    return visit;
}

// Published: ANSI A300-1995, Pruning, 5.3.1: not more than a quarter of the foliage of a mature
// tree in a growing season.
TEST(Allowance, IsAQuarterForAMatureTree)
{
    EXPECT_DOUBLE_EQ(allowance(Tree{}, Species{}, kToday).share, 0.25);
}

TEST(Allowance, IsATenthForOldAndStressedTrees)
{
    for (const auto vigour : {Vigour::old, Vigour::stressed}) {
        Tree tree;
        tree.vigour = vigour;
        EXPECT_DOUBLE_EQ(allowance(tree, Species{}, kToday).share, 0.10);
    }
}

TEST(Allowance, TakesTheSpeciesOwnLimitWhereThatIsLower)
{
    Species apple;
    apple.practice.maxAnnualRemoval = 0.2;
    EXPECT_DOUBLE_EQ(allowance(Tree{}, apple, kToday).share, 0.2);
    Species lenient;
    lenient.practice.maxAnnualRemoval = 0.5;
    EXPECT_DOUBLE_EQ(allowance(Tree{}, lenient, kToday).share, 0.25);
}

// Published: University of California, The Backyard Orchard: 40-50 % of the last year's wood of a
// bearing peach each year, about 20 % of a plum's (from memory).
TEST(Allowance, IsHalfForAPeachThatIsRenewedEachYear)
{
    Species peach;
    peach.latin = "Prunus persica";
    EXPECT_DOUBLE_EQ(allowance(Tree{}, peach, kToday).share, 0.50);
    Species plum;
    plum.latin = "Prunus domestica";
    EXPECT_DOUBLE_EQ(allowance(Tree{}, plum, kToday).share, 0.25);
    Tree old;
    old.vigour = Vigour::old;
    EXPECT_DOUBLE_EQ(allowance(old, peach, kToday).share, 0.10);
}

TEST(Allowance, CountsTheVisitsOfTheLastTwelveMonths)
{
    Tree tree;
    tree.visits = {visitOn(2025y / 6 / 15, 0.20), visitOn(2025y / 6 / 16, 0.05),
                   visitOn(2026y / 6 / 15, 0.08), visitOn(2026y / 6 / 16, 0.10)};
    EXPECT_NEAR(allowance(tree, Species{}, kToday).share, 0.25 - 0.05 - 0.08, 1e-12);
    tree.visits.push_back(visitOn(2026y / 1 / 1, 0.9));
    EXPECT_DOUBLE_EQ(allowance(tree, Species{}, kToday).share, 0.0);
}

TEST(Allowance, WarnsOfAVisitThatDidNotSayHowMuch)
{
    Tree tree;
    tree.visits = {visitOn(2026y / 3 / 1, std::nullopt)};
    const auto result = allowance(tree, Species{}, kToday);
    EXPECT_DOUBLE_EQ(result.share, 0.25);
    EXPECT_EQ(result.reasons.back().severity, Severity::warn);
}

TEST(CalendarNotes, TurnTheYearRoundSouthOfTheEquator)
{
    Species species;
    species.practice.avoidMonthsNorth = {4};
    EXPECT_EQ(calendarNotes(species, 50.0, 2026y / 4 / 10).size(), 2u); // bad month, and birds
    EXPECT_EQ(calendarNotes(species, 50.0, 2026y / 10 / 10).size(), 0u);
    EXPECT_EQ(calendarNotes(species, -35.0, 2026y / 10 / 10).size(), 2u);
    EXPECT_EQ(calendarNotes(species, -35.0, 2026y / 4 / 10).size(), 0u);
}

// Published: Wisconsin DNR and Minnesota: no cuts on oaks from April to July; Texas agencies:
// February to June. Where the disease occurs is from memory.
TEST(OakWilt, KeepsTheSawOffOaksWhileItSpreads)
{
    Species oak;
    oak.latin = "Quercus rubra";
    const auto says = [&](double latitude_deg, double longitude_deg, unsigned month) {
        Place place;
        place.latitude_deg = latitude_deg;
        place.longitude_deg = longitude_deg;
        return oakWiltNote(oak, place, 2026y / std::chrono::month{month} / 15).has_value();
    };
    for (unsigned month = 1; month <= 12; ++month) {
        EXPECT_EQ(says(43.1, -89.4, month), month >= 4 && month <= 7) << "Wisconsin " << month;
        EXPECT_EQ(says(30.3, -97.7, month), month >= 2 && month <= 6) << "Texas " << month;
        EXPECT_FALSE(says(51.5, 0.0, month)) << "England " << month;
        EXPECT_FALSE(says(38.5, -121.7, month)) << "California " << month;
    }
    oak.latin = "Acer rubrum";
    EXPECT_FALSE(says(43.1, -89.4, 5));
}

TEST(CalendarNotes, HoldTheJobUntilNestsHaveBeenLookedFor)
{
    const auto notes = calendarNotes(Species{}, 52.0, 2026y / 5 / 1);
    ASSERT_EQ(notes.size(), 1u);
    EXPECT_EQ(notes[0].severity, Severity::block);
}

TEST(CalendarNotes, KeepTheNestingSeason)
{
    // Wildlife and Countryside Act 1981 s.1; the season usually stated is March to August.
    for (unsigned month = 1; month <= 12; ++month) {
        const auto notes = calendarNotes(Species{}, 52.0, 2026y / std::chrono::month{month} / 1);
        EXPECT_EQ(notes.size(), month >= 3 && month <= 8 ? 1u : 0u) << month;
    }
}

} // namespace
} // namespace model::advice
