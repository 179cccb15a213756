// Part of lane_work.inl.hpp: from crossings to light. Local to the file that includes it.
#include "model/light/eight.hpp"
#include "model/light/lane_work.hpp"

namespace model::light {
namespace {

using eight::Real;
using eight::Truth;

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

/// Room for the ends of one layer of leaf.
UNDERBOUGH_INLINE Ends layerEnds(const Rows& rows, std::size_t layer)
{
    Lanes* const room = rows.scratch + 2 * rows.count * layer;
    return {room, room + rows.count, 0};
}

/// Ends of all rows, in order, with leaf of at least a layer's density.
UNDERBOUGH_INLINE Ends orderedEnds(const Rows& rows, std::size_t layer)
{
    const bool few = rows.count <= kFew;
    const float least = rows.layers.data()[layer];
    Ends ends = layerEnds(rows, layer);
    for (std::size_t r = 0; r < rows.count; ++r)
        add(rows.rows[r], eight::load(rows.rows[r].density) >= least, few, ends);
    if (!few) {
        putInOrder(ends.from, ends.count);
        putInOrder(ends.to, ends.count);
    }
    return ends;
}

void pathAndWood(const Rows& rows, Lanes& path, Lanes& wood)
{
    Real sum{};
    float done = 0.0F;
    for (std::size_t i = 0; i < rows.layers.size(); ++i) {
        const float layer = rows.layers.data()[i];
        const Ends ends = orderedEnds(rows, i);
        sum += (layer - done) * unionLength(ends.from, ends.to, ends.count);
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

/// Takes one value of each lane out of values in order; kMissed takes none but a last that is
/// missed itself.
UNDERBOUGH_INLINE void takeOut(const Lanes* ordered, std::size_t count, Real value, Lanes* rest)
{
    Real there = eight::load(ordered[0]);
    for (std::size_t i = 0; i < count; ++i) {
        const Real next = i + 1 < count ? eight::load(ordered[i + 1]) : eight::all(kMissed);
        eight::store(there < value ? there : next, rest[i]);
        there = next;
    }
}

/// Metres of one layer of leaf without a limb and of that limb alone.
struct Apart {
    Real without;
    Real only;
};

/// \param all  ends of all rows of that layer, in order
UNDERBOUGH_INLINE Apart apart(const Rows& rows, std::size_t layer, const Ends& all, LimbRange limb)
{
    const Ends rest = layerEnds(rows, rows.layers.size());
    Ends its = layerEnds(rows, rows.layers.size() + 1);
    const float least = rows.layers.data()[layer];
    Ends others = all;
    for (std::size_t r = 0; r < rows.count; ++r) {
        const Crossing& row = rows.rows[r];
        const Real from = eight::load(row.from);
        const Truth held =
            (eight::load(row.density) >= least) & (from < kMissed) & holds(row, limb);
        if (eight::bits(held) == 0) // seldom in more than one or two rows
            continue;
        add(row, held, true, its);
        const Real to = eight::load(row.to);
        takeOut(others.from, all.count, held ? from : eight::all(kMissed), rest.from);
        takeOut(others.to, all.count, held ? to : eight::all(kMissed), rest.to);
        others = rest;
    }
    return {unionLength(others.from, others.to, all.count),
            unionLength(its.from, its.to, its.count)};
}

/// Shares of light without a limb and past that limb alone.
struct Shares {
    Real without;
    Real only;
};

/// The layers' ends are in their places, in order.
UNDERBOUGH_INLINE Shares sharesOf(const Rows& rows, LimbRange limb, float extinction_1_m)
{
    Apart path{Real{}, Real{}};
    float done = 0.0F;
    for (std::size_t i = 0; i < rows.layers.size(); ++i) {
        Ends all = layerEnds(rows, i);
        all.count = rows.count;
        const Apart part = apart(rows, i, all, limb);
        const float more = rows.layers.data()[i] - done;
        path = {path.without + more * part.without, path.only + more * part.only};
        done = rows.layers.data()[i];
    }
    Truth woodWithout{};
    Truth woodOnly{};
    for (std::size_t r = 0; r < rows.count; ++r) {
        const Crossing& row = rows.rows[r];
        const Truth met = (eight::load(row.density) == 0.0F) & (eight::load(row.from) < kMissed);
        const Truth held = holds(row, limb);
        woodOnly |= met & held;
        woodWithout |= met & ~held;
    }
    return {woodWithout ? Real{} : expMinus(path.without * extinction_1_m),
            woodOnly ? Real{} : expMinus(path.only * extinction_1_m)};
}

void limbShares(const Rows& rows, LimbRange limb, float extinction_1_m, Lanes& without, Lanes& only)
{
    for (std::size_t i = 0; i < rows.layers.size(); ++i)
        orderedEnds(rows, i);
    const Shares shares = sharesOf(rows, limb, extinction_1_m);
    eight::store(shares.without, without);
    eight::store(shares.only, only);
}

void limbLosses(const Rows& rows, std::span<const LimbRange> limbs, const LimbLight& light,
                LimbLoss* losses)
{
    for (std::size_t i = 0; i < rows.layers.size(); ++i)
        orderedEnds(rows, i);
    const Real open = eight::load(light.open);
    const Real others = eight::load(light.others);
    const Real through = eight::load(light.through);
    for (std::size_t i = 0; i < limbs.size(); ++i) {
        const Shares shares = sharesOf(rows, limbs[i], light.extinction_1_m);
        losses[i] = {eight::sum(others * (shares.without - through)),
                     eight::sum(open * (1.0F - shares.only))};
    }
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

} // namespace
} // namespace model::light
