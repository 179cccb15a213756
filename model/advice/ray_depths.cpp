#include "model/advice/ray_depths.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <utility>

namespace model::advice {
namespace {

constexpr double kNever = std::numeric_limits<double>::infinity();
constexpr double kSameShare = 1e-9;

/// Of exp(depth) - 1, by depth.
double chord(double depth)
{
    constexpr double kHardly = 1e-6;
    return depth > kHardly ? std::expm1(depth) / depth : 1.0 + depth;
}

} // namespace

void KeptLevels::add(double share)
{
    const auto same = [&](double level) { return std::abs(level - share) < kSameShare; };
    if (std::ranges::none_of(kept, same) && kept.size() < kMost)
        kept.insert(kept.end() - 1, share);
}

std::size_t KeptLevels::of(double share) const
{
    std::size_t best = none();
    for (std::size_t k = 0; k < kept.size(); ++k)
        if (kept[k] <= share + kSameShare && kept[k] > kept[best])
            best = k;
    return best;
}

RayDepths::RayDepths(KeptLevels levels, std::vector<LeafSpan> spans, double leafLeft,
                     std::vector<double> likely, std::size_t limbs)
    : levels_(std::move(levels)), spans_(std::move(spans)), leafLeft_(leafLeft),
      likely_(std::move(likely)), itemOf_(limbs, 0)
{
}

void RayDepths::startRay()
{
    for (const auto& each : items_)
        itemOf_[each.limb] = 0;
    items_.clear();
    claimed_ = 0;
}

RayDepths::Claim& RayDepths::claim(std::uint32_t pattern)
{
    if (claimed_ == claims_.size())
        claims_.emplace_back();
    auto& next = claims_[claimed_++];
    next.pattern = pattern;
    next.gone.fill(0.0);
    return next;
}

RayDepths::Item& RayDepths::item(std::size_t limb)
{
    if (itemOf_[limb] == 0) {
        items_.push_back({limb, 0.0, 0.0, {}});
        itemOf_[limb] = items_.size();
    }
    return items_[itemOf_[limb] - 1];
}

// Leaf at one place of a ray is as dense as the densest of the limbs there. Of the density between
// what certainly stays and what may stand there at most, each layer is gone only if all limbs that
// reach it are gone from it: however it is shared among them, if each one's share is what it gives
// when it goes, the depth that goes is at most the sum of these. It is shared among those that are
// least likely to go, by their leaf.
double RayDepths::addStretch(double depth, std::span<const LeafPart> parts)
{
    double top = 0.0;
    double floor = 0.0;
    bool even = true;
    stands_.clear();
    for (const auto& part : parts) {
        const auto& span = spans_[part.pattern];
        const double high = span.most * part.density;
        if (high <= 0.0)
            continue;
        even = even && span.most >= 1.0 && (top == 0.0 || top == high);
        top = std::max(top, high);
        floor = std::max(floor, span.least * part.density);
        stands_.push_back({part.pattern, &span, part.density, high, 0});
    }
    if (top <= floor)
        return depth * top;
    if (even && floor == 0.0) // the usual case
        shareEvenly(depth * top);
    else
        shareLayers(depth, floor);
    return depth * top;
}

/// Of the limbs that reach so high on the stretch at hand: how likely the least likely goes.
double RayDepths::leastLikely(double high) const
{
    double least = kNever;
    for (const auto& stand : stands_)
        if (stand.high >= high)
            least = std::min(least, likely(stand.span->limb));
    return least;
}

/// Leaf of those that are no likelier.
double RayDepths::weights(double high, double last) const
{
    double sum = 0.0;
    for (const auto& stand : stands_)
        if (stand.high >= high && likely(stand.span->limb) <= last)
            sum += stand.span->own;
    return sum;
}

/// All in one layer.
void RayDepths::shareEvenly(double depth)
{
    const double last = leastLikely(0.0);
    const double all = weights(0.0, last);
    for (const auto& stand : stands_) {
        if (likely(stand.span->limb) > last)
            continue;
        const double share = depth * stand.span->own / all;
        auto& gone = claim(stand.pattern).gone;
        for (std::size_t k = 0; k < levels_.kept.size(); ++k)
            gone[k] = share * (1.0 - levels_.kept[k]);
        auto& sum = item(stand.span->limb);
        sum.most += share * stand.span->fade();
        sum.rate += share * stand.span->perLeaf;
    }
}

/// Layer by layer, between the heights that single limbs reach.
void RayDepths::shareLayers(double depth, double floor)
{
    std::erase_if(stands_, [&](const auto& stand) { return stand.high <= floor; });
    for (auto& stand : stands_) {
        stand.claim = claimed_;
        claim(stand.pattern);
    }
    for (double below = floor;;) {
        double next = kNever;
        for (const auto& stand : stands_)
            if (stand.high > below)
                next = std::min(next, stand.high);
        if (next == kNever)
            break;
        const double last = leastLikely(next);
        const double all = weights(next, last);
        for (const auto& stand : stands_) {
            if (stand.high < next || likely(stand.span->limb) > last)
                continue;
            const double each = depth * stand.span->own / all;
            auto& gone = claims_[stand.claim].gone;
            for (std::size_t k = 0; k < levels_.kept.size(); ++k)
                gone[k] +=
                    each * std::max(0.0, next - std::max(below, stand.density * levels_.kept[k]));
        }
        below = next;
    }
    for (const auto& stand : stands_) {
        auto& sum = item(stand.span->limb);
        sum.most += claims_[stand.claim].gone[levels_.none()];
        sum.rate += depth * stand.density * stand.span->perLeaf;
    }
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
    for (std::size_t c = 0; c < claimed_; ++c) {
        const auto& [pattern, gone] = claims_[c];
        const auto& span = spans_[pattern];
        auto& byLevel = items_[itemOf_[span.limb] - 1].byLevel;
        for (std::size_t k = 0; k < levels_.kept.size(); ++k)
            byLevel[k] += gone[span.inAll ? k : levels_.none()];
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
void RayDepths::findSlopes(double mostGone)
{
    slopes_.assign(items_.size(), {});
    bool inTurn = false;
    if (!likely_.empty()) {
        std::ranges::sort(items_, [this](const Item& a, const Item& b) {
            return std::pair(-likely_[a.limb], a.limb) < std::pair(-likely_[b.limb], b.limb);
        });
        inTurn = gain(mostGone, true) < gain(mostGone, false);
    }
    for (std::size_t i = 0; i < items_.size(); ++i)
        itemOf_[items_[i].limb] = i + 1;
    if (inTurn)
        sumUpLevels();
    double before = 0.0;
    for (std::size_t i = 0; i < items_.size(); ++i) {
        for (std::size_t k = 0; k < levels_.kept.size(); ++k)
            slopes_[i][k] = inTurn ? slopeAfter(before, mostGone,
                                                std::min(items_[i].byLevel[k], items_[i].most))
                                   : chord(mostGone);
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
               likely_[each.limb] * each.most;
        before += each.most;
    }
    return sum;
}

void RayDepths::addGains(double sure, double mostGone, std::vector<PerLevel>& gained)
{
    if (mostGone <= 0.0)
        return;
    findSlopes(mostGone);
    for (std::size_t c = 0; c < claimed_; ++c) {
        const auto& [pattern, gone] = claims_[c];
        const auto& slopes = slopes_[itemOf_[spans_[pattern].limb] - 1];
        for (std::size_t k = 0; k < levels_.kept.size(); ++k)
            gained[pattern][k] += sure * slopes[k] * gone[k];
    }
}

} // namespace model::advice
