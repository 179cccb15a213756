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
};

/// Eight capsules as the beam sees them, as far as it takes to tell which rays meet them.
struct EightOutlines {
    Lanes aside{}, up{};       ///< of the first end
    Lanes runAside{}, runUp{}; ///< from there to the other end
    Lanes perRunSquared{};
    Lanes radiusSquared{}; ///< a hair more, for rounding's sake; less than 0: no capsule
    /// Around all eight: least aside, least up, and less the most of each.
    std::array<float, 4> bounds{};
};

/// A capsule by itself, metres from the packs' origin.
struct Capsule {
    float ax{}, ay{}, az{};
    float alongX{}, alongY{}, alongZ{}; ///< from the first end to the other
    float radius{};
    float perLength{}; ///< as EightCapsules'
};

/// What a crossing tells of the body crossed.
struct BodyName {
    float density{};     ///< of leaf, relative; 0: wood, opaque
    std::int32_t limb{}; ///< number of the limb that it grows on
};

/// Eight capsules that a pack may meet.
struct EightMet {
    const EightOutlines* outlines{};
    std::uint32_t firstBody{}; ///< index of the first of the eight
};

/// One curtain or crown that a pack may meet: a lane of an eight.
struct Candidate {
    const AimedCapsules* eight{}; ///< not of crowns
    std::uint32_t lane{};
    std::uint32_t body{}; ///< index among the tree's bodies
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

/// Crossings as they are found. Those of several bodies share a row while their rays differ, for
/// small bodies meet but one or two of the eight.
struct CrossingRows {
    Crossing* rows{}; ///< with room for as many as there are bodies, and one before the first
    std::uint32_t count{};
    unsigned lanesUsed{(1U << kLanes) - 1}; ///< of the last row, one bit for each lane
};

} // namespace model::light
