#include "app/command/commands.hpp"
#include "app/report/assessment_json.hpp"
#include "app/report/growth_json.hpp"
#include "app/report/suggestion_text.hpp"
#include "model/advice/suggestion.hpp"
#include "model/light/daylight.hpp"

#include <algorithm>

namespace app {
namespace {

/// One tree and what is suggested for it.
struct TreeSuggestion {
    const model::Tree& tree;
    const model::Species& species;
    model::advice::Suggestion suggestion;
    std::vector<model::advice::Hold> holds;
};

std::vector<TreeSuggestion> suggestAll(const Job& job, const model::Garden& garden,
                                       std::chrono::year_month_day date, model::advice::Aim aim)
{
    const auto foliations = model::light::foliations(garden, job.tables);
    const model::advice::Surroundings around{job.tables, foliations};
    aim.around = &around;
    const std::string wanted = treeOf(job.arguments, garden);
    std::vector<TreeSuggestion> all;
    for (std::size_t i = 0; i < garden.trees.size(); ++i) {
        const model::Tree& tree = garden.trees[i];
        if (!wanted.empty() && tree.id != wanted)
            continue;
        const model::Species& species = *findSpecies(job.tables, tree.species);
        const auto& foliation = foliations[i];
        all.push_back({tree, species,
                       model::advice::suggest(garden, tree, foliation, species, date, aim),
                       model::advice::holds(garden, tree, foliation, species, date, aim)});
    }
    return all;
}

std::string text(const std::vector<TreeSuggestion>& all, const model::Garden& garden,
                 const Units& units)
{
    TextPage page;
    for (const TreeSuggestion& each : all) {
        const Wording wording{units, garden, each.tree, each.species};
        addTreeTitle(page, wording);
        addSuggestion(page, each.suggestion, wording);
        addHolds(page, each.holds, wording);
        addLabour(page, each.suggestion.labour, wording);
        addSharedWork(page, each.suggestion, each.suggestion.labour, wording);
    }
    addCautions(page);
    return page.text().toStdString();
}

Json json(const std::vector<TreeSuggestion>& all, const model::Garden& garden,
          std::chrono::year_month_day date, const Units& units)
{
    Json trees = Json::array();
    for (const TreeSuggestion& each : all) {
        Json holds = Json::array();
        for (const auto& hold : each.holds)
            holds.push_back(toJson(hold));
        trees.push_back(
            {{"id", each.tree.id},
             {"name", each.tree.name},
             {"species", each.tree.species},
             {"suggestion", toJson(each.suggestion, {units, garden, each.tree, each.species})},
             {"holds", std::move(holds)}});
    }
    return {
        {"format", "underbough-suggestion"},
        {"version", 1},
        {"garden", garden.name},
        {"date", isoDate(date)},
        {"trees", std::move(trees)},
        {"cautions", cautionsJson()},
    };
}

} // namespace

int suggestCommand(const Job& job)
{
    const Units units = unitsOf(job.arguments);
    const auto date = dateOf(job.arguments);
    const model::Garden garden = gardenOf(job);
    const auto all = suggestAll(job, garden, date,
                                {.spare_m = spareOf(job.arguments, units),
                                 .goals = goalsOf(job.arguments, units, garden),
                                 .around = nullptr});
    if (job.arguments.json)
        job.streams.out << jsonText(json(all, garden, date, units));
    else
        job.streams.out << text(all, garden, units);
    return statusOf(job, std::ranges::any_of(all, [](const TreeSuggestion& each) {
                        return each.suggestion.outcome != model::advice::Outcome::nothingNeeded;
                    }));
}

} // namespace app
