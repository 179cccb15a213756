#pragma once

#include "model/garden/garden.hpp"
#include "model/growth/shoot_rate.hpp"
#include "model/species/species.hpp"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace model::growth {

/// When the headroom over one strip is lost again.
struct Regrowth {
    std::string strip; ///< id
    std::string limb;  ///< id of the one that comes down into it first
    double height_m{}; ///< headroom on the day reckoned from
    double spare_m{};  ///< of it, beyond what is needed; 0 or less: lost already
    /// Nine in ten such trees hold it at least till `early`, half of them till `middle`, one in ten
    /// till `late`. Blank: twenty years or more.
    std::optional<std::chrono::year_month_day> early;
    std::optional<std::chrono::year_month_day> middle;
    std::optional<std::chrono::year_month_day> late;
    /// Cuts back to this height that a year's growth asks for, as a mean; blank without spare
    /// headroom, for then any growth is too much.
    std::optional<double> cutsAYear;
};

/// The days on which shoots have grown so far: nine in ten trees not before `early`, half of them
/// by `middle`, nine in ten by `late`. Blank: twenty years or more.
struct GrownOn {
    std::optional<std::chrono::year_month_day> early;
    std::optional<std::chrono::year_month_day> middle;
    std::optional<std::chrono::year_month_day> late;
};

/// \param shoot_m  how far, >= 0; may be infinite
/// \param seen  the tree's own days of leaf
[[nodiscard]] GrownOn grownOn(double shoot_m, const ShootRate& rate, ShootPattern pattern,
                              const Place& place, std::chrono::year_month_day from,
                              const LeafDates& seen = {});

/// For every strip that the tree overhangs within reach of its growth, from how the tree stands on
/// `from` (G4).
/// \param standing  as it hangs at its heaviest, when headroom is least (load::sagUnder())
/// \param rate  from shootRate
[[nodiscard]] std::vector<Regrowth> regrowth(const Garden& garden, const Tree& standing,
                                             const Species& species, const ShootRate& rate,
                                             std::chrono::year_month_day from);

} // namespace model::growth
