#pragma once

#include "app/words/wording.hpp"
#include "model/load/explain.hpp"

namespace app {

/// The parts that the chain of a limb is read in.
enum class StepPart { wind, weight, stress, strength };

[[nodiscard]] StepPart partOf(model::load::Quantity quantity);

/// "The wind", "The weight"...
[[nodiscard]] QString partName(StepPart part);

/// What a step gives, and from which steps before it: "wind force: air pressure x drag coefficient
/// x outline".
[[nodiscard]] QString stepName(model::load::Quantity quantity);

/// Its value with the unit that the person reads.
[[nodiscard]] QString stepValue(const model::load::Step& step, const Units& units);

} // namespace app
