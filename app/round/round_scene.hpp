#pragma once

#include "app/drawing/side_scene.hpp"
#include "app/solid/mesh.hpp"
#include "model/crown/foliage.hpp"
#include "model/garden/garden.hpp"

#include <memory>
#include <string>
#include <vector>

/// The garden as solids in its own frame. What they are is decided here, how they look in
/// round_tint.hpp.
namespace app {

enum class RoundKind {
    ground,
    ring, ///< round the chosen tree, with a point to the north
    lawn,
    bed,
    strip,
    pond,
    hedge,
    shrub,
    building,
    fence,
    glasshouse,
    wire,
    wood,       ///< of the chosen tree, a part for each limb
    leaf,       ///< bodies of one limb of it
    flecks,     ///< so many leaves of it that the wood is still seen
    shade,      ///< all leaves of it, which only throw shadow
    fallenWood, ///< what the cuts take of a limb
    fallenLeaf,
    otherWood, ///< of another tree, or a neighbour
    otherLeaf,
    otherFlecks,
    otherShade,
};

/// One thing that is drawn in one colour.
struct RoundPart {
    RoundKind kind{};
    std::string id; ///< of the limb, or of the thing in the garden; may be empty
    std::shared_ptr<const Mesh> solid;

    friend bool operator==(const RoundPart& a, const RoundPart& b)
    {
        return a.kind == b.kind && a.id == b.id &&
               (a.solid == b.solid || (a.solid && b.solid && *a.solid == *b.solid));
    }
};

/// Leaf of one tree or neighbour. Without a foliation it is drawn bare.
struct RoundLeaf {
    std::shared_ptr<const model::Foliation> foliation;
    double share{1.0}; ///< on the tree on the day, of full leaf
};

/// What the scene is made from. Holds references: make it, use it, let it go.
struct RoundInput {
    const model::Garden& garden;
    const model::Tree* chosen{};     ///< one of the garden's; null: a garden without trees
    const model::Tree* after{};      ///< what the cuts leave of it; null: no cuts
    bool showsAfter{};               ///< the cuts are made
    bool showsFalling{};             ///< what they take is told apart, or still shown when made
    std::vector<RoundLeaf> treeLeaf; ///< in the order of Garden::trees
    std::vector<RoundLeaf> neighbourLeaf; ///< in the order of Garden::neighbours
};

[[nodiscard]] std::vector<RoundPart> roundScene(const RoundInput& input);

/// The foot of a tree, garden frame.
[[nodiscard]] model::Vec3 foot_m(const model::Garden& garden, model::Point2 position_m);

/// Radius of the ring round the chosen tree, m.
[[nodiscard]] double ringRadius_m(const model::Tree& tree);

/// A circle on plan.
struct Disc {
    model::Point2 middle_m{};
    double radius_m{};
};

/// The ground that is shown: all that is in the garden, and some beyond.
[[nodiscard]] Disc groundDisc(const model::Garden& garden);

/// Adds a part, unless there is nothing of it.
void addPart(std::vector<RoundPart>& parts, RoundKind kind, const std::string& id, Mesh solid);

/// The parts, each in a file of its own.
void addGarden(std::vector<RoundPart>& parts, const RoundInput& input);
void addChosenTree(std::vector<RoundPart>& parts, const RoundInput& input);
void addOtherTrees(std::vector<RoundPart>& parts, const RoundInput& input);

} // namespace app
