#pragma once

#include "model/garden/place.hpp"
#include "model/garden/tree.hpp"

#include <chrono>

namespace model::light {

/// When deciduous trees of a place come into leaf and lose it: days of the year as the northern
/// hemisphere counts them, fractions allowed.
struct LeafSeason {
    double budBurst{};
    double halfFall{}; ///< half of the leaves are down
};

/// Hopkins 1919: spring comes 4 days later for each degree towards the pole, each 5 degrees of
/// longitude east (North America only) and each 400 ft up; autumn earlier by the same (L14).
[[nodiscard]] LeafSeason leafSeason(const Place& place);
/// The same with what the gardener has seen of the tree in its place. Fall may come before burst:
/// then the tree is in leaf over the turn of the year.
[[nodiscard]] LeafSeason leafSeason(const Place& place, const LeafDates& seen);

/// Day 1 .. 366 of the year as the northern hemisphere counts it: half a year later south of the
/// equator.
[[nodiscard]] double dayOfNorthernYear(std::chrono::year_month_day date, const Place& place);

} // namespace model::light
