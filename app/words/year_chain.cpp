#include "app/words/chain.hpp"
#include "app/words/light_words.hpp"
#include "model/assessment/light_year.hpp"

#include <algorithm>

namespace app {
namespace {

using model::light::MonthLight;

/// The mean day that a figure is of.
struct MeanDay {
    const MonthLight& light;
    QString when; ///< "June", "April to September"
};

MeanDay meanDay(const YearAsked& of, const model::Garden& garden, const Units& units)
{
    if (of.month)
        return {of.surface.months.at(static_cast<std::size_t>(*of.month)),
                units.month(*of.month + 1)};
    return {of.surface.growingSeason, growingMonthsWords(garden.place, units)};
}

ChainPart openPart(const YearAsked& of, const MeanDay& day, const model::Place& place,
                   const Units& units)
{
    ChainPart part{Words::tr("The sky"), {}, {}};
    part.steps = {
        {Words::tr("Latitude"), units.angle(place.latitude_deg), Words::tr("you wrote it down")},
        {Words::tr("Direct sun under the open sky, mean day"), units.hours(day.light.open.sun_h),
         QStringLiteral("L1, L8, L9, L21; Ineichen & Perez 2002; WMO-No. 8; FAO-56")},
        {Words::tr("Light for growth under the open sky"), molWords(day.light.open.dli_mol, units),
         QStringLiteral("L8, L20, L21, L22, L23")},
    };
    part.remarks << weatherSentence(of.weather, units);
    return part;
}

QString titleOf(const auto& thing)
{
    return QString::fromStdString(thing.name.empty() ? thing.id : thing.name);
}

/// What is gained without each tree, the greatest first; those that take nothing are left out.
std::vector<ChainStep> treeSteps(const MonthLight& light, const model::Garden& garden,
                                 const Units& units)
{
    std::vector<std::pair<double, ChainStep>> gained;
    const auto add = [&](const auto& things, const std::vector<model::light::LightTaken>& taken) {
        for (std::size_t i = 0; i < taken.size() && i < things.size(); ++i)
            if (model::isNotable(taken[i].firstIn))
                gained.emplace_back(
                    taken[i].removal.sun_h,
                    ChainStep{Words::tr("Without %1 there would be more").arg(titleOf(things[i])),
                              Words::tr("%1 and %2")
                                  .arg(timeWords(taken[i].removal.sun_h, units),
                                       molWords(taken[i].removal.dli_mol, units)),
                              QStringLiteral("L12, L13, L24")});
    };
    add(garden.trees, light.trees);
    add(garden.neighbours, light.neighbours);
    std::ranges::stable_sort(gained, std::ranges::greater{},
                             [](const auto& entry) { return entry.first; });
    std::vector<ChainStep> steps;
    for (auto& [hours, step] : gained)
        steps.push_back(std::move(step));
    return steps;
}

ChainPart takenPart(const MonthLight& light, const model::Garden& garden, const Units& units)
{
    ChainPart part{Words::tr("What stands in its way"), {}, {}};
    part.steps.push_back({Words::tr("Buildings, fences and hedges take"),
                          timeWords(light.open.sun_h - light.withoutTrees.sun_h, units),
                          QStringLiteral("L16")});
    for (auto& step : treeSteps(light, garden, units))
        part.steps.push_back(std::move(step));
    part.steps.push_back({Words::tr("All trees together take"),
                          timeWords(light.withoutTrees.sun_h - light.standing.sun_h, units),
                          QStringLiteral("L12, L13, L14, L18")});
    part.steps.push_back({Words::tr("Direct sun = open sky less what walls and trees take"),
                          units.hours(light.standing.sun_h), QStringLiteral("L18, L19")});
    part.steps.push_back({Words::tr("Light for growth that is left"),
                          molWords(light.standing.dli_mol, units), QStringLiteral("L22, L23")});
    if (part.steps.size() > 5)
        part.remarks << Words::tr(
            "What each takes alone need not add up: where one is cut, another "
            "may stand behind it.");
    return part;
}

ChainPart gainPart(const GainAsked& of, const Units& units)
{
    const auto& standing = of.surface.growingSeason.standing;
    const auto& gained = of.cut.gained;
    const QString origin = QStringLiteral("L12, L13, L14, L18, L24");
    return {Words::tr("What the cut lets through"),
            {{Words::tr("Direct sun if this alone is cut, the same rays traced again"),
              units.hours(standing.sun_h + gained.sun_h), origin},
             {Words::tr("More than as it stands"), timeWords(gained.sun_h, units), {}},
             {Words::tr("Light for growth then"),
              molWords(standing.dli_mol + gained.dli_mol, units), origin},
             {Words::tr("More than as it stands"), molWords(gained.dli_mol, units), {}},
             {Words::tr("Share of the tree's leaf that it costs"), units.share(of.cut.leafShare),
              QStringLiteral("C2")},
             {Words::tr("Sun for each percent = sun gained / percent of leaf"),
              timeWords(of.cut.perPercent.sun_h, units),
              {}}},
            {}};
}

} // namespace

Chain chainOf(const YearAsked& of, const model::Garden& garden, const model::Tables& tables,
              const Units& units)
{
    const auto day = meanDay(of, garden, units);
    const QString name = capitalised(surfaceName(of.surface, garden));
    Chain chain;
    chain.title = Words::tr("Why so much light, %1?").arg(day.when);
    chain.answer =
        Words::tr("%1: %2 of direct sun a day and %3, of %4 and %5 in the open.")
            .arg(name, units.hours(day.light.standing.sun_h),
                 molWords(day.light.standing.dli_mol, units), units.hours(day.light.open.sun_h),
                 molWords(day.light.open.dli_mol, units));
    chain.about = Words::tr("A mean day of %1, over %2 places on it.")
                      .arg(day.when)
                      .arg(of.surface.points_m.size());
    chain.method = QStringLiteral("docs/methods/light.md");
    chain.parts.push_back(openPart(of, day, garden.place, units));
    chain.parts.push_back(takenPart(day.light, garden, units));
    const auto planting =
        std::ranges::find(garden.plantings, of.surface.planting, &model::Planting::id);
    if (planting != garden.plantings.end())
        if (const auto* plant = findPlant(tables, planting->plant))
            if (auto need = needPart(*plant, tables, units))
                chain.parts.push_back(std::move(*need));
    return chain;
}

Chain chainOf(const GainAsked& of, const model::Garden& garden, const model::Tables& tables,
              const Wording& wording)
{
    const Units& units = wording.units;
    const YearAsked season{of.surface, of.weather, std::nullopt};
    const auto day = meanDay(season, garden, units);
    const auto leaf = chainOf(of.taken, {}, wording, tables.sources);
    Chain chain;
    chain.title = Words::tr("Why so much light for so much leaf?");
    chain.answer = cutSentence(of.cut, garden, units);
    chain.about = Words::tr("%1, on a mean day of %2.")
                      .arg(capitalised(surfaceName(of.surface, garden)), day.when);
    chain.method = QStringLiteral("docs/methods/light.md");
    chain.parts = {openPart(season, day, garden.place, units), takenPart(day.light, garden, units),
                   gainPart(of, units)};
    for (const auto& part : leaf.parts)
        if (chain.parts.size() < 5) // the whole tree's leaf, and what comes off
            chain.parts.push_back(part);
    return chain;
}

} // namespace app
