#include "model/crown/silhouette.hpp"

#include "model/geometry/angle.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace model {
namespace {

constexpr double kFar = std::numeric_limits<double>::infinity();

/// How far a limb's axis may stray from the straight pieces that stand for it, over the radius of
/// its leafy body.
constexpr double kStray = 0.1;

/// Keeps the points of a path that matter at this tolerance (Douglas and Peucker's way).
void keepBends(const std::vector<Curtain>& chain, std::size_t first, std::size_t last,
               double tolerance_m, std::vector<std::size_t>& kept)
{
    const Vec3 from = chain[first].a;
    const Vec3 run = chain[last - 1].b - from;
    const double square = dot(run, run);
    double most = tolerance_m;
    std::size_t bend = 0;
    for (std::size_t i = first + 1; i < last; ++i) {
        const Vec3 off = chain[i].a - from;
        const double t = square > 0.0 ? std::clamp(dot(off, run) / square, 0.0, 1.0) : 0.0;
        const double stray = norm(off - t * run);
        if (stray > most) {
            most = stray;
            bend = i;
        }
    }
    if (bend == 0) {
        kept.push_back(last);
        return;
    }
    keepBends(chain, first, bend, tolerance_m, kept);
    keepBends(chain, bend, last, tolerance_m, kept);
}

/// A chain of curtains as few straight ones; breaks where radius or hang change.
std::vector<Curtain> straightened(const std::vector<Curtain>& chain)
{
    std::vector<Curtain> few;
    std::size_t first = 0;
    while (first < chain.size()) {
        std::size_t last = first + 1;
        const double tolerance = kStray * chain[first].radius_m;
        while (last < chain.size() &&
               std::abs(chain[last].radius_m - chain[first].radius_m) <= tolerance &&
               std::abs(chain[last].hang_m - chain[first].hang_m) <= tolerance)
            ++last;
        std::vector<std::size_t> kept;
        keepBends(chain, first, last, tolerance, kept);
        for (const auto end : kept) {
            few.push_back(
                {chain[first].a, chain[end - 1].b, chain[first].radius_m, chain[first].hang_m});
            first = end;
        }
    }
    return few;
}

/// The bare wood of a limb: from its union to where its leaves start.
std::vector<Curtain> bareWood(const Limb& limb)
{
    const double bare = limb.foliage ? limb.foliage->from_m : length_m(limb);
    std::vector<Curtain> wood;
    if (bare <= 0.0)
        return wood;
    const auto axis = stretch(limb, 0.0, bare);
    for (std::size_t s = 1; s < axis.size(); ++s)
        wood.push_back({axis[s - 1].position_m, axis[s].position_m,
                        (axis[s - 1].diameter_m + axis[s].diameter_m) / 4.0, 0.0});
    return wood;
}

double totalLength(const std::vector<Interval>& spans)
{
    double length = 0.0;
    for (const auto& span : spans)
        length += span.to - span.from;
    return length;
}

/// Unites two sorted rows of spans into `united`.
void unite(const std::vector<Interval>& a, const std::vector<Interval>& b,
           std::vector<Interval>& united)
{
    united.clear();
    std::size_t i = 0;
    std::size_t j = 0;
    while (i < a.size() || j < b.size()) {
        const bool takeA = j == b.size() || (i < a.size() && a[i].from <= b[j].from);
        const Interval next = takeA ? a[i++] : b[j++];
        if (!united.empty() && next.from <= united.back().to)
            united.back().to = std::max(united.back().to, next.to);
        else
            united.push_back(next);
    }
}

/// What is left of sorted `spans` outside sorted `cover`.
void subtract(const std::vector<Interval>& spans, const std::vector<Interval>& cover,
              std::vector<Interval>& left)
{
    left.clear();
    for (const auto& span : spans) {
        double from = span.from;
        for (const auto& hidden : cover) {
            if (hidden.to <= from)
                continue;
            if (hidden.from >= span.to)
                break;
            if (hidden.from > from)
                left.push_back({from, hidden.from});
            from = hidden.to;
        }
        if (from < span.to)
            left.push_back({from, span.to});
    }
}

/// Adds one span to a sorted row of spans.
void cover(std::vector<Interval>& row, Interval span)
{
    auto first = row.begin();
    while (first != row.end() && first->to < span.from)
        ++first;
    auto last = first;
    for (; last != row.end() && last->from <= span.to; ++last)
        span = {std::min(span.from, last->from), std::max(span.to, last->to)};
    if (first == last) {
        row.insert(first, span);
        return;
    }
    *first = span;
    row.erase(first + 1, last);
}

Interval heightsOf(const Curtain& curtain)
{
    return {lowestPoint(curtain).z, std::max(curtain.a.z, curtain.b.z) + curtain.radius_m};
}

void widen(Interval& whole, Interval part)
{
    whole = {std::min(whole.from, part.from), std::max(whole.to, part.to)};
}

} // namespace

Silhouettes::Silhouettes(const Tree& tree, const LimbOrder& order,
                         const std::vector<LeafyBody>& bodies, int lines)
    : order_(order), outlines_(tree.limbs.size()), rows_(tree.limbs.size())
{
    std::vector<std::vector<Curtain>> leaf(tree.limbs.size());
    std::vector<std::vector<Curtain>> wood(tree.limbs.size());
    double finest = kFar;
    for (const auto& body : bodies) {
        leaf[body.limb].push_back(body.solid);
        finest = std::min(finest, body.solid.radius_m);
    }
    Interval heights{kFar, -kFar};
    std::size_t knots = 0;
    for (std::size_t i = 0; i < tree.limbs.size(); ++i) {
        leaf[i] = straightened(leaf[i]);
        wood[i] = straightened(bareWood(tree.limbs[i]));
        for (const auto& chain : {leaf[i], wood[i]})
            for (const auto& curtain : chain)
                widen(heights, heightsOf(curtain));
        firstVisible_.push_back(knots);
        knots += order.children[i].size() + 1;
    }
    visible_.resize(knots);
    bottom_m_ = heights.from;
    const double tall = heights.to - heights.from;
    const double enough = std::clamp(std::ceil(tall / (0.4 * finest)), 24.0, 64.0);
    spacing_m_ = tall / (lines > 0 ? static_cast<double>(lines) : enough);
    for (std::size_t i = 0; i < tree.limbs.size(); ++i)
        outlines_[i] = {drawn(leaf[i]), drawn(wood[i])};
    for (auto limb = order.rootFirst.rbegin(); limb != order.rootFirst.rend(); ++limb)
        reach(*limb);
}

std::vector<Silhouettes::Drawn> Silhouettes::drawn(const std::vector<Curtain>& chain) const
{
    std::vector<Drawn> result;
    for (const auto& curtain : chain) {
        // Line i runs at (i + 1/2) spacings above the bottom.
        const Interval heights = heightsOf(curtain);
        const double first = std::ceil((heights.from - bottom_m_) / spacing_m_ - 0.5);
        const double last = std::floor((heights.to - bottom_m_) / spacing_m_ - 0.5);
        result.push_back({curtain, static_cast<std::size_t>(std::max(0.0, first)),
                          static_cast<std::size_t>(std::max(0.0, last + 1.0))});
    }
    return result;
}

void Silhouettes::reach(std::size_t limb)
{
    auto& rows = rows_[limb];
    rows.first = std::numeric_limits<std::size_t>::max();
    const auto include = [&rows](std::size_t first, std::size_t last) {
        if (first >= last)
            return;
        rows.first = std::min(rows.first, first);
        rows.last = std::max(rows.last, last);
    };
    for (const auto& part : outlines_[limb].leaf)
        include(part.first, part.last);
    for (const auto& part : outlines_[limb].wood)
        include(part.first, part.last);
    for (const auto child : order_.children[limb])
        include(rows_[child].first, rows_[child].last);
    rows.first = std::min(rows.first, rows.last);
    rows.leaf.resize(rows.last - rows.first);
    rows.wood.resize(rows.last - rows.first);
}

void Silhouettes::draw(const Drawn& drawn, Vec3 across, std::size_t firstLine,
                       std::vector<Spans>& onto, double& single_m)
{
    const FlatCurtain seen(drawn.solid, across);
    for (std::size_t line = drawn.first; line < drawn.last; ++line) {
        const double height = bottom_m_ + (static_cast<double>(line) + 0.5) * spacing_m_;
        const auto span = seen.covered(height);
        if (!span)
            continue;
        single_m += span->to - span->from;
        cover(onto[line - firstLine], *span);
    }
}

void Silhouettes::drawOwn(std::size_t limb, Vec3 across)
{
    auto& rows = rows_[limb];
    rows.leafSingle_m = rows.woodSingle_m = rows.leafSingle_m2 = 0.0;
    for (auto& row : rows.leaf)
        row.clear();
    for (auto& row : rows.wood)
        row.clear();
    const Vec3 along{across.y, -across.x, 0.0};
    for (const auto& part : outlines_[limb].leaf) {
        draw(part, across, rows.first, rows.leaf, rows.leafSingle_m);
        rows.leafSingle_m2 += frontalArea_m2(part.solid, along);
    }
    for (const auto& part : outlines_[limb].wood)
        draw(part, across, rows.first, rows.wood, rows.woodSingle_m);
    rows.leafUnited_m = rows.woodShown_m = 0.0;
    for (std::size_t line = 0; line < rows.leaf.size(); ++line)
        hideWood(rows, line);
}

void Silhouettes::add(Rows& whole, const Rows& part)
{
    const std::size_t offset = part.first - whole.first;
    for (std::size_t line = 0; line < part.leaf.size(); ++line) {
        auto& leaf = whole.leaf[line + offset];
        auto& wood = whole.wood[line + offset];
        if (part.leaf[line].empty() && part.wood[line].empty())
            continue;
        whole.leafUnited_m -= totalLength(leaf);
        whole.woodShown_m -= totalLength(wood);
        unite(leaf, part.leaf[line], scratch_);
        leaf.swap(scratch_);
        unite(wood, part.wood[line], scratch_);
        wood.swap(scratch_);
        hideWood(whole, line + offset);
    }
    whole.leafSingle_m += part.leafSingle_m;
    whole.woodSingle_m += part.woodSingle_m;
    whole.leafSingle_m2 += part.leafSingle_m2;
}

void Silhouettes::hideWood(Rows& rows, std::size_t line)
{
    rows.leafUnited_m += totalLength(rows.leaf[line]);
    if (rows.wood[line].empty())
        return;
    subtract(rows.wood[line], rows.leaf[line], scratch_);
    rows.wood[line].swap(scratch_);
    rows.woodShown_m += totalLength(rows.wood[line]);
}

Visible Silhouettes::seen(const Rows& rows)
{
    const double united =
        rows.leafSingle_m > 0.0 ? rows.leafUnited_m / rows.leafSingle_m : 1.0; // (L8)
    return {rows.leafSingle_m2 * united,
            rows.woodSingle_m > 0.0 ? rows.woodShown_m / rows.woodSingle_m : 1.0};
}

void Silhouettes::lookAlong(double bearing_deg)
{
    const Vec3 along = bearingDirection(bearing_deg);
    const Vec3 across{-along.y, along.x, 0.0};
    for (auto limb = order_.rootFirst.rbegin(); limb != order_.rootFirst.rend(); ++limb) {
        auto& rows = rows_[*limb];
        drawOwn(*limb, across);
        auto knot = firstVisible_[*limb];
        visible_[knot] = seen(rows);
        const auto& children = order_.children[*limb];
        for (auto child = children.rbegin(); child != children.rend(); ++child) {
            add(rows, rows_[*child]);
            visible_[++knot] = seen(rows);
        }
    }
}

} // namespace model
