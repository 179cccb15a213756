#include "app/graphics/solid_geometry.hpp"

#include <QVector3D>

#include <algorithm>
#include <array>
#include <cstring>
#include <limits>

namespace app {
namespace {

constexpr int kFloatsPerPlace = 6; // a place and its normal
constexpr int kNormalAt = 3 * sizeof(float);
constexpr int kStride = kFloatsPerPlace * sizeof(float);

std::array<float, 3> inScene(model::Vec3 v)
{
    return {static_cast<float>(v.x), static_cast<float>(v.z), static_cast<float>(-v.y)};
}

} // namespace

void SolidGeometry::setSolid(const Solid& solid)
{
    if (solid == solid_)
        return;
    solid_ = solid;
    clear();
    if (solid_.mesh && !solid_.mesh->places_m.empty()) {
        const auto& mesh = *solid_.mesh;
        std::vector<float> places;
        places.reserve(mesh.places_m.size() * kFloatsPerPlace);
        constexpr float kFar = std::numeric_limits<float>::max();
        QVector3D low(kFar, kFar, kFar);
        QVector3D high(-kFar, -kFar, -kFar);
        for (std::size_t i = 0; i < mesh.places_m.size(); ++i) {
            const auto place = inScene(mesh.places_m[i]);
            const auto normal = inScene(mesh.normals[i]);
            places.insert(places.end(), place.begin(), place.end());
            places.insert(places.end(), normal.begin(), normal.end());
            for (int axis = 0; axis < 3; ++axis) {
                low[axis] = std::min(low[axis], place[static_cast<std::size_t>(axis)]);
                high[axis] = std::max(high[axis], place[static_cast<std::size_t>(axis)]);
            }
        }
        setVertexData(QByteArray(reinterpret_cast<const char*>(places.data()),
                                 static_cast<qsizetype>(places.size() * sizeof(float))));
        setIndexData(
            QByteArray(reinterpret_cast<const char*>(mesh.triangles.data()),
                       static_cast<qsizetype>(mesh.triangles.size() * sizeof(Mesh::Triangle))));
        setStride(kStride);
        setBounds(low, high);
        setPrimitiveType(PrimitiveType::Triangles);
        addAttribute(Attribute::PositionSemantic, 0, Attribute::F32Type);
        addAttribute(Attribute::NormalSemantic, kNormalAt, Attribute::F32Type);
        addAttribute(Attribute::IndexSemantic, 0, Attribute::U32Type);
    }
    update();
    emit solidChanged();
}

} // namespace app
