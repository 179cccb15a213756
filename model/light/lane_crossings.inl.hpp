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

UNDERBOUGH_INLINE Rays raysOf(const AimedPack& pack)
{
    return {eight::load(pack.aside), eight::load(pack.up), eight::load(pack.depth)};
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
