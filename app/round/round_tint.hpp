#pragma once

#include "app/drawing/drawing_palette.hpp"
#include "app/round/round_scene.hpp"

namespace app {

/// How a part is seen.
struct RoundLook {
    QColor colour; ///< alpha below 1: what is behind it shows through
    bool castsShadow{true};
    bool takesShadow{
        true};         ///< false: its colour says something, and is to be read in the shade too
    bool onlyShadow{}; ///< not seen itself
    friend bool operator==(const RoundLook&, const RoundLook&) = default;
};

/// What is known of a part's limb, and of the day.
struct RoundState {
    std::optional<LimbShade> load; ///< of the limb; blank: not worked out
    bool chosen{};                 ///< the limb is
    bool isMade{};                 ///< the cuts are
    double leafShare{1.0};         ///< of the chosen tree
};

[[nodiscard]] RoundLook roundLook(RoundKind kind, const RoundState& state,
                                  const DrawingPalette& colours);

} // namespace app
