#include "model/load/forecast.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

namespace model::load {
namespace {

constexpr double kKnot_m_s = 1852.0 / 3600.0;

// Published: WMO, Manual on Marine Meteorological Services (No. 558), Beaufort scale: mean wind in
// knots of forces 1 to 12. Tolerance: 0.5 m/s, by which the scale's own limits in m/s (used here)
// and in whole knots stray from each other.
TEST(Beaufort, AgreesWithThePublishedScaleInKnots)
{
    const int kLeast_kn[] = {1, 4, 7, 11, 17, 22, 28, 34, 41, 48, 56, 64};
    for (int force = 1; force <= kGreatestForce; ++force) {
        const auto at = static_cast<std::size_t>(force);
        EXPECT_EQ(forceOfMean(kLeast_kn[at - 1] * kKnot_m_s), force) << force;
        OUTSIDE_NEAR(kLeastMeanOfForce_m_s[at], (kLeast_kn[at - 1] - 0.5) * kKnot_m_s, 0.5);
    }
    EXPECT_EQ(forceOfMean(0.0), 0);
    EXPECT_EQ(forceOfMean(90.0), kGreatestForce);
}

// Published: mean winds of the forces as the scale is tabled by weather services, m/s: 7 for
// force 4, 12 for 6, 19 for 8, 23 for 9, 27 for 10, 31 for 11. Tolerance: their rounding.
TEST(Beaufort, GivesEachForceItsOwnMeanWind)
{
    const std::pair<int, double> kMean[] = {{4, 7}, {6, 12}, {8, 19}, {9, 23}, {10, 27}, {11, 31}};
    for (const auto& [force, mean] : kMean)
        OUTSIDE_NEAR(meanOfForce_m_s(force), mean, 0.6) << force;
    for (int force = 0; force <= kGreatestForce; ++force) {
        EXPECT_EQ(forceOfMean(meanOfForce_m_s(force)), force);
        EXPECT_EQ(forceBringing(gustOfForce_m_s(force)), force); // Law: there and back
    }
}

// Published: Met Office marine forecasts glossary: gusts of a gale reach 43-51 knots, of a severe
// gale 52-60, of a storm 61-68, of a violent storm 69. It speaks of the sea, which is smoother than
// open country, so gusts there stand nearer to the mean. Tolerance: one force.
TEST(Beaufort, LiesWithinAForceOfTheGustsOfMarineForecasts)
{
    const std::pair<double, int> kGlossary[] = {{43, 8},  {51, 8},  {52, 9},  {60, 9},
                                                {61, 10}, {68, 10}, {69, 11}, {75, 11}};
    for (const auto& [gust_kn, force] : kGlossary) {
        EXPECT_LE(forceBringing(gust_kn * kKnot_m_s), force) << gust_kn;
        EXPECT_GE(forceBringing(gust_kn * kKnot_m_s), force - 1) << gust_kn;
    }
}

// Published: EN 1991-1-4:2005, peak over mean velocity at 10 m in terrain II: sqrt(1 + 7 Iv), Iv =
// 1/ln(10/0.05). Tolerance: the two standards' own difference.
TEST(Beaufort, TakesGustsFromMeansAsTheSecondStandard)
{
    OUTSIDE_NEAR(kGustOverMean, std::sqrt(1.0 + 7.0 / std::log(10.0 / 0.05)), 0.09);
}

TEST(ForecastGust, TellsAForceFromGustsOfAForce)
{
    const auto mean = forecastGust("Force 9");
    ASSERT_TRUE(mean);
    EXPECT_EQ(mean->said, Said::meanForce);
    EXPECT_EQ(mean->force, 9);
    EXPECT_DOUBLE_EQ(mean->gust_m_s, gustOfForce_m_s(9));
    const auto gusts = forecastGust("gusts of force 9");
    ASSERT_TRUE(gusts);
    EXPECT_EQ(gusts->said, Said::gustForce);
    EXPECT_DOUBLE_EQ(gusts->gust_m_s, meanOfForce_m_s(9));
    EXPECT_LT(gusts->gust_m_s, mean->gust_m_s);
}

TEST(ForecastGust, ReadsTheWordsOfForecasts)
{
    for (const char* words : {"force 9", " FORCE  9 ", "beaufort 9", "bft 9", "9 bft", "9 Beaufort",
                              "strong gale", "Severe Gale"})
        EXPECT_EQ(forecastGust(words), forecastGust("force 9")) << words;
    for (const char* words : {"gusts force 9", "force 9 gusts", "gust force 9", "gale gusts"})
        EXPECT_EQ(forecastGust(words)->said, Said::gustForce) << words;
    EXPECT_EQ(forecastGust("calm")->gust_m_s, 0.0);
    for (const char* words : {"", "9", "force", "force 13", "force 9.5", "force -1", "force 123",
                              "force nine", "windy", "25 m/s", "severe", "severe thunderstorm xx",
                              "severe thunderstormy", "gusts of severe thunderstorm", "gusts of"})
        EXPECT_FALSE(forecastGust(words)) << words;
}

// Published: National Weather Service, 58 mph (50 knots); Bureau of Meteorology, 90 km/h;
// Environment Canada, 90 km/h; MetService, 110 km/h; TORRO, 55 mph.
TEST(ForecastGust, TakesSevereThunderstormsAsEachNationDoes)
{
    const auto gust = [](const char* words, const char* zone = "") {
        return forecastGust(words, zone)->gust_m_s;
    };
    OUTSIDE_NEAR(gust("severe thunderstorm us"), 50 * kKnot_m_s, 0.25); // rounded to whole mph
    OUTSIDE_NEAR(gust("severe thunderstorm au"), 25.0, 1e-9);
    OUTSIDE_NEAR(gust("Severe Thunderstorms CA"), 25.0, 1e-9);
    OUTSIDE_NEAR(gust("severe thunderstorm nz"), 110 / 3.6, 1e-9);
    OUTSIDE_NEAR(gust("severe thunderstorm uk"), 55 * 0.44704, 1e-9);
    const char* kAsked = "severe thunderstorm";
    EXPECT_EQ(gust(kAsked), gust("severe thunderstorm us"));
    EXPECT_EQ(gust(kAsked, "America/Chicago"), gust("severe thunderstorm us"));
    EXPECT_EQ(gust(kAsked, "America/Toronto"), gust("severe thunderstorm ca"));
    EXPECT_EQ(gust(kAsked, "Australia/Perth"), gust("severe thunderstorm au"));
    EXPECT_EQ(gust(kAsked, "Pacific/Auckland"), gust("severe thunderstorm nz"));
    EXPECT_EQ(gust(kAsked, "Europe/London"), gust("severe thunderstorm uk"));
    EXPECT_EQ(gust("severe thunderstorm au", "America/Toronto"), 25.0);
}

TEST(Beaufort, RefusesWhatIsNoForceOrWind)
{
    EXPECT_THROW((void)meanOfForce_m_s(-1), std::domain_error);
    EXPECT_THROW((void)gustOfForce_m_s(13), std::domain_error);
    EXPECT_THROW((void)forceOfMean(-0.1), std::domain_error);
    EXPECT_THROW((void)forceBringing(std::nan("")), std::domain_error);
}

} // namespace
} // namespace model::load
