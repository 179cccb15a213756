#include "app/paper/garden_geojson.hpp"

#include "app/report/suggestion_json.hpp"
#include "model/crown/plan_outlines.hpp"
#include "model/document/words.hpp"
#include "model/geometry/earth.hpp"
#include "model/geometry/polygon.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

double sevenDecimals(double angle_deg)
{
    const double rounded = std::round(angle_deg * 1e7) / 1e7;
    return rounded == 0.0 ? 0.0 : rounded; // no "-0.0"
}

double signedArea(const model::Polygon& ring)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const auto& a = ring[i];
        const auto& b = ring[(i + 1) % ring.size()];
        sum += a.x * b.y - b.x * a.y;
    }
    return sum / 2.0;
}

Json optional(const std::optional<double>& value)
{
    return value ? Json(*value) : Json(nullptr);
}

class MapWriter {
public:
    explicit MapWriter(const model::Garden& garden)
        : origin_{garden.place.latitude_deg, garden.place.longitude_deg}
    {
    }

    void addPoint(const std::string& id, model::Point2 place_m, Json properties)
    {
        add(id, {{"type", "Point"}, {"coordinates", position(place_m)}}, std::move(properties));
    }
    void addArea(const std::string& id, const model::Polygon& outline_m, Json properties)
    {
        add(id, {{"type", "Polygon"}, {"coordinates", Json::array({ring(outline_m, true)})}},
            std::move(properties));
    }
    void addRegion(const std::string& id, const model::Region& region_m, Json properties)
    {
        Json polygons = Json::array();
        for (const auto& part : region_m) {
            Json rings = Json::array();
            for (std::size_t i = 0; i < part.rings.size(); ++i)
                rings.push_back(ring(part.rings[i], i == 0));
            polygons.push_back(std::move(rings));
        }
        if (!polygons.empty())
            add(id, {{"type", "MultiPolygon"}, {"coordinates", std::move(polygons)}},
                std::move(properties));
    }
    void addPath(const std::string& id, const std::vector<model::Vec3>& path_m, Json properties)
    {
        Json line = Json::array();
        for (const auto& point : path_m)
            line.push_back(position(plan(point)));
        add(id, {{"type", "LineString"}, {"coordinates", std::move(line)}}, std::move(properties));
    }
    Json finished() { return {{"type", "FeatureCollection"}, {"features", std::move(features_)}}; }

private:
    [[nodiscard]] Json position(model::Point2 place_m) const
    {
        const auto place = model::onEarth(origin_, place_m);
        return Json::array({sevenDecimals(place.longitude_deg), sevenDecimals(place.latitude_deg)});
    }
    /// Closed; an outer ring runs against the clock, a hole with it (RFC 7946, 3.1.6).
    [[nodiscard]] Json ring(model::Polygon corners, bool outer) const
    {
        if ((signedArea(corners) > 0.0) != outer)
            std::ranges::reverse(corners);
        Json ring = Json::array();
        for (const auto& corner : corners)
            ring.push_back(position(corner));
        ring.push_back(ring.front());
        return ring;
    }
    void add(const std::string& id, Json geometry, Json properties)
    {
        features_.push_back({{"type", "Feature"},
                             {"id", id},
                             {"geometry", std::move(geometry)},
                             {"properties", std::move(properties)}});
    }

    model::EarthPlace origin_;
    Json features_ = Json::array();
};

void addTree(MapWriter& map, const model::Tree& tree, const model::Tables& tables)
{
    const auto* species = findSpecies(tables, tree.species);
    map.addPoint(tree.id, tree.position_m,
                 {{"kind", "tree"},
                  {"name", tree.name},
                  {"species", tree.species},
                  {"common_name", species ? Json(species->common) : Json(nullptr)},
                  {"height_m", number(height_m(tree))},
                  {"stem_diameter_m", number(stemDiameter_m(tree))}});
    std::vector<model::Polygon> outlines = model::planOutlines(model::leafyBodies(tree));
    for (auto& outline : outlines)
        for (auto& corner : outline)
            corner = corner + tree.position_m;
    if (!outlines.empty())
        map.addRegion(tree.id + "/crown", model::unite(outlines),
                      {{"kind", "crown"}, {"tree", tree.id}});
}

Json named(const char* kind, const std::string& name, std::string_view type)
{
    return {{"kind", kind}, {"name", name}, {"type", type}};
}

void addGround(MapWriter& map, const model::Garden& garden)
{
    for (const auto& each : garden.plantings) {
        auto properties = named("planting", each.name, word(each.kind));
        properties["plant"] = each.plant;
        properties["height_m"] = each.height_m;
        map.addArea(each.id, each.outline_m, std::move(properties));
    }
    for (const auto& each : garden.strips) {
        auto properties = named("strip", each.name, word(each.use));
        properties["headroom_m"] = optional(each.headroom_m);
        map.addArea(each.id, each.outline_m, std::move(properties));
    }
    for (const auto& each : garden.structures) {
        auto properties = named("structure", each.name, word(each.kind));
        properties["height_m"] = each.height_m;
        map.addArea(each.id, each.outline_m, std::move(properties));
    }
    for (const auto& each : garden.lines) {
        Json heights = Json::array();
        for (const auto& point : each.path_m)
            heights.push_back(point.z);
        map.addPath(each.id, each.path_m,
                    {{"kind", "wire"},
                     {"name", each.name},
                     {"voltage_kV", optional(each.voltage_kV)},
                     {"heights_m", std::move(heights)}});
    }
}

} // namespace

Json gardenGeoJson(const model::Garden& garden, const model::Tables& tables)
{
    MapWriter map(garden);
    for (const auto& tree : garden.trees)
        addTree(map, tree, tables);
    for (const auto& each : garden.neighbours)
        map.addPoint(each.id, each.position_m,
                     {{"kind", "neighbour"},
                      {"name", each.name},
                      {"species", each.species},
                      {"height_m", each.height_m},
                      {"spread_m", each.spread_m}});
    addGround(map, garden);
    return map.finished();
}

} // namespace app
