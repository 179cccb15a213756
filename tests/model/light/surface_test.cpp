#include "model/light/surface.hpp"

#include "garden_of.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <stdexcept>

using namespace model;
using namespace model::light;

namespace {

Planting hedge(bool clockwise = false)
{
    Planting planting;
    planting.id = "hedge";
    planting.kind = PlantingKind::hedge;
    planting.height_m = 2.0;
    planting.outline_m = {{0, 0}, {10, 0}, {10, 1}, {0, 1}}; // runs east, 10 m by 1 m
    if (clockwise)
        std::ranges::reverse(planting.outline_m);
    return planting;
}

} // namespace

// Law: a straight hedge has four faces that look outwards, whichever way round it was drawn.
TEST(Faces, LookOutwardsWhicheverWayTheHedgeWasDrawn)
{
    for (const bool clockwise : {false, true}) {
        const auto found = faces(hedge(clockwise));
        ASSERT_EQ(found.size(), 4U);
        for (const double bearing : {0.0, 90.0, 180.0, 270.0}) {
            const auto face = std::ranges::find_if(found, [&](const Surface& surface) {
                return std::abs(*surface.facing_deg - bearing) < 1e-6;
            });
            ASSERT_NE(face, found.end()) << bearing;
            for (const Vec3 point : face->points_m) {
                if (bearing == 0.0) {
                    EXPECT_NEAR(point.y, 1.01, 1e-9);
                }
                if (bearing == 180.0) {
                    EXPECT_NEAR(point.y, -0.01, 1e-9);
                }
            }
        }
        EXPECT_EQ(found.front().points_m.size(), 20U); // 10 m, two heights
    }
}

TEST(Faces, AreNoneForBedsAndLawns)
{
    auto planting = hedge();
    planting.kind = PlantingKind::bed;
    EXPECT_TRUE(faces(planting).empty());
}

TEST(LevelSurface, LiesAtThePlantingsHeight)
{
    const auto surface = levelSurface(hedge());
    EXPECT_FALSE(surface.facing_deg);
    EXPECT_GE(surface.points_m.size(), 50U);
    for (const Vec3 point : surface.points_m)
        EXPECT_EQ(point.z, 2.0);
}

TEST(MapGrid, CoversItsRectangleInRows)
{
    const auto grid = mapGrid({-2.0, 1.0}, {2.0, 4.0}, 0.5, 0.3);
    EXPECT_EQ(grid.columns, 8U);
    EXPECT_EQ(grid.rows, 6U);
    ASSERT_EQ(grid.surface.points_m.size(), 48U);
    EXPECT_NEAR(grid.surface.points_m.front().x, -1.75, 1e-12);
    EXPECT_NEAR(grid.surface.points_m.front().y, 1.25, 1e-12);
    EXPECT_NEAR(grid.surface.points_m.back().x, 1.75, 1e-12);
    EXPECT_NEAR(grid.surface.points_m.back().y, 3.75, 1e-12);
    EXPECT_EQ(grid.surface.points_m[1].y, grid.surface.points_m[0].y);
    EXPECT_THROW((void)mapGrid({0, 0}, {1, 1}, 0.0), std::domain_error);
    EXPECT_THROW((void)mapGrid({0, 0}, {-1, 1}, 0.1), std::domain_error);
}
