#include "app/words/breaking_words.hpp"

#include "app/words/wind_words.hpp"

#include <algorithm>
#include <numeric>

namespace app {
namespace {

/// Fewer draws than this that could stand through ordinary gusts: the drawing is doubtful.
constexpr double kDoubtful = 0.5;

/// Below this a gust is no wind at all: the limb's weight and crop do it.
constexpr double kStill_m_s = 0.5;

/// A share of the range smaller than this is not worth a walk with the tape. Assumed.
constexpr double kWorthMeasuring = 0.10;

using model::load::BreakingGust;
using model::load::Unknown;

double shareOf(const BreakingGust& gust, Unknown what)
{
    return gust.share[static_cast<std::size_t>(what)];
}

QString unknownWords(Unknown what)
{
    switch (what) {
    case Unknown::strength:
        return Words::tr("how strong its wood and its union are");
    case Unknown::diameter:
        return Words::tr("how thick it is");
    case Unknown::leaf:
        return Words::tr("how much leaf it bears");
    case Unknown::drag:
        return Words::tr("how hard wind pulls at its leaves");
    case Unknown::wind:
        break;
    }
    return Words::tr("how much of the forecast's gust gets here");
}

QString gustWithForce(double gust_m_s, const Units& units)
{
    const int force = beaufortOfGust(gust_m_s);
    return Words::tr("%1, as force %2 (%3) brings")
        .arg(units.speed(gust_m_s))
        .arg(force)
        .arg(beaufortWord(force));
}

bool girthIsWorthTaping(const BreakingGust& gust, const model::Limb& limb)
{
    return gust.hasStrength && limb.measured != model::Measured::taped &&
           shareOf(gust, Unknown::diameter) >= kWorthMeasuring;
}

QString oneInTen(const model::load::BreakingGust& gust, const Units& units)
{
    if (gust.p10_m_s < kStill_m_s)
        return Words::tr("one in ten such limbs in still air, by weight alone");
    return Words::tr("one in ten such limbs at %1").arg(units.speed(gust.p10_m_s));
}

QString range(const model::load::BreakingGust& gust, const Units& units)
{
    const QString likely = gustWithForce(gust.p50_m_s, units);
    const QString early = oneInTen(gust, units);
    if (gust.p50_m_s < kStill_m_s)
        return Words::tr("Likely to break in still air, by weight alone.");
    if (gust.p50_m_s >= model::load::kGreatestGust_m_s)
        return Words::tr("Likely to break only beyond any gust that a forecast names (%1).")
            .arg(early);
    if (gust.p90_m_s >= model::load::kGreatestGust_m_s)
        return Words::tr("Likely to break in a gust of about %1; %2.").arg(likely, early);
    return Words::tr("Likely to break in a gust of about %1; %2; nine in ten by %3.")
        .arg(likely, early, units.speed(gust.p90_m_s));
}

} // namespace

QString sentence(const model::load::BreakingGust& gust, const Wording& wording)
{
    if (!gust.hasStrength)
        return {};
    QString text = range(gust, wording.units);
    if (gust.stood < kDoubtful)
        text += QLatin1Char(' ') +
                (worthMeasuring(gust) == model::load::Unknown::diameter
                     ? Words::tr("As drawn it would hardly stand through an ordinary year: tape "
                                 "its girth again.")
                     : Words::tr("As drawn it would hardly stand through an ordinary year: look "
                                 "again how far its leaves reach."));
    return text;
}

QString shortRange(const model::load::BreakingGust& gust, const Units& units)
{
    if (!gust.hasStrength)
        return {};
    if (gust.p50_m_s < kStill_m_s || gust.p50_m_s >= model::load::kGreatestGust_m_s)
        return range(gust, units);
    const QString likely = units.speed(gust.p50_m_s);
    const QString early = oneInTen(gust, units);
    if (gust.p90_m_s >= model::load::kGreatestGust_m_s)
        return Words::tr("Likely to break at about %1; %2.").arg(likely, early);
    return Words::tr("Likely to break at about %1; %2; nine in ten by %3.")
        .arg(likely, early, units.speed(gust.p90_m_s));
}

QString rangeCauses(const BreakingGust& gust, const Wording& wording)
{
    std::array<std::size_t, model::load::kUnknowns> order{};
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, std::greater{},
                             [&gust](std::size_t each) { return gust.share[each]; });
    QStringList parts;
    for (const std::size_t each : order)
        parts << Words::tr("%1 (%2)").arg(unknownWords(static_cast<Unknown>(each)),
                                          wording.units.share(gust.share[each]));
    return Words::tr("The range is as wide as it is because nobody knows well %1.")
        .arg(listed(wording.units, parts));
}

QString whatToMeasure(const BreakingGust& gust, const Wording& wording)
{
    const auto& limb = wording.tree.limbs.at(gust.limb);
    if (girthIsWorthTaping(gust, limb))
        return Words::tr("Of what you can measure, its girth would narrow the range most: put a "
                         "tape round it.");
    if (worthMeasuring(gust) == Unknown::leaf && shareOf(gust, Unknown::leaf) >= kWorthMeasuring)
        return Words::tr("Of what you can measure, its leaf would narrow the range most: look "
                         "again how far it reaches and how dense it is.");
    return Words::tr("Nothing that you can measure would narrow the range much.");
}

QString girthsToTape(const std::vector<BreakingGust>& gusts, const std::vector<std::size_t>& limbs,
                     const Wording& wording)
{
    QStringList names;
    for (const std::size_t index : limbs)
        if (girthIsWorthTaping(gusts.at(index), wording.tree.limbs.at(index)))
            names << limbName(wording, wording.tree.limbs.at(index).id);
    if (names.isEmpty())
        return {};
    return Words::tr("To narrow these ranges, first put a tape round %1.")
        .arg(listed(wording.units, names));
}

} // namespace app
