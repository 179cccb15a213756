#include "app/report/plan_json.hpp"

#include "app/report/rule_names.hpp"
#include "app/report/suggestion_json.hpp"
#include "model/document/words.hpp"

namespace app {
namespace {

using model::advice::Lack;

const char* nameOf(Lack lack)
{
    switch (lack) {
    case Lack::headroom:
        return "headroom_m";
    case Lack::relief:
        return "utilisation";
    case Lack::light:
        break;
    }
    return "sun_h";
}

Json numbers(const std::vector<std::optional<double>>& values)
{
    Json list = Json::array();
    for (const auto& value : values)
        list.push_back(number(value));
    return list;
}

} // namespace

Json toJson(const model::advice::TradeOff& tradeOff)
{
    Json offers = Json::array();
    for (const auto& offer : tradeOff.offers) {
        Json cuts = Json::array();
        for (const auto& cut : offer.cuts)
            cuts.push_back({{"kind", word(cut.kind)}, {"limb", cut.limb}});
        offers.push_back({{"leaf_most", number(offer.leafMost)},
                          {"leaf_share", number(offer.leafShare)},
                          {"cuts", std::move(cuts)},
                          {"reached", numbers(offer.reached)},
                          {"proven", offer.proven}});
    }
    return {
        {"of", nameOf(tradeOff.lack)},  {"subjects", tradeOff.subjects},
        {"now", numbers(tradeOff.now)}, {"wanted", numbers(tradeOff.wanted)},
        {"offers", std::move(offers)},
    };
}

Json toJson(const model::advice::Stages& stages, const Wording& wording)
{
    Json visits = Json::array();
    for (const auto& visit : stages.visits)
        visits.push_back(
            {{"date", isoDate(visit.date)}, {"suggestion", toJson(visit.suggestion, wording)}});
    return {{"reached", stages.reached}, {"fewest", stages.fewest}, {"visits", std::move(visits)}};
}

} // namespace app
