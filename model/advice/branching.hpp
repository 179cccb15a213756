#pragma once

#include "model/advice/node_bound.hpp"

#include <optional>

namespace model::advice {

/// A set of choices in two, by what one limb may do.
struct Halves {
    Allowed likelier; ///< that which the blend has more of
    Allowed rest;
};

/// Splits by the limb that the blend is least sure of, at the mean of its leaf; if it is sure of
/// all, by the limb that matters most, into what the choice does and the rest. Nothing if there is
/// but one choice.
[[nodiscard]] std::optional<Halves> halvesOf(const Allowed& allowed, const NodeBound& found,
                                             const Bounder& bounder);

} // namespace model::advice
