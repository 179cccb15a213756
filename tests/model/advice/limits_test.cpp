#include "model/advice/limits.hpp"

#include "model/advice/rule.hpp"
#include "model/headroom/headroom.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

namespace model::advice {
namespace {

constexpr double kFoot_m = 0.3048;
constexpr double kInch_m = 0.0254;

// Published: ANSI A300-1995, Pruning, 5.3.1: a quarter of the foliage in a growing season, a
// quarter of a branch's; half of the foliage in the lower two thirds of the crown and of each limb.
TEST(Limits, AreThoseOfTheStandardOfPruning)
{
    OUTSIDE_NEAR(kSeasonShare, 0.25, 1e-12) << "leaf of a tree in a season";
    OUTSIDE_NEAR(kLimbShareWarn, 0.25, 1e-12) << "leaf of a limb";
    OUTSIDE_NEAR(kLowerTwoThirdsLeast, 0.5, 1e-12) << "leaf in the lower two thirds of the crown";
    OUTSIDE_NEAR(kInnerLeafLeast, 0.5, 1e-12) << "leaf on the inner two thirds of a limb";
}

// Published: Colorado State University Extension, GardenNotes 616: 10-15 % in an ordinary season;
// 612 and 613: wounds of 2 in (50 mm) and 4 in (100 mm).
TEST(Limits, AreThoseOfExtensionServices)
{
    OUTSIDE_NEAR(kOrdinaryShare, 0.15, 1e-12) << "an ordinary season";
    OUTSIDE_NEAR(kWoundSmall_m, 2.0 * kInch_m, 1e-3) << "a wound that closes";
    OUTSIDE_NEAR(kWoundLarge_m, 4.0 * kInch_m, 2e-3) << "a cut to justify";
}

// Published: British Standard 3998, 1989, the draft of 2008 and 2010 as quoted: a lateral of a
// third; cut sections of a third of the stem's; a raise of 15 % at once; a crown of two thirds.
TEST(Limits, AreThoseOfTheBritishStandard)
{
    OUTSIDE_NEAR(kLateralLeast, 1.0 / 3.0, 1e-12) << "the lateral at a reduction";
    OUTSIDE_NEAR(kWoundSum, 1.0 / 3.0, 1e-12) << "all cut sections";
    OUTSIDE_NEAR(kRaiseStep, 0.15, 1e-12) << "a raise at once";
    OUTSIDE_NEAR(kLiveCrownRatioGood, 2.0 / 3.0, 1e-12) << "the live crown's share of the height";
    // Its worked example: 48 cuts of 50 mm on a stem of 600 mm are just a third.
    OUTSIDE_NEAR(48.0 * 50.0 * 50.0 / (600.0 * 600.0), kWoundSum, 1e-3) << "its worked example";
}

// Published: 29 CFR 1910.269: 10 ft up to 50 kV, 4 in more for each 10 kV; HSE: 10 m on plan;
// OSHA storm-response matrix: 20 ft; California PRC 4291: 10 ft from a chimney's mouth; CAL FIRE:
// 6 ft under the lowest limb; municipal codes: sight triangles clear up to 8 ft.
TEST(Limits, AreThoseOfSafetyAndByLaws)
{
    OUTSIDE_NEAR(kLineDistance_m, 10.0 * kFoot_m, 5e-3) << "from a wire";
    OUTSIDE_NEAR(kLineDistancePer10kV_m, 4.0 * kInch_m, 2e-3) << "more for each 10 kV";
    OUTSIDE_NEAR(kLineAskFirst_m, 10.0, 1e-12) << "ask the operator";
    OUTSIDE_NEAR(kFallZone_m, 20.0 * kFoot_m, 0.1) << "people beyond the drop zone";
    OUTSIDE_NEAR(kChimney_m, 10.0 * kFoot_m, 5e-3) << "from a chimney's mouth";
    OUTSIDE_NEAR(headroom::usualHeadroom(StripUse::fireZone).height_m, 6.0 * kFoot_m, 0.05)
        << "over ground in fire country";
    OUTSIDE_NEAR(headroom::usualHeadroom(StripUse::sight).height_m, 8.0 * kFoot_m, 0.05)
        << "over a sight triangle";
}

// Published: Colorado State Forest Service leaflet and Gilman & Grabosky 2006: over half as thick
// as its parent a limb is shortened; three cuts over 1 in; hire over 4 in. Weak: owners saw up to 7
// ft; dead limbs in trees over 15 ft; a lean of 15 degrees.
TEST(Limits, AreThoseOfAdviceToOwners)
{
    OUTSIDE_NEAR(kBranchToStem, 0.5, 1e-12) << "branch to stem";
    OUTSIDE_NEAR(kThreeCuts_m, 1.0 * kInch_m, 1e-3) << "three cuts";
    OUTSIDE_NEAR(kBrokenWood_m, 1.0 * kInch_m, 1e-3) << "what one hand holds";
    OUTSIDE_NEAR(kReach_m, 7.0 * kFoot_m, 0.05) << "a hand saw from the ground";
    OUTSIDE_NEAR(kDeadWoodHeight_m, 15.0 * kFoot_m, 0.05) << "dead wood";
    OUTSIDE_NEAR(kLean_deg, 15.0, 1e-12) << "lean";
}

// Law: every rule says what it measures or that it measures nothing, and where it is from.
TEST(Limits, HaveTheirSourceBesideThem)
{
    for (int i = 0; i <= static_cast<int>(Rule::oakWilt); ++i)
        EXPECT_GT(std::string(ruleFacts(static_cast<Rule>(i)).source).size(), 8U) << i;
}

} // namespace
} // namespace model::advice
