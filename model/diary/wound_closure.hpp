#pragma once

#include "model/garden/place.hpp"
#include "model/garden/tree.hpp"
#include "model/growth/regrowth.hpp"
#include "model/species/species.hpp"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace model::diary {

/// How much narrower a wound grows in one season, m: where the stem thickens modestly, moderately
/// and much (Neely 1979, D4).
inline constexpr double kClosesSlowly_m = 0.0254 * 3.0 / 8.0;
inline constexpr double kCloses_m = 0.0254 * 1.0 / 2.0;
inline constexpr double kClosesFast_m = 0.0254 * 11.0 / 16.0;

/// What a tree is expected to close in a season, m: by the growth class of its species; old and
/// stressed trees slowly.
[[nodiscard]] double closesInASeason_m(const Tree& tree, const Species& species);

/// A wound that the diary keeps, and how far it should have closed.
struct WoundState {
    std::string visit; ///< id of the visit that made it
    std::chrono::year_month_day made;
    Wound wound;
    bool limbIsThere{}; ///< the limb that bears it is still drawn
    double seasons{};   ///< of growth since it was made
    double open_m{};    ///< expected to be left open on the day asked about; 0 once closed
    /// Expected to be closed: fast, as expected, slowly. Blank: twenty years or more.
    growth::GrownOn closes;
    /// Expected closed for a season or more even if slow, and nobody has noted it closed: look
    /// whether it rots.
    bool lingers{};
};

/// Every wound of the visits up to `date`, oldest first (D4).
[[nodiscard]] std::vector<WoundState> wounds(const Tree& tree, const Species& species,
                                             const Place& place, std::chrono::year_month_day date);

} // namespace model::diary
