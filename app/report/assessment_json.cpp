#include "app/report/assessment_json.hpp"

#include "app/report/explanation_json.hpp"
#include "app/report/rule_names.hpp"
#include "app/report/sketch_json.hpp"
#include "app/report/work_json.hpp"
#include "model/advice/prune.hpp"
#include "model/light/sample_day.hpp"

#include <algorithm>

namespace app {
namespace {

using model::TreeAssessment;
using model::load::LimbLoad;
using model::load::TreeLoad;

Json loadJson(const LimbLoad& load)
{
    return {
        {"moment_Nm", number(load.moment_Nm)},
        {"stress_Pa", number(load.stress_Pa)},
        {"utilisation", load.hasStrength ? number(load.utilisation) : Json(nullptr)},
    };
}

/// The same limb's load in a tree that may have lost it.
Json loadInOtherTree(const TreeLoad& load, const model::Tree& tree, const std::string& limb)
{
    const std::size_t index = limbIndex(tree, limb);
    const auto found = std::find_if(load.limbs.begin(), load.limbs.end(),
                                    [&](const LimbLoad& each) { return each.limb == index; });
    return index == model::kNoLimb || found == load.limbs.end() ? Json(nullptr) : loadJson(*found);
}

std::string cutName(model::CutKind kind)
{
    return kind == model::CutKind::thinning ? "thinning" : "removal";
}

/// What each cut by itself takes off one limb.
Json reliefList(const TreeAssessment& of, const model::Tree& tree, std::size_t limb)
{
    Json list = Json::array();
    for (const auto& cut : of.reliefs)
        for (const auto& relief : cut.limbs)
            if (relief.limb == limb)
                list.push_back({
                    {"cut", cutName(cut.kind)},
                    {"limb", tree.limbs.at(cut.cut).id},
                    {"leaf_share", number(cut.leafShare)},
                    {"moment_Nm_per_percent", number(relief.moment_Nm)},
                    {"utilisation_per_percent", number(relief.utilisation)},
                    {"breaking_gust_m_s_per_percent", number(relief.breaking_m_s)},
                });
    return list;
}

/// What each cut by itself takes off the foot of the stem.
Json baseReliefList(const TreeAssessment& of, const model::Tree& tree)
{
    Json list = Json::array();
    for (const auto& cut : of.reliefs)
        list.push_back({
            {"cut", cutName(cut.kind)},
            {"limb", tree.limbs.at(cut.cut).id},
            {"leaf_share", number(cut.leafShare)},
            {"moment_Nm_per_percent", number(cut.base_Nm)},
        });
    return list;
}

Json sagJson(const model::load::LimbSag& sag)
{
    return {
        {"tip_m", number(sag.tip_m)},
        {"most_m", number(sag.most_m)},
        {"most_at_m", number(sag.mostAt_m)},
        {"props_N", number(sag.prop_N)},
    };
}

/// How far the tip of what the cuts leave of a limb rises; null when they leave nothing.
Json springBackJson(const TreeAssessment& of, const std::string& limb)
{
    const std::size_t index = limbIndex(of.springBack.tree, limb);
    return index == model::kNoLimb ? Json(nullptr) : number(-of.springBack.limbs.at(index).tip_m);
}

Json limbJson(const LimbLoad& load, const TreeAssessment& of, const model::Tree& tree,
              const model::Tree& treeAfter)
{
    const model::Limb& limb = tree.limbs.at(load.limb);
    return {
        {"id", limb.id},
        {"name", limb.name},
        {"mass_kg", number(load.mass_kg)},
        {"props_N", number(load.props_N)},
        {"wind_N", number(load.wind_N)},
        {"governing_at_m", number(load.governingAt_m)},
        {"governing_bearing_deg", number(load.governingBearing_deg)},
        {"weight_moment_Nm", number(load.weightMoment_Nm)},
        {"wind_moment_Nm", number(load.windMoment_Nm)},
        {"moment_Nm", number(load.moment_Nm)},
        {"torsion_Nm", number(load.torsion_Nm)},
        {"diameter_m", number(load.diameter_m)},
        {"stress_Pa", number(load.stress_Pa)},
        {"strength_Pa", number(load.strength_Pa)},
        {"has_strength", load.hasStrength},
        {"load_duration_factor", number(load.duration)},
        {"utilisation", load.hasStrength ? number(load.utilisation) : Json(nullptr)},
        {"sag", sagJson(of.heaviest.limbs.at(load.limb))},
        {"spring_back_m", springBackJson(of, limb.id)},
        {"breaking_gust", breakingJson(of.breaking.at(load.limb))},
        {"still_air", loadInOtherTree(of.still, tree, limb.id)},
        {"after_cuts", loadInOtherTree(of.loadAfter, treeAfter, limb.id)},
        {"relieved_by", reliefList(of, tree, load.limb)},
    };
}

Json limbList(const TreeAssessment& of, const model::Tree& tree)
{
    const model::Tree treeAfter =
        model::advice::afterCuts(tree, model::advice::cutsOf(of.suggestion));
    Json list = Json::array();
    for (const LimbLoad& load : of.load.limbs)
        list.push_back(limbJson(load, of, tree, treeAfter));
    return list;
}

Json leafJson(const model::Foliation& foliation)
{
    return {
        {"area_m2", number(foliation.leafArea_m2)},
        {"crown_area_m2", number(foliation.crownArea_m2)},
        {"crown_volume_m3", number(foliation.crownVolume_m3)},
        {"area_index_source", foliation.laiSource},
        {"area_index_evidence", jsonName(foliation.laiEvidence)},
    };
}

Json massJson(const TreeLoad& load)
{
    return {
        {"total_kg", number(load.mass_kg)},  {"wood_kg", number(load.wood_kg)},
        {"leaf_kg", number(load.leaf_kg)},   {"twig_kg", number(load.twig_kg)},
        {"fruit_kg", number(load.fruit_kg)}, {"rain_kg", number(load.rain_kg)},
        {"ice_kg", number(load.ice_kg)},
    };
}

Json treeJson(const TreeAssessment& of, const Wording& wording)
{
    const model::Tree& tree = wording.tree;
    Json headroom = Json::array();
    for (const auto& strip : of.headroom)
        headroom.push_back(toJson(strip));
    return {
        {"id", tree.id},
        {"name", tree.name},
        {"species", tree.species},
        {"height_m", number(height_m(tree))},
        {"stem_diameter_m", number(stemDiameter_m(tree))},
        {"leaf", leafJson(of.foliation)},
        {"mass", massJson(of.load)},
        {"sketch", sketchJson(of.sketch, wording.units)},
        {"gust_at_top_m_s", number(of.load.gustAtTop_m_s)},
        {"base_moment_Nm", number(of.load.baseMoment_Nm)},
        {"base_moment_after_cuts_Nm", number(of.loadAfter.baseMoment_Nm)},
        {"base_relieved_by", baseReliefList(of, tree)},
        {"limbs", limbList(of, tree)},
        {"sag_settled", of.heaviest.settled},
        {"headroom", std::move(headroom)},
        {"suggestion", toJson(of.suggestion, wording)},
        {"labour", toJson(of.labour, wording)},
        {"shared_work", toJson(sharedWork(wording.tree, of.suggestion, of.labour))},
    };
}

Json shadeList(const model::light::PlantingSun& sun)
{
    Json list = Json::array();
    for (const auto& shade : sun.trees)
        list.push_back({{"tree", shade.tree},
                        {"lost_h", number(shade.lost_h)},
                        {"sun_without_h", number(shade.sunWithout_h)}});
    return list;
}

template <class Things>
const auto& withId(const Things& things, const std::string& id)
{
    return *std::find_if(things.begin(), things.end(),
                         [&](const auto& thing) { return thing.id == id; });
}

} // namespace

Json sunJson(const std::vector<model::light::PlantingSun>& sun,
             const std::vector<model::light::PlantingSun>& after, std::chrono::year_month_day date,
             const model::Garden& garden, const model::Tables& tables)
{
    Json list = Json::array();
    for (std::size_t i = 0; i < sun.size(); ++i) {
        const model::Planting& planting = withId(garden.plantings, sun[i].planting);
        const model::Plant* plant = findPlant(tables, planting.plant);
        list.push_back({
            {"id", planting.id},
            {"name", planting.name},
            {"plant", planting.plant},
            {"needs_sun_h", plant ? number(plant->minSun_h) : Json(nullptr)},
            {"thrives_on_sun_h", plant ? number(plant->goodSun_h) : Json(nullptr)},
            {"needs_dli_mol", plant ? number(plant->minDli_mol) : Json(nullptr)},
            {"thrives_on_dli_mol", plant ? number(plant->goodDli_mol) : Json(nullptr)},
            {"in_growing_season", model::light::inGrowingSeason(date.month(), garden.place)},
            {"open_sky_sun_h", number(sun[i].openSky_h)},
            {"sun_h", number(sun[i].sun_h)},
            {"without_trees_sun_h", number(sun[i].withoutTrees_h)},
            {"after_cuts_sun_h", i < after.size() ? number(after[i].sun_h) : Json(nullptr)},
            {"trees", shadeList(sun[i])},
        });
    }
    return list;
}

Json assessmentJson(const model::Assessment& assessment, const model::Garden& garden,
                    const model::Tables& tables, const Units& units)
{
    const auto& forecast = assessment.question.forecast;
    Json trees = Json::array();
    for (const TreeAssessment& of : assessment.trees) {
        const model::Tree& tree = withId(garden.trees, of.tree);
        const model::Species& species = *findSpecies(tables, tree.species);
        trees.push_back(treeJson(of, Wording{units, garden, tree, species}));
    }
    return {
        {"format", "underbough-assessment"},
        {"version", 1},
        {"garden", garden.name},
        {"date", isoDate(assessment.question.date)},
        {"gust_m_s", number(assessment.gust_m_s)},
        {"gust_force", model::load::forceBringing(assessment.gust_m_s)},
        {"gust_source", forecast ? Json(forecast->source) : Json(nullptr)},
        {"air_C", number(assessment.question.air_C)},
        {"trees", std::move(trees)},
        {"plantings",
         sunJson(assessment.sun, assessment.sunAfter, assessment.question.date, garden, tables)},
        {"cautions", cautionsJson()},
    };
}

} // namespace app
