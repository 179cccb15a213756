#pragma once

#include "model/advice/guideline.hpp"

namespace model::advice {

/// The closest to the targets that the guideline allows: first all get the same share of what they
/// lack, as large as can be; then each in turn gets more if it can (A3).
/// \param targets  left at the ease that was found
[[nodiscard]] Choice closest(const Guideline& guideline, Targets& targets);

} // namespace model::advice
