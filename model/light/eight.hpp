#pragma once

#include "model/light/lanes.hpp"

#include <cstdint>
#include <cstring>

/// Arithmetic on eight rays at once, by the vector types that GCC and Clang share. They work on
/// every processor and are fast where it has vectors of that width. Only for lane_work.inl.hpp,
/// which is compiled once for each kind of processor: all here is inlined, so that they don't mix.
namespace model::light::eight {

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
    Real value;
    std::memcpy(&value, &from, sizeof value);
    return value;
}
UNDERBOUGH_INLINE void store(Real value, Lanes& to)
{
    std::memcpy(&to, &value, sizeof value);
}
UNDERBOUGH_INLINE Truth loadWhole(const std::array<std::int32_t, kLanes>& from)
{
    Truth value;
    std::memcpy(&value, &from, sizeof value);
    return value;
}
UNDERBOUGH_INLINE void store(Truth value, std::array<std::int32_t, kLanes>& to)
{
    std::memcpy(&to, &value, sizeof value);
}
UNDERBOUGH_INLINE Real lesser(Real a, Real b)
{
#if defined(__AVX__)
    return __builtin_ia32_minps256(a, b); // GCC doesn't see it in the line below
#else
    return a < b ? a : b;
#endif
}
UNDERBOUGH_INLINE Real greater(Real a, Real b)
{
#if defined(__AVX__)
    return __builtin_ia32_maxps256(a, b);
#else
    return a > b ? a : b;
#endif
}
/// Sum of all lanes.
UNDERBOUGH_INLINE float sum(Real a)
{
    a += __builtin_shufflevector(a, a, 4, 5, 6, 7, 0, 1, 2, 3);
    a += __builtin_shufflevector(a, a, 2, 3, 0, 1, 6, 7, 4, 5);
    return a[0] + a[1];
}
/// Lane i: lane which[i] of `from`, 0 <= which[i] < 8.
UNDERBOUGH_INLINE Real pick(Real from, Truth which)
{
#if defined(__AVX2__)
    return __builtin_ia32_permvarsf256(from, which);
#else
    Real picked;
    for (std::size_t i = 0; i < kLanes; ++i)
        picked[i] = from[static_cast<std::size_t>(which[i])];
    return picked;
#endif
}
/// Between 0 and 1.
UNDERBOUGH_INLINE Real share(Real a)
{
    return lesser(greater(a, Real{}), all(1.0F));
}
/// Square root; 0 of anything below 0.
UNDERBOUGH_INLINE Real root(Real a)
{
    const Real clear = greater(a, Real{});
    Real result;
    for (std::size_t i = 0; i < kLanes; ++i)
        result[i] = __builtin_sqrtf(clear[i]);
    return result;
}
/// One bit for each lane that is true, the first lane lowest.
UNDERBOUGH_INLINE unsigned bits(Truth truth)
{
#if defined(__AVX__)
    Real lanes;
    std::memcpy(&lanes, &truth, sizeof lanes);
    return static_cast<unsigned>(__builtin_ia32_movmskps256(lanes));
#else
    unsigned result = 0;
    for (std::size_t i = 0; i < kLanes; ++i)
        result |= truth[i] != 0 ? 1U << i : 0U;
    return result;
#endif
}

} // namespace model::light::eight
