#pragma once

#include "model/load/load_case.hpp"

#include <vector>

namespace model::load {

/// The load case of a tree that is redrawn or cut again and again: what the change leaves alone is
/// kept. Whatever came before, it is loadCase() of the tree as it now is, to the last digit.
class CaseStudy {
public:
    /// \throws std::domain_error  on a gust that is negative or not finite
    CaseStudy(const Species& species, const Place& place, Exposure exposure,
              const Conditions& conditions);

    /// Limbs are known again by their id.
    /// \returns  what changed: where `beyond` holds, what the limb bears, or its pieces
    /// \throws std::domain_error  on a tree that validate() refuses
    Redrawn redraw(const Tree& tree, const Foliation& foliation);

    [[nodiscard]] const LoadCase& loadCase() const { return case_; }
    [[nodiscard]] LoadCase take() && { return std::move(case_); }

private:
    /// All that the pieces of a limb depend on, besides leaf for each volume.
    struct Key {
        Limb limb;
        std::vector<double> joints_m;
        double aspectRatio{};
        bool onDeadWood{};
        std::vector<LeafyBody> bodies{}; ///< by the limb; their index may be an older one
    };
    [[nodiscard]] bool hangsOtherwise(const Foliation& foliation) const;
    [[nodiscard]] std::vector<std::size_t> known(const Tree& tree) const;
    void carryOver(const std::vector<std::size_t>& from);
    [[nodiscard]] std::vector<bool> learn(const Tree& tree, const LimbOrder& order,
                                          const std::vector<std::size_t>& from);
    [[nodiscard]] std::vector<bool> beyond(const LimbOrder& order, const Redrawn& redrawn) const;
    void cut(const Cutting& cutting, const std::vector<bool>& own, bool all);
    void prop(const Tree& tree, std::vector<bool>& beyond);
    void sumUp(const std::vector<bool>& limbs, const std::vector<bool>& wholly);

    Species species_;
    Conditions conditions_;
    Wind wind_;
    Foliation foliation_;
    std::vector<Key> keys_;
    Silhouettes silhouettes_;
    LoadCase case_;
};

} // namespace model::load
