#pragma once

#include "model/garden/garden.hpp"

#include <string>
#include <utility>
#include <vector>

/// A limb of these stations and nothing else.
inline model::Limb limbOf(std::string id, std::vector<model::Station> stations)
{
    model::Limb limb;
    limb.id = std::move(id);
    limb.stations = std::move(stations);
    return limb;
}

/// An oblong on the plan, m east and north.
inline model::Polygon box(double west, double south, double east, double north)
{
    return {{west, south}, {east, south}, {east, north}, {west, north}};
}
