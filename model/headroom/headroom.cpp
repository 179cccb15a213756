#include "model/headroom/headroom.hpp"

#include "model/geometry/segment.hpp"

#include <algorithm>
#include <cmath>

namespace model::headroom {
namespace {

// Good to a tenth of a millimetre along an edge of any garden's size.
constexpr double kAlongEdge_m = 1e-4;

/// The stretch of an edge, as shares of it, over which the curtain lies: a segment meets a convex
/// outline in one stretch. Found on the outline's defining shape, a row of equal discs.
std::optional<Interval> underCurtain(const Curtain& curtain, Point2 from, Point2 to)
{
    const Vec3 start{from.x, from.y, 0.0};
    const Point2 run = to - from;
    const double length = norm(run);
    if (length <= 0.0)
        return std::nullopt;
    const Curtain flat{
        {curtain.a.x, curtain.a.y, 0.0}, {curtain.b.x, curtain.b.y, 0.0}, curtain.radius_m, 0.0};
    const auto inside = chord(flat, start, {run.x / length, run.y / length, 0.0});
    if (!inside || inside->from >= length)
        return std::nullopt;
    return Interval{inside->from / length, std::min(1.0, inside->to / length)};
}

double heightOr(const Curtain& curtain, Point2 at, double otherwise)
{
    return undersideHeight_m(curtain, at).value_or(otherwise);
}

/// Least height of the underside along an edge. The underside is convex along any line, so a
/// golden section search closes in on the one least value.
std::optional<LowPoint> lowestAlong(const Curtain& curtain, Point2 from, Point2 to)
{
    const auto under = underCurtain(curtain, from, to);
    if (!under)
        return std::nullopt;
    const double rim = std::max(curtain.a.z, curtain.b.z) - curtain.hang_m; // never below it
    const auto at = [&](double t) { return from + t * (to - from); };
    const auto height = [&](double t) { return heightOr(curtain, at(t), rim); };
    const double golden = (std::sqrt(5.0) - 1.0) / 2.0;
    double low = under->from;
    double high = under->to;
    const double fine = kAlongEdge_m / std::max(kAlongEdge_m, norm(to - from));
    while (high - low > fine) {
        const double left = high - golden * (high - low);
        const double right = low + golden * (high - low);
        (height(left) <= height(right) ? high : low) = height(left) <= height(right) ? right : left;
    }
    LowPoint best{height((low + high) / 2.0), at((low + high) / 2.0)};
    for (const double end : {under->from, under->to})
        if (height(end) < best.height_m)
            best = {height(end), at(end)};
    return best;
}

/// Where on plan the curtain is lowest. A level curtain is as low all along: its middle stands
/// for it, and the edges of the strip do the rest.
Point2 lowestPlace(const Curtain& curtain)
{
    return curtain.a.z == curtain.b.z ? plan(between(curtain.a, curtain.b, 0.5))
                                      : plan(lowestPoint(curtain));
}

Polygon inTreeFrame(const Polygon& outline, Point2 tree)
{
    Polygon moved = outline;
    for (auto& corner : moved)
        corner = corner - tree;
    return moved;
}

void lower(std::optional<LowPoint>& lowest, const std::optional<LowPoint>& other)
{
    if (other && (!lowest || other->height_m < lowest->height_m))
        lowest = other;
}

/// A strip as a tree stands to it, tree frame.
struct StripPlace {
    Polygon outline;
    Point2 southWest{};
    Point2 northEast{};
    bool walkedRound{}; ///< the stem's own wood doesn't count

    StripPlace(const Strip& strip, const Tree& tree)
        : outline(inTreeFrame(strip.outline_m, tree.position_m)),
          walkedRound(stemStandsIn(tree, outline))
    {
        if (!outline.empty())
            southWest = northEast = outline.front();
        for (const auto corner : outline) {
            southWest = {std::min(southWest.x, corner.x), std::min(southWest.y, corner.y)};
            northEast = {std::max(northEast.x, corner.x), std::max(northEast.y, corner.y)};
        }
    }
    /// Most of a crown is nowhere near a strip.
    [[nodiscard]] bool isFarFrom(const Curtain& solid) const
    {
        const double r = solid.radius_m;
        return std::max(solid.a.x, solid.b.x) + r < southWest.x ||
               std::min(solid.a.x, solid.b.x) - r > northEast.x ||
               std::max(solid.a.y, solid.b.y) + r < southWest.y ||
               std::min(solid.a.y, solid.b.y) - r > northEast.y;
    }
};

/// What one limb has over a strip.
struct LimbOver {
    std::optional<LowPoint> lowest;
    std::optional<LowPoint> withoutShoots;
    std::vector<Curtain> solids; ///< the wood and leaf that are over the strip

    void add(const Curtain& solid, const StripPlace& strip)
    {
        if (strip.isFarFrom(solid))
            return;
        const auto low = lowestOver(solid, strip.outline);
        if (!low)
            return;
        solids.push_back(solid);
        lower(lowest, low);
        if (solid.hang_m == 0.0)
            return lower(withoutShoots, low);
        Curtain bare = solid;
        bare.hang_m = 0.0;
        lower(withoutShoots, lowestOver(bare, strip.outline));
    }
};

LimbOver limbOver(const Tree& tree, std::size_t limb, const std::vector<LeafyBody>& bodies,
                  const StripPlace& strip)
{
    LimbOver over;
    if (tree.limbs[limb].parent || !strip.walkedRound)
        for (const auto& wood : woodSolids(tree.limbs[limb]))
            over.add(wood, strip);
    for (const auto& body : std::ranges::equal_range(bodies, limb, {}, &LeafyBody::limb))
        over.add(body.solid, strip);
    if (over.lowest) // round ends of wood reach a little into the ground
        over.lowest->height_m = std::max(0.0, over.lowest->height_m);
    return over;
}

/// What all limbs of a tree have over a strip.
struct TreeOver {
    std::vector<LowPart> parts;  ///< the lowest of each limb that is over it, lowest first
    std::vector<Curtain> solids; ///< all that is over it
};

TreeOver treeOver(const Tree& tree, const std::vector<LeafyBody>& bodies, const StripPlace& strip,
                  double needed_m)
{
    TreeOver result;
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb) {
        auto over = limbOver(tree, limb, bodies, strip);
        if (!over.lowest)
            continue;
        result.solids.insert(result.solids.end(), over.solids.begin(), over.solids.end());
        result.parts.push_back({tree.limbs[limb].id, over.lowest->height_m,
                                !over.withoutShoots || over.withoutShoots->height_m >= needed_m,
                                over.lowest->at_m + tree.position_m});
    }
    std::ranges::stable_sort(result.parts, {}, &LowPart::height_m);
    return result;
}

/// Those below a height.
std::vector<LowPart> below(std::vector<LowPart> lowestFirst, double height_m)
{
    std::erase_if(lowestFirst, [&](const LowPart& part) { return part.height_m >= height_m; });
    return lowestFirst;
}

double overhang_m2(const std::vector<Curtain>& solids, const Polygon& strip)
{
    std::vector<Polygon> outlines;
    for (const auto& solid : solids)
        outlines.push_back(footprint(solid));
    return area_m2(intersect(unite(outlines), toRegion(strip)));
}

StripHeadroom overStrip(const Tree& tree, const std::vector<LeafyBody>& bodies, const Strip& strip,
                        Overhang overhang)
{
    const StripPlace place(strip, tree);
    StripHeadroom result;
    result.strip = strip.id;
    result.needed_m = neededHeadroom_m(strip);
    const auto over = treeOver(tree, bodies, place, result.needed_m);
    if (overhang == Overhang::reckoned)
        result.overhang_m2 = overhang_m2(over.solids, place.outline);
    if (over.parts.empty())
        return result;
    result.height_m = over.parts.front().height_m;
    result.lowestAt_m = over.parts.front().at_m;
    result.shortfall_m = std::max(0.0, result.needed_m - *result.height_m);
    result.blame = below(over.parts, result.needed_m);
    return result;
}

std::vector<StripHeadroom> overStrips(const Garden& garden, const Tree& tree, Overhang overhang)
{
    const auto bodies = leafyBodies(tree);
    std::vector<StripHeadroom> all;
    for (const auto& strip : garden.strips)
        all.push_back(overStrip(tree, bodies, strip, overhang));
    return all;
}

SaggedHeadroom saggedOver(const Tree& tree, const std::vector<LeafyBody>& bodies,
                          const Strip& strip)
{
    SaggedHeadroom result;
    const double needed_m = neededHeadroom_m(strip);
    const auto over = treeOver(tree, bodies, StripPlace(strip, tree), needed_m);
    if (over.parts.empty())
        return result;
    result.height_m = over.parts.front().height_m;
    result.lowestLimb = over.parts.front().limb;
    result.shortfall_m = std::max(0.0, needed_m - *result.height_m);
    result.blame = below(over.parts, needed_m);
    return result;
}

} // namespace

UsualHeadroom usualHeadroom(StripUse use)
{
    switch (use) {
    case StripUse::path:
        return {2.4,
                "municipal codes for footways, 7-10 ft, mostly 8 ft (Miamisburg OH, Vermillion "
                "SD 90.79, Ankeny IA 166, Clive IA)"};
    case StripUse::mower:
        return {2.1, "common practice, no source: a person walking upright with a hand to spare "
                     "(some UK contractors use 2.5 m)"};
    case StripUse::rideOnMower:
        return {2.3, "common practice, no source: the driver's seated height and a margin"};
    case StripUse::drive:
        return {3.0, "common practice, no source, for cars (2.4-3.0 m); lorries and fire engines "
                     "need 4.1 m (IFC 503.2.1, 13 ft 6 in, from memory)"};
    case StripUse::seat:
        return {2.1, "common practice, no source; ADA Standards 2010, 307.4, ask 80 in (2.03 m) "
                     "wherever people walk (from memory)"};
    case StripUse::play:
        return {2.1, "US CPSC playground handbook and ASTM F1487, 84 in above platforms and seats; "
                     "from memory"};
    case StripUse::road:
        return {5.2, "UK highways practice, 5.05-5.3 m (Windsor & Maidenhead tree strategy: 5.3); "
                     "US codes 12-16 ft"};
    case StripUse::sight:
        return {2.4, "municipal codes for corner sight triangles: nothing from 30-36 in to 8 ft "
                     "(Woodridge IL, Burtchville MI, Billings MT, Dubuque IA, Forest Park OH)"};
    case StripUse::fireZone:
        return {1.8,
                "CAL FIRE advice: lowest limb 6 ft above the ground; one city asks it of trees "
                "over 18 ft (Escondido CA)"};
    case StripUse::other:
        break;
    }
    return {2.1, "common practice, no source"};
}

bool stemStandsIn(const Tree& tree, const Polygon& strip)
{
    const auto& base = tree.limbs.at(limbOrder(tree).trunk).stations.front();
    const Point2 foot = plan(base.position_m);
    if (covers(strip, foot))
        return true;
    const auto level = [](Point2 p) { return Vec3{p.x, p.y, 0.0}; };
    for (std::size_t i = 0; i < strip.size(); ++i)
        if (pointToSegment_m(level(foot), level(strip[i]), level(strip[(i + 1) % strip.size()])) <=
            base.diameter_m / 2.0)
            return true;
    return false;
}

double neededHeadroom_m(const Strip& strip)
{
    return strip.headroom_m.value_or(usualHeadroom(strip.use).height_m);
}

std::vector<StripHeadroom> treeHeadroom(const Garden& garden, const Tree& tree)
{
    return overStrips(garden, tree, Overhang::reckoned);
}

std::vector<StripHeadroom> treeHeadroom(const Garden& garden, const Tree& tree, const Tree& sagging,
                                        Overhang overhang)
{
    auto all = overStrips(garden, tree, overhang);
    const auto bodies = leafyBodies(sagging);
    for (std::size_t i = 0; i < all.size(); ++i)
        all[i].sagged = saggedOver(sagging, bodies, garden.strips[i]);
    return all;
}

double StripHeadroom::worstShortfall_m() const
{
    return std::max(shortfall_m, sagged ? sagged->shortfall_m : 0.0);
}

std::optional<double> StripHeadroom::worstHeight_m() const
{
    if (!sagged || !sagged->height_m)
        return height_m;
    return height_m ? std::min(*height_m, *sagged->height_m) : *sagged->height_m;
}

std::optional<LowPoint> lowestOver(const Curtain& curtain, const Polygon& strip)
{
    const Point2 place = lowestPlace(curtain);
    if (covers(strip, place))
        return LowPoint{*undersideHeight_m(curtain, place), place};
    std::optional<LowPoint> lowest;
    for (std::size_t i = 0; i < strip.size(); ++i)
        lower(lowest, lowestAlong(curtain, strip[i], strip[(i + 1) % strip.size()]));
    return lowest;
}

} // namespace model::headroom
