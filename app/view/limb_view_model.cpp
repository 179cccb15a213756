#include "app/view/limb_view_model.hpp"

#include "app/view/limb_title.hpp"
#include "app/words/limb_words.hpp"
#include "model/sketch/copy_limb.hpp"
#include "model/sketch/reshape.hpp"

#include <algorithm>
#include <numbers>
#include <stdexcept>

namespace app {
namespace {

constexpr double kQuarterTurn_deg = 90.0;

} // namespace

LimbViewModel::LimbViewModel(Workspace& workspace, SideViewModel& side, QObject* parent)
    : QObject(parent), workspace_(workspace), side_(side)
{
    connect(&workspace_, &Workspace::limbChosen, this, [this] {
        station_ = 0;
        emit changed();
    });
    connect(&workspace_, &Workspace::treeChanged, this, &LimbViewModel::changed);
}

QString LimbViewModel::title() const
{
    return any() ? limbTitle(*workspace_.limb()) : QString();
}

void LimbViewModel::changeLimb(const QString& what, const std::function<void(model::Limb&)>& change)
{
    if (!any())
        return;
    auto tree = *workspace_.tree();
    auto& limb = tree.limbs.at(model::limbIndex(tree, workspace_.limbId()));
    const QString name = tr("change the %1 of %2").arg(what, limbTitle(limb));
    change(limb);
    workspace_.changeTree(name, std::move(tree));
    emit changed();
}

std::optional<double> LimbViewModel::readLength(const QString& typed, const QString& label)
{
    const auto value = workspace_.units().parseLength_m(typed);
    if (!value) {
        workspace_.say(tr("%1: a length such as %2.").arg(label, workspace_.units().length(0.8)));
        emit changed();
    }
    return value;
}

QStringList LimbViewModel::stations() const
{
    QStringList places;
    const auto* limb = workspace_.limb();
    if (!limb)
        return places;
    for (std::size_t s = 0; s < limb->stations.size(); ++s)
        places << (s == 0 ? (limb->parent ? tr("At its union") : tr("At the ground"))
                   : s + 1 == limb->stations.size()
                       ? tr("At its end")
                       : tr("%1 up").arg(
                             workspace_.units().roughLength(limb->stations[s].position_m.z)));
    return places;
}

int LimbViewModel::station() const
{
    return any() ? std::min(station_, static_cast<int>(workspace_.limb()->stations.size()) - 1)
                 : -1;
}

void LimbViewModel::setStation(int station)
{
    if (!any() || station < 0 ||
        static_cast<std::size_t>(station) >= workspace_.limb()->stations.size())
        return;
    station_ = station;
    emit changed();
}

QString LimbViewModel::girth() const
{
    if (!any())
        return {};
    const auto at = static_cast<std::size_t>(station());
    return workspace_.units().diameter(std::numbers::pi *
                                       workspace_.limb()->stations[at].diameter_m);
}

QString LimbViewModel::diameter() const
{
    if (!any())
        return {};
    const auto at = static_cast<std::size_t>(station());
    return workspace_.units().diameter(workspace_.limb()->stations[at].diameter_m);
}

void LimbViewModel::setThickness(std::optional<double> diameter_m, const QString& example)
{
    if (!diameter_m) {
        workspace_.say(tr("Girth: a length such as %1.").arg(example));
        emit changed();
        return;
    }
    const auto at = static_cast<std::size_t>(std::max(0, station()));
    changeLimb(tr("girth"), [&](model::Limb& limb) {
        limb.stations.at(at).diameter_m = *diameter_m;
        limb.measured = model::Measured::taped;
    });
}

void LimbViewModel::setGirth(const QString& typed)
{
    if (typed == girth())
        return;
    const auto girth_m = workspace_.units().parseDiameter_m(typed);
    setThickness(girth_m ? std::optional(*girth_m / std::numbers::pi) : std::nullopt,
                 workspace_.units().diameter(0.3));
}

void LimbViewModel::setDiameter(const QString& typed)
{
    if (typed != diameter())
        setThickness(workspace_.units().parseDiameter_m(typed), workspace_.units().diameter(0.1));
}

QStringList LimbViewModel::measuredWords() const
{
    return app::measuredWords();
}

int LimbViewModel::measured() const
{
    return any() ? static_cast<int>(workspace_.limb()->measured) : -1;
}

void LimbViewModel::setMeasured(int measured)
{
    if (measured >= 0 && measured < app::measuredWords().size())
        changeLimb(tr("measuring"), [measured](model::Limb& limb) {
            limb.measured = static_cast<model::Measured>(measured);
        });
}

QStringList LimbViewModel::unions() const
{
    return unionWords();
}

int LimbViewModel::unionKind() const
{
    return any() ? static_cast<int>(workspace_.limb()->unionKind) : -1;
}

void LimbViewModel::setUnionKind(int kind)
{
    if (kind >= 0 && kind < unionWords().size())
        changeLimb(tr("union"),
                   [kind](model::Limb& limb) { limb.unionKind = static_cast<model::Union>(kind); });
}

void LimbViewModel::setLeafy(bool leafy)
{
    if (leafy == this->leafy())
        return;
    changeLimb(tr("leaf"), [leafy](model::Limb& limb) {
        limb.foliage.reset();
        if (!leafy)
            return;
        const double length = model::length_m(limb);
        limb.foliage.emplace();
        limb.foliage->from_m = 0.4 * length;
        limb.foliage->radius_m = std::max(0.15, 0.25 * length);
    });
}

QString LimbViewModel::leafFrom() const
{
    return leafy() ? workspace_.units().length(workspace_.limb()->foliage->from_m) : QString();
}

void LimbViewModel::setLeafFrom(const QString& typed)
{
    const auto from = typed == leafFrom() ? std::nullopt : readLength(typed, tr("Leaves from"));
    if (from && leafy())
        changeLimb(tr("leaf"), [from](model::Limb& limb) { limb.foliage->from_m = *from; });
}

QString LimbViewModel::leafRadius() const
{
    return leafy() ? workspace_.units().length(workspace_.limb()->foliage->radius_m) : QString();
}

void LimbViewModel::setLeafRadius(const QString& typed)
{
    const auto radius =
        typed == leafRadius() ? std::nullopt : readLength(typed, tr("Leaf around it"));
    if (radius && leafy())
        changeLimb(tr("leaf"), [radius](model::Limb& limb) { limb.foliage->radius_m = *radius; });
}

QString LimbViewModel::hanging() const
{
    return leafy() ? workspace_.units().length(workspace_.limb()->foliage->hanging_m) : QString();
}

void LimbViewModel::setHanging(const QString& typed)
{
    const auto hanging =
        typed == this->hanging() ? std::nullopt : readLength(typed, tr("Hanging shoots"));
    if (hanging && leafy())
        changeLimb(tr("hanging shoots"),
                   [hanging](model::Limb& limb) { limb.foliage->hanging_m = *hanging; });
}

QStringList LimbViewModel::densities() const
{
    return densityWords();
}

int LimbViewModel::density() const
{
    return leafy() ? static_cast<int>(workspace_.limb()->foliage->density) : -1;
}

void LimbViewModel::setDensity(int density)
{
    if (leafy() && density >= 0 && density < densityWords().size())
        changeLimb(tr("leaf"), [density](model::Limb& limb) {
            limb.foliage->density = static_cast<model::FoliageDensity>(density);
        });
}

QString LimbViewModel::fruit() const
{
    return any() ? workspace_.units().mass(workspace_.limb()->fruit_kg) : QString();
}

void LimbViewModel::setFruit(const QString& typed)
{
    if (typed == fruit())
        return;
    const auto mass = workspace_.units().parseMass_kg(typed);
    if (!mass) {
        workspace_.say(tr("Fruit: a weight such as %1.").arg(workspace_.units().mass(12.0)));
        emit changed();
        return;
    }
    changeLimb(tr("crop"), [mass](model::Limb& limb) { limb.fruit_kg = *mass; });
}

QStringList LimbViewModel::defectKinds() const
{
    return defectWords();
}

QStringList LimbViewModel::defects() const
{
    QStringList told;
    if (any())
        for (const auto& defect : workspace_.limb()->defects)
            told << tr("%1, %2 along it")
                        .arg(defectWords().at(static_cast<int>(defect.kind)),
                             workspace_.units().length(defect.at_m));
    return told;
}

bool LimbViewModel::addDefect(int kind, const QString& at, const QString& wall)
{
    if (!any() || kind < 0 || kind >= defectWords().size())
        return false;
    model::Defect defect;
    defect.kind = static_cast<model::DefectKind>(kind);
    const auto along = readLength(at, tr("Where along the limb"));
    if (!along)
        return false;
    defect.at_m = *along;
    if (!wall.trimmed().isEmpty()) {
        defect.residualWall_m = workspace_.units().parseDiameter_m(wall);
        if (!defect.residualWall_m) {
            workspace_.say(tr("Sound wood around it: a thickness such as %1.")
                               .arg(workspace_.units().diameter(0.05)));
            return false;
        }
    }
    const auto before = workspace_.limb()->defects.size();
    changeLimb(tr("defects"), [&defect](model::Limb& limb) { limb.defects.push_back(defect); });
    return workspace_.limb()->defects.size() > before;
}

void LimbViewModel::removeDefect(int index)
{
    if (any() && index >= 0 && static_cast<std::size_t>(index) < workspace_.limb()->defects.size())
        changeLimb(tr("defects"), [index](model::Limb& limb) {
            limb.defects.erase(limb.defects.begin() + index);
        });
}

void LimbViewModel::makeLimb(const QString& step, model::Tree after)
{
    const auto count = workspace_.tree()->limbs.size();
    const std::string id = after.limbs.size() > count ? after.limbs[count].id : std::string();
    if (workspace_.changeTree(step.arg(title()), std::move(after)) && !id.empty())
        workspace_.chooseLimb(id);
}

void LimbViewModel::copy()
{
    if (any() && !isTrunk())
        makeLimb(tr("copy %1"), model::sketch::copyLimb(*workspace_.tree(), workspace_.limbId(),
                                                        kQuarterTurn_deg));
}

void LimbViewModel::mirror()
{
    if (any() && !isTrunk())
        makeLimb(tr("mirror %1"), model::sketch::mirrorLimb(*workspace_.tree(), workspace_.limbId(),
                                                            side_.across()));
}

void LimbViewModel::split()
{
    const auto* limb = workspace_.limb();
    if (!limb)
        return;
    const auto at = static_cast<std::size_t>(std::max(0, station()));
    const bool between = at > 0 && at + 1 < limb->stations.size();
    const double at_m = between ? model::nearestAlong_m(*limb, limb->stations[at].position_m)
                                : model::length_m(*limb) / 2.0;
    try {
        makeLimb(tr("split %1"),
                 model::sketch::splitLimb(*workspace_.tree(), workspace_.limbId(), at_m));
    } catch (const std::domain_error&) {
        workspace_.say(tr("That limb is too short to be split."));
    }
}

} // namespace app
