#include "app/view/plan_things.hpp"

#include "app/view/free_id.hpp"
#include "model/geometry/angle.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace app {
namespace {

// Start values; the gardener corrects them. Assumed.
constexpr double kHedge_m = 1.6;
constexpr double kShrub_m = 1.2;
constexpr double kBuilding_m = 4.0;
constexpr double kWire_m = 6.0;
constexpr double kNeighbour_m = 8.0;
constexpr double kNeighbourBase_m = 0.5;
constexpr double kRound = 0.02; // a crown as long as broad but for this share is round

template <typename Garden, typename Visit>
decltype(auto) visit(Garden& garden, ThingRef thing, Visit visit)
{
    switch (thing.kind) {
    case ThingKind::tree:
        return visit(garden.trees.at(thing.index));
    case ThingKind::planting:
        return visit(garden.plantings.at(thing.index));
    case ThingKind::strip:
        return visit(garden.strips.at(thing.index));
    case ThingKind::structure:
        return visit(garden.structures.at(thing.index));
    case ThingKind::neighbour:
        return visit(garden.neighbours.at(thing.index));
    case ThingKind::line:
        break;
    }
    return visit(garden.lines.at(thing.index));
}

/// The first of the tables' plants that grows so; the first of all where none does.
std::string usualPlant(const model::Tables& tables, const std::string& kind)
{
    const auto found = std::ranges::find(tables.plants, kind, &model::Plant::kind);
    if (found != tables.plants.end())
        return found->latin;
    return tables.plants.empty() ? std::string() : tables.plants.front().latin;
}

model::Planting planting(PlanTool tool, const model::Tables& tables)
{
    model::Planting planting;
    switch (tool) {
    case PlanTool::hedge:
        planting.kind = model::PlantingKind::hedge;
        planting.plant = usualPlant(tables, "hedge");
        planting.height_m = kHedge_m;
        break;
    case PlanTool::shrub:
        planting.kind = model::PlantingKind::shrub;
        planting.plant = usualPlant(tables, "shrub");
        planting.height_m = kShrub_m;
        break;
    case PlanTool::lawn:
        planting.kind = model::PlantingKind::lawn;
        planting.plant = usualPlant(tables, "lawn");
        break;
    default:
        planting.kind = model::PlantingKind::bed;
        planting.plant = usualPlant(tables, "vegetable");
        break;
    }
    return planting;
}

const char* idWord(PlanTool tool)
{
    switch (tool) {
    case PlanTool::strip:
        return "path";
    case PlanTool::hedge:
        return "hedge";
    case PlanTool::bed:
        return "bed";
    case PlanTool::lawn:
        return "lawn";
    case PlanTool::shrub:
        return "shrub";
    case PlanTool::structure:
        return "structure";
    case PlanTool::neighbour:
        return "neighbour";
    case PlanTool::line:
        break;
    }
    return "wire";
}

double distanceToPath_m(const std::vector<model::Point2>& path, model::Point2 at)
{
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 1; i < path.size(); ++i) {
        const auto run = path[i] - path[i - 1];
        const double length = std::max(1e-9, norm(run));
        const auto off = at - path[i - 1];
        const double t = std::clamp((off.x * run.x + off.y * run.y) / (length * length), 0.0, 1.0);
        least = std::min(least, norm(at - (path[i - 1] + t * run)));
    }
    return least;
}

/// Unit vector along the longest edge.
model::Point2 lengthwise(const std::vector<model::Point2>& corners)
{
    model::Point2 longest{};
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const auto edge = corners[(i + 1) % corners.size()] - corners[i];
        if (norm(edge) > norm(longest) + 1e-9)
            longest = edge;
    }
    const double length = norm(longest);
    return length > 0.0 ? (1.0 / length) * longest : model::Point2{1.0, 0.0};
}

double along(model::Point2 p, model::Point2 axis)
{
    return p.x * axis.x + p.y * axis.y;
}

double extent_m(const std::vector<model::Point2>& corners, model::Point2 axis)
{
    const auto [least, most] = std::ranges::minmax(
        corners, {}, [axis](model::Point2 corner) { return along(corner, axis); });
    return along(most, axis) - along(least, axis);
}

struct CrownAxes {
    model::Point2 along;
    model::Point2 across;
};

CrownAxes axesOf(const model::Neighbour& neighbour)
{
    const auto along_ = plan(model::bearingDirection(neighbour.bearing_deg));
    return {along_, {along_.y, -along_.x}};
}

std::vector<model::Point2> boxAround(const model::Neighbour& neighbour)
{
    const auto axes = axesOf(neighbour);
    const auto a = (neighbour.spread_m / 2.0) * axes.along;
    const auto b = (neighbour.across_m.value_or(neighbour.spread_m) / 2.0) * axes.across;
    const auto at = neighbour.position_m;
    return {at - a - b, at + a - b, at + a + b, at - a + b};
}

/// The crown fills a box along the bearing it has.
void fillBox(model::Neighbour& neighbour, const std::vector<model::Point2>& corners)
{
    const auto axes = axesOf(neighbour);
    neighbour.position_m = middleOf(corners);
    neighbour.spread_m = extent_m(corners, axes.along);
    const double across_m = extent_m(corners, axes.across);
    const bool isRound = std::abs(across_m - neighbour.spread_m) <= kRound * neighbour.spread_m;
    neighbour.across_m = isRound ? std::nullopt : std::optional(across_m);
}

void reshape(model::Neighbour& neighbour, const std::vector<model::Point2>& corners)
{
    const auto before = boxAround(neighbour);
    std::vector<std::size_t> dragged;
    for (std::size_t i = 0; i < before.size(); ++i)
        if (norm(corners[i] - before[i]) > 1e-9)
            dragged.push_back(i);
    if (dragged.size() == 1)
        fillBox(neighbour, {corners[dragged[0]], before[(dragged[0] + 2) % 4]});
    else
        fillBox(neighbour, corners);
}

model::Neighbour neighbour(const model::Tables& tables, const std::vector<model::Point2>& corners)
{
    model::Neighbour fresh;
    fresh.species = tables.species.empty() ? std::string() : tables.species.front().latin;
    fresh.height_m = kNeighbour_m;
    fresh.crownBase_m = kNeighbourBase_m;
    const auto axis = lengthwise(corners);
    const double bearing = model::degrees(std::atan2(axis.x, axis.y));
    fresh.bearing_deg = std::fmod(bearing + 360.0, 180.0);
    fillBox(fresh, corners);
    return fresh;
}

} // namespace

std::vector<ThingRef> allThings(const model::Garden& garden)
{
    std::vector<ThingRef> all;
    const auto add = [&all](ThingKind kind, std::size_t count) {
        for (std::size_t i = 0; i < count; ++i)
            all.push_back({kind, i});
    };
    add(ThingKind::tree, garden.trees.size());
    add(ThingKind::planting, garden.plantings.size());
    add(ThingKind::strip, garden.strips.size());
    add(ThingKind::structure, garden.structures.size());
    add(ThingKind::line, garden.lines.size());
    add(ThingKind::neighbour, garden.neighbours.size());
    return all;
}

std::optional<ThingRef> findThing(const model::Garden& garden, const std::string& id)
{
    for (const auto thing : allThings(garden))
        if (idOf(garden, thing) == id)
            return thing;
    return std::nullopt;
}

const std::string& idOf(const model::Garden& garden, ThingRef thing)
{
    return visit(garden, thing, [](const auto& it) -> const std::string& { return it.id; });
}

std::string& nameOf(model::Garden& garden, ThingRef thing)
{
    return visit(garden, thing, [](auto& it) -> std::string& { return it.name; });
}

const std::string& nameOf(const model::Garden& garden, ThingRef thing)
{
    return visit(garden, thing, [](const auto& it) -> const std::string& { return it.name; });
}

std::vector<model::Point2> cornersOf(const model::Garden& garden, ThingRef thing)
{
    switch (thing.kind) {
    case ThingKind::tree:
        return {garden.trees.at(thing.index).position_m};
    case ThingKind::planting:
        return garden.plantings.at(thing.index).outline_m;
    case ThingKind::strip:
        return garden.strips.at(thing.index).outline_m;
    case ThingKind::structure:
        return garden.structures.at(thing.index).outline_m;
    case ThingKind::neighbour:
        return boxAround(garden.neighbours.at(thing.index));
    case ThingKind::line:
        break;
    }
    std::vector<model::Point2> path;
    for (const auto& point : garden.lines.at(thing.index).path_m)
        path.push_back(plan(point));
    return path;
}

void setCorners(model::Garden& garden, ThingRef thing, const std::vector<model::Point2>& corners)
{
    if (corners.size() != cornersOf(garden, thing).size())
        throw std::domain_error("setCorners: as many corners as there are");
    switch (thing.kind) {
    case ThingKind::tree:
        garden.trees.at(thing.index).position_m = corners.front();
        return;
    case ThingKind::planting:
        garden.plantings.at(thing.index).outline_m = corners;
        return;
    case ThingKind::strip:
        garden.strips.at(thing.index).outline_m = corners;
        return;
    case ThingKind::structure:
        garden.structures.at(thing.index).outline_m = corners;
        return;
    case ThingKind::neighbour:
        reshape(garden.neighbours.at(thing.index), corners);
        return;
    case ThingKind::line:
        break;
    }
    auto& path = garden.lines.at(thing.index).path_m;
    for (std::size_t i = 0; i < path.size(); ++i)
        path[i] = {corners[i].x, corners[i].y, path[i].z};
}

std::vector<model::Point2> moved(std::vector<model::Point2> corners, model::Point2 by)
{
    for (auto& corner : corners)
        corner = corner + by;
    return corners;
}

PlanSize sizeOf(const std::vector<model::Point2>& corners)
{
    const auto axis = lengthwise(corners);
    return {extent_m(corners, axis), extent_m(corners, {-axis.y, axis.x})};
}

std::vector<model::Point2> resized(const std::vector<model::Point2>& corners, PlanSize to)
{
    const auto axis = lengthwise(corners);
    const model::Point2 across{-axis.y, axis.x};
    const auto now = sizeOf(corners);
    const double longer = now.length_m > 0.0 ? to.length_m / now.length_m : 1.0;
    const double wider = now.width_m > 0.0 ? to.width_m / now.width_m : 1.0;
    const auto middle = middleOf(corners);
    std::vector<model::Point2> after;
    for (const auto corner : corners) {
        const auto off = corner - middle;
        after.push_back(middle + (longer * along(off, axis)) * axis +
                        (wider * along(off, across)) * across);
    }
    return after;
}

model::Point2 middleOf(const std::vector<model::Point2>& corners)
{
    model::Point2 sum{};
    for (const auto corner : corners)
        sum = sum + corner;
    return corners.empty() ? sum : (1.0 / static_cast<double>(corners.size())) * sum;
}

std::string addThing(model::Garden& garden, const model::Tables& tables, PlanTool tool,
                     const std::vector<model::Point2>& corners, const std::string& name)
{
    const auto id = freeId(garden, idWord(tool));
    if (tool == PlanTool::strip) {
        model::Strip strip;
        strip.outline_m = corners;
        garden.strips.push_back(strip);
        garden.strips.back().id = id;
        garden.strips.back().name = name;
    } else if (tool == PlanTool::structure) {
        model::Structure structure;
        structure.id = id;
        structure.name = name;
        structure.outline_m = corners;
        structure.height_m = kBuilding_m;
        garden.structures.push_back(std::move(structure));
    } else if (tool == PlanTool::line) {
        model::ElectricLine line;
        line.id = id;
        line.name = name;
        for (const auto corner : corners)
            line.path_m.push_back({corner.x, corner.y, kWire_m});
        garden.lines.push_back(std::move(line));
    } else if (tool == PlanTool::neighbour) {
        auto fresh = neighbour(tables, corners);
        fresh.id = id;
        fresh.name = name;
        garden.neighbours.push_back(std::move(fresh));
    } else {
        auto fresh = planting(tool, tables);
        fresh.id = id;
        fresh.name = name;
        fresh.outline_m = corners;
        garden.plantings.push_back(std::move(fresh));
    }
    return id;
}

void removeThing(model::Garden& garden, ThingRef thing)
{
    const std::string id = idOf(garden, thing);
    const auto erase = [&thing](auto& things) {
        things.erase(things.begin() + static_cast<std::ptrdiff_t>(thing.index));
    };
    switch (thing.kind) {
    case ThingKind::tree:
        return erase(garden.trees);
    case ThingKind::strip:
        return erase(garden.strips);
    case ThingKind::structure:
        return erase(garden.structures);
    case ThingKind::line:
        return erase(garden.lines);
    case ThingKind::neighbour:
        return erase(garden.neighbours);
    case ThingKind::planting:
        break;
    }
    erase(garden.plantings);
    for (auto& tree : garden.trees)
        std::erase_if(tree.goals, [&id](const model::Goal& goal) {
            return goal.kind == model::GoalKind::light && goal.subject == id;
        });
}

std::optional<ThingRef> thingAt(const model::Garden& garden, model::Point2 at, double reach_m)
{
    std::optional<ThingRef> best;
    double nearest = reach_m;
    for (const auto thing : allThings(garden)) {
        const auto corners = cornersOf(garden, thing);
        const double away = thing.kind == ThingKind::tree   ? norm(corners.front() - at)
                            : thing.kind == ThingKind::line ? distanceToPath_m(corners, at)
                                                            : reach_m + 1.0;
        if (away <= nearest) {
            nearest = away;
            best = thing;
        }
    }
    if (best)
        return best;
    double smallest = std::numeric_limits<double>::infinity();
    for (const auto thing : allThings(garden)) {
        if (thing.kind == ThingKind::tree || thing.kind == ThingKind::line)
            continue;
        const auto corners = cornersOf(garden, thing);
        if (model::covers(corners, at) && model::area_m2(corners) < smallest) {
            smallest = model::area_m2(corners);
            best = thing;
        }
    }
    return best;
}

} // namespace app
