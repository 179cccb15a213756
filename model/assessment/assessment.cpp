#include "model/assessment/assessment.hpp"

#include "model/advice/prune.hpp"
#include "model/advice/who.hpp"
#include "model/assessment/stopped.hpp"

#include <stdexcept>

namespace model {
namespace {

const Species& speciesOf(const Tree& tree, const Tables& tables)
{
    const auto* species = findSpecies(tables, tree.species);
    if (!species)
        throw std::domain_error("assess: no species '" + tree.species + "' in the tables");
    return *species;
}

load::Conditions conditionsOn(const Question& question, const Tree& tree, const Species& species,
                              const Place& place, double gust_m_s)
{
    auto conditions = model::conditionsOn(question.date, tree, species, place, gust_m_s);
    conditions.inRain = question.inRain;
    conditions.glaze_m = question.glaze_m;
    conditions.air_C = question.air_C;
    return conditions;
}

TreeAssessment assessTree(const Garden& garden, const Tree& tree, const Foliation& foliation,
                          const Species& species, const Question& question, double gust_m_s,
                          const advice::Surroundings& around, const std::atomic<bool>* cancel)
{
    const auto windy = conditionsOn(question, tree, species, garden.place, gust_m_s);
    const auto still = conditionsOn(question, tree, species, garden.place, 0.0);
    TreeAssessment result;
    result.tree = tree.id;
    result.foliation = foliation;
    result.sketch = checkSketch(tree, foliation, species);
    const auto loadOf = [&](const Tree& standing, const load::Conditions& conditions) {
        return load::treeLoad(standing, result.foliation, species, garden.place, garden.exposure,
                              conditions);
    };
    result.load = loadOf(tree, windy);
    result.still = loadOf(tree, still);
    result.breaking =
        load::breakingGusts(tree, foliation, species, garden.place, garden.exposure, windy);
    result.reliefs =
        load::allReliefs(tree, foliation, species, garden.place, garden.exposure, windy);
    result.heaviest = load::sagUnder(tree, foliation, species, load::kHeaviest);
    result.headroom = headroom::treeHeadroom(garden, tree, result.heaviest.tree);
    result.suggestion = advice::suggest(garden, tree, result.foliation, species, question.date,
                                        {.spare_m = 0.0, .goals = {}, .around = &around}, cancel);
    const Tree standing = advice::afterCuts(tree, advice::cutsOf(result.suggestion));
    result.loadAfter = loadOf(standing, windy);
    result.springBack = load::springBack(tree, standing, foliation, species);
    result.labour =
        advice::together(result.suggestion.labour, advice::whoForLoads(tree, result.load));
    return result;
}

} // namespace

load::Conditions conditionsOn(std::chrono::year_month_day date, const Tree& tree,
                              const Species& species, const Place& place, double gust_m_s)
{
    const double leafShare = light::greenShare(species, place, date, tree.leafDates);
    return {.gust_m_s = gust_m_s, .inLeaf = leafShare >= 0.5, .inFruit = leafShare > 0.0};
}

Assessment assess(const Garden& garden, const Tables& tables, const Question& question,
                  const std::string& onlyTree, const std::atomic<bool>* cancel)
{
    Assessment assessment;
    assessment.question = question;
    assessment.gust_m_s = question.gust_m_s.value_or(garden.designGust_m_s);
    const auto foliations = light::foliations(garden, tables);
    const advice::Surroundings around{tables, foliations};
    Garden after = garden;
    for (std::size_t i = 0; i < garden.trees.size() && !stopped(cancel); ++i) {
        const auto& tree = garden.trees[i];
        if (!onlyTree.empty() && tree.id != onlyTree)
            continue;
        assessment.trees.push_back(assessTree(garden, tree, foliations[i], speciesOf(tree, tables),
                                              question, assessment.gust_m_s, around, cancel));
        after.trees[i] =
            advice::afterCuts(tree, advice::cutsOf(assessment.trees.back().suggestion));
    }
    // What stays keeps the leaf it was drawn with: cutting one limb doesn't thin another.
    if (!stopped(cancel))
        assessment.sun = light::plantingSun(garden, foliations, tables, question.date);
    if (!stopped(cancel))
        assessment.sunAfter = light::plantingSun(after, foliations, tables, question.date);
    return assessment;
}

} // namespace model
