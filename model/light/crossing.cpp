#include "model/light/beam.hpp"
#include "model/light/eight.hpp"

namespace model::light {
namespace {

using eight::Real;
using eight::Truth;

/// Widens `depths` by a capsule: two balls and the round side between them. Which of the three a
/// ray passes through follows from where on the axis it enters and leaves the endless cylinder.
UNDERBOUGH_INLINE void widen(const AimedCapsule& capsule, Real packAside, Real packUp, Real& entry,
                             Real& exit)
{
    const Real aside = packAside - capsule.aside;
    const Real up = packUp - capsule.up;
    const Real off = capsule.alongAside * up - capsule.alongUp * aside;
    const Real along = capsule.alongAside * aside + capsule.alongUp * up;
    const Real room = capsule.radiusSquared - off * off;
    const Real reach = eight::root(room) * capsule.perSine;
    const Real middle = capsule.depth + along * capsule.slope;
    const Real foot = along * capsule.perSine;
    const Real beyond = along - capsule.run;
    const Real first = eight::all(capsule.depth);
    const Real last = eight::all(capsule.endDepth);

    const Real in = foot - reach * capsule.cosine;
    const Truth inSide = (in > 0.0F) & (in < capsule.length);
    const Real inOff = in < 0.0F ? along : beyond;
    const Real inRoom = inSide ? room : room - inOff * inOff;
    const Real inBall = (in < 0.0F ? first : last) - eight::root(inRoom);

    const Real out = foot + reach * capsule.cosine;
    const Truth outSide = (out > 0.0F) & (out < capsule.length);
    const Real outOff = out < 0.0F ? along : beyond;
    const Real outRoom = outSide ? room : room - outOff * outOff;
    const Real outBall = (out < 0.0F ? first : last) + eight::root(outRoom);

    const Truth met = (inRoom > 0.0F) & (outRoom > 0.0F);
    const Real inDepth = inSide ? middle - reach : inBall;
    const Real outDepth = outSide ? middle + reach : outBall;
    entry = eight::lesser(entry, met ? inDepth : eight::all(kMissed));
    exit = eight::greater(exit, met ? outDepth : eight::all(-kMissed));
}

/// Widens by the flat sides of a hanging curtain; where a ray passes through its rounded rim
/// instead, the capsules along its edges have it.
UNDERBOUGH_INLINE void widen(const AimedSheet& sheet, Real aside, Real up, Real& entry, Real& exit)
{
    const Real middle = sheet.depth + sheet.depthPerAside * aside + sheet.depthPerUp * up;
    const Real along = sheet.along + sheet.alongPerAside * aside + sheet.alongPerUp * up;
    const Real down = sheet.down + sheet.downPerAside * aside + sheet.downPerUp * up;
    const auto flatAt = [&](Real depth) {
        const Real a = along + sheet.alongPerDepth * depth;
        const Real d = down + sheet.downPerDepth * depth;
        return (a > 0.0F) & (a < 1.0F) & (d > 0.0F) & (d < 1.0F);
    };
    const Real in = middle - sheet.half;
    const Real out = middle + sheet.half;
    entry = eight::lesser(entry, flatAt(in) ? in : eight::all(kMissed));
    exit = eight::greater(exit, flatAt(out) ? out : eight::all(-kMissed));
}

} // namespace

UNDERBOUGH_LANES
void TreeBeam::crossings(const AimedPack& pack, std::vector<Crossing>& found) const
{
    const Window w = pack.window;
    if (w.asideLow > whole_.asideHigh || w.asideHigh < whole_.asideLow || w.upLow > whole_.upHigh ||
        w.upHigh < whole_.upLow)
        return;
    const Real aside = eight::load(pack.aside);
    const Real up = eight::load(pack.up);
    const Real depth = eight::load(pack.depth);
    for (std::size_t first = 0; first < solids_.size(); first += kLanes) {
        const Truth meets = (eight::load(&asideLow_[first]) <= w.asideHigh) &
                            (eight::load(&asideHigh_[first]) >= w.asideLow) &
                            (eight::load(&upLow_[first]) <= w.upHigh) &
                            (eight::load(&upHigh_[first]) >= w.upLow);
        if (!eight::any(meets))
            continue;
        for (std::size_t body = first; body < first + kLanes; ++body) {
            if (meets[body - first] == 0)
                continue;
            Real entry = eight::all(kMissed);
            Real exit = eight::all(-kMissed);
            for (std::size_t c = firstCapsule_[body]; c < firstCapsule_[body + 1]; ++c)
                widen(capsules_[c], aside, up, entry, exit);
            if (sheet_[body] != kNoSheet && !sheets_[sheet_[body]].edgeOn)
                widen(sheets_[sheet_[body]], aside, up, entry, exit);
            const Real from = eight::greater(entry - depth, Real{});
            const Real to = exit - depth;
            const Truth met = from < to;
            if (!eight::any(met))
                continue;
            Crossing& crossing = found.emplace_back();
            eight::store(met ? from : eight::all(kMissed), crossing.from);
            eight::store(met ? to : eight::all(kMissed), crossing.to);
            crossing.body = static_cast<std::uint32_t>(body);
        }
    }
}

} // namespace model::light
