#include "model/document/check.hpp"

#include "model/garden/limb.hpp"

#include <algorithm>

namespace model {
namespace {

constexpr double kApart_m = 0.001; // two stations nearer than this are one
constexpr double kSlack_m = 0.01;  // measures along a limb are read off to a centimetre

bool checkStation(Check& check, const Path& path, const Station& station)
{
    constexpr double kReach = limits::kTreeReach_m;
    const Path place = path / "position_m";
    const Vec3 at = station.position_m;
    bool good = check.within(place / 0, at.x, -kReach, kReach, "metres east of the tree's base");
    good =
        check.within(place / 1, at.y, -kReach, kReach, "metres north of the tree's base") && good;
    good = check.drawnHeight(place / 2, at.z) && good;
    return check.positive(path / "diameter_m", station.diameter_m, limits::kDiameter_m,
                          "a diameter in metres") &&
           good;
}

bool checkStations(Check& check, const Path& path, const std::vector<Station>& stations)
{
    if (stations.size() < 2)
        return check.fault(path, counted(stations.size(), "station"),
                           "at least two: the union and the tip");
    bool good = check.atMost(path, stations.size(), limits::kStations, "stations");
    for (std::size_t i = 0; i < stations.size(); ++i)
        good = checkStation(check, path / i, stations[i]) && good;
    for (std::size_t i = 1; good && i < stations.size(); ++i) {
        const Path station = path / i;
        if (norm(stations[i].position_m - stations[i - 1].position_m) < kApart_m)
            good = check.fault(station / "position_m", "the same place as the station before",
                               "a place farther along the limb");
    }
    return good;
}

/// The wall of a cavity off the middle: thickest across from where it is thinnest.
void checkThickestWall(Check& check, const Path& path, const Defect& defect, const Limb& limb)
{
    if (!defect.thickestWall_m)
        return;
    if (defect.kind != DefectKind::cavity || !defect.residualWall_m) {
        check.fault(path, "a thickest wall", "it only for a cavity that has a residual_wall_m too");
        return;
    }
    const double across = axisPoint(limb, defect.at_m).diameter_m;
    check.within(path, *defect.thickestWall_m, *defect.residualWall_m,
                 std::max(*defect.residualWall_m, across - *defect.residualWall_m),
                 "metres of sound wood");
}

void checkDefect(Check& check, const Path& path, const Defect& defect, const Limb& limb,
                 double length)
{
    check.within(path / "at_m", defect.at_m, 0.0, length, "metres along the limb");
    if (defect.residualWall_m)
        check.within(path / "residual_wall_m", *defect.residualWall_m, 0.0,
                     limits::kDiameter_m / 2.0, "metres of sound wood");
    checkThickestWall(check, path / "thickest_wall_m", defect, limb);
    if (defect.opening_deg)
        check.within(path / "opening_deg", *defect.opening_deg, 0.0, 360.0,
                     "degrees of the way round");
    check.note(path / "note", defect.note);
}

void checkFoliage(Check& check, const Path& path, const Foliage& foliage, double length)
{
    // Leaf is shared out by length along the axis, so a leafy part has to have some.
    check.within(path / "from_m", foliage.from_m, 0.0, length - kSlack_m,
                 "metres along the limb, before its tip,");
    check.positive(path / "radius_m", foliage.radius_m, limits::kLeafyRadius_m,
                   "a radius in metres");
    check.within(path / "hanging_m", foliage.hanging_m, 0.0, limits::kHanging_m,
                 "a length in metres");
    if (foliage.hem_m)
        check.within(path / "hem_m", *foliage.hem_m, 0.0, limits::kTreeHeight_m,
                     "metres above the ground");
    check.within(path / "thinned", foliage.thinned, 0.0, 0.95, "a share");
}

/// What is marked along a limb whose axis is good.
void checkAlong(Check& check, const Path& path, const Limb& limb)
{
    const double length = length_m(limb);
    const Path defects = path / "defects";
    for (std::size_t i = 0; i < limb.defects.size(); ++i)
        checkDefect(check, defects / i, limb.defects[i], limb, length + kSlack_m);
    if (limb.foliage)
        checkFoliage(check, path / "foliage", *limb.foliage, length);
    const Path props = path / "props";
    for (std::size_t i = 0; i < limb.props.size(); ++i) {
        const Path prop = props / i;
        check.within(prop / "at_m", limb.props[i].at_m, 0.0, length + kSlack_m,
                     "metres along the limb");
    }
}

} // namespace

bool checkLimb(Check& check, const Path& path, const Limb& limb)
{
    check.name(path / "name", limb.name, false);
    const bool good = checkStations(check, path / "stations", limb.stations);
    check.atMost(path / "defects", limb.defects.size(), limits::kMarks, "defects");
    check.atMost(path / "props", limb.props.size(), limits::kMarks, "props");
    if (good)
        checkAlong(check, path, limb);
    check.within(path / "fruit_kg", limb.fruit_kg, 0.0, limits::kFruit_kg, "kilograms of fruit");
    return good;
}

} // namespace model
