#include "app/drawing/plan_scene.hpp"

#include "app/drawing/scale_bar.hpp"
#include "app/drawing/side_frame.hpp"
#include "model/crown/plan_outlines.hpp"
#include "model/geometry/angle.hpp"

#include <QTransform>

#include <algorithm>

namespace app {
namespace {

constexpr double kMargin = 30.0; // pixels kept free around the garden
constexpr double kEyeGap = 26.0; // pixels from the crown's edge to the gardener
constexpr double kWindGap = 4.0; // and to the tip of the wind's arrow
constexpr double kWindLength = 26.0;
constexpr double kScaleBarAim = 90.0;

struct Bounds {
    double west{1e9};
    double south{1e9};
    double east{-1e9};
    double north{-1e9};

    void take(model::Point2 p, double around = 0.0)
    {
        west = std::min(west, p.x - around);
        east = std::max(east, p.x + around);
        south = std::min(south, p.y - around);
        north = std::max(north, p.y + around);
    }
};

Bounds bounds(const model::Garden& garden, const model::Tree* chosen)
{
    Bounds all;
    for (const auto& tree : garden.trees)
        all.take(tree.position_m, reach_m(tree) + (&tree == chosen ? 2.0 : 0.5));
    for (const auto& neighbour : garden.neighbours)
        all.take(neighbour.position_m,
                 std::max(neighbour.spread_m, neighbour.across_m.value_or(0.0)) / 2.0);
    const auto takeAll = [&all](const auto& things) {
        for (const auto& thing : things)
            for (const auto corner : thing.outline_m)
                all.take(corner);
    };
    takeAll(garden.plantings);
    takeAll(garden.strips);
    takeAll(garden.structures);
    for (const auto& line : garden.lines)
        for (const auto& point : line.path_m)
            all.take(plan(point));
    if (all.west > all.east)
        all.take({0.0, 0.0}, 8.0);
    return all;
}

QPolygonF toCanvas(const model::Polygon& outline, const PlanFrame& frame)
{
    QPolygonF drawn;
    for (const auto corner : outline)
        drawn << frame.toCanvas(corner);
    return drawn;
}

PlanShape shape(PlanKind kind, const std::string& name, const model::Polygon& outline,
                const PlanFrame& frame)
{
    return {kind, QString::fromStdString(name), toCanvas(outline, frame),
            frame.toCanvas(model::centroid(outline))};
}

PlanKind kindOf(const model::Planting& planting)
{
    switch (planting.kind) {
    case model::PlantingKind::hedge:
        return PlanKind::hedge;
    case model::PlantingKind::shrub:
        return PlanKind::shrub;
    case model::PlantingKind::lawn:
        return PlanKind::lawn;
    case model::PlantingKind::bed:
        break;
    }
    return PlanKind::bed;
}

PlanKind kindOf(const model::Structure& structure)
{
    switch (structure.kind) {
    case model::StructureKind::fence:
        return PlanKind::fence;
    case model::StructureKind::glasshouse:
        return PlanKind::glasshouse;
    case model::StructureKind::pond:
        return PlanKind::pond;
    case model::StructureKind::building:
    case model::StructureKind::chimney:
    case model::StructureKind::other:
        break;
    }
    return PlanKind::building;
}

/// Lawns first, so that what lies on them is seen.
void addShapes(PlanScene& scene, const PlanInput& input)
{
    for (const auto& planting : input.garden.plantings)
        if (planting.kind == model::PlantingKind::lawn)
            scene.shapes.push_back(
                shape(PlanKind::lawn, planting.name, planting.outline_m, input.frame));
    for (const auto& strip : input.garden.strips)
        scene.shapes.push_back(shape(PlanKind::strip, strip.name, strip.outline_m, input.frame));
    for (const auto& planting : input.garden.plantings)
        if (planting.kind != model::PlantingKind::lawn)
            scene.shapes.push_back(
                shape(kindOf(planting), planting.name, planting.outline_m, input.frame));
    for (const auto& structure : input.garden.structures)
        scene.shapes.push_back(
            shape(kindOf(structure), structure.name, structure.outline_m, input.frame));
}

PlanTree treeFromAbove(const model::Tree& tree, const PlanInput& input)
{
    PlanTree drawn;
    drawn.crown.setFillRule(Qt::WindingFill);
    for (auto outline : model::planOutlines(model::leafyBodies(tree))) {
        for (auto& corner : outline)
            corner = corner + tree.position_m;
        drawn.crown.addPolygon(toCanvas(outline, input.frame));
        drawn.crown.closeSubpath();
    }
    drawn.stem = input.frame.toCanvas(tree.position_m);
    drawn.stemRadius =
        std::max(2.5, model::stemDiameter_m(tree) / 2.0 * input.frame.pixelsPerMetre);
    drawn.name = QString::fromStdString(tree.name.empty() ? tree.species : tree.name);
    drawn.chosen = &tree == input.chosen;
    return drawn;
}

void addShadow(PlanScene& scene, const PlanInput& input)
{
    if (!input.shadows)
        return;
    scene.shadow.setFillRule(Qt::WindingFill); // parts overlap
    for (const auto& region : *input.shadows)
        for (const auto& part : *region)
            for (const auto& ring : part.rings) {
                scene.shadow.addPolygon(toCanvas(ring, input.frame));
                scene.shadow.closeSubpath();
            }
}

void addMap(PlanScene& scene, const PlanInput& input)
{
    const auto& map = *input.map;
    const auto& grid = map.grid;
    if (map.points.size() != grid.columns * grid.rows || !(map.open_h > 0.0))
        return;
    PlanMap drawn;
    const double half = grid.spacing_m / 2.0;
    const auto columns = static_cast<double>(grid.columns);
    const auto rows = static_cast<double>(grid.rows);
    const model::Point2 west{grid.first_m.x - half, grid.first_m.y - half + rows * grid.spacing_m};
    const QPointF corner = input.frame.toCanvas(west);
    drawn.target =
        QRectF(corner, QSizeF(columns, rows) * grid.spacing_m * input.frame.pixelsPerMetre);
    drawn.columns = static_cast<int>(grid.columns);
    drawn.rows = static_cast<int>(grid.rows);
    for (const auto& point : map.points)
        drawn.share.push_back(std::clamp(point.sun_h / map.open_h, 0.0, 1.0));
    drawn.scale = {input.units.hours(0.0), input.units.hours(map.open_h)};
    scene.map = std::move(drawn);
}

/// Neighbours are not cut here: an outline without leaf to shape.
PlanTree neighbourFromAbove(const model::Neighbour& neighbour, const PlanInput& input)
{
    PlanTree drawn;
    const QPointF middle = input.frame.toCanvas(neighbour.position_m);
    const double along = neighbour.spread_m / 2.0 * input.frame.pixelsPerMetre;
    const double across =
        neighbour.across_m.value_or(neighbour.spread_m) / 2.0 * input.frame.pixelsPerMetre;
    QPainterPath upright;
    upright.addEllipse(QPointF(), across, along);
    drawn.crown =
        QTransform().translate(middle.x(), middle.y()).rotate(neighbour.bearing_deg).map(upright);
    drawn.stem = middle;
    drawn.stemRadius =
        std::max(2.5, neighbour.stemDiameter_m.value_or(0.0) / 2.0 * input.frame.pixelsPerMetre);
    drawn.name =
        QString::fromStdString(neighbour.name.empty() ? neighbour.species : neighbour.name);
    return drawn;
}

void addEyeAndSun(PlanScene& scene, const PlanInput& input)
{
    if (!input.chosen)
        return;
    const QPointF stem = input.frame.toCanvas(input.chosen->position_m);
    const auto towards = [](double bearing_deg) {
        const auto direction = model::bearingDirection(bearing_deg);
        return QPointF(direction.x, -direction.y);
    };
    const double distance = eyeDistance(*input.chosen, input.frame);
    scene.eye = stem - towards(input.bearing_deg) * distance;
    scene.gaze = {scene.eye, stem};
    if (input.sun && input.sun->elevation_deg > 0.0) {
        const QPointF ray = towards(input.sun->azimuth_deg);
        scene.sunRay = QLineF(stem + ray * (distance + 18.0), stem + ray * (distance - 18.0));
    }
    if (input.wind_deg) {
        const QPointF lee = towards(*input.wind_deg);
        const double edge = distance - kEyeGap; // of the crown
        scene.wind =
            QLineF(stem + lee * (edge + kWindGap + kWindLength), stem + lee * (edge + kWindGap));
        scene.windText = input.windText;
    }
}

} // namespace

QPointF PlanFrame::toCanvas(model::Point2 place_m) const
{
    return {canvas.width() / 2.0 + (place_m.x - middle_m.x) * pixelsPerMetre,
            canvas.height() / 2.0 - (place_m.y - middle_m.y) * pixelsPerMetre};
}

model::Point2 PlanFrame::toPlace(QPointF point) const
{
    return {middle_m.x + (point.x() - canvas.width() / 2.0) / pixelsPerMetre,
            middle_m.y - (point.y() - canvas.height() / 2.0) / pixelsPerMetre};
}

PlanFrame fittedPlanFrame(const model::Garden& garden, const model::Tree* chosen, QSizeF canvas,
                          double covered)
{
    const auto all = bounds(garden, chosen);
    const double top = std::max(kMargin, covered);
    const double scale =
        std::max(0.5, std::min((canvas.width() - 2.0 * kMargin) / (all.east - all.west),
                               (canvas.height() - top - kMargin) / (all.north - all.south)));
    const double down_m = (top - kMargin) / 2.0 / scale;
    return {{(all.west + all.east) / 2.0, (all.south + all.north) / 2.0 + down_m}, scale, canvas};
}

double eyeDistance(const model::Tree& tree, const PlanFrame& frame)
{
    return reach_m(tree) * frame.pixelsPerMetre + kEyeGap;
}

PlanScene planScene(const PlanInput& input)
{
    PlanScene scene;
    scene.canvas = input.frame.canvas;
    addShapes(scene, input);
    if (input.map)
        addMap(scene, input);
    else
        addShadow(scene, input);
    for (const auto& neighbour : input.garden.neighbours)
        scene.trees.push_back(neighbourFromAbove(neighbour, input));
    for (const auto& tree : input.garden.trees)
        scene.trees.push_back(treeFromAbove(tree, input));
    for (const auto& line : input.garden.lines) {
        QPainterPath wire;
        for (const auto& point : line.path_m) {
            const QPointF at = input.frame.toCanvas(plan(point));
            if (wire.elementCount() == 0)
                wire.moveTo(at);
            else
                wire.lineTo(at);
        }
        scene.wires.push_back(wire);
    }
    addEyeAndSun(scene, input);
    const double bar_m = scaleBarLength_m(input.frame.pixelsPerMetre, kScaleBarAim, input.units);
    const QPointF start(16.0, scene.canvas.height() - 14.0);
    scene.scaleBar = {start, start + QPointF(bar_m * input.frame.pixelsPerMetre, 0.0)};
    scene.scaleText = input.units.length(bar_m);
    return scene;
}

} // namespace app
