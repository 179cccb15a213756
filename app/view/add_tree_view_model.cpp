#include "app/view/add_tree_view_model.hpp"

#include "app/drawing/side_frame.hpp"
#include "app/format/parse_degrees.hpp"
#include "app/view/free_id.hpp"
#include "app/view/name_search.hpp"
#include "app/words/first_tree_words.hpp"
#include "app/words/sketch_words.hpp"
#include "app/words/wording.hpp"
#include "model/crown/sketch_check.hpp"
#include "model/sketch/measured_height.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace app {
namespace {

constexpr std::size_t kMostFound = 8;

/// East of the trees that are there, so that crowns don't start inside each other.
model::Point2 freePlace(const model::Garden& garden)
{
    model::Point2 place{};
    for (const auto& tree : garden.trees)
        place = {std::max(place.x, tree.position_m.x + reach_m(tree) + 4.0), place.y};
    return place;
}

} // namespace

AddTreeViewModel::AddTreeViewModel(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace)
{
    for (const auto& species : workspace_.tables().species)
        names_ << namesOf(species.common, species.latin);
    reset();
}

void AddTreeViewModel::reset()
{
    typed_.clear();
    found_.clear();
    species_.reset();
    for (auto* text : {&name_, &stem_, &height_, &spread_, &lowestLimb_})
        text->clear();
    byGirth_ = true;
    habit_ = model::sketch::Habit::spreading;
    along_ = QStringLiteral("90");
    const auto& units = workspace_.units();
    const auto place = freePlace(workspace_.garden());
    east_ = units.length(place.x);
    north_ = units.length(place.y);
    emit changed();
}

void AddTreeViewModel::take(QString& into, const QString& typed)
{
    if (typed == into)
        return;
    into = typed;
    emit changed();
}

void AddTreeViewModel::setTyped(const QString& typed)
{
    if (typed == typed_)
        return;
    typed_ = typed;
    species_.reset();
    found_ = typed.trimmed().isEmpty() ? std::vector<std::size_t>()
                                       : searchNames(names_, typed, kMostFound);
    if (found_.size() == 1)
        takeSpecies(0);
    else
        emit changed();
}

QStringList AddTreeViewModel::found() const
{
    QStringList titles;
    for (const auto index : found_)
        titles << speciesName(workspace_.tables().species[index]);
    return titles;
}

void AddTreeViewModel::takeSpecies(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= found_.size())
        return;
    species_ = found_[static_cast<std::size_t>(index)];
    const bool only = found_.size() == 1 && index == 0;
    if (!only) { // what is being typed stays as it is
        typed_ = speciesName(*chosen());
        found_.clear();
    }
    habit_ = model::sketch::usualHabit(*chosen());
    emit changed();
}

const model::Species* AddTreeViewModel::chosen() const
{
    return species_ ? &workspace_.tables().species[*species_] : nullptr;
}

QString AddTreeViewModel::species() const
{
    return chosen() ? QString::fromStdString(chosen()->latin) : QString();
}

QString AddTreeViewModel::usualName() const
{
    return chosen() ? capitalised(commonName(*chosen())) : QString();
}

void AddTreeViewModel::setByGirth(bool byGirth)
{
    if (byGirth == byGirth_)
        return;
    byGirth_ = byGirth;
    emit changed();
}

std::optional<double> AddTreeViewModel::stemDiameter_m() const
{
    const auto measure_m = workspace_.units().parseDiameter_m(stem_);
    if (!measure_m || !(*measure_m > 0.0))
        return std::nullopt;
    return byGirth_ ? *measure_m / std::numbers::pi : *measure_m;
}

QString AddTreeViewModel::stemHint() const
{
    const auto diameter_m = stemDiameter_m();
    if (!diameter_m)
        return {};
    return byGirth_
               ? tr("%1 through").arg(workspace_.units().diameter(*diameter_m))
               : tr("%1 round").arg(workspace_.units().diameter(*diameter_m * std::numbers::pi));
}

std::optional<model::sketch::FirstMeasures> AddTreeViewModel::usual() const
{
    const auto diameter_m = stemDiameter_m();
    if (!chosen() || !diameter_m)
        return std::nullopt;
    return model::sketch::usualMeasures(*chosen(), *diameter_m, habit_);
}

QString AddTreeViewModel::usualHeight() const
{
    const auto measures = usual();
    return measures ? workspace_.units().roughLength(measures->height_m) : QString();
}

QString AddTreeViewModel::usualSpread() const
{
    const auto measures = usual();
    return measures ? workspace_.units().roughLength(measures->spread_m) : QString();
}

QString AddTreeViewModel::usualLowestLimb() const
{
    const auto measured = measures();
    return measured ? workspace_.units().roughLength(measured->lowestLimb_m) : QString();
}

QStringList AddTreeViewModel::habits() const
{
    return habitWords();
}

void AddTreeViewModel::setHabit(int habit)
{
    if (habit < 0 || habit >= habitWords().size() || habit == this->habit())
        return;
    habit_ = model::sketch::kHabits[habit];
    emit changed();
}

std::optional<double> AddTreeViewModel::bearing_deg() const
{
    const auto value = parseDegrees(along_, workspace_.units().locale(), 'N', 'S');
    return value && *value >= 0.0 && *value <= 360.0 ? value : std::nullopt;
}

std::optional<model::sketch::FirstMeasures> AddTreeViewModel::measures() const
{
    auto measures = usual();
    if (!measures)
        return std::nullopt;
    const auto& units = workspace_.units();
    const double usualLowest = measures->lowestLimb_m / measures->height_m;
    const double habitual_m = measures->lowestLimb_m;
    if (!height_.trimmed().isEmpty())
        measures->height_m = units.parseLength_m(height_).value_or(measures->height_m);
    if (!spread_.trimmed().isEmpty())
        measures->spread_m = units.parseLength_m(spread_).value_or(measures->spread_m);
    measures->lowestLimb_m = std::max(0.1, std::min(habitual_m, usualLowest * measures->height_m));
    if (!lowestLimb_.trimmed().isEmpty())
        measures->lowestLimb_m = units.parseLength_m(lowestLimb_).value_or(measures->lowestLimb_m);
    measures->along_deg = bearing_deg().value_or(90.0);
    return measures;
}

/// The first text that is no measure, in a sentence.
QString AddTreeViewModel::unreadable() const
{
    const auto& units = workspace_.units();
    const auto unread = [&units](const QString& text) {
        return !text.trimmed().isEmpty() && !units.parseLength_m(text);
    };
    const QString example = units.length(4.5);
    if (unread(height_))
        return tr("Height: a length such as %1.").arg(example);
    if (unread(spread_))
        return tr("Spread: a length such as %1.").arg(example);
    if (unread(lowestLimb_))
        return tr("Lowest limb: a length such as %1.").arg(units.length(1.8));
    if (isEspalier() && !bearing_deg())
        return tr("Runs along: a bearing from 0 to 360, such as 90 for east and west.");
    if (unread(east_) || unread(north_) || east_.trimmed().isEmpty() || north_.trimmed().isEmpty())
        return tr("Place: lengths east and north, such as %1.").arg(example);
    return {};
}

QString AddTreeViewModel::problem() const
{
    if (!chosen())
        return typed_.trimmed().isEmpty()
                   ? tr("Type what kind of tree it is, by its common or its Latin name.")
               : found_.empty() ? tr("No species of that name is known here. A relative will do.")
                                : tr("Choose one of the kinds found.");
    if (!stemDiameter_m())
        return byGirth_ ? tr("Put the tape round the stem at breast height: a length such as %1.")
                              .arg(workspace_.units().diameter(0.6))
                        : tr("Measure the stem through at breast height: a length such as %1.")
                              .arg(workspace_.units().diameter(0.2));
    const QString text = unreadable();
    if (!text.isEmpty())
        return text;
    const auto fault = model::sketch::measureFault(*measures());
    return fault ? sentence(*fault, *measures(), workspace_.units()) : QString();
}

QString AddTreeViewModel::remark() const
{
    if (!problem().isEmpty())
        return {};
    const auto tree = model::sketch::firstTree(*measures());
    const auto check = model::checkSketch(tree, model::foliate(tree, *chosen()), *chosen());
    return check ? sketchDoubts(*check, workspace_.units()).join(QLatin1Char(' ')) : QString();
}

QString AddTreeViewModel::heightByShadow(const QString& stick, const QString& stickShadow,
                                         const QString& treeShadow) const
{
    const auto& units = workspace_.units();
    const auto height = model::sketch::height_m(model::sketch::Shadows{
        units.parseLength_m(stick).value_or(0.0), units.parseLength_m(stickShadow).value_or(0.0),
        units.parseLength_m(treeShadow).value_or(0.0)});
    return height ? units.roughLength(*height) : QString();
}

QString AddTreeViewModel::heightByAngle(const QString& angle, const QString& distance,
                                        const QString& eye) const
{
    const auto& units = workspace_.units();
    const auto height = model::sketch::height_m(model::sketch::Sighting{
        parseDegrees(angle, units.locale(), 'N', 'S').value_or(0.0),
        units.parseLength_m(distance).value_or(0.0), units.parseLength_m(eye).value_or(-1.0)});
    return height ? units.roughLength(*height) : QString();
}

model::Tree AddTreeViewModel::sketched() const
{
    auto tree = model::sketch::firstTree(*measures());
    nameLimbs(tree);
    tree.id = freeId(workspace_.garden(), "tree");
    tree.name = (name_.trimmed().isEmpty() ? usualName() : name_.trimmed()).toStdString();
    tree.species = chosen()->latin;
    const auto& units = workspace_.units();
    tree.position_m = {*units.parseLength_m(east_), *units.parseLength_m(north_)};
    return tree;
}

bool AddTreeViewModel::add()
{
    if (!problem().isEmpty())
        return false;
    auto tree = sketched();
    const auto id = tree.id;
    const auto title = QString::fromStdString(tree.name);
    auto garden = workspace_.garden();
    garden.trees.push_back(std::move(tree));
    const QString refusal =
        workspace_.document().change(tr("add %1").arg(title), std::move(garden));
    workspace_.say(refusal);
    if (!refusal.isEmpty())
        return false;
    workspace_.chooseTree(id);
    emit added();
    return true;
}

} // namespace app
