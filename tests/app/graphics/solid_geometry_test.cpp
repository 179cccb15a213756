#include "app/graphics/solid_geometry.hpp"

#include "app/solid/prism_mesh.hpp"

#include <QVector3D>

#include <cstring>

#include <gtest/gtest.h>

namespace app {
namespace {

Solid block()
{
    return {std::make_shared<const Mesh>(prismMesh(
        {{1, 2}, {4, 2}, {4, 7}, {1, 7}}, [](model::Point2) { return 0.5; },
        [](model::Point2) { return 3.0; }))};
}

TEST(SolidGeometry, CarriesEachPlaceWithItsNormalIntoTheScenesFrame)
{
    const auto solid = block();
    SolidGeometry geometry;
    geometry.setSolid(solid);
    const auto& mesh = *solid.mesh;
    ASSERT_EQ(geometry.stride(), 24);
    ASSERT_EQ(geometry.vertexData().size(), static_cast<qsizetype>(24 * mesh.places_m.size()));
    ASSERT_EQ(geometry.indexData().size(), static_cast<qsizetype>(12 * mesh.triangles.size()));
    for (std::size_t i = 0; i < mesh.places_m.size(); ++i) {
        float six[6];
        std::memcpy(six, geometry.vertexData().constData() + 24 * i, sizeof six);
        EXPECT_FLOAT_EQ(six[0], static_cast<float>(mesh.places_m[i].x));
        EXPECT_FLOAT_EQ(six[1], static_cast<float>(mesh.places_m[i].z));
        EXPECT_FLOAT_EQ(six[2], static_cast<float>(-mesh.places_m[i].y));
        EXPECT_FLOAT_EQ(six[4], static_cast<float>(mesh.normals[i].z));
    }
    EXPECT_EQ(geometry.boundsMin(), QVector3D(1.0F, 0.5F, -7.0F));
    EXPECT_EQ(geometry.boundsMax(), QVector3D(4.0F, 3.0F, -2.0F));
}

TEST(SolidGeometry, NothingIsNothing)
{
    SolidGeometry geometry;
    geometry.setSolid(block());
    geometry.setSolid({});
    EXPECT_TRUE(geometry.vertexData().isEmpty());
    EXPECT_TRUE(geometry.indexData().isEmpty());
}

} // namespace
} // namespace app
