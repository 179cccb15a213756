#include "model/advice/prune.hpp"
#include "model/assessment/light_year.hpp"
#include "model/light/daylight.hpp"
#include "model/light/year_light.hpp"
#include "tests/model/examples/example_files.hpp"
#include "tests/model/species/table_files.hpp"

#include <gtest/gtest.h>

#include <algorithm>

using namespace model;
using std::chrono::year;

namespace {

LightAsk quick(bool withCuts = true)
{
    LightAsk ask;
    ask.year = year{2025};
    ask.withCuts = withCuts;
    ask.detail = {std::chrono::minutes{30}, 1, 60, true, 1};
    return ask;
}

} // namespace

// Law: what a cut is told to give is what the garden has more once it is cut, mean day for mean
// day.
TEST(LightYear, TellsWhatTheGardenHasMoreAfterTheCut)
{
    const auto garden = example("apple-path");
    const auto told = lightYear(garden, shippedTables(), quick());
    ASSERT_FALSE(told.surfaces.empty());
    std::size_t checked = 0;
    for (std::size_t s = 0; s < told.surfaces.size(); ++s) {
        const auto& surface = told.surfaces[s];
        double last = 1e9;
        for (const auto& cut : surface.cuts) {
            EXPECT_LE(cut.perPercent.sun_h, last + 1e-12); // the cheapest hour first
            last = cut.perPercent.sun_h;
            EXPECT_TRUE(isNotable(cut.gained));
            if (&cut != &surface.cuts.front())
                continue;
            auto after = garden;
            const auto tree = std::ranges::find(after.trees, cut.tree, &Tree::id);
            *tree = advice::afterCut(*tree, cut.cut);
            const auto then =
                light::yearOfLight(after, light::foliations(garden, shippedTables()),
                                   shippedTables(), {year{2025}, told.weather, {}, quick().detail});
            EXPECT_NEAR(then[s].growingSeason.standing.sun_h -
                            surface.light.growingSeason.standing.sun_h,
                        cut.gained.sun_h, 1e-3);
            EXPECT_NEAR(then[s].growingSeason.standing.dli_mol -
                            surface.light.growingSeason.standing.dli_mol,
                        cut.gained.dli_mol, 1e-2);
            ++checked;
        }
    }
    EXPECT_GT(checked, 0U);
}

// Law: the garden's own sunshine is what the year is reckoned with; the class stays that of clear
// skies.
TEST(LightYear, CountsTheGardensOwnClouds)
{
    auto garden = example("maple-drive");
    const auto clear = lightYear(garden, shippedTables(), quick(false));
    garden.place.sunshineShare.assign(12, 0.4);
    const auto cloudy = lightYear(garden, shippedTables(), quick(false));
    ASSERT_EQ(clear.surfaces.size(), cloudy.surfaces.size());
    for (std::size_t s = 0; s < clear.surfaces.size(); ++s) {
        const auto& one = clear.surfaces[s].light;
        const auto& other = cloudy.surfaces[s].light;
        EXPECT_NEAR(other.growingSeason.standing.sun_h, 0.4 * one.growingSeason.standing.sun_h,
                    1e-9);
        EXPECT_LT(other.growingSeason.standing.dli_mol, one.growingSeason.standing.dli_mol);
        EXPECT_EQ(other.lightClass, one.lightClass);
        EXPECT_NEAR(other.clearSun_h, one.growingSeason.standing.sun_h, 1e-9);
    }
}

TEST(LightYear, StopsWhenAsked)
{
    const std::atomic<bool> stop{true};
    EXPECT_TRUE(lightYear(example("apple-path"), shippedTables(), quick(), &stop).surfaces.empty());
}
