#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

/// Words of weather forecasts and the gusts that stand behind them (L40, L41).
namespace model::load {

inline constexpr int kGreatestForce = 12;

/// Least mean wind of each Beaufort force, m/s: 10 minutes at 10 m over open ground (L40).
inline constexpr std::array<double, kGreatestForce + 1> kLeastMeanOfForce_m_s{
    0.0, 0.3, 1.6, 3.4, 5.5, 8.0, 10.8, 13.9, 17.2, 20.8, 24.5, 28.5, 32.7};

/// 3-second gust over 10-minute mean wind in open country (L40).
inline constexpr double kGustOverMean = 1.53 / 1.06;

/// The mean wind that the scale gives a force by its own formula, m/s (L40).
/// \throws std::domain_error  unless 0 <= force <= 12
[[nodiscard]] double meanOfForce_m_s(int force);

/// The force that a mean wind is called, 0 to 12.
/// \throws std::domain_error  on a negative wind
[[nodiscard]] int forceOfMean(double mean_m_s);

/// The 3-second gust to expect when a mean wind of this force is forecast, m/s.
/// \throws std::domain_error  unless 0 <= force <= 12
[[nodiscard]] double gustOfForce_m_s(int force);

/// The force of the mean wind whose gusts are as strong as this, 0 to 12: what the forecast would
/// call the weather that brings it.
/// \throws std::domain_error  on a negative gust
[[nodiscard]] int forceBringing(double gust_m_s);

/// What a forecast said.
enum class Said {
    meanForce, ///< a force, which is one of mean wind: gusts are stronger
    gustForce, ///< gusts of a force: their own speed is on the scale
    warning,   ///< a warning with a gust of its own
};

/// A forecast's words as a gust.
struct ForecastGust {
    Said said{};
    double gust_m_s{}; ///< 3-second gust at 10 m over open ground; of a warning: the least
    int force{};       ///< of the mean wind that brings it; for gusts of a force, that force
    std::string source;
    friend bool operator==(const ForecastGust&, const ForecastGust&) = default;
};

/// Reads "force 9", "gusts of force 9", "strong gale", "severe thunderstorm" or "severe
/// thunderstorm nz", in capitals or not. Blank: no forecast that is known here.
///
/// National weather services warn of severe thunderstorms from different gusts (L41). Without a
/// nation in the words that of the garden's time zone counts, and the United States' if it is none
/// of those known.
/// \param timeZone  IANA name, or empty
[[nodiscard]] std::optional<ForecastGust> forecastGust(std::string_view words,
                                                       std::string_view timeZone = {});

} // namespace model::load
