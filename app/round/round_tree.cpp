// The trees as solids: wood round the stations, leafy bodies, leaf strewn through them.

#include "app/round/round_scene.hpp"

#include "app/solid/flecks.hpp"
#include "app/solid/round_mesh.hpp"
#include "app/solid/tube.hpp"
#include "model/crown/leafy_bodies.hpp"
#include "model/light/canopy.hpp"

#include <algorithm>

namespace app {
namespace {

constexpr double kThinnest_m = 0.012; // radius; a shoot drawn to scale would vanish
constexpr double kLeastFleck_m2 = 0.006;
constexpr double kSeenThrough = 0.3;   // share of the leaf that is shown; assumed
constexpr double kMostFlecks = 9000.0; // on the chosen tree: larger ones on a larger tree
constexpr double kMostElsewhere = 2500.0;

Mesh woodOf(const std::vector<model::Station>& stations, model::Vec3 foot)
{
    std::vector<TubeRing> path;
    for (const auto& station : stations)
        path.push_back(
            {foot + station.position_m, std::max(kThinnest_m, station.diameter_m / 2.0)});
    return tube(path);
}

double fleck_m2(double leaf_m2, RoundKind kind)
{
    return std::max(kLeastFleck_m2,
                    leaf_m2 / (kind == RoundKind::shade ? kMostFlecks : kMostElsewhere));
}

/// A limb as it is in the tree before the cuts, and what they leave of it.
struct CutLimb {
    const model::Limb& before;
    const model::Limb* after{}; ///< null: gone
    double left_m{};            ///< of its length

    /// Nothing: none of its wood goes.
    [[nodiscard]] std::vector<model::Station> falling() const
    {
        const double whole = model::length_m(before);
        return left_m < whole - 1e-6 ? model::stretch(before, left_m, whole)
                                     : std::vector<model::Station>{};
    }
};

CutLimb cutLimb(const model::Limb& before, const model::Tree* after)
{
    if (!after)
        return {before, &before, model::length_m(before)};
    const auto index = model::limbIndex(*after, before.id);
    if (index == model::kNoLimb)
        return {before, nullptr, 0.0};
    return {before, &after->limbs[index], model::length_m(after->limbs[index])};
}

/// Leafy bodies that the cuts take: all beyond the place cut, and where shoots are shortened the
/// body as it hung before.
std::vector<model::LeafyBody> fallingLeaf(const CutLimb& limb)
{
    std::vector<model::LeafyBody> bodies;
    if (!limb.before.foliage)
        return bodies;
    const bool isShorter = !limb.falling().empty();
    model::Limb falling = limb.before;
    if (isShorter)
        falling.foliage->from_m = std::max(falling.foliage->from_m, limb.left_m);
    model::appendLeafyBodies(falling, 0, bodies);
    if (isShorter)
        return bodies;
    std::vector<model::LeafyBody> left;
    model::appendLeafyBodies(*limb.after, 0, left);
    std::erase_if(bodies, [&](const model::LeafyBody& body) {
        return std::ranges::any_of(left, [&](const auto& b) { return b.solid == body.solid; });
    });
    return bodies;
}

Mesh bodiesOf(const std::vector<model::LeafyBody>& bodies, model::Vec3 foot)
{
    Mesh mesh;
    for (const auto& body : bodies)
        append(mesh, roundMesh(body.solid), foot);
    return mesh;
}

/// \param share  of its leaf in summer
Mesh flecksOf(const model::Tree& tree, const model::Foliation& foliation, double share,
              double each_m2, model::Vec3 foot)
{
    Mesh mesh;
    std::uint32_t seed = 0;
    for (const auto& body : model::leafyBodies(tree))
        append(mesh,
               flecks(body.solid, {share * model::leafArea_m2(body, foliation), each_m2, ++seed}),
               foot);
    return mesh;
}

/// The leaf that is seen, and the leaf that throws the shadow.
struct LeafKinds {
    RoundKind seen{};
    RoundKind shade{};
};

void addFlecks(std::vector<RoundPart>& parts, LeafKinds kinds, const model::Tree& tree,
               const RoundLeaf& leaf, model::Vec3 foot)
{
    if (!leaf.foliation)
        return;
    const double each_m2 = fleck_m2(leaf.foliation->leafArea_m2, kinds.shade);
    addPart(parts, kinds.seen, tree.id,
            flecksOf(tree, *leaf.foliation, kSeenThrough * leaf.share, each_m2, foot));
    addPart(parts, kinds.shade, tree.id,
            flecksOf(tree, *leaf.foliation, leaf.share, each_m2, foot));
}

void addNeighbour(std::vector<RoundPart>& parts, const model::Neighbour& neighbour,
                  const RoundLeaf& leaf, const model::Ground& ground)
{
    const auto crown = model::light::crownOf(neighbour, ground);
    if (neighbour.stemDiameter_m) {
        const model::Vec3 foot = ground.at(neighbour.position_m);
        const double r = *neighbour.stemDiameter_m / 2.0;
        const std::vector<TubeRing> stem{{foot, r}, {crown.middle_m, 0.6 * r}};
        addPart(parts, RoundKind::otherWood, neighbour.id, tube(stem));
    }
    addPart(parts, RoundKind::otherLeaf, neighbour.id, roundMesh(crown));
    if (!leaf.foliation)
        return;
    const double leaf_m2 = leaf.share * leaf.foliation->leafArea_m2;
    const double each_m2 = fleck_m2(leaf.foliation->leafArea_m2, RoundKind::otherShade);
    addPart(parts, RoundKind::otherFlecks, neighbour.id,
            flecks(crown, {kSeenThrough * leaf_m2, each_m2, 1}));
    addPart(parts, RoundKind::otherShade, neighbour.id, flecks(crown, {leaf_m2, each_m2, 1}));
}

} // namespace

void addChosenTree(std::vector<RoundPart>& parts, const RoundInput& input)
{
    if (!input.chosen)
        return;
    const auto index = static_cast<std::size_t>(input.chosen - input.garden.trees.data());
    const auto& tree = *input.chosen;
    const auto& shown = input.showsAfter && input.after ? *input.after : tree;
    const model::Vec3 foot = foot_m(input.garden, tree.position_m);
    for (const auto& limb : tree.limbs) {
        const auto cut = cutLimb(limb, input.after);
        const auto falling = cut.falling();
        const bool parted = input.showsFalling || input.showsAfter;
        if (!parted || falling.empty())
            addPart(parts, RoundKind::wood, limb.id, woodOf(limb.stations, foot));
        else if (cut.left_m > 0.0)
            addPart(parts, RoundKind::wood, limb.id,
                    woodOf(model::stretch(limb, 0.0, cut.left_m), foot));
        if (input.showsFalling) {
            addPart(parts, RoundKind::fallenWood, limb.id, woodOf(falling, foot));
            addPart(parts, RoundKind::fallenLeaf, limb.id, bodiesOf(fallingLeaf(cut), foot));
        }
    }
    for (std::size_t i = 0; i < shown.limbs.size(); ++i) {
        std::vector<model::LeafyBody> bodies;
        model::appendLeafyBodies(shown.limbs[i], i, bodies);
        addPart(parts, RoundKind::leaf, shown.limbs[i].id, bodiesOf(bodies, foot));
    }
    if (index < input.treeLeaf.size())
        addFlecks(parts, {RoundKind::flecks, RoundKind::shade}, shown, input.treeLeaf[index], foot);
}

void addOtherTrees(std::vector<RoundPart>& parts, const RoundInput& input)
{
    const model::Ground ground(input.garden.slope);
    for (std::size_t i = 0; i < input.garden.trees.size(); ++i) {
        const auto& tree = input.garden.trees[i];
        if (&tree == input.chosen)
            continue;
        const model::Vec3 foot = foot_m(input.garden, tree.position_m);
        Mesh wood;
        for (const auto& limb : tree.limbs)
            append(wood, woodOf(limb.stations, foot));
        addPart(parts, RoundKind::otherWood, tree.id, std::move(wood));
        addPart(parts, RoundKind::otherLeaf, tree.id, bodiesOf(model::leafyBodies(tree), foot));
        if (i < input.treeLeaf.size())
            addFlecks(parts, {RoundKind::otherFlecks, RoundKind::otherShade}, tree,
                      input.treeLeaf[i], foot);
    }
    for (std::size_t i = 0; i < input.garden.neighbours.size(); ++i)
        addNeighbour(parts, input.garden.neighbours[i],
                     i < input.neighbourLeaf.size() ? input.neighbourLeaf[i] : RoundLeaf{}, ground);
}

} // namespace app
