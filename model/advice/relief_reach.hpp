#pragma once

#include "model/advice/limb_states.hpp"
#include "model/load/load_study.hpp"

#include <algorithm>
#include <vector>

namespace model::advice {

/// Where a limb bears too much, and the wind in which it does.
struct HardPressed {
    std::size_t limb{};
    double along_m{}; ///< of the limb, from its union
    Vec3 at_m{};
    Vec3 bends{}; ///< unit, the way the whole moment bends it
    Vec3 blows{}; ///< unit, the way the wind blows
    std::size_t bearing{};
    bool still{}; ///< the weight alone bends it, for as long as it hangs
};

/// True if a limb, all of it, rides on the one with the place, beyond it.
[[nodiscard]] bool isBeyond(const HardPressed& place, const Tree& tree, const LimbOrder& order,
                            std::size_t limb);

/// How much sets of cuts can relieve places of a tree at the most, with the lee that parts leave
/// each other as the cuts may change it (docs/methods/advice.md, A6).
class ReliefReach {
public:
    /// \param study  of the tree, which outlives this, as its foliation does
    /// \param forms  of each limb: the shapes that it may have
    ReliefReach(const load::LoadStudy& study, const Tree& tree, const Foliation& foliation,
                LimbForms forms, std::vector<HardPressed> places);
    [[nodiscard]] const LimbForms& forms() const { return forms_; }

    /// Index of the place on a limb; there has to be one.
    [[nodiscard]] std::size_t placeOn(std::size_t limb) const
    {
        return static_cast<std::size_t>(std::ranges::find(places_, limb, &HardPressed::limb) -
                                        places_.begin());
    }

    /// A place, and the bending that may stay there at most.
    struct Asked {
        std::size_t place{};
        double bears_Nm{};
    };

    struct Most {
        double asked_Nm{}; ///< bending that has to go besides what goes for certain
        PerOption more_Nm; ///< at most what each option takes off
    };
    /// For all sets of cuts that take only allowed options and no more leaf than this.
    [[nodiscard]] std::vector<Most> most(const LimbStates& states, const Allowed& allowed,
                                         double leafMost, const std::vector<Asked>& asked) const;

private:
    /// What one limb in one of its forms adds to the sums that a place bears (load.md, L9, L19).
    struct Part {
        double leaf_m2{};
        double dense_m2{};
        double outline_m2{};
        double leaf_N{};
        double wood_m2{};
        double wood_N{};
        double leafMoment_Nm{}; ///< of drag, nothing taken off for lee; beyond the place alone
        double woodMoment_Nm{};
        double leafWeight_Nm{}; ///< moment of what goes with the leaf
        double restWeight_Nm{};
    };
    /// The sums at a place, as one set of cuts leaves them.
    struct Sums {
        double leaf_m2{};
        double dense_m2{};
        double outline_m2{};
        double leaf_N{};
        double wood_m2{};
        double wood_N{};
        double moment_Nm{};
        double weight_Nm{};
    };
    struct Loss;
    /// What is possible.
    struct View {
        const LimbStates& options;
        std::vector<std::vector<LimbState>> states; ///< per limb
        std::vector<LimbState> least;               ///< per limb, of its states; kGone: none
        double leafLeft{};
        Tree drawn; ///< with only those cuts that are made for certain
    };
    [[nodiscard]] Part partOf(const load::LoadCase& load, std::size_t limb, bool own,
                              const HardPressed& place) const;
    [[nodiscard]] Sums sumsOf(const Part& part, double kept) const;
    [[nodiscard]] View view(const LimbStates& states, const Allowed& allowed,
                            double leafMost) const;
    [[nodiscard]] Sums sumsIn(std::size_t place, std::size_t limb, const LimbState& state) const;
    [[nodiscard]] bool goes(const HardPressed& place, std::size_t limb,
                            const LimbState& state) const;
    [[nodiscard]] std::vector<Loss> losses(std::size_t place, const View& view) const;
    void addLee(const load::LoadCase& load, std::size_t place, const View& view, const Sums& now,
                std::vector<Loss>& losses, Most& most) const;
    [[nodiscard]] Most mostAt(const Asked& asked, const load::LoadCase& load,
                              const View& view) const;

    mutable load::LoadStudy study_; ///< of one cut tree after another
    const Tree& tree_;
    const Foliation& foliation_;
    LimbForms forms_;
    LimbOrder order_;
    std::vector<HardPressed> places_;
    std::vector<std::vector<std::vector<Part>>> parts_; ///< per place, limb, form
};

} // namespace model::advice
