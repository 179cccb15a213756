#include "app/words/breaking_words.hpp"
#include "app/words/cautions.hpp"
#include "app/words/cut_words.hpp"
#include "app/words/headroom_words.hpp"
#include "app/words/load_words.hpp"
#include "app/words/sag_words.hpp"
#include "tests/app/words/told_garden.hpp"

#include <gtest/gtest.h>

namespace app {
namespace {

using model::CutKind;
using model::advice::PlannedCut;

PlannedCut cutOf(CutKind kind, const char* limb)
{
    PlannedCut planned;
    planned.cut.kind = kind;
    planned.cut.limb = limb;
    return planned;
}

TEST(CutWords, SayWhereALimbComesOff)
{
    PlannedCut cut = cutOf(CutKind::removal, "west");
    cut.aboveGround_m = 2.0;
    cut.diameter_m = 0.12;
    cut.length_m = 3.2;
    cut.mass_kg = 21.4;
    cut.leafShare = 0.083;
    EXPECT_EQ(shown(instruction(cut, Told("en_GB").wording)),
              "Take off “West limb” where it grows from “Stem”, 2 m above the ground, just outside "
              "the branch collar: neither flush with the wood behind it nor with a stub.");
    EXPECT_EQ(
        shown(measures(cut, Told("en_US").wording)),
        "Wound 4.7 in across; what comes off is 10 ft 6 in long and weighs about 47 lb; 8.3 % of "
        "the leaf.");
}

TEST(CutWords, SayWhichSideBranchTakesOver)
{
    PlannedCut cut = cutOf(CutKind::reduction, "west");
    cut.cut.at_m = 1.5;
    cut.lateral = "l3";
    cut.aboveGround_m = 2.5;
    EXPECT_EQ(shown(instruction(cut, Told("en_GB").wording)),
              "Shorten “West limb” back to its side branch “l3”, 1.5 m from the union and 2.5 m "
              "above the ground; “l3” takes over. Cut just outside the ridge of bark between the "
              "two, without a stub.");
}

TEST(CutWords, SayWhatCleansAndThatItIsNotCounted)
{
    PlannedCut cut = cutOf(CutKind::reduction, "west");
    cut.cut.at_m = 1.5;
    cut.aboveGround_m = 2.5;
    cut.diameter_m = 0.04;
    cut.length_m = 1.0;
    cut.mass_kg = 3.0;
    cut.cleans = true;
    const Told told("en_GB");
    EXPECT_EQ(shown(cutKindWords(cut)), "cleaning, reduction cut");
    EXPECT_EQ(
        shown(instruction(cut, told.wording)),
        "Cut the dead end off “West limb”, 1.5 m from its union, 2.5 m above the ground: dead "
        "wood only, up to the swollen ring where it lives.");
    EXPECT_EQ(shown(measures(cut, told.wording)),
              "Wound 4 cm across; what comes off is 1 m long and weighs about 3 kg; not counted as "
              "leaf.");
    model::advice::Suggestion plan;
    plan.outcome = model::advice::Outcome::met;
    plan.cuts = {cut};
    EXPECT_EQ(shown(outcomeWords(plan, told.wording)),
              "The tree only has to be cleaned: dead, broken or rubbing wood goes, which is not "
              "counted as leaf.");
    EXPECT_TRUE(shown(jobNotes(plan, told.wording).first()).starts_with("Clean first: "));
}

TEST(CutWords, RenewFruitingWoodByAShare)
{
    PlannedCut cut = cutOf(CutKind::renewal, "west");
    cut.cut.share = 0.15;
    EXPECT_EQ(
        shown(instruction(cut, Told("en_GB").wording)),
        "Renew the fruiting wood of “West limb”: take 15 % of last year's shoots, upright ones "
        "first, and cut old fruiting wood back to young shoots.");
}

TEST(CutWords, LiftShootsToAHeight)
{
    PlannedCut cut = cutOf(CutKind::lifting, "west");
    cut.cut.height_m = 2.1;
    EXPECT_EQ(shown(instruction(cut, Told("en_GB").wording)),
              "Shorten the hanging shoots of “West limb” to 2.1 m above the ground, each to a bud "
              "or side shoot.");
}

TEST(CutWords, SayWhenTheGuidelineStandsInTheWay)
{
    model::advice::Suggestion suggestion;
    suggestion.outcome = model::advice::Outcome::notWithinGuideline;
    suggestion.allowance = 0.25;
    suggestion.leafShareWithoutGuideline = 0.41;
    const auto text = shown(outcomeWords(suggestion, Told("en_GB").wording));
    EXPECT_NE(text.find("If no rule of the guideline were kept, it would cost 41 % of the leaf"),
              std::string::npos)
        << text;
}

// Law: what was not proven is not said to be impossible.
TEST(CutWords, CallImpossibleOnlyWhatWasProvenToBe)
{
    model::advice::Suggestion suggestion;
    suggestion.outcome = model::advice::Outcome::notWithinGuideline;
    const auto said = [&] { return shown(outcomeWords(suggestion, Told("en_GB").wording)); };
    EXPECT_NE(said().find("so there may be some"), std::string::npos) << said();
    suggestion.refuted = true;
    EXPECT_NE(said().find("can't be had"), std::string::npos) << said();
}

// What all of it takes is one figure: with all rules but the season's, where that one binds.
TEST(CutWords, LeaveTheShareToTheRuleThatBinds)
{
    using model::advice::Rule;
    model::advice::Suggestion suggestion;
    suggestion.outcome = model::advice::Outcome::notWithinGuideline;
    suggestion.allowance = 0.10;
    suggestion.leafShareWithoutGuideline = 0.098;
    suggestion.binding = {{Rule::seasonShare, model::advice::Severity::block, {}, 0.11, 0.10}};
    const auto text = shown(outcomeWords(suggestion, Told("en_GB").wording));
    EXPECT_EQ(text.find("9.8 %"), std::string::npos) << text;
    EXPECT_NE(text.find("Spread it over several years"), std::string::npos) << text;
}

TEST(HeadroomWords, SayHowMuchIsMissingAndWhatIsInTheWay)
{
    const model::headroom::LowPart shoots{"west", 1.62, true, {}};
    const model::headroom::LowPart wood{"l3", 1.9, false, {}};
    model::headroom::StripHeadroom headroom;
    headroom.strip = "path";
    headroom.needed_m = 2.1;
    headroom.height_m = 1.62;
    headroom.shortfall_m = 0.48;
    headroom.blame = {shoots, wood};
    EXPECT_EQ(shown(sentence(headroom, Told("en_GB").wording)),
              "“Path to the gate”: headroom is 1.62 m and 2.1 m is needed, so it is 0.48 m short. "
              "In the way: hanging shoots of “West limb” down to 1.62 m and “l3” down to 1.9 m.");
}

TEST(HeadroomWords, TellHowLowTheTreeHangsWhenWet)
{
    model::headroom::StripHeadroom headroom;
    headroom.strip = "path";
    headroom.needed_m = 2.1;
    headroom.height_m = 2.2;
    headroom.sagged = {.height_m = 1.95, .lowestLimb = "west", .shortfall_m = 0.15, .blame = {}};
    Told told("en_GB");
    EXPECT_EQ(shown(sentence(headroom, told.wording)),
              "“Path to the gate”: the lowest part hangs 2.2 m above the ground; 2.1 m is enough. "
              "When it is wet it comes down to 1.95 m, which is 0.15 m short; “West limb” hangs "
              "lowest then.");
    told.garden.trees.front().limbs.front().fruit_kg = 1.0;
    headroom.sagged->height_m = 2.12;
    headroom.sagged->shortfall_m = 0.0;
    EXPECT_EQ(shown(sentence(headroom, told.wording)),
              "“Path to the gate”: the lowest part hangs 2.2 m above the ground; 2.1 m is enough. "
              "Wet and in fruit it comes down to 2.12 m, which is still enough; “West limb” hangs "
              "lowest then.");
    headroom.sagged->height_m = 2.196; // no tape shows that
    EXPECT_EQ(shown(sentence(headroom, told.wording)),
              "“Path to the gate”: the lowest part hangs 2.2 m above the ground; 2.1 m is enough.");
}

TEST(SagWords, TellHowFarALimbSinksAndSpringsBack)
{
    const model::load::LimbSag sag{
        .limb = 1, .tip_m = 0.21, .most_m = 0.21, .mostAt_m = 2.4, .prop_N = 0.0};
    const Told told("en_GB");
    const auto plain = shown(sentence(sag, std::nullopt, told.wording));
    EXPECT_NE(plain.find("sinks by about 0.21 m where it sinks most, 2.4 m along it."),
              std::string::npos)
        << plain;
    EXPECT_EQ(plain.find("springs"), std::string::npos);
    EXPECT_NE(shown(sentence(sag, 0.06, told.wording)).find("springs back by about 0.06 m"),
              std::string::npos);
    auto held = sag;
    held.prop_N = 98.0665;
    EXPECT_NE(shown(sentence(held, 0.001, told.wording)).find("Its prop then bears about 10 kg."),
              std::string::npos);
}

TEST(LoadWords, GiveNoFigureForWoodWithoutStrength)
{
    model::load::LimbLoad load;
    load.limb = 1;
    load.utilisation = 0.3;
    load.hasStrength = false;
    const auto text = shown(sentence(load, Told("en_GB").wording));
    EXPECT_EQ(text.find("30"), std::string::npos) << text;
    EXPECT_NE(text.find("no strength"), std::string::npos) << text;
}

model::load::BreakingGust breaking(double p10_m_s, double p50_m_s, double p90_m_s)
{
    model::load::BreakingGust gust;
    gust.p10_m_s = p10_m_s;
    gust.p50_m_s = p50_m_s;
    gust.p90_m_s = p90_m_s;
    return gust;
}

TEST(BreakingWords, TellARangeAndNeverOneFigure)
{
    const Told told("en_GB");
    EXPECT_EQ(shown(sentence(breaking(25, 35, 50), told.wording)),
              "Likely to break in a gust of about 78 mph, as force 9 (severe gale) brings; one in "
              "ten such limbs at 56 mph; nine in ten by 112 mph.");
    EXPECT_EQ(shown(sentence(breaking(25, 35, 80), told.wording)),
              "Likely to break in a gust of about 78 mph, as force 9 (severe gale) brings; one in "
              "ten such limbs at 56 mph.");
    EXPECT_NE(shown(sentence(breaking(0, 35, 50), told.wording)).find("in still air"),
              std::string::npos);
    EXPECT_NE(shown(sentence(breaking(45, 80, 80), told.wording)).find("one in ten"),
              std::string::npos);
}

TEST(BreakingWords, NameWhatMakesTheRangeWideTheGreatestFirst)
{
    const Told told("en_GB");
    auto gust = breaking(25, 35, 50);
    gust.share = {0.3, 0.45, 0.05, 0.15, 0.05};
    const auto causes = shown(rangeCauses(gust, told.wording));
    EXPECT_LT(causes.find("how thick it is (45 %)"), causes.find("its wood and its union"));
    EXPECT_LT(causes.find("its wood and its union"), causes.find("pulls at its leaves (15 %)"));
    EXPECT_NE(shown(whatToMeasure(gust, told.wording)).find("tape"), std::string::npos);
    EXPECT_FALSE(girthsToTape({gust}, {0}, told.wording).isEmpty());
    gust.share = {0.5, 0.02, 0.38, 0.05, 0.05};
    EXPECT_NE(shown(whatToMeasure(gust, told.wording)).find("leaf"), std::string::npos);
    EXPECT_TRUE(girthsToTape({gust}, {0}, told.wording).isEmpty());
    gust.share = {0.9, 0.02, 0.02, 0.03, 0.03};
    EXPECT_NE(shown(whatToMeasure(gust, told.wording)).find("Nothing"), std::string::npos);
}

TEST(BreakingWords, SaySoWhenTheDrawingIsDoubtfulAndNothingOfDeadWood)
{
    const Told told("en_GB");
    auto doubtful = breaking(16, 17, 18);
    doubtful.stood = 0.2;
    EXPECT_NE(shown(sentence(doubtful, told.wording)).find("As drawn"), std::string::npos);
    auto dead = breaking(0, 0, 0);
    dead.hasStrength = false;
    EXPECT_TRUE(sentence(dead, told.wording).isEmpty());
}

// The cautions that tree work must always carry; nothing may call a tree safe.
TEST(Cautions, NameEveryDangerAndNeverCallATreeSafe)
{
    const std::string all = cautions().join(QLatin1Char(' ')).toStdString();
    for (const char* word : {"estimates", "not an inspection", "no visible defect can still fail",
                             "certified arborist", "wire", "local authority", "permit", "nest",
                             "Never work alone", "ladder"})
        EXPECT_NE(all.find(word), std::string::npos) << word;
    EXPECT_EQ(all.find("is safe"), all.rfind("is safe"));
    EXPECT_NE(all.find("Nothing here says that a tree or a limb is safe"), std::string::npos);
}

} // namespace
} // namespace app
