#include "model/crown/silhouette.hpp"

#include "model/crown/flat_curtain.hpp"
#include "model/crown/straightened.hpp"
#include "model/geometry/angle.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace model {
namespace {

constexpr double kFar = std::numeric_limits<double>::infinity();

// Lines a share of the smallest leafy radius apart, but no fewer or more over the tree's height:
// measured, tests/model/load/silhouette_test.cpp.
constexpr double kApart = 0.4;
constexpr double kFewest = 24.0;
constexpr double kMost = 64.0;

/// Spacings go in steps of an eighth of a doubling, so that a tree that grows a little under the
/// hand keeps its lines.
constexpr double kStepsPerDoubling = 8.0;

Interval heightsOf(const Curtain& curtain)
{
    return {lowestPoint(curtain).z, std::max(curtain.a.z, curtain.b.z) + curtain.radius_m};
}

void widen(Interval& whole, Interval part)
{
    whole = {std::min(whole.from, part.from), std::max(whole.to, part.to)};
}

} // namespace

std::vector<double> halfTurn_deg(double step_deg)
{
    std::vector<double> bearings;
    for (double bearing = 0.0; bearing < 180.0; bearing += step_deg)
        bearings.push_back(bearing);
    return bearings;
}

void Silhouettes::Rows::clear(std::size_t expected)
{
    spans.clear();
    spans.reserve(expected);
    start.clear();
    start.reserve(expected + 1);
    start.push_back(0);
}

void Silhouettes::Rows::append(const SpanRow& row)
{
    spans.insert(spans.end(), row.spans().begin(), row.spans().end());
    start.push_back(spans.size());
}

Silhouettes::Silhouettes(const std::vector<double>& bearings_deg, int lines) : lines_(lines)
{
    for (const double bearing : bearings_deg) {
        const Vec3 along = bearingDirection(bearing);
        across_.push_back({-along.y, along.x, 0.0});
    }
}

Silhouettes::Silhouettes(const Tree& tree, const LimbOrder& order,
                         const std::vector<LeafyBody>& bodies,
                         const std::vector<double>& bearings_deg, int lines)
    : Silhouettes(bearings_deg, lines)
{
    const std::size_t count = tree.limbs.size();
    (void)redraw(tree, order, bodies,
                 {std::vector(count, kNoLimb), std::vector(count, true), std::vector(count, true)});
}

bool Silhouettes::redraw(const Tree& tree, const LimbOrder& order,
                         const std::vector<LeafyBody>& bodies, const Redrawn& redrawn)
{
    std::vector<Seen> before = std::exchange(limbs_, std::vector<Seen>(tree.limbs.size()));
    for (std::size_t i = 0; i < limbs_.size(); ++i) {
        if (redrawn.from[i] != kNoLimb)
            limbs_[i] = std::move(before[redrawn.from[i]]);
        if (redrawn.own[i])
            drawOwn(tree, bodies, i);
    }
    const double spacing_m = spacing();
    const bool all = spacing_m != spacing_m_;
    spacing_m_ = spacing_m;
    for (std::size_t i = 0; i < limbs_.size(); ++i)
        if (all || redrawn.own[i]) {
            meetLines(limbs_[i].leaf);
            meetLines(limbs_[i].wood);
        }
    for (auto limb = order.rootFirst.rbegin(); limb != order.rootFirst.rend(); ++limb)
        if (all || redrawn.beyond[*limb])
            lookAt(order, *limb);
    return all;
}

void Silhouettes::drawOwn(const Tree& tree, const std::vector<LeafyBody>& bodies, std::size_t limb)
{
    auto& seen = limbs_[limb];
    const auto own = std::ranges::equal_range(bodies, limb, {}, &LeafyBody::limb);
    std::vector<Curtain> chain;
    seen.finest_m = kFar;
    seen.heights = {kFar, -kFar};
    for (const auto& body : own) {
        chain.push_back(body.solid);
        seen.finest_m = std::min(seen.finest_m, body.solid.radius_m);
    }
    seen.leaf.clear();
    seen.wood.clear();
    for (const auto& curtain : straightened(chain))
        seen.leaf.push_back({curtain, 0, 0});
    for (const auto& curtain : straightened(bareWood(tree.limbs[limb])))
        seen.wood.push_back({curtain, 0, 0});
    for (const auto* parts : {&seen.leaf, &seen.wood})
        for (const auto& part : *parts)
            widen(seen.heights, heightsOf(part.solid));
}

double Silhouettes::spacing() const
{
    Interval heights{kFar, -kFar};
    double finest_m = kFar;
    for (const auto& limb : limbs_) {
        widen(heights, limb.heights);
        finest_m = std::min(finest_m, limb.finest_m);
    }
    const double tall = heights.to - heights.from;
    if (lines_ > 0)
        return tall / static_cast<double>(lines_);
    const double wanted = std::clamp(kApart * finest_m, tall / kMost, tall / kFewest);
    return std::exp2(std::floor(kStepsPerDoubling * std::log2(wanted)) / kStepsPerDoubling);
}

/// Line i runs at (i + 1/2) spacings above the ground.
void Silhouettes::meetLines(std::vector<Drawn>& chain) const
{
    for (auto& part : chain) {
        const Interval heights = heightsOf(part.solid);
        part.first = std::lround(std::ceil(heights.from / spacing_m_ - 0.5));
        part.last = std::lround(std::floor(heights.to / spacing_m_ - 0.5)) + 1;
    }
}

void Silhouettes::reach(const LimbOrder& order, std::size_t limb)
{
    auto& seen = limbs_[limb];
    seen.first = std::numeric_limits<long>::max();
    seen.last = std::numeric_limits<long>::min();
    const auto include = [&seen](long first, long last) {
        if (first >= last)
            return;
        seen.first = std::min(seen.first, first);
        seen.last = std::max(seen.last, last);
    };
    for (const auto* parts : {&seen.leaf, &seen.wood})
        for (const auto& part : *parts)
            include(part.first, part.last);
    for (const auto child : order.children[limb])
        include(limbs_[child].first, limbs_[child].last);
    if (seen.first > seen.last)
        seen.first = seen.last = 0;
}

void Silhouettes::lookAt(const LimbOrder& order, std::size_t limb)
{
    reach(order, limb);
    auto& seen = limbs_[limb];
    seen.single.resize(across_.size());
    seen.visible.resize((order.children[limb].size() + 1) * across_.size());
    const auto rows = across_.size() * static_cast<std::size_t>(seen.last - seen.first);
    seen.leafRows.clear(rows);
    seen.woodRows.clear(rows);
    for (std::size_t i = 0; i < across_.size(); ++i)
        lookAlong(order, limb, i);
}

void Silhouettes::lookAlong(const LimbOrder& order, std::size_t limb, std::size_t bearing)
{
    auto& seen = limbs_[limb];
    const auto& children = order.children[limb];
    Single single = layOwn(seen, bearing);
    bench_.leafUnited_m.assign(children.size() + 1, 0.0);
    bench_.woodShown_m.assign(children.size() + 1, 0.0);
    for (long line = seen.first; line < seen.last; ++line) {
        coverLine(order, limb, bearing, line);
        if (order.parent[limb] == kNoLimb)
            continue; // nobody asks for the rows of the whole tree
        seen.leafRows.append(bench_.leafRow);
        seen.woodRows.append(bench_.woodRow);
    }
    for (std::size_t outermost = 0; outermost <= children.size(); ++outermost) {
        if (outermost > 0) {
            const auto& part = limbs_[children[children.size() - outermost]].single[bearing];
            single.leaf_m += part.leaf_m;
            single.wood_m += part.wood_m;
            single.leaf_m2 += part.leaf_m2;
        }
        const double united =
            single.leaf_m > 0.0 ? bench_.leafUnited_m[outermost] / single.leaf_m : 1.0; // (L8)
        seen.visible[outermost * across_.size() + bearing] = {
            single.leaf_m2 * united,
            single.wood_m > 0.0 ? bench_.woodShown_m[outermost] / single.wood_m : 1.0};
    }
    seen.single[bearing] = single;
}

/// The stretches of the limb's own leaf and wood.
Silhouettes::Single Silhouettes::layOwn(const Seen& limb, std::size_t bearing)
{
    const Vec3 across = across_[bearing];
    Single single;
    meet(limb.leaf, across, bench_.leaf, single.leaf_m);
    meet(limb.wood, across, bench_.wood, single.wood_m);
    for (const auto& part : limb.leaf)
        single.leaf_m2 += frontalArea_m2(part.solid, {across.y, -across.x, 0.0});
    return single;
}

void Silhouettes::meet(const std::vector<Drawn>& chain, Vec3 across,
                       std::vector<std::vector<Interval>>& stretches, double& single_m) const
{
    if (stretches.size() < chain.size())
        stretches.resize(chain.size());
    for (std::size_t i = 0; i < chain.size(); ++i) {
        const FlatCurtain seen(chain[i].solid, across);
        stretches[i].clear();
        for (long line = chain[i].first; line < chain[i].last; ++line) {
            const auto covered = seen.covered((static_cast<double>(line) + 0.5) * spacing_m_);
            stretches[i].push_back(covered.value_or(Interval{1.0, 0.0}));
            if (covered)
                single_m += covered->to - covered->from;
        }
    }
}

/// Puts one line together: the limb's own stretches, then those of the limbs that grow from it,
/// outermost first. Leaf hides wood.
void Silhouettes::coverLine(const LimbOrder& order, std::size_t limb, std::size_t bearing,
                            long line)
{
    const auto& seen = limbs_[limb];
    auto& [leafOwn, woodOwn, leaf, wood, scratch, leafUnited_m, woodShown_m] = bench_;
    leaf.clear();
    wood.clear();
    const auto lay = [line](SpanRow& row, const std::vector<Drawn>& chain, const auto& stretches) {
        for (std::size_t i = 0; i < chain.size(); ++i) {
            if (line < chain[i].first || line >= chain[i].last)
                continue;
            const Interval stretch = stretches[i][static_cast<std::size_t>(line - chain[i].first)];
            if (stretch.from <= stretch.to)
                row.cover(stretch);
        }
    };
    lay(leaf, seen.leaf, leafOwn);
    lay(wood, seen.wood, woodOwn);
    if (!wood.empty())
        wood.subtract(leaf, scratch);
    leafUnited_m[0] += leaf.length();
    woodShown_m[0] += wood.length();
    const auto& children = order.children[limb];
    for (std::size_t outermost = 1; outermost <= children.size(); ++outermost) {
        const auto& part = limbs_[children[children.size() - outermost]];
        if (line >= part.first && line < part.last) {
            const auto row = bearing * static_cast<std::size_t>(part.last - part.first) +
                             static_cast<std::size_t>(line - part.first);
            const auto leafBeyond = part.leafRows.row(row);
            const auto woodBeyond = part.woodRows.row(row);
            leaf.cover(leafBeyond);
            wood.cover(woodBeyond);
            if (!wood.empty() && !(leafBeyond.empty() && woodBeyond.empty()))
                wood.subtract(leaf, scratch);
        }
        leafUnited_m[outermost] += leaf.length();
        woodShown_m[outermost] += wood.length();
    }
}

} // namespace model
