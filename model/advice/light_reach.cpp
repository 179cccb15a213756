#include "model/advice/light_reach.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>

namespace model::advice {
namespace {

constexpr double kNever = std::numeric_limits<double>::infinity();
constexpr double kHardly = 1e-9;
constexpr std::size_t kLevelsMost = 8;

bool has(std::uint64_t forms, std::size_t form)
{
    return (forms >> form & 1U) != 0;
}

struct Hit {
    Interval along;
    std::size_t limb{};
    std::uint64_t forms{};
    double density{};
};

} // namespace

/// Bodies of all forms of all limbs; those that forms share, once.
struct LightReach::Bodies {
    struct Body {
        Curtain solid;
        light::Ball bounds;
        std::size_t limb{};
        std::uint64_t forms{};
        double density{};
    };
    std::vector<Body> leaf;
    std::vector<Body> wood;

    template <typename Solid>
    static void add(std::vector<Body>& all, std::size_t since, const Solid& solid, std::size_t limb,
                    std::size_t form, double density)
    {
        for (std::size_t i = since; i < all.size(); ++i)
            if (all[i].solid == solid.solid && all[i].density == density) {
                all[i].forms |= std::uint64_t{1} << form;
                return;
            }
        all.push_back({solid.solid, solid.bounds, limb, std::uint64_t{1} << form, density});
    }

    Bodies(const light::LightStudy& study, const Tree& tree, const LimbForms& forms)
    {
        Tree alone = tree;
        for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb) {
            const auto leafBefore = leaf.size();
            const auto woodBefore = wood.size();
            for (std::size_t form = 0; form < forms[limb].size(); ++form) {
                alone.limbs = {forms[limb][form]};
                const auto canopy = study.canopyOf(alone);
                for (const auto& body : canopy.leaves)
                    add(leaf, leafBefore, body, limb, form, body.density);
                for (const auto& body : canopy.wood)
                    add(wood, woodBefore, body, limb, form, 0.0);
            }
        }
    }
};

LightReach::LightReach(const light::LightStudy& study, const Tree& tree, const LimbForms& forms,
                       const LightWorth& worth)
    : leafOf_(tree.limbs.size(), kHardly)
{
    for (const auto& body : leafyBodies(tree))
        leafOf_[body.limb] += body.density * sharingVolume_m3(body);
    const Bodies bodies(study, tree, forms);
    auto canopy = study.canopyOf(tree);
    for (const auto& ray : study.rays()) {
        const double value = worth(ray);
        if (value <= 0.0)
            continue;
        canopy.leafShare = ray.leafShare;
        addRay(ray, value, light::extinction_1_m(canopy, ray.towards), bodies);
    }
}

std::uint32_t LightReach::pattern(std::size_t limb, std::uint64_t forms)
{
    const auto [known, isNew] =
        numbers_.try_emplace(std::pair{limb, forms}, static_cast<std::uint32_t>(patterns_.size()));
    if (isNew)
        patterns_.push_back({limb, forms});
    return known->second;
}

void LightReach::addRay(const light::StudyRay& ray, double worth, double extinction_1_m,
                        const Bodies& bodies)
{
    std::vector<Hit> hits;
    std::map<std::size_t, std::uint64_t> woods;
    const auto meets = [&](const Bodies::Body& body) -> std::optional<Interval> {
        const Vec3 ahead = body.bounds.middle_m - ray.from_m;
        const double along = dot(ahead, ray.towards);
        if (along <= -body.bounds.radius_m ||
            dot(ahead, ahead) - along * along >= body.bounds.radius_m * body.bounds.radius_m)
            return std::nullopt;
        return chord(body.solid, ray.from_m, ray.towards);
    };
    for (const auto& body : bodies.wood)
        if (meets(body))
            woods[body.limb] |= body.forms;
    for (const auto& body : bodies.leaf)
        if (const auto inside = meets(body))
            hits.push_back({*inside, body.limb, body.forms, body.density});
    if (hits.empty() && woods.empty()) {
        open_ += worth;
        return;
    }
    Ray kept{worth, stretches_.size(), 0, wood_.size(), 0};
    for (const auto& [limb, forms] : woods)
        wood_.push_back(pattern(limb, forms));
    kept.lastWood = wood_.size();
    std::vector<double> ends;
    for (const auto& hit : hits) {
        ends.push_back(hit.along.from);
        ends.push_back(hit.along.to);
    }
    std::ranges::sort(ends);
    std::map<std::vector<std::pair<std::uint32_t, float>>, double> byParts;
    for (std::size_t i = 1; i < ends.size(); ++i) {
        const double middle = (ends[i - 1] + ends[i]) / 2.0;
        std::map<std::pair<std::size_t, double>, std::uint64_t> here;
        for (const auto& hit : hits)
            if (hit.along.from < middle && middle < hit.along.to)
                here[{hit.limb, hit.density}] |= hit.forms;
        std::vector<std::pair<std::uint32_t, float>> parts;
        for (const auto& [what, forms] : here)
            parts.emplace_back(pattern(what.first, forms), static_cast<float>(what.second));
        if (!parts.empty() && ends[i] > ends[i - 1])
            byParts[parts] += ends[i] - ends[i - 1];
    }
    for (const auto& [parts, length] : byParts) {
        Stretch stretch{extinction_1_m * length, parts_.size(), 0};
        for (const auto& [p, density] : parts)
            parts_.push_back({p, density});
        stretch.last = parts_.size();
        stretches_.push_back(stretch);
    }
    kept.lastStretch = stretches_.size();
    rays_.push_back(kept);
}

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
    std::vector<std::array<double, kLevelsMost>> claims; ///< per part
    std::vector<std::uint8_t> simple;

    Item& item(std::size_t limb)
    {
        for (auto& known : items)
            if (known.limb == limb)
                return known;
        items.push_back({limb, 0.0, 0.0});
        return items.back();
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
        View::Span span{0.0, 1.0, false, 0.0, 0.0};
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
    view.gained.assign(patterns_.size(), {});
    view.gainedAll.assign(patterns_.size(), 0.0);
    view.woodGone.assign(patterns_.size(), 0.0);
    return view;
}

// Leaf at one place of a ray is as dense as the densest of the limbs there. Of the density between
// what certainly stays and what may stand there at most, each layer is gone only if all limbs that
// reach it are gone from it: shared among them by their leaf, each one's share is what it gives
// when it goes. The depth that goes is at most the sum of these, and the light, convex in the depth
// that goes, at most the chord from none to the most that so much leaf can take away.
void LightReach::addMost(const Ray& ray, View& view, double& sure) const
{
    std::uint32_t blocks = 0;
    bool blocked = false;
    double dearest = -1.0;
    for (std::size_t i = ray.firstWood; i < ray.lastWood; ++i) {
        const auto p = wood_[i];
        if (view.spans[p].most <= 0.0)
            continue; // gone for certain
        if (view.woodCosts[p] > view.leafLeft)
            return; // stays for certain
        blocked = true;
        if (const double leaf = leafOf_[patterns_[p].limb]; leaf > dearest) {
            dearest = leaf;
            blocks = p;
        }
    }
    double depth = 0.0;
    view.items.clear();
    view.claims.resize(std::max(view.claims.size(), parts_.size() == 0 ? 1 : std::size_t{256}));
    std::size_t used = 0;
    const std::size_t levels = view.levels.kept.size();
    struct Claim {
        std::uint32_t pattern{};
        double all{}; ///< > 0: in step with what goes
        std::size_t slot{};
    };
    thread_local std::vector<Claim> claims;
    claims.clear();
    for (std::size_t s = ray.firstStretch; s < ray.lastStretch; ++s) {
        const auto& stretch = stretches_[s];
        double top = 0.0;
        double floor = 0.0;
        double weights = 0.0;
        bool even = true;
        for (std::size_t i = stretch.first; i < stretch.last; ++i) {
            const auto& span = view.spans[parts_[i].pattern];
            const double high = span.most * parts_[i].density;
            if (high <= 0.0)
                continue;
            even = even && (top == 0.0 || top == high);
            top = std::max(top, high);
            floor = std::max(floor, span.least * parts_[i].density);
            weights += leafOf_[patterns_[parts_[i].pattern].limb];
        }
        depth += stretch.depth * top;
        if (top <= floor)
            continue;
        for (std::size_t i = stretch.first; i < stretch.last; ++i) {
            const auto p = parts_[i].pattern;
            const auto& span = view.spans[p];
            const double density = parts_[i].density;
            const double high = span.most * density;
            if (high <= floor)
                continue;
            const auto limb = patterns_[p].limb;
            auto& item = view.item(limb);
            if (even && floor == 0.0 && span.whole) {
                const double share = stretch.depth * high * leafOf_[limb] / weights;
                claims.push_back({p, share, 0});
                item.most += share * span.fade;
                item.rate += share * span.perLeaf;
                continue;
            }
            // Layer by layer: between the heights that single limbs reach.
            if (used == view.claims.size())
                view.claims.resize(2 * used);
            auto& claim = view.claims[used];
            claim.fill(0.0);
            double below = floor;
            while (below < high) {
                double next = high;
                double reach = 0.0;
                for (std::size_t j = stretch.first; j < stretch.last; ++j) {
                    const double other = view.spans[parts_[j].pattern].most * parts_[j].density;
                    if (other > below)
                        next = std::min(next, other);
                }
                for (std::size_t j = stretch.first; j < stretch.last; ++j)
                    if (view.spans[parts_[j].pattern].most * parts_[j].density >= next)
                        reach += leafOf_[patterns_[parts_[j].pattern].limb];
                for (std::size_t k = 0; k < levels; ++k)
                    claim[k] +=
                        stretch.depth * leafOf_[limb] / reach *
                        std::max(0.0, next - std::max(below, density * view.levels.kept[k]));
                below = next;
            }
            claims.push_back({p, 0.0, used++});
            const double all = claim[levels - 1];
            item.most += all;
            // In proportion it gives no faster than the leaf below its own top goes.
            item.rate += stretch.depth * density * span.perLeaf;
        }
    }
    double most = 0.0;
    double left = view.leafLeft;
    std::ranges::sort(view.items, std::ranges::greater{}, &View::Item::rate);
    for (const auto& item : view.items) {
        if (left <= 0.0)
            break;
        const double leaf = item.rate > 0.0 ? item.most / item.rate : 0.0;
        most += leaf <= left ? item.most : item.rate * left;
        left -= leaf;
    }
    if (blocked) {
        view.woodGone[blocks] += ray.worth * std::exp(std::min(0.0, most - depth));
        return;
    }
    const double now = ray.worth * std::exp(-depth);
    sure += now;
    if (claims.empty() || most <= 0.0)
        return;
    const double slope = now * (most > 1e-6 ? std::expm1(most) / most : 1.0 + most);
    for (const auto& claim : claims) {
        if (claim.all > 0.0)
            view.gainedAll[claim.pattern] += slope * claim.all;
        else
            for (std::size_t k = 0; k < levels; ++k)
                view.gained[claim.pattern][k] += slope * view.claims[claim.slot][k];
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
