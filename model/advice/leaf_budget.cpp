#include "model/advice/leaf_budget.hpp"

#include <algorithm>
#include <functional>

namespace model::advice {

void LeafBudget::offer(std::size_t limb, double gain, double leaf)
{
    if (gain <= 0.0)
        return;
    if (items_.empty() || items_.back().limb != limb)
        items_.push_back({limb, 0.0, 0.0});
    auto& item = items_.back();
    item.most = std::max(item.most, gain);
    item.rate = std::max(item.rate, gain / std::max(leaf, kHair));
}

double LeafBudget::most()
{
    std::ranges::sort(items_, std::greater{}, &Item::rate);
    double sum = 0.0;
    double left = leaf_;
    for (const auto& item : items_) {
        if (left <= 0.0)
            break;
        const double leaf = item.most / item.rate;
        sum += leaf <= left ? item.most : item.rate * left;
        left -= leaf;
    }
    return sum;
}

} // namespace model::advice
