#include "app/view/goals_view_model.hpp"

#include "app/view/limb_title.hpp"
#include "app/words/goal_words.hpp"
#include "app/words/light_words.hpp"
#include "model/advice/fruit_wood.hpp"
#include "model/document/limits.hpp"

#include <algorithm>

namespace app {
namespace {

using model::Goal;
using model::GoalKind;
using State = model::advice::GoalResult::State;

QString plantingName(const model::Garden& garden, const std::string& id)
{
    const auto planting = std::ranges::find(garden.plantings, id, &model::Planting::id);
    return QString::fromStdString(
        planting == garden.plantings.end() || planting->name.empty() ? id : planting->name);
}

/// What the goal is about, before anything is known of it.
QString subjectOf(const Goal& goal, const model::Garden& garden, const model::Tree& tree,
                  const Units& units)
{
    const QString id = QString::fromStdString(goal.subject);
    const auto limb = model::limbIndex(tree, goal.subject);
    const QString limbName = limb == model::kNoLimb ? id : limbTitle(tree.limbs[limb]);
    switch (goal.kind) {
    case GoalKind::relief:
        return GoalsViewModel::tr("%1 of its strength at most in a storm: %2")
            .arg(units.share(goal.value.value_or(1.0)),
                 goal.subject.empty() ? GoalsViewModel::tr("every limb") : limbName);
    case GoalKind::light: {
        const QString name = plantingName(garden, goal.subject);
        return goal.value
                   ? GoalsViewModel::tr("%1 of sun on %2").arg(units.hours(*goal.value), name)
                   : GoalsViewModel::tr("The sun that it needs on %1").arg(name);
    }
    case GoalKind::gust:
        return GoalsViewModel::tr("A gust of %1 borne: %2")
            .arg(units.speed(goal.value.value_or(0.0)),
                 goal.subject.empty() ? GoalsViewModel::tr("every limb") : limbName);
    case GoalKind::dli:
        return goal.value
                   ? GoalsViewModel::tr("%1 of light for growth on %2")
                         .arg(molWords(*goal.value, units), plantingName(garden, goal.subject))
                   : GoalsViewModel::tr("The light for growth that it needs on %1")
                         .arg(plantingName(garden, goal.subject));
    case GoalKind::keep:
        return GoalsViewModel::tr("%1 stays").arg(limbName);
    case GoalKind::lose:
        return GoalsViewModel::tr("%1 goes").arg(limbName);
    case GoalKind::openCentre:
        return GoalsViewModel::tr("The middle of the crown open");
    case GoalKind::leaf:
        break;
    }
    return GoalsViewModel::tr("No more than %1 of the leaf")
        .arg(units.share(goal.value.value_or(1)));
}

QString stateWord(State state)
{
    switch (state) {
    case State::met:
        return GoalsViewModel::tr("reached");
    case State::givenUp:
        return GoalsViewModel::tr("given up");
    case State::missed:
        return GoalsViewModel::tr("not in full");
    case State::leftAside:
        break;
    }
    return GoalsViewModel::tr("left aside");
}

Tone::Value toneOf(State state)
{
    return state == State::met ? Tone::Good : state == State::missed ? Tone::Grave : Tone::Mind;
}

} // namespace

GoalsViewModel::GoalsViewModel(Workspace& workspace, QObject* parent)
    : QObject(parent), workspace_(workspace)
{
    connect(&workspace_, &Workspace::fullChanged, this, &GoalsViewModel::refresh);
    connect(&workspace_, &Workspace::treeChanged, this, &GoalsViewModel::refresh);
}

void GoalsViewModel::refresh()
{
    std::vector<Fact> facts;
    const auto* tree = workspace_.tree();
    const auto* species = workspace_.species();
    const auto* full = workspace_.isCurrent() ? workspace_.treeAssessment() : nullptr;
    for (std::size_t i = 0; tree && species && i < tree->goals.size(); ++i) {
        Fact fact;
        fact.subject = subjectOf(tree->goals[i], workspace_.garden(), *tree, workspace_.units());
        fact.measure = -1.0;
        fact.sentence = fact.subject;
        if (full && i < full->suggestion.goals.size()) {
            const auto& result = full->suggestion.goals[i];
            fact.figure = stateWord(result.state);
            fact.tone = toneOf(result.state);
            fact.sentence =
                app::sentence(result, {workspace_.units(), workspace_.garden(), *tree, *species});
        }
        facts.push_back(std::move(fact));
    }
    goals_.show(std::move(facts));
    emit changed();
}

QStringList GoalsViewModel::plantings() const
{
    QStringList names;
    for (const auto& planting : workspace_.garden().plantings)
        names << QString::fromStdString(planting.name.empty() ? planting.id : planting.name);
    return names;
}

void GoalsViewModel::keep(const QString& limb)
{
    put(tr("leave a limb"), {GoalKind::keep, model::Want::must, limb.toStdString(), {}, {}, {}});
}

void GoalsViewModel::lose(const QString& limb)
{
    put(tr("take a limb"), {GoalKind::lose, model::Want::must, limb.toStdString(), {}, {}, {}});
}

bool GoalsViewModel::relieve(const QString& share)
{
    Goal goal{GoalKind::relief, model::Want::must, {}, 1.0, {}, {}};
    if (!share.trimmed().isEmpty()) {
        goal.value = workspace_.units().parseShare(share);
        if (!goal.value || !(*goal.value > 0.0 && *goal.value <= 2.0))
            return refuse(share, tr("a share of its strength such as 80 %"));
    }
    return put(tr("relieve the limbs"), std::move(goal));
}

bool GoalsViewModel::light(int planting, const QString& hours)
{
    const auto& all = workspace_.garden().plantings;
    if (planting < 0 || planting >= static_cast<int>(all.size()))
        return false;
    Goal goal{
        GoalKind::light, model::Want::must, all[static_cast<std::size_t>(planting)].id, {}, {}, {}};
    if (!hours.trimmed().isEmpty()) {
        bool isNumber = false;
        QString plain = hours.trimmed();
        plain.remove(QLatin1Char('h'));
        goal.value =
            plain.trimmed().replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&isNumber);
        if (!isNumber || !(*goal.value > 0.0 && *goal.value <= 24.0))
            return refuse(hours, tr("hours of sun a day such as 4.5"));
    }
    return put(tr("give light"), std::move(goal));
}

bool GoalsViewModel::lightForGrowth(int planting, const QString& moles)
{
    const auto& all = workspace_.garden().plantings;
    if (planting < 0 || planting >= static_cast<int>(all.size()))
        return false;
    Goal goal{
        GoalKind::dli, model::Want::must, all[static_cast<std::size_t>(planting)].id, {}, {}, {}};
    if (!moles.trimmed().isEmpty()) {
        bool isNumber = false;
        QString plain = moles.trimmed();
        plain.remove(QStringLiteral("mol"));
        goal.value =
            plain.trimmed().replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&isNumber);
        if (!isNumber || !(*goal.value > 0.0 && *goal.value <= 100.0))
            return refuse(moles, tr("mol a day such as 12"));
    }
    return put(tr("give light"), std::move(goal));
}

bool GoalsViewModel::bear(const QString& gust)
{
    const auto speed = workspace_.units().parseSpeed_m_s(gust);
    if (!speed || !(*speed > 0.0 && *speed <= model::limits::kGust_m_s))
        return refuse(gust, tr("a gust such as 90 km/h"));
    return put(tr("bear a gust"), {GoalKind::gust, model::Want::must, {}, speed, {}, {}});
}

bool GoalsViewModel::takeAtMost(const QString& share)
{
    const auto most = workspace_.units().parseShare(share);
    if (!most || !(*most > 0.0 && *most <= 1.0))
        return refuse(share, tr("a share of the leaf such as 15 %"));
    return put(tr("spare the leaf"), {GoalKind::leaf, model::Want::must, {}, most, {}, {}});
}

bool GoalsViewModel::canOpenMiddle() const
{
    const auto* tree = workspace_.tree();
    return tree && model::advice::yearlyRenewal(tree->species) &&
           std::ranges::find(tree->goals, GoalKind::openCentre, &Goal::kind) == tree->goals.end();
}

void GoalsViewModel::openMiddle()
{
    put(tr("open the middle"), {GoalKind::openCentre, model::Want::must, {}, {}, {}, {}});
}

void GoalsViewModel::remove(int row)
{
    const auto* tree = workspace_.tree();
    if (!tree || row < 0 || row >= static_cast<int>(tree->goals.size()))
        return;
    auto after = *tree;
    after.goals.erase(after.goals.begin() + row);
    workspace_.changeTree(tr("drop a goal"), std::move(after));
}

bool GoalsViewModel::put(const QString& name, Goal goal)
{
    const auto* tree = workspace_.tree();
    if (!tree)
        return false;
    auto after = *tree;
    const bool aboutLimb = goal.kind == GoalKind::keep || goal.kind == GoalKind::lose;
    std::erase_if(after.goals, [&](const Goal& other) {
        const bool otherAboutLimb = other.kind == GoalKind::keep || other.kind == GoalKind::lose;
        return other.subject == goal.subject &&
               (other.kind == goal.kind || (aboutLimb && otherAboutLimb));
    });
    after.goals.push_back(std::move(goal));
    return workspace_.changeTree(name, std::move(after));
}

bool GoalsViewModel::refuse(const QString& found, const QString& expected)
{
    workspace_.say(tr("Found “%1”, expected %2.").arg(found, expected));
    return false;
}

} // namespace app
