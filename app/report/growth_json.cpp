#include "app/report/growth_json.hpp"

#include "app/report/rule_names.hpp"
#include "app/report/suggestion_json.hpp"

namespace app {
Json toJson(const model::growth::Regrowth& regrowth)
{
    return {
        {"strip", regrowth.strip},
        {"limb", regrowth.limb},
        {"height_m", number(regrowth.height_m)},
        {"spare_m", number(regrowth.spare_m)},
        {"lost_p10", dateOrNull(regrowth.early)},
        {"lost_p50", dateOrNull(regrowth.middle)},
        {"lost_p90", dateOrNull(regrowth.late)},
        {"cuts_a_year", number(regrowth.cutsAYear)},
    };
}

Json toJson(const model::growth::ShootRate& shoots)
{
    return {
        {"mean_m_a_year", number(shoots.mean_m)},
        {"spread_m_a_year", number(shoots.spread_m)},
        {"species_mean_m_a_year", number(shoots.speciesMean_m)},
        {"measurements", shoots.measurements},
    };
}

Json toJson(const model::advice::Hold& hold)
{
    return {
        {"spare_m", number(hold.spare_m)},
        {"outcome", jsonName(hold.outcome)},
        {"leaf_share", number(hold.leafShare)},
        {"cuts", hold.cuts},
        {"first_lost", hold.first ? toJson(*hold.first) : Json(nullptr)},
    };
}

} // namespace app
