#include "app/words/wind_words.hpp"

#include <gtest/gtest.h>

namespace app {
namespace {

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
