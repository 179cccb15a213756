#pragma once

#include "model/document/fault.hpp"
#include "model/garden/garden.hpp"
#include "model/species/species.hpp"

#include <vector>

namespace model {

/// Everything that makes a garden unfit to reckon with, in document order; pointers are those of
/// its JSON form. Empty: every function of the model accepts it.
[[nodiscard]] std::vector<Fault> validate(const Garden& garden);

/// What the tables don't know: species and plants that are named and missing.
[[nodiscard]] std::vector<Fault> unknownNames(const Garden& garden, const Tables& tables);

} // namespace model
