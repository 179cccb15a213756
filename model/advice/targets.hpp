#pragma once

#include "model/advice/light_goals.hpp"
#include "model/advice/options.hpp"
#include "model/advice/relief_goals.hpp"
#include "model/headroom/headroom.hpp"

#include <chrono>
#include <optional>
#include <vector>

namespace model::advice {

/// One tree in its garden, as advice is asked for.
struct Patient {
    const Garden& garden;
    const Tree& tree;
    const Foliation& foliation;
    const Species& species;
    std::chrono::year_month_day date{};
    const Surroundings* around{}; ///< null: no word on light
};

/// Share of the way from what is to what is wanted, 0..1, for each strip of ground, for the loads
/// and for the light.
struct Ease {
    std::vector<double> strips;
    double relief{1.0};
    double light{1.0};
};

/// What cuts are to reach: headroom over the strips, and some of the gardener's goals.
class Targets {
public:
    /// \param goals  those to be reached; of the tree's own list, in any order. What they name must
    ///               exist (namesSomething()).
    Targets(const Patient& patient, const std::vector<Goal>& goals);

    /// Asks for less.
    void ease(const Ease& ease);
    /// Asks for all.
    [[nodiscard]] Ease whole() const;

    [[nodiscard]] Wanted wanted() const;
    /// True for goals about a planting's light.
    [[nodiscard]] static bool isLight(const Goal& goal)
    {
        return goal.kind == GoalKind::light || goal.kind == GoalKind::dli;
    }
    /// The goals that are measured on the cut tree: loads and light.
    [[nodiscard]] bool met(const Tree& cut) const;
    /// What the cut tree is short of, for each limb and each planting, as a share of what is
    /// wanted; 0 or less: enough, and it is met().
    /// \param picks  that made it what it is, of the options that the states are of
    [[nodiscard]] std::vector<double> missing(const Tree& cut, const LimbStates& states,
                                              const Picks& picks) const;

    /// Of the goals of wanted(), how far cuts help at most if only some are possible
    /// (Decisions::lookCloser).
    void lookCloser(const LimbStates& states, const Allowed& allowed, double leafMost,
                    const PerOption& likely, Reach& reach) const;

    /// True if nothing has to be done for any of them.
    [[nodiscard]] bool reached() const;
    /// Indices of the strips that lack headroom.
    [[nodiscard]] const std::vector<std::size_t>& lackingStrips() const { return lacking_; }
    [[nodiscard]] bool lacksRelief() const { return reliefCount() > 0; }
    [[nodiscard]] bool lacksLight() const { return light_ && light_->count() > 0; }

private:
    void readLimbs(const std::vector<Goal>& goals);
    void readLight(const std::vector<Goal>& goals);
    void readRelief(const std::vector<Goal>& goals);
    [[nodiscard]] std::size_t reliefCount() const;

    Patient patient_;
    Tree sagging_; ///< as it hangs at its heaviest
    std::vector<headroom::StripHeadroom> now_;
    std::vector<HeadroomGoal> strips_; ///< all that is asked
    std::vector<HeadroomGoal> eased_;
    std::vector<std::size_t> lacking_;
    std::vector<bool> keep_;
    std::vector<bool> lose_;
    std::vector<ReliefGoals> reliefs_; ///< one for each gust
    std::optional<LightGoals> light_;
};

/// False for a goal about a limb or planting that is not there.
[[nodiscard]] bool namesSomething(const Goal& goal, const Garden& garden, const Tree& tree);

/// Sun hours or mol/m2 that a goal of light asks for: its own value, or what the plant needs at
/// least; blank: neither is known.
[[nodiscard]] std::optional<double> wantedLight(const Goal& goal, const Garden& garden,
                                                const Tables& tables);

} // namespace model::advice
