#pragma once

#include <optional>
#include <string>

namespace model::advice {

/// The rules of the guideline, of safe work and of the calendar that a plan is held against.
/// Thresholds, units and sources: ruleFacts(). Method: docs/methods/advice.md.
enum class Rule {
    // How much, and what is left
    seasonShare,    ///< share of the live crown taken in twelve months
    stressedTree,   ///< old or stressed: a tenth instead of a quarter
    ordinaryShare,  ///< share beyond which even a healthy tree notices
    limbShare,      ///< share of one limb's leaf taken by shortening it
    lowerTwoThirds, ///< share of the leaf left in the lower two thirds of the crown
    liveCrownRatio, ///< live crown over tree height after a raise
    balance,        ///< the crown's weight and its hold on the wind moved to one side
    raiseStep,      ///< the crown's base raised at once, as a share of the live crown's height
    topping,        ///< the stem cut back to no lateral
    lateralThird,   ///< a reduction needs a lateral of a third of the cut's diameter
    branchToStem,   ///< a limb over half as thick as its parent is shortened, not removed
    woundSum,       ///< summed cut sections over the stem's section
    lionTail,       ///< share of a limb's leaf left on its inner two thirds
    renewFruitWood, ///< last year's shoots that a fruit tree is renewed by, besides the cuts
    rubbingLimbs,   ///< two limbs that touch away from their fork
    openMiddle,     ///< fruit trees: an upright limb that fills the middle of the crown
    renewalShare,   ///< share of last year's shoots that a renewal takes
    bareConifer,    ///< a conifer cut back to wood without green
    // The size of a wound
    cutOver50mm,
    cutOver100mm,
    // Who may do it
    overHead,      ///< a cut above reach from the ground with a hand saw
    beyondPoleSaw, ///< a cut above the reach of a pole saw
    heavyPiece,    ///< a piece heavier than one person holds
    veryHeavyPiece,
    nearLine,        ///< a cut, piece or tool near an overhead wire
    targetBelow,     ///< something worth protecting within reach of a falling piece
    deadWood,        ///< dead limb in a tall tree
    brokenWood,      ///< a broken limb too thick or too high to be held while it is cut
    crackedOrHollow, ///< crack or cavity drawn on a limb
    warningSign,     ///< a sign ticked for the whole tree
    leaningStem,
    limbOverloaded, ///< expected to fail below the design gust
    plantingBelow,  ///< a bed, hedge or shrub where a piece comes down
    peopleBelow,    ///< a path, drive or seat within the fall zone: someone keeps people out
    poorHealer,     ///< a wound over 50 mm on a species that walls off decay poorly
    protectedTree,
    nearChimney, ///< leaf or wood near the mouth of a chimney
    // When
    monthToAvoid,
    dryWeather, ///< stone fruit: cut only when dry weather is ahead
    nestingSeason,
    oakWilt, ///< an oak in wilt country while the disease spreads
};

enum class Severity { inform, warn, block };

/// A rule that speaks about something: `found` against `limit`, in the rule's unit
/// (RuleFacts::unit).
struct Finding {
    Rule rule{};
    Severity severity{};
    std::string subject; ///< id of the limb, line, structure or strip; empty: the tree
    std::optional<double> found;
    std::optional<double> limit;
};

/// What a rule measures and where its threshold was published.
struct RuleFacts {
    const char* unit;   ///< SI: "1" a share, "m", "kg", "deg", "month", "" none
    const char* source; ///< the publication, or 'common practice, no source'
};
[[nodiscard]] RuleFacts ruleFacts(Rule rule);

} // namespace model::advice
