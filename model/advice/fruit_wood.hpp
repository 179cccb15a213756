#pragma once

#include "model/advice/rule.hpp"
#include "model/species/species.hpp"

#include <optional>

namespace model::advice {

/// Share of last year's shoots that a bearing fruit tree is renewed by each year.
struct YearlyRenewal {
    double least{};
    double most{};
};

/// Blank: not a fruit tree, or none that is known (docs/methods/advice.md, A17).
[[nodiscard]] std::optional<YearlyRenewal> yearlyRenewal(const Species& species);

/// The same as something to be told with the cuts.
[[nodiscard]] std::optional<Finding> renewalNote(const Species& species);

} // namespace model::advice
