#pragma once

#include "model/advice/piece.hpp"

#include <span>

namespace model::advice {

/// What has to be carried away after a job.
struct Debris {
    double mass_kg{};      ///< all of it, green
    double brush_kg{};     ///< twigs, leaf, crop and wood thinner than kLog_m
    double brush_m3{};     ///< thrown on a heap
    double brushLow_m3{};  ///< if it packs as tightly as the densest published heap
    double brushHigh_m3{}; ///< as loosely as the loosest
    double logs_kg{};
    double logs_m3{}; ///< stacked
    int pieces{};     ///< that come down by themselves; shoots are not counted
};

/// kg green in a cubic metre of brush on a heap, and the share of a stack of logs that is wood
/// (docs/methods/advice.md, A11).
inline constexpr double kBrush_kg_m3 = 70.0;
inline constexpr double kBrushLoose_kg_m3 = 28.0;
inline constexpr double kBrushDense_kg_m3 = 148.0;
inline constexpr double kStacked = 0.65;

[[nodiscard]] Debris debrisOf(std::span<const Piece> pieces);

/// Both together.
[[nodiscard]] Debris operator+(Debris a, const Debris& b);

} // namespace model::advice
