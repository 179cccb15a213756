#include "app/report/suggestion_text.hpp"

#include "app/words/before_after.hpp"
#include "app/words/cautions.hpp"
#include "app/words/cut_words.hpp"
#include "app/words/finding_list.hpp"
#include "app/words/goal_words.hpp"
#include "app/words/growth_words.hpp"
#include "app/words/headroom_words.hpp"
#include "app/words/labour_words.hpp"
#include "app/words/work_words.hpp"

namespace app {
namespace {

using model::advice::Outcome;
using model::advice::PlannedCut;
using model::advice::Suggestion;

void addCut(TextPage& page, int order, const PlannedCut& planned, const Wording& wording)
{
    const QString kind = capitalised(cutKindWords(planned));
    page.numbered(order, QStringLiteral("%1. %2 %3")
                             .arg(kind, instruction(planned, wording), measures(planned, wording)));
    for (const QString& line : workLines(planned, wording))
        page.below(line);
    for (const QString& note : sentences(planned.notes, wording))
        page.below(note);
}

void addCuts(TextPage& page, const Suggestion& suggestion, const Wording& wording)
{
    int order = 0;
    for (const PlannedCut& cut : suggestion.cuts)
        addCut(page, ++order, cut, wording);
    for (const QString& note : jobNotes(suggestion, wording))
        page.bullet(note);
}

/// How sure it is that less leaf doesn't do.
QString proofWords(const Suggestion& suggestion, const Wording& wording)
{
    if (suggestion.proven)
        return Words::tr("Every other set of cuts was weighed: none does it with less leaf.");
    return Words::tr(
               "The search was cut short: a set with less leaf may exist, but none that takes "
               "less than %1.")
        .arg(wording.units.share(suggestion.leafBound));
}

void addBinding(TextPage& page, const Suggestion& suggestion, const Wording& wording)
{
    if (suggestion.binding.empty())
        return;
    page.paragraph(Words::tr("What stands in the way:"));
    for (const QString& rule : sentences(suggestion.binding, wording))
        page.bullet(rule);
}

/// One line of a table that is 80 letters wide.
QString tableRow(const QString& what, const QStringList& figures)
{
    constexpr qsizetype kName = 34;
    constexpr qsizetype kFigure = 15;
    QString line = QStringLiteral("  ") + what;
    if (line.size() > kName)
        line = line.left(kName - 1) + QStringLiteral("…");
    line = line.leftJustified(kName);
    for (const QString& figure : figures)
        line += figure.rightJustified(kFigure);
    return line;
}

void addTable(TextPage& page, const Suggestion& suggestion, const Wording& wording)
{
    page.heading(Words::tr("Before and after"));
    page.row(tableRow({}, {Words::tr("now"), Words::tr("after"), Words::tr("wanted")}));
    for (const auto& line : beforeAndAfter(suggestion, wording))
        page.row(tableRow(line.what, {line.before, line.after, line.wanted}));
}

void addAfter(TextPage& page, const Suggestion& suggestion, const Wording& wording)
{
    QStringList lines; // of what hung over something before: a strip may be clear now
    for (std::size_t i = 0; i < suggestion.before.size() && i < suggestion.after.size(); ++i)
        if (suggestion.before[i].worstHeight_m())
            lines += sentence(suggestion.after[i], wording);
    if (lines.empty())
        return;
    page.paragraph(Words::tr("Afterwards:"));
    for (const QString& line : lines)
        page.bullet(line);
}

void addGoals(TextPage& page, const Suggestion& suggestion, const Wording& wording)
{
    if (suggestion.goals.empty())
        return;
    page.heading(Words::tr("What you want of it"));
    for (const auto& goal : suggestion.goals)
        page.bullet(sentence(goal, wording));
}

void addRegrowth(TextPage& page, const Suggestion& suggestion, const Wording& wording)
{
    if (suggestion.regrowth.empty())
        return;
    page.heading(Words::tr("How long it holds"));
    for (const auto& strip : suggestion.regrowth)
        page.bullet(sentence(strip, wording));
    page.paragraph(shootWords(suggestion.shoots, wording));
}

} // namespace

void addLabour(TextPage& page, const model::advice::Labour& labour, const Wording& wording)
{
    page.heading(Words::tr("Who does it"));
    page.paragraph(whoWords(labour.who) + QLatin1Char('.'));
    for (const QString& reason : reasons(labour, wording))
        page.bullet(reason);
}

void addSharedWork(TextPage& page, const Suggestion& suggestion,
                   const model::advice::Labour& labour, const Wording& wording)
{
    const auto shared = sharedWork(wording.tree, suggestion, labour);
    if (const QString words = sharedWords(shared, wording); !words.isEmpty())
        page.bullet(words);
}

void addTreeTitle(TextPage& page, const Wording& wording)
{
    page.title(Words::tr("%1: %2, %3 tall, stem %4 thick at breast height")
                   .arg(treeName(wording.tree, wording.species), speciesName(wording.species),
                        wording.units.roughLength(height_m(wording.tree)),
                        wording.units.diameter(stemDiameter_m(wording.tree))));
}

void addHeadroom(TextPage& page, const std::vector<model::headroom::StripHeadroom>& strips,
                 const Wording& wording)
{
    page.heading(Words::tr("Headroom"));
    if (strips.empty())
        page.bullet(Words::tr("No strip of ground is drawn, so there is nothing to measure over."));
    for (const auto& strip : strips)
        page.bullet(sentence(strip, wording));
}

void addSuggestion(TextPage& page, const Suggestion& suggestion, const Wording& wording)
{
    page.heading(Words::tr("What to cut"));
    page.paragraph(outcomeWords(suggestion, wording));
    for (const QString& reason : sentences(suggestion.allowanceReasons, wording))
        page.bullet(reason);
    addBinding(page, suggestion, wording);
    if (!suggestion.cuts.empty()) {
        page.gap();
        addCuts(page, suggestion, wording);
        if (suggestion.outcome == Outcome::met)
            page.bullet(proofWords(suggestion, wording));
        page.gap();
        addAfter(page, suggestion, wording);
        addTable(page, suggestion, wording);
    }
    addGoals(page, suggestion, wording);
    addRegrowth(page, suggestion, wording);
}

void addHolds(TextPage& page, const std::vector<model::advice::Hold>& holds, const Wording& wording)
{
    if (holds.size() < 2) // one way to cut is no choice
        return;
    page.paragraph(Words::tr("How long it would hold if you cut higher:"));
    for (const QString& line : holdLines(holds, wording))
        page.bullet(line);
}

void addCautions(TextPage& page)
{
    page.heading(Words::tr("Before you trust or touch anything"));
    for (const QString& caution : cautions())
        page.bullet(caution);
}

} // namespace app
