#include "model/geometry/earth.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace model {
namespace {

/// Length of a degree at a latitude, km.
struct Degree {
    double latitude_deg;
    double north_km;
    double east_km;
};

// Published: lengths of a degree of latitude and longitude on the WGS 84 ellipsoid, as geodesy
// tables give them to the metre (from memory). 0.5 m in 111 km is their rounding.
TEST(OnEarth, AgreesWithThePublishedLengthsOfADegree)
{
    for (const Degree degree : {Degree{0.0, 110.574, 111.320}, Degree{15.0, 110.649, 107.550},
                                Degree{30.0, 110.852, 96.486}, Degree{45.0, 111.132, 78.847},
                                Degree{60.0, 111.412, 55.800}, Degree{75.0, 111.618, 28.902}}) {
        const EarthPlace origin{degree.latitude_deg, 10.0};
        const auto north = onEarth(origin, {0.0, 100.0});
        const auto east = onEarth(origin, {100.0, 0.0});
        OUTSIDE_NEAR(0.1 / (north.latitude_deg - origin.latitude_deg), degree.north_km, 0.001);
        OUTSIDE_NEAR(0.1 / (east.longitude_deg - origin.longitude_deg), degree.east_km, 0.001);
        OUTSIDE_NEAR(north.longitude_deg, 10.0, 1e-12);
    }
}

TEST(OnEarth, GivesTheOriginBack)
{
    const auto place = onEarth({-33.9, 151.2}, {0.0, 0.0});
    EXPECT_NEAR(place.latitude_deg, -33.9, 1e-12);
    EXPECT_NEAR(place.longitude_deg, 151.2, 1e-12);
}

TEST(OnEarth, KeepsLongitudesInTheirRangeAcrossTheDateLine)
{
    EXPECT_LT(onEarth({-17.0, 179.9999}, {100.0, 0.0}).longitude_deg, -179.99);
    EXPECT_GT(onEarth({-17.0, -179.9999}, {-100.0, 0.0}).longitude_deg, 179.99);
}

} // namespace
} // namespace model
