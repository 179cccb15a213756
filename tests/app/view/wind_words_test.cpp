#include "app/words/wind_words.hpp"

#include <gtest/gtest.h>

namespace app {
namespace {

constexpr double kKnot_m_s = 1852.0 / 3600.0;

// Published: Met Office marine forecasts glossary: gale, gusts 43-51 knots; severe gale, 52-60;
// storm, 61-68; violent storm, 69 or more.
TEST(BeaufortOfGust, AgreesWithThePublishedGustsOfGalesAndStorms)
{
    const std::pair<double, int> kGlossary[] = {{43, 8},  {51, 8},  {52, 9},  {60, 9},
                                                {61, 10}, {68, 10}, {69, 11}, {75, 11}};
    for (const auto& [gust_kn, force] : kGlossary)
        EXPECT_EQ(beaufortOfGust(gust_kn * kKnot_m_s), force) << gust_kn;
}

TEST(BeaufortOfGust, RunsFromCalmToHurricaneForceWithoutAGap)
{
    int last = 0;
    for (double gust = 0.0; gust < 60.0; gust += 0.05) {
        const int force = beaufortOfGust(gust);
        EXPECT_TRUE(force == last || force == last + 1) << gust;
        last = force;
    }
    EXPECT_EQ(beaufortOfGust(0.0), 0);
    EXPECT_EQ(last, 12);
    EXPECT_EQ(beaufortWord(0), QStringLiteral("calm"));
    EXPECT_EQ(beaufortWord(12), QStringLiteral("hurricane force"));
}

} // namespace
} // namespace app
