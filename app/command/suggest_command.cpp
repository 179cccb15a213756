#include "app/command/commands.hpp"
#include "app/report/assessment_json.hpp"
#include "app/report/growth_json.hpp"
#include "app/report/plan_json.hpp"
#include "app/report/plan_text.hpp"
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
    model::advice::Stages stages;
    std::vector<model::advice::TradeOff> tradeOffs; ///< empty: not asked for
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
        auto suggestion = model::advice::suggest(garden, tree, foliation, species, date, aim);
        auto holds = model::advice::holds(garden, tree, foliation, species, date, aim, suggestion);
        auto stages =
            model::advice::stages(garden, tree, foliation, species, suggestion, date, aim);
        std::vector<model::advice::TradeOff> tradeOffs;
        if (job.arguments.tradeOff)
            tradeOffs = model::advice::tradeOffs(garden, tree, foliation, species, date, aim);
        all.push_back({tree, species, std::move(suggestion), std::move(holds), std::move(stages),
                       std::move(tradeOffs)});
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
        addStages(page, each.stages, wording);
        addTradeOffs(page, each.tradeOffs, wording);
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
        const Wording wording{units, garden, each.tree, each.species};
        Json tradeOffs = Json::array();
        for (const auto& tradeOff : each.tradeOffs)
            tradeOffs.push_back(toJson(tradeOff));
        trees.push_back({{"id", each.tree.id},
                         {"name", each.tree.name},
                         {"species", each.tree.species},
                         {"suggestion", toJson(each.suggestion, wording)},
                         {"holds", std::move(holds)},
                         {"stages", toJson(each.stages, wording)},
                         {"trade_offs", std::move(tradeOffs)}});
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
