#pragma once

#include "model/headroom/lowest_place.hpp"
#include "model/species/species.hpp"

#include <optional>
#include <string>

namespace model {

/// Why the headroom under one tree over one strip is what it is.
struct StripExplanation {
    std::string tree;  ///< id
    std::string strip; ///< id
    double needed_m{};
    std::string neededSource; ///< who asks for it; empty: the gardener
    std::optional<headroom::LowestPlace> drawn;
    /// The same when the tree is wet, in leaf and in fruit; blank: nothing overhangs the strip
    std::optional<headroom::LowestPlace> heaviest;
    double rain_kg{};  ///< on the whole tree then
    double fruit_kg{}; ///< on the whole tree then
    double sinks_m{};  ///< then, the place of heaviest's limb that sinks most

    /// What is missing, of the lower of the two; 0 when there is enough.
    [[nodiscard]] double shortfall_m() const;
};

/// \pre  validate(garden, tables) found no fault
/// \throws std::out_of_range  if there is no such tree, species or strip
[[nodiscard]] StripExplanation explainStrip(const Garden& garden, const Tables& tables,
                                            const std::string& tree, const std::string& strip);

} // namespace model
