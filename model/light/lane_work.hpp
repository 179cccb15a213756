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

/// What a pack's rays cross in one tree.
struct Rows {
    const Crossing* rows{};
    std::size_t count{};
    std::span<const float> layers; ///< distinct densities of leaf, ascending
    Lanes* scratch{};              ///< room for 4 count lanes
};

/// A limb with all that grows from it, by number.
struct LimbRange {
    std::int32_t first{};
    std::int32_t end{}; ///< one past the last
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
    /// Writes those of the eight whose windows the pack's meets to `list` (room for eight);
    /// returns how many.
    std::size_t (*candidates)(const AimedCapsules& eight, const Window& window, Candidate* list);
    /// Adds the crossings of capsules. Reorders the candidates.
    void (*crossCapsules)(Candidate* candidates, std::size_t count, const AimedPack& pack,
                          CrossingRows& rows);
    /// The same of curtains: each eight is four blocks of capsules along their edges, of which
    /// the first has the whole curtain's windows. `sheets`: one for each candidate.
    void (*crossCurtains)(const Candidate* candidates, const AimedSheet* const* sheets,
                          std::size_t count, const AimedPack& pack, CrossingRows& rows);
    /// The same of crowns drawn as one body. `crowns`: one for each candidate.
    void (*crossEllipsoids)(const Candidate* candidates, const AimedEllipsoid* const* crowns,
                            std::size_t count, const AimedPack& pack, CrossingRows& rows);
    /// Metres of crown weighted by density, and 1 for each ray that meets wood, else 0.
    void (*pathAndWood)(const Rows& rows, Lanes& path, Lanes& wood);
    /// Share of light let through by the tree without a limb, and by that limb alone.
    void (*limbShares)(const Rows& rows, LimbRange limb, float extinction_1_m, Lanes& without,
                       Lanes& only);
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
