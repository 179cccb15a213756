#pragma once

#include "model/geometry/vec3.hpp"
#include "model/light/lane_work.hpp"

#include <bit>
#include <span>
#include <vector>

namespace model::light {

/// A box along the axes of the garden.
struct Box {
    Vec3 low;
    Vec3 high;
};

/// Boxes in eights, eights of eights and so on, so that what a beam's window meets is found by
/// looking at few of them.
class NestedBoxes {
public:
    NestedBoxes() = default;
    /// \param boxes  any number, metres from the packs' origin; neighbours in the list should be
    ///               neighbours in the garden
    explicit NestedBoxes(std::span<const Box> boxes);

    /// Turns the boxes to a direction of light. To be called before forEachMet().
    void aim(const LaneWork& work, const BeamAxes& axes);

    /// Around all boxes, as they were last turned.
    [[nodiscard]] Window whole(const LaneWork& work) const;

    /// Calls `visit(index)` for each box whose window meets this one.
    template <typename Visit>
    void forEachMet(const LaneWork& work, const Window& window, const Visit& visit) const
    {
        if (!levels_.empty())
            look(work, window, visit, levels_.size() - 1, 0);
    }

private:
    struct Level {
        std::vector<EightBoxes> boxes;
        std::vector<EightWindows> windows;
    };
    template <typename Visit>
    void look(const LaneWork& work, const Window& window, const Visit& visit, std::size_t level,
              std::size_t eight) const
    {
        for (unsigned left = work.meeting(levels_[level].windows[eight], window); left != 0;
             left &= left - 1) {
            const std::size_t met =
                eight * kLanes + static_cast<std::size_t>(std::countr_zero(left));
            if (level == 0)
                visit(met);
            else
                look(work, window, visit, level - 1, met);
        }
    }

    std::vector<Level> levels_; ///< the first holds the boxes themselves, the last is one eight
};

} // namespace model::light
