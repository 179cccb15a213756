#include "app/words/breaking_words.hpp"

namespace app {
namespace {

/// Fewer draws than this that could stand through ordinary gusts: the drawing is doubtful.
constexpr double kDoubtful = 0.5;

QString range(const model::load::BreakingGust& gust, const Units& units)
{
    if (gust.p50_m_s >= model::load::kGreatestGust_m_s)
        return Words::tr("Likely to break only beyond any gust that a forecast names (one in ten "
                         "such limbs at %1).")
            .arg(units.speed(gust.p10_m_s));
    if (gust.p90_m_s >= model::load::kGreatestGust_m_s)
        return Words::tr("Likely to break in a gust of about %1; one in ten such limbs at %2.")
            .arg(units.speed(gust.p50_m_s), units.speed(gust.p10_m_s));
    return Words::tr("Likely to break in a gust of about %1; one in ten such limbs at %2, nine in "
                     "ten by %3.")
        .arg(units.speed(gust.p50_m_s), units.speed(gust.p10_m_s), units.speed(gust.p90_m_s));
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
