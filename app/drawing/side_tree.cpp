// The tree itself on the side view: wood, leaf, figures.

#include "app/drawing/side_scene.hpp"

#include "model/crown/leafy_bodies.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

constexpr double kThinnest = 1.6; // pixels; a shoot that is drawn to scale would vanish
constexpr std::size_t kMostFigures = 6;
constexpr double kShootSpacing_m = 0.22;

/// The outline of a stretch of wood that tapers between two round ends.
QPainterPath taperedStretch(QPointF a, double widthA, QPointF b, double widthB)
{
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    const QPointF run = b - a;
    const double length = std::hypot(run.x(), run.y());
    if (length > 0.0) {
        const QPointF side(-run.y() / length, run.x() / length);
        // The way round that Qt draws ellipses: where they overlap, windings must not cancel.
        path.addPolygon(QPolygonF({a - side * widthA / 2, b - side * widthB / 2,
                                   b + side * widthB / 2, a + side * widthA / 2}));
        path.closeSubpath();
    }
    path.addEllipse(b, widthB / 2, widthB / 2);
    path.addEllipse(a, widthA / 2, widthA / 2);
    return path;
}

QPainterPath wood(const model::Limb& limb, const SideFrame& frame)
{
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    const auto width = [&](const model::Station& station) {
        return std::max(kThinnest, station.diameter_m * frame.pixelsPerMetre);
    };
    for (std::size_t i = 1; i < limb.stations.size(); ++i) {
        const auto& a = limb.stations[i - 1];
        const auto& b = limb.stations[i];
        path.addPath(taperedStretch(frame.toCanvas(a.position_m), width(a),
                                    frame.toCanvas(b.position_m), width(b)));
    }
    return path;
}

double middleDepth_m(const model::Limb& limb, const SideFrame& frame)
{
    return frame.depth_m(model::axisPoint(limb, model::length_m(limb) / 2.0).position_m);
}

std::vector<std::size_t> farthestFirst(const model::Tree& tree, const SideFrame& frame)
{
    std::vector<std::size_t> order(tree.limbs.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::ranges::stable_sort(order, std::ranges::greater{},
                             [&](std::size_t i) { return middleDepth_m(tree.limbs[i], frame); });
    return order;
}

/// The outline of a leafy body seen from the side: a parallelogram rounded by the radius.
QPainterPath bodyOutline(const model::Curtain& solid, const SideFrame& frame)
{
    const auto corners = model::corners(solid);
    const double r = solid.radius_m * frame.pixelsPerMetre;
    std::vector<model::Point2> around;
    constexpr int kSteps = 20;
    for (const auto& corner : corners) {
        const QPointF at = frame.toCanvas(corner);
        for (int step = 0; step < kSteps; ++step) {
            const double angle = 2.0 * M_PI * step / kSteps;
            around.push_back({at.x() + r * std::cos(angle), at.y() + r * std::sin(angle)});
        }
    }
    QPolygonF outline;
    for (const auto& p : model::convexHull(around))
        outline << QPointF(p.x, p.y);
    QPainterPath path;
    path.addPolygon(outline);
    path.closeSubpath();
    return path;
}

/// A fixed scatter in 0 .. 1, so that the same tree is always drawn the same.
double scatter(std::size_t a, std::size_t b)
{
    const double x = std::sin(static_cast<double>(a) * 12.9898 + static_cast<double>(b) * 78.233);
    return std::abs(x * 43758.5453 - std::floor(x * 43758.5453));
}

/// Flecks of leaf, strewn over a body as it is seen.
void addDabs(SceneLeaf& leaf, const model::LeafyBody& body, std::size_t seed,
             const SideFrame& frame)
{
    const double radius_m = body.solid.radius_m;
    const double length_m = model::norm(body.solid.b - body.solid.a);
    const double seen_m2 = 2.0 * radius_m * length_m + M_PI * radius_m * radius_m;
    const auto count = static_cast<std::size_t>(
        std::clamp(seen_m2 * frame.pixelsPerMetre * frame.pixelsPerMetre / 150.0, 6.0, 90.0));
    const double r = radius_m * frame.pixelsPerMetre;
    for (std::size_t i = 0; i < count; ++i) {
        const QPointF axis =
            frame.toCanvas(model::between(body.solid.a, body.solid.b, scatter(seed, i)));
        const double off = 0.94 * r * std::sqrt(scatter(i, seed + 11));
        const double angle = 2.0 * M_PI * scatter(seed + 5, i + 3);
        const QPointF at = axis + off * QPointF(std::cos(angle), std::sin(angle));
        const double size = 1.6 + 2.2 * scatter(seed + 2, i);
        leaf.dabs.addEllipse(at, size, 0.62 * size);
    }
}

void addShoots(SceneLeaf& leaf, const model::LeafyBody& body, std::size_t seed,
               const SideFrame& frame)
{
    if (body.solid.hang_m <= 0.0)
        return;
    const double length_m = model::norm(body.solid.b - body.solid.a);
    const auto count = static_cast<std::size_t>(std::ceil(length_m / kShootSpacing_m)) + 1;
    for (std::size_t i = 0; i < count; ++i) {
        const double t = (static_cast<double>(i) + scatter(seed, i)) / static_cast<double>(count);
        auto from = model::between(body.solid.a, body.solid.b, t);
        const double aside = (scatter(i, seed + 7) - 0.5) * 1.2 * body.solid.radius_m;
        from += aside * frame.across();
        auto to = from;
        to.z -= (0.75 + 0.25 * scatter(seed + 3, i)) * (body.solid.hang_m + body.solid.radius_m);
        leaf.shoots.emplace_back(frame.toCanvas(from), frame.toCanvas(to));
    }
}

/// \param firstBody  how many bodies the limbs before it have
SceneLeaf leafOf(const std::vector<model::LeafyBody>& bodies, std::size_t firstBody,
                 const SideFrame& frame)
{
    SceneLeaf leaf;
    leaf.bodies.setFillRule(Qt::WindingFill);
    leaf.dabs.setFillRule(Qt::WindingFill);
    std::size_t seed = firstBody;
    for (const auto& body : bodies) {
        leaf.bodies.addPath(bodyOutline(body.solid, frame));
        addDabs(leaf, body, ++seed, frame);
        addShoots(leaf, body, seed, frame);
    }
    return leaf;
}

void addFigures(SideScene& scene, const SideInput& input)
{
    std::vector<std::pair<double, const model::Limb*>> loaded;
    for (const auto& limb : input.shown.limbs)
        if (const auto load = input.load(limb.id); load && load->hasStrength)
            loaded.emplace_back(load->utilisation, &limb);
    std::ranges::stable_sort(loaded, std::ranges::greater{},
                             [](const auto& entry) { return entry.first; });
    for (std::size_t i = 0; i < loaded.size(); ++i) {
        const auto& [utilisation, limb] = loaded[i];
        const bool chosen = limb->id == input.chosenLimb;
        if (i >= kMostFigures && !chosen)
            continue;
        const double along = limb->parent ? 0.45 : 0.2;
        scene.figures.push_back(
            {input.frame.toCanvas(
                 model::axisPoint(*limb, along * model::length_m(*limb)).position_m),
             input.units.share(utilisation), chosen});
    }
}

} // namespace

void addLimbs(SideScene& scene, const SideInput& input)
{
    KeptSide none;
    auto& kept = input.kept ? input.kept->wood : none.wood;
    for (const auto index : farthestFirst(input.shown, input.frame)) {
        const auto& limb = input.shown.limbs[index];
        SceneLimb drawn{
            kept.drawn(index, limb, input.frame, [&] { return wood(limb, input.frame); }),
            std::nullopt,
            true,
            limb.id == input.chosenLimb,
            limb.measured == model::Measured::guessed,
            index};
        if (const auto load = input.load(limb.id)) {
            drawn.utilisation = load->utilisation;
            drawn.hasStrength = load->hasStrength;
        }
        scene.limbs.push_back(std::move(drawn));
    }
    if (&input.shown != &input.drawn)
        for (const auto& limb : input.drawn.limbs)
            scene.gone.push_back(wood(limb, input.frame));
    addFigures(scene, input);
}

void addLeaves(SideScene& scene, const SideInput& input)
{
    KeptSide none;
    auto& kept = input.kept ? input.kept->leaf : none.leaf;
    const auto& limbs = input.shown.limbs;
    std::vector<SceneLeaf> byLimb;
    std::size_t body = 0;
    for (std::size_t index = 0; index < limbs.size(); ++index) {
        std::vector<model::LeafyBody> bodies;
        model::appendLeafyBodies(limbs[index], index, bodies);
        byLimb.push_back(kept.drawn(index, limbs[index], {input.frame, body},
                                    [&] { return leafOf(bodies, body, input.frame); }));
        body += bodies.size();
    }
    const double reach = std::max(0.5, reach_m(input.drawn));
    for (const auto index : farthestFirst(input.shown, input.frame)) {
        auto& leaf = byLimb[index];
        if (leaf.bodies.isEmpty())
            continue;
        const auto& limb = limbs[index];
        leaf.nearness = std::clamp(0.5 - 0.5 * middleDepth_m(limb, input.frame) / reach, 0.0, 1.0);
        leaf.chosen = limb.id == input.chosenLimb;
        leaf.limb = index;
        scene.leaves.push_back(std::move(leaf));
    }
}

} // namespace app
