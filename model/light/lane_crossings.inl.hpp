// Part of lane_work.inl.hpp: from bodies to crossings. Local to the file that includes it.
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

void aimCapsules(const EightCapsules& capsules, const BeamAxes& axes, AimedCapsules& aimed)
{
    const Real ax = eight::load(capsules.ax);
    const Real ay = eight::load(capsules.ay);
    const Real az = eight::load(capsules.az);
    const Real lx = eight::load(capsules.bx) - ax;
    const Real ly = eight::load(capsules.by) - ay;
    const Real lz = eight::load(capsules.bz) - az;
    const Real radius = eight::load(capsules.radius);
    const Real aside = along(axes.aside, ax, ay, az);
    const Real up = along(axes.up, ax, ay, az);
    const Real dAside = along(axes.aside, lx, ly, lz);
    const Real dUp = along(axes.up, lx, ly, lz);
    const Real rise = along(axes.towards, lx, ly, lz);
    eight::store(aside + eight::lesser(dAside, Real{}) - radius, aimed.windows.asideLow);
    eight::store(aside + eight::greater(dAside, Real{}) + radius, aimed.windows.asideHigh);
    eight::store(up + eight::lesser(dUp, Real{}) - radius, aimed.windows.upLow);
    eight::store(up + eight::greater(dUp, Real{}) + radius, aimed.windows.upHigh);

    const Real run = eight::root(dAside * dAside + dUp * dUp);
    // An axis along the ray is two balls to it, of which it meets the nearer first: a huge bend
    // puts its foot at that end. No axis at all is one ball.
    const Real perLength = eight::load(capsules.perLength);
    const Truth slanted = run * perLength > 3e-5F;
    const Real perRun = 1.0F / (slanted ? run : eight::all(1.0F));
    const Real straight = rise < 0.0F ? eight::all(-1e9F) : eight::all(1e9F);
    eight::store(aside, aimed.aside);
    eight::store(up, aimed.up);
    eight::store(along(axes.towards, ax, ay, az), aimed.depth);
    eight::store(rise, aimed.rise);
    eight::store(slanted ? dAside * perRun : eight::all(1.0F), aimed.alongAside);
    eight::store(slanted ? dUp * perRun : Real{}, aimed.alongUp);
    eight::store(slanted ? run : Real{}, aimed.run);
    eight::store(slanted ? perRun : Real{}, aimed.perRun);
    eight::store(slanted ? rise * perLength * perRun : straight, aimed.bend);
    eight::store(radius * radius, aimed.radiusSquared);
}

UNDERBOUGH_INLINE unsigned meetingBits(const EightWindows& eight, const Window& window)
{
    return eight::bits((eight::load(eight.asideLow) <= window.asideHigh) &
                       (eight::load(eight.asideHigh) >= window.asideLow) &
                       (eight::load(eight.upLow) <= window.upHigh) &
                       (eight::load(eight.upHigh) >= window.upLow));
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

/// Rays beside a capsule, as it sees them.
struct Beside {
    Real along; ///< its axis
    Real foot;  ///< the same as a share of it
    Real room;  ///< radius squared less the distance from its endless axis squared
    Truth met;
};

UNDERBOUGH_INLINE Beside beside(const AimedCapsules& capsules, std::size_t lane, const Rays& rays)
{
    const Real aside = rays.aside - capsules.aside[lane];
    const Real up = rays.up - capsules.up[lane];
    const Real along = capsules.alongAside[lane] * aside + capsules.alongUp[lane] * up;
    const Real off = capsules.alongAside[lane] * up - capsules.alongUp[lane] * aside;
    const Real room = capsules.radiusSquared[lane] - off * off;
    const Real foot = along * capsules.perRun[lane];
    const Real past = along - capsules.run[lane] * eight::share(foot);
    return {along, foot, room, room > past * past};
}

/// Inside a capsule. A plane along the axis and the ray cuts it to a strip with round ends: balls
/// of the room's radius along the axis. The ray enters at the ball whose foot on the axis is where
/// the side's normal points back along the bend, or at the last ball that way.
UNDERBOUGH_INLINE Slice inside(const AimedCapsules& capsules, std::size_t lane, const Beside& ray)
{
    const Real bend = eight::root(ray.room) * capsules.bend[lane];
    const Real in = eight::share(ray.foot - bend);
    const Real out = eight::share(ray.foot + bend);
    const Real inPast = ray.along - capsules.run[lane] * in;
    const Real outPast = ray.along - capsules.run[lane] * out;
    const Real first = eight::all(capsules.depth[lane]);
    const Real from = first + capsules.rise[lane] * in - eight::root(ray.room - inPast * inPast);
    const Real to = first + capsules.rise[lane] * out + eight::root(ray.room - outPast * outPast);
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

/// The row that is being filled, out of memory.
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

/// Adds what lies ahead of the receivers: to the last row while its lanes are free, else to a new
/// one. Without branches, since neither can be foretold.
UNDERBOUGH_INLINE void addAhead(const Slice& slice, Real depth, const Candidate& body, OpenRow& row,
                                CrossingRows& rows)
{
    const Real from = eight::greater(slice.from - depth, Real{});
    const Real to = slice.to - depth;
    const Truth met = from < to;
    const unsigned lanes = eight::bits(met);
    const auto fits = static_cast<unsigned>((rows.lanesUsed & lanes) == 0);
    const Truth kept = Truth{} - static_cast<std::int32_t>(fits);
    rows.last += 1 - fits;
    rows.lanesUsed = (rows.lanesUsed & (0U - fits)) | lanes;
    row.from = met ? from : (kept ? row.from : eight::all(kMissed));
    row.to = met ? to : (kept ? row.to : eight::all(kMissed));
    row.density = met ? eight::all(body.eight->density[body.lane]) : row.density;
    row.limb = met ? Truth{} + body.eight->limbs[body.lane] : row.limb;
    storeRow(row, *rows.last);
}

UNDERBOUGH_INLINE Rays raysOf(const AimedPack& pack)
{
    return {eight::load(pack.aside), eight::load(pack.up), eight::load(pack.depth)};
}

std::size_t candidates(const AimedCapsules& eight, const Window& window, Candidate* list)
{
    const unsigned met = meetingBits(eight.windows, window);
    std::size_t count = 0;
    for (std::uint32_t lane = 0; lane < kLanes; ++lane) { // without branches: none is likely
        list[count] = {&eight, lane};
        count += met >> lane & 1U;
    }
    return count;
}

void crossCapsules(Candidate* candidates, std::size_t count, const AimedPack& pack,
                   CrossingRows& rows)
{
    const Rays rays = raysOf(pack);
    std::size_t met = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const Candidate body = candidates[i];
        candidates[met] = body;
        met += eight::bits(beside(*body.eight, body.lane, rays).met) != 0 ? 1 : 0;
    }
    CrossingRows open = rows;
    OpenRow row = loadRow(*open.last);
    for (std::size_t i = 0; i < met; ++i) {
        const Candidate body = candidates[i];
        const Beside ray = beside(*body.eight, body.lane, rays);
        addAhead(inside(*body.eight, body.lane, ray), rays.depth, body, row, open);
    }
    rows = open;
}

void crossCurtains(const Candidate* candidates, const AimedSheet* const* sheets, std::size_t count,
                   const AimedPack& pack, CrossingRows& rows)
{
    const Rays rays = raysOf(pack);
    CrossingRows open = rows;
    OpenRow row = loadRow(*open.last);
    for (std::size_t i = 0; i < count; ++i) {
        const Candidate body = candidates[i];
        Slice slice{eight::all(kMissed), eight::all(-kMissed)};
        for (std::size_t edge = 0; edge < 4; ++edge) {
            const AimedCapsules& capsules = body.eight[edge];
            const Slice part = inside(capsules, body.lane, beside(capsules, body.lane, rays));
            slice = {eight::lesser(slice.from, part.from), eight::greater(slice.to, part.to)};
        }
        if (!sheets[i]->edgeOn)
            widen(*sheets[i], rays, slice);
        addAhead(slice, rays.depth, body, row, open);
    }
    rows = open;
}

void crossEllipsoids(const Candidate* candidates, const AimedEllipsoid* const* crowns,
                     std::size_t count, const AimedPack& pack, CrossingRows& rows)
{
    const Rays rays = raysOf(pack);
    CrossingRows open = rows;
    OpenRow row = loadRow(*open.last);
    for (std::size_t i = 0; i < count; ++i) {
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
        addAhead(slice, rays.depth, candidates[i], row, open);
    }
    rows = open;
}

} // namespace
} // namespace model::light
