#pragma once

#include "app/report/json_text.hpp"
#include "model/garden/garden.hpp"
#include "model/species/species.hpp"

namespace app {

/// The plan of the garden as RFC 7946 writes it: a FeatureCollection in WGS 84, longitude first,
/// rings closed and turned by the right-hand rule, seven decimals (1 cm). Each tree is its stem and
/// its crown; plantings, strips and structures are areas, wires are lines. What each is, its id and
/// its figures are in `properties`, SI.
[[nodiscard]] Json gardenGeoJson(const model::Garden& garden, const model::Tables& tables);

} // namespace app
