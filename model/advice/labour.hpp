#pragma once

#include "model/advice/rule.hpp"

#include <vector>

namespace model::advice {

enum class Who { oneself, withHelper, arborist };

/// Who should do a job, and every reason for it. `findings` holds only what decided: the rules
/// that ask for a helper (Severity::warn) or for a certified arborist (Severity::block).
struct Labour {
    Who who{Who::oneself};
    std::vector<Finding> findings;
};

} // namespace model::advice
