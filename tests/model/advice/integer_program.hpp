#pragma once

#include "model/advice/search.hpp"

#include <optional>

namespace model::advice {

/// The least leaf of a choice whose goals all add up, by a general-purpose solver of integer
/// programs (GLPK, CPLEX LP format); blank: the solver finds that nothing fits.
/// \throws std::runtime_error  if glpsol can't be run
[[nodiscard]] std::optional<double> solved(const Decisions& decisions);

} // namespace model::advice
