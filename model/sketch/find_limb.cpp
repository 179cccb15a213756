#include "model/sketch/find_limb.hpp"

#include <stdexcept>

namespace model::sketch {

std::size_t findLimb(const Tree& tree, const std::string& id)
{
    const auto index = limbIndex(tree, id);
    if (index == kNoLimb)
        throw std::domain_error("sketch: the tree has no limb " + id);
    return index;
}

} // namespace model::sketch
