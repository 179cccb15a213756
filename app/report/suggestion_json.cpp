#include "app/report/suggestion_json.hpp"

#include "app/report/growth_json.hpp"
#include "app/report/rule_names.hpp"
#include "app/report/work_json.hpp"
#include "app/words/cautions.hpp"
#include "app/words/cut_words.hpp"
#include "app/words/finding_words.hpp"
#include "app/words/goal_words.hpp"
#include "model/document/words.hpp"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <span>

namespace app {
namespace {

using model::advice::Finding;
using model::advice::PlannedCut;
using model::advice::Suggestion;
using model::headroom::StripHeadroom;

/// A sentence as JSON readers want it: plain spaces.
std::string plain(QString text)
{
    return text.replace(QChar::Nbsp, QLatin1Char(' ')).toStdString();
}

Json idOrNull(const std::string& id)
{
    return id.empty() ? Json(nullptr) : Json(id);
}

Json place(model::Point2 at_m)
{
    return Json::array({number(at_m.x), number(at_m.y)});
}

Json blameList(std::span<const model::headroom::LowPart> parts)
{
    Json blame = Json::array();
    for (const auto& part : parts)
        blame.push_back({{"limb", part.limb},
                         {"height_m", number(part.height_m)},
                         {"hanging_shoots", part.hangingShoots},
                         {"at_m", place(part.at_m)}});
    return blame;
}

Json saggedJson(const model::headroom::SaggedHeadroom& sagged)
{
    return {
        {"height_m", number(sagged.height_m)},
        {"lowest_limb", idOrNull(sagged.lowestLimb)},
        {"shortfall_m", number(sagged.shortfall_m)},
        {"blame", blameList(sagged.blame)},
    };
}

Json headroomList(std::span<const StripHeadroom> strips)
{
    Json list = Json::array();
    for (const StripHeadroom& strip : strips)
        list.push_back(toJson(strip));
    return list;
}

Json findingList(std::span<const Finding> findings, const Wording& wording)
{
    Json list = Json::array();
    for (const Finding& finding : findings)
        list.push_back(toJson(finding, wording));
    return list;
}

Json toJson(const model::advice::GoalResult& result, const Wording& wording)
{
    const auto lost = result.lost.value_or(model::growth::GrownOn{});
    return {
        {"kind", word(result.goal.kind)},           {"want", word(result.goal.want)},
        {"subject", idOrNull(result.goal.subject)}, {"state", jsonName(result.state)},
        {"before", number(result.before)},          {"after", number(result.after)},
        {"wanted", number(result.wanted)},          {"sentence", plain(sentence(result, wording))},
        {"lost_p10", dateOrNull(lost.early)},       {"lost_p50", dateOrNull(lost.middle)},
        {"lost_p90", dateOrNull(lost.late)},
    };
}

Json toJson(const PlannedCut& planned, const Wording& wording)
{
    return {
        {"kind", word(planned.cut.kind)},
        {"limb", planned.cut.limb},
        {"at_m", number(planned.cut.at_m)},
        {"lateral", idOrNull(planned.lateral)},
        {"lift_to_m", number(planned.cut.height_m)},
        {"thin_share", number(planned.cut.share)},
        {"above_ground_m", number(planned.aboveGround_m)},
        {"diameter_m", number(planned.diameter_m)},
        {"piece_length_m", number(planned.length_m)},
        {"piece_mass_kg", number(planned.mass_kg)},
        {"leaf_share", number(planned.leafShare)},
        {"cleans", planned.cleans},
        {"fault", planned.fault ? Json(word(*planned.fault)) : Json()},
        {"instruction", plain(instruction(planned, wording))},
        {"pieces", piecesJson(planned.pieces)},
        {"in_drop_zone", dropZoneJson(planned.inZone)},
        {"notes", findingList(planned.notes, wording)},
        {"labour", toJson(planned.labour, wording)},
    };
}

} // namespace

Json number(double value)
{
    if (!std::isfinite(value))
        return nullptr;
    std::array<char, 32> digits{};
    std::snprintf(digits.data(), digits.size(), "%.6g", value);
    const double rounded = std::strtod(digits.data(), nullptr);
    return rounded == 0.0 ? 0.0 : rounded; // no "-0.0"
}

Json number(const std::optional<double>& value)
{
    return value ? number(*value) : Json(nullptr);
}

Json toJson(const StripHeadroom& headroom)
{
    return {
        {"strip", headroom.strip},
        {"needed_m", number(headroom.needed_m)},
        {"height_m", number(headroom.height_m)},
        {"lowest_at_m", headroom.lowestAt_m ? place(*headroom.lowestAt_m) : Json(nullptr)},
        {"shortfall_m", number(headroom.shortfall_m)},
        {"overhang_m2", number(headroom.overhang_m2)},
        {"blame", blameList(headroom.blame)},
        {"sagged", headroom.sagged ? saggedJson(*headroom.sagged) : Json(nullptr)},
    };
}

Json toJson(const Finding& finding, const Wording& wording)
{
    const auto facts = ruleFacts(finding.rule);
    return {
        {"rule", jsonName(finding.rule)},
        {"severity", jsonName(finding.severity)},
        {"subject", idOrNull(finding.subject)},
        {"found", number(finding.found)},
        {"limit", number(finding.limit)},
        {"unit", facts.unit},
        {"sentence", plain(sentence(finding, wording))},
        {"source", facts.source},
    };
}

Json toJson(const model::advice::Labour& labour, const Wording& wording)
{
    return {{"who", jsonName(labour.who)}, {"reasons", findingList(labour.findings, wording)}};
}

Json toJson(const Suggestion& suggestion, const Wording& wording)
{
    Json cuts = Json::array();
    for (const PlannedCut& cut : suggestion.cuts)
        cuts.push_back(toJson(cut, wording));
    Json goals = Json::array();
    for (const auto& goal : suggestion.goals)
        goals.push_back(toJson(goal, wording));
    Json regrowth = Json::array();
    for (const auto& strip : suggestion.regrowth)
        regrowth.push_back(toJson(strip));
    return {
        {"outcome", jsonName(suggestion.outcome)},
        {"leaf_share", number(suggestion.leafShare)},
        {"allowance_share", number(suggestion.allowance)},
        {"allowance_reasons", findingList(suggestion.allowanceReasons, wording)},
        {"cuts", std::move(cuts)},
        {"headroom_before", headroomList(suggestion.before)},
        {"headroom_after", headroomList(suggestion.after)},
        {"binding", findingList(suggestion.binding, wording)},
        {"refuted", suggestion.refuted},
        {"leaf_share_without_guideline", number(suggestion.leafShareWithoutGuideline)},
        {"proven", suggestion.proven},
        {"leaf_share_bound", number(suggestion.leafBound)},
        {"search_nodes", suggestion.nodes},
        {"notes", findingList(suggestion.notes, wording)},
        {"labour", toJson(suggestion.labour, wording)},
        {"goals", std::move(goals)},
        {"spare_m", number(suggestion.spare_m)},
        {"shoots", toJson(suggestion.shoots)},
        {"regrowth", std::move(regrowth)},
        {"debris", toJson(suggestion.debris)},
        {"shared_work", toJson(sharedWork(wording.tree, suggestion, suggestion.labour))},
    };
}

Json cautionsJson()
{
    Json list = Json::array();
    for (const QString& caution : cautions())
        list.push_back(plain(caution));
    return list;
}

} // namespace app
