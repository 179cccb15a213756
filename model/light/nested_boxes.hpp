#pragma once

#include "model/geometry/vec3.hpp"
#include "model/light/lane_work.hpp"

#include <cstdint>
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

    /// The boxes whose windows meet this one, by index. Good until asked again.
    [[nodiscard]] std::span<const std::uint32_t> met(const LaneWork& work, const Window& window);

private:
    struct Level {
        std::vector<EightBoxes> boxes;
        std::vector<EightWindows> windows;
    };
    std::vector<Level> levels_; ///< the first holds the boxes themselves, the last is one eight
    std::vector<std::uint32_t> met_;   ///< of the level at hand, with room for eight more
    std::vector<std::uint32_t> above_; ///< of the level above
};

} // namespace model::light
