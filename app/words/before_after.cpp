#include "app/words/before_after.hpp"

#include "app/words/light_words.hpp"

namespace app {
namespace {

using model::GoalKind;
using model::advice::GoalResult;

QString heightOr(const std::optional<double>& height_m, const Units& units)
{
    return height_m ? units.length(*height_m) : Words::tr("clear");
}

/// A figure of a goal in its own unit.
QString figure(GoalKind kind, double value, const Units& units)
{
    switch (kind) {
    case GoalKind::relief:
        return units.share(value);
    case GoalKind::gust:
        return units.speed(value);
    case GoalKind::light:
        return units.hours(value);
    case GoalKind::dli:
        return molWords(value, units);
    case GoalKind::keep:
    case GoalKind::lose:
    case GoalKind::leaf:
    case GoalKind::openCentre:
        break;
    }
    return units.number(value, 0);
}

QString nameOf(const GoalResult& result, const Wording& wording)
{
    const QString subject = subjectName(wording, result.goal.subject);
    switch (result.goal.kind) {
    case GoalKind::relief:
        return result.goal.subject.empty() ? Words::tr("Load, hardest pressed limb")
                                           : Words::tr("Load, %1").arg(subject);
    case GoalKind::gust:
        return result.goal.subject.empty() ? Words::tr("First limb breaks in")
                                           : Words::tr("Breaks in, %1").arg(subject);
    case GoalKind::light:
        return Words::tr("Sun a day, %1").arg(subject);
    case GoalKind::dli:
        return Words::tr("Light for growth, %1").arg(subject);
    case GoalKind::openCentre:
        return Words::tr("Limbs that fill the middle");
    case GoalKind::keep:
    case GoalKind::lose:
    case GoalKind::leaf:
        break;
    }
    return {};
}

void addStrips(std::vector<BeforeAfter>& all, const model::advice::Suggestion& suggestion,
               const Wording& wording)
{
    const Units& units = wording.units;
    for (std::size_t i = 0; i < suggestion.before.size() && i < suggestion.after.size(); ++i) {
        const auto& before = suggestion.before[i];
        const auto& after = suggestion.after[i];
        if (!before.worstHeight_m())
            continue;
        const QString strip = thingName(wording.garden, before.strip);
        const QString needed = units.length(before.needed_m);
        all.push_back({Words::tr("Room over %1").arg(strip), heightOr(before.height_m, units),
                       heightOr(after.height_m, units), needed});
        const auto heaviest = [&](const model::headroom::StripHeadroom& of) {
            return of.sagged ? heightOr(of.sagged->height_m, units) : Words::tr("clear");
        };
        if (before.sagged)
            all.push_back({Words::tr("the same, wet and in fruit"), heaviest(before),
                           heaviest(after), needed});
    }
}

} // namespace

std::vector<BeforeAfter> beforeAndAfter(const model::advice::Suggestion& suggestion,
                                        const Wording& wording)
{
    const Units& units = wording.units;
    std::vector<BeforeAfter> all;
    addStrips(all, suggestion, wording);
    for (const auto& goal : suggestion.goals) {
        const QString name = nameOf(goal, wording);
        if (!name.isEmpty() && goal.before && goal.after)
            all.push_back({name, figure(goal.goal.kind, *goal.before, units),
                           figure(goal.goal.kind, *goal.after, units),
                           goal.wanted ? figure(goal.goal.kind, *goal.wanted, units) : QString()});
    }
    all.push_back({Words::tr("Leaf of this sketch"), units.share(1.0),
                   units.share(1.0 - suggestion.leafShare),
                   Words::tr("%1 at least").arg(units.share(1.0 - suggestion.allowance))});
    return all;
}

} // namespace app
