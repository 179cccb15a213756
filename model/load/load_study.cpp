#include "model/load/load_study.hpp"

#include "model/load/wind.hpp"

#include <algorithm>
#include <cmath>

namespace model::load {
namespace {

void sumMasses(TreeLoad& result, const std::vector<LimbPieces>& limbs)
{
    result.wood_kg = result.leaf_kg = result.twig_kg = 0.0;
    result.fruit_kg = result.rain_kg = result.ice_kg = 0.0;
    for (const auto& cut : limbs) {
        result.wood_kg += cut.wood_kg;
        result.leaf_kg += cut.leaf_kg;
        result.twig_kg += cut.twig_kg;
        result.fruit_kg += cut.fruit_kg;
        result.rain_kg += cut.rain_kg;
        result.ice_kg += cut.ice_kg;
    }
    result.mass_kg = result.wood_kg + result.leaf_kg + result.twig_kg + result.fruit_kg +
                     result.rain_kg + result.ice_kg;
}

} // namespace

LoadStudy::LoadStudy(const Tree& tree, const Foliation& foliation, const Species& species,
                     const Place& place, Exposure exposure, const Conditions& conditions)
    : case_(species, place, exposure, conditions), gust_m_s_(conditions.gust_m_s),
      exposure_(exposure)
{
    redraw(tree, foliation);
}

const TreeLoad& LoadStudy::redraw(const Tree& tree, const Foliation& foliation)
{
    const auto redrawn = case_.redraw(tree, foliation);
    const auto& load = case_.loadCase();
    const std::size_t count = tree.limbs.size();
    std::vector<LimbLoad> loads(count);
    std::vector<Governing> places(count);
    std::vector<double> tops_m(count);
    for (std::size_t i = 0; i < count; ++i) {
        const auto from = redrawn.from[i];
        tops_m[i] = redrawn.own[i] ? top_m(tree.limbs[i]) : tops_m_[from];
        places[i] = redrawn.beyond[i] ? governingForLong(load, i) : governing_[from];
        loads[i] = redrawn.beyond[i] ? limbLoad(load, i, places[i]) : result_.limbs[from];
        loads[i].limb = i;
    }
    governing_ = std::move(places);
    tops_m_ = std::move(tops_m);
    result_.limbs = std::move(loads);
    sumMasses(result_, load.limbs);
    result_.gustAtTop_m_s = gust_m_s_ * gustShare(exposure_, *std::ranges::max_element(tops_m_));
    result_.baseMoment_Nm = worstBaseMoment_Nm(load);
    return result_;
}

} // namespace model::load
