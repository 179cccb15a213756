#include "app/words/finding_words.hpp"

#include "app/report/rule_names.hpp"
#include "app/words/finding_list.hpp"
#include "app/words/labour_words.hpp"
#include "tests/app/words/told_garden.hpp"

#include <gtest/gtest.h>

#include <set>

namespace app {
namespace {

using model::advice::Finding;
using model::advice::Rule;
using model::advice::Severity;

constexpr int kLastRule = static_cast<int>(Rule::oakWilt);

TEST(FindingWords, EveryRuleHasASentenceOfItsOwn)
{
    const Told told("en_GB");
    std::set<std::string> sentences;
    std::set<std::string> names;
    for (int i = 0; i <= kLastRule; ++i) {
        const auto rule = static_cast<Rule>(i);
        const std::string text =
            shown(sentence({rule, Severity::block, "west", 5.0, 3.0}, told.wording));
        EXPECT_GT(text.size(), 20U) << jsonName(rule);
        EXPECT_EQ(text.back(), '.') << text;
        EXPECT_EQ(text.find('%' + std::string("1")), std::string::npos) << text;
        EXPECT_EQ(text.find("%2"), std::string::npos) << text;
        EXPECT_EQ(text.find("%3"), std::string::npos) << text;
        sentences.insert(text);
        names.insert(jsonName(rule));
    }
    EXPECT_EQ(sentences.size(), kLastRule + 1U);
    EXPECT_EQ(names.size(), kLastRule + 1U);
}

TEST(FindingWords, EveryRuleCanSpeakWithoutFigures)
{
    const Told told("en_GB");
    for (int i = 0; i <= kLastRule; ++i) {
        const auto rule = static_cast<Rule>(i);
        const QString text =
            sentence({rule, Severity::warn, "", std::nullopt, std::nullopt}, told.wording);
        EXPECT_FALSE(text.isEmpty()) << jsonName(rule);
        EXPECT_FALSE(text.contains(QLatin1String("%2"))) << shown(text);
    }
}

TEST(FindingWords, SpeakInTheListenersMeasures)
{
    const Finding wound{Rule::cutOver100mm, Severity::block, "west", 0.12, 0.10};
    EXPECT_EQ(shown(sentence(wound, Told("en_GB").wording)),
              "The wound on “West limb” is 12 cm across: a cut over 10 cm is an arborist's "
              "decision.");
    EXPECT_EQ(shown(sentence(wound, Told("en_US").wording)),
              "The wound on “West limb” is 4.7 in across: a cut over 3.9 in is an arborist's "
              "decision.");
}

TEST(FindingWords, CallALimbWithoutANameByItsId)
{
    const Finding cut{Rule::overHead, Severity::warn, "l3", 2.5, 2.1};
    EXPECT_NE(shown(sentence(cut, Told("en_GB").wording)).find("“l3”"), std::string::npos);
}

TEST(FindingWords, TellNearWiresFromFarOnes)
{
    const Told told("en_GB");
    const auto near =
        shown(sentence({Rule::nearLine, Severity::block, "wire", 1.5, 3.05}, told.wording));
    const auto far =
        shown(sentence({Rule::nearLine, Severity::warn, "wire", 7.0, 10.0}, told.wording));
    const auto british =
        shown(sentence({Rule::nearLine, Severity::block, "wire", 7.0, 10.0}, told.wording));
    EXPECT_NE(british.find("before the line's operator has been asked"), std::string::npos);
    EXPECT_NE(near.find("nobody may work"), std::string::npos) << near;
    EXPECT_NE(far.find("ask the line's operator"), std::string::npos) << far;
    EXPECT_NE(near.find("“House wire”"), std::string::npos) << near;
}

TEST(FindingWords, CountEarlierVisits)
{
    const Told told("en_GB");
    EXPECT_EQ(shown(sentence({Rule::seasonShare, Severity::inform, "v1", 0.12, std::nullopt},
                             told.wording)),
              "The visit on 3 February 2025 has taken 12 % of the leaf already.");
}

TEST(FindingWords, NameEverySignThatWasTicked)
{
    Told told("en_GB");
    auto& seen = told.garden.trees.front().observations;
    seen.resize(2);
    seen[0].sign = model::Sign::fungus;
    seen[1].sign = model::Sign::heavingSoil;
    const auto text =
        shown(sentence({Rule::warningSign, Severity::block, "", {}, {}}, told.wording));
    EXPECT_NE(text.find("mushrooms"), std::string::npos) << text;
    EXPECT_NE(text.find("soil lifting"), std::string::npos) << text;
}

TEST(FindingWords, TellTheGravestReasonFirstAndEachOnce)
{
    const Told told("en_GB");
    const model::advice::Labour labour{model::advice::Who::arborist,
                                       {{Rule::overHead, Severity::warn, "west", 2.5, 2.1},
                                        {Rule::warningSign, Severity::block, "", {}, {}},
                                        {Rule::warningSign, Severity::block, "", {}, {}}}};
    const QStringList all = reasons(labour, told.wording);
    ASSERT_EQ(all.size(), 2);
    EXPECT_NE(shown(all.front()).find("warning sign"), std::string::npos);
}

TEST(FindingList, TellsOverloadedLimbsInOneSentence)
{
    const Told told("en_GB");
    const QStringList all = sentences({{Rule::limbOverloaded, Severity::block, "l3", 1.2, 1.0},
                                       {Rule::limbOverloaded, Severity::block, "west", 1.6, 1.0}},
                                      told.wording);
    ASSERT_EQ(all.size(), 1);
    EXPECT_EQ(shown(all.front()),
              "In the gust these limbs would be asked for more than their expected strength: "
              "“West limb” (160 %) and “l3” (120 %).");
}

TEST(FindingList, KeepsPeopleAwayByTheLargestDistance)
{
    const Told told("en_GB");
    const QStringList all = sentences({{Rule::peopleBelow, Severity::warn, "path", 0.0, 7.4},
                                       {Rule::peopleBelow, Severity::warn, "path", 1.0, 8.8}},
                                      told.wording);
    ASSERT_EQ(all.size(), 1);
    EXPECT_NE(shown(all.front()).find("no cut while anybody is within 8.8 m"), std::string::npos);
}

TEST(FindingList, LeavesARoadToThoseWhoMayStopTheTraffic)
{
    const Told told("en_GB");
    const QStringList all = sentences({{Rule::peopleBelow, Severity::warn, "path", 0.0, 7.4},
                                       {Rule::peopleBelow, Severity::block, "lane", 1.0, 8.8}},
                                      told.wording);
    ASSERT_EQ(all.size(), 2);
    EXPECT_NE(shown(all.back()).find("“lane” is a road within 8.8 m"), std::string::npos);
}

TEST(FindingList, CallsAWoundLargeOnlyOnce)
{
    const Told told("en_GB");
    const QStringList all = sentences({{Rule::cutOver50mm, Severity::warn, "west", 0.07, 0.05},
                                       {Rule::poorHealer, Severity::warn, "west", 0.07, 0.05}},
                                      told.wording);
    ASSERT_EQ(all.size(), 1);
    EXPECT_NE(shown(all.front()).find("walls off decay poorly"), std::string::npos);
}

} // namespace
} // namespace app
