#include "model/advice/light_reach.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace model::advice {
namespace {

constexpr double kNever = std::numeric_limits<double>::infinity();
constexpr double kHardly = 1e-9;
constexpr std::size_t kLevelsMost = 8;

bool has(std::uint64_t forms, std::size_t form)
{
    return (forms >> form & 1U) != 0;
}

} // namespace

/// What is possible, and room to sum up what it gives.
struct LightReach::View {
    /// Shares of its shoots that stay on a limb: all, all but each step of thinning, none.
    struct Levels {
        std::vector<double> kept;
        [[nodiscard]] std::size_t of(double share) const
        {
            const auto nearest =
                std::ranges::min_element(kept, {}, [&](double k) { return std::abs(k - share); });
            return static_cast<std::size_t>(nearest - kept.begin());
        }
    };
    /// Of one pattern: shares of its shoots that may stay.
    struct Span {
        double most{};
        double least{};
        bool whole{};     ///< `most` is all
        double perLeaf{}; ///< the greatest share of it that goes for leaf of the limb
        double fade{};    ///< the greatest share of it that can go
        std::size_t limb{};
        double own{}; ///< leaf of the limb, for its share of what goes
    };
    /// Leaf that may stand on the stretch at hand.
    struct Stand {
        std::uint32_t pattern{};
        const Span* span{};
        double density{};
        double high{}; ///< density at most
        std::size_t claim{};
    };
    /// What a part of the ray at hand gives of its depth.
    struct Claim {
        std::uint32_t pattern{};
        double all{}; ///< in step with what goes; 0: by level
        std::array<double, kLevelsMost> byLevel{};
    };
    /// Of a limb on the ray at hand.
    struct Item {
        std::size_t limb{};
        double most{}; ///< depth that it can give
        double rate{}; ///< at most for each share of leaf
    };
    Levels levels;
    std::vector<Span> spans;                             ///< per pattern
    std::vector<std::array<double, kLevelsMost>> gained; ///< per pattern and level
    std::vector<double> gainedAll;                       ///< per pattern, for all of its leaf
    std::vector<double> woodGone;                        ///< per pattern of wood
    std::vector<double> woodCosts;                       ///< least leaf for it to go
    double leafLeft{};
    // Of the ray at hand:
    std::vector<Item> items;
    std::vector<std::size_t> itemOf; ///< per limb: its item and one; 0: none
    std::vector<Claim> claims;
    std::size_t claimed{};
    std::vector<Stand> stands;

    Claim& claim(std::uint32_t pattern, double all)
    {
        if (claimed == claims.size())
            claims.emplace_back();
        auto& next = claims[claimed++];
        next.pattern = pattern;
        next.all = all;
        return next;
    }

    Item& item(std::size_t limb)
    {
        if (itemOf[limb] == 0) {
            items.push_back({limb, 0.0, 0.0});
            itemOf[limb] = items.size();
        }
        return items[itemOf[limb] - 1];
    }

    void startRay()
    {
        for (const auto& each : items)
            itemOf[each.limb] = 0;
        items.clear();
        claimed = 0;
    }

    /// The most depth that can go from the ray.
    double mostGone()
    {
        double most = 0.0;
        double left = leafLeft;
        std::ranges::sort(items, std::ranges::greater{}, &Item::rate);
        for (const auto& each : items) {
            if (left <= 0.0)
                break;
            const double leaf = each.rate > 0.0 ? each.most / each.rate : 0.0;
            most += leaf <= left ? each.most : each.rate * left;
            left -= leaf;
        }
        return most;
    }
};

LightReach::View LightReach::view(const LimbStates& options, const Allowed& allowed,
                                  double leafMost) const
{
    View view;
    view.levels.kept = {1.0};
    for (std::size_t o = 0; o < options.options(); ++o)
        for (const auto& change : options.changes(o))
            if (std::ranges::none_of(
                    view.levels.kept,
                    [&](double k) { return std::abs(k - change.state.kept) < kHardly; }) &&
                view.levels.kept.size() + 1 < kLevelsMost && change.state.form != kGone)
                view.levels.kept.push_back(change.state.kept);
    view.levels.kept.push_back(0.0);
    const auto states = options.possible(allowed);
    view.leafLeft = leafMost;
    std::vector<double> sureLoss(states.size(), 0.0);
    for (std::size_t limb = 0; limb < states.size(); ++limb) {
        double least = kNever;
        for (const auto& state : states[limb])
            least = std::min(least, state.lost);
        sureLoss[limb] = states[limb].empty() ? 0.0 : least;
        view.leafLeft -= sureLoss[limb];
    }
    view.leafLeft = std::max(0.0, view.leafLeft) + kHardly;
    view.woodCosts.assign(patterns_.size(), kNever);
    for (std::size_t p = 0; p < patterns_.size(); ++p) {
        const auto& [limb, forms] = patterns_[p];
        View::Span span{0.0, 1.0, false, 0.0, 0.0, limb, leafOf_[limb]};
        for (const auto& state : states[limb]) {
            const double extra = state.lost - sureLoss[limb];
            if (extra > view.leafLeft)
                continue;
            const double kept = has(forms, state.form) ? state.kept : 0.0;
            span.most = std::max(span.most, kept);
            span.least = std::min(span.least, kept);
            if (!has(forms, state.form))
                view.woodCosts[p] = std::min(view.woodCosts[p], extra);
        }
        span.whole = span.most >= 1.0;
        span.fade = std::max(0.0, span.most - span.least);
        for (const auto& state : states[limb]) {
            const double extra = state.lost - sureLoss[limb];
            const double kept = has(forms, state.form) ? state.kept : 0.0;
            if (extra <= view.leafLeft && span.most > kept)
                span.perLeaf =
                    std::max(span.perLeaf, (span.most - kept) / std::max(extra, kHardly));
        }
        view.spans.push_back(span);
    }
    view.itemOf.assign(states.size(), 0);
    view.gained.assign(patterns_.size(), {});
    view.gainedAll.assign(patterns_.size(), 0.0);
    view.woodGone.assign(patterns_.size(), 0.0);
    return view;
}

/// The wood that the light of a ray waits for.
std::optional<LightReach::Blocked> LightReach::blocked(const Ray& ray, const View& view) const
{
    Blocked by;
    double dearest = -1.0;
    for (std::size_t i = ray.firstWood; i < ray.lastWood; ++i) {
        const auto p = wood_[i];
        if (view.spans[p].most <= 0.0)
            continue; // gone for certain
        if (view.woodCosts[p] > view.leafLeft)
            return Blocked{p, true};
        if (const double leaf = leafOf_[patterns_[p].limb]; leaf > dearest) {
            dearest = leaf;
            by.pattern = p;
        }
    }
    return dearest < 0.0 ? std::nullopt : std::optional(by);
}

/// Shares what may go on a stretch among the limbs there. \return the depth that may stand there
double LightReach::shareOut(const Stretch& stretch, View& view) const
{
    double top = 0.0;
    double floor = 0.0;
    double weights = 0.0;
    bool even = true;
    view.stands.clear();
    for (std::size_t i = stretch.first; i < stretch.last; ++i) {
        const auto& part = parts_[i];
        const auto& span = view.spans[part.pattern];
        const double high = span.most * part.density;
        if (high <= 0.0)
            continue;
        even = even && span.whole && (top == 0.0 || top == high);
        top = std::max(top, high);
        floor = std::max(floor, span.least * part.density);
        weights += span.own;
        view.stands.push_back({part.pattern, &span, part.density, high, 0});
    }
    if (top <= floor)
        return stretch.depth * top;
    if (even && floor == 0.0) { // the usual case: all at once
        for (const auto& stand : view.stands) {
            const double share = stretch.depth * top * stand.span->own / weights;
            view.claim(stand.pattern, share);
            auto& item = view.item(stand.span->limb);
            item.most += share * stand.span->fade;
            item.rate += share * stand.span->perLeaf;
        }
    } else {
        shareLayers(stretch, floor, view);
    }
    return stretch.depth * top;
}

/// Layer by layer, between the heights that single limbs reach.
void LightReach::shareLayers(const Stretch& stretch, double floor, View& view) const
{
    std::erase_if(view.stands, [&](const auto& stand) { return stand.high <= floor; });
    for (auto& stand : view.stands) {
        stand.claim = view.claimed;
        view.claim(stand.pattern, 0.0).byLevel.fill(0.0);
    }
    for (double below = floor;;) {
        double next = kNever;
        for (const auto& stand : view.stands)
            if (stand.high > below)
                next = std::min(next, stand.high);
        if (next == kNever)
            break;
        double reach = 0.0;
        for (const auto& stand : view.stands)
            if (stand.high >= next)
                reach += stand.span->own;
        for (const auto& stand : view.stands) {
            if (stand.high < next)
                continue;
            const double each = stretch.depth * stand.span->own / reach;
            auto& byLevel = view.claims[stand.claim].byLevel;
            for (std::size_t k = 0; k < view.levels.kept.size(); ++k)
                byLevel[k] +=
                    each *
                    std::max(0.0, next - std::max(below, stand.density * view.levels.kept[k]));
        }
        below = next;
    }
    for (const auto& stand : view.stands) {
        auto& item = view.item(stand.span->limb);
        item.most += view.claims[stand.claim].byLevel[view.levels.kept.size() - 1];
        item.rate += stretch.depth * stand.density * stand.span->perLeaf;
    }
}

// Leaf at one place of a ray is as dense as the densest of the limbs there. Of the density between
// what certainly stays and what may stand there at most, each layer is gone only if all limbs that
// reach it are gone from it: shared among them by their leaf, each one's share is what it gives
// when it goes. The depth that goes is at most the sum of these, and the light, convex in the depth
// that goes, at most the chord from none to the most that so much leaf can take away.
void LightReach::addMost(const Ray& ray, View& view, double& sure) const
{
    const auto by = blocked(ray, view);
    if (by && by->forGood)
        return;
    view.startRay();
    double depth = 0.0;
    for (std::size_t s = ray.firstStretch; s < ray.lastStretch; ++s)
        depth += shareOut(stretches_[s], view);
    const double most = view.mostGone();
    if (by) {
        view.woodGone[by->pattern] += ray.worth * std::exp(std::min(0.0, most - depth));
        return;
    }
    const double now = ray.worth * std::exp(-depth);
    sure += now;
    if (most <= 0.0)
        return;
    const double slope = now * (most > 1e-6 ? std::expm1(most) / most : 1.0 + most);
    for (std::size_t c = 0; c < view.claimed; ++c) {
        const auto& claim = view.claims[c];
        view.gainedAll[claim.pattern] += slope * claim.all;
        if (claim.all <= 0.0)
            for (std::size_t k = 0; k < view.levels.kept.size(); ++k)
                view.gained[claim.pattern][k] += slope * claim.byLevel[k];
    }
}

LightReach::Most LightReach::most(const LimbStates& options, const Allowed& allowed,
                                  double leafMost) const
{
    View view = this->view(options, allowed, leafMost);
    Most found;
    found.sure = open_;
    for (const auto& ray : rays_)
        addMost(ray, view, found.sure);
    std::vector<std::vector<std::size_t>> ofLimb(leafOf_.size());
    for (std::size_t p = 0; p < patterns_.size(); ++p)
        ofLimb[patterns_[p].limb].push_back(p);
    const std::size_t none = view.levels.kept.size() - 1;
    found.more.assign(options.options(), 0.0);
    for (std::size_t o = 0; o < options.options(); ++o)
        for (const auto& [limb, state] : options.changes(o))
            for (const auto p : ofLimb[limb]) {
                const bool there = state.form != kGone && has(patterns_[p].forms, state.form);
                const std::size_t level = there ? view.levels.of(state.kept) : none;
                found.more[o] += view.gained[p][level] +
                                 view.gainedAll[p] * (1.0 - view.levels.kept[level]) +
                                 (there ? 0.0 : view.woodGone[p]);
            }
    return found;
}

} // namespace model::advice
