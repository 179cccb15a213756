#include "app/view/round_view_model.hpp"

#include "app/view/hear.hpp"
#include "app/view/reach.hpp"
#include "model/geometry/angle.hpp"
#include "model/light/canopy.hpp"

#include <algorithm>
#include <cmath>

namespace app {
namespace {

constexpr double kStep_deg = 5.0;
constexpr double kTurnPerPixel_deg = 0.35;
constexpr double kSteepest_deg = 88.0;   // the picture has no upright from straight above
constexpr double kEyeOverGround_m = 0.3; // the ground hides all from below it
constexpr double kFirstDown_deg = 14.0;
constexpr double kNearest_m = 1.0;
constexpr double kFarthest_m = 250.0;
constexpr double kFullSun_deg = 10.0; // assumed, for looks: below it the sun pales
constexpr double kOutside = -10000.0; // pixels

/// From the garden's frame, z up, to the scene's, y up.
QVector3D toScene(model::Vec3 place_m)
{
    return {static_cast<float>(place_m.x), static_cast<float>(place_m.z),
            static_cast<float>(-place_m.y)};
}

/// Turns of what looks or shines north and level by itself.
QVector3D turns(double bearing_deg, double down_deg)
{
    return {static_cast<float>(-down_deg), static_cast<float>(-bearing_deg), 0.0F};
}

} // namespace

RoundViewModel::RoundViewModel(Workspace& workspace, SideViewModel& side, QObject* parent)
    : QObject(parent), workspace_(workspace), side_(side)
{
    camera_.down_deg = kFirstDown_deg;
    camera_.bearing_deg = side_.bearing();
    soon_.setSingleShot(true);
    soon_.setInterval(0);
    connect(&soon_, &QTimer::timeout, this, &RoundViewModel::show);
    for (const auto signal :
         {&Workspace::treeChanged, &Workspace::limbChosen, &Workspace::quickChanged,
          &Workspace::fullChanged, &Workspace::showsAfterChanged, &Workspace::askChanged})
        connect(&workspace_, signal, this, &RoundViewModel::later);
    for (const auto signal : {&Workspace::treeChanged, &Workspace::askChanged})
        connect(&workspace_, signal, this, &RoundViewModel::sunChanged);
    connect(&side_, &SideViewModel::sceneChanged, this, [this] {
        if (side_.bearing() != camera_.bearing_deg)
            turnTo(side_.bearing(), camera_.down_deg);
    });
}

void RoundViewModel::setColours(DrawingColours* colours)
{
    if (!hear(
            colours_, colours, this, [this] { later(); }, &DrawingColours::changed))
        return;
    emit coloursChanged();
    later();
}

void RoundViewModel::setShown(bool shown)
{
    if (shown == isShown_)
        return;
    isShown_ = shown;
    emit shownChanged();
    later();
}

void RoundViewModel::setShowsFalling(bool shows)
{
    if (shows == showsFalling_)
        return;
    showsFalling_ = shows;
    later();
}

const model::Tree* RoundViewModel::standing() const
{
    const auto& after = workspace_.treeAfter();
    return workspace_.showsAfter() && after ? &*after : workspace_.tree();
}

QString RoundViewModel::summary() const
{
    const auto* tree = standing();
    if (!tree)
        return tr("There is no tree in this garden yet.");
    const auto name = QString::fromStdString(tree->name.empty() ? tree->species : tree->name);
    return tr("%1 and its garden, looking %2 from %3 above the ground: %n limbs.", nullptr,
              static_cast<int>(tree->limbs.size()))
        .arg(name, Units::bearing(camera_.bearing_deg),
             workspace_.units().roughLength(camera_.eye_m().z));
}

QVector3D RoundViewModel::eye() const
{
    return toScene(camera_.eye_m());
}

QVector3D RoundViewModel::look() const
{
    return turns(camera_.bearing_deg, camera_.down_deg);
}

double RoundViewModel::nearest() const
{
    return std::max(0.1, 0.02 * camera_.distance_m);
}

double RoundViewModel::farthest() const
{
    const auto disc = groundDisc(workspace_.garden());
    return norm(plan(camera_.eye_m()) - disc.middle_m) + disc.radius_m + camera_.distance_m;
}

QStringList RoundViewModel::quarters() const
{
    return {tr("N", "north, on a compass"), tr("E", "east, on a compass"),
            tr("S", "south, on a compass"), tr("W", "west, on a compass")};
}

QList<QPointF> RoundViewModel::quarterPlaces() const
{
    QList<QPointF> places;
    const auto* tree = workspace_.tree();
    if (!tree)
        return places;
    const model::Ground ground(workspace_.garden().slope);
    const double away = 1.22 * ringRadius_m(*tree); // beyond the ring's point to the north
    for (const auto off : {model::Point2{0.0, away}, {away, 0.0}, {0.0, -away}, {-away, 0.0}})
        places << camera_.toCanvas(ground.at(tree->position_m + off, 0.1))
                      .value_or(QPointF(kOutside, kOutside));
    return places;
}

model::light::SunPosition RoundViewModel::sun() const
{
    const auto& place = workspace_.garden().place;
    return model::light::sunPosition(workspace_.instant(), place.latitude_deg, place.longitude_deg);
}

QVector3D RoundViewModel::sunbeam() const
{
    const auto at = sun();
    return turns(at.azimuth_deg + 180.0, at.elevation_deg);
}

double RoundViewModel::sunlight() const
{
    return std::clamp(sun().elevation_deg / kFullSun_deg, 0.0, 1.0);
}

void RoundViewModel::resize(double width, double height)
{
    if (width <= 0.0 || height <= 0.0)
        return;
    camera_.canvas = {width, height};
    refit();
    emit cameraChanged();
}

void RoundViewModel::drag(double right, double down)
{
    turnTo(camera_.bearing_deg + kTurnPerPixel_deg * right,
           camera_.down_deg + kTurnPerPixel_deg * down);
}

void RoundViewModel::walk(int stepsRight, int stepsUp)
{
    // Who walks to the right looks more to the left.
    turnTo(camera_.bearing_deg - kStep_deg * stepsRight, camera_.down_deg + kStep_deg * stepsUp);
}

void RoundViewModel::turnTo(double bearing_deg, double down_deg)
{
    const auto* tree = workspace_.tree();
    const double foot = tree ? foot_m(workspace_.garden(), tree->position_m).z : 0.0;
    const double lowest = (foot + kEyeOverGround_m - camera_.target_m.z) / camera_.distance_m;
    const double least = model::degrees(std::asin(std::clamp(lowest, -0.98, 0.98)));
    camera_.down_deg = std::clamp(down_deg, std::min(least, kSteepest_deg), kSteepest_deg);
    camera_.bearing_deg = std::fmod(std::fmod(bearing_deg, 360.0) + 360.0, 360.0);
    side_.setBearing(camera_.bearing_deg);
    emit cameraChanged();
    emit sceneChanged(); // its words say where one looks
}

void RoundViewModel::zoom(double factor)
{
    camera_.distance_m = std::clamp(camera_.distance_m / factor, kNearest_m, kFarthest_m);
    zoomed_ = true;
    turnTo(camera_.bearing_deg, camera_.down_deg);
}

void RoundViewModel::fit()
{
    zoomed_ = false;
    refit();
    turnTo(camera_.bearing_deg, camera_.down_deg);
}

void RoundViewModel::refit()
{
    const auto* tree = workspace_.tree();
    if (!tree || zoomed_)
        return;
    const double half = model::height_m(*tree) / 2.0;
    const auto foot = foot_m(workspace_.garden(), tree->position_m);
    camera_ = fitted(camera_, foot + model::Vec3{0.0, 0.0, half},
                     std::max(1.1 * half, ringRadius_m(*tree)));
}

void RoundViewModel::chooseAt(double x, double y)
{
    const auto* tree = standing();
    if (!tree)
        return;
    const auto& garden = workspace_.garden();
    const auto sight = camera_.sight({x, y});
    const double reach = kReach * camera_.metresPerPixel();
    const auto met = pickWood(*tree, foot_m(garden, tree->position_m), sight, reach);
    if (met) {
        const std::string limb = tree->limbs[met->limb].id;
        workspace_.chooseLimb(limb);
        if (side_.isSawing() && !workspace_.showsAfter())
            emit sawn(QString::fromStdString(limb), met->at_m);
        return;
    }
    for (const auto& other : garden.trees)
        if (other.id != tree->id &&
            pickWood(other, foot_m(garden, other.position_m), sight, reach)) {
            workspace_.chooseTree(std::string(other.id));
            return;
        }
    workspace_.chooseLimb({});
}

void RoundViewModel::chooseNext(int step)
{
    const auto* tree = standing();
    if (!tree || tree->limbs.empty())
        return;
    const auto count = static_cast<int>(tree->limbs.size());
    const auto index = model::limbIndex(*tree, workspace_.limbId());
    const int now = index == model::kNoLimb ? (step > 0 ? -1 : 0) : static_cast<int>(index);
    workspace_.chooseLimb(
        tree->limbs[static_cast<std::size_t>(((now + step) % count + count) % count)].id);
}

void RoundViewModel::later()
{
    if (isShown_)
        soon_.start();
}

void RoundViewModel::show()
{
    if (!isShown_ || !colours_)
        return;
    const auto* tree = workspace_.tree();
    if (const std::string id = tree ? tree->id : std::string(); id != fittedTree_) {
        fittedTree_ = id;
        zoomed_ = false;
    }
    refit();
    Made now{workspace_.document().garden(), fittedTree_,   workspace_.treeAfter(),
             workspace_.showsAfter(),        showsFalling_, workspace_.date()};
    if (now == made_) {
        parts_.paint(looks(parts_.parts()));
    } else {
        made_ = std::move(now);
        auto parts = scene();
        auto seen = looks(parts);
        parts_.show(std::move(parts), std::move(seen));
    }
    emit cameraChanged();
    emit sceneChanged();
}

double RoundViewModel::share(const std::string& species, const model::LeafDates& dates) const
{
    const auto* known = model::findSpecies(workspace_.tables(), species);
    return known ? model::light::leafShare(*known, workspace_.garden().place, workspace_.date(),
                                           dates)
                 : 1.0;
}

/// That of a tree which hasn't changed: a large one takes 25 ms. Null: there is none.
std::shared_ptr<const model::Foliation> RoundViewModel::keptLeaf(const model::Tree& tree) const
{
    if (sketched_.garden)
        for (std::size_t i = 0; i < sketched_.trees.size(); ++i)
            if (sketched_.garden->trees[i] == tree)
                return sketched_.trees[i];
    return nullptr;
}

void RoundViewModel::sketchLeaf()
{
    const auto& snapshot = workspace_.document().garden();
    if (sketched_.garden == snapshot)
        return;
    const model::Ground ground(snapshot->slope);
    const auto leafOf = [&](const auto& crown, const std::string& latin) {
        const auto* species = model::findSpecies(workspace_.tables(), latin);
        return species ? std::make_shared<const model::Foliation>(model::foliate(crown, *species))
                       : nullptr;
    };
    Sketched now{snapshot, {}, {}};
    for (const auto& tree : snapshot->trees) {
        auto kept = keptLeaf(tree);
        now.trees.push_back(kept ? std::move(kept) : leafOf(tree, tree.species));
    }
    for (const auto& neighbour : snapshot->neighbours)
        now.neighbours.push_back(
            leafOf(model::light::crownOf(neighbour, ground), neighbour.species));
    sketched_ = std::move(now);
}

std::vector<RoundPart> RoundViewModel::scene()
{
    sketchLeaf();
    const auto& garden = workspace_.garden();
    const auto& after = workspace_.treeAfter();
    RoundInput input{garden,
                     workspace_.tree(),
                     after ? &*after : nullptr,
                     workspace_.showsAfter(),
                     showsFalling_,
                     {},
                     {}};
    for (std::size_t i = 0; i < garden.trees.size(); ++i)
        input.treeLeaf.push_back(
            {sketched_.trees[i], share(garden.trees[i].species, garden.trees[i].leafDates)});
    for (std::size_t i = 0; i < garden.neighbours.size(); ++i)
        input.neighbourLeaf.push_back(
            {sketched_.neighbours[i],
             share(garden.neighbours[i].species, garden.neighbours[i].leafDates)});
    return roundScene(input);
}

std::optional<LimbShade> RoundViewModel::shade(const std::string& limb) const
{
    const auto* load = workspace_.showsAfter() ? workspace_.loadAfter(limb) : workspace_.load(limb);
    if (!load)
        return std::nullopt;
    return LimbShade{load->utilisation, load->hasStrength};
}

std::vector<RoundLook> RoundViewModel::looks(const std::vector<RoundPart>& parts) const
{
    const auto* tree = workspace_.tree();
    const double leaf = tree ? share(tree->species, tree->leafDates) : 1.0;
    std::vector<RoundLook> looks;
    for (const auto& part : parts) {
        const bool isLimb = part.kind == RoundKind::wood || part.kind == RoundKind::leaf ||
                            part.kind == RoundKind::fallenWood;
        RoundState state;
        state.isMade = workspace_.showsAfter();
        state.leafShare = leaf;
        state.chosen = isLimb && part.id == workspace_.limbId();
        if (part.kind == RoundKind::wood)
            state.load = shade(part.id);
        looks.push_back(roundLook(part.kind, state, *colours_));
    }
    return looks;
}

} // namespace app
