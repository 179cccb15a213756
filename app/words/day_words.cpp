#include "app/words/day_words.hpp"

#include "app/words/wording.hpp"

#include <algorithm>

namespace app {

using model::advice::DayFinding;
using model::advice::DayRule;
using model::advice::Severity;

QString sentence(const DayFinding& finding, const Units& units)
{
    const bool stop = finding.severity == Severity::block;
    const QString felt = units.temperature(finding.found);
    const QString limit = units.temperature(finding.limit);
    switch (finding.rule) {
    case DayRule::heat:
        return stop ? Words::tr("In the shade it feels like %1: at %2 and more people at work get "
                                "heat stroke. Wait for a cooler day.")
                          .arg(felt, limit)
                    : Words::tr("In the shade it feels like %1: from %2 on work in short turns, "
                                "drink, and never alone.")
                          .arg(felt, limit);
    case DayRule::heatInSun:
        return stop ? Words::tr("In full sun it feels like %1: work in the shade or in the early "
                                "morning only.")
                          .arg(felt)
                    : Words::tr("In full sun it feels like %1: cover your head and rest in the "
                                "shade.")
                          .arg(felt);
    case DayRule::heatForTree:
        return Words::tr("At %1 bared bark burns: leave heavy cuts for later.").arg(felt);
    case DayRule::frost:
        return Words::tr("At %1 wood splits and footing is bad: wait for a thaw.").arg(felt);
    case DayRule::wind:
        break;
    }
    const QString gust = units.speed(finding.found);
    return stop ? Words::tr("Gusts of %1: no tree work in wind of %2 and more.")
                      .arg(gust, units.speed(finding.limit))
                : Words::tr("Gusts of %1: pieces swing and blow off course. Small work from the "
                            "ground only.")
                      .arg(gust);
}

QString dayAnswer(const std::vector<DayFinding>& findings)
{
    if (std::ranges::any_of(findings, [](const DayFinding& f) {
            return f.severity == Severity::block && f.rule != DayRule::heatInSun;
        }))
        return Words::tr("Leave it for another day.");
    if (!findings.empty())
        return Words::tr("Only with care.");
    return Words::tr("Nothing in the weather that was given speaks against it.");
}

} // namespace app
