#pragma once

#include "model/light/eights.hpp"
#include "model/light/pack.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>

namespace model::light {

/// The directions across a beam as floats, for the lanes.
struct BeamAxes {
    std::array<float, 3> towards{};
    std::array<float, 3> aside{};
    std::array<float, 3> up{};
};

/// A pack of receivers as the beam sees it, metres.
struct AimedPack {
    Lanes aside{};
    Lanes up{};
    Lanes depth{}; ///< towards the light
    Window window;
};

/// A tree's capsules, one by one; in eights, some of them perhaps no capsule.
struct Bodies {
    const Capsule* capsules{};
    const BodyName* names{};
};

/// What a pack's rays cross in one tree.
struct Rows {
    const Crossing* rows{};
    std::size_t count{};
    std::span<const float> layers; ///< distinct densities of leaf, ascending
    Lanes* scratch{};              ///< room for scratchLanes()
};
[[nodiscard]] constexpr std::size_t scratchLanes(std::size_t rows, std::size_t layers)
{
    return 2 * rows * (layers + 2);
}

/// A limb with all that grows from it, by number.
struct LimbRange {
    std::int32_t first{};
    std::int32_t end{}; ///< one past the last
};

/// The light in which limbs are told apart: of eight rays, 0 for those that don't count.
struct LimbLight {
    float extinction_1_m{}; ///< of the limbs' tree
    Lanes open{};           ///< what comes past walls and glass
    Lanes others{};         ///< of that, what all other trees let through
    Lanes through{};        ///< of that, what the whole tree lets through
};

/// Light that a limb takes, summed over eight rays.
struct LimbLoss {
    float removal{}; ///< what the rays would have more without it
    float firstIn{}; ///< what it would take of `open` by itself
};

/// The arithmetic on eight rays or eight bodies at once, in one version for each kind of
/// processor: plain functions of what they are given.
struct LaneWork {
    void (*aimPack)(const Pack& pack, const BeamAxes& axes, AimedPack& aimed);
    void (*aimBoxes)(const EightBoxes& boxes, const BeamAxes& axes, EightWindows& windows);
    void (*aimCapsules)(const EightCapsules& capsules, const BeamAxes& axes, AimedCapsules& aimed);
    /// Around eight windows.
    Window (*around)(const EightWindows& eight);
    /// One bit for each of the eight that the window meets.
    unsigned (*meeting)(const EightWindows& eight, const Window& window);
    /// Which windows within some eights a window meets: eight times the eight's index and the lane
    /// in it, written to `met` (room for eight more than there are). Returns how many.
    std::size_t (*metInside)(const EightWindows* eights, std::span<const std::uint32_t> some,
                             const Window& window, std::uint32_t* met);
    void (*outline)(const EightCapsules& capsules, const BeamAxes& axes, EightOutlines& outlines);
    /// Adds the crossings of capsules: eight of them at once are held against each ray that comes
    /// near, then eight meetings at once are worked out.
    void (*crossCapsules)(std::span<const EightMet> eights, const Bodies& bodies,
                          const AimedPack& pack, const BeamAxes& axes, CrossingRows& rows);
    /// Writes those of eight bodies whose windows the pack's meets to `list` (room for eight);
    /// returns how many.
    std::size_t (*candidates)(const EightWindows& eight, const Window& window,
                              std::uint32_t firstBody, std::uint32_t* list);
    /// Adds the crossings of capsules so wide that several rays of a pack meet each.
    /// \param candidates  eight times the index into `aimed`, and the lane there; is reordered
    void (*crossWideCapsules)(std::span<std::uint32_t> candidates, const AimedCapsules* aimed,
                              const BodyName* names, const AimedPack& pack, CrossingRows& rows);
    /// The same of curtains: each eight is four blocks of capsules along their edges, of which
    /// the first has the whole curtain's windows. `sheets`: one for each candidate.
    void (*crossCurtains)(std::span<const Candidate> candidates, const AimedSheet* const* sheets,
                          const BodyName* names, const AimedPack& pack, CrossingRows& rows);
    /// The same of crowns drawn as one body. `crowns`: one for each candidate.
    void (*crossEllipsoids)(std::span<const Candidate> candidates,
                            const AimedEllipsoid* const* crowns, const BodyName* names,
                            const AimedPack& pack, CrossingRows& rows);
    /// Metres of crown weighted by density, and 1 for each ray that meets wood, else 0.
    void (*pathAndWood)(const Rows& rows, Lanes& path, Lanes& wood);
    /// Share of light let through by the tree without a limb, and by that limb alone.
    void (*limbShares)(const Rows& rows, LimbRange limb, float extinction_1_m, Lanes& without,
                       Lanes& only);
    /// What each of some limbs takes.
    void (*limbLosses)(const Rows& rows, std::span<const LimbRange> limbs, const LimbLight& light,
                       LimbLoss* losses);
    /// Sets the bit of each limb that a ray meets: number n is bit n % 64 of met[n / 64].
    void (*limbsMet)(const Crossing* rows, std::size_t count, std::uint64_t* met);
    /// exp(-extinction path), 0 where there is wood.
    void (*through)(const Lanes& path, const Lanes& wood, float extinction_1_m, Lanes& share);
};

/// The version for this processor.
[[nodiscard]] const LaneWork& laneWork();

extern const LaneWork kPlainLanes;
#if defined(UNDERBOUGH_WIDE_LANES)
extern const LaneWork kWideLanes; ///< needs AVX2 and FMA
#endif

} // namespace model::light
