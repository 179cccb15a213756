#pragma once

#include "model/light/canopy.hpp"
#include "model/light/lane_work.hpp"
#include "model/light/nested_boxes.hpp"
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
[[nodiscard]] BeamAxes beamAxes(const BeamFrame& frame);

/// A pack of receivers as the beam sees it.
[[nodiscard]] AimedPack aimed(const Pack& pack, const BeamFrame& frame);

/// Crossings of one tree after another. Room once taken is kept.
class Crossings {
public:
    void clear() { count_ = 0; }
    /// Rows so far.
    [[nodiscard]] std::size_t size() const { return count_; }
    [[nodiscard]] std::span<const Crossing> from(std::size_t first) const
    {
        return std::span(rows_).subspan(first + 1, count_ - first);
    }
    /// Where crossings of a tree of this many bodies may be added; close() takes them in.
    [[nodiscard]] CrossingRows open(std::size_t bodies)
    {
        if (rows_.size() < count_ + 1 + bodies)
            rows_.resize(2 * (count_ + 1 + bodies));
        return {rows_.data() + 1 + count_};
    }
    void close(const CrossingRows& rows) { count_ += rows.count; }

private:
    std::vector<Crossing> rows_; ///< the first is idle: the row before the first
    std::size_t count_{};
};

/// One tree's bodies, made ready for packs of parallel rays. Gives the same as leafyPath_m() of
/// canopy.hpp to float's precision, many times faster. Neighbouring bodies are kept in eights; an
/// eight is turned to the light only when a pack comes near it.
class TreeBeam {
public:
    /// \param origin  the packs' own; near them, for float's sake
    TreeBeam(const Canopy& canopy, Vec3 origin);

    /// What crossings tell of the limb that a body grows on: at first its index into Tree::limbs,
    /// from now on the number given for that.
    void numberLimbs(std::span<const std::size_t> numbers);

    /// Turns the tree to a new direction of light. To be called before crossings().
    void aim(const BeamFrame& frame);

    /// Around all of it, as the beam sees it.
    [[nodiscard]] const Window& window() const { return window_; }

    /// Every body that meets a ray of the pack, added to `found`.
    void crossings(const AimedPack& pack, Crossings& found);

    /// Distinct densities of leaf, ascending.
    [[nodiscard]] std::span<const float> densities() const { return densities_; }

private:
    /// A body on its way into an eight.
    struct Solid {
        Curtain curtain;    ///< from the origin
        float density{};    ///< relative density of leaf; 0: wood, opaque
        std::size_t limb{}; ///< index into Tree::limbs
        bool hangs{};
    };
    /// Eight neighbours, all with hanging shoots or all without, or all whole crowns.
    struct Eight {
        enum class Kind { capsules, curtains, crowns };
        Kind kind{};
        std::size_t first{}; ///< of its kind: blocks of capsules, of four edges, crowns
        std::size_t firstSheet{};
        float across_m2{};      ///< of capsules: what each shows to the light, about
        unsigned turn{};        ///< the turn_ at which it was last aimed
        unsigned outlineTurn{}; ///< likewise its outlines
    };
    void addInEights(std::span<const Solid> solids, std::vector<Box>& boxes);
    void addEight(std::span<const Solid> solids);
    void addCrowns(std::span<const CrownBody> crowns, Vec3 origin, std::vector<Box>& boxes);
    void aimEight(Eight& eight);
    void findMet(const Window& window);
    void addCandidates(const Eight& eight, std::uint32_t firstBody, const Window& window);

    const LaneWork& work_;
    std::vector<std::size_t> limbs_; ///< per body, eight for each Eight
    std::vector<BodyName> names_;    ///< the same
    std::vector<Capsule> single_;    ///< the same, of those without hanging shoots
    std::vector<float> densities_;
    std::vector<Eight> eights_; ///< those of capsules first, in the order of capsules_
    std::vector<EightCapsules> capsules_;
    std::vector<EightOutlines> outlines_; ///< of capsules_
    std::vector<AimedCapsules> aimed_;    ///< of capsules_
    std::vector<EightCapsules> edges_;    ///< four for each Eight that hangs
    std::vector<AimedCapsules> aimedEdges_;
    std::vector<Curtain> sheets_; ///< eight for each Eight that hangs
    std::vector<AimedSheet> aimedSheets_;
    std::vector<Ellipsoid> crowns_; ///< eight for each Eight of whole crowns, from the origin
    std::vector<AimedEllipsoid> aimedCrowns_;
    NestedBoxes nested_; ///< around eights
    BeamFrame frame_;
    BeamAxes axes_;
    Window window_;
    unsigned turn_{};
    // What the pack at hand may meet:
    std::vector<EightMet> met_;
    std::vector<std::uint32_t> wide_; ///< with room for eight more than there are
    std::size_t wideCount_{};
    std::vector<Candidate> curtains_;
    std::vector<const AimedSheet*> curtainSheets_;
    std::vector<Candidate> wholes_;
    std::vector<const AimedEllipsoid*> wholeCrowns_;
};

/// Metres of crown on each of eight rays, weighted by relative density; overlaps count once, by
/// the densest (docs/methods/light.md, L13). `wood`: 1 for a ray that meets wood, else 0.
void leafyPath(std::span<const Crossing> crossings, const TreeBeam& tree, Lanes& path, Lanes& wood);

/// Share of light let through: exp(-extinction path), 0 where there is wood.
void through(const Lanes& path, const Lanes& wood, float extinction_1_m, Lanes& share);

/// What each of some limbs takes.
void limbLosses(std::span<const Crossing> crossings, const TreeBeam& tree,
                std::span<const LimbRange> limbs, const LimbLight& light,
                std::span<LimbLoss> losses);

/// Share of light let through by the tree without a limb, and by that limb alone.
void limbShares(std::span<const Crossing> crossings, const TreeBeam& tree, LimbRange limb,
                float extinction_1_m, Lanes& without, Lanes& only);

} // namespace model::light
