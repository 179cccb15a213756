#include "model/advice/leaf_mixes.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace model::advice {
namespace {

constexpr double kNoNext = std::numeric_limits<double>::infinity();
constexpr double kSameLevel = 1e-9;

} // namespace

void KeptLevels::add(double share)
{
    const auto same = [&](double level) { return std::abs(level - share) < kSameLevel; };
    if (std::ranges::none_of(kept, same) && kept.size() < kMost)
        kept.insert(kept.end() - 1, share);
}

std::size_t KeptLevels::of(double share) const
{
    std::size_t best = none();
    for (std::size_t k = 0; k < kept.size(); ++k)
        if (kept[k] <= share + kSameLevel && kept[k] > kept[best])
            best = k;
    return best;
}

LeafMixes::LeafMixes(KeptLevels levels, std::vector<LeafSpan> spans, std::vector<double> likely,
                     const std::vector<LeafMix>& mixes)
    : levels_(std::move(levels)), spans_(std::move(spans)), likely_(std::move(likely))
{
    ranges_.reserve(mixes.size());
    for (const auto& mix : mixes)
        add(mix);
}

// Leaf at one place of a ray is as dense as the densest of the limbs there. Of the density between
// what certainly stays and what may stand there at most, each layer is gone only if all limbs that
// reach it are gone from it: however it is shared among them, if each one's share is what it gives
// when it goes, the depth that goes is at most the sum of these. It is shared among those that are
// least likely to go, by their leaf.
void LeafMixes::add(const LeafMix& mix)
{
    double top = 0.0;
    double floor = 0.0;
    bool even = true;
    stands_.clear();
    for (const auto& part : mix) {
        const auto& span = spans_[part.pattern];
        const double high = span.most * part.density;
        if (high <= 0.0)
            continue;
        even = even && span.most >= 1.0 && (top == 0.0 || top == high);
        top = std::max(top, high);
        floor = std::max(floor, span.least * part.density);
        stands_.push_back({part.pattern, part.density, high, 0});
    }
    ranges_.push_back({top, claims_.size(), 0, gives_.size(), 0});
    if (top <= floor)
        return;
    if (even && floor == 0.0) // the usual case
        shareEvenly(top);
    else
        shareLayers(floor);
    ranges_.back().claims = claims_.size() - ranges_.back().firstClaim;
    ranges_.back().gives = gives_.size() - ranges_.back().firstGive;
}

/// Of the limbs that reach so high: how likely the least likely goes.
double LeafMixes::leastLikely(double high) const
{
    double least = kNoNext;
    for (const auto& stand : stands_)
        if (stand.high >= high)
            least = std::min(least, likely(spans_[stand.pattern].limb));
    return least;
}

/// Leaf of those that are no likelier.
double LeafMixes::weights(double high, double last) const
{
    double sum = 0.0;
    for (const auto& stand : stands_)
        if (stand.high >= high && likely(spans_[stand.pattern].limb) <= last)
            sum += spans_[stand.pattern].own;
    return sum;
}

void LeafMixes::give(std::size_t limb, double most, double rate)
{
    const auto since = gives_.begin() + static_cast<std::ptrdiff_t>(ranges_.back().firstGive);
    const auto known =
        std::find_if(since, gives_.end(), [limb](const Give& each) { return each.limb == limb; });
    if (known == gives_.end()) {
        gives_.push_back({limb, most, rate});
        return;
    }
    known->most += most;
    known->rate += rate;
}

/// All in one layer.
void LeafMixes::shareEvenly(double depth)
{
    const double last = leastLikely(0.0);
    const double all = weights(0.0, last);
    for (const auto& stand : stands_) {
        const auto& span = spans_[stand.pattern];
        if (likely(span.limb) > last)
            continue;
        const double share = depth * span.own / all;
        auto& gone = claims_.emplace_back(Claim{stand.pattern, {}}).gone;
        for (std::size_t k = 0; k < levels_.kept.size(); ++k)
            gone[k] = share * (1.0 - levels_.kept[k]);
        give(span.limb, share * span.fade(), share * span.perLeaf);
    }
}

/// Layer by layer, between the heights that single limbs reach.
void LeafMixes::shareLayers(double floor)
{
    std::erase_if(stands_, [&](const auto& stand) { return stand.high <= floor; });
    for (auto& stand : stands_) {
        stand.claim = claims_.size();
        claims_.push_back({stand.pattern, {}});
    }
    for (double below = floor;;) {
        double next = kNoNext;
        for (const auto& stand : stands_)
            if (stand.high > below)
                next = std::min(next, stand.high);
        if (next == kNoNext)
            break;
        const double last = leastLikely(next);
        const double all = weights(next, last);
        for (const auto& stand : stands_) {
            const auto& span = spans_[stand.pattern];
            if (stand.high < next || likely(span.limb) > last)
                continue;
            auto& gone = claims_[stand.claim].gone;
            for (std::size_t k = 0; k < levels_.kept.size(); ++k)
                gone[k] += span.own / all *
                           std::max(0.0, next - std::max(below, stand.density * levels_.kept[k]));
        }
        below = next;
    }
    for (const auto& stand : stands_) {
        const auto& span = spans_[stand.pattern];
        give(span.limb, claims_[stand.claim].gone[levels_.none()], stand.density * span.perLeaf);
    }
}

} // namespace model::advice
