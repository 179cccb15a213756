#pragma once

namespace model::light {

/// Direct beam from which the sun counts as shining, W/m2 (World Meteorological Organization,
/// Guide to Instruments and Methods of Observation, WMO-No. 8, sunshine duration).
inline constexpr double kSunshine_W_m2 = 120.0;

/// Linke turbidity of ordinary clear air; 2 is very clean and cold, 5 hazy.
inline constexpr double kUsualTurbidity = 3.0;

/// Light of a cloudless sky.
struct ClearSky {
    double beam_W_m2{};    ///< from the sun's disc, on a surface that faces it
    double diffuse_W_m2{}; ///< from the rest of the sky, on level ground
    double global_W_m2{};  ///< both, on level ground
};

/// Sun's radiation outside the air on a surface that faces it, W/m2 (docs/methods/light.md, L6).
/// \param dayOfYear  1..366
[[nodiscard]] double extraterrestrial_W_m2(int dayOfYear);

/// How much more air the beam crosses than from the zenith, at sea level (L7). From -1 degree up.
[[nodiscard]] double airMass(double elevation_deg);

/// What a clear sky's light hangs on.
struct SunlitAir {
    double extraterrestrial_W_m2{};
    double sine{};       ///< of the sun's elevation, > 0
    double airMass{};    ///< by the place's own pressure
    double altitude_m{}; ///< above the sea
    double turbidity{kUsualTurbidity};
};
/// Clear sky of Ineichen & Perez 2002 (L8).
[[nodiscard]] ClearSky clearSky(const SunlitAir& air);

/// The same for a day and a place; dark when the sun is down.
/// \param elevation_deg  without refraction
/// \param altitude_m     above the sea
[[nodiscard]] ClearSky clearSky(double elevation_deg, int dayOfYear, double altitude_m,
                                double turbidity = kUsualTurbidity);

} // namespace model::light
