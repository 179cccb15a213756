#pragma once

#include "model/light/canopy.hpp"
#include "model/light/pack.hpp"

#include <span>
#include <vector>

namespace model::light {

/// The directions across a beam of parallel rays. Across the beam a ray is one point (aside, up),
/// which is what makes many rays in one direction cheap.
struct BeamFrame {
    Vec3 towards{}; ///< unit, towards the light
    Vec3 aside{};   ///< unit, level
    Vec3 up{};      ///< unit, completes the frame
};
[[nodiscard]] BeamFrame beamFrame(Vec3 towards);

/// A rectangle across the beam.
struct Window {
    float asideLow{};
    float asideHigh{};
    float upLow{};
    float upHigh{};
};

/// A pack of receivers as the beam sees it, metres.
struct AimedPack {
    Lanes aside{};
    Lanes up{};
    Lanes depth{}; ///< towards the light
    Window window;
};
[[nodiscard]] AimedPack aimed(const Pack& pack, const BeamFrame& frame);

/// Where eight rays are inside one body, metres from the receiver. A ray that misses has
/// from == to == kMissed.
struct Crossing {
    Lanes from{};
    Lanes to{};
    std::uint32_t body{}; ///< index into TreeBeam::bodies()
};
inline constexpr float kMissed = 1e30F;

/// What a body is, besides its shape.
struct BodyKind {
    float density{};    ///< relative density of leaf; 0: wood, opaque
    std::size_t limb{}; ///< index into Tree::limbs
};

/// A capsule across the beam.
struct AimedCapsule {
    float aside{}, up{}, depth{};  ///< of its first end
    float endDepth{};              ///< of its other end
    float alongAside{}, alongUp{}; ///< unit, along its axis as the beam sees it
    float run{};                   ///< length of the axis as the beam sees it
    float length{};
    float perSine{}; ///< 1 / sin(axis, ray)
    float cosine{};  ///< of the same angle
    float slope{};   ///< depth gained along the axis per run
    float radiusSquared{};
};
/// The flat sides of a curtain with hanging shoots.
struct AimedSheet {
    float depth{}, depthPerAside{}, depthPerUp{}; ///< of the middle plane
    float half{};                                 ///< half the thickness along the ray
    float along{}, alongPerAside{}, alongPerUp{}, alongPerDepth{}; ///< 0..1 from a to b
    float down{}, downPerAside{}, downPerUp{}, downPerDepth{};     ///< 0..1 from limb to hem
    bool edgeOn{};                                                 ///< the ray runs in the sheet
};

/// One tree's bodies, made ready for packs of parallel rays. Gives the same as leafyPath_m() of
/// canopy.hpp to float's precision, many times faster.
class TreeBeam {
public:
    /// \param origin  the packs' own; near them, for float's sake
    TreeBeam(const Canopy& canopy, Vec3 origin);

    /// Turns the tree to a new direction of light. To be called before crossings().
    void aim(const BeamFrame& frame);

    /// Every body that meets a ray of the pack, appended to `found`.
    void crossings(const AimedPack& pack, std::vector<Crossing>& found) const;

    [[nodiscard]] std::span<const BodyKind> bodies() const { return kinds_; }
    /// Distinct densities of leaf, ascending.
    [[nodiscard]] std::span<const float> densities() const { return densities_; }

private:
    static constexpr std::size_t kNoSheet = static_cast<std::size_t>(-1);
    struct Point {
        float x{};
        float y{};
        float z{};
    };
    struct Solid {
        Point a, b;
        float radius{};
        float hang{};
    };
    void addSolid(const Curtain& curtain, Vec3 origin, BodyKind kind);
    void aimSolid(std::size_t body, const BeamFrame& frame);

    std::vector<Solid> solids_;
    std::vector<BodyKind> kinds_;
    std::vector<float> densities_;
    std::vector<std::size_t> firstCapsule_; ///< per body, and one past the last
    std::vector<std::size_t> sheet_;        ///< per body, or kNoSheet
    std::vector<AimedCapsule> capsules_;
    std::vector<AimedSheet> sheets_;
    // Windows of all bodies, one array a side, so that eight are looked at together.
    std::vector<float> asideLow_, asideHigh_, upLow_, upHigh_;
    Window whole_;
};

/// Metres of crown on each of eight rays, weighted by relative density; overlaps count once, by
/// the densest (docs/methods/light.md, L13). Wood has no part in it: see blocked().
/// \param keep  looked up by body: 0 leaves it out; empty: all are kept
void leafyPath(std::span<const Crossing> crossings, const TreeBeam& tree,
               std::span<const char> keep, Lanes& path);

/// 1 for a ray that meets wood, else 0.
void blocked(std::span<const Crossing> crossings, const TreeBeam& tree, std::span<const char> keep,
             Lanes& wood);

/// Share of light let through: exp(-extinction path), 0 where blocked.
void through(const Lanes& path, const Lanes& blockedRays, float extinction_1_m, Lanes& share);

} // namespace model::light
