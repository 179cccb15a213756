#include "model/advice/light_reach.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <span>
#include <utility>

namespace model::advice {
namespace {

constexpr double kNever = std::numeric_limits<double>::infinity();
constexpr double kHardly = 1e-9;

bool has(std::uint64_t forms, std::size_t form)
{
    return (forms >> form & 1U) != 0;
}

KeptLevels levelsOf(const LimbStates& options)
{
    KeptLevels levels;
    for (std::size_t o = 0; o < options.options(); ++o)
        for (const auto& change : options.changes(o))
            if (change.state.form != kGone)
                levels.add(change.state.kept);
    return levels;
}

double leastLost(const std::vector<LimbState>& states)
{
    return states.empty() ? 0.0 : std::ranges::min_element(states, {}, &LimbState::lost)->lost;
}

} // namespace

/// \param leafLeft  in: that sets of cuts may take; out: beyond what all of them take
std::vector<LightReach::Prospect>
LightReach::prospects(const LimbStates& options, const Allowed& allowed, double& leafLeft) const
{
    const auto states = options.possible(allowed);
    std::vector<double> sureLoss;
    for (const auto& ofLimb : states) {
        sureLoss.push_back(leastLost(ofLimb));
        leafLeft -= sureLoss.back();
    }
    leafLeft = std::max(0.0, leafLeft) + kHardly;
    std::vector<Prospect> all;
    for (const auto& [limb, forms] : patterns_) {
        Prospect found{{limb, leafOf_[limb], 0.0, 1.0, 0.0, true}, kNever};
        auto& span = found.span;
        for (std::size_t form = 0; form < options.forms()[limb].size(); ++form)
            span.inAll = span.inAll && has(forms, form);
        const auto forEach = [&](auto what) {
            for (const auto& state : states[limb])
                if (const double costs = state.lost - sureLoss[limb]; costs <= leafLeft)
                    what(has(forms, state.form) ? state.kept : 0.0, costs, state.form);
        };
        forEach([&](double kept, double costs, std::size_t form) {
            span.most = std::max(span.most, kept);
            span.least = std::min(span.least, kept);
            if (!has(forms, form))
                found.goesFor = std::min(found.goesFor, costs);
        });
        forEach([&](double kept, double costs, std::size_t) {
            if (span.most > kept)
                span.perLeaf =
                    std::max(span.perLeaf, (span.most - kept) / std::max(costs, kHardly));
        });
        all.push_back(found);
    }
    return all;
}

/// The wood that the light of a ray waits for: of several the one least likely to go.
std::optional<LightReach::Blocked> LightReach::blocked(const Ray& ray,
                                                       const std::vector<Prospect>& prospects,
                                                       const RayDepths& depths) const
{
    std::optional<Blocked> by;
    std::pair<double, double> dearest;
    for (std::size_t i = ray.firstWood; i < ray.lastWood; ++i) {
        const auto p = wood_[i];
        if (prospects[p].span.most <= 0.0)
            continue; // gone for certain
        if (prospects[p].goesFor > depths.leafLeft())
            return Blocked{p, true};
        const auto limb = patterns_[p].limb;
        const std::pair dear{-depths.likely(limb), leafOf_[limb]};
        if (!by || dear > dearest) {
            dearest = dear;
            by = Blocked{p, false};
        }
    }
    return by;
}

LightReach::Most LightReach::most(const LimbStates& options, const Allowed& allowed,
                                  double leafMost, const std::vector<double>& likely) const
{
    double leafLeft = leafMost;
    const auto prospects = this->prospects(options, allowed, leafLeft);
    std::vector<LeafSpan> spans;
    for (const auto& each : prospects)
        spans.push_back(each.span);
    RayDepths depths(levelsOf(options), std::move(spans), leafLeft, likely, leafOf_.size());
    std::vector<PerLevel> gained(patterns_.size(), PerLevel{});
    std::vector<double> woodGone(patterns_.size(), 0.0);
    Most found;
    found.sure = open_;
    for (const auto& ray : rays_) {
        const auto by = blocked(ray, prospects, depths);
        if (by && by->forGood)
            continue;
        depths.startRay();
        double depth = 0.0;
        for (std::size_t s = ray.firstStretch; s < ray.lastStretch; ++s)
            depth += depths.addStretch(
                stretches_[s].depth,
                std::span(parts_).subspan(stretches_[s].first,
                                          stretches_[s].last - stretches_[s].first));
        const double most = depths.mostGone();
        if (by) {
            woodGone[by->pattern] += ray.worth * std::exp(std::min(0.0, most - depth));
            continue;
        }
        const double now = ray.worth * std::exp(-depth);
        found.sure += now;
        depths.addGains(now, most, gained);
    }
    std::vector<std::vector<std::size_t>> ofLimb(leafOf_.size());
    for (std::size_t p = 0; p < patterns_.size(); ++p)
        ofLimb[patterns_[p].limb].push_back(p);
    const auto& levels = depths.levels();
    found.more.assign(options.options(), 0.0);
    for (std::size_t o = 0; o < options.options(); ++o)
        for (const auto& [limb, state] : options.changes(o))
            for (const auto p : ofLimb[limb]) {
                const bool there = state.form != kGone && has(patterns_[p].forms, state.form);
                found.more[o] += gained[p][there ? levels.of(state.kept) : levels.none()] +
                                 (there ? 0.0 : woodGone[p]);
            }
    return found;
}

} // namespace model::advice
