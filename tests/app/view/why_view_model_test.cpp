#include "app/view/why_view_model.hpp"

#include "app/view/answers_view_model.hpp"
#include "app/view/light_view_model.hpp"
#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/wait_for.hpp"

#include <QCoreApplication>

#include <gtest/gtest.h>

namespace app {
namespace {

class WhyTest : public ::testing::Test {
protected:
    WhyTest()
    {
        workspace_.document().start(smallGarden());
        until([this] { return !workspace_.isBusy(); });
    }
    template <typename Done>
    void until(const Done& done)
    {
        ASSERT_TRUE(waitFor(done));
    }
    void ask(const QString& key)
    {
        why_.ask(key);
        until([this] { return !why_.title().isEmpty(); });
    }
    /// Value and origin of the first step whose name holds the words.
    std::pair<QString, QString> step(const char* words)
    {
        auto& steps = *why_.steps();
        for (int row = 0; row < steps.rowCount(); ++row) {
            const auto index = steps.index(row);
            if (steps.data(index, ChainModel::Name).toString().contains(QLatin1String(words)))
                return {steps.data(index, ChainModel::Value).toString(),
                        steps.data(index, ChainModel::Origin).toString()};
        }
        ADD_FAILURE() << "no step " << words;
        return {};
    }

    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
    Workspace workspace_{tables(), Units(QLocale(QLocale::English), Measures::metric),
                         modelWorks(tables()), std::chrono::year(2025) / 7 / 3};
    AnswersViewModel answers_{workspace_};
    WhyViewModel why_{workspace_};
};

TEST_F(WhyTest, EveryFactThatIsToldNamesItsChain)
{
    for (const auto* facts : {answers_.room(), answers_.storm(), answers_.sun()}) {
        ASSERT_FALSE(facts->facts().empty());
        for (const auto& fact : facts->facts()) {
            ask(fact.why);
            EXPECT_GT(why_.steps()->rowCount(), 5) << fact.subject.toStdString();
            EXPECT_FALSE(why_.answer().isEmpty());
            why_.close();
        }
    }
}

TEST_F(WhyTest, ALimbsChainEndsInTheFigureThatStandsInTheAnswers)
{
    const auto& fact = answers_.storm()->facts().front();
    ask(fact.why);
    EXPECT_EQ(step("Share of its expected strength").first, fact.figure);
}

TEST_F(WhyTest, AStripsChainEndsInItsHeadroomAndNamesWhoAsksForHowMuch)
{
    ask(why::key(why::Kind::strip, "path"));
    const auto* strip = &workspace_.quick()->headroom.front();
    EXPECT_EQ(step("Headroom = height").first, workspace_.units().length(*strip->height_m));
    EXPECT_EQ(step("Headroom usual for a path").first, workspace_.units().length(2.4));
    EXPECT_TRUE(step("Headroom usual").second.contains(QStringLiteral("municipal")));
}

TEST_F(WhyTest, ItFollowsWhatIsDrawnAndClosesWhenItsLimbIsGone)
{
    ask(why::key(why::Kind::limb, "bough"));
    const QString before = why_.answer();
    auto tree = *workspace_.tree();
    tree.limbs[1].stations[2].position_m.x += 1.0;
    ASSERT_TRUE(workspace_.changeTree(QStringLiteral("longer"), tree));
    until([&] { return why_.answer() != before; });
    tree.limbs.pop_back();
    ASSERT_TRUE(workspace_.changeTree(QStringLiteral("shorter"), tree));
    EXPECT_FALSE(why_.isOpen());
}

TEST_F(WhyTest, EachMonthOfTheYearAndItsSeasonHaveAChainThatEndsInTheFigureShown)
{
    SideViewModel side(workspace_);
    PlanViewModel plan(workspace_, side);
    LightViewModel light(workspace_, plan, modelLightWorks(tables()));
    why_.follow(light);
    workspace_.setHour(13.0); // something to answer
    until([&] { return light.place() >= 0 && !light.isBusy(); });
    ASSERT_EQ(light.months()->months().size(), 12u);
    for (const auto& month : light.months()->months()) {
        ask(month.why);
        EXPECT_TRUE(month.sentence.contains(step("Direct sun = open sky").first));
        EXPECT_TRUE(month.sentence.contains(step("Light for growth that is left").first));
        why_.close();
    }
    ASSERT_FALSE(light.taken()->facts().empty());
    ask(light.taken()->facts().front().why);
    EXPECT_TRUE(step("Without the maple").first.startsWith(light.taken()->facts().front().figure));
    EXPECT_TRUE(why_.title().contains(QStringLiteral("April")));
    why_.close();
    ASSERT_FALSE(light.cuts()->facts().empty());
    for (const auto& cut : light.cuts()->facts()) {
        ask(cut.why);
        EXPECT_EQ(why_.answer(), cut.sentence);
        EXPECT_TRUE(cut.figure.startsWith(step("More than as it stands").first));
        EXPECT_TRUE(cut.figure.endsWith(step("Share = leaf that goes").first));
        why_.close();
    }
}

TEST_F(WhyTest, CutsAndWhoHaveTheirChains)
{
    ASSERT_FALSE(workspace_.treeAssessment()->suggestion.cuts.empty());
    why_.askCut(0);
    until([this] { return !why_.title().isEmpty(); });
    const auto& units = workspace_.units();
    EXPECT_EQ(step("Share = leaf").first,
              units.share(workspace_.treeAssessment()->suggestion.cuts[0].leafShare));
    ask(why_.cutsKey());
    EXPECT_EQ(step("Left to go").first,
              units.share(workspace_.treeAssessment()->suggestion.allowance));
    ask(why_.whoKey());
    EXPECT_TRUE(why_.method().contains(QStringLiteral("advice.md")));
}

} // namespace
} // namespace app
