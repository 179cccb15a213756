#include "app/words/sun_words.hpp"

#include "app/words/light_words.hpp"
#include "app/words/wording.hpp"
#include "model/light/sample_day.hpp"

#include <algorithm>

namespace app {
namespace {

using model::light::PlantingSun;

/// Less than this is not told: three minutes, under what a sketch can show.
constexpr double kNotable_h = 0.05;

const model::Planting* plantingWithId(const model::Garden& garden, const std::string& id)
{
    const auto found = std::find_if(garden.plantings.begin(), garden.plantings.end(),
                                    [&](const auto& planting) { return planting.id == id; });
    return found == garden.plantings.end() ? nullptr : &*found;
}

QString needs(const model::Plant& plant, double sun_h, const Units& units)
{
    const QString name = commonName(plant);
    if (plant.minSun_h && sun_h < *plant.minSun_h)
        return Words::tr("That is less than the %2 that %1 needs.")
            .arg(name, units.hours(*plant.minSun_h));
    if (plant.goodSun_h && sun_h < *plant.goodSun_h)
        return Words::tr("%1 does better with %2.")
            .arg(capitalised(name), units.hours(*plant.goodSun_h));
    if (plant.minSun_h || plant.goodSun_h)
        return Words::tr("That is enough for %1.").arg(name);
    return {};
}

/// What a plant needs is told in hours of its growing season: a winter's day says nothing of it.
QString rests(const model::Plant& plant, std::chrono::month month, const model::Place& place,
              const Units& units)
{
    if (!plant.minSun_h && !plant.goodSun_h)
        return {};
    return Words::tr("What %1 needs counts from %2, not in %3.")
        .arg(commonName(plant), growingMonthsWords(place, units),
             units.month(static_cast<int>(unsigned(month))));
}

QString costs(const PlantingSun& sun, const model::Garden& garden, const Units& units)
{
    QStringList parts;
    for (const auto& shade : sun.trees)
        if (shade.lost_h >= kNotable_h)
            parts << Words::tr("%1 %2").arg(thingName(garden, shade.tree),
                                            units.hours(shade.lost_h));
    if (parts.isEmpty())
        return {};
    return Words::tr("Taken by trees: %1.").arg(listed(units, parts));
}

} // namespace

QString sentence(const PlantingSun& sun, const PlantingSun* after, std::chrono::year_month_day date,
                 const model::Garden& garden, const model::Tables& tables, const Units& units)
{
    QStringList text{Words::tr("%1: %2 of direct sun on a clear day, of %3 under an open sky.")
                         .arg(thingName(garden, sun.planting), units.hours(sun.sun_h),
                              units.hours(sun.openSky_h))};
    const model::Planting* planting = plantingWithId(garden, sun.planting);
    if (const auto* plant = planting ? findPlant(tables, planting->plant) : nullptr)
        text << (model::light::inGrowingSeason(date.month(), garden.place)
                     ? needs(*plant, sun.sun_h, units)
                     : rests(*plant, date.month(), garden.place, units));
    text << costs(sun, garden, units);
    if (after && std::abs(after->sun_h - sun.sun_h) >= kNotable_h)
        text << Words::tr("After the cuts: %1.").arg(units.hours(after->sun_h));
    text.removeAll(QString());
    return text.join(QLatin1Char(' '));
}

} // namespace app
