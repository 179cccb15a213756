#pragma once

#include "app/words/wording.hpp"
#include "model/sketch/first_tree.hpp"

namespace app {

/// The habits in plain words, in the order of model::sketch::kHabits.
[[nodiscard]] QStringList habitWords();

/// Why no tree can be sketched from these measures, and what would do.
[[nodiscard]] QString sentence(model::sketch::MeasureFault fault,
                               const model::sketch::FirstMeasures& measures, const Units& units);

/// Gives the limbs of a first tree names that can be found from the ground: how many from below
/// and which way they reach, "limb 3, south-west", their laterals "branch 1 of limb 3".
void nameLimbs(model::Tree& tree);

} // namespace app
