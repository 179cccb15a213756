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

/// Limbs by number, those that grow from one limb in one stretch (tally.hpp).
using LimbLanes = std::array<std::int32_t, kLanes>;

/// Rows of one tree that count: all, or those of some limbs only.
struct Rows {
    const Crossing* rows{};
    std::size_t count{};
    const LimbLanes* limbs{}; ///< of each row; null: all count
    std::int32_t firstLimb{}; ///< the limbs looked at ...
    std::int32_t endLimb{};   ///< ... and one past the last
    bool others{};            ///< all but these count
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
    /// Metres of crown weighted by density, and 1 for each ray that meets wood, else 0.
    /// \param layers   distinct densities of leaf, ascending
    /// \param scratch  room for 2 rows.count lanes
    void (*pathAndWood)(const Rows& rows, std::span<const float> layers, Lanes* scratch,
                        Lanes& path, Lanes& wood);
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
