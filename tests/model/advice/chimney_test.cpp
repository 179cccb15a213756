#include "model/advice/chimney.hpp"

#include <gtest/gtest.h>

namespace model::advice {
namespace {

// Published: California Public Resources Code 4291: 10 ft (3.05 m) from the outlet of a chimney,
// in any direction.
TEST(Chimney, IsKeptClearByTenFeet)
{
    Tree tree;
    tree.position_m = {5.0, 0.0};
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.2, {}}, {{0, 0, 6}, 0.2, {}}};
    tree.limbs = {trunk};
    Garden garden;
    const auto says = [&](double away_m, double height_m, StructureKind kind) {
        const double x = 5.0 - 0.1 - away_m; // from the bark
        garden.structures = {{"flue",
                              "",
                              kind,
                              {{x - 0.2, -0.2}, {x + 0.2, -0.2}, {x + 0.2, 0.2}, {x - 0.2, 0.2}},
                              height_m,
                              {}}};
        return !chimneyNotes(garden, tree).empty();
    };
    EXPECT_TRUE(says(3.04, 5.0, StructureKind::chimney));
    EXPECT_FALSE(says(3.06, 5.0, StructureKind::chimney));
    EXPECT_FALSE(says(3.04, 5.0, StructureKind::building));
    EXPECT_TRUE(says(1.0, 8.8, StructureKind::chimney)) << "over its top";
    EXPECT_FALSE(says(1.0, 9.2, StructureKind::chimney));
}

} // namespace
} // namespace model::advice
