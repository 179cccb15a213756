#include "model/advice/ray_depths.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <utility>

namespace model::advice {
namespace {

/// Of exp(depth) - 1, by depth.
double chord(double depth)
{
    constexpr double kHardly = 1e-6;
    return depth > kHardly ? std::expm1(depth) / depth : 1.0 + depth;
}

} // namespace

RayDepths::RayDepths(const LeafMixes& mixes, double leafLeft, std::size_t limbs)
    : mixes_(mixes), leafLeft_(leafLeft), allAtOnce_(mixes.size(), 0.0),
      oneByOne_(mixes.patterns(), PerLevel{}), itemOf_(limbs, 0)
{
}

void RayDepths::startRay()
{
    for (const auto& each : items_)
        itemOf_[each.limb] = 0;
    items_.clear();
    stretches_.clear();
}

RayDepths::Item& RayDepths::item(std::size_t limb)
{
    if (itemOf_[limb] == 0) {
        items_.push_back({limb, 0.0, 0.0, {}});
        itemOf_[limb] = items_.size();
    }
    return items_[itemOf_[limb] - 1];
}

double RayDepths::addStretch(double depth, std::size_t mix)
{
    const auto gives = mixes_.gives(mix);
    for (const auto& each : gives) {
        auto& sum = item(each.limb);
        sum.most += depth * each.most;
        sum.rate += depth * each.rate;
    }
    if (!gives.empty())
        stretches_.push_back({depth, mix});
    return depth * mixes_.depth(mix);
}

double RayDepths::mostGone()
{
    double most = 0.0;
    double left = leafLeft_;
    std::ranges::sort(items_, std::ranges::greater{}, &Item::rate);
    for (const auto& each : items_) {
        if (left <= 0.0)
            break;
        const double leaf = each.rate > 0.0 ? each.most / each.rate : 0.0;
        most += leaf <= left ? each.most : each.rate * left;
        left -= leaf;
    }
    return most;
}

/// Depth that each limb gives at each level, in whichever of its forms that is most.
void RayDepths::sumUpLevels()
{
    const auto levels = mixes_.levels().kept.size();
    const auto none = mixes_.levels().none();
    for (const auto& [depth, mix] : stretches_)
        for (const auto& [pattern, gone] : mixes_.claims(mix)) {
            const auto& span = mixes_.span(pattern);
            auto& byLevel = items_[itemOf_[span.limb] - 1].byLevel;
            for (std::size_t k = 0; k < levels; ++k)
                byLevel[k] += depth * gone[span.inAll ? k : none];
        }
}

/// For depth that goes after other depth went.
double RayDepths::slopeAfter(double before, double mostGone, double depth) const
{
    const double from = std::min(before, mostGone);
    return std::exp(from) * chord(std::min(depth, mostGone - from));
}

// Light is convex in the depth that goes. So the light that is gained is at most the chord from
// none to the most that can go: all at once. Or limb by limb, the likely ones first: each gains at
// most its own chord, begun where all those before it are gone. Both hold for any set of cuts; the
// one that says less of what is thought to go is taken.
bool RayDepths::goesInTurn(double mostGone)
{
    if (!mixes_.knowsLikely())
        return false;
    std::ranges::sort(items_, [this](const Item& a, const Item& b) {
        return std::pair(-mixes_.likely(a.limb), a.limb) <
               std::pair(-mixes_.likely(b.limb), b.limb);
    });
    return gain(mostGone, true) < gain(mostGone, false);
}

/// Limb by limb.
void RayDepths::findSlopes(double mostGone)
{
    for (std::size_t i = 0; i < items_.size(); ++i)
        itemOf_[items_[i].limb] = i + 1;
    sumUpLevels();
    slopes_.assign(items_.size(), {});
    double before = 0.0;
    for (std::size_t i = 0; i < items_.size(); ++i) {
        for (std::size_t k = 0; k < mixes_.levels().kept.size(); ++k)
            slopes_[i][k] =
                slopeAfter(before, mostGone, std::min(items_[i].byLevel[k], items_[i].most));
        before += items_[i].most;
    }
}

/// Of what is thought to go.
double RayDepths::gain(double mostGone, bool inTurn) const
{
    double sum = 0.0;
    double before = 0.0;
    for (const auto& each : items_) {
        sum += (inTurn ? slopeAfter(before, mostGone, each.most) : chord(mostGone)) *
               mixes_.likely(each.limb) * each.most;
        before += each.most;
    }
    return sum;
}

void RayDepths::addGains(double sure, double mostGone)
{
    if (mostGone <= 0.0)
        return;
    if (!goesInTurn(mostGone)) {
        const double slope = sure * chord(mostGone);
        for (const auto& [depth, mix] : stretches_)
            allAtOnce_[mix] += slope * depth;
        return;
    }
    findSlopes(mostGone);
    for (const auto& [depth, mix] : stretches_)
        for (const auto& [pattern, gone] : mixes_.claims(mix)) {
            const auto& slopes = slopes_[itemOf_[mixes_.span(pattern).limb] - 1];
            for (std::size_t k = 0; k < mixes_.levels().kept.size(); ++k)
                oneByOne_[pattern][k] += sure * slopes[k] * depth * gone[k];
        }
}

std::vector<PerLevel> RayDepths::gained() const
{
    auto all = oneByOne_;
    for (std::size_t mix = 0; mix < allAtOnce_.size(); ++mix)
        for (const auto& [pattern, gone] : mixes_.claims(mix))
            for (std::size_t k = 0; k < mixes_.levels().kept.size(); ++k)
                all[pattern][k] += allAtOnce_[mix] * gone[k];
    return all;
}

} // namespace model::advice
