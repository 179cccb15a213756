#pragma once

#include "model/garden/ground.hpp"
#include "model/garden/neighbour.hpp"
#include "model/garden/place.hpp"
#include "model/garden/tree.hpp"
#include "model/geometry/polygon.hpp"

#include <optional>
#include <string>
#include <vector>

namespace model {

enum class PlantingKind { hedge, bed, lawn, shrub };

/// Plants that want light.
struct Planting {
    std::string id;
    std::string name;
    PlantingKind kind{PlantingKind::bed};
    std::string plant; ///< Latin name or entry of the plants table
    Polygon outline_m; ///< garden frame
    double height_m{}; ///< where its leaves take the light: a hedge's top, 0 for a bed
    Extras extras;
    friend bool operator==(const Planting&, const Planting&) = default;
};

enum class StripUse {
    path,
    mower,
    rideOnMower,
    drive,
    seat,
    play,
    road,
    sight,    ///< a triangle at a corner or a drive that drivers see through
    fireZone, ///< ground in fire country, where a grass fire must not climb
    other,
};

/// A strip of ground that people use and that needs headroom.
struct Strip {
    std::string id;
    std::string name;
    StripUse use{StripUse::path};
    Polygon outline_m;                ///< garden frame
    std::optional<double> headroom_m; ///< wanted; blank: the usual one for this use
    Extras extras;
    friend bool operator==(const Strip&, const Strip&) = default;
};

/// An overhead wire of any kind: every wire counts as live.
struct ElectricLine {
    std::string id;
    std::string name;
    std::vector<Vec3> path_m;         ///< at least two points, z above the garden's ground
    std::optional<double> voltage_kV; ///< between conductors; blank = not known
    Extras extras;
    friend bool operator==(const ElectricLine&, const ElectricLine&) = default;
};

enum class StructureKind { building, fence, glasshouse, pond, chimney, other };

/// Something that a falling piece could hit, and that throws a shadow if it is tall.
struct Structure {
    std::string id;
    std::string name;
    StructureKind kind{StructureKind::building};
    Polygon outline_m; ///< garden frame
    double height_m{}; ///< >= 0
    Extras extras;
    friend bool operator==(const Structure&, const Structure&) = default;
};

/// One gardener's garden. Frame: x east, y north, z up, metres, origin anywhere, the ground
/// there at z = 0. Bearings in degrees clockwise from north.
struct Garden {
    std::string name;
    Place place;
    Exposure exposure{Exposure::scattered};
    double designGust_m_s{};    ///< 3-second gust at 10 m over open ground, as forecasts give it
    std::optional<Slope> slope; ///< of the whole ground; blank: level
    std::vector<Tree> trees;
    std::vector<Neighbour> neighbours;
    std::vector<Planting> plantings;
    std::vector<Strip> strips;
    std::vector<ElectricLine> lines;
    std::vector<Structure> structures;
    Extras extras;
    friend bool operator==(const Garden&, const Garden&) = default;
};

} // namespace model
