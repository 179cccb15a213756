#include "app/words/chain.hpp"
#include "app/words/finding_words.hpp"
#include "app/words/labour_words.hpp"

#include <algorithm>
#include <string_view>

namespace app {
namespace {

using model::advice::Finding;

/// A figure of a rule, in the unit that the person reads; empty where the rule has none.
QString figure(std::string_view unit, const std::optional<double>& value, const Units& units)
{
    if (!value || unit.empty())
        return {};
    if (unit == "1")
        return units.share(*value);
    if (unit == "m")
        return units.length(*value);
    if (unit == "kg")
        return units.mass(*value);
    if (unit == "deg")
        return units.angle(*value);
    return unit == "month" ? units.month(static_cast<int>(*value)) : QString();
}

QString foundAndLimit(const Finding& finding, const Units& units)
{
    const std::string_view unit = ruleFacts(finding.rule).unit;
    const QString found = figure(unit, finding.found, units);
    const QString limit = figure(unit, finding.limit, units);
    if (found.isEmpty() || limit.isEmpty())
        return found + limit;
    return Words::tr("%1, limit %2").arg(found, limit);
}

ChainPart partOf(const QString& heading, const std::vector<Finding>& findings,
                 model::advice::Severity severity, const Wording& wording)
{
    ChainPart part{heading, {}, {}};
    for (const auto& finding : findings)
        if (finding.severity == severity)
            part.steps.push_back({sentence(finding, wording), foundAndLimit(finding, wording.units),
                                  QString::fromUtf8(ruleFacts(finding.rule).source)});
    return part;
}

} // namespace

Chain chainOf(const model::advice::Labour& labour, const Wording& wording)
{
    using model::advice::Severity;
    Chain chain;
    chain.title = Words::tr("Why me, a helper or a professional?");
    chain.answer = whoWords(labour.who) + QLatin1Char('.');
    chain.about = Words::tr("Each of these rules alone decides. Local codes and what a licensed "
                            "professional says on the spot go before all of them.");
    chain.method = QStringLiteral("docs/methods/advice.md");
    chain.parts = {
        partOf(Words::tr("Asks for a certified arborist"), labour.findings, Severity::block,
               wording),
        partOf(Words::tr("Asks for a helper"), labour.findings, Severity::warn, wording)};
    std::erase_if(chain.parts, [](const ChainPart& part) { return part.steps.empty(); });
    if (chain.parts.empty())
        chain.parts.push_back({Words::tr("What was looked at"),
                               {},
                               {Words::tr("Heights, weights, wounds, electric lines, defects, what "
                                          "stands below: no rule asks for more than somebody in "
                                          "sight and call.")}});
    return chain;
}

} // namespace app
