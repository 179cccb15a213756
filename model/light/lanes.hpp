#pragma once

#include <array>
#include <cstddef>

namespace model::light {

inline constexpr std::size_t kLanes = 8;

/// One number for each of eight rays.
using Lanes = std::array<float, kLanes>;

inline Lanes allLanes(float value)
{
    Lanes lanes;
    lanes.fill(value);
    return lanes;
}

} // namespace model::light
