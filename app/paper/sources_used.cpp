#include "app/paper/sources_used.hpp"

#include "app/words/finding_words.hpp"

#include <set>

namespace app {
namespace {

using model::advice::Finding;

QString reference(const TreeOnPaper& on, const std::string& key)
{
    const auto found = on.tables.sources.find(key);
    return QString::fromStdString(found == on.tables.sources.end() ? key : found->second);
}

void addFigure(QStringList& lines, const TreeOnPaper& on, const QString& what,
               const std::string& key)
{
    if (!key.empty())
        lines << Words::tr("%1: %2").arg(what, reference(on, key));
}

void addPractice(QStringList& lines, const TreeOnPaper& on, const QString& what, const char* topic)
{
    const auto& sources = on.wording.species.practice.sources;
    const auto found = sources.find(topic);
    if (found != sources.end() && !found->second.empty())
        addFigure(lines, on, what, found->second.front().source);
}

/// Every rule that speaks about this tree and job, each source once.
QStringList ruleSources(const TreeOnPaper& on)
{
    std::vector<const std::vector<Finding>*> lists{&on.of.labour.findings, &on.of.suggestion.notes,
                                                   &on.of.suggestion.binding,
                                                   &on.of.suggestion.allowanceReasons};
    for (const auto& cut : on.of.suggestion.cuts) {
        lists.push_back(&cut.notes);
        lists.push_back(&cut.labour.findings);
    }
    std::set<QString> sources;
    for (const auto* list : lists)
        for (const auto& finding : *list)
            sources.insert(capitalised(QString::fromUtf8(ruleFacts(finding.rule).source)));
    for (const auto& cut : on.of.suggestion.cuts)
        for (const auto& piece : cut.pieces)
            sources.insert(capitalised(QString::fromUtf8(toolSource(piece.tool))));
    sources.erase(QString());
    return {sources.begin(), sources.end()};
}

} // namespace

QStringList sourcesUsed(const TreeOnPaper& on)
{
    const auto& species = on.wording.species;
    QStringList lines;
    addFigure(lines, on, Words::tr("Strength of green wood"), species.wood.greenMor_Pa.source);
    addFigure(lines, on, Words::tr("Weight of green limbs"), species.wood.limbDensity_kg_m3.source);
    if (species.leaf.crownLai)
        addFigure(lines, on, Words::tr("How much leaf the crown bears"),
                  species.leaf.crownLai->source);
    addPractice(lines, on, Words::tr("Good and bad months"), "timing");
    addPractice(lines, on, Words::tr("How fast shoots grow"), "shoot_high");
    lines << ruleSources(on);
    lines << Words::tr("Loads, headroom, light, regrowth and drop zones: the method notes of "
                       "Underbough (docs/methods), each formula with its source.");
    return lines;
}

} // namespace app
