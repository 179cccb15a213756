#pragma once

#include "model/advice/options.hpp"
#include "model/advice/rule.hpp"
#include "model/garden/tree.hpp"
#include "model/species/species.hpp"

#include <optional>
#include <string_view>
#include <vector>

namespace model::advice {

/// Share of last year's shoots that a bearing fruit tree is renewed by each year.
struct YearlyRenewal {
    double least{};
    double most{};
};

/// Blank: not a fruit tree, or none that is known (docs/methods/advice.md, A17).
[[nodiscard]] std::optional<YearlyRenewal> yearlyRenewal(std::string_view latin);

/// The same as something to be told with the cuts.
[[nodiscard]] std::optional<Finding> renewalNote(const Species& species);

/// How the small shoots of the species' limbs are cut: fruit trees are renewed by their usual
/// share, others thinned.
[[nodiscard]] ShootCuts shootCuts(const Species& species);

/// What is to be said of a renewal by this share, if it is outside the usual.
[[nodiscard]] std::optional<Finding> renewalShareNote(const Species& species, const Cut& cut);

/// Upright limbs that fill the middle of the crown: they rise by 60 degrees or more on the whole
/// and end within a third of the crown's reach of the stem. The stem, and limbs that carry others
/// out of the middle, are none. Indices into Tree::limbs (A17).
[[nodiscard]] std::vector<std::size_t> middleLimbs(const Tree& tree);

} // namespace model::advice
