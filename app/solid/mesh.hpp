#pragma once

#include "model/geometry/vec3.hpp"

#include <array>
#include <cstdint>
#include <vector>

namespace app {

/// A surface made of triangles. Where an edge is sharp, a place is there once for each of the
/// faces that meet in it.
struct Mesh {
    using Triangle = std::array<std::uint32_t, 3>;

    std::vector<model::Vec3> places_m;
    std::vector<model::Vec3> normals; ///< one for each place: length one, outwards
    std::vector<Triangle> triangles;  ///< counter-clockwise when seen from outside

    /// \returns the number of the new place
    std::uint32_t add(model::Vec3 place_m, model::Vec3 normal);
    /// Adds a flat piece with corners of its own, counter-clockwise seen from outside.
    void addFace(model::Vec3 a, model::Vec3 b, model::Vec3 c);

    friend bool operator==(const Mesh&, const Mesh&) = default;
};

/// Adds all of `part`, moved by `by_m`.
void append(Mesh& mesh, const Mesh& part, model::Vec3 by_m = {});

} // namespace app
