#include "model/advice/day_check.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

namespace model::advice {
namespace {

double fahrenheit(double celsius)
{
    return celsius * 9.0 / 5.0 + 32.0;
}

double celsius(double fahrenheit)
{
    return (fahrenheit - 32.0) * 5.0 / 9.0;
}

// Published: heat index chart of the US National Weather Service, whole degrees F (from memory of
// the chart; the chart rounds and the fit is good to 1.3 F).
TEST(DayCheck, FeelsAsHotAsTheWeatherServicesChart)
{
    struct Row {
        double air_F, humidity, felt_F;
    };
    for (const auto& [air, humidity, felt] :
         {Row{80, 0.40, 80}, Row{84, 0.60, 88}, Row{90, 0.50, 95}, Row{90, 0.70, 105},
          Row{94, 0.55, 106}, Row{96, 0.50, 108}, Row{100, 0.40, 109}, Row{100, 0.55, 124},
          Row{86, 0.90, 105}, Row{110, 0.40, 136}})
        OUTSIDE_NEAR(fahrenheit(heatIndex_C(celsius(air), humidity)), felt, 1.3)
            << air << " F at " << humidity;
}

// Law: never cooler when hotter or moister, in the range of the chart.
TEST(DayCheck, FeelsHotterWithHeatAndMoisture)
{
    for (double air = 27.0; air < 43.0; air += 0.5)
        for (double humidity = 0.4; humidity < 0.75; humidity += 0.05) {
            EXPECT_GE(heatIndex_C(air + 0.5, humidity), heatIndex_C(air, humidity) - 0.05);
            EXPECT_GE(heatIndex_C(air, humidity + 0.05), heatIndex_C(air, humidity) - 0.05);
        }
}

TEST(DayCheck, IsSilentOnAMildStillDay)
{
    EXPECT_TRUE(dayCheck({.air_C = 16.0, .humidity = 0.6, .gust_m_s = 4.0}).empty());
    EXPECT_TRUE(dayCheck({}).empty());
}

TEST(DayCheck, SpeaksJustPastEachThreshold)
{
    const auto one = [](const DayWeather& weather) {
        const auto all = dayCheck(weather);
        return all.empty() ? std::optional<DayFinding>() : std::optional(all.front());
    };
    EXPECT_FALSE(one({.air_C = {}, .humidity = {}, .gust_m_s = 7.99}));
    EXPECT_EQ(one({.air_C = {}, .humidity = {}, .gust_m_s = 8.0})->severity, Severity::warn);
    EXPECT_EQ(one({.air_C = {}, .humidity = {}, .gust_m_s = 10.3})->severity, Severity::block);
    EXPECT_EQ(one({.air_C = 0.0, .humidity = {}, .gust_m_s = {}})->rule, DayRule::frost);
    EXPECT_FALSE(one({.air_C = 0.1, .humidity = {}, .gust_m_s = {}}));
    const auto hot = dayCheck({.air_C = 38.5, .humidity = 0.5, .gust_m_s = {}});
    ASSERT_EQ(hot.size(), 3U);
    EXPECT_EQ(hot[0].severity, Severity::block);
    EXPECT_EQ(hot.back().rule, DayRule::heatForTree);
}

} // namespace
} // namespace model::advice
