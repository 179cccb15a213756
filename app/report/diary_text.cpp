#include "app/report/diary_text.hpp"

#include "app/report/suggestion_text.hpp"
#include "app/words/diary_words.hpp"
#include "app/words/growth_words.hpp"

namespace app {
namespace {

using model::diary::TreeDiary;

void addVisits(TextPage& page, const Wording& wording)
{
    page.heading(Words::tr("Visits"));
    if (wording.tree.visits.empty()) {
        page.paragraph(Words::tr("No visit has been written yet."));
        return;
    }
    for (const auto* visit : model::growth::visitsByDate(wording.tree)) {
        page.bullet(visitTitle(*visit, wording.units));
        for (const QString& line : visitLines(*visit, wording) + photoLines(*visit))
            page.below(line);
    }
}

void addSeasons(TextPage& page, const TreeDiary& diary, const Wording& wording)
{
    page.heading(Words::tr("Leaf by season, from leaf fall to leaf fall"));
    for (const auto& season : diary.seasons)
        if (season.taken > 0.0 || season.unknown > 0 || &season == &diary.seasons.back())
            page.bullet(
                Words::tr("%1: %2", "a season, and what was taken in it")
                    .arg(seasonName(season, wording), seasonSentence(season, wording.units)));
    page.paragraph(Words::tr("Counted over the last twelve months, as plans are, %1 may go now.")
                       .arg(wording.units.share(diary.allowance.share)));
}

} // namespace

void addDue(TextPage& page, const model::diary::Due& due, const Wording& wording, bool nameTheTree)
{
    const QString what =
        nameTheTree
            ? Words::tr("%1: %2", "a tree, and what it is due for")
                  .arg(capitalised(treeName(wording.tree, wording.species)), dueWhat(due, wording))
            : dueWhat(due, wording);
    page.bullet(Words::tr("%1 (%2): %3.", "when (overdue): what")
                    .arg(capitalised(dueWhen(due, wording.units)), dueStateWords(due.state), what));
    page.below(dueWhy(due, wording));
}

void addDiary(TextPage& page, const TreeDiary& diary, const Wording& wording)
{
    addTreeTitle(page, wording);
    page.heading(Words::tr("Next due"));
    for (const auto& due : diary.due)
        addDue(page, due, wording, false);
    addVisits(page, wording);
    addSeasons(page, diary, wording);
    page.heading(Words::tr("Growth"));
    for (const auto& grown : diary.growth)
        page.bullet(sentence(grown, wording));
    page.paragraph(shootWords(diary.shoots, wording));
    if (diary.wounds.empty())
        return;
    page.heading(Words::tr("Wounds"));
    int number = 0; // which --closed names it by
    for (const auto& wound : diary.wounds)
        page.bullet(QStringLiteral("%1) %2").arg(++number).arg(sentence(wound, wording)));
    page.paragraph(Words::tr("Closing is reckoned from how much wood the species puts on; wounds "
                             "differ. A wound that is closed can still hide decay."));
}

} // namespace app
