#pragma once

#include "model/garden/place.hpp"

#include <array>
#include <optional>

namespace model::light {

/// Photosynthetic light per energy of sunlight, mol per MJ (Faust & Logan 2018, HortScience
/// 53:1250: 45 % of the energy, 4.48 micromol per joule of it).
inline constexpr double kMolPerMJ = 2.018;

/// What clouds leave of the sun: bright sunshine as a share of the time it could shine, for each
/// month from January; blank: a cloudless sky.
struct Weather {
    std::array<std::optional<double>, 12> sunshineShare{};
    friend bool operator==(const Weather&, const Weather&) = default;
};

/// The weather that the gardener has told of a place; cloudless where nothing was.
[[nodiscard]] Weather weatherAt(const Place& place);

/// A mean day's energy on level ground in the open, MJ/m2.
struct DayEnergy {
    double beam_MJ_m2{};
    double diffuse_MJ_m2{};
};

/// Energy outside the air on level ground over a day, MJ/m2 (FAO Irrigation and Drainage Paper
/// 56, eq. 21; docs/methods/light.md, L20).
[[nodiscard]] double extraterrestrial_MJ_m2(double latitude_deg, int dayOfYear);

/// Energy of a mean day of a month with this share of bright sunshine (L21, L22).
/// \throws std::domain_error  unless 0 <= sunshineShare <= 1
[[nodiscard]] DayEnergy cloudyDay(double latitude_deg, int dayOfYear, double sunshineShare);

/// Diffuse share of a month's energy by its clearness, Erbs, Klein & Duffie 1982 (L22).
/// \param sunset_deg  hour angle of sunset in mid-month
[[nodiscard]] double monthlyDiffuseShare(double clearness, double sunset_deg);

} // namespace model::light
