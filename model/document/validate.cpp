#include "model/document/validate.hpp"

#include "model/document/check.hpp"

#include <algorithm>
#include <numeric>

namespace model {
namespace {

using Ids = std::set<std::string>;

void checkPlace(Check& check, const Path& path, const Place& place)
{
    check.within(path / "latitude_deg", place.latitude_deg, -90.0, 90.0, "a latitude in degrees");
    check.within(path / "longitude_deg", place.longitude_deg, -180.0, 180.0,
                 "a longitude in degrees");
    check.within(path / "altitude_m", place.altitude_m, -430.0, 6000.0, "metres above the sea");
    check.name(path / "time_zone", place.timeZone, false);
    const Path shares = path / "sunshine_share";
    if (!place.sunshineShare.empty() && place.sunshineShare.size() != 12)
        check.fault(shares, counted(place.sunshineShare.size(), "number"),
                    "twelve numbers, one for each month from January");
    for (std::size_t i = 0; i < std::min(place.sunshineShare.size(), std::size_t{12}); ++i)
        check.within(shares / i, place.sunshineShare[i], 0.0, 1.0,
                     "a share of the time that the sun could shine");
    const Path months = path / "storm_months";
    check.atMost(months, place.stormMonths.size(), 12, "months");
    for (std::size_t i = 0; i < place.stormMonths.size(); ++i)
        check.within(months / i, place.stormMonths[i], 1.0, 12.0, "a month");
}

void checkSlope(Check& check, const Path& path, const Slope& slope)
{
    check.within(path / "gradient", slope.gradient, 0.0, 1.0, "metres of fall in each metre");
    check.within(path / "falls_to_deg", slope.fallsTo_deg, 0.0, 360.0,
                 "a compass bearing in degrees");
}

template <typename Thing>
void checkIdAndName(Check& check, const Path& path, const Thing& thing, Ids& ids)
{
    check.id(path / "id", thing.id, ids);
    check.name(path / "name", thing.name, false);
}

void checkNeighbour(Check& check, const Path& path, const Neighbour& neighbour, Ids& ids)
{
    checkIdAndName(check, path, neighbour, ids);
    check.name(path / "species", neighbour.species, true);
    check.place(path / "position_m", neighbour.position_m);
    const bool tall = check.positive(path / "height_m", neighbour.height_m, limits::kTreeHeight_m,
                                     "a height in metres");
    check.within(path / "crown_base_m", neighbour.crownBase_m, 0.0, limits::kTreeHeight_m,
                 "metres above the ground");
    if (tall && !(neighbour.height_m - neighbour.crownBase_m >= limits::kCrownDepth_m))
        check.fault(path / "crown_base_m", plain(neighbour.crownBase_m),
                    "a crown of at least 0.1 m below its top, which is " +
                        plain(neighbour.height_m) + " m up");
    constexpr double kSpread_m = 2.0 * limits::kTreeReach_m;
    check.positive(path / "spread_m", neighbour.spread_m, kSpread_m, "a width in metres");
    if (neighbour.across_m)
        check.positive(path / "across_m", *neighbour.across_m, kSpread_m, "a width in metres");
    check.within(path / "bearing_deg", neighbour.bearing_deg, 0.0, 360.0,
                 "a compass bearing in degrees");
    if (neighbour.stemDiameter_m)
        check.positive(path / "stem_diameter_m", *neighbour.stemDiameter_m, limits::kDiameter_m,
                       "a diameter in metres");
    check.leafDates(path, neighbour.leafDates);
}

void checkPlanting(Check& check, const Path& path, const Planting& planting, Ids& ids)
{
    checkIdAndName(check, path, planting, ids);
    check.name(path / "plant", planting.plant, true);
    if (check.outline(path / "outline_m", planting.outline_m))
        check.positive(path / "outline_m", area_m2(planting.outline_m), limits::kPlantingArea_m2,
                       "square metres of planting");
    check.within(path / "height_m", planting.height_m, 0.0, 30.0, "a height in metres");
}

void checkStrip(Check& check, const Path& path, const Strip& strip, Ids& ids)
{
    checkIdAndName(check, path, strip, ids);
    check.outline(path / "outline_m", strip.outline_m);
    if (strip.headroom_m)
        check.positive(path / "headroom_m", *strip.headroom_m, 20.0, "a height in metres");
}

void checkLine(Check& check, const Path& path, const ElectricLine& line, Ids& ids)
{
    checkIdAndName(check, path, line, ids);
    const Path points = path / "path_m";
    if (line.path_m.size() < 2)
        check.fault(points, counted(line.path_m.size(), "point"),
                    "at least two points along the wire");
    check.atMost(points, line.path_m.size(), limits::kCorners, "points");
    for (std::size_t i = 0; i < line.path_m.size(); ++i) {
        const Path point = points / i;
        check.place(point, plan(line.path_m[i]));
        check.within(point / 2, line.path_m[i].z, 0.0, 200.0, "metres above the ground");
    }
    if (line.voltage_kV)
        check.positive(path / "voltage_kV", *line.voltage_kV, 1500.0, "kilovolts");
}

void checkStructure(Check& check, const Path& path, const Structure& structure, Ids& ids)
{
    checkIdAndName(check, path, structure, ids);
    check.outline(path / "outline_m", structure.outline_m);
    check.within(path / "height_m", structure.height_m, 0.0, 200.0, "a height in metres");
}

/// Every item of a list, and that there are not too many.
template <typename Item, typename CheckItem>
void checkAll(Check& check, const Path& path, const std::vector<Item>& items, std::size_t limit,
              const char* what, Ids& ids, CheckItem checkItem)
{
    check.atMost(path, items.size(), limit, what);
    for (std::size_t i = 0; i < items.size(); ++i)
        checkItem(check, path / i, items[i], ids);
}

/// How many letters must be changed, added or left out to make `b` of `a` (Levenshtein).
std::size_t lettersApart(std::string_view a, std::string_view b)
{
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 0; i < a.size(); ++i) {
        std::size_t diagonal = row[0]++;
        for (std::size_t j = 0; j < b.size(); ++j) {
            const std::size_t changed = diagonal + (a[i] == b[j] ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = std::min({changed, row[j] + 1, diagonal + 1});
        }
    }
    return row.back();
}

/// ", such as \"...\"" with the name nearest to a misspelt one, when one is near.
template <typename Entry>
std::string nearest(const std::vector<Entry>& entries, const std::string& name)
{
    constexpr std::size_t kNear = 4;
    std::size_t least = kNear;
    std::string found;
    for (const auto& entry : entries) {
        const auto apart = lettersApart(entry.latin, name);
        if (apart < least) {
            least = apart;
            found = entry.latin;
        }
    }
    return found.empty() ? "" : "; did you mean " + inQuotes(found) + "?";
}

} // namespace

std::vector<Fault> validate(const Garden& garden)
{
    std::vector<Fault> faults;
    Check check(faults);
    const Path top{};
    check.name(top / "name", garden.name, false);
    checkPlace(check, top / "place", garden.place);
    check.within(top / "design_gust_m_s", garden.designGust_m_s, 0.0, limits::kGust_m_s,
                 "a gust in metres per second");
    Ids ids;
    if (garden.slope)
        checkSlope(check, top / "slope", *garden.slope);
    checkAll(check, top / "trees", garden.trees, limits::kTrees, "trees", ids, checkTree);
    checkAll(check, top / "neighbours", garden.neighbours, limits::kThings, "neighbours", ids,
             checkNeighbour);
    checkAll(check, top / "plantings", garden.plantings, limits::kThings, "plantings", ids,
             checkPlanting);
    checkAll(check, top / "strips", garden.strips, limits::kThings, "strips", ids, checkStrip);
    checkAll(check, top / "electric_lines", garden.lines, limits::kThings, "electric lines", ids,
             checkLine);
    checkAll(check, top / "structures", garden.structures, limits::kThings, "structures", ids,
             checkStructure);
    return faults;
}

std::vector<Fault> unknownNames(const Garden& garden, const Tables& tables)
{
    std::vector<Fault> faults;
    Check check(faults);
    const Path top{};
    const auto checkSpecies = [&](const Path& path, const std::string& name) {
        if (findSpecies(tables, name) == nullptr)
            check.fault(path / "species", inQuotes(name),
                        "the Latin name of a species in the tables" +
                            nearest(tables.species, name));
    };
    const Path trees = top / "trees";
    for (std::size_t i = 0; i < garden.trees.size(); ++i)
        checkSpecies(trees / i, garden.trees[i].species);
    const Path neighbours = top / "neighbours";
    for (std::size_t i = 0; i < garden.neighbours.size(); ++i)
        checkSpecies(neighbours / i, garden.neighbours[i].species);
    const Path plantings = top / "plantings";
    for (std::size_t i = 0; i < garden.plantings.size(); ++i) {
        const Path planting = plantings / i;
        const auto& name = garden.plantings[i].plant;
        if (findPlant(tables, name) == nullptr)
            check.fault(planting / "plant", inQuotes(name),
                        "the name of a plant in the tables" + nearest(tables.plants, name));
    }
    return faults;
}

} // namespace model
