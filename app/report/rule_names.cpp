#include "app/report/rule_names.hpp"

namespace app {

const char* jsonName(model::advice::Rule rule)
{
    using model::advice::Rule;
    switch (rule) {
    case Rule::seasonShare:
        return "season_share";
    case Rule::stressedTree:
        return "stressed_tree";
    case Rule::ordinaryShare:
        return "ordinary_share";
    case Rule::limbShare:
        return "limb_share";
    case Rule::lowerTwoThirds:
        return "lower_two_thirds";
    case Rule::liveCrownRatio:
        return "live_crown_ratio";
    case Rule::raiseStep:
        return "raise_step";
    case Rule::balance:
        return "balance";
    case Rule::topping:
        return "topping";
    case Rule::lateralThird:
        return "lateral_third";
    case Rule::branchToStem:
        return "branch_to_stem";
    case Rule::woundSum:
        return "wound_sum";
    case Rule::lionTail:
        return "lion_tail";
    case Rule::renewFruitWood:
        return "renew_fruit_wood";
    case Rule::rubbingLimbs:
        return "rubbing_limbs";
    case Rule::openMiddle:
        return "open_middle";
    case Rule::renewalShare:
        return "renewal_share";
    case Rule::bareConifer:
        return "bare_conifer";
    case Rule::brokenWood:
        return "broken_wood";
    case Rule::nearChimney:
        return "near_chimney";
    case Rule::oakWilt:
        return "oak_wilt";
    case Rule::cutOver50mm:
        return "cut_over_50_mm";
    case Rule::cutOver100mm:
        return "cut_over_100_mm";
    case Rule::overHead:
        return "over_head";
    case Rule::beyondPoleSaw:
        return "beyond_pole_saw";
    case Rule::heavyPiece:
        return "heavy_piece";
    case Rule::veryHeavyPiece:
        return "very_heavy_piece";
    case Rule::nearLine:
        return "near_line";
    case Rule::targetBelow:
        return "target_below";
    case Rule::plantingBelow:
        return "planting_below";
    case Rule::deadWood:
        return "dead_wood";
    case Rule::crackedOrHollow:
        return "cracked_or_hollow";
    case Rule::warningSign:
        return "warning_sign";
    case Rule::leaningStem:
        return "leaning_stem";
    case Rule::limbOverloaded:
        return "limb_overloaded";
    case Rule::peopleBelow:
        return "people_below";
    case Rule::poorHealer:
        return "poor_healer";
    case Rule::protectedTree:
        return "protected_tree";
    case Rule::monthToAvoid:
        return "month_to_avoid";
    case Rule::dryWeather:
        return "dry_weather";
    case Rule::nestingSeason:
        return "nesting_season";
    }
    return "";
}

const char* jsonName(model::advice::Severity severity)
{
    switch (severity) {
    case model::advice::Severity::inform:
        return "inform";
    case model::advice::Severity::warn:
        return "warn";
    case model::advice::Severity::block:
        return "block";
    }
    return "";
}

const char* jsonName(model::advice::Who who)
{
    switch (who) {
    case model::advice::Who::oneself:
        return "oneself";
    case model::advice::Who::withHelper:
        return "with_helper";
    case model::advice::Who::arborist:
        return "arborist";
    }
    return "";
}

const char* jsonName(model::advice::Tool tool)
{
    using model::advice::Tool;
    switch (tool) {
    case Tool::secateurs:
        return "secateurs";
    case Tool::loppers:
        return "loppers";
    case Tool::handSaw:
        return "hand_saw";
    case Tool::polePruner:
        return "pole_pruner";
    case Tool::poleSaw:
        return "pole_saw";
    case Tool::outOfReach:
        return "out_of_reach";
    }
    return "";
}

const char* jsonName(model::advice::Under kind)
{
    switch (kind) {
    case model::advice::Under::structure:
        return "structure";
    case model::advice::Under::line:
        return "line";
    case model::advice::Under::planting:
        return "planting";
    case model::advice::Under::strip:
        return "strip";
    }
    return "";
}

const char* jsonName(model::advice::Outcome outcome)
{
    switch (outcome) {
    case model::advice::Outcome::nothingNeeded:
        return "nothing_needed";
    case model::advice::Outcome::met:
        return "met";
    case model::advice::Outcome::notWithinGuideline:
        return "not_within_guideline";
    }
    return "";
}

const char* jsonName(model::advice::GoalResult::State state)
{
    using State = model::advice::GoalResult::State;
    switch (state) {
    case State::met:
        return "met";
    case State::givenUp:
        return "given_up";
    case State::missed:
        return "missed";
    case State::leftAside:
        return "left_aside";
    }
    return "";
}

const char* jsonName(model::Evidence evidence)
{
    switch (evidence) {
    case model::Evidence::found:
        return "found";
    case model::Evidence::derived:
        return "derived";
    case model::Evidence::proxy:
        return "proxy";
    case model::Evidence::memory:
        return "memory";
    case model::Evidence::assumed:
        return "assumed";
    }
    return "";
}

} // namespace app
