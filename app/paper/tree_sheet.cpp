#include "app/paper/tree_sheet.hpp"

#include "app/paper/figures.hpp"
#include "app/paper/sheet_tables.hpp"
#include "app/paper/sources_used.hpp"
#include "app/words/cut_words.hpp"
#include "app/words/day_words.hpp"
#include "app/words/finding_list.hpp"
#include "app/words/growth_words.hpp"
#include "app/words/labour_words.hpp"
#include "app/words/work_words.hpp"

namespace app {
namespace {

constexpr QSizeF kWholeWidth{720.0, 400.0};
constexpr QSizeF kHalfWidth{400.0, 330.0};
constexpr QSizeF kBars{720.0, 132.0};

void addAnswer(SheetBlocks& blocks, const TreeOnPaper& on)
{
    const auto& suggestion = on.of.suggestion;
    blocks.emplace_back(
        Title{Words::tr("%1: the work").arg(treeName(on.wording.tree, on.wording.species))});
    blocks.emplace_back(Paragraph{treeFacts(on.wording)});
    blocks.emplace_back(Paragraph{whoWords(on.of.labour.who) + QLatin1Char('.'), true});
    const auto shared = sharedWork(on.wording.tree, suggestion, on.of.labour);
    if (const QString words = sharedWords(shared, on.wording); !words.isEmpty())
        blocks.emplace_back(Paragraph{words});
    blocks.emplace_back(Paragraph{outcomeWords(suggestion, on.wording)});
    blocks.emplace_back(Figures{{cutsFigure(on.report, on.of, on.wording.units, kWholeWidth)}});
}

void addWork(SheetBlocks& blocks, const TreeOnPaper& on)
{
    const auto& suggestion = on.of.suggestion;
    if (!suggestion.binding.empty()) {
        blocks.emplace_back(Paragraph{Words::tr("What stands in the way:"), false, true});
        addBullets(blocks, sentences(suggestion.binding, on.wording));
    }
    if (suggestion.cuts.empty())
        return;
    blocks.emplace_back(Heading{Words::tr("The cuts, in working order")});
    blocks.emplace_back(cutTable(on));
    addBullets(blocks, sentences(suggestion.allowanceReasons, on.wording));
    addBullets(blocks, jobNotes(suggestion, on.wording));
}

void addDay(SheetBlocks& blocks, const TreeOnPaper& on)
{
    const auto& weather = on.report.weather;
    blocks.emplace_back(Heading{Words::tr("The day")});
    if (weather.air_C || weather.gust_m_s) {
        const auto found = model::advice::dayCheck(weather);
        blocks.emplace_back(Paragraph{dayAnswer(found)});
        for (const auto& finding : found)
            blocks.emplace_back(Bullet{sentence(finding, on.wording.units)});
    }
    blocks.emplace_back(dayTable(weather, on.wording.units));
    blocks.emplace_back(Paragraph{
        Words::tr("Months for cutting %1 here:").arg(commonName(on.wording.species)), false, true});
    blocks.emplace_back(monthTable(on));
}

void addWho(SheetBlocks& blocks, const TreeOnPaper& on)
{
    blocks.emplace_back(Heading{Words::tr("Who does it, and why")});
    blocks.emplace_back(Paragraph{whoWords(on.of.labour.who) + QLatin1Char('.')});
    addBullets(blocks, reasons(on.of.labour, on.wording));
}

void addBeforeAndAfter(SheetBlocks& blocks, const TreeOnPaper& on)
{
    const Units& units = on.wording.units;
    blocks.emplace_back(Heading{Words::tr("Before and after")});
    Figures row;
    if (!on.of.suggestion.cuts.empty())
        row.figures.push_back(afterFigure(on.report, on.of, units, kHalfWidth));
    row.figures.push_back(planFigure(on.report, &on.wording.tree, units, kHalfWidth));
    blocks.emplace_back(std::move(row));
    if (!on.of.headroom.empty()) {
        blocks.emplace_back(Paragraph{Words::tr("Headroom, dry and as it hangs at its heaviest, "
                                                "wet and in fruit:"),
                                      false, true});
        blocks.emplace_back(headroomTable(on));
    }
    blocks.emplace_back(
        Paragraph{Words::tr("Load in a gust of %1, as a share of the expected strength: at 100 % "
                            "half of such limbs would be expected to fail, and some fail well "
                            "before.")
                      .arg(units.speed(on.report.assessment.gust_m_s)),
                  false, true});
    blocks.emplace_back(loadTable(on));
}

void addRegrowth(SheetBlocks& blocks, const TreeOnPaper& on)
{
    const auto& suggestion = on.of.suggestion;
    if (suggestion.regrowth.empty())
        return;
    blocks.emplace_back(Heading{Words::tr("How long it holds")});
    for (const auto& strip : suggestion.regrowth)
        blocks.emplace_back(Bullet{sentence(strip, on.wording)});
    blocks.emplace_back(Paragraph{shootWords(suggestion.shoots, on.wording)});
}

} // namespace

void addLight(SheetBlocks& blocks, const PaperReport& report, const model::Tables& tables,
              const Units& units)
{
    if (report.light.surfaces.empty())
        return;
    blocks.emplace_back(Heading{Words::tr("The year of light")});
    blocks.emplace_back(lightTable(report, tables, units));
    for (auto& figure : lightFigures(report, tables, units, kBars))
        blocks.emplace_back(Figures{{std::move(figure)}});
}

SheetBlocks treeBlocks(const TreeOnPaper& on)
{
    SheetBlocks blocks;
    addAnswer(blocks, on);
    addWork(blocks, on);
    addCautions(blocks);
    addDay(blocks, on);
    addWho(blocks, on);
    addBeforeAndAfter(blocks, on);
    addRegrowth(blocks, on);
    if (on.report.assessment.trees.size() == 1)
        addLight(blocks, on.report, on.tables, on.wording.units);
    blocks.emplace_back(Heading{Words::tr("Where the figures come from")});
    addBullets(blocks, sourcesUsed(on));
    blocks.emplace_back(Heading{Words::tr("Notes")});
    blocks.emplace_back(NoteLines{6});
    return blocks;
}

} // namespace app
