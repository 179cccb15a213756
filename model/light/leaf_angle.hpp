#pragma once

namespace model::light {

/// Campbell's x of leaves when a species' own is not known: mean leaf angle 36.6 degrees, the
/// middle of 138 woody species (Chianucci et al. 2018).
inline constexpr double kUsualLeafAngleX = 2.2;

/// Mean area that leaves of unit one-sided area turn towards a beam (docs/methods/light.md, L10).
/// \param x  width over height of the ellipsoid that the leaves' directions follow: 1 all
///           directions alike, above 1 rather level, below 1 rather upright
/// \throws std::domain_error  unless x > 0
[[nodiscard]] double leafProjection(double x, double zenith_deg);

/// Mean inclination of the leaves from the level, degrees (L11).
[[nodiscard]] double meanLeafAngle_deg(double x);

} // namespace model::light
