#pragma once

#include "model/advice/light_reach.hpp"
#include "model/advice/limb_states.hpp"
#include "model/advice/options.hpp"
#include "model/garden/cut.hpp"
#include "model/light/light_study.hpp"
#include "model/species/species.hpp"

#include <map>
#include <span>
#include <utility>
#include <vector>

namespace model::advice {

/// All that shades and is shaded in a garden, besides the tree in question.
struct Surroundings {
    const Tables& tables;
    std::span<const Foliation> foliations; ///< one for each tree, in order, as sketched
};

/// Light wanted on the top of one planting.
struct LightWish {
    std::size_t planting{};  ///< index into Garden::plantings
    double wanted{};         ///< effective hours of sun a day, or mol/m2; mean of the months
    std::vector<int> months; ///< 1..12; none: the growing season
    bool moles{};            ///< light for growth, beam and sky, instead of hours of sun
};

/// Light that does where so much is wanted: a ten-thousandth less, four seconds of a day of eleven
/// hours, for light is known no closer (docs/methods/advice.md, A6).
[[nodiscard]] constexpr double enoughLight(double wanted)
{
    constexpr double kKnownTo = 1e-4;
    return (1.0 - kKnownTo) * wanted;
}

/// Plantings that are to have their light back.
class LightGoals {
public:
    LightGoals(const Garden& garden, const Tree& tree, const Surroundings& around,
               std::chrono::year year, const std::vector<LightWish>& wishes);

    /// The same, each asking only for this share of the way from what is to what is wanted.
    void ease(double share);

    /// Plantings that lack light: the goals that help() speaks of.
    [[nodiscard]] std::size_t count() const { return lacking_.size(); }
    /// A6.
    [[nodiscard]] std::vector<double> help(const Taken& taken) const;
    /// The same for sets of cuts that take only allowed options and no more leaf than this, seen
    /// more closely (A6): puts its goals into the reach from the `first` on.
    void lookCloser(const LimbStates& states, const Allowed& allowed, double leafMost,
                    const PerOption& likely, std::size_t first, Reach& reach) const;
    /// Measured on the tree after cuts.
    [[nodiscard]] bool met(const Tree& cut) const;
    /// For each planting that lacks light, the share of what is wanted that it is still short of
    /// on the cut tree; known several times sooner than met(), and never too little by more
    /// than rounding. 0 or less: met.
    /// \param picks  that made the tree what it is, of the options that the states are of
    [[nodiscard]] std::vector<double> missing(const Tree& cut, const LimbStates& states,
                                              const Picks& picks) const;

    /// Of each wish, in its unit.
    [[nodiscard]] std::vector<double> light(const Tree& tree) const;
    [[nodiscard]] const std::vector<double>& now() const { return now_; }
    /// If the tree were away.
    [[nodiscard]] const std::vector<double>& without() const { return without_; }

private:
    [[nodiscard]] Tree standingAlone(const Taken& taken) const;
    /// Light that the whole part takes from each planting when it stands alone; kept once known.
    [[nodiscard]] const std::vector<double>& takenAlone(std::size_t limb, double from_m) const;

    [[nodiscard]] const std::vector<LightReach>& reaches(const LimbForms& forms) const;

    const Tree& tree_;
    Tree bareTrunk_;
    [[nodiscard]] double amount(std::size_t wish, const std::vector<light::SurfaceDay>& days) const;

    std::vector<light::LightStudy> studies_;
    std::vector<char> moles_; ///< per wish
    std::vector<double> wanted_;
    std::vector<double> most_; ///< eased
    std::vector<double> now_;
    std::vector<double> without_;
    std::vector<double> bare_; ///< with the stem's wood alone
    std::vector<std::size_t> lacking_;
    mutable std::map<std::pair<std::size_t, double>, std::vector<double>> alone_;
    mutable LimbForms forms_;                 ///< that reaches_ are of
    mutable std::vector<LightReach> reaches_; ///< by wish
};

} // namespace model::advice
