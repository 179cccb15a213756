#pragma once

#include "model/crown/foliage.hpp"
#include "model/crown/silhouette.hpp"
#include "model/geometry/polygon.hpp"

#include <string>
#include <vector>

namespace model {

/// The leaf of a tree that is drawn on again and again: what the moved limbs leave alone is kept.
/// The first step with other limbs costs about as much as foliate(), those after it little.
class FoliageStudy {
public:
    explicit FoliageStudy(const Species& species);

    /// foliate() of the drawing, without what only light asks for: the crown's volume and the leaf
    /// in each m3 of it stay 0. Areas agree with foliate() as closely as unions of polygons by
    /// Boost.Geometry do with each other, 1e-6.
    [[nodiscard]] Foliation redraw(const Tree& tree);

private:
    /// One limb as it was drawn last.
    struct Known {
        Limb limb;
        std::vector<LeafyBody> bodies; ///< their limb index is not kept up
        bool moves{};                  ///< not in `still_`
    };
    [[nodiscard]] Redrawn learn(const Tree& tree, const LimbOrder& order);
    [[nodiscard]] std::vector<LeafyBody> bodiesThat(bool move) const;
    void keepStill();
    [[nodiscard]] double crownArea_m2() const;
    [[nodiscard]] double outlineArea_m2(const LimbOrder& order) const;

    Species species_;
    std::vector<double> bearings_deg_;
    std::vector<Known> known_;
    LimbOrder order_;
    Silhouettes silhouettes_;
    Region still_; ///< on plan, of the limbs that don't move
    bool stillIsOld_{true};
};

} // namespace model
