#include "model/advice/light_reach.hpp"

#include "model/advice/ray_depths.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
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
                                                       const LeafMixes& mixes,
                                                       double leafLeft) const
{
    std::optional<Blocked> by;
    std::pair<double, double> dearest;
    for (std::size_t i = ray.firstWood; i < ray.lastWood; ++i) {
        const auto p = wood_[i];
        if (prospects[p].span.most <= 0.0)
            continue; // gone for certain
        if (prospects[p].goesFor > leafLeft)
            return Blocked{p, true};
        const auto limb = patterns_[p].limb;
        const std::pair dear{-mixes.likely(limb), leafOf_[limb]};
        if (!by || dear > dearest) {
            dearest = dear;
            by = Blocked{p, false};
        }
    }
    return by;
}

double LightReach::light(const std::vector<LimbState>& states) const
{
    std::vector<double> stays; // of each pattern: the share of its leaf
    for (const auto& [limb, forms] : patterns_) {
        const auto& state = states[limb];
        stays.push_back(state.form != kGone && has(forms, state.form) ? state.kept : 0.0);
    }
    std::vector<double> density;
    for (const auto& mix : mixes_) {
        double top = 0.0;
        for (const auto& part : mix)
            top = std::max(top, stays[part.pattern] * part.density);
        density.push_back(top);
    }
    double sum = open_;
    for (const auto& ray : rays_) {
        const auto stands = [&](std::uint32_t pattern) { return stays[pattern] > 0.0; };
        if (std::any_of(wood_.begin() + static_cast<std::ptrdiff_t>(ray.firstWood),
                        wood_.begin() + static_cast<std::ptrdiff_t>(ray.lastWood), stands))
            continue;
        double depth = 0.0;
        for (std::size_t s = ray.firstStretch; s < ray.lastStretch; ++s)
            depth += stretches_[s].depth * density[stretches_[s].mix];
        sum += ray.worth * std::exp(-depth);
    }
    return sum;
}

LightReach::Most LightReach::most(const LimbStates& options, const Allowed& allowed,
                                  double leafMost, const std::vector<double>& likely) const
{
    double leafLeft = leafMost;
    const auto prospects = this->prospects(options, allowed, leafLeft);
    std::vector<LeafSpan> spans;
    for (const auto& each : prospects)
        spans.push_back(each.span);
    const LeafMixes mixes(levelsOf(options), std::move(spans), likely, mixes_);
    RayDepths depths(mixes, leafLeft, leafOf_.size());
    std::vector<double> woodGone(patterns_.size(), 0.0);
    Most found;
    found.sure = open_;
    for (const auto& ray : rays_) {
        const auto by = blocked(ray, prospects, mixes, leafLeft);
        if (by && by->forGood)
            continue;
        depths.startRay();
        double depth = 0.0;
        for (std::size_t s = ray.firstStretch; s < ray.lastStretch; ++s)
            depth += depths.addStretch(stretches_[s].depth, stretches_[s].mix);
        const double most = depths.mostGone();
        if (by) {
            woodGone[by->pattern] += ray.worth * std::exp(std::min(0.0, most - depth));
            continue;
        }
        const double now = ray.worth * std::exp(-depth);
        found.sure += now;
        depths.addGains(now, most);
    }
    const auto gained = depths.gained();
    std::vector<std::vector<std::size_t>> ofLimb(leafOf_.size());
    for (std::size_t p = 0; p < patterns_.size(); ++p)
        ofLimb[patterns_[p].limb].push_back(p);
    const auto& levels = mixes.levels();
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
