// What lies, stands and hangs around the tree on the side view, and the headroom between.

#include "app/drawing/side_scene.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace app {
namespace {

QString say(const char* words)
{
    return QCoreApplication::translate("SideScene", words);
}

struct Extent {
    double from{};
    double to{};
};

model::Vec3 inTreeFrame(const model::Tree& tree, model::Point2 place, double z = 0.0)
{
    return {place.x - tree.position_m.x, place.y - tree.position_m.y, z};
}

/// The stretch of the canvas that a plan shape covers, cut to the canvas.
Extent across(const model::Polygon& outline, const model::Tree& tree, const SideFrame& frame,
              QSizeF canvas)
{
    Extent extent{1e9, -1e9};
    for (const auto corner : outline) {
        const double x = frame.toCanvas(inTreeFrame(tree, corner)).x();
        extent = {std::min(extent.from, x), std::max(extent.to, x)};
    }
    return {std::clamp(extent.from, 0.0, canvas.width()),
            std::clamp(extent.to, 0.0, canvas.width())};
}

Extent across(const model::Polygon& outline, const SideInput& input)
{
    return across(outline, input.drawn, input.frame, input.canvas);
}

bool isSeen(Extent extent)
{
    return extent.to - extent.from > 1.0;
}

void addBand(SideScene& scene, const SideInput& input, Ground kind, const std::string& name,
             const model::Polygon& outline)
{
    const auto extent = across(outline, input);
    if (isSeen(extent))
        scene.bands.push_back({kind, QString::fromStdString(name), extent.from, extent.to, 0});
}

void addBlock(SideScene& scene, const SideInput& input, Block kind, const std::string& name,
              const model::Polygon& outline, double height_m)
{
    const auto extent = across(outline, input);
    if (!isSeen(extent))
        return;
    const double height = height_m * input.frame.pixelsPerMetre;
    const auto middle = inTreeFrame(input.drawn, model::centroid(outline));
    scene.blocks.push_back({kind,
                            QString::fromStdString(name),
                            {extent.from, scene.groundY - height, extent.to - extent.from, height},
                            input.frame.depth_m(middle) >= 0.0});
}

void addPlanting(SideScene& scene, const SideInput& input, const model::Planting& planting)
{
    switch (planting.kind) {
    case model::PlantingKind::hedge:
        return addBlock(scene, input, Block::hedge, planting.name, planting.outline_m,
                        planting.height_m);
    case model::PlantingKind::shrub:
        return addBlock(scene, input, Block::shrub, planting.name, planting.outline_m,
                        planting.height_m);
    case model::PlantingKind::bed:
        return addBand(scene, input, Ground::bed, planting.name, planting.outline_m);
    case model::PlantingKind::lawn:
        return addBand(scene, input, Ground::lawn, planting.name, planting.outline_m);
    }
}

void addStructure(SideScene& scene, const SideInput& input, const model::Structure& structure)
{
    switch (structure.kind) {
    case model::StructureKind::pond:
        return addBand(scene, input, Ground::pond, structure.name, structure.outline_m);
    case model::StructureKind::fence:
        return addBlock(scene, input, Block::fence, structure.name, structure.outline_m,
                        structure.height_m);
    case model::StructureKind::glasshouse:
        return addBlock(scene, input, Block::glasshouse, structure.name, structure.outline_m,
                        structure.height_m);
    case model::StructureKind::building:
    case model::StructureKind::chimney:
    case model::StructureKind::other:
        return addBlock(scene, input, Block::building, structure.name, structure.outline_m,
                        structure.height_m);
    }
}

void addWire(SideScene& scene, const SideInput& input, const model::ElectricLine& line)
{
    SceneWire wire{{}, QString::fromStdString(line.name), {}};
    for (const auto& point : line.path_m) {
        const QPointF at = input.frame.toCanvas(inTreeFrame(input.drawn, plan(point), point.z));
        if (wire.path.elementCount() == 0)
            wire.path.moveTo(at);
        else
            wire.path.lineTo(at);
    }
    // Its name goes to the outer end of what is seen of it, clear of the crown.
    const QRectF canvas(QPointF(60.0, 10.0), input.canvas - QSizeF(160.0, 20.0));
    for (double t = 0.0; t <= 1.0; t += 0.02) {
        const QPointF at = wire.path.pointAtPercent(t);
        if (canvas.contains(at) && (wire.nameAt.isNull() || at.x() > wire.nameAt.x()))
            wire.nameAt = at;
    }
    scene.wires.push_back(std::move(wire));
}

/// Names that would run into each other go to rows of their own.
void stackRows(std::vector<SceneBand>& bands)
{
    constexpr double kLetter = 6.8; // pixels, about: the painter's font is not known here
    std::ranges::stable_sort(bands, {}, &SceneBand::fromX);
    std::vector<double> rowEnds;
    for (auto& band : bands) {
        const double middle = (band.fromX + band.toX) / 2.0;
        const double halfName = kLetter * static_cast<double>(band.name.size()) / 2.0;
        const double from = std::min(band.fromX, middle - halfName);
        const double to = std::max(band.toX, middle + halfName);
        const auto free =
            std::ranges::find_if(rowEnds, [&](double end) { return end <= from + 0.5; });
        band.row = static_cast<int>(free - rowEnds.begin());
        if (free == rowEnds.end())
            rowEnds.push_back(to);
        else
            *free = to;
    }
}

bool isFlat(const model::Planting& planting)
{
    return planting.kind == model::PlantingKind::bed || planting.kind == model::PlantingKind::lawn;
}

/// What lies flat in the ground, as it is seen in a frame, in rows.
std::vector<SceneBand> flatBands(const model::Garden& garden, const model::Tree& tree,
                                 const SideFrame& frame, QSizeF canvas)
{
    std::vector<SceneBand> bands;
    const auto add = [&](const auto& thing) {
        const auto extent = across(thing.outline_m, tree, frame, canvas);
        if (isSeen(extent))
            bands.push_back({{}, QString::fromStdString(thing.name), extent.from, extent.to, 0});
    };
    for (const auto& structure : garden.structures)
        if (structure.kind == model::StructureKind::pond)
            add(structure);
    for (const auto& planting : garden.plantings)
        if (isFlat(planting))
            add(planting);
    for (const auto& strip : garden.strips)
        add(strip);
    stackRows(bands);
    return bands;
}

/// The stretch of a strip's needed height that the crown could hang into.
Extent underCrown(Extent strip, const SideInput& input)
{
    const double reach = (reach_m(input.drawn) + 0.5) * input.frame.pixelsPerMetre;
    return {std::max(strip.from, input.frame.foot.x() - reach),
            std::min(strip.to, input.frame.foot.x() + reach)};
}

} // namespace

void addGround(SideScene& scene, const SideInput& input)
{
    for (const auto& structure : input.garden.structures)
        addStructure(scene, input, structure);
    for (const auto& planting : input.garden.plantings)
        addPlanting(scene, input, planting);
    for (const auto& strip : input.garden.strips)
        addBand(scene, input, Ground::strip, strip.name, strip.outline_m);
    for (const auto& line : input.garden.lines)
        addWire(scene, input, line);
    stackRows(scene.bands);
}

int groundRows(const model::Garden& garden, const model::Tree& tree, SideFrame frame, QSizeF canvas)
{
    constexpr int kMost = 3;
    constexpr int kBearings = 8; // so that the drawing stands still while one walks round it
    int rows = 0;
    for (int i = 0; i < kBearings; ++i) {
        frame.bearing_deg += 360.0 / kBearings;
        for (const auto& band : flatBands(garden, tree, frame, canvas))
            rows = std::max(rows, band.row + 1);
    }
    return std::min(rows, kMost);
}

void addHeadroom(SideScene& scene, const SideInput& input)
{
    if (!input.headroom)
        return;
    for (const auto& found : *input.headroom) {
        const auto strip = std::ranges::find(input.garden.strips, found.strip, &model::Strip::id);
        if (strip == input.garden.strips.end() || !found.height_m)
            continue;
        const auto extent = underCrown(across(strip->outline_m, input), input);
        const auto y = [&](double height_m) {
            return scene.groundY - height_m * input.frame.pixelsPerMetre;
        };
        SceneHeadroom need;
        need.needed =
            QRectF(QPointF(extent.from, y(found.needed_m)), QPointF(extent.to, scene.groundY));
        need.neededText =
            say(QT_TRANSLATE_NOOP("SideScene", "needs %1")).arg(input.units.length(found.needed_m));
        need.enough = found.shortfall_m <= 0.0;
        const double x = found.lowestAt_m
                             ? input.frame.toCanvas(inTreeFrame(input.drawn, *found.lowestAt_m)).x()
                             : (extent.from + extent.to) / 2.0;
        need.clear = QLineF(x, scene.groundY, x, y(*found.height_m));
        need.clearText = say(QT_TRANSLATE_NOOP("SideScene", "%1 clear"))
                             .arg(input.units.length(*found.height_m));
        if (!need.enough) {
            need.missing = QLineF(x, y(*found.height_m), x, y(found.needed_m));
            need.missingText = say(QT_TRANSLATE_NOOP("SideScene", "%1 short"))
                                   .arg(input.units.length(found.shortfall_m));
        }
        scene.needs.push_back(std::move(need));
    }
}

} // namespace app
