#pragma once

#include "model/garden/tree.hpp"

#include <cstddef>
#include <vector>

namespace model::light {

/// Which limbs grow from which, by number: a limb's number and those of all that grows from it
/// are one stretch.
struct LimbNumbers {
    std::vector<std::size_t> number; ///< per limb
    std::vector<std::size_t> end;    ///< per limb, one past the last number that grows from it
    std::vector<std::size_t> parent; ///< per limb; kNoLimb for the trunk
    std::vector<std::size_t> limb;   ///< per number
};
[[nodiscard]] LimbNumbers limbNumbers(const Tree& tree);

} // namespace model::light
