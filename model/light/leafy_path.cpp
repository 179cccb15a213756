#include "model/light/beam.hpp"
#include "model/light/eight.hpp"

#include <cstring>

namespace model::light {
namespace {

using eight::Real;
using eight::Truth;

/// In memory as plain numbers: heap blocks are aligned for the narrowest processor only.
struct Stretch {
    Lanes from{};
    Lanes to{};
};

bool isKept(std::span<const char> keep, std::uint32_t body)
{
    return keep.empty() || keep[body] != 0;
}

/// Puts the stretches of each ray in order of `from`: insertion, on all rays at once. Bodies come
/// in the tree's order, so that few exchanges are needed.
UNDERBOUGH_INLINE void putInOrder(std::vector<Stretch>& stretches)
{
    for (std::size_t done = 1; done < stretches.size(); ++done) {
        for (std::size_t i = done; i > 0; --i) {
            Stretch& a = stretches[i - 1];
            Stretch& b = stretches[i];
            const Real aFrom = eight::load(a.from);
            const Real bFrom = eight::load(b.from);
            const Truth swap = bFrom < aFrom;
            if (!eight::any(swap))
                break;
            const Real aTo = eight::load(a.to);
            const Real bTo = eight::load(b.to);
            eight::store(swap ? bFrom : aFrom, a.from);
            eight::store(swap ? bTo : aTo, a.to);
            eight::store(swap ? aFrom : bFrom, b.from);
            eight::store(swap ? aTo : bTo, b.to);
        }
    }
}

UNDERBOUGH_INLINE Real unionLength(std::vector<Stretch>& stretches)
{
    putInOrder(stretches);
    Real length{};
    Real reached{};
    for (const auto& part : stretches) {
        const Real to = eight::load(part.to);
        length += eight::greater(to - eight::greater(eight::load(part.from), reached), Real{});
        reached = eight::greater(to, reached);
    }
    return length;
}

/// e^-x for x >= 0, within 3e-6 of it: 2^-n times a polynomial, on all rays at once.
UNDERBOUGH_INLINE Real expMinus(Real x)
{
    const Real y = eight::lesser(x, eight::all(80.0F)) * 1.44269504F;
    const Truth whole = __builtin_convertvector(y, Truth);
    const Real rest = (__builtin_convertvector(whole, Real) - y) * 0.69314718F; // -ln 2 .. 0
    Real sum = 1.0F + rest * (1.0F / 7.0F);
    for (const float factor : {1.0F / 6.0F, 1.0F / 5.0F, 1.0F / 4.0F, 1.0F / 3.0F, 0.5F, 1.0F})
        sum = 1.0F + rest * factor * sum;
    const Truth exponent = (127 - whole) << 23;
    Real power;
    std::memcpy(&power, &exponent, sizeof power);
    return sum * power;
}

} // namespace

UNDERBOUGH_LANES
void leafyPath(std::span<const Crossing> crossings, const TreeBeam& tree,
               std::span<const char> keep, Lanes& path)
{
    thread_local std::vector<Stretch> stretches;
    Real sum{};
    float done = 0.0F;
    for (const float layer : tree.densities()) {
        stretches.clear();
        for (const auto& crossing : crossings)
            if (tree.bodies()[crossing.body].density >= layer && isKept(keep, crossing.body))
                stretches.push_back({crossing.from, crossing.to});
        sum += (layer - done) * unionLength(stretches);
        done = layer;
    }
    eight::store(sum, path);
}

UNDERBOUGH_LANES
void blocked(std::span<const Crossing> crossings, const TreeBeam& tree, std::span<const char> keep,
             Lanes& wood)
{
    Real sum{};
    for (const auto& crossing : crossings)
        if (!(tree.bodies()[crossing.body].density > 0.0F) && isKept(keep, crossing.body))
            sum = eight::load(crossing.from) < kMissed ? eight::all(1.0F) : sum;
    eight::store(sum, wood);
}

UNDERBOUGH_LANES
void through(const Lanes& path, const Lanes& blockedRays, float extinction_1_m, Lanes& share)
{
    eight::store((1.0F - eight::load(blockedRays)) * expMinus(eight::load(path) * extinction_1_m),
                 share);
}

} // namespace model::light
