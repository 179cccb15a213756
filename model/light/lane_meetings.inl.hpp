// Part of lane_work.inl.hpp, after lane_crossings: small bodies, each of which meets but one or two
// rays of a pack. Local to the file that includes it.
#include "model/light/eight.hpp"
#include "model/light/lane_work.hpp"

namespace model::light {
namespace {

/// Rows that rays fill one by one, each from the first new row on.
struct SingleRows {
    Crossing* rows{};
    std::array<std::uint32_t, kLanes> used{}; ///< per ray
};

/// The next crossing of one ray. What other rays have in that row is left for `close`: to ask here
/// whether the row is new would cost more, since it can't be foretold.
UNDERBOUGH_INLINE void put(std::size_t lane, float from, float to, BodyName name, SingleRows& rows)
{
    Crossing& row = rows.rows[rows.used[lane]++];
    row.from[lane] = from;
    row.to[lane] = to;
    row.density[lane] = name.density;
    row.limb[lane] = name.limb;
}

/// Marks as missed what no ray has filled; returns how many rows there are.
UNDERBOUGH_INLINE std::uint32_t close(const SingleRows& open)
{
    Truth used;
    std::memcpy(&used, &open.used, sizeof used);
    std::int32_t row = 0;
    for (Truth filled = used > row; eight::bits(filled) != 0; filled = used > ++row) {
        Crossing& crossing = open.rows[row];
        eight::store(filled ? eight::load(crossing.from) : eight::all(kMissed), crossing.from);
        eight::store(filled ? eight::load(crossing.to) : eight::all(kMissed), crossing.to);
    }
    return static_cast<std::uint32_t>(row);
}

/// Pairs, of which up to eight are written at once though fewer may count. A pair is eight times
/// the index of one thing, and a ray's lane.
template <std::size_t most>
struct Pairs {
    std::array<std::uint32_t, most + kLanes> list;
    std::size_t count{};
};

/// Appends a pair for each bit: what stands at its place in `perBit`, plus `more`.
template <std::size_t most>
UNDERBOUGH_INLINE void append(unsigned bits, const std::int32_t (&perBit)[256][kLanes],
                              std::size_t more, Pairs<most>& pairs)
{
    Truth named;
    std::memcpy(&named, perBit[bits], sizeof named);
    named += static_cast<std::int32_t>(more);
    std::memcpy(&pairs.list[pairs.count], &named, sizeof named);
    pairs.count += static_cast<std::size_t>(__builtin_popcount(bits));
}

constexpr std::size_t kAtOnce = 64; ///< rays near eights that are worked out in one go

using NearRays = Pairs<kAtOnce + kLanes>; ///< an eight's index among those met, and a ray near it
using Meetings = Pairs<(kAtOnce + kLanes) * kLanes + kLanes>; ///< a body, and a ray that meets it

/// Adds the rays that come within the window around eight bodies.
UNDERBOUGH_INLINE void addNear(std::size_t index, const EightOutlines& outlines, const Rays& rays,
                               NearRays& near)
{
    const auto& bounds = outlines.bounds;
    const unsigned lanes = eight::bits((rays.aside >= bounds[0]) & (-rays.aside >= bounds[2]) &
                                       (rays.up >= bounds[1]) & (-rays.up >= bounds[3]));
    append(lanes, kPlaces.places, kLanes * index, near);
}

/// Adds every meeting of a ray with one of the eight: lanes are bodies here.
UNDERBOUGH_INLINE void addMeetings(const EightMet& eight, std::size_t ray, const AimedPack& pack,
                                   Meetings& meetings)
{
    const EightOutlines& outlines = *eight.outlines;
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
    append(met, kEightTimesPlaces.places, kLanes * eight.firstBody + ray, meetings);
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

/// Crosses all meetings but those that don't fill eight lanes, which it leaves.
UNDERBOUGH_INLINE void crossFullEights(const Bodies& bodies, const Rays& rays, const BeamAxes& axes,
                                       Meetings& meetings, SingleRows& rows)
{
    while (meetings.count >= kLanes) {
        meetings.count -= kLanes;
        crossMeetings(&meetings.list[meetings.count], 0xFFU, bodies, rays, axes, rows);
    }
}

// In three passes, each of which runs straight on: how many rays come near eight bodies and how
// many of those meet one can't be foretold, and a wrong guess costs more than the arithmetic.
void crossCapsules(std::span<const EightMet> eights, const Bodies& bodies, const AimedPack& pack,
                   const BeamAxes& axes, CrossingRows& rows)
{
    const Rays rays = raysOf(pack);
    SingleRows open{rows.rows + rows.count};
    NearRays near;
    Meetings meetings;
    for (std::size_t next = 0; next < eights.size();) {
        for (near.count = 0; next < eights.size() && near.count < kAtOnce; ++next)
            addNear(next, *eights.data()[next].outlines, rays, near);
        for (std::size_t i = 0; i < near.count; ++i)
            addMeetings(eights.data()[near.list[i] / kLanes], near.list[i] % kLanes, pack,
                        meetings);
        crossFullEights(bodies, rays, axes, meetings, open);
    }
    if (meetings.count > 0) {
        for (std::size_t i = meetings.count; i < kLanes; ++i)
            meetings.list[i] = meetings.list[0];
        crossMeetings(meetings.list.data(), (1U << meetings.count) - 1, bodies, rays, axes, open);
    }
    rows.count += close(open);
    rows.lanesUsed = (1U << kLanes) - 1;
}

} // namespace
} // namespace model::light
