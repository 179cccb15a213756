#include "app/view/thing_view_model.hpp"

#include "app/view/name_search.hpp"
#include "app/view/plan_words.hpp"
#include "app/words/wording.hpp"
#include "model/headroom/headroom.hpp"

#include <cmath>

namespace app {
namespace {

constexpr std::size_t kMostPlants = 8;

QString plantName(const model::Plant& plant)
{
    return QCoreApplication::translate("app::ThingViewModel", "%1 (%2)", "common name, Latin name")
        .arg(commonName(plant), QString::fromStdString(plant.latin));
}

/// From the bearing of a crown's spread to that of its longer way, which is shown as its length.
double longWay_deg(const model::Neighbour& tree)
{
    return tree.across_m.value_or(tree.spread_m) > tree.spread_m ? 90.0 : 0.0;
}

} // namespace

ThingViewModel::ThingViewModel(Workspace& workspace, PlanEditorViewModel& editor, QObject* parent)
    : QObject(parent), workspace_(workspace), editor_(editor)
{
    for (const auto& plant : workspace_.tables().plants)
        plantNames_ << namesOf(plant.common, plant.latin);
    for (const auto& species : workspace_.tables().species)
        speciesNames_ << namesOf(species.common, species.latin);
    connect(&editor_, &PlanEditorViewModel::chosenChanged, this, [this] {
        typed_.reset();
        found_.clear();
        emit changed();
    });
    connect(&workspace_.document(), &Document::gardenChanged, this, &ThingViewModel::changed);
}

bool ThingViewModel::is(ThingKind kind) const
{
    const auto thing = editor_.chosen();
    return thing && thing->kind == kind;
}

std::vector<model::Point2> ThingViewModel::corners() const
{
    const auto thing = editor_.chosen();
    return thing ? cornersOf(workspace_.garden(), *thing) : std::vector<model::Point2>();
}

/// One step named after what changes: "change the height of hedge".
void ThingViewModel::change(const QString& what, const Change& change)
{
    const auto thing = editor_.chosen();
    if (!thing)
        return;
    auto garden = workspace_.garden();
    change(garden, *thing);
    const QString name = tr("change the %1 of %2").arg(what, titleOf(workspace_.garden(), *thing));
    workspace_.say(workspace_.document().change(name, std::move(garden)));
    emit changed(); // what was typed and refused is put back
}

std::optional<double> ThingViewModel::read(const QString& typed, const QString& label)
{
    const auto value = workspace_.units().parseLength_m(typed);
    if (!value) {
        workspace_.say(tr("%1: a length such as %2.").arg(label, workspace_.units().length(1.8)));
        emit changed();
    }
    return value;
}

QString ThingViewModel::name() const
{
    const auto thing = editor_.chosen();
    return thing ? QString::fromStdString(nameOf(workspace_.garden(), *thing)) : QString();
}

void ThingViewModel::setName(const QString& name)
{
    change(tr("name"), [&name](model::Garden& garden, ThingRef thing) {
        nameOf(garden, thing) = name.trimmed().toStdString();
    });
}

QStringList ThingViewModel::sorts() const
{
    const auto thing = editor_.chosen();
    return thing ? sortsOf(thing->kind) : QStringList();
}

int ThingViewModel::sort() const
{
    const auto thing = editor_.chosen();
    const auto& garden = workspace_.garden();
    if (!thing)
        return -1;
    if (thing->kind == ThingKind::planting)
        return static_cast<int>(garden.plantings[thing->index].kind);
    if (thing->kind == ThingKind::strip)
        return static_cast<int>(garden.strips[thing->index].use);
    if (thing->kind == ThingKind::structure)
        return static_cast<int>(garden.structures[thing->index].kind);
    if (thing->kind == ThingKind::neighbour)
        return static_cast<int>(garden.neighbours[thing->index].density);
    return -1;
}

void ThingViewModel::setSort(int sort)
{
    if (sort < 0 || sort >= sorts().size() || sort == this->sort())
        return;
    change(tr("kind"), [sort](model::Garden& garden, ThingRef thing) {
        if (thing.kind == ThingKind::planting)
            garden.plantings[thing.index].kind = static_cast<model::PlantingKind>(sort);
        else if (thing.kind == ThingKind::strip)
            garden.strips[thing.index].use = static_cast<model::StripUse>(sort);
        else if (thing.kind == ThingKind::structure)
            garden.structures[thing.index].kind = static_cast<model::StructureKind>(sort);
        else if (thing.kind == ThingKind::neighbour)
            garden.neighbours[thing.index].density = static_cast<model::FoliageDensity>(sort);
    });
}

QString ThingViewModel::plantTyped() const
{
    if (typed_)
        return *typed_;
    const auto thing = editor_.chosen();
    if (isNeighbour()) {
        const auto& latin = workspace_.garden().neighbours[thing->index].species;
        const auto* species = model::findSpecies(workspace_.tables(), latin);
        return species ? speciesName(*species) : QString::fromStdString(latin);
    }
    if (!thing || thing->kind != ThingKind::planting)
        return {};
    const auto& latin = workspace_.garden().plantings[thing->index].plant;
    const auto* plant = model::findPlant(workspace_.tables(), latin);
    return plant ? plantName(*plant) : QString::fromStdString(latin);
}

void ThingViewModel::setPlantTyped(const QString& typed)
{
    typed_ = typed;
    found_ = typed.trimmed().isEmpty()
                 ? std::vector<std::size_t>()
                 : searchNames(isNeighbour() ? speciesNames_ : plantNames_, typed, kMostPlants);
    emit changed();
}

QStringList ThingViewModel::plants() const
{
    QStringList names;
    for (const auto index : found_)
        names << (isNeighbour() ? speciesName(workspace_.tables().species[index])
                                : plantName(workspace_.tables().plants[index]));
    return names;
}

void ThingViewModel::leavePlants()
{
    if (!typed_)
        return;
    typed_.reset();
    found_.clear();
    emit changed();
}

void ThingViewModel::takePlant(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= found_.size())
        return;
    const auto at = found_[static_cast<std::size_t>(index)];
    const auto latin = isNeighbour() ? workspace_.tables().species[at].latin
                                     : workspace_.tables().plants[at].latin;
    typed_.reset();
    found_.clear();
    change(tr("plant"), [&latin](model::Garden& garden, ThingRef thing) {
        if (thing.kind == ThingKind::planting)
            garden.plantings[thing.index].plant = latin;
        else if (thing.kind == ThingKind::neighbour)
            garden.neighbours[thing.index].species = latin;
    });
}

bool ThingViewModel::hasHeight() const
{
    return any() && !isTree() && !isStrip();
}

QString ThingViewModel::height() const
{
    const auto thing = editor_.chosen();
    if (!thing || !hasHeight())
        return {};
    const auto& garden = workspace_.garden();
    const auto& units = workspace_.units();
    if (thing->kind == ThingKind::planting)
        return units.length(garden.plantings[thing->index].height_m);
    if (thing->kind == ThingKind::structure)
        return units.length(garden.structures[thing->index].height_m);
    if (thing->kind == ThingKind::neighbour)
        return units.length(garden.neighbours[thing->index].height_m);
    return units.length(garden.lines[thing->index].path_m.front().z);
}

void ThingViewModel::setHeight(const QString& typed)
{
    const auto height_m = typed == height() ? std::nullopt : read(typed, tr("Height"));
    if (!height_m)
        return;
    change(tr("height"), [height_m](model::Garden& garden, ThingRef thing) {
        if (thing.kind == ThingKind::planting)
            garden.plantings[thing.index].height_m = *height_m;
        else if (thing.kind == ThingKind::structure)
            garden.structures[thing.index].height_m = *height_m;
        else if (thing.kind == ThingKind::neighbour)
            garden.neighbours[thing.index].height_m = *height_m;
        else if (thing.kind == ThingKind::line)
            for (auto& point : garden.lines[thing.index].path_m)
                point.z = *height_m;
    });
}

QString ThingViewModel::crownBase() const
{
    const auto thing = editor_.chosen();
    return isNeighbour()
               ? workspace_.units().length(workspace_.garden().neighbours[thing->index].crownBase_m)
               : QString();
}

void ThingViewModel::setCrownBase(const QString& typed)
{
    const auto base_m = typed == crownBase() ? std::nullopt : read(typed, tr("Lowest leaf"));
    if (!base_m)
        return;
    change(tr("lowest leaf"), [base_m](model::Garden& garden, ThingRef thing) {
        if (thing.kind == ThingKind::neighbour)
            garden.neighbours[thing.index].crownBase_m = *base_m;
    });
}

QString ThingViewModel::stem() const
{
    const auto thing = editor_.chosen();
    if (!isNeighbour())
        return {};
    const auto& stem_m = workspace_.garden().neighbours[thing->index].stemDiameter_m;
    return stem_m ? workspace_.units().diameter(*stem_m) : QString();
}

void ThingViewModel::setStem(const QString& typed)
{
    if (typed == stem())
        return;
    std::optional<double> stem_m;
    if (!typed.trimmed().isEmpty()) {
        stem_m = read(typed, tr("Thickness of the stem"));
        if (!stem_m)
            return;
    }
    change(tr("stem"), [stem_m](model::Garden& garden, ThingRef thing) {
        if (thing.kind == ThingKind::neighbour)
            garden.neighbours[thing.index].stemDiameter_m = stem_m;
    });
}

QString ThingViewModel::bearing() const
{
    const auto thing = editor_.chosen();
    if (!isNeighbour())
        return {};
    const auto& tree = workspace_.garden().neighbours[thing->index];
    return workspace_.units().angle(std::fmod(tree.bearing_deg + longWay_deg(tree), 360.0));
}

void ThingViewModel::setBearing(const QString& typed)
{
    if (typed == bearing() || !isNeighbour())
        return;
    QString number = typed.trimmed();
    number.remove(QChar(u'°'));
    bool good = false;
    const double bearing_deg = workspace_.units().locale().toDouble(number.trimmed(), &good);
    if (!good || bearing_deg < 0.0 || bearing_deg > 360.0) {
        workspace_.say(tr("Bearing: degrees clockwise from north, from 0 to 360, such as %1 for "
                          "east.")
                           .arg(workspace_.units().angle(90.0)));
        emit changed();
        return;
    }
    change(tr("bearing"), [bearing_deg](model::Garden& garden, ThingRef thing) {
        if (thing.kind == ThingKind::neighbour)
            garden.neighbours[thing.index].bearing_deg =
                std::fmod(bearing_deg + 360.0 - longWay_deg(garden.neighbours[thing.index]), 360.0);
    });
}

QString ThingViewModel::headroom() const
{
    const auto thing = editor_.chosen();
    if (!thing || thing->kind != ThingKind::strip)
        return {};
    const auto& wanted = workspace_.garden().strips[thing->index].headroom_m;
    return wanted ? workspace_.units().length(*wanted) : QString();
}

void ThingViewModel::setHeadroom(const QString& typed)
{
    if (typed == headroom())
        return;
    std::optional<double> wanted_m;
    if (!typed.trimmed().isEmpty()) {
        wanted_m = read(typed, tr("Headroom"));
        if (!wanted_m)
            return;
    }
    change(tr("headroom"), [wanted_m](model::Garden& garden, ThingRef thing) {
        if (thing.kind == ThingKind::strip)
            garden.strips[thing.index].headroom_m = wanted_m;
    });
}

QString ThingViewModel::usualHeadroom() const
{
    const auto thing = editor_.chosen();
    if (!thing || thing->kind != ThingKind::strip)
        return {};
    model::Strip usual;
    usual.use = workspace_.garden().strips[thing->index].use;
    return workspace_.units().length(model::headroom::neededHeadroom_m(usual));
}

QString ThingViewModel::voltage() const
{
    const auto thing = editor_.chosen();
    if (!thing || thing->kind != ThingKind::line)
        return {};
    const auto& voltage = workspace_.garden().lines[thing->index].voltage_kV;
    return voltage ? workspace_.units().number(*voltage, *voltage < 10.0 ? 1 : 0) : QString();
}

void ThingViewModel::setVoltage(const QString& typed)
{
    if (typed == voltage())
        return;
    std::optional<double> voltage_kV;
    if (!typed.trimmed().isEmpty()) {
        bool good = false;
        voltage_kV = workspace_.units().locale().toDouble(typed.trimmed(), &good);
        if (!good) {
            workspace_.say(tr("Voltage: kilovolts, such as 0.4 for the wires to a house; leave it "
                              "empty if nobody knows."));
            emit changed();
            return;
        }
    }
    change(tr("voltage"), [voltage_kV](model::Garden& garden, ThingRef thing) {
        if (thing.kind == ThingKind::line)
            garden.lines[thing.index].voltage_kV = voltage_kV;
    });
}

bool ThingViewModel::hasSize() const
{
    return any() && !isTree() && !isLine();
}

QString ThingViewModel::length() const
{
    return hasSize() ? workspace_.units().length(sizeOf(corners()).length_m) : QString();
}

QString ThingViewModel::width() const
{
    return hasSize() ? workspace_.units().length(sizeOf(corners()).width_m) : QString();
}

void ThingViewModel::setLength(const QString& typed)
{
    if (typed != length())
        resize(typed, true);
}

void ThingViewModel::setWidth(const QString& typed)
{
    if (typed != width())
        resize(typed, false);
}

void ThingViewModel::resize(const QString& typed, bool along)
{
    const auto to_m = read(typed, along ? tr("Length") : tr("Width"));
    if (!to_m || !hasSize())
        return;
    change(tr("size"), [to_m, along](model::Garden& garden, ThingRef thing) {
        const auto corners = cornersOf(garden, thing);
        auto size = sizeOf(corners);
        (along ? size.length_m : size.width_m) = *to_m;
        setCorners(garden, thing, resized(corners, size));
    });
}

QString ThingViewModel::east() const
{
    return any() ? workspace_.units().length(middleOf(corners()).x) : QString();
}

QString ThingViewModel::north() const
{
    return any() ? workspace_.units().length(middleOf(corners()).y) : QString();
}

void ThingViewModel::setEast(const QString& typed)
{
    if (typed != east())
        moveTo(typed, true);
}

void ThingViewModel::setNorth(const QString& typed)
{
    if (typed != north())
        moveTo(typed, false);
}

void ThingViewModel::moveTo(const QString& typed, bool east)
{
    const auto to_m = read(typed, east ? tr("East") : tr("North"));
    if (!to_m)
        return;
    change(tr("place"), [to_m, east](model::Garden& garden, ThingRef thing) {
        const auto corners = cornersOf(garden, thing);
        const auto middle = middleOf(corners);
        const model::Point2 by =
            east ? model::Point2{*to_m - middle.x, 0.0} : model::Point2{0.0, *to_m - middle.y};
        setCorners(garden, thing, moved(corners, by));
    });
}

} // namespace app
