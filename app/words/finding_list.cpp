#include "app/words/finding_list.hpp"

#include "app/words/finding_words.hpp"

#include <algorithm>

namespace app {
namespace {

using model::advice::Finding;
using model::advice::Rule;
using Findings = std::vector<Finding>;

/// More limbs than this are counted, not named.
constexpr qsizetype kNamed = 5;

bool isOverloaded(const Finding& finding)
{
    return finding.rule == Rule::limbOverloaded && finding.found;
}

bool isPeopleBelow(const Finding& finding)
{
    return finding.rule == Rule::peopleBelow && finding.severity != model::advice::Severity::block;
}

Findings those(const Findings& findings, bool (*which)(const Finding&))
{
    Findings chosen;
    std::ranges::copy_if(findings, std::back_inserter(chosen), which);
    return chosen;
}

QString overloadedSentence(Findings limbs, const Wording& wording)
{
    std::ranges::stable_sort(limbs, std::greater{}, [](const Finding& f) { return *f.found; });
    QStringList names;
    for (const Finding& limb : limbs)
        if (names.size() < kNamed)
            names << Words::tr("%1 (%2)").arg(subjectName(wording, limb.subject),
                                              wording.units.share(*limb.found));
    const qsizetype more = static_cast<qsizetype>(limbs.size()) - names.size();
    if (more > 0)
        names << Words::tr("%1 more").arg(more);
    return Words::tr("In the gust these limbs would be asked for more than their expected "
                     "strength: %1.")
        .arg(listed(wording.units, names));
}

QString peopleSentence(const Findings& strips, const Wording& wording)
{
    QStringList names;
    double away_m = 0.0;
    for (const Finding& strip : strips) {
        names << subjectName(wording, strip.subject);
        away_m = std::max(away_m, strip.limit.value_or(0.0));
    }
    names.removeDuplicates();
    return Words::tr("People use %1: make no cut while anybody is within %2 of where the pieces "
                     "come down. Close it, and have someone watch it.")
        .arg(listed(wording.units, names), wording.units.roughLength(away_m));
}

bool isSaidBetter(const Finding& finding, const Findings& findings)
{
    return finding.rule == Rule::cutOver50mm &&
           std::ranges::any_of(findings, [&](const Finding& other) {
               return other.rule == Rule::poorHealer && other.subject == finding.subject;
           });
}

} // namespace

QStringList sentences(const Findings& findings, const Wording& wording)
{
    const Findings overloaded = those(findings, &isOverloaded);
    const Findings people = those(findings, &isPeopleBelow);
    QStringList all;
    for (const Finding& finding : findings) {
        if (isSaidBetter(finding, findings))
            continue;
        if (isOverloaded(finding) && overloaded.size() > 1)
            all << overloadedSentence(overloaded, wording);
        else if (isPeopleBelow(finding))
            all << peopleSentence(people, wording);
        else
            all << sentence(finding, wording);
    }
    all.removeDuplicates();
    return all;
}

} // namespace app
