#include "model/light/limb_numbers.hpp"

namespace model::light {
namespace {

void numberFrom(const LimbOrder& order, std::size_t limb, std::size_t& next, LimbNumbers& result)
{
    result.limb[next] = limb;
    result.number[limb] = next++;
    for (const std::size_t child : order.children[limb])
        numberFrom(order, child, next, result);
    result.end[limb] = next;
}

} // namespace

LimbNumbers limbNumbers(const Tree& tree)
{
    const auto order = limbOrder(tree);
    LimbNumbers result;
    result.number.resize(tree.limbs.size());
    result.end.resize(tree.limbs.size());
    result.limb.resize(tree.limbs.size());
    result.parent = order.parent;
    std::size_t next = 0;
    numberFrom(order, order.trunk, next, result);
    return result;
}

} // namespace model::light
