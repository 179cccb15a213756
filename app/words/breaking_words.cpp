#include "app/words/breaking_words.hpp"

namespace app {
namespace {

/// Fewer draws than this that could stand through ordinary gusts: the drawing is doubtful.
constexpr double kDoubtful = 0.5;

/// Below this a gust is no wind at all: the limb's weight and crop do it.
constexpr double kStill_m_s = 0.5;

QString oneInTen(const model::load::BreakingGust& gust, const Units& units)
{
    if (gust.p10_m_s < kStill_m_s)
        return Words::tr("one in ten such limbs in still air, by weight alone");
    return Words::tr("one in ten such limbs at %1").arg(units.speed(gust.p10_m_s));
}

QString range(const model::load::BreakingGust& gust, const Units& units)
{
    const QString likely = units.speed(gust.p50_m_s);
    const QString early = oneInTen(gust, units);
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

} // namespace app
