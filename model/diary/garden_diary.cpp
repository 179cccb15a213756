#include "model/diary/garden_diary.hpp"

#include "model/advice/suggestion.hpp"
#include "model/light/daylight.hpp"

#include <stdexcept>

namespace model::diary {
namespace {

StillToDo stillToDo(const advice::Suggestion& suggestion)
{
    return {suggestion.cuts.size(), suggestion.outcome == advice::Outcome::notWithinGuideline};
}

TreeDiary diaryWith(const Garden& garden, const Tables& tables,
                    const std::vector<Foliation>& foliations, std::size_t index,
                    std::chrono::year_month_day date, const std::atomic<bool>* cancel)
{
    const Tree& tree = garden.trees[index];
    const auto* species = findSpecies(tables, tree.species);
    if (!species)
        throw std::domain_error("gardenDiary: no species '" + tree.species + "' in the tables");
    const advice::Surroundings around{tables, foliations};
    const auto suggestion =
        advice::suggest(garden, tree, foliations[index], *species, date,
                        {.spare_m = 0.0, .goals = {}, .around = &around}, cancel);
    return treeDiary(garden, tree, foliations[index], *species, stillToDo(suggestion), date);
}

} // namespace

std::vector<TreeDiary> gardenDiary(const Garden& garden, const Tables& tables,
                                   std::chrono::year_month_day date, const std::string& onlyTree,
                                   const std::atomic<bool>* cancel)
{
    const auto foliations = light::foliations(garden, tables);
    std::vector<TreeDiary> all;
    for (std::size_t i = 0; i < garden.trees.size(); ++i) {
        if (!onlyTree.empty() && garden.trees[i].id != onlyTree)
            continue;
        if (cancel && cancel->load(std::memory_order_relaxed))
            break;
        all.push_back(diaryWith(garden, tables, foliations, i, date, cancel));
    }
    return all;
}

std::vector<Due> dueList(const std::vector<TreeDiary>& diaries)
{
    std::vector<Due> all;
    for (const auto& diary : diaries)
        all.insert(all.end(), diary.due.begin(), diary.due.end());
    sortByUrgency(all);
    return all;
}

} // namespace model::diary
