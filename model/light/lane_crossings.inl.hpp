// Part of lane_work.inl.hpp, after lane_aims: from bodies to crossings. Local to the file that
// includes it.
#include "model/light/eight.hpp"
#include "model/light/lane_work.hpp"

namespace model::light {
namespace {

/// Eight rays as the beam sees them.
struct Rays {
    Real aside;
    Real up;
    Real depth;
};

/// Where rays are inside a body, in the beam's own depth; nothing where `from` > `to`.
struct Slice {
    Real from;
    Real to;
};

/// Rays beside capsules, as they see them.
struct Beside {
    Real along; ///< the axis
    Real foot;  ///< the same as a share of it
    Real room;  ///< radius squared less the distance from the endless axis squared
    Truth met;
};

UNDERBOUGH_INLINE Beside beside(const Seen& capsules, const Rays& rays)
{
    const Real aside = rays.aside - capsules.aside;
    const Real up = rays.up - capsules.up;
    const Real along = capsules.alongAside * aside + capsules.alongUp * up;
    const Real off = capsules.alongAside * up - capsules.alongUp * aside;
    const Real room = capsules.radiusSquared - off * off;
    const Real foot = along * capsules.perRun;
    const Real past = along - capsules.run * eight::share(foot);
    return {along, foot, room, room > past * past};
}

/// Inside capsules. A plane along the axis and the ray cuts one to a strip with round ends: balls
/// of the room's radius along the axis. The ray enters at the ball whose foot on the axis is where
/// the side's normal points back along the bend, or at the last ball that way.
UNDERBOUGH_INLINE Slice inside(const Seen& capsules, const Beside& ray)
{
    const Real bend = eight::root(ray.room) * capsules.bend;
    const Real in = eight::share(ray.foot - bend);
    const Real out = eight::share(ray.foot + bend);
    const Real inPast = ray.along - capsules.run * in;
    const Real outPast = ray.along - capsules.run * out;
    const Real from = capsules.depth + capsules.rise * in - eight::root(ray.room - inPast * inPast);
    const Real to =
        capsules.depth + capsules.rise * out + eight::root(ray.room - outPast * outPast);
    return {ray.met ? from : eight::all(kMissed), ray.met ? to : eight::all(-kMissed)};
}

/// 1 where the sheet is flat at that depth: between its ends, above its hem.
UNDERBOUGH_INLINE Truth flatAt(const AimedSheet& sheet, Real along, Real down, Real depth)
{
    const Real a = along + sheet.alongPerDepth * depth;
    const Real d = down + sheet.downPerDepth * depth;
    return (a > 0.0F) & (a < 1.0F) & (d > 0.0F) & (d < 1.0F);
}

/// Widens by the flat sides of a hanging curtain; where a ray passes through its rounded rim
/// instead, the capsules along its edges have it.
UNDERBOUGH_INLINE void widen(const AimedSheet& sheet, const Rays& rays, Slice& slice)
{
    const Real middle = sheet.depth + sheet.depthPerAside * rays.aside + sheet.depthPerUp * rays.up;
    const Real along = sheet.along + sheet.alongPerAside * rays.aside + sheet.alongPerUp * rays.up;
    const Real down = sheet.down + sheet.downPerAside * rays.aside + sheet.downPerUp * rays.up;
    const Real in = middle - sheet.half;
    const Real out = middle + sheet.half;
    slice.from = flatAt(sheet, along, down, in) ? eight::lesser(slice.from, in) : slice.from;
    slice.to = flatAt(sheet, along, down, out) ? eight::greater(slice.to, out) : slice.to;
}

/// The last row, out of memory.
struct OpenRow {
    Real from;
    Real to;
    Real density;
    Truth limb;
};

UNDERBOUGH_INLINE OpenRow loadRow(const Crossing& row)
{
    return {eight::load(row.from), eight::load(row.to), eight::load(row.density),
            eight::loadWhole(row.limb)};
}

UNDERBOUGH_INLINE void storeRow(const OpenRow& row, Crossing& to)
{
    eight::store(row.from, to.from);
    eight::store(row.to, to.to);
    eight::store(row.density, to.density);
    eight::store(row.limb, to.limb);
}

/// Adds what all rays cross of one body ahead of the receivers: to the last row while its lanes
/// are free, else to a new one. Without branches, since neither can be foretold.
UNDERBOUGH_INLINE void addBody(const Slice& slice, Real depth, BodyName name, OpenRow& row,
                               CrossingRows& rows)
{
    const Real from = eight::greater(slice.from - depth, Real{});
    const Real to = slice.to - depth;
    const Truth met = from < to;
    const unsigned lanes = eight::bits(met);
    const auto fits = static_cast<unsigned>((rows.lanesUsed & lanes) == 0);
    const Truth kept = Truth{} - static_cast<std::int32_t>(fits);
    rows.count += 1 - fits;
    rows.lanesUsed = (rows.lanesUsed & (0U - fits)) | lanes;
    row.from = met ? from : (kept ? row.from : eight::all(kMissed));
    row.to = met ? to : (kept ? row.to : eight::all(kMissed));
    row.density = met ? eight::all(name.density) : row.density;
    row.limb = met ? Truth{} + name.limb : row.limb;
    storeRow(row, *(rows.rows + rows.count - 1));
}

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

UNDERBOUGH_INLINE Rays raysOf(const AimedPack& pack)
{
    return {eight::load(pack.aside), eight::load(pack.up), eight::load(pack.depth)};
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

void crossWideCapsules(std::span<std::uint32_t> candidates, const AimedCapsules* aimed,
                       const BodyName* names, const AimedPack& pack, CrossingRows& rows)
{
    const Rays rays = raysOf(pack);
    std::size_t met = 0;
    for (std::size_t i = 0; i < candidates.size(); ++i) { // without branches: none is likely
        const std::uint32_t body = candidates[i];
        candidates[met] = body;
        const Seen capsules = seen(aimed[body / kLanes], body % kLanes);
        met += eight::bits(beside(capsules, rays).met) != 0 ? 1 : 0;
    }
    CrossingRows open = rows;
    OpenRow row = loadRow(*(open.rows + open.count - 1));
    for (const std::uint32_t body : candidates.first(met)) {
        const Seen capsules = seen(aimed[body / kLanes], body % kLanes);
        addBody(inside(capsules, beside(capsules, rays)), rays.depth, names[body], row, open);
    }
    rows = open;
}

void crossCurtains(std::span<const Candidate> candidates, const AimedSheet* const* sheets,
                   const BodyName* names, const AimedPack& pack, CrossingRows& rows)
{
    const Rays rays = raysOf(pack);
    CrossingRows open = rows;
    OpenRow row = loadRow(*(open.rows + open.count - 1));
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        const Candidate body = candidates[i];
        Slice slice{eight::all(kMissed), eight::all(-kMissed)};
        for (std::size_t edge = 0; edge < 4; ++edge) {
            const Seen capsules = seen(body.eight[edge], body.lane);
            const Slice part = inside(capsules, beside(capsules, rays));
            slice = {eight::lesser(slice.from, part.from), eight::greater(slice.to, part.to)};
        }
        if (!sheets[i]->edgeOn)
            widen(*sheets[i], rays, slice);
        addBody(slice, rays.depth, names[body.body], row, open);
    }
    rows = open;
}

void crossEllipsoids(std::span<const Candidate> candidates, const AimedEllipsoid* const* crowns,
                     const BodyName* names, const AimedPack& pack, CrossingRows& rows)
{
    const Rays rays = raysOf(pack);
    CrossingRows open = rows;
    OpenRow row = loadRow(*(open.rows + open.count - 1));
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        const AimedEllipsoid& crown = *crowns[i];
        const Real aside = rays.aside - crown.aside;
        const Real up = rays.up - crown.up;
        const Real room =
            1.0F - aside * (crown.xx * aside + 2.0F * crown.xy * up) - crown.yy * up * up;
        const Truth met = room > 0.0F;
        const Real middle = crown.depth + crown.depthPerAside * aside + crown.depthPerUp * up;
        const Real half = crown.half * eight::root(room);
        const Slice slice{met ? middle - half : eight::all(kMissed),
                          met ? middle + half : eight::all(-kMissed)};
        addBody(slice, rays.depth, names[candidates[i].body], row, open);
    }
    rows = open;
}

} // namespace
} // namespace model::light
