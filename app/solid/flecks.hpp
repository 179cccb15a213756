#pragma once

#include "app/solid/mesh.hpp"
#include "model/geometry/curtain.hpp"
#include "model/geometry/ellipsoid.hpp"

#include <cstdint>

namespace app {

/// Leaf strewn through a body.
struct FleckInput {
    double leaf_m2{};     ///< one-sided area of all of them, >= 0
    double fleck_m2{};    ///< of one of them, > 0
    std::uint32_t seed{}; ///< the same gives the same
};

/// Flat four-cornered flecks, each two faces back to back, strewn evenly through the volume and
/// turned every way alike: light meets them as Beer and Lambert's law has it for leaves of no
/// preferred slope (Ross, J. (1981): The radiation regime and architecture of plant stands. The
/// Hague: Junk; G = 1/2; recalled). As many as make up `leaf_m2`, to the nearest.
[[nodiscard]] Mesh flecks(const model::Curtain& body, const FleckInput& input);
[[nodiscard]] Mesh flecks(const model::Ellipsoid& body, const FleckInput& input);

} // namespace app
