#include "app/report/explanation_json.hpp"

#include "app/report/assessment_json.hpp"
#include "app/words/step_words.hpp"
#include "model/load/forecast.hpp"

namespace app {
namespace {

using model::load::Quantity;
using model::load::Step;
using model::load::Unknown;

struct QuantityName {
    Quantity quantity;
    const char* name;
    const char* unit; ///< SI; "1" is a plain number
};

constexpr QuantityName kNames[] = {
    {Quantity::gustHere, "gust_here", "m/s"},
    {Quantity::airDensity, "air_density", "kg/m3"},
    {Quantity::dragCoefficient, "drag_coefficient", "1"},
    {Quantity::outline, "outline", "m2"},
    {Quantity::windForce, "wind_force", "N"},
    {Quantity::windArm, "wind_arm", "m"},
    {Quantity::windMoment, "wind_moment", "N m"},
    {Quantity::woodMass, "wood_mass", "kg"},
    {Quantity::leafyMass, "leafy_mass", "kg"},
    {Quantity::fruitMass, "fruit_mass", "kg"},
    {Quantity::weatherMass, "weather_mass", "kg"},
    {Quantity::propForce, "prop_force", "N"},
    {Quantity::weightArm, "weight_arm", "m"},
    {Quantity::weightMoment, "weight_moment", "N m"},
    {Quantity::bendingMoment, "bending_moment", "N m"},
    {Quantity::torsion, "torsion", "N m"},
    {Quantity::axialForce, "axial_force", "N"},
    {Quantity::diameter, "diameter", "m"},
    {Quantity::sectionModulus, "section_modulus", "m3"},
    {Quantity::hollowFactor, "hollow_factor", "1"},
    {Quantity::bendingStress, "bending_stress", "Pa"},
    {Quantity::torsionStress, "torsion_stress", "Pa"},
    {Quantity::axialStress, "axial_stress", "Pa"},
    {Quantity::principalStress, "principal_stress", "Pa"},
    {Quantity::clearWoodStrength, "clear_wood_strength", "Pa"},
    {Quantity::limbFactor, "limb_factor", "1"},
    {Quantity::unionFactor, "union_factor", "1"},
    {Quantity::durationFactor, "duration_factor", "1"},
    {Quantity::aspectRatio, "aspect_ratio", "1"},
    {Quantity::strength, "strength", "Pa"},
    {Quantity::utilisation, "utilisation", "1"},
};

const QuantityName& nameOf(Quantity quantity)
{
    return *std::ranges::find(kNames, quantity, &QuantityName::quantity);
}

Json orNull(const std::string& text)
{
    return text.empty() ? Json(nullptr) : Json(text);
}

Json stepJson(const Step& step, const Units& units, const model::Sources& sources)
{
    const auto& named = nameOf(step.quantity);
    const auto source = sources.find(step.source);
    return {
        {"quantity", named.name},
        {"value", number(step.value)},
        {"unit", named.unit},
        {"words", stepName(step.quantity).toStdString()},
        {"reads", stepValue(step, units).replace(QChar::Nbsp, QLatin1Char(' ')).toStdString()},
        {"formula", orNull(step.formula)},
        {"source", orNull(source == sources.end() ? step.source : source->second)},
    };
}

} // namespace

Json breakingJson(const model::load::BreakingGust& gust)
{
    if (!gust.hasStrength)
        return nullptr;
    const auto share = [&gust](Unknown what) {
        return number(gust.share[static_cast<std::size_t>(what)]);
    };
    const bool girth = worthMeasuring(gust) == Unknown::diameter;
    return {
        {"p10_m_s", number(gust.p10_m_s)},
        {"p50_m_s", number(gust.p50_m_s)},
        {"p90_m_s", number(gust.p90_m_s)},
        {"p50_force", model::load::forceBringing(gust.p50_m_s)},
        {"stood_share", number(gust.stood)},
        {"range_shares",
         {{"strength", share(Unknown::strength)},
          {"diameter", share(Unknown::diameter)},
          {"leaf", share(Unknown::leaf)},
          {"drag", share(Unknown::drag)},
          {"wind", share(Unknown::wind)}}},
        {"worth_measuring", girth ? "diameter" : "leaf"},
    };
}

Json explanationJson(const model::LimbExplanation& of, const Wording& wording,
                     const model::Sources& sources)
{
    const auto& limb = wording.tree.limbs.at(of.limb);
    Json steps = Json::array();
    for (const Step& step : of.steps)
        steps.push_back(stepJson(step, wording.units, sources));
    return {
        {"format", "underbough-explanation"},
        {"version", 1},
        {"garden", wording.garden.name},
        {"date", isoDate(of.question.date)},
        {"gust_m_s", number(of.conditions.gust_m_s)},
        {"air_C", number(of.conditions.air_C)},
        {"tree", of.tree},
        {"limb", limb.id},
        {"governing_at_m", number(of.load.governingAt_m)},
        {"governing_bearing_deg", number(of.load.governingBearing_deg)},
        {"has_strength", of.load.hasStrength},
        {"steps", std::move(steps)},
        {"breaking_gust", breakingJson(of.breaking)},
        {"cautions", cautionsJson()},
    };
}

} // namespace app
