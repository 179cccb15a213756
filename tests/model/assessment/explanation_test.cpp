#include "model/advice/suggestion.hpp"
#include "model/assessment/assessment.hpp"
#include "model/assessment/cut_explanation.hpp"
#include "model/assessment/strip_explanation.hpp"
#include "model/assessment/sun_explanation.hpp"
#include "tests/model/examples/example_files.hpp"
#include "tests/model/species/table_files.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

using namespace model;
using namespace std::chrono_literals;

// Law: a chain ends in the figures that the assessment tells.
TEST(ExplainCuts, EndsInTheShareAndTheWeightOfThePlan)
{
    const auto garden = example("maple-drive");
    Question question;
    question.date = 2025y / 7 / 3;
    const auto& tree = garden.trees.front();
    const auto assessment = assess(garden, shippedTables(), question, tree.id);
    const auto& suggestion = assessment.trees.front().suggestion;
    ASSERT_GT(suggestion.cuts.size(), 1u);
    std::vector<Cut> made;
    double share = 0.0;
    for (const auto& planned : suggestion.cuts) {
        const auto why =
            explainCuts(garden, shippedTables(), tree.id, made, {planned.cut}, question.date);
        EXPECT_NEAR(why.leafShare, planned.leafShare, 1e-9);
        EXPECT_NEAR(why.wood_kg + why.leafy_kg + why.fruit_kg, planned.mass_kg, 1e-6);
        double leaf = 0.0;
        for (const auto& taken : why.taken)
            leaf += taken.before_m2 - taken.after_m2;
        EXPECT_NEAR(leaf, why.leaf_m2, 1e-9);
        share += why.leafShare;
        made.push_back(planned.cut);
    }
    const auto all = explainCuts(garden, shippedTables(), tree.id, {}, made, question.date);
    EXPECT_NEAR(all.leafShare, share, 1e-9);
    EXPECT_NEAR(all.leafShare, suggestion.leafShare, 1e-9);
    EXPECT_EQ(all.allowance, suggestion.allowance);
}

TEST(ExplainStrip, EndsInTheHeadroomOfTheAssessmentDryAndAtItsHeaviest)
{
    const auto garden = example("apple-path");
    Question question;
    question.date = 2025y / 7 / 3;
    const auto assessment = assess(garden, shippedTables(), question);
    for (const auto& tree : assessment.trees)
        for (const auto& strip : tree.headroom) {
            const auto why = explainStrip(garden, shippedTables(), tree.tree, strip.strip);
            EXPECT_EQ(why.needed_m, strip.needed_m);
            ASSERT_EQ(why.drawn.has_value(), strip.height_m.has_value());
            if (!why.drawn)
                continue;
            EXPECT_NEAR(why.drawn->height_m, *strip.height_m, 1e-9);
            EXPECT_NEAR(why.heaviest->height_m, *strip.sagged->height_m, 1e-9);
            EXPECT_NEAR(why.shortfall_m(), strip.worstShortfall_m(), 1e-9);
            EXPECT_GT(why.rain_kg, 0.0);
        }
}

// Closed form: at an equinox the day is twelve hours, and the sun stands as far from overhead at
// noon as the place lies from the equator. Law: the rest is plantingSun()'s.
TEST(ExplainSun, StartsAtTheSkyAndEndsInTheSunOfTheAssessment)
{
    const auto garden = example("birch-lawn");
    const auto& planting = garden.plantings.front().id;
    const auto why = explainSun(garden, shippedTables(), planting, 2025y / 9 / 22);
    OUTSIDE_NEAR(why.dayLength_h, 12.0, 0.1);
    OUTSIDE_NEAR(why.noon_deg, 90.0 - std::abs(garden.place.latitude_deg), 0.6);
    const auto all = light::plantingSun(garden, shippedTables(), 2025y / 9 / 22);
    EXPECT_EQ(why.sun.sun_h, all.front().sun_h);
    EXPECT_LE(why.sun.openSky_h, why.dayLength_h);
    for (const auto& tree : why.trees)
        EXPECT_GT(tree.lost_h, 0.0);
}

TEST(Explanations, RefuseWhatIsNotThere)
{
    const auto garden = example("birch-lawn");
    const auto& tables = shippedTables();
    const auto date = 2025y / 7 / 3;
    EXPECT_THROW((void)explainStrip(garden, tables, "no tree", "x"), std::out_of_range);
    EXPECT_THROW((void)explainStrip(garden, tables, garden.trees[0].id, "x"), std::out_of_range);
    EXPECT_THROW((void)explainSun(garden, tables, "x", date), std::out_of_range);
    EXPECT_THROW((void)explainCuts(garden, tables, garden.trees[0].id, {},
                                   {{CutKind::removal, "no limb", 0.0, {}, {}, {}}}, date),
                 std::domain_error);
}
