#include "model/assessment/limb_explanation.hpp"

#include "model/assessment/find_tree.hpp"

namespace model {

LimbExplanation explainLimb(const Garden& garden, const Tables& tables, const Question& question,
                            const std::string& tree, std::size_t limb)
{
    const auto& [found, species] = findTree(garden, tables, tree);
    (void)found.limbs.at(limb);
    const auto foliation = foliate(found, species);
    auto conditions = conditionsOn(question.date, found, species, garden.place,
                                   question.gust_m_s.value_or(garden.designGust_m_s));
    conditions.air_C = question.air_C;
    const auto& place = garden.place;
    const auto exposure = garden.exposure;
    return {tree,
            limb,
            question,
            conditions,
            load::treeLoad(found, foliation, species, place, exposure, conditions).limbs.at(limb),
            load::explain(found, limb, foliation, species, place, exposure, conditions),
            load::breakingGusts(found, foliation, species, place, exposure, conditions).at(limb)};
}

} // namespace model
