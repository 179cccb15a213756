#include "app/solid/mesh.hpp"

namespace app {

std::uint32_t Mesh::add(model::Vec3 place_m, model::Vec3 normal)
{
    places_m.push_back(place_m);
    normals.push_back(normal);
    return static_cast<std::uint32_t>(places_m.size() - 1);
}

void Mesh::addFace(model::Vec3 a, model::Vec3 b, model::Vec3 c)
{
    const model::Vec3 across = cross(b - a, c - a);
    const double twice_m2 = norm(across);
    if (!(twice_m2 > 0.0))
        return;
    const model::Vec3 normal = (1.0 / twice_m2) * across;
    const auto first = add(a, normal);
    add(b, normal);
    add(c, normal);
    triangles.push_back({first, first + 1, first + 2});
}

void append(Mesh& mesh, const Mesh& part, model::Vec3 by_m)
{
    const auto first = static_cast<std::uint32_t>(mesh.places_m.size());
    for (const auto place : part.places_m)
        mesh.places_m.push_back(place + by_m);
    mesh.normals.insert(mesh.normals.end(), part.normals.begin(), part.normals.end());
    for (const auto& [a, b, c] : part.triangles)
        mesh.triangles.push_back({first + a, first + b, first + c});
}

} // namespace app
