// The body of lane_work.cpp and of lane_work_wide.cpp, which differ in the processor they are
// compiled for. Everything is local to the file: a function shared by both could run where the
// processor does not know its instructions.
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

/// Metres of crown are united by putting starts and ends in order apart from each other: the
/// k-th start opens a new stretch only if it lies beyond the k-1-th end, whichever stretches they
/// belong to. Lanes that miss have both at kMissed, last in order, and add nothing.
UNDERBOUGH_INLINE void exchange(Lanes& low, Lanes& high)
{
    const Real a = eight::load(low);
    const Real b = eight::load(high);
    eight::store(eight::lesser(a, b), low);
    eight::store(eight::greater(a, b), high);
}

UNDERBOUGH_INLINE void insert(Lanes* ordered, std::size_t count, Real value)
{
    for (std::size_t i = 0; i < count; ++i) {
        const Real there = eight::load(ordered[i]);
        eight::store(eight::lesser(there, value), ordered[i]);
        value = eight::greater(there, value);
    }
    eight::store(value, ordered[count]);
}

/// Batcher's odd-even merging, Knuth, The Art of Computer Programming 3, 5.2.2, algorithm M: the
/// same exchanges for every lane, and no more than n log^2 n of them.
UNDERBOUGH_INLINE void putInOrder(Lanes* values, std::size_t count)
{
    std::size_t top = 1;
    while (2 * top < count)
        top *= 2;
    for (std::size_t part = top; part > 0; part /= 2) {
        std::size_t offset = 0;
        std::size_t distance = part;
        for (std::size_t reach = top;; reach /= 2) {
            for (std::size_t block = offset; block + distance < count; block += 2 * part) {
                const std::size_t room = count - distance;
                const std::size_t end = block + part < room ? block + part : room;
                for (std::size_t i = block; i < end; ++i)
                    exchange(values[i], values[i + distance]);
            }
            if (reach == part)
                break;
            distance = reach - part;
            offset = part;
        }
    }
}

UNDERBOUGH_INLINE Real unionLength(const Lanes* from, const Lanes* to, std::size_t count)
{
    Real length{};
    Real reached{};
    for (std::size_t i = 0; i < count; ++i) {
        const Real end = eight::load(to[i]);
        length += end - eight::greater(eight::load(from[i]), reached);
        reached = end;
    }
    return length;
}

/// e^-x for x >= 0, within 3e-6 of it: 2^-n times a polynomial.
UNDERBOUGH_INLINE Real expMinus(Real x)
{
    const Real y = eight::lesser(x, eight::all(80.0F)) * 1.44269504F;
    const Truth whole = __builtin_convertvector(y, Truth);
    const Real rest = (__builtin_convertvector(whole, Real) - y) * 0.69314718F; // -ln 2 .. 0
    Real sum = 1.0F + rest * (1.0F / 7.0F);
    sum = 1.0F + rest * (1.0F / 6.0F) * sum;
    sum = 1.0F + rest * (1.0F / 5.0F) * sum;
    sum = 1.0F + rest * (1.0F / 4.0F) * sum;
    sum = 1.0F + rest * (1.0F / 3.0F) * sum;
    sum = 1.0F + rest * 0.5F * sum;
    sum = 1.0F + rest * sum;
    const Truth exponent = (127 - whole) << 23;
    Real power;
    std::memcpy(&power, &exponent, sizeof power);
    return sum * power;
}

/// Starts and ends of stretches, put in order apart from each other.
struct Ends {
    Lanes* from{};
    Lanes* to{};
    std::size_t count{};
};

constexpr std::size_t kFew = 8; ///< stretches that are put in place one by one

UNDERBOUGH_INLINE void add(const Crossing& row, Truth in, bool few, Ends& ends)
{
    const std::size_t before = few ? ends.count : 0;
    const std::size_t at = ends.count - before;
    insert(ends.from + at, before, in ? eight::load(row.from) : eight::all(kMissed));
    insert(ends.to + at, before, in ? eight::load(row.to) : eight::all(kMissed));
    ++ends.count;
}

UNDERBOUGH_INLINE Real unionLength(const Ends& ends, bool few)
{
    if (!few) {
        putInOrder(ends.from, ends.count);
        putInOrder(ends.to, ends.count);
    }
    return unionLength(ends.from, ends.to, ends.count);
}

void pathAndWood(const Rows& rows, Lanes& path, Lanes& wood)
{
    const bool few = rows.count <= kFew;
    Real sum{};
    float done = 0.0F;
    for (std::size_t i = 0; i < rows.layers.size(); ++i) {
        const float layer = rows.layers.data()[i];
        Ends ends{rows.scratch, rows.scratch + rows.count, 0};
        for (std::size_t r = 0; r < rows.count; ++r)
            add(rows.rows[r], eight::load(rows.rows[r].density) >= layer, few, ends);
        sum += (layer - done) * unionLength(ends, few);
        done = layer;
    }
    eight::store(sum, path);
    Truth blocked{};
    for (std::size_t r = 0; r < rows.count; ++r)
        blocked |= (eight::load(rows.rows[r].density) == 0.0F) &
                   (eight::load(rows.rows[r].from) < kMissed);
    eight::store(blocked ? eight::all(1.0F) : Real{}, wood);
}

/// Lanes in which a row holds something of the limb.
UNDERBOUGH_INLINE Truth holds(const Crossing& row, LimbRange limb)
{
    const Truth limbs = eight::loadWhole(row.limb);
    return (limbs >= limb.first) & (limbs < limb.end);
}

void limbShares(const Rows& rows, LimbRange limb, float extinction_1_m, Lanes& without, Lanes& only)
{
    const bool few = rows.count <= kFew;
    Real pathWithout{};
    Real pathOnly{};
    float done = 0.0F;
    for (std::size_t i = 0; i < rows.layers.size(); ++i) {
        const float layer = rows.layers.data()[i];
        Ends others{rows.scratch, rows.scratch + rows.count, 0};
        Ends its{rows.scratch + 2 * rows.count, rows.scratch + 3 * rows.count, 0};
        for (std::size_t r = 0; r < rows.count; ++r) {
            const Crossing& row = rows.rows[r];
            const Truth leaf = eight::load(row.density) >= layer;
            const Truth held = leaf & holds(row, limb);
            add(row, leaf & ~held, few, others);
            if (eight::bits(held) != 0) // seldom in more than one or two rows
                add(row, held, few, its);
        }
        pathWithout += (layer - done) * unionLength(others, few);
        pathOnly += (layer - done) * unionLength(its, few);
        done = layer;
    }
    Truth woodWithout{};
    Truth woodOnly{};
    for (std::size_t r = 0; r < rows.count; ++r) {
        const Crossing& row = rows.rows[r];
        const Truth met = (eight::load(row.density) == 0.0F) & (eight::load(row.from) < kMissed);
        woodOnly |= met & holds(row, limb);
        woodWithout |= met & ~holds(row, limb);
    }
    eight::store(woodWithout ? Real{} : expMinus(pathWithout * extinction_1_m), without);
    eight::store(woodOnly ? Real{} : expMinus(pathOnly * extinction_1_m), only);
}

void limbsMet(const Crossing* rows, std::size_t count, std::uint64_t* met)
{
    for (std::size_t r = 0; r < count; ++r)
        for (unsigned left = eight::bits(eight::load(rows[r].from) < kMissed); left != 0;
             left &= left - 1) {
            const auto limb = static_cast<std::uint32_t>(
                rows[r].limb[static_cast<std::size_t>(__builtin_ctz(left))]);
            met[limb / 64] |= std::uint64_t{1} << limb % 64;
        }
}

void through(const Lanes& path, const Lanes& wood, float extinction_1_m, Lanes& share)
{
    eight::store((1.0F - eight::load(wood)) * expMinus(eight::load(path) * extinction_1_m), share);
}

constexpr LaneWork kWork{aimPack,     aimBoxes,   aimCapsules,   around,
                         meeting,     candidates, crossCapsules, crossCurtains,
                         pathAndWood, limbShares, limbsMet,      through};

} // namespace
} // namespace model::light
