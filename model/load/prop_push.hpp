#pragma once

#include "model/load/bending.hpp"

namespace model::load {

/// How far the place of each prop rises for a push of 1 N at that of each other, m/N, bending being
/// small: the force method (L30).
[[nodiscard]] std::vector<std::vector<double>> propGive(const ElasticTree& tree);

/// How far the place of each prop rises when the moments in the limbs change, without any push, m.
[[nodiscard]] std::vector<double> propRises_m(const ElasticTree& tree,
                                              const TreeSections& change_Nm);

/// The pushes that keep places which would rise by `free_m` without them (sink, where it is below
/// 0) from sinking: none pulls, and where one pushes the place neither rises nor sinks.
[[nodiscard]] std::vector<double> pushesFor(const std::vector<std::vector<double>>& give,
                                            const std::vector<double>& free_m);

} // namespace model::load
