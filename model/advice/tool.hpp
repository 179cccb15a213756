#pragma once

namespace model::advice {

/// What a cut is made with, from the ground.
enum class Tool {
    secateurs,
    loppers,
    handSaw,
    polePruner, ///< blades on a pole, worked from below
    poleSaw,    ///< a saw on a pole
    outOfReach, ///< nothing held from the ground gets there
};

/// The lightest tool that makes a cut so thick so high, standing on the ground
/// (docs/methods/advice.md, A8).
/// \param diameter_m  of the wood at the cut; 0: this year's shoots
/// \param height_m    above the ground
[[nodiscard]] Tool toolFor(double diameter_m, double height_m);

/// Where the tool's thickness and reach were published.
[[nodiscard]] const char* toolSource(Tool tool);

} // namespace model::advice
