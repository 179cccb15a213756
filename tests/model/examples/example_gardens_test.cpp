#include "tests/model/examples/example_files.hpp"

#include "model/advice/suggestion.hpp"
#include "model/document/validate.hpp"
#include "model/load/limb_load.hpp"

#include <gtest/gtest.h>

#include <chrono>
#include <numbers>
#include <set>
#include <string>

namespace {

using namespace std::chrono;

class ExampleGarden : public testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Shipped, ExampleGarden, testing::ValuesIn(kExamples),
                         [](const auto& each) {
                             std::string name = each.param;
                             std::erase(name, '-');
                             return name;
                         });

TEST_P(ExampleGarden, IsWrittenBackByteForByte)
{
    EXPECT_EQ(model::writeGarden(example(GetParam())), exampleText(GetParam()));
}

TEST_P(ExampleGarden, MakesSenseAndNamesKnownPlants)
{
    const auto garden = example(GetParam());
    for (const auto& fault : model::validate(garden))
        ADD_FAILURE() << oneLine(fault);
    for (const auto& fault : model::unknownNames(garden, shippedTables()))
        ADD_FAILURE() << oneLine(fault);
    for (const auto& tree : garden.trees)
        for (const auto& limb : tree.limbs)
            EXPECT_FALSE(limb.name.empty()) << limb.id;
}

struct Answer {
    model::advice::Suggestion suggestion;
    std::set<model::advice::Rule> reasons;
};

/// What is advised in the season to cut this species.
Answer adviceOn(const char* name, year_month_day date)
{
    const auto garden = example(name);
    const auto& tree = garden.trees.front();
    const auto& species = *model::findSpecies(shippedTables(), tree.species);
    Answer answer{
        model::advice::suggest(garden, tree, model::foliate(tree, species), species, date), {}};
    for (const auto& finding : answer.suggestion.labour.findings)
        answer.reasons.insert(finding.rule);
    return answer;
}

double shortfall_m(const std::vector<model::headroom::StripHeadroom>& strips, const char* strip)
{
    for (const auto& each : strips)
        if (each.strip == strip)
            return each.shortfall_m;
    ADD_FAILURE() << "no strip " << strip;
    return 0.0;
}

using model::advice::Outcome;
using model::advice::Rule;
using model::advice::Who;

TEST(ExampleGardens, TheMapleHangsOverTheDriveAndIsWorkForAnArborist)
{
    const auto [suggestion, reasons] = adviceOn("maple-drive", 2026y / November / 20);
    EXPECT_GT(shortfall_m(suggestion.before, "drive"), 0.5);
    EXPECT_EQ(suggestion.outcome, Outcome::met);
    EXPECT_EQ(shortfall_m(suggestion.after, "drive"), 0.0);
    EXPECT_LE(suggestion.leafShare, 0.25);
    EXPECT_EQ(suggestion.labour.who, Who::arborist);
    for (const auto rule :
         {Rule::cutOver100mm, Rule::beyondPoleSaw, Rule::deadWood, Rule::nearLine})
        EXPECT_TRUE(reasons.contains(rule)) << static_cast<int>(rule);
    for (const auto& cut : suggestion.cuts)
        EXPECT_NE(cut.lateral, "gate-limb-spray") << "a dead lateral can't take over";
}

TEST(ExampleGardens, TheAppleHangsIntoThePathAndTakesTwo)
{
    const auto [suggestion, reasons] = adviceOn("apple-path", 2026y / July / 20);
    EXPECT_GT(shortfall_m(suggestion.before, "path"), 1.0);
    EXPECT_EQ(suggestion.outcome, Outcome::met);
    EXPECT_EQ(shortfall_m(suggestion.after, "path"), 0.0);
    EXPECT_LE(suggestion.leafShare, 0.20);
    EXPECT_EQ(suggestion.labour.who, Who::withHelper);
    EXPECT_TRUE(reasons.contains(Rule::peopleBelow));
}

TEST(ExampleGardens, TheBirchHangsIntoTheMowerStripAndNeedsSecateursOnly)
{
    const auto [suggestion, reasons] = adviceOn("birch-lawn", 2026y / October / 20);
    EXPECT_GT(shortfall_m(suggestion.before, "mower-strip"), 0.5);
    EXPECT_EQ(suggestion.outcome, Outcome::met);
    EXPECT_EQ(shortfall_m(suggestion.after, "mower-strip"), 0.0);
    EXPECT_LE(suggestion.leafShare, 0.10);
    EXPECT_EQ(suggestion.labour.who, Who::oneself); // a pole pruner reaches the hems
    for (const auto& cut : suggestion.cuts)
        EXPECT_EQ(cut.cut.kind, model::CutKind::lifting);
}

// Law: a tree that stands has no living limb that its own weight and crop would break, and a stem
// that the design gust would not.
TEST_P(ExampleGarden, CarriesItselfAndItsCrop)
{
    const auto garden = example(GetParam());
    for (const auto& tree : garden.trees) {
        const auto& species = *model::findSpecies(shippedTables(), tree.species);
        const auto foliation = model::foliate(tree, species);
        const auto still = model::load::treeLoad(tree, foliation, species, garden.place,
                                                 garden.exposure, {.gust_m_s = 0.0});
        for (const auto& limb : still.limbs)
            EXPECT_TRUE(!limb.hasStrength || limb.utilisation < 0.9) << tree.limbs[limb.limb].id;
        const auto blown =
            model::load::treeLoad(tree, foliation, species, garden.place, garden.exposure,
                                  {.gust_m_s = garden.designGust_m_s});
        const double stem_m = model::stemDiameter_m(tree);
        const double stress_Pa =
            32.0 * blown.baseMoment_Nm / (std::numbers::pi * stem_m * stem_m * stem_m);
        EXPECT_LT(stress_Pa, species.wood.greenMor_Pa.value / 2.0);
    }
}

TEST(ExampleGardens, LieInThreeTimeZonesAndBothHemispheres)
{
    std::set<std::string> zones;
    int south = 0;
    for (const auto* name : kExamples) {
        const auto garden = example(name);
        zones.insert(garden.place.timeZone);
        south += garden.place.latitude_deg < 0.0 ? 1 : 0;
    }
    EXPECT_EQ(zones.size(), kExamples.size());
    EXPECT_EQ(south, 1);
}

} // namespace
