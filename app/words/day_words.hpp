#pragma once

#include "app/format/units.hpp"
#include "model/advice/day_check.hpp"

namespace app {

/// What a finding about the day means for the work.
[[nodiscard]] QString sentence(const model::advice::DayFinding& finding, const Units& units);

/// The answer in one sentence: leave it for another day, take care, or nothing speaks against it.
[[nodiscard]] QString dayAnswer(const std::vector<model::advice::DayFinding>& findings);

} // namespace app
