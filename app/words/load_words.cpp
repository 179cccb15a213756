#include "app/words/load_words.hpp"

namespace app {
namespace {

/// Closer than this to a limb's union is at the union: its collar alone is longer.
constexpr double kAtUnion_m = 0.05;

QString place(const model::load::LimbLoad& load, const Wording& wording)
{
    const model::Limb& limb = wording.tree.limbs.at(load.limb);
    if (load.governingAt_m >= kAtUnion_m)
        return Words::tr("%1 along it").arg(wording.units.roughLength(load.governingAt_m));
    return limb.parent ? Words::tr("at its union") : Words::tr("at the ground");
}

QString windOrWeight(const model::load::LimbLoad& load)
{
    if (load.duration < 1.0)
        return Words::tr("under its weight alone, for as long as it hangs");
    if (load.windMoment_Nm <= 0)
        return Words::tr("by its own weight");
    return Words::tr("with the wind from the %1").arg(Units::bearing(load.governingBearing_deg));
}

} // namespace

QString sentence(const model::load::LimbLoad& load, const Wording& wording)
{
    const QString limb = limbName(wording, wording.tree.limbs.at(load.limb).id);
    if (!load.hasStrength)
        return Words::tr("%1 is dead or cracked wood: it is given no strength at all, and can come "
                         "down in any wind or none. It is work for a professional, or to be "
                         "removed; keep from under it.")
            .arg(limb);
    return Words::tr("%1: %2 of its expected strength %3; bending moment %4 where it is %5 thick, "
                     "%6.")
        .arg(limb, wording.units.share(load.utilisation), windOrWeight(load),
             wording.units.moment(load.moment_Nm), wording.units.diameter(load.diameter_m),
             place(load, wording));
}

} // namespace app
