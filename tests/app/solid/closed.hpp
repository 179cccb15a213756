#pragma once

#include "app/solid/mesh.hpp"

#include <cmath>
#include <map>
#include <tuple>
#include <utility>

#include <gtest/gtest.h>

namespace app::test {

/// Volume that a closed mesh encloses, m3: a third of the flux of the place vector through its
/// triangles (divergence theorem); negative when they face inwards.
inline double enclosed_m3(const Mesh& mesh)
{
    double six_m3 = 0.0;
    for (const auto& [a, b, c] : mesh.triangles)
        six_m3 += dot(mesh.places_m[a], cross(mesh.places_m[b], mesh.places_m[c]));
    return six_m3 / 6.0;
}

inline double surface_m2(const Mesh& mesh)
{
    double m2 = 0.0;
    for (const auto& [a, b, c] : mesh.triangles)
        m2 += 0.5 *
              norm(cross(mesh.places_m[b] - mesh.places_m[a], mesh.places_m[c] - mesh.places_m[a]));
    return m2;
}

/// Each edge is there once in each direction: nothing gapes, nothing is inside out.
inline void expectClosed(const Mesh& mesh)
{
    using Key = std::tuple<long, long, long>;
    const auto key = [&](std::uint32_t i) {
        const auto p = mesh.places_m[i];
        return Key{std::lround(p.x * 1e6), std::lround(p.y * 1e6), std::lround(p.z * 1e6)};
    };
    std::map<std::pair<Key, Key>, int> edges;
    for (const auto& triangle : mesh.triangles)
        for (std::size_t i = 0; i < 3; ++i)
            ++edges[{key(triangle[i]), key(triangle[(i + 1) % 3])}];
    ASSERT_FALSE(edges.empty());
    for (const auto& [edge, count] : edges) {
        EXPECT_NE(edge.first, edge.second) << "an edge without length";
        EXPECT_EQ(count, 1);
        EXPECT_EQ(edges.count({edge.second, edge.first}), 1U) << "a gap";
    }
}

/// Normals have length one and look to the side to which the triangles face.
inline void expectOutwardNormals(const Mesh& mesh)
{
    ASSERT_EQ(mesh.normals.size(), mesh.places_m.size());
    for (const auto& triangle : mesh.triangles) {
        const auto at = [&](std::size_t i) { return mesh.places_m[triangle[i]]; };
        const model::Vec3 face = cross(at(1) - at(0), at(2) - at(0));
        for (const auto corner : triangle) {
            EXPECT_NEAR(norm(mesh.normals[corner]), 1.0, 1e-9);
            EXPECT_GT(dot(mesh.normals[corner], face), 0.0);
        }
    }
}

} // namespace app::test
