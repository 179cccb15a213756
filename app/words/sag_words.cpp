#include "app/words/sag_words.hpp"

#include "model/constants.hpp"

#include <algorithm>

namespace app {

QString heaviestWords(const model::Tree& tree)
{
    const bool fruit =
        std::ranges::any_of(tree.limbs, [](const auto& limb) { return limb.fruit_kg > 0.0; });
    return fruit ? Words::tr("wet and in fruit") : Words::tr("wet");
}

QString sentence(const model::load::LimbSag& sag, const std::optional<double>& springBack_m,
                 const Wording& wording)
{
    const Units& units = wording.units;
    const QString limb = limbName(wording, wording.tree.limbs.at(sag.limb).id);
    QString text = Words::tr("%1 sinks by about %2 where it sinks most, %3 along it.")
                       .arg(limb, units.length(sag.most_m), units.roughLength(sag.mostAt_m));
    if (sag.prop_N > 0.0)
        text += QLatin1Char(' ') + Words::tr("Its prop then bears about %1.")
                                       .arg(units.mass(sag.prop_N / model::kGravity_m_s2));
    if (springBack_m && *springBack_m >= kToldSag_m)
        text += QLatin1Char(' ') + Words::tr("After the cuts its tip springs back by about %1.")
                                       .arg(units.length(*springBack_m));
    return text;
}

} // namespace app
