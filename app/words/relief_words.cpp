#include "app/words/relief_words.hpp"

#include <algorithm>

namespace app {
namespace {

using model::CutKind;

/// Less than this share of a limb's strength for each percent of the tree's leaf is not told.
constexpr double kLeastTold = 0.001;
constexpr std::size_t kTold = 2;

QString cutWords(const model::load::CutRelief& cut, const Wording& wording)
{
    const QString name = limbName(wording, wording.tree.limbs.at(cut.cut).id);
    return cut.kind == CutKind::thinning ? Words::tr("thinning the small shoots of %1").arg(name)
                                         : Words::tr("taking off %1").arg(name);
}

QString gains(const model::load::LimbRelief& relief, const Wording& wording)
{
    const Units& units = wording.units;
    const QString strength =
        Words::tr("%1\u00a0% of its strength").arg(units.number(100.0 * relief.utilisation, 1));
    const QString moment = units.moment(relief.moment_Nm);
    constexpr double kLeastGust_m_s = 0.05;
    if (relief.breaking_m_s < kLeastGust_m_s)
        return Words::tr("%1, %2").arg(strength, moment);
    return Words::tr("%1, %2, %3 more gust")
        .arg(strength, moment, units.speedStep(relief.breaking_m_s));
}

} // namespace

std::vector<CutForLimb> bestForLimb(const std::vector<model::load::CutRelief>& reliefs,
                                    std::size_t limb, double allowance)
{
    std::vector<CutForLimb> found;
    for (const auto& cut : reliefs)
        for (const auto& relief : cut.limbs)
            if (relief.limb == limb && relief.utilisation >= kLeastTold &&
                cut.leafShare <= allowance)
                found.push_back({&cut, &relief});
    std::ranges::stable_sort(found, std::ranges::greater(),
                             [](const CutForLimb& each) { return each.relief->utilisation; });
    return found;
}

QString sentence(const std::vector<CutForLimb>& best, const Wording& wording)
{
    if (best.empty())
        return {};
    QStringList told;
    for (std::size_t i = 0; i < std::min(best.size(), kTold); ++i)
        told << Words::tr("%1 (%2)").arg(cutWords(*best[i].cut, wording),
                                         gains(*best[i].relief, wording));
    return Words::tr("For each percent of the tree's leaf it is relieved most by %1.")
        .arg(listed(wording.units, told));
}

} // namespace app
