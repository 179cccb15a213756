#include "app/words/headroom_words.hpp"

#include <algorithm>

namespace app {
namespace {

using model::headroom::LowPart;
using model::headroom::StripHeadroom;

/// More than this many limbs are counted, not named: a sentence should be read at one go.
constexpr std::size_t kHangingLimbs = 4;

QString lowPart(const LowPart& part, const Wording& wording)
{
    const QString height = wording.units.length(part.height_m);
    const QString limb = limbName(wording, part.limb);
    return part.hangingShoots ? Words::tr("hanging shoots of %1 down to %2").arg(limb, height)
                              : Words::tr("%1 down to %2").arg(limb, height);
}

QString inTheWay(const StripHeadroom& headroom, const Wording& wording)
{
    QStringList parts;
    for (const LowPart& part : headroom.blame) {
        if (static_cast<std::size_t>(parts.size()) == kHangingLimbs)
            break;
        parts << lowPart(part, wording);
    }
    const std::size_t more = headroom.blame.size() - static_cast<std::size_t>(parts.size());
    if (more > 0)
        parts << Words::tr("%1 more").arg(more);
    return listed(wording.units, parts);
}

bool bearsFruit(const model::Tree& tree)
{
    return std::ranges::any_of(tree.limbs, [](const auto& limb) { return limb.fruit_kg > 0.0; });
}

/// What the strip has left when the tree hangs at its heaviest; empty when that is much the same.
QString heaviest(const StripHeadroom& headroom, const Wording& wording)
{
    constexpr double kTold_m = 0.01; // less than a tape shows
    if (!headroom.sagged || !headroom.sagged->height_m || !headroom.height_m ||
        *headroom.height_m - *headroom.sagged->height_m < kTold_m)
        return {};
    const auto& sagged = *headroom.sagged;
    const QString limb = limbName(wording, sagged.lowestLimb);
    const QString height = wording.units.length(*sagged.height_m);
    const bool fruit = bearsFruit(wording.tree);
    if (sagged.shortfall_m <= 0.0)
        return (fruit ? Words::tr("Wet and in fruit it comes down to %1, which is still enough; %2 "
                                  "hangs lowest then.")
                      : Words::tr("When it is wet it comes down to %1, which is still enough; %2 "
                                  "hangs lowest then."))
            .arg(height, limb);
    return (fruit ? Words::tr("Wet and in fruit it comes down to %1, which is %2 short; %3 hangs "
                              "lowest then.")
                  : Words::tr("When it is wet it comes down to %1, which is %2 short; %3 hangs "
                              "lowest then."))
        .arg(height, wording.units.length(sagged.shortfall_m), limb);
}

QString dry(const StripHeadroom& headroom, const Wording& wording)
{
    const QString strip = thingName(wording.garden, headroom.strip);
    if (!headroom.height_m)
        return Words::tr("Nothing overhangs %1.").arg(strip);
    const QString height = wording.units.length(*headroom.height_m);
    const QString needed = wording.units.length(headroom.needed_m);
    if (headroom.shortfall_m <= 0)
        return Words::tr("%1: the lowest part hangs %2 above the ground; %3 is enough.")
            .arg(strip, height, needed);
    QString text = Words::tr("%1: headroom is %2 and %3 is needed, so it is %4 short.")
                       .arg(strip, height, needed, wording.units.length(headroom.shortfall_m));
    if (!headroom.blame.empty())
        text += QLatin1Char(' ') + Words::tr("In the way: %1.").arg(inTheWay(headroom, wording));
    return text;
}

} // namespace

QString useWords(model::StripUse use)
{
    switch (use) {
    case model::StripUse::path:
        return Words::tr("a path");
    case model::StripUse::mower:
        return Words::tr("a walk-behind mower");
    case model::StripUse::rideOnMower:
        return Words::tr("a ride-on mower");
    case model::StripUse::drive:
        return Words::tr("a drive");
    case model::StripUse::seat:
        return Words::tr("a seat");
    case model::StripUse::play:
        return Words::tr("a play area");
    case model::StripUse::road:
        return Words::tr("a road");
    case model::StripUse::sight:
        return Words::tr("a sight triangle");
    case model::StripUse::fireZone:
        return Words::tr("ground in fire country");
    case model::StripUse::other:
        break;
    }
    return Words::tr("this use");
}

QString sentence(const StripHeadroom& headroom, const Wording& wording)
{
    const QString sags = heaviest(headroom, wording);
    return dry(headroom, wording) + (sags.isEmpty() ? sags : QLatin1Char(' ') + sags);
}

} // namespace app
