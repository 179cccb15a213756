#include "app/paper/garden_sheets.hpp"

#include "app/paper/figures.hpp"
#include "app/paper/tree_sheet.hpp"
#include "app/words/labour_words.hpp"

#include <set>

namespace app {
namespace {

TreeOnPaper onPaper(const PaperReport& report, const model::TreeAssessment& of,
                    const model::Tables& tables, const Units& units)
{
    const auto& tree = treeWithId(*report.garden, of.tree);
    return {report, of, tables, {units, *report.garden, tree, *findSpecies(tables, tree.species)}};
}

Table treeTable(const PaperReport& report, const model::Tables& tables, const Units& units)
{
    Table table;
    table.head = {Words::tr("Tree"), Words::tr("Height"), Words::tr("Cuts"),
                  Words::tr("Leaf taken"), Words::tr("Who")};
    table.widths = {0.40, 0.12, 0.08, 0.12, 0.28};
    for (const auto& of : report.assessment.trees) {
        const auto on = onPaper(report, of, tables, units);
        table.rows.push_back({Words::tr("%1, %2").arg(treeName(on.wording.tree, on.wording.species),
                                                      speciesName(on.wording.species)),
                              units.roughLength(height_m(on.wording.tree)),
                              QString::number(of.suggestion.cuts.size()),
                              units.share(of.suggestion.leafShare), whoWords(of.labour.who)});
    }
    return table;
}

void addGarden(SheetBlocks& blocks, const PaperReport& report, const model::Tables& tables,
               const Units& units)
{
    blocks.emplace_back(Title{QString::fromStdString(report.garden->name)});
    blocks.emplace_back(Paragraph{Words::tr("As it stands on %1, for gusts of %2.")
                                      .arg(units.date(report.assessment.question.date),
                                           units.speed(report.assessment.gust_m_s))});
    blocks.emplace_back(Figures{{planFigure(report, nullptr, units, {720.0, 520.0})}});
    blocks.emplace_back(treeTable(report, tables, units));
    addCautions(blocks);
    addLight(blocks, report, tables, units);
}

} // namespace

Sheet reportSheet(const PaperReport& report, const model::Tables& tables, const Units& units)
{
    const auto& trees = report.assessment.trees;
    Sheet sheet;
    QString name;
    if (trees.size() == 1) {
        const auto on = onPaper(report, trees.front(), tables, units);
        name = treeName(on.wording.tree, on.wording.species);
    } else {
        addGarden(sheet.blocks, report, tables, units);
    }
    for (const auto& of : trees) {
        sheet.blocks.emplace_back(NewPage{});
        auto blocks = treeBlocks(onPaper(report, of, tables, units));
        std::move(blocks.begin(), blocks.end(), std::back_inserter(sheet.blocks));
    }
    sheet.title = footWords(report, name, units);
    sheet.foot = sheet.title;
    return sheet;
}

std::vector<Figure> figuresOf(const Sheet& sheet)
{
    std::vector<Figure> all;
    std::set<QString> names;
    for (const auto& block : sheet.blocks)
        if (const auto* row = std::get_if<Figures>(&block))
            for (const auto& figure : row->figures)
                if (names.insert(figure.name).second)
                    all.push_back(figure);
    return all;
}

} // namespace app
