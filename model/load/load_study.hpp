#pragma once

#include "model/load/case_study.hpp"
#include "model/load/governing.hpp"

namespace model::load {

/// What one limb carries at the place that governs it.
[[nodiscard]] LimbLoad limbLoad(const LoadCase& load, std::size_t limb, const Governing& worst);

/// The greatest bending moment at the foot of the stem over all directions.
[[nodiscard]] double worstBaseMoment_Nm(const LoadCase& load);

/// Loads on one tree as it is redrawn or cut, again and again: a limb that stays, and bears what
/// it bore, keeps its answer. Whatever came before, the loads are those of treeLoad() for the tree
/// as it now is, to the last digit.
///
/// What a moved limb changes: its own pieces and drag and those of the limbs that ride on it; the
/// outlines, sums and governing places of these and of the limbs they grow from, down to the foot.
/// A foliation with other leaf for each volume changes every weight of leaf, but no outline.
class LoadStudy {
public:
    /// \throws std::domain_error  as treeLoad()
    LoadStudy(const Tree& tree, const Foliation& foliation, const Species& species,
              const Place& place, Exposure exposure, const Conditions& conditions);

    /// Limbs are known again by their id.
    /// \throws std::domain_error  as treeLoad()
    const TreeLoad& redraw(const Tree& tree, const Foliation& foliation);

    [[nodiscard]] const TreeLoad& load() const { return result_; }
    [[nodiscard]] const LoadCase& loadCase() const { return case_.loadCase(); }
    /// Where each limb is asked for most, in Tree::limbs order.
    [[nodiscard]] const std::vector<Governing>& governing() const { return governing_; }

private:
    CaseStudy case_;
    double gust_m_s_;
    Exposure exposure_;
    std::vector<double> tops_m_;
    std::vector<Governing> governing_;
    TreeLoad result_;
};

} // namespace model::load
