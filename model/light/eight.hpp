#pragma once

#include "model/light/lanes.hpp"

#include <cmath>
#include <cstdint>
#include <cstring>

namespace model::light {

/// Arithmetic on eight rays at once, by the vector types that GCC and Clang share. They work on
/// every processor and are fast where it has vectors of that width; for x86-64, GCC makes a second
/// version of each function marked UNDERBOUGH_LANES and the program picks one when it starts.
/// For .cpp files only, which are compiled as CMakeLists.txt says for them.
namespace eight {

#if defined(__GNUC__) && !defined(__clang__) && defined(__x86_64__)
#define UNDERBOUGH_LANES __attribute__((target_clones("avx2", "default")))
#else
#define UNDERBOUGH_LANES
#endif
#define UNDERBOUGH_INLINE inline __attribute__((always_inline))

using Real __attribute__((vector_size(32))) = float;
using Truth __attribute__((vector_size(32))) = std::int32_t; ///< a lane is 0 or -1

UNDERBOUGH_INLINE Real all(float value)
{
    return Real{} + value;
}
UNDERBOUGH_INLINE Real load(const float* from)
{
    Real value;
    std::memcpy(&value, from, sizeof value);
    return value;
}
UNDERBOUGH_INLINE Real load(const Lanes& from)
{
    return load(from.data());
}
UNDERBOUGH_INLINE void store(Real value, Lanes& to)
{
    std::memcpy(to.data(), &value, sizeof value);
}
UNDERBOUGH_INLINE Real lesser(Real a, Real b)
{
    return a < b ? a : b;
}
UNDERBOUGH_INLINE Real greater(Real a, Real b)
{
    return a > b ? a : b;
}
/// Square root; 0 of anything below 0.
UNDERBOUGH_INLINE Real root(Real a)
{
    const Real clear = greater(a, Real{});
    Real result;
    for (std::size_t i = 0; i < kLanes; ++i)
        result[i] = std::sqrt(clear[i]);
    return result;
}
UNDERBOUGH_INLINE bool any(Truth truth)
{
    std::array<std::uint64_t, kLanes / 2> words;
    std::memcpy(words.data(), &truth, sizeof truth);
    return (words[0] | words[1] | words[2] | words[3]) != 0;
}

} // namespace eight
} // namespace model::light
