#pragma once

#include "model/advice/piece.hpp"
#include "model/garden/garden.hpp"

#include <span>
#include <string>
#include <vector>

namespace model::advice {

/// A piece at the moment before it comes away.
struct Falling {
    double length_m{};  ///< > 0
    double height_m{};  ///< of the cut above the ground, >= 0
    double slope_deg{}; ///< how it rises from the cut, -90..90
};

/// How far from the place under the cut a piece may come to lie, m: it swings about a hinge of bark
/// and wood and lets go anywhere on the way down to hanging straight, or topples where it lands
/// (docs/methods/advice.md, A10; mechanics of a thin rod, no air, no bounce).
[[nodiscard]] double dropRadius_m(const Falling& piece);

enum class Under { structure, line, planting, strip };

/// Something that lies where a piece may come down.
struct InZone {
    Under kind{};
    std::string id;
    double gap_m{};    ///< on plan from the place under the cut; 0: right under it
    double radius_m{}; ///< of the zone
};

/// Everything that lies in the drop zone of any of the pieces, each at its nearest. Lawns and ponds
/// are left out, and wires that hang higher than the cut.
[[nodiscard]] std::vector<InZone> inDropZone(const Garden& garden, const Tree& tree,
                                             std::span<const Piece> pieces);

} // namespace model::advice
