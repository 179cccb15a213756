#pragma once

#include "model/garden/garden.hpp"
#include "model/species/species.hpp"

#include <optional>
#include <string>
#include <vector>

namespace app {

enum class ThingKind { tree, planting, strip, structure, line, neighbour };

/// One thing on the plan, by its place in the garden's lists. Holds only until they change.
struct ThingRef {
    ThingKind kind{};
    std::size_t index{};
    friend bool operator==(const ThingRef&, const ThingRef&) = default;
};

/// What can be drawn, in the order of the plan's tools.
enum class PlanTool { strip, hedge, bed, lawn, shrub, structure, line, neighbour };
inline constexpr int kPlanTools = 8;

/// Everything on the plan, in the order that a keyboard walks it.
[[nodiscard]] std::vector<ThingRef> allThings(const model::Garden& garden);
[[nodiscard]] std::optional<ThingRef> findThing(const model::Garden& garden, const std::string& id);
[[nodiscard]] const std::string& idOf(const model::Garden& garden, ThingRef thing);
[[nodiscard]] std::string& nameOf(model::Garden& garden, ThingRef thing);
[[nodiscard]] const std::string& nameOf(const model::Garden& garden, ThingRef thing);

/// Corners of its outline, points of its wire, or where the tree stands. A neighbour's are those of
/// the box around its crown, the long way first.
[[nodiscard]] std::vector<model::Point2> cornersOf(const model::Garden& garden, ThingRef thing);
/// As many as cornersOf() gives; a wire's heights stay. A neighbour's crown fills the box that the
/// corners say, along the bearing it has; of one corner moved, its opposite stays.
void setCorners(model::Garden& garden, ThingRef thing, const std::vector<model::Point2>& corners);
[[nodiscard]] std::vector<model::Point2> moved(std::vector<model::Point2> corners,
                                               model::Point2 by);

/// Length and width on plan: along the longest edge, and across it.
struct PlanSize {
    double length_m{};
    double width_m{};
};
[[nodiscard]] PlanSize sizeOf(const std::vector<model::Point2>& corners);
/// Stretched about their middle to another size.
[[nodiscard]] std::vector<model::Point2> resized(const std::vector<model::Point2>& corners,
                                                 PlanSize to);
[[nodiscard]] model::Point2 middleOf(const std::vector<model::Point2>& corners);

/// Adds what a tool draws along these corners, with an id, and a usual plant and height.
/// \returns its id
std::string addThing(model::Garden& garden, const model::Tables& tables, PlanTool tool,
                     const std::vector<model::Point2>& corners, const std::string& name);

/// Takes it away, and what the trees were asked for its sake.
void removeThing(model::Garden& garden, ThingRef thing);

/// The thing drawn at a place: trees by their stem, wires by their path, else the smallest outline.
/// \param reach_m  how near a stem or a wire must be
[[nodiscard]] std::optional<ThingRef> thingAt(const model::Garden& garden, model::Point2 at,
                                              double reach_m);

} // namespace app
