#include "app/words/light_words.hpp"

#include "model/light/sample_day.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

using model::CutKind;
using model::light::DayLight;
using model::light::LightClass;
using model::light::LightTaken;
using model::light::MonthLight;
using model::light::Suits;
using model::light::SurfaceLight;

constexpr std::size_t kShadingLimbs = 3;

template <class Things>
const auto* withId(const Things& things, const std::string& id)
{
    const auto found =
        std::ranges::find_if(things, [&](const auto& each) { return each.id == id; });
    return found == things.end() ? nullptr : &*found;
}

QString both(const DayLight& light, const Units& units)
{
    return Words::tr("%1 of sun and %2")
        .arg(timeWords(light.sun_h, units), molWords(light.dli_mol, units));
}

QString limbTitle(const model::Limb& limb)
{
    return Words::tr("“%1”").arg(QString::fromStdString(limb.name.empty() ? limb.id : limb.name));
}

/// The limbs that take most by themselves, with all that grows from them; the trunk is the tree.
QStringList greatestLimbs(const std::vector<LightTaken>& limbs, const model::Tree& tree,
                          const Units& units)
{
    std::vector<std::size_t> order;
    for (std::size_t limb = 0; limb < limbs.size(); ++limb)
        if (tree.limbs[limb].parent && model::isNotable(limbs[limb].removal))
            order.push_back(limb);
    std::ranges::stable_sort(order, std::ranges::greater{},
                             [&](std::size_t limb) { return limbs[limb].removal.sun_h; });
    if (order.size() > kShadingLimbs)
        order.resize(kShadingLimbs);
    QStringList parts;
    for (const auto limb : order)
        parts << Words::tr("%1 %2").arg(limbTitle(tree.limbs[limb]),
                                        timeWords(limbs[limb].removal.sun_h, units));
    return parts;
}

QString verdict(const SurfaceLight& light, const model::Plant& plant, const Units& units)
{
    const QString name = commonName(plant);
    switch (light.suits) {
    case Suits::well:
        return Words::tr("That is enough for %1.").arg(name);
    case Suits::barely:
        if (plant.goodSun_h && light.clearSun_h < *plant.goodSun_h)
            return Words::tr("%1 lives with that, and does better with %2.")
                .arg(capitalised(name), units.hours(*plant.goodSun_h));
        return Words::tr("%1 lives with that, and does better with %2 a day.")
            .arg(capitalised(name), molWords(plant.goodDli_mol.value_or(0.0), units));
    case Suits::tooDark:
        if (plant.minSun_h && light.clearSun_h < *plant.minSun_h)
            return Words::tr("That is less than the %2 that %1 needs.")
                .arg(name, units.hours(*plant.minSun_h));
        return Words::tr("That is less than the %2 a day that %1 needs.")
            .arg(name, molWords(plant.minDli_mol.value_or(0.0), units));
    case Suits::notKnown:
        break;
    }
    return Words::tr("How much light %1 needs is not known here.").arg(name);
}

QString action(const model::Cut& cut, const QString& limb, const Units& units)
{
    switch (cut.kind) {
    case CutKind::removal:
        return Words::tr("Take off %1").arg(limb);
    case CutKind::reduction:
        return Words::tr("Shorten %1 to %2 from its union").arg(limb, units.length(cut.at_m));
    case CutKind::thinning:
        return Words::tr("Thin the small shoots of %1 by %2")
            .arg(limb, units.share(cut.share.value_or(0.0)));
    case CutKind::renewal:
        return Words::tr("Renew the fruiting wood of %1 by %2")
            .arg(limb, units.share(cut.share.value_or(0.0)));
    case CutKind::lifting:
        return Words::tr("Shorten the hanging shoots of %1 to %2 above the ground")
            .arg(limb, units.length(cut.height_m.value_or(0.0)));
    }
    return {};
}

} // namespace

QString lightClassWords(LightClass lightClass)
{
    switch (lightClass) {
    case LightClass::fullSun:
        return Words::tr("full sun");
    case LightClass::partSun:
        return Words::tr("part sun");
    case LightClass::partShade:
        return Words::tr("part shade");
    case LightClass::fullShade:
        return Words::tr("full shade");
    }
    return {};
}

QString suitsWords(Suits suits)
{
    switch (suits) {
    case Suits::well:
        return Words::tr("enough");
    case Suits::barely:
        return Words::tr("barely enough");
    case Suits::tooDark:
        return Words::tr("too dark");
    case Suits::notKnown:
        break;
    }
    return {};
}

QString growingMonthsWords(const model::Place& place, const Units& units)
{
    const int first = model::light::inGrowingSeason(std::chrono::July, place) ? 4 : 10;
    return Words::tr("%1 to %2").arg(units.month(first), units.month((first + 4) % 12 + 1));
}

QString partName(const SurfaceLight& light, const model::Garden& garden)
{
    if (light.facing_deg)
        return Words::tr("%1 face").arg(Units::bearing(*light.facing_deg));
    const auto* planting = withId(garden.plantings, light.planting);
    const bool tall = planting && planting->height_m > 0.0 &&
                      (planting->kind == model::PlantingKind::hedge ||
                       planting->kind == model::PlantingKind::shrub);
    return tall ? Words::tr("top") : QString();
}

QString surfaceName(const SurfaceLight& light, const model::Garden& garden)
{
    const QString part = partName(light, garden);
    const QString planting = thingName(garden, light.planting);
    return part.isEmpty() ? planting : Words::tr("%1, its %2").arg(planting, part);
}

QString seasonSentence(const SurfaceLight& light, const model::Garden& garden,
                       const model::Tables& tables, const Units& units)
{
    const auto& season = light.growingSeason;
    QStringList text{Words::tr("%1: %2. Under a clear sky %3 of direct sun a day.")
                         .arg(growingMonthsWords(garden.place, units),
                              lightClassWords(light.lightClass), units.hours(light.clearSun_h))};
    // With clouds the hours are fewer than those that plants' needs are told in.
    if (std::abs(season.standing.sun_h - light.clearSun_h) >= model::kNotableSun_h)
        text << Words::tr("With this garden's clouds %1, of %2 in the open.")
                    .arg(units.hours(season.standing.sun_h), units.hours(season.open.sun_h));
    else
        text << Words::tr("In the open it would be %1.").arg(units.hours(season.open.sun_h));
    text << Words::tr("Light for growth is %1 a day, of %2.")
                .arg(molWords(season.standing.dli_mol, units),
                     molWords(season.open.dli_mol, units));
    const auto* planting = withId(garden.plantings, light.planting);
    if (const auto* plant = planting ? findPlant(tables, planting->plant) : nullptr)
        text << verdict(light, *plant, units);
    return text.join(QLatin1Char(' '));
}

QStringList takenSentences(const MonthLight& of, const model::Garden& garden, const Units& units)
{
    std::vector<std::pair<const LightTaken*, QString>> all;
    const auto add = [&](const LightTaken& taken, const std::string& id, const QString& limbs) {
        if (!model::isNotable(taken.firstIn))
            return;
        QString text = Words::tr("%1: without it %2 a day more.")
                           .arg(thingName(garden, id), both(taken.removal, units));
        if (taken.firstIn.sun_h - taken.removal.sun_h >= model::kNotableSun_h)
            text += QLatin1Char(' ') + Words::tr("By itself it would take %1: the rest lies in "
                                                 "the shade of other trees too.")
                                           .arg(timeWords(taken.firstIn.sun_h, units));
        if (!limbs.isEmpty())
            text += QLatin1Char(' ') + Words::tr("Limb by limb: %1.").arg(limbs);
        all.emplace_back(&taken, text);
    };
    for (std::size_t i = 0; i < of.trees.size(); ++i)
        add(of.trees[i], garden.trees[i].id,
            i < of.limbs.size() ? listed(units, greatestLimbs(of.limbs[i], garden.trees[i], units))
                                : QString());
    for (std::size_t i = 0; i < of.neighbours.size(); ++i)
        add(of.neighbours[i], garden.neighbours[i].id, {});
    std::ranges::stable_sort(all, std::ranges::greater{},
                             [](const auto& each) { return each.first->removal.sun_h; });
    QStringList sentences;
    for (const auto& each : all)
        sentences << each.second;
    return sentences;
}

QString cutSentence(const model::CutLight& cut, const model::Garden& garden, const Units& units)
{
    const auto* tree = withId(garden.trees, cut.tree);
    const auto* limb = tree ? withId(tree->limbs, cut.cut.limb) : nullptr;
    const QString name = limb ? limbTitle(*limb) : QString::fromStdString(cut.cut.limb);
    const QString of = Words::tr("%1 of %2").arg(name, thingName(garden, cut.tree));
    const QString what =
        Words::tr("%1: %2 a day for %3 of its leaf")
            .arg(action(cut.cut, of, units), both(cut.gained, units), units.share(cut.leafShare));
    return Words::tr("%1, %2 of sun for each percent.")
        .arg(what, timeWords(cut.perPercent.sun_h, units));
}

QString cutTitle(const model::CutLight& cut, const model::Garden& garden, const Units& units)
{
    const auto* tree = withId(garden.trees, cut.tree);
    const auto* limb = tree ? withId(tree->limbs, cut.cut.limb) : nullptr;
    const QString name = limb ? limbTitle(*limb) : QString::fromStdString(cut.cut.limb);
    switch (cut.cut.kind) {
    case CutKind::removal:
        return Words::tr("Take off %1").arg(name);
    case CutKind::reduction:
        return Words::tr("Shorten %1 to %2").arg(name, units.length(cut.cut.at_m));
    case CutKind::thinning:
        return Words::tr("Thin %1 by %2").arg(name, units.share(cut.cut.share.value_or(0.0)));
    case CutKind::renewal:
        return Words::tr("Renew %1 by %2").arg(name, units.share(cut.cut.share.value_or(0.0)));
    case CutKind::lifting:
        return Words::tr("Lift %1 to %2").arg(name, units.length(cut.cut.height_m.value_or(0.0)));
    }
    return {};
}

QString weatherSentence(const model::light::Weather& weather, const Units& units)
{
    double sum = 0.0;
    for (const auto& share : weather.sunshineShare) {
        if (!share)
            return Words::tr("Under clear skies all year: no sunshine by month is set for this "
                             "garden.");
        sum += *share / 12.0;
    }
    return Words::tr("With the sunshine that is set for this garden, over the year %1 of what a "
                     "clear sky would give.")
        .arg(units.share(sum));
}

QString timeWords(double hours, const Units& units)
{
    if (std::abs(hours) >= 1.0)
        return units.hours(hours);
    const double minutes = 60.0 * hours;
    return Words::tr("%1\u00a0min").arg(units.number(minutes, std::abs(minutes) < 9.95 ? 1 : 0));
}

QString molWords(double dli_mol, const Units& units)
{
    return Words::tr("%1\u00a0mol").arg(units.number(dli_mol, std::abs(dli_mol) < 10.0 ? 1 : 0));
}

} // namespace app
