#pragma once

#include "model/advice/rule.hpp"
#include "model/crown/foliage.hpp"
#include "model/garden/garden.hpp"
#include "model/species/species.hpp"

#include <chrono>
#include <string>
#include <vector>

namespace model {

/// Leaf that cuts take from one limb, m2.
struct LeafTaken {
    std::string limb; ///< id
    double before_m2{};
    double after_m2{};
};

/// Why cuts take the share of leaf and the weight that they take, and how much may go.
struct CutExplanation {
    std::string tree;             ///< id
    Foliation foliation;          ///< of the tree as it was sketched
    std::vector<LeafTaken> taken; ///< the limbs that lose any, in Tree::limbs order
    double leaf_m2{};             ///< all of that
    double leafShare{};           ///< of the sketch's leaf
    double wood_kg{};             ///< that comes off, green
    double leafy_kg{};            ///< leaf and twigs
    double fruit_kg{};
    double allowance{}; ///< share of the leaf that may go on the day, after earlier visits
    std::vector<advice::Finding> allowanceReasons;
};

/// \param made  cuts that were made before, in order
/// \param cuts  those to be explained, in order, after them
/// \pre  validate(garden, tables) found no fault
/// \throws std::out_of_range  if there is no such tree or species
/// \throws std::domain_error  if a cut can't be made
[[nodiscard]] CutExplanation explainCuts(const Garden& garden, const Tables& tables,
                                         const std::string& tree, const std::vector<Cut>& made,
                                         const std::vector<Cut>& cuts,
                                         std::chrono::year_month_day date);

} // namespace model
