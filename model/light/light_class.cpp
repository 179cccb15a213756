#include "model/light/light_class.hpp"

#include <algorithm>
#include <optional>

namespace model::light {
namespace {

/// The least and the good value of one measure, against what there is.
std::optional<Suits> judged(std::optional<double> least, std::optional<double> good, double value)
{
    if (!least && !good)
        return std::nullopt;
    if (good && value >= *good)
        return Suits::well;
    if (value >= least.value_or(*good)) // only a least value: to reach it is all that is known
        return good ? Suits::barely : Suits::well;
    return Suits::tooDark;
}

} // namespace

LightClass lightClass(double sun_h)
{
    if (sun_h >= 6.0)
        return LightClass::fullSun;
    if (sun_h >= 4.0)
        return LightClass::partSun;
    return sun_h >= 2.0 ? LightClass::partShade : LightClass::fullShade;
}

Suits suits(const Plant& plant, double sun_h, double dli_mol)
{
    const auto byHours = judged(plant.minSun_h, plant.goodSun_h, sun_h);
    const auto byDose = judged(plant.minDli_mol, plant.goodDli_mol, dli_mol);
    if (byHours && byDose)
        return std::max(*byHours, *byDose); // in order from well to too dark
    return byHours ? *byHours : byDose.value_or(Suits::notKnown);
}

} // namespace model::light
