#pragma once

#include "model/load/load_case.hpp"

namespace model::load {

/// Shoots thinner than this bend away instead of breaking and are not checked (L20).
inline constexpr double kLeastChecked_m = 0.02;

/// The place along a limb, and the wind, that ask most of it.
struct Governing {
    std::size_t piece{};
    double along_m{}; ///< from the start of that piece
    WindFrom wind{};
    double stress_Pa{};
    double utilisation{}; ///< of sound wood there, even where it has no strength
    bool hasStrength{true};
    Beyond beyond{}; ///< the loads beyond that place, in that wind
    /// Below 1: the weight alone governs, for as long as it hangs, with this share of the strength
    double duration{1.0};
};

/// Every start of a piece in all directions, then, in the worst direction, the inside of the pieces
/// on both sides of the worst (L21). A place without strength asks more than any with.
/// \param windScale  how much stronger the drag is than in `load`
[[nodiscard]] Governing governing(const LoadCase& load, std::size_t limb, double windScale = 1.0);

/// The worse of two: weight and wind together, at the strength of a gust; and weight alone, at the
/// strength for as long as it hangs (L27).
[[nodiscard]] Governing governingForLong(const LoadCase& load, std::size_t limb);

} // namespace model::load
