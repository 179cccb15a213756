#pragma once

#include "model/advice/debris.hpp"
#include "model/advice/drop_zone.hpp"
#include "model/advice/labour.hpp"
#include "model/advice/rule.hpp"
#include "model/advice/targets.hpp"
#include "model/crown/foliage.hpp"
#include "model/garden/garden.hpp"
#include "model/growth/regrowth.hpp"
#include "model/headroom/headroom.hpp"
#include "model/species/species.hpp"

#include <atomic>
#include <chrono>
#include <string>
#include <vector>

namespace model::advice {

/// A cut with everything a person with a saw wants to know of it.
struct PlannedCut {
    Cut cut;
    std::string lateral;    ///< reduction: id of the limb that takes over
    double aboveGround_m{}; ///< height of the cut; lifting, thinning: of the highest shoot cut
    double diameter_m{};    ///< of the wound; 0 for lifting and thinning (shoots only)
    double length_m{};      ///< of all that comes off, if it fell in one piece
    double mass_kg{};       ///< of all that comes off, green, with leaf and crop
    bool cleans{};          ///< takes dead, broken or rubbing wood: comes before all others
    std::optional<DefectKind> fault; ///< which of these, of a cut that cleans
    double leafShare{};              ///< of the tree's leaf as sketched; 0 for a cut that cleans
    std::vector<Piece> pieces;       ///< that it comes down in, in working order
    std::vector<InZone> inZone;      ///< what lies where they come down
    std::vector<Finding> notes;      ///< rules this cut touches without breaking
    Labour labour;
};

enum class Outcome {
    nothingNeeded,      ///< every goal is met as the tree stands
    met,                ///< the cuts meet every goal inside the guideline
    notWithinGuideline, ///< no set of cuts does; these come closest inside it
};

/// What the gardener is after, beyond what the garden itself asks for.
struct Aim {
    double spare_m{};        ///< headroom beyond what each strip needs, left to be grown into; >= 0
    std::vector<Goal> goals; ///< besides the tree's own
    const Surroundings* around{}; ///< null: goals of light are left aside
};

/// What became of one of the gardener's goals.
struct GoalResult {
    Goal goal;
    enum class State {
        met,
        givenUp,   ///< a wish that can't be had with the rest
        missed,    ///< a must that can't be had inside the guideline; as close as can be
        leftAside, ///< names nothing that is there, or asks for light where none is reckoned
    };
    State state{};
    /// relief: utilisation of the limb, or of the worst one; gust: m/s that the first of them is
    /// expected to break in; light: effective sun hours a day; dli: mol/m2 a day; openCentre: limbs
    /// that fill the middle.
    std::optional<double> before;
    std::optional<double> after;
    std::optional<double> wanted;
    std::optional<double> atBest; ///< light, dli: if the tree were away
    std::string worstLimb;        ///< relief, gust: id of the one that `before` speaks of
    /// light, dli, reached: the days on which shoots have taken it back (A16); blank: it isn't
    /// known, or not reached.
    std::optional<growth::GrownOn> lost;
};

/// The least leaf that restores the headroom and reaches the gardener's goals.
struct Suggestion {
    Outcome outcome{};
    std::vector<PlannedCut> cuts; ///< in working order (work_order.hpp)
    double leafShare{};           ///< of the tree's leaf, all cuts together
    double allowance{};           ///< share that may still go, after visits of the last 12 months
    std::vector<Finding> allowanceReasons; ///< what set the allowance
    std::vector<headroom::StripHeadroom> before;
    std::vector<headroom::StripHeadroom> after;
    std::vector<Finding> binding; ///< notWithinGuideline: the rules that stand in the way
    bool refuted{}; ///< notWithinGuideline: no set was overlooked; else the search was cut short
    /// Least share that would meet the goals if no rule were kept; blank: no cuts were found that
    /// do.
    std::optional<double> leafShareWithoutGuideline;
    /// Nothing that meets the goals takes less; blank: not known.
    std::optional<double> leafBoundWithoutGuideline;
    bool proven{}; ///< the search was exhausted: no smaller set exists
    double
        leafBound{}; ///< outcome met: no set that meets all this takes less; `leafShare` if proven
    long nodes{};    ///< search nodes visited
    Labour labour;   ///< for the whole job
    Debris debris;   ///< of all cuts
    std::vector<Finding> notes;    ///< rules that speak of the whole job without forbidding it
    std::vector<GoalResult> goals; ///< the tree's own, then the aim's
    double spare_m{};              ///< Aim::spare_m
    growth::ShootRate shoots;      ///< after these cuts
    std::vector<growth::Regrowth> regrowth; ///< from `date` on, of the tree as the cuts leave it
};

/// The cuts by themselves, in working order.
[[nodiscard]] std::vector<Cut> cutsOf(const Suggestion& suggestion);

/// The tree's own goals, then the aim's: the order of Suggestion::goals.
[[nodiscard]] std::vector<Goal> goalsOf(const Tree& tree, const Aim& aim);

/// What cleans the tree (cleaning.hpp), but for limbs that a goal keeps.
[[nodiscard]] std::vector<Cut> cleaningOf(const Tree& tree, const std::vector<Goal>& goals);

/// Smallest set of cuts that gives every strip its headroom and reaches every goal that must be
/// reached, then as many of the wishes as go with it, in their order, inside the guideline; exact
/// (docs/methods/advice.md, A1, A6). Dead, broken and rubbing wood always goes, first, and is not
/// counted as leaf (A18).
/// Strips that have what they need count as lacking if they don't have the aim's spare as well.
/// \param cancel    looked at between search nodes; set it from another thread to stop early
/// \param progress  told of the search for what must be reached, and for each wish
[[nodiscard]] Suggestion suggest(const Garden& garden, const Tree& tree, const Foliation& foliation,
                                 const Species& species, std::chrono::year_month_day date,
                                 const Aim& aim = {}, const std::atomic<bool>* cancel = nullptr,
                                 const Progress& progress = {});

/// What cuts that somebody else chose come to, described as suggest() describes its own; those that
/// can't be made one after another are left out. `binding` are the rules they break; `outcome` is
/// `met` if they break none and reach everything, which `after` and `goals` tell.
[[nodiscard]] Suggestion judge(const Garden& garden, const Tree& tree, const Foliation& foliation,
                               const Species& species, std::chrono::year_month_day date,
                               const std::vector<Cut>& cuts, const Aim& aim = {});

} // namespace model::advice
