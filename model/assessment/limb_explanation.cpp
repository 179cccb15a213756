#include "model/assessment/limb_explanation.hpp"

#include <algorithm>
#include <stdexcept>

namespace model {

LimbExplanation explainLimb(const Garden& garden, const Tables& tables, const Question& question,
                            const std::string& tree, std::size_t limb)
{
    const auto found = std::ranges::find(garden.trees, tree, &Tree::id);
    if (found == garden.trees.end())
        throw std::out_of_range("explainLimb: no tree '" + tree + "'");
    (void)found->limbs.at(limb);
    const auto* species = findSpecies(tables, found->species);
    if (!species)
        throw std::out_of_range("explainLimb: no species '" + found->species + "' in the tables");
    const auto foliation = foliate(*found, *species);
    auto conditions = conditionsOn(question.date, *found, *species, garden.place,
                                   question.gust_m_s.value_or(garden.designGust_m_s));
    conditions.air_C = question.air_C;
    const auto& place = garden.place;
    const auto exposure = garden.exposure;
    return {tree,
            limb,
            question,
            conditions,
            load::treeLoad(*found, foliation, *species, place, exposure, conditions).limbs.at(limb),
            load::explain(*found, limb, foliation, *species, place, exposure, conditions),
            load::breakingGusts(*found, foliation, *species, place, exposure, conditions).at(limb)};
}

} // namespace model
