#pragma once

#include <cstddef>
#include <vector>

namespace model::load {

/// `count` points of Sobol's sequence in the unit cube of `dimensions`, the first (all 0) left
/// out. The same on every run. Sobol 1967, with the direction numbers of Joe & Kuo 2008, by
/// Boost.Random.
/// \return point by point, each of `dimensions` numbers in (0, 1)
[[nodiscard]] std::vector<double> sobolPoints(std::size_t count, std::size_t dimensions);

/// The value that a standard normal variable stays below with this probability, 0 < p < 1.
[[nodiscard]] double normalQuantile(double probability);

} // namespace model::load
