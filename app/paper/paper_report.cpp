#include "app/paper/paper_report.hpp"

#include "model/advice/prune.hpp"

#include <algorithm>

namespace app {
namespace {

model::Garden gardenAfter(model::Garden garden, const model::Assessment& assessment)
{
    for (const auto& of : assessment.trees) {
        const auto tree = std::ranges::find(garden.trees, of.tree, &model::Tree::id);
        *tree = treeAfter(*tree, of);
    }
    return garden;
}

} // namespace

model::Tree treeAfter(const model::Tree& tree, const model::TreeAssessment& of)
{
    return model::advice::afterCuts(tree, model::advice::cutsOf(of.suggestion));
}

const model::Tree& treeWithId(const model::Garden& garden, const std::string& id)
{
    return *std::ranges::find(garden.trees, id, &model::Tree::id);
}

PaperReport paperReport(std::shared_ptr<const model::Garden> garden, const model::Tables& tables,
                        model::Assessment assessment, const std::atomic<bool>* cancel)
{
    PaperReport report;
    const model::LightAsk ask{assessment.question.date.year(), {}, false, {}};
    report.light = lightYear(*garden, tables, ask, cancel);
    const bool cut = std::ranges::any_of(
        assessment.trees, [](const auto& of) { return !of.suggestion.cuts.empty(); });
    report.lightAfter =
        cut ? lightYear(gardenAfter(*garden, assessment), tables, ask, cancel) : report.light;
    report.garden = std::move(garden);
    report.assessment = std::move(assessment);
    return report;
}

PaperReport paperReport(std::shared_ptr<const model::Garden> garden, const model::Tables& tables,
                        const model::Question& question, const std::string& onlyTree,
                        const std::atomic<bool>* cancel)
{
    auto assessment = assess(*garden, tables, question, onlyTree, cancel);
    return paperReport(std::move(garden), tables, std::move(assessment), cancel);
}

} // namespace app
