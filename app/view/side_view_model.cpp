#include "app/view/side_view_model.hpp"

#include "app/drawing/load_scale.hpp"
#include "app/drawing/side_bearing.hpp"
#include "app/view/limb_title.hpp"
#include "app/view/reach.hpp"
#include "app/words/breaking_words.hpp"
#include "app/words/load_words.hpp"
#include "model/sketch/reshape.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace app {
namespace {

constexpr double kLeastStroke_m = 0.1;
constexpr double kSmallestScale = 2.0; // pixels for a metre
constexpr double kLargestScale = 1500.0;

double girthStep_m(const Units& units)
{
    return units.measures() == Measures::unitedStates ? 0.00635 : 0.005;
}

} // namespace

SideViewModel::SideViewModel(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace)
{
    connect(&workspace_, &Workspace::treeChanged, this, &SideViewModel::onTree);
    connect(&workspace_, &Workspace::limbChosen, this, [this] {
        nudged_.reset();
        refresh();
        emit limbChanged();
    });
    for (const auto signal : {&Workspace::quickChanged, &Workspace::fullChanged})
        connect(&workspace_, signal, this, [this] {
            emit sceneChanged();
            emit limbChanged();
        });
    connect(&workspace_, &Workspace::askChanged, this, &SideViewModel::sceneChanged);
    connect(&workspace_, &Workspace::showsAfterChanged, this, &SideViewModel::refresh);
}

void SideViewModel::setBearing(double bearing_deg)
{
    const double turned = std::fmod(std::fmod(bearing_deg, 360.0) + 360.0, 360.0);
    if (turned == frame_.bearing_deg)
        return;
    frame_.bearing_deg = turned;
    refresh();
}

QString SideViewModel::bearingText() const
{
    return tr("Looking %1").arg(Units::bearing(frame_.bearing_deg));
}

QString SideViewModel::summary() const
{
    const auto* tree = workspace_.tree();
    if (!tree)
        return tr("There is no tree in this garden yet.");
    const auto name = QString::fromStdString(tree->name.empty() ? tree->species : tree->name);
    return tr("%1 from the side, looking %2: %3 high, %n limbs.", nullptr,
              static_cast<int>(tree->limbs.size()))
        .arg(name, Units::bearing(frame_.bearing_deg),
             workspace_.units().roughLength(model::height_m(*tree)));
}

QString SideViewModel::chosenLimb() const
{
    return QString::fromStdString(workspace_.limbId());
}

QString SideViewModel::limbName() const
{
    const auto* limb = workspace_.limb();
    return limb ? limbTitle(*limb) : QString();
}

QString SideViewModel::limbFacts() const
{
    const auto* limb = workspace_.limb();
    if (!limb)
        return {};
    const auto& units = workspace_.units();
    return tr("%1 long, %2 thick at its union, %3 at its end")
        .arg(units.length(model::length_m(*limb)),
             units.diameter(limb->stations.front().diameter_m),
             units.diameter(limb->stations.back().diameter_m));
}

QString SideViewModel::limbLoad() const
{
    const auto* load = workspace_.load(workspace_.limbId());
    const auto* tree = workspace_.quickTree();
    if (!load || !tree || !workspace_.species())
        return {};
    const QString asked =
        sentence(*load, {workspace_.units(), workspace_.garden(), *tree, *workspace_.species()});
    const auto* full = workspace_.assessedTree() == tree ? workspace_.treeAssessment() : nullptr;
    if (!full || !load->hasStrength) // the range needs the full answer
        return asked;
    return shortRange(full->breaking.at(load->limb), workspace_.units()) + QLatin1Char(' ') + asked;
}

bool SideViewModel::canDelete() const
{
    const auto* limb = workspace_.limb();
    return limb && limb->parent;
}

QStringList SideViewModel::loadWords() const
{
    return loadStepWords();
}

QStringList SideViewModel::loadRanges() const
{
    QStringList ranges;
    const auto& units = workspace_.units();
    for (std::size_t step = 0; step < kLoadSteps.size(); ++step)
        ranges << (step + 1 < kLoadSteps.size()
                       ? tr("%1 to %2")
                             .arg(units.share(kLoadSteps[step]), units.share(kLoadSteps[step + 1]))
                       : tr("over %1").arg(units.share(kLoadSteps[step])));
    return ranges;
}

QString SideViewModel::loadSummary() const
{
    return tr("Tints of the limbs, lightest load first: %1")
        .arg(loadWords().join(QStringLiteral(", ")));
}

std::optional<LimbShade> SideViewModel::shade(const std::string& limb) const
{
    const auto* load = workspace_.showsAfter() ? workspace_.loadAfter(limb) : workspace_.load(limb);
    if (!load)
        return std::nullopt;
    return LimbShade{load->utilisation, load->hasStrength};
}

double SideViewModel::leafShare() const
{
    const auto* species = workspace_.species();
    return species ? model::light::leafShare(*species, workspace_.garden().place, workspace_.date(),
                                             workspace_.tree()->leafDates)
                   : 1.0;
}

SideScene SideViewModel::scene() const
{
    const auto* tree = workspace_.tree();
    if (!tree)
        return {};
    const auto* full = workspace_.treeAssessment();
    const bool after = workspace_.showsAfter() && workspace_.treeAfter();
    const auto* headroom = workspace_.quick() ? &workspace_.quick()->headroom : nullptr;
    if (after && workspace_.trial())
        headroom = &workspace_.trial()->judged.after;
    else if (after && full)
        headroom = &full->suggestion.after;
    SideInput input{workspace_.garden(),
                    *tree,
                    after ? *workspace_.treeAfter() : *tree,
                    frame_,
                    canvas_,
                    workspace_.units(),
                    [this](const std::string& limb) { return shade(limb); },
                    headroom,
                    workspace_.shownCuts(),
                    workspace_.limbId(),
                    leafShare()};
    input.kept = &kept_;
    auto scene = sideScene(input);
    if (underlay_)
        scene.underlay = underlay_();
    return scene;
}

void SideViewModel::resize(double width, double height)
{
    if (width <= 0.0 || height <= 0.0)
        return;
    canvas_ = {width, height};
    refit();
    refresh();
}

void SideViewModel::onTree()
{
    const auto* tree = workspace_.tree();
    const std::string id = tree ? tree->id : std::string();
    if (id != fittedTree_) {
        fittedTree_ = id;
        moved_ = false;
        if (tree)
            frame_.bearing_deg = tellingBearing_deg(workspace_.garden(), *tree);
    }
    if (!held_) // a canvas that rescales under the hand can't be drawn on
        refit();
    refresh();
    emit limbChanged();
}

void SideViewModel::refit()
{
    const auto* tree = workspace_.tree();
    if (!tree || moved_ || isHeld_)
        return;
    const auto first = fittedSideFrame(*tree, frame_.bearing_deg, canvas_);
    frame_ = fittedSideFrame(*tree, frame_.bearing_deg, canvas_,
                             groundRows(workspace_.garden(), *tree, first, canvas_));
}

void SideViewModel::hold(bool held)
{
    isHeld_ = held;
    refit();
    refresh();
}

void SideViewModel::zoom(double x, double y, double factor)
{
    const double scale = std::clamp(frame_.pixelsPerMetre * factor, kSmallestScale, kLargestScale);
    const QPointF hand(x, y);
    frame_.foot = hand + (frame_.foot - hand) * (scale / frame_.pixelsPerMetre);
    frame_.pixelsPerMetre = scale;
    moved_ = true;
    refresh();
}

void SideViewModel::zoomMiddle(double factor)
{
    zoom(canvas_.width() / 2.0, canvas_.height() / 2.0, factor);
}

void SideViewModel::pan(double right, double down)
{
    frame_.foot += QPointF(right, down);
    moved_ = true;
    refresh();
}

void SideViewModel::fit()
{
    moved_ = false;
    refit();
    refresh();
}

void SideViewModel::refresh()
{
    handles_.show(workspace_.showsAfter() ? nullptr : workspace_.tree(), frame_,
                  workspace_.limbId(), workspace_.units());
    emit sceneChanged();
}

void SideViewModel::chooseLimb(const QString& limb)
{
    workspace_.chooseLimb(limb.toStdString());
}

void SideViewModel::chooseLimbAt(double x, double y)
{
    const auto* tree = workspace_.tree();
    if (!tree)
        return;
    const auto held = model::sketch::grip(*tree, frame_.toPlace({x, y}, 0.0), frame_.look(),
                                          kReach / frame_.pixelsPerMetre);
    workspace_.chooseLimb(held ? tree->limbs[held->limb].id : std::string());
    if (held && isSawing_ && !workspace_.showsAfter())
        emit sawn(QString::fromStdString(tree->limbs[held->limb].id), held->at_m);
}

void SideViewModel::setSawing(bool sawing)
{
    if (sawing == isSawing_)
        return;
    isSawing_ = sawing;
    emit sawingChanged();
}

void SideViewModel::grab(const QString& limb, int station)
{
    workspace_.chooseLimb(limb.toStdString());
    const auto* chosen = workspace_.limb();
    const auto index = static_cast<std::size_t>(station);
    if (!chosen || index >= chosen->stations.size())
        return;
    held_ = Held{chosen->id, index, frame_.depth_m(chosen->stations[index].position_m),
                 workspace_.document().newGesture()};
}

void SideViewModel::dragTo(double x, double y)
{
    if (held_)
        moveStation(held_->limb, held_->station, frame_.toPlace({x, y}, held_->depth_m),
                    held_->gesture);
}

void SideViewModel::drop()
{
    held_.reset();
    refit();
    refresh();
}

void SideViewModel::moveStation(const std::string& limb, std::size_t station, model::Vec3 to_m,
                                int gesture)
{
    const auto* tree = workspace_.tree();
    const auto index = tree ? model::limbIndex(*tree, limb) : model::kNoLimb;
    if (index == model::kNoLimb)
        return;
    const auto name = tr("move %1").arg(limbTitle(tree->limbs[index]));
    workspace_.changeTree(name,
                          station == 0 ? model::sketch::slideUnion(*tree, limb, to_m)
                                       : model::sketch::bendLimb(*tree, limb, station, to_m),
                          gesture);
}

void SideViewModel::nudge(const QString& limb, int station, int stepsRight, int stepsUp, bool far)
{
    workspace_.chooseLimb(limb.toStdString());
    const auto* chosen = workspace_.limb();
    const auto index = static_cast<std::size_t>(station);
    if (!chosen || index >= chosen->stations.size())
        return;
    if (!nudged_ || nudged_->limb != chosen->id || nudged_->station != index)
        nudged_ = Held{chosen->id, index, 0.0, workspace_.document().newGesture()};
    const double step = smallStep_m(workspace_.units()) * (far ? 10.0 : 1.0);
    const model::Vec3 to = chosen->stations[index].position_m +
                           (stepsRight * step) * frame_.across() +
                           model::Vec3{0.0, 0.0, stepsUp * step};
    moveStation(nudged_->limb, index, to, nudged_->gesture);
}

void SideViewModel::thicken(const QString& limb, int station, int steps)
{
    workspace_.chooseLimb(limb.toStdString());
    const auto* chosen = workspace_.limb();
    const auto index = static_cast<std::size_t>(station);
    if (!chosen || index >= chosen->stations.size())
        return;
    const double diameter =
        chosen->stations[index].diameter_m + steps * girthStep_m(workspace_.units());
    workspace_.changeTree(
        tr("change the girth of %1").arg(limbTitle(*chosen)),
        model::sketch::setDiameter(*workspace_.tree(), chosen->id, index, diameter));
}

void SideViewModel::beginStroke(double x, double y)
{
    stroke_.clear();
    strokeFrom_.reset();
    const auto* tree = workspace_.tree();
    if (!tree || workspace_.showsAfter())
        return;
    strokeFrom_ = model::sketch::grip(*tree, frame_.toPlace({x, y}, 0.0), frame_.look(),
                                      kReach / frame_.pixelsPerMetre);
    if (strokeFrom_)
        stroke_ << frame_.toCanvas(strokeFrom_->position_m);
    else
        workspace_.say(tr("Start the stroke on the limb that the new one grows from."));
    emit strokeChanged();
}

void SideViewModel::extendStroke(double x, double y)
{
    if (!strokeFrom_)
        return;
    stroke_ << QPointF(x, y);
    emit strokeChanged();
}

bool SideViewModel::endStroke()
{
    const auto from = std::exchange(strokeFrom_, std::nullopt);
    const QPolygonF drawn = std::exchange(stroke_, {});
    emit strokeChanged();
    if (!from || drawn.size() < 2)
        return false;
    const double depth = frame_.depth_m(from->position_m);
    model::sketch::Stroke stroke;
    for (const auto point : drawn)
        stroke.points_m.push_back(frame_.toPlace(point, depth));
    if (model::norm(stroke.points_m.back() - stroke.points_m.front()) < kLeastStroke_m)
        return false;
    takeRoot(*from, stroke);
    return true;
}

void SideViewModel::takeRoot(const model::sketch::Grip& from, const model::sketch::Stroke& stroke)
{
    auto tree = model::sketch::growLimb(*workspace_.tree(), from, stroke);
    const model::Limb limb = tree.limbs.back();
    if (!workspace_.changeTree(tr("draw a limb"), std::move(tree)))
        return;
    workspace_.chooseLimb(limb.id);
    emit limbGrown(QString::fromStdString(limb.id), static_cast<int>(limb.stations.size()) - 1);
}

void SideViewModel::growLimb(const QString& limb, int station)
{
    const auto* tree = workspace_.tree();
    const auto parent = tree ? model::limbIndex(*tree, limb.toStdString()) : model::kNoLimb;
    if (parent == model::kNoLimb)
        return;
    const auto& at = tree->limbs[parent].stations.at(static_cast<std::size_t>(station)).position_m;
    const double out = model::dot(at, frame_.across()) >= 0.0 ? 1.0 : -1.0;
    const model::sketch::Grip from{parent, model::nearestAlong_m(tree->limbs[parent], at), at, 0.0};
    const double reach = model::sketch::firstLength_m(*tree, from) / std::numbers::sqrt2;
    const model::Vec3 tip = at + reach * out * frame_.across() + model::Vec3{0.0, 0.0, reach};
    takeRoot(from, {{at, tip}});
}

void SideViewModel::renameLimb(const QString& name)
{
    const auto* limb = workspace_.limb();
    if (limb)
        workspace_.changeTree(
            tr("rename %1").arg(limbTitle(*limb)),
            model::sketch::renameLimb(*workspace_.tree(), limb->id, name.trimmed().toStdString()));
}

void SideViewModel::deleteLimb()
{
    const auto* limb = workspace_.limb();
    if (!limb || !limb->parent)
        return;
    const std::string parent = *limb->parent;
    if (workspace_.changeTree(tr("erase %1").arg(limbTitle(*limb)),
                              model::sketch::removeLimb(*workspace_.tree(), limb->id)))
        workspace_.chooseLimb(parent);
}

} // namespace app
