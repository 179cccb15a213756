#include "app/report/sketch_json.hpp"

#include "app/report/suggestion_json.hpp"
#include "app/words/sketch_words.hpp"

namespace app {
namespace {

using model::Plausible;
using model::SketchCause;

const char* causeName(SketchCause cause)
{
    switch (cause) {
    case SketchCause::girthSmall:
        return "girth_small";
    case SketchCause::girthLarge:
        return "girth_large";
    case SketchCause::limbsThick:
        return "limbs_thick";
    case SketchCause::limbsThin:
        return "limbs_thin";
    case SketchCause::crownWide:
        return "crown_wide";
    case SketchCause::crownNarrow:
        return "crown_narrow";
    case SketchCause::leafDense:
        return "leaf_dense";
    case SketchCause::leafSparse:
        break;
    }
    return "leaf_sparse";
}

Json plausibleJson(const Plausible& figure)
{
    return {
        {"drawn", number(figure.drawn)}, {"expected", number(figure.expected)},
        {"low", number(figure.low)},     {"high", number(figure.high)},
        {"within", figure.within()},     {"source", figure.source},
    };
}

} // namespace

Json sketchJson(const std::optional<model::SketchCheck>& check, const Units& units)
{
    if (!check)
        return nullptr;
    Json doubts = Json::array();
    for (const SketchCause cause : check->causes)
        doubts.push_back({{"cause", causeName(cause)},
                          {"sentence", sketchDoubt(*check, cause, units)
                                           .replace(QChar::Nbsp, QLatin1Char(' '))
                                           .toStdString()}});
    return {
        {"dry_mass_kg", plausibleJson(check->dryMass_kg)},
        {"leaf_area_m2", plausibleJson(check->leafArea_m2)},
        {"dry_leaf_mass_kg", plausibleJson(check->leafMass_kg)},
        {"crown_spread_m", plausibleJson(check->crownSpread_m)},
        {"doubts", std::move(doubts)},
    };
}

} // namespace app
