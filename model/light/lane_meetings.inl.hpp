// Part of lane_work.inl.hpp, after lane_crossings: small bodies, each of which meets but one or two
// rays of a pack. Local to the file that includes it.
#include "model/light/eight.hpp"
#include "model/light/lane_work.hpp"

namespace model::light {
namespace {

/// Rows that rays fill one by one, each from the first new row on.
struct SingleRows {
    Crossing* rows{};
    std::uint32_t count{};
    std::array<std::uint32_t, kLanes> used{}; ///< per ray
};

/// The next crossing of one ray.
UNDERBOUGH_INLINE void put(std::size_t lane, float from, float to, BodyName name, SingleRows& rows)
{
    const std::uint32_t next = rows.used[lane]++;
    Crossing& row = rows.rows[next];
    if (next == rows.count) {
        eight::store(eight::all(kMissed), row.from);
        eight::store(eight::all(kMissed), row.to);
        ++rows.count;
    }
    row.from[lane] = from;
    row.to[lane] = to;
    row.density[lane] = name.density;
    row.limb[lane] = name.limb;
}

/// Rays that meet bodies: eight times the body's index, and the ray's lane.
struct Meetings {
    static constexpr std::size_t kRoom = 9 * kLanes + kLanes; ///< the last eight are overwritten
    std::array<std::uint32_t, kRoom> list;
    std::size_t count{};
};

/// Adds every meeting of a ray with one of the eight: lanes are bodies here.
UNDERBOUGH_INLINE void addMeetings(const EightMet& eight, const AimedPack& pack, const Rays& rays,
                                   Meetings& meetings)
{
    const EightOutlines& outlines = *eight.outlines;
    const auto& bounds = outlines.bounds;
    unsigned near = eight::bits((rays.aside >= bounds[0]) & (-rays.aside >= bounds[2]) &
                                (rays.up >= bounds[1]) & (-rays.up >= bounds[3]));
    std::size_t count = meetings.count;
    for (; near != 0; near &= near - 1) {
        const auto ray = static_cast<std::size_t>(__builtin_ctz(near));
        const Real aside = pack.aside[ray] - eight::load(outlines.aside);
        const Real up = pack.up[ray] - eight::load(outlines.up);
        const Real runAside = eight::load(outlines.runAside);
        const Real runUp = eight::load(outlines.runUp);
        const Real foot =
            eight::share((aside * runAside + up * runUp) * eight::load(outlines.perRunSquared));
        const Real offAside = aside - foot * runAside;
        const Real offUp = up - foot * runUp;
        const unsigned met =
            eight::bits(offAside * offAside + offUp * offUp < eight::load(outlines.radiusSquared));
        Truth named;
        std::memcpy(&named, kEightTimesPlaces.places[met], sizeof named);
        named += static_cast<std::int32_t>(8 * eight.firstBody + ray);
        std::memcpy(&meetings.list[count], &named, sizeof named);
        count += static_cast<std::size_t>(__builtin_popcount(met));
    }
    meetings.count = count;
}

/// Eight capsules out of eight places of memory.
UNDERBOUGH_INLINE Placed gathered(const Capsule* capsules, const std::uint32_t* meetings)
{
    static_assert(sizeof(Capsule) == sizeof(Real));
    const auto at = [&](std::size_t i) { return eight::load(&capsules[meetings[i] / kLanes].ax); };
    const Real row[kLanes] = {at(0), at(1), at(2), at(3), at(4), at(5), at(6), at(7)};
    Real pair[kLanes]; // 8 x 8 turned over: in pairs, fours, halves
    for (std::size_t i = 0; i < kLanes; i += 2) {
        pair[i] = __builtin_shufflevector(row[i], row[i + 1], 0, 8, 1, 9, 4, 12, 5, 13);
        pair[i + 1] = __builtin_shufflevector(row[i], row[i + 1], 2, 10, 3, 11, 6, 14, 7, 15);
    }
    Real four[kLanes];
    for (std::size_t i = 0; i < kLanes; i += 4)
        for (std::size_t j = 0; j < 2; ++j) {
            const Real a = pair[i + j];
            const Real b = pair[i + j + 2];
            four[i + 2 * j] = __builtin_shufflevector(a, b, 0, 1, 8, 9, 4, 5, 12, 13);
            four[i + 2 * j + 1] = __builtin_shufflevector(a, b, 2, 3, 10, 11, 6, 7, 14, 15);
        }
    Real column[kLanes];
    for (std::size_t i = 0; i < 4; ++i) {
        column[i] = __builtin_shufflevector(four[i], four[i + 4], 0, 1, 2, 3, 8, 9, 10, 11);
        column[i + 4] = __builtin_shufflevector(four[i], four[i + 4], 4, 5, 6, 7, 12, 13, 14, 15);
    }
    return {column[0], column[1], column[2], column[3], column[4], column[5], column[6], column[7]};
}

/// Crosses eight rays, each with a body of its own.
UNDERBOUGH_INLINE void crossMeetings(const std::uint32_t* meetings, unsigned wanted,
                                     const Bodies& bodies, const Rays& pack, const BeamAxes& axes,
                                     SingleRows& rows)
{
    Truth lanes;
    std::memcpy(&lanes, meetings, sizeof lanes);
    lanes &= 7;
    const Rays rays{eight::pick(pack.aside, lanes), eight::pick(pack.up, lanes),
                    eight::pick(pack.depth, lanes)};
    const Seen capsules = seen(gathered(bodies.capsules, meetings), axes);
    const Slice slice = inside(capsules, beside(capsules, rays));
    const Real ahead = eight::greater(slice.from - rays.depth, Real{});
    const Real end = slice.to - rays.depth;
    Lanes from;
    Lanes to;
    eight::store(ahead, from);
    eight::store(end, to);
    for (unsigned left = eight::bits(ahead < end) & wanted; left != 0; left &= left - 1) {
        const auto i = static_cast<std::size_t>(__builtin_ctz(left));
        put(meetings[i] % kLanes, from[i], to[i], bodies.names[meetings[i] / kLanes], rows);
    }
}

void crossCapsules(std::span<const EightMet> eights, const Bodies& bodies, const AimedPack& pack,
                   const BeamAxes& axes, CrossingRows& rows)
{
    const Rays rays = raysOf(pack);
    SingleRows open{rows.rows + rows.count};
    Meetings meetings;
    for (const EightMet& eight : eights) {
        addMeetings(eight, pack, rays, meetings);
        while (meetings.count >= kLanes) {
            meetings.count -= kLanes;
            crossMeetings(&meetings.list[meetings.count], 0xFFU, bodies, rays, axes, open);
        }
    }
    if (meetings.count > 0) {
        for (std::size_t i = meetings.count; i < kLanes; ++i)
            meetings.list[i] = meetings.list[0];
        crossMeetings(meetings.list.data(), (1U << meetings.count) - 1, bodies, rays, axes, open);
    }
    rows.count += open.count;
    rows.lanesUsed = (1U << kLanes) - 1;
}

} // namespace
} // namespace model::light
