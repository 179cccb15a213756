#pragma once

#include "model/light/beam.hpp"
#include "model/light/scene.hpp"

#include <string>
#include <vector>

namespace model::light {

/// What one tree lets through to each of eight rays, and the bodies that they cross.
struct TreeLight {
    std::size_t tree{}; ///< index into Scene::trees
    Lanes through{};
    std::size_t firstCrossing{}; ///< into PackLight::crossings
    std::size_t crossings{};
};

/// What eight parallel rays meet on their way to a pack.
struct PackLight {
    Lanes structures{};           ///< share that walls and glass let through
    Lanes all{};                  ///< share that everything lets through
    std::vector<TreeLight> trees; ///< only those that any of the rays meets
    Crossings crossings;
};

/// Receivers that are traced together: their packs and a ball around them.
struct Receivers {
    std::vector<Pack> packs;
    Ball bounds;                       ///< garden frame
    std::vector<EightBoxes> packBoxes; ///< around the packs, from their origin
    std::string planting;              ///< id of the planting that they lie on; empty: none
};
[[nodiscard]] Receivers receivers(std::span<const Vec3> points, Vec3 origin,
                                  std::string planting = {});

/// A scene made ready for packs of parallel rays. Trees are turned to the light only when a ray
/// may meet them. Keeps a reference to `scene`.
class SceneBeam {
public:
    /// \param origin  the packs' own
    SceneBeam(const Scene& scene, Vec3 origin);

    /// Tells a tree's limbs apart by number (limb_numbers.hpp), one for each limb.
    void numberLimbs(std::size_t tree, std::span<const std::size_t> numbers)
    {
        trees_[tree].numberLimbs(numbers);
    }

    /// Sets the direction of light.
    void aim(Vec3 towards);
    /// Picks the trees that may stand between the light and these receivers.
    void turnTo(const Receivers& receivers);
    /// Traces one of their packs.
    void trace(std::size_t pack, PackLight& light);

    [[nodiscard]] std::size_t treeCount() const { return trees_.size(); }
    [[nodiscard]] const TreeBeam& tree(std::size_t index) const { return trees_[index]; }
    /// Of the tree, in the direction of light.
    [[nodiscard]] float extinction_1_m(std::size_t index) const { return extinctions_[index]; }

private:
    void turnToTree(std::size_t tree, const Receivers& receivers);
    void turnToStructures(const Receivers& receivers);
    void traceStructures(const Pack& pack, Lanes& share) const;
    void traceTree(std::size_t tree, const AimedPack& seen, PackLight& light);

    const Scene& scene_;
    const LaneWork& work_;
    Vec3 origin_;
    BeamFrame frame_;
    BeamAxes axes_;
    std::vector<TreeBeam> trees_;
    std::vector<std::size_t> boxed_; ///< index of the tree in each box
    NestedBoxes treeBoxes_;
    std::vector<float> extinctions_;
    std::vector<char> turned_; ///< per tree: aimed at frame_ already
    // The receivers turned to:
    const Receivers* receivers_{};
    std::vector<EightWindows> packWindows_;
    std::vector<std::size_t> near_; ///< trees
    std::vector<std::uint8_t>
        nearPacks_; ///< per near tree and eight packs: bits of those it may shade
    std::vector<const Prism*> nearStructures_;
};

} // namespace model::light
