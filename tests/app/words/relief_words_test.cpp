#include "app/words/relief_words.hpp"
#include "tests/app/words/told_garden.hpp"

#include <gtest/gtest.h>

namespace app {
namespace {

using model::CutKind;
using model::load::CutRelief;

/// Three cuts that relieve the stem (0): thinning the west limb, taking it off, taking off its
/// side branch.
std::vector<CutRelief> reliefs()
{
    return {{1, CutKind::thinning, 0.3, 400.0, {{1, 90.0, 0.02, 0.6}, {0, 400.0, 0.004, 0.2}}},
            {1, CutKind::removal, 0.5, 500.0, {{0, 500.0, 0.006, 0.3}}},
            {2, CutKind::removal, 0.1, 300.0, {{1, 60.0, 0.013, 0.0}, {0, 300.0, 0.0005, 0.0}}}};
}

TEST(ReliefWords, PutTheCutFirstThatFreesMostForItsLeaf)
{
    const auto all = reliefs(); // the answer points into it
    const auto best = bestForLimb(all, 0, 1.0);
    ASSERT_EQ(best.size(), 2U); // the third frees next to nothing
    EXPECT_EQ(best[0].cut->kind, CutKind::removal);
    EXPECT_EQ(best[1].cut->kind, CutKind::thinning);
    EXPECT_EQ(shown(sentence(best, Told("en_GB").wording)),
              "For each percent of the tree's leaf it is relieved most by taking off “West limb” "
              "(0.6 % of its strength, 500 N m, 0.7 mph more gust) and thinning the small shoots "
              "of “West limb” (0.4 % of its strength, 400 N m, 0.4 mph more gust).");
}

TEST(ReliefWords, LeaveOutWhatTakesMoreLeafThanMayGo)
{
    const auto all = reliefs(); // the answer points into it
    const auto best = bestForLimb(all, 0, 0.4);
    ASSERT_EQ(best.size(), 1U);
    EXPECT_EQ(best[0].cut->kind, CutKind::thinning);
}

TEST(ReliefWords, SayNothingOfGustsThatAreNotKnown)
{
    const auto all = reliefs(); // the answer points into it
    const auto best = bestForLimb(all, 1, 0.2);
    EXPECT_EQ(shown(sentence(best, Told("de_DE").wording)),
              "For each percent of the tree's leaf it is relieved most by taking off “l3” (1,3 % "
              "of its strength, 60 N m).");
    EXPECT_TRUE(sentence(decltype(best){}, Told("de_DE").wording).isEmpty());
}

} // namespace
} // namespace app
