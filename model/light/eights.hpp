#pragma once

#include "model/light/lanes.hpp"

#include <array>
#include <cstdint>

namespace model::light {

/// A rectangle across the beam.
struct Window {
    float asideLow{};
    float asideHigh{};
    float upLow{};
    float upHigh{};
};

/// The same of eight things, one in each lane.
struct EightWindows {
    Lanes asideLow{};
    Lanes asideHigh{};
    Lanes upLow{};
    Lanes upHigh{};
};

/// Eight boxes along the axes of the garden, metres from the packs' origin.
struct EightBoxes {
    Lanes x{}, y{}, z{};             ///< of the middle
    Lanes halfX{}, halfY{}, halfZ{}; ///< less than 0: no box, met by nothing
};

/// Eight capsules, metres from the packs' origin. A radius of kNothing: no capsule.
struct EightCapsules {
    Lanes ax{}, ay{}, az{};
    Lanes bx{}, by{}, bz{};
    Lanes radius{};
    Lanes perLength{}; ///< 1 / length of the axis; 0: a ball
};
inline constexpr float kNothing = -1e30F;

/// Limbs by number, those that grow from one limb in one stretch (limb_numbers.hpp).
using LimbLanes = std::array<std::int32_t, kLanes>;

/// Eight capsules as the beam sees them.
struct AimedCapsules {
    EightWindows windows;
    Lanes aside{}, up{}, depth{};  ///< of the first end
    Lanes rise{};                  ///< depth of the other end over that of the first
    Lanes alongAside{}, alongUp{}; ///< unit, along the axis as the beam sees it
    Lanes run{};                   ///< length of the axis as the beam sees it
    Lanes perRun{};                ///< 1 / run; 0 where the axis lies along the ray
    Lanes bend{};                  ///< cosine(axis, ray) / run
    Lanes radiusSquared{};
    Lanes density{};   ///< of leaf, relative; 0: wood, opaque
    LimbLanes limbs{}; ///< number of the limb that each grows on
};

/// One body that a pack may meet: a lane of an eight.
struct Candidate {
    const AimedCapsules* eight{};
    std::uint32_t lane{};
};

/// The flat sides of a curtain with hanging shoots, as the beam sees them.
struct AimedSheet {
    float depth{}, depthPerAside{}, depthPerUp{}; ///< of the middle plane
    float half{};                                 ///< half the thickness along the ray
    float along{}, alongPerAside{}, alongPerUp{}, alongPerDepth{}; ///< 0..1 from a to b
    float down{}, downPerAside{}, downPerUp{}, downPerDepth{};     ///< 0..1 from limb to hem
    bool edgeOn{true}; ///< the ray runs in the sheet, or there is none
};

/// A crown that is drawn as one body, as the beam sees it: an ellipse, and over each of its points
/// how deep the middle of the chord lies and how long it is.
struct AimedEllipsoid {
    float aside{}, up{}, depth{};        ///< of its middle
    float depthPerAside{}, depthPerUp{}; ///< of a chord's middle, off the ellipsoid's own
    float xx{}, xy{}, yy{};              ///< met where xx x^2 + 2 xy x y + yy y^2 < 1
    float half{kNothing};                ///< half the chord through the middle; kNothing: no body
};

/// Where eight rays are inside bodies, one body for each ray, metres from the receiver. A lane
/// with from == to == kMissed holds nothing.
struct Crossing {
    Lanes from{};
    Lanes to{};
    Lanes density{};  ///< relative density of leaf; 0: wood, opaque
    LimbLanes limb{}; ///< number of the limb that the body grows on
};
inline constexpr float kMissed = 1e30F;

/// Crossings as they are found: those of several bodies share a row while their rays differ, for
/// small bodies meet but one or two of the eight.
struct CrossingRows {
    Crossing* last{};     ///< the row that is being filled; with room behind it
    unsigned lanesUsed{}; ///< of it, one bit for each lane
};

} // namespace model::light
