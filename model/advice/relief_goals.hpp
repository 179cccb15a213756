#pragma once

#include "model/advice/limb_states.hpp"
#include "model/advice/options.hpp"
#include "model/advice/relief_reach.hpp"
#include "model/load/governing.hpp"
#include "model/load/load_study.hpp"

#include <optional>
#include <vector>

namespace model::advice {

/// Limbs that are to bear the design gust, in full leaf and crop.
class ReliefGoals {
public:
    /// \param most  per limb: utilisation at most; blank: not asked. Dead and cracked limbs have no
    ///              strength to count on and are passed over: they are an arborist's work.
    /// \param gust_m_s  3-second gust at 10 m over open ground; blank: the garden's design gust
    ReliefGoals(const Garden& garden, const Tree& tree, const Foliation& foliation,
                const Species& species, std::vector<std::optional<double>> most,
                std::optional<double> gust_m_s = {});

    /// The same, each asking only for this share of the way from what is to what is wanted.
    void ease(double share);

    /// Places that bear too much, each in its worst wind: the goals that help() speaks of.
    [[nodiscard]] std::size_t count() const { return places_.size(); }
    /// A6.
    [[nodiscard]] std::vector<double> help(const Taken& taken) const;
    /// The same for sets of cuts that take only allowed options and no more leaf than this, seen
    /// more closely (A6): puts its goals into the reach, from the `first` on.
    void lookCloser(const LimbStates& states, const Allowed& allowed, double leafMost,
                    std::size_t first, Reach& reach) const;
    /// Measured on the tree after cuts.
    [[nodiscard]] bool met(const Tree& cut) const;
    /// Of each limb of the whole tree: utilisation over what it may be; 0 or less if met(), or
    /// gone.
    [[nodiscard]] std::vector<double> missing(const Tree& cut) const;

    /// Utilisation of each limb as the tree stands; blank: not asked, or no strength.
    [[nodiscard]] const std::vector<std::optional<double>>& now() const { return now_; }

private:
    /// Where a limb bears too much, and how much of that is to go.
    struct Place : HardPressed {
        double share{};     ///< of drags in each other's lee
        double excess_Nm{}; ///< bending to be lost, or a small share of all
        double bears_Nm{};  ///< bending that may stay
    };
    void findPlaces();
    [[nodiscard]] std::optional<Place> placeOn(std::size_t limb) const;
    [[nodiscard]] double asked_Nm(const Place& place, const Taken& taken) const;

    const Tree& tree_;
    const Foliation& foliation_;
    mutable load::LoadStudy study_; ///< of one cut tree after another
    load::LoadCase case_;
    std::vector<load::Governing> governing_;
    std::vector<std::optional<double>> wanted_;
    std::vector<std::optional<double>> most_; ///< eased
    std::vector<std::optional<double>> now_;
    std::vector<Place> places_;
    mutable std::optional<ReliefReach> reach_;
};

} // namespace model::advice
