#include "model/advice/prune.hpp"
#include "model/light/daylight.hpp"
#include "model/light/light_study.hpp"

#include "garden_of.hpp"

#include <gtest/gtest.h>

#include <numeric>
#include <stdexcept>

using namespace model;
using namespace model::light;
using std::chrono::year;

namespace {

struct Made {
    Garden garden = made::garden(48.0);
    Tables tables = made::tables(LeafHabit::deciduous);
    std::vector<Foliation> sketched;
    StudyQuestion question;

    Made()
    {
        garden.trees.push_back(made::ballTree("near", {0.0, -2.5}, 3.0, 1.5));
        garden.trees.push_back(made::ballTree("far", {-1.0, -7.0}, 5.0, 2.0));
        sketched = foliations(garden, tables);
        question.days = daysOfGrowingSeason(garden.place, year{2025}, 2);
        question.step = std::chrono::minutes{20};
        question.skyDirections = 60;
    }
    LightStudy study() const
    {
        return {garden, sketched, tables, 0, {levelSurface(garden.plantings.front())}, question};
    }
};

} // namespace

// Law: the sample's weights make one whole, and a month's days lie in it.
TEST(SampleDays, MakeOneWhole)
{
    for (const double latitude : {48.0, -34.0}) {
        const auto days = daysOfGrowingSeason({latitude, 0.0, 0.0, {}, {}}, year{2025}, 4);
        EXPECT_EQ(days.size(), 24U);
        double sum = 0.0;
        for (const auto& day : days) {
            sum += day.weight;
            EXPECT_TRUE(day.date.ok());
            EXPECT_EQ(day.date.month() >= std::chrono::April &&
                          day.date.month() <= std::chrono::September,
                      latitude > 0.0);
        }
        EXPECT_NEAR(sum, 1.0, 1e-12);
    }
}

// Law: the study of the tree as it stands is the year's growing season, and without it the
// garden's without that tree.
TEST(LightStudy, AgreesWithTheYearOfLight)
{
    const Made made;
    const auto study = made.study();
    LightQuestion year_;
    year_.year = year{2025};
    year_.detail = {made.question.step, 2, made.question.skyDirections, false, 1};
    const auto season =
        yearOfLight(made.garden, made.sketched, made.tables, year_).front().growingSeason;
    const auto standing = study.with(made.garden.trees[0]).front().mean;
    EXPECT_NEAR(standing.sun_h, season.standing.sun_h, 1e-5);
    EXPECT_NEAR(standing.dli_mol, season.standing.dli_mol, 2e-2); // leaf states meet month by month
    const auto without = study.without().front().mean;
    EXPECT_NEAR(without.sun_h - standing.sun_h, season.trees[0].removal.sun_h, 1e-5);
    EXPECT_NEAR(without.dli_mol - standing.dli_mol, season.trees[0].removal.dli_mol, 2e-2);
}

// Law: the cheapest hour comes first, no cut takes light away, and half of a thinning's leaf gives
// less than the whole tree's removal.
TEST(CutGains, PutTheCheapestHourFirst)
{
    const Made made;
    const auto study = made.study();
    const Tree& tree = made.garden.trees[0];
    auto smaller = tree;
    smaller.limbs[0].foliage->radius_m = 1.0;
    const std::vector<Tree> after{
        advice::afterCut(tree, {CutKind::thinning, "trunk", 0.0, {}, 0.25, {}}), smaller, tree};
    const auto gains = cutGains(study, made.sketched[0], tree, after);
    ASSERT_EQ(gains.size(), 3U);
    for (std::size_t i = 1; i < gains.size(); ++i)
        EXPECT_GE(gains[i - 1].sunPerPercent_h, gains[i].sunPerPercent_h);
    EXPECT_EQ(gains.back().cut, 2U); // nothing cut, nothing gained
    EXPECT_NEAR(gains.back().gained.sun_h, 0.0, 1e-12);
    for (const auto& gain : gains) {
        EXPECT_GE(gain.gained.sun_h, 0.0);
        EXPECT_GE(gain.gained.dli_mol, 0.0);
        if (gain.cut == 0U) {
            EXPECT_NEAR(gain.leafShare, 0.25, 1e-9);
        }
    }
}

TEST(LightStudy, RefusesNoDays)
{
    Made made;
    made.question.days.clear();
    EXPECT_THROW((void)made.study(), std::domain_error);
}
