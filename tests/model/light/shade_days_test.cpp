#include "model/light/canopy.hpp"
#include "model/light/sun.hpp"
#include "tests/outside/outside_check.hpp"

#include "table.hpp"

#include <gtest/gtest.h>

#include <algorithm>

using namespace model;
using namespace model::light;
using namespace published;

namespace {

/// A tree whose only body is a ball of leaf, without wood.
Canopy ballOfLeaf(const Row& row)
{
    const Vec3 middle{number(row, "crown_centre_x_m"), number(row, "crown_centre_y_m"),
                      number(row, "crown_centre_z_m")};
    const double radius = number(row, "crown_radius_m");
    Canopy tree;
    tree.leaves.push_back({Curtain{middle, middle, radius, 0.0}, 1.0, 0, {middle, radius}});
    tree.leafAreaDensity_1_m = number(row, "leaf_area_density_m2_m3");
    tree.leafAngleX = 1.0; // leaves of all directions: G is 0.4997, the table's is 0.5
    tree.bounds = {middle, radius};
    return tree;
}

struct Day {
    double lost_min{};
    double equivalentLost_min{};
    double throughBySine{};
    double throughWhileShaded{};
};

Day dayUnder(const Canopy& tree, const Row& row)
{
    using namespace std::chrono;
    const Vec3 from{number(row, "receiver_x_east_m"), number(row, "receiver_y_north_m"),
                    number(row, "receiver_z_m")};
    const auto& date = row.at("date");
    const auto midnight = sys_days{year{std::stoi(date.substr(0, 4))} /
                                   std::stoi(date.substr(5, 2)) / std::stoi(date.substr(8, 2))};
    const double step_min = 1.0 / 6.0;
    Day day;
    double sines = 0.0;
    for (int i = 0; i < 8640; ++i) {
        const Instant when = midnight + milliseconds{10000 * i + 5000};
        const Vec3 u =
            towardsSun(sunPosition(when, number(row, "lat_deg"), number(row, "lon_deg")));
        if (u.z <= 0.0)
            continue;
        const double through = transmittance(tree, from, u);
        sines += u.z;
        day.throughBySine += u.z * through;
        day.equivalentLost_min += step_min * (1.0 - through);
        if (through < 1.0) {
            day.lost_min += step_min;
            day.throughWhileShaded += step_min * through;
        }
    }
    day.throughBySine /= sines;
    day.throughWhileShaded /= std::max(day.lost_min, step_min);
    return day;
}

} // namespace

// Brute force: tests/published/shade-cases.csv. We step by 10 s, so that a spell's length may be
// off by up to 10 s at each end of each spell; minutes lost agree to 1 % or to those 20 s.
TEST(ShadeDays, LoseAsMuchSunAsTheBruteForceDays)
{
    for (const auto& row : table("shade-cases.csv")) {
        const auto day = dayUnder(ballOfLeaf(row), row);
        const double lost_min = number(row, "opaque_lost_min");
        const double equivalent_min = number(row, "equivalent_lost_min");
        OUTSIDE_NEAR(day.lost_min, lost_min, std::max(0.01 * lost_min, 1.0 / 3.0))
            << row.at("case_id");
        OUTSIDE_NEAR(day.equivalentLost_min, equivalent_min,
                     std::max(0.01 * equivalent_min, 1.0 / 3.0))
            << row.at("case_id");
        OUTSIDE_NEAR(day.throughBySine, number(row, "mean_transmittance_sin_weighted"), 0.001)
            << row.at("case_id");
        const auto& shaded = row.at("mean_transmittance_while_in_shadow");
        if (!shaded.empty()) {
            OUTSIDE_NEAR(day.throughWhileShaded, std::stod(shaded), 0.001) << row.at("case_id");
        }
    }
}
