#pragma once

#include <optional>

/// The height of a tree from the ground, by what every shed holds (docs/methods/sketch.md, K4).
namespace model::sketch {

/// An upright stick and its shadow beside the tree's, on the same level ground at the same time.
struct Shadows {
    double stick_m{};       ///< > 0
    double stickShadow_m{}; ///< > 0
    double treeShadow_m{};  ///< from the middle of the stem, > 0
};
/// Similar triangles (closed form). Blank: a measure that can't be.
[[nodiscard]] std::optional<double> height_m(const Shadows& shadows);

/// The angle from the level up to the top of the tree.
struct Sighting {
    double angle_deg{};  ///< over 0, under 85
    double distance_m{}; ///< level, from the eye to the stem, > 0
    double eye_m{};      ///< the eye above the ground at the stem, >= 0
};
/// Distance times tangent, and the eye's height (closed form). Blank: a measure that can't be.
[[nodiscard]] std::optional<double> height_m(const Sighting& sighting);

} // namespace model::sketch
