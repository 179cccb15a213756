#pragma once

#include "model/garden/place.hpp"

namespace model::load {

/// Temperature of the standard atmosphere at sea level: what counts until one is told.
inline constexpr double kStandardAir_C = 15.0;

/// Density of dry air, kg/m3: pressure of the standard atmosphere at `altitude_m` (L1).
[[nodiscard]] double airDensity_kg_m3(double altitude_m, double temperature_C = kStandardAir_C);

/// A surface roughness category of ASCE 7-16, Table 26.11-1.
struct Roughness {
    double power{};            ///< alpha of the 3-second gust profile
    double gradientHeight_m{}; ///< zg
};
inline constexpr Roughness kExposureB{7.0, 365.76};
inline constexpr Roughness kExposureC{9.5, 274.32};
inline constexpr Roughness kExposureD{11.5, 213.36};

/// Velocity pressure exposure coefficient Kz of ASCE 7-16, Table 26.10-1 (L2); level below 15 ft.
[[nodiscard]] double pressureExposure(Roughness roughness, double height_m);

/// How gusts grow with height in one garden: gustShare() for many heights, its constants worked out
/// once. A power law of the height, since every exposure is one or a mean of two.
class GustProfile {
public:
    explicit GustProfile(Exposure exposure);
    [[nodiscard]] double at(double height_m) const;

private:
    double perMetre_{};
    double power_{};
    double raised_m_{}; ///< walls lift the profile
    double highest_m_{};
};

/// Gust at a height in the garden over the 3-second gust at 10 m in open country (L3).
[[nodiscard]] double gustShare(Exposure exposure, double height_m);

} // namespace model::load
