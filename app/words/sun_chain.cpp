#include "app/words/chain.hpp"
#include "app/words/light_words.hpp"

#include <algorithm>

namespace app {
namespace {

using model::SunExplanation;

ChainPart skyPart(const SunExplanation& of, const model::Place& place, const Units& units)
{
    ChainPart part{Words::tr("The sky"), {}, {}};
    part.steps = {
        {Words::tr("Latitude"), units.angle(place.latitude_deg), Words::tr("you wrote it down")},
        {Words::tr("Day, from sunrise to sunset"), units.hours(of.dayLength_h),
         QStringLiteral("L1; Meeus 1998")},
        {Words::tr("The sun's height at noon"), units.angle(of.noon_deg),
         QStringLiteral("L1; Meeus 1998")},
        {Words::tr("Direct sun under an open sky: while it is strong enough to count"),
         units.hours(of.sun.openSky_h), QStringLiteral("L8, L9; Ineichen & Perez 2002; WMO-No. 8")},
    };
    return part;
}

/// What walls take, what all trees take together, what is left.
ChainPart shadePart(const SunExplanation& of, const model::Garden& garden, const Units& units)
{
    ChainPart part{Words::tr("What stands in its way"), {}, {}};
    part.steps.push_back({Words::tr("Buildings, fences and hedges take"),
                          units.hours(of.sun.openSky_h - of.sun.withoutTrees_h),
                          QStringLiteral("L16")});
    for (const auto& tree : of.trees)
        part.steps.push_back({Words::tr("%1 alone takes").arg(thingName(garden, tree.tree)),
                              timeWords(tree.lost_h, units), QStringLiteral("L12, L13, L18")});
    part.steps.push_back({Words::tr("All trees together take"),
                          units.hours(of.sun.withoutTrees_h - of.sun.sun_h),
                          QStringLiteral("L12, L13, L18")});
    part.steps.push_back({Words::tr("Direct sun = open sky less what walls and trees take"),
                          units.hours(of.sun.sun_h), QStringLiteral("L18, L19")});
    if (of.trees.size() > 1)
        part.remarks << Words::tr(
            "What each takes alone need not add up: where one is cut, another "
            "may stand behind it.");
    return part;
}

ChainPart leafPart(const model::ShadeExplanation& shade, const model::Garden& garden,
                   const model::Tables& tables, const Units& units)
{
    ChainPart part{Words::tr("The leaf of %1").arg(thingName(garden, shade.tree)), {}, {}};
    const auto& leaf = shade.foliation;
    const double index = leaf.crownArea_m2 > 0.0 ? leaf.leafArea_m2 / leaf.crownArea_m2 : 0.0;
    part.steps = {
        {Words::tr("Leaf area over each area of ground"), units.number(index, 2),
         originWords(QStringLiteral("crown.md, C1"), leaf.laiSource, tables.sources)},
        {Words::tr("Crown on plan"), units.area(leaf.crownArea_m2), Words::tr("from the drawing")},
        {Words::tr("Leaf = index x crown on plan"), units.area(leaf.leafArea_m2),
         QStringLiteral("crown.md, C1")},
        {Words::tr("Share of it that hangs on the day"), units.share(shade.leafShare.value_or(1.0)),
         QStringLiteral("L14; Hopkins 1919, or your own dates")},
    };
    return part;
}

std::string keysOf(const model::CitationsByTopic& sources, const char* topic)
{
    const auto found = sources.find(topic);
    return found == sources.end() || found->second.empty() ? std::string()
                                                           : found->second.front().source;
}

} // namespace

std::optional<ChainPart> needPart(const model::Plant& plant, const model::Tables& tables,
                                  const Units& units)
{
    ChainPart part{Words::tr("What %1 needs").arg(QString::fromStdString(plant.common)), {}, {}};
    if (plant.minSun_h)
        part.steps.push_back(
            {Words::tr("Direct sun a day, at the least"), units.hours(*plant.minSun_h),
             originWords(QStringLiteral("L25"), keysOf(plant.sources, "min_sun"), tables.sources)});
    if (plant.goodSun_h)
        part.steps.push_back({Words::tr("Direct sun a day, to do well"),
                              units.hours(*plant.goodSun_h),
                              originWords(QStringLiteral("L25"), keysOf(plant.sources, "good_sun"),
                                          tables.sources)});
    return part.steps.empty() ? std::nullopt : std::optional(part);
}

Chain chainOf(const SunExplanation& of, const model::Garden& garden, const model::Tables& tables,
              const Units& units)
{
    const QString name = thingName(garden, of.planting);
    Chain chain;
    chain.title = Words::tr("Why so much sun on %1?").arg(name);
    chain.answer = Words::tr("%1: %2 of direct sun on a clear day, of %3 under an open sky.")
                       .arg(name, units.hours(of.sun.sun_h), units.hours(of.sun.openSky_h));
    chain.about = Words::tr("Reckoned for %1, a cloudless day, as a mean over %2 places on it.")
                      .arg(units.date(of.date))
                      .arg(of.sun.points_m.size());
    chain.method = QStringLiteral("docs/methods/light.md");
    chain.parts.push_back(skyPart(of, garden.place, units));
    chain.parts.push_back(shadePart(of, garden, units));
    for (const auto& tree : of.trees)
        if (tree.leafShare && tree.lost_h >= model::kNotableSun_h)
            chain.parts.push_back(leafPart(tree, garden, tables, units));
    const auto planting = std::ranges::find(garden.plantings, of.planting, &model::Planting::id);
    if (planting != garden.plantings.end())
        if (const auto* plant = findPlant(tables, planting->plant))
            if (auto need = needPart(*plant, tables, units))
                chain.parts.push_back(std::move(*need));
    return chain;
}

} // namespace app
