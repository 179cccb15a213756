#include "app/view/tree_view_model.hpp"

#include "app/format/day_of_year.hpp"
#include "app/view/plan_things.hpp"
#include "app/words/limb_words.hpp"
#include "app/words/wording.hpp"

#include <algorithm>

namespace app {
namespace {

constexpr int kSigns = 10;

QString title(const model::Tree& tree)
{
    return QString::fromStdString(tree.name.empty() ? tree.id : tree.name);
}

} // namespace

TreeViewModel::TreeViewModel(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace)
{
    connect(&workspace_, &Workspace::treeChanged, this, &TreeViewModel::changed);
}

QString TreeViewModel::name() const
{
    return any() ? QString::fromStdString(workspace_.tree()->name) : QString();
}

void TreeViewModel::setName(const QString& name)
{
    if (!any() || name.trimmed() == this->name())
        return;
    auto tree = *workspace_.tree();
    tree.name = name.trimmed().toStdString();
    workspace_.changeTree(tr("rename %1").arg(title(*workspace_.tree())), std::move(tree));
}

QString TreeViewModel::species() const
{
    const auto* species = workspace_.species();
    return species ? capitalised(speciesName(*species)) : QString();
}

QString TreeViewModel::planted() const
{
    const auto year = any() ? workspace_.tree()->plantedYear : std::nullopt;
    return year ? QString::number(*year) : QString();
}

void TreeViewModel::setPlanted(const QString& typed)
{
    if (!any() || typed.trimmed() == planted())
        return;
    auto tree = *workspace_.tree();
    bool good = true;
    tree.plantedYear.reset();
    if (!typed.trimmed().isEmpty())
        tree.plantedYear = typed.trimmed().toInt(&good);
    const QString step = tr("change the year of %1").arg(title(tree));
    if (good)
        workspace_.changeTree(step, std::move(tree));
    else
        workspace_.say(tr("Planted: a year such as 1987; leave it empty if nobody knows."));
    emit changed();
}

bool TreeViewModel::dropsLeaf() const
{
    const auto* species = workspace_.species();
    return species && species->practice.leafHabit != model::LeafHabit::evergreen;
}

QString TreeViewModel::leafOn() const
{
    const auto day = any() ? workspace_.tree()->leafDates.on : Day();
    return day ? dayText(*day, workspace_.units().locale()) : QString();
}

void TreeViewModel::setLeafOn(const QString& typed)
{
    if (typed.trimmed() != leafOn())
        setLeafDay(typed, &model::LeafDates::on);
}

QString TreeViewModel::leafOff() const
{
    const auto day = any() ? workspace_.tree()->leafDates.off : Day();
    return day ? dayText(*day, workspace_.units().locale()) : QString();
}

void TreeViewModel::setLeafOff(const QString& typed)
{
    if (typed.trimmed() != leafOff())
        setLeafDay(typed, &model::LeafDates::off);
}

void TreeViewModel::setLeafDay(const QString& typed, Day model::LeafDates::*which)
{
    if (!any())
        return;
    const auto& locale = workspace_.units().locale();
    const Day day = typed.trimmed().isEmpty() ? Day() : parseDayOfYear(typed, locale);
    auto tree = *workspace_.tree();
    const QString step = tr("change the leaf dates of %1").arg(title(tree));
    tree.leafDates.*which = day;
    if (!day && !typed.trimmed().isEmpty())
        workspace_.say(tr("Leaf: a day such as %1; leave it empty if nobody has looked.")
                           .arg(dayText(std::chrono::May / 2, locale)));
    else
        workspace_.changeTree(step, std::move(tree));
    emit changed();
}

QStringList TreeViewModel::vigours() const
{
    return vigourWords();
}

int TreeViewModel::vigour() const
{
    return any() ? static_cast<int>(workspace_.tree()->vigour) : -1;
}

void TreeViewModel::setVigour(int vigour)
{
    if (!any() || vigour < 0 || vigour >= vigourWords().size())
        return;
    auto tree = *workspace_.tree();
    tree.vigour = static_cast<model::Vigour>(vigour);
    const QString step = tr("change the vigour of %1").arg(title(tree));
    workspace_.changeTree(step, std::move(tree));
}

QStringList TreeViewModel::protections() const
{
    return protectionWords();
}

int TreeViewModel::protection() const
{
    return any() ? static_cast<int>(workspace_.tree()->protection) : -1;
}

void TreeViewModel::setProtection(int protection)
{
    if (!any() || protection < 0 || protection >= protectionWords().size())
        return;
    auto tree = *workspace_.tree();
    tree.protection = static_cast<model::Protection>(protection);
    const QString step = tr("change the protection of %1").arg(title(tree));
    workspace_.changeTree(step, std::move(tree));
}

QStringList TreeViewModel::signs() const
{
    QStringList words;
    for (int sign = 0; sign < kSigns; ++sign)
        words << capitalised(signWords(static_cast<model::Sign>(sign)));
    return words;
}

QList<bool> TreeViewModel::seen() const
{
    QList<bool> seen(kSigns, false);
    if (any())
        for (const auto& observation : workspace_.tree()->observations)
            seen[static_cast<int>(observation.sign)] = true;
    return seen;
}

void TreeViewModel::setSeen(int sign, bool seen)
{
    if (!any() || sign < 0 || sign >= kSigns || this->seen().at(sign) == seen)
        return;
    auto tree = *workspace_.tree();
    const auto which = static_cast<model::Sign>(sign);
    if (seen) {
        model::Observation observation;
        observation.sign = which;
        tree.observations.push_back(std::move(observation));
    } else {
        std::erase_if(tree.observations,
                      [which](const auto& observation) { return observation.sign == which; });
    }
    const QString words = signWords(which);
    workspace_.changeTree(seen ? tr("note %1").arg(words) : tr("take back %1").arg(words),
                          std::move(tree));
}

void TreeViewModel::remove()
{
    const auto* tree = workspace_.tree();
    const auto thing = tree ? findThing(workspace_.garden(), tree->id) : std::nullopt;
    if (!thing)
        return;
    auto garden = workspace_.garden();
    const QString name = tr("remove %1").arg(title(*tree));
    removeThing(garden, *thing);
    workspace_.say(workspace_.document().change(name, std::move(garden)));
}

} // namespace app
