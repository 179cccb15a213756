#include "app/solid/prism_mesh.hpp"

#include "app/solid/triangulated.hpp"

namespace app {

Mesh prismMesh(const model::Polygon& outline, const HeightAt& bottom_m, const HeightAt& top_m)
{
    const auto corners = counterClockwise(outline);
    std::vector<model::Vec3> low;
    std::vector<model::Vec3> high;
    for (const auto corner : corners) {
        low.push_back({corner.x, corner.y, bottom_m(corner)});
        high.push_back({corner.x, corner.y, top_m(corner)});
    }
    Mesh mesh;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const std::size_t next = (i + 1) % corners.size();
        mesh.addFace(low[i], low[next], high[next]);
        mesh.addFace(low[i], high[next], high[i]);
    }
    for (const auto& [a, b, c] : triangulated(corners)) {
        mesh.addFace(high[a], high[b], high[c]);
        mesh.addFace(low[a], low[c], low[b]);
    }
    return mesh;
}

} // namespace app
