#include "app/report/light_text.hpp"

#include "app/words/light_words.hpp"
#include "model/light/sample_day.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

using model::SurfaceYear;
using model::light::MonthLight;

constexpr std::size_t kCuts = 5;
constexpr int kBar = 12; ///< letters of a full bar

/// A bar as long as the open sky's sun, filled as far as it arrives.
QString bar(double here, double open, double longest)
{
    const auto letters = [longest](double hours) {
        return longest > 0.0 ? static_cast<int>(std::lround(kBar * hours / longest)) : 0;
    };
    const int filled = letters(here);
    return QString(filled, QChar(0x2588)) +
           QString(std::max(0, letters(open) - filled), QChar(0x2591));
}

QString row(const QString& name, const QStringList& figures)
{
    QString line = QStringLiteral("  ") + name.leftJustified(11);
    for (const auto& figure : figures)
        line += figure.rightJustified(7);
    return line;
}

/// The month's light in the gardeners' word for it and, where plants grow, what that is to theirs.
QString monthWords(const MonthLight& month, bool plantsGrow, const model::Plant* plant)
{
    const QString light = lightClassWords(model::light::lightClass(month.clearSun_h));
    const auto suits = plant && plantsGrow
                           ? model::light::suits(*plant, month.clearSun_h, month.standing.dli_mol)
                           : model::light::Suits::notKnown;
    const QString what = suitsWords(suits);
    return what.isEmpty() ? light : Words::tr("%1, %2", "full sun, enough").arg(light, what);
}

void addMonths(TextPage& page, const SurfaceYear& surface, std::optional<std::chrono::month> only,
               const model::Garden& garden, const model::Plant* plant, const Units& units)
{
    double longest = 0.0;
    for (const MonthLight& month : surface.light.months)
        longest = std::max(longest, month.open.sun_h);
    page.gap();
    page.row(
        row({}, {Words::tr("sun, h"), Words::tr("open"), Words::tr("mol"), Words::tr("open")}));
    for (unsigned m = 1; m <= 12; ++m) {
        if (only && *only != std::chrono::month{m})
            continue;
        const MonthLight& month = surface.light.months[m - 1];
        page.row(row(units.month(static_cast<int>(m)),
                     {units.locale().toString(month.standing.sun_h, 'f', 1),
                      units.locale().toString(month.open.sun_h, 'f', 1),
                      units.locale().toString(month.standing.dli_mol, 'f', 1),
                      units.locale().toString(month.open.dli_mol, 'f', 1)}) +
                 QStringLiteral("  ") +
                 bar(month.standing.sun_h, month.open.sun_h, longest).leftJustified(kBar + 2) +
                 monthWords(month,
                            model::light::inGrowingSeason(std::chrono::month{m}, garden.place),
                            plant));
    }
    page.gap();
}

void addTaken(TextPage& page, const MonthLight& of, const QString& when,
              const model::Garden& garden, const Units& units)
{
    const double walls = of.open.sun_h - of.withoutTrees.sun_h;
    const auto trees = takenSentences(of, garden, units);
    if (walls < model::kNotableSun_h && trees.isEmpty()) {
        page.paragraph(Words::tr("No tree and no wall takes light worth telling."));
        return;
    }
    page.paragraph(Words::tr("Who takes it, mean day of %1:").arg(when));
    if (walls >= model::kNotableSun_h)
        page.bullet(Words::tr("Walls, fences and other plantings take %1 of sun.")
                        .arg(timeWords(walls, units)));
    for (const auto& sentence : trees)
        page.bullet(sentence);
}

void addCuts(TextPage& page, const SurfaceYear& surface, const model::Garden& garden,
             const Units& units)
{
    if (surface.cuts.empty())
        return;
    page.gap();
    page.paragraph(Words::tr("What a cut alone would give back, the cheapest hour of sun first:"));
    for (std::size_t i = 0; i < std::min(kCuts, surface.cuts.size()); ++i)
        page.numbered(static_cast<int>(i) + 1, cutSentence(surface.cuts[i], garden, units));
    if (surface.cuts.size() > kCuts)
        page.paragraph(Words::tr("Cuts that cost more leaf for an hour of sun are left out here; "
                                 "--json has them all."));
}

const model::Plant* plantOf(const SurfaceYear& surface, const model::Garden& garden,
                            const model::Tables& tables)
{
    const auto planting =
        std::ranges::find(garden.plantings, surface.light.planting, &model::Planting::id);
    return planting == garden.plantings.end() ? nullptr : findPlant(tables, planting->plant);
}

} // namespace

void addLightYear(TextPage& page, const model::LightYear& year,
                  std::optional<std::chrono::month> month, const model::Garden& garden,
                  const model::Tables& tables, const Units& units)
{
    const QString when = month ? units.month(static_cast<int>(unsigned(*month)))
                               : growingMonthsWords(garden.place, units);
    page.title(Words::tr("Light on the plantings, %1").arg(static_cast<int>(year.year)));
    page.paragraph(weatherSentence(year.weather, units));
    for (const SurfaceYear& surface : year.surfaces) {
        page.heading(capitalised(surfaceName(surface.light, garden)));
        page.paragraph(seasonSentence(surface.light, garden, tables, units));
        addMonths(page, surface, month, garden, plantOf(surface, garden, tables), units);
        addTaken(page,
                 month ? surface.light.months[unsigned(*month) - 1] : surface.light.growingSeason,
                 when, garden, units);
        addCuts(page, surface, garden, units);
    }
    if (std::ranges::any_of(year.surfaces, [](const auto& s) { return !s.cuts.empty(); })) {
        page.gap();
        page.paragraph(Words::tr("Each cut is told by itself, for the mean day of %1. How much "
                                 "may go at once, where and by whom is what \"suggest\" answers.")
                           .arg(growingMonthsWords(garden.place, units)));
    }
}

} // namespace app
