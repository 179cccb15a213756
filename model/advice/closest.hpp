#pragma once

#include "model/advice/guideline.hpp"

#include <optional>

namespace model::advice {

/// What targets can be lacking.
enum class Lack { headroom, relief, light };

/// The closest that was found, and how close that is.
struct Closest {
    Choice choice;
    Ease ease; ///< what the choice reaches
};

/// The closest to the targets that the guideline allows: first all get the same share of what they
/// lack, as large as can be; then each in turn gets more if it can (A3).
/// \param targets  left at the ease that was found
/// \param only     this alone is looked after, what else is lacking may stay so; blank: all
/// \param known    an ease that the guideline allows, to start from; blank: nothing at all
[[nodiscard]] Closest closest(const Guideline& guideline, Targets& targets,
                              std::optional<Lack> only = {},
                              const std::optional<Closest>& known = {});

} // namespace model::advice
