// Part of lane_work.inl.hpp: what a beam sees of bodies. Local to the file that includes it.
#include "model/light/eight.hpp"
#include "model/light/lane_work.hpp"

namespace model::light {
namespace {

using eight::Real;
using eight::Truth;

UNDERBOUGH_INLINE Real along(const std::array<float, 3>& axis, Real x, Real y, Real z)
{
    return x * axis[0] + y * axis[1] + z * axis[2];
}

UNDERBOUGH_INLINE float leastOf(Real value)
{
    value = eight::lesser(value, __builtin_shufflevector(value, value, 4, 5, 6, 7, 0, 1, 2, 3));
    value = eight::lesser(value, __builtin_shufflevector(value, value, 2, 3, 0, 1, 6, 7, 4, 5));
    value = eight::lesser(value, __builtin_shufflevector(value, value, 1, 0, 3, 2, 5, 4, 7, 6));
    return value[0];
}

void aimPack(const Pack& pack, const BeamAxes& axes, AimedPack& aimed)
{
    const Real x = eight::load(pack.x);
    const Real y = eight::load(pack.y);
    const Real z = eight::load(pack.z);
    const Real aside = along(axes.aside, x, y, z);
    const Real up = along(axes.up, x, y, z);
    eight::store(aside, aimed.aside);
    eight::store(up, aimed.up);
    eight::store(along(axes.towards, x, y, z), aimed.depth);
    aimed.window = {leastOf(aside), -leastOf(-aside), leastOf(up), -leastOf(-up)};
}

void aimBoxes(const EightBoxes& boxes, const BeamAxes& axes, EightWindows& windows)
{
    const Real x = eight::load(boxes.x);
    const Real y = eight::load(boxes.y);
    const Real z = eight::load(boxes.z);
    const Real halfX = eight::load(boxes.halfX);
    const Real halfY = eight::load(boxes.halfY);
    const Real halfZ = eight::load(boxes.halfZ);
    const auto half = [](float part) { return part < 0.0F ? -part : part; };
    const Real aside = along(axes.aside, x, y, z);
    const Real asideHalf =
        halfX * half(axes.aside[0]) + halfY * half(axes.aside[1]) + halfZ * half(axes.aside[2]);
    const Real up = along(axes.up, x, y, z);
    const Real upHalf =
        halfX * half(axes.up[0]) + halfY * half(axes.up[1]) + halfZ * half(axes.up[2]);
    eight::store(aside - asideHalf, windows.asideLow);
    eight::store(aside + asideHalf, windows.asideHigh);
    eight::store(up - upHalf, windows.upLow);
    eight::store(up + upHalf, windows.upHigh);
}

/// Eight capsules in the garden, metres from the packs' origin.
struct Placed {
    Real ax, ay, az;
    Real alongX, alongY, alongZ; ///< from the first end to the other
    Real radius;
    Real perLength;
};

UNDERBOUGH_INLINE Placed placed(const EightCapsules& capsules)
{
    const Real ax = eight::load(capsules.ax);
    const Real ay = eight::load(capsules.ay);
    const Real az = eight::load(capsules.az);
    return {ax,
            ay,
            az,
            eight::load(capsules.bx) - ax,
            eight::load(capsules.by) - ay,
            eight::load(capsules.bz) - az,
            eight::load(capsules.radius),
            eight::load(capsules.perLength)};
}

/// Eight capsules as the beam sees them: AimedCapsules, out of memory.
struct Seen {
    Real aside, up, depth;
    Real rise;
    Real alongAside, alongUp;
    Real run;
    Real perRun;
    Real bend;
    Real radiusSquared;
};

UNDERBOUGH_INLINE Seen seen(const Placed& at, const BeamAxes& axes)
{
    const Real dAside = along(axes.aside, at.alongX, at.alongY, at.alongZ);
    const Real dUp = along(axes.up, at.alongX, at.alongY, at.alongZ);
    const Real rise = along(axes.towards, at.alongX, at.alongY, at.alongZ);
    const Real run = eight::root(dAside * dAside + dUp * dUp);
    // An axis along the ray is two balls to it, of which it meets the nearer first: a huge bend
    // puts its foot at that end. No axis at all is one ball.
    const Truth slanted = run * at.perLength > 3e-5F;
    const Real perRun = 1.0F / (slanted ? run : eight::all(1.0F));
    const Real straight = rise < 0.0F ? eight::all(-1e9F) : eight::all(1e9F);
    return {along(axes.aside, at.ax, at.ay, at.az),
            along(axes.up, at.ax, at.ay, at.az),
            along(axes.towards, at.ax, at.ay, at.az),
            rise,
            slanted ? dAside * perRun : eight::all(1.0F),
            slanted ? dUp * perRun : Real{},
            slanted ? run : Real{},
            slanted ? perRun : Real{},
            slanted ? rise * at.perLength * perRun : straight,
            at.radius * at.radius};
}

void aimCapsules(const EightCapsules& capsules, const BeamAxes& axes, AimedCapsules& aimed)
{
    const Placed at = placed(capsules);
    const Seen as = seen(at, axes);
    const Real dAside = along(axes.aside, at.alongX, at.alongY, at.alongZ);
    const Real dUp = along(axes.up, at.alongX, at.alongY, at.alongZ);
    eight::store(as.aside + eight::lesser(dAside, Real{}) - at.radius, aimed.windows.asideLow);
    eight::store(as.aside + eight::greater(dAside, Real{}) + at.radius, aimed.windows.asideHigh);
    eight::store(as.up + eight::lesser(dUp, Real{}) - at.radius, aimed.windows.upLow);
    eight::store(as.up + eight::greater(dUp, Real{}) + at.radius, aimed.windows.upHigh);
    eight::store(as.aside, aimed.aside);
    eight::store(as.up, aimed.up);
    eight::store(as.depth, aimed.depth);
    eight::store(as.rise, aimed.rise);
    eight::store(as.alongAside, aimed.alongAside);
    eight::store(as.alongUp, aimed.alongUp);
    eight::store(as.run, aimed.run);
    eight::store(as.perRun, aimed.perRun);
    eight::store(as.bend, aimed.bend);
    eight::store(as.radiusSquared, aimed.radiusSquared);
}

UNDERBOUGH_INLINE Seen seen(const AimedCapsules& capsules, std::size_t lane)
{
    return {eight::all(capsules.aside[lane]),      eight::all(capsules.up[lane]),
            eight::all(capsules.depth[lane]),      eight::all(capsules.rise[lane]),
            eight::all(capsules.alongAside[lane]), eight::all(capsules.alongUp[lane]),
            eight::all(capsules.run[lane]),        eight::all(capsules.perRun[lane]),
            eight::all(capsules.bend[lane]),       eight::all(capsules.radiusSquared[lane])};
}

// Wider than float may round what it takes to tell whether a ray meets a capsule.
constexpr float kWider = 1.0F + 1e-4F;
constexpr float kWider_m2 = 1e-6F;

/// The least of each of four, all reduced together.
UNDERBOUGH_INLINE void leastOfFour(Real a, Real b, Real c, Real d, std::array<float, 4>& least)
{
    const Real ab = eight::lesser(__builtin_shufflevector(a, b, 0, 8, 1, 9, 4, 12, 5, 13),
                                  __builtin_shufflevector(a, b, 2, 10, 3, 11, 6, 14, 7, 15));
    const Real cd = eight::lesser(__builtin_shufflevector(c, d, 0, 8, 1, 9, 4, 12, 5, 13),
                                  __builtin_shufflevector(c, d, 2, 10, 3, 11, 6, 14, 7, 15));
    const Real four = eight::lesser(__builtin_shufflevector(ab, cd, 0, 1, 8, 9, 4, 5, 12, 13),
                                    __builtin_shufflevector(ab, cd, 2, 3, 10, 11, 6, 7, 14, 15));
    const Real all =
        eight::lesser(four, __builtin_shufflevector(four, four, 4, 5, 6, 7, 0, 1, 2, 3));
    std::memcpy(&least, &all, sizeof least);
}

void outline(const EightCapsules& capsules, const BeamAxes& axes, EightOutlines& outlines)
{
    const Placed at = placed(capsules);
    const Real runAside = along(axes.aside, at.alongX, at.alongY, at.alongZ);
    const Real runUp = along(axes.up, at.alongX, at.alongY, at.alongZ);
    const Real aside = along(axes.aside, at.ax, at.ay, at.az);
    const Real up = along(axes.up, at.ax, at.ay, at.az);
    const Real reach = at.radius * kWider + kWider_m2;
    const Real none{};
    leastOfFour(aside + eight::lesser(runAside, none) - reach,
                up + eight::lesser(runUp, none) - reach,
                -aside - eight::greater(runAside, none) - reach,
                -up - eight::greater(runUp, none) - reach, outlines.bounds);
    eight::store(aside, outlines.aside);
    eight::store(up, outlines.up);
    eight::store(runAside, outlines.runAside);
    eight::store(runUp, outlines.runUp);
    const Real runSquared = runAside * runAside + runUp * runUp;
    eight::store(1.0F / eight::greater(runSquared, eight::all(1e-12F)), outlines.perRunSquared);
    eight::store(at.radius > 0.0F ? at.radius * at.radius * kWider + kWider_m2 : eight::all(-1.0F),
                 outlines.radiusSquared);
}

UNDERBOUGH_INLINE unsigned meetingBits(const EightWindows& eight, const Window& window)
{
    return eight::bits((eight::load(eight.asideLow) <= window.asideHigh) &
                       (eight::load(eight.asideHigh) >= window.asideLow) &
                       (eight::load(eight.upLow) <= window.upHigh) &
                       (eight::load(eight.upHigh) >= window.upLow));
}

/// Places of the bits of a byte, in order, times a number; anything after the last.
template <std::int32_t kTimes>
struct BitPlaces {
    std::int32_t places[256][kLanes]{};
    constexpr BitPlaces()
    {
        for (unsigned byte = 0; byte < 256; ++byte)
            for (std::int32_t bit = 0, next = 0; bit < 8; ++bit)
                if ((byte >> bit & 1U) != 0)
                    places[byte][next++] = kTimes * bit;
    }
};
constexpr BitPlaces<1> kPlaces;
constexpr BitPlaces<8> kEightTimesPlaces;

/// Names those of eight that a byte's bits are set for.
UNDERBOUGH_INLINE std::size_t nameBits(unsigned bits, std::uint32_t first, std::uint32_t* list)
{
    Truth named;
    std::memcpy(&named, kPlaces.places[bits], sizeof named);
    named += static_cast<std::int32_t>(first);
    std::memcpy(list, &named, sizeof named);
    return static_cast<std::size_t>(__builtin_popcount(bits));
}

std::size_t candidates(const EightWindows& eight, const Window& window, std::uint32_t firstBody,
                       std::uint32_t* list)
{
    return nameBits(meetingBits(eight, window), firstBody, list);
}

std::size_t metInside(const EightWindows* eights, std::span<const std::uint32_t> some,
                      const Window& window, std::uint32_t* met)
{
    std::size_t count = 0;
    for (const std::uint32_t eight : some)
        count += nameBits(meetingBits(eights[eight], window),
                          static_cast<std::uint32_t>(kLanes) * eight, met + count);
    return count;
}

Window around(const EightWindows& eight)
{
    return {leastOf(eight::load(eight.asideLow)), -leastOf(-eight::load(eight.asideHigh)),
            leastOf(eight::load(eight.upLow)), -leastOf(-eight::load(eight.upHigh))};
}

unsigned meeting(const EightWindows& eight, const Window& window)
{
    return meetingBits(eight, window);
}

} // namespace
} // namespace model::light
