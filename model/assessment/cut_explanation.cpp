#include "model/assessment/cut_explanation.hpp"

#include "model/advice/allowance.hpp"
#include "model/advice/prune.hpp"
#include "model/assessment/find_tree.hpp"
#include "model/crown/mass.hpp"

namespace model {
namespace {

/// Of a limb of another state of the same tree; 0 where it is gone.
double leafOf_m2(const Tree& tree, const std::vector<double>& areas_m2, const std::string& limb)
{
    const auto index = limbIndex(tree, limb);
    return index == kNoLimb ? 0.0 : areas_m2[index];
}

LimbMass together(const std::vector<LimbMass>& masses)
{
    LimbMass sum;
    for (const auto& mass : masses) {
        sum.wood_kg += mass.wood_kg;
        sum.leaf_kg += mass.leaf_kg;
        sum.twig_kg += mass.twig_kg;
        sum.fruit_kg += mass.fruit_kg;
    }
    return sum;
}

} // namespace

CutExplanation explainCuts(const Garden& garden, const Tables& tables, const std::string& tree,
                           const std::vector<Cut>& made, const std::vector<Cut>& cuts,
                           std::chrono::year_month_day date)
{
    constexpr double kNone_m2 = 1e-9; // rounding
    const auto& [sketch, species] = findTree(garden, tables, tree);
    const Tree before = advice::afterCuts(sketch, made);
    const Tree after = advice::afterCuts(before, cuts);
    CutExplanation result;
    result.tree = tree;
    result.foliation = foliate(sketch, species);
    const auto leafBefore = leafAreaByLimb_m2(before, result.foliation);
    const auto leafAfter = leafAreaByLimb_m2(after, result.foliation);
    for (std::size_t i = 0; i < before.limbs.size(); ++i) {
        const auto& id = before.limbs[i].id;
        const double left_m2 = leafOf_m2(after, leafAfter, id);
        if (leafBefore[i] - left_m2 <= kNone_m2)
            continue;
        result.taken.push_back({id, leafBefore[i], left_m2});
        result.leaf_m2 += leafBefore[i] - left_m2;
    }
    if (result.foliation.leafArea_m2 > 0.0)
        result.leafShare = result.leaf_m2 / result.foliation.leafArea_m2;
    const auto standing = together(limbMasses(before, result.foliation, species));
    const auto left = together(limbMasses(after, result.foliation, species));
    result.wood_kg = standing.wood_kg - left.wood_kg;
    result.leafy_kg = standing.leaf_kg + standing.twig_kg - left.leaf_kg - left.twig_kg;
    result.fruit_kg = standing.fruit_kg - left.fruit_kg;
    auto allowed = advice::allowance(sketch, species, date);
    result.allowance = allowed.share;
    result.allowanceReasons = std::move(allowed.reasons);
    return result;
}

} // namespace model
