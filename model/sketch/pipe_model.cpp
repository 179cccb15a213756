#include "model/sketch/pipe_model.hpp"

#include "model/crown/leafy_bodies.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace model::sketch {
namespace {

constexpr double kTip_m = 0.006;    // a pencil; assumed
constexpr double kButtSwell = 1.12; // of the diameter at the ground; assumed
constexpr double kOfParent = 0.95;  // most that a limb is as thick as the wood it grows from
constexpr double kAlongSlack_m = 1e-6;

/// Leaf of a limb's own bodies, and of all that grows from it, by where along it that hangs.
class LeafBeyond {
public:
    LeafBeyond(const Tree& tree, const LimbOrder& order)
        : tree_(tree), order_(order), bodies_(tree.limbs.size()), whole_(tree.limbs.size(), 0.0)
    {
        for (const auto& body : leafyBodies(tree))
            bodies_[body.limb].push_back(body);
        for (auto i = order.rootFirst.rbegin(); i != order.rootFirst.rend(); ++i)
            whole_[*i] = beyond(*i, 0.0);
    }

    [[nodiscard]] double whole(std::size_t limb) const { return whole_[limb]; }

    /// Leaf on the limb beyond `at_m` along it, in shares of volume, m3.
    [[nodiscard]] double beyond(std::size_t limb, double at_m) const
    {
        double leaf = 0.0;
        for (const auto& body : bodies_[limb]) {
            const double length = body.to_m - body.from_m;
            const double left = std::clamp(body.to_m - at_m, 0.0, length);
            leaf += length > 0.0 ? sharingVolume_m3(body) * body.density * left / length : 0.0;
        }
        for (const auto child : order_.children[limb])
            if (tree_.limbs[child].attachedAt_m >= at_m - kAlongSlack_m)
                leaf += whole_[child];
        return leaf;
    }

private:
    const Tree& tree_;
    const LimbOrder& order_;
    std::vector<std::vector<LeafyBody>> bodies_;
    std::vector<double> whole_;
};

/// The trunk up to here is what the gardener put a tape round.
constexpr double kBreastHeight_m = 1.3;

/// Makes a guessed limb as thick as the leaf beyond asks for; nowhere thinner than it was.
void thicken(Limb& limb, double most_m, const auto& pipes_m)
{
    if (limb.measured != Measured::guessed)
        return;
    double along = 0.0;
    for (std::size_t s = 0; s < limb.stations.size(); ++s) {
        const double before = along;
        if (s > 0)
            along += norm(limb.stations[s].position_m - limb.stations[s - 1].position_m);
        if (!limb.parent && before < kBreastHeight_m)
            continue;
        auto& diameter_m = limb.stations[s].diameter_m;
        diameter_m = std::max(diameter_m, std::min(most_m, pipes_m(along)));
    }
}

} // namespace

void thickenLimbByLeaf(Tree& tree, std::size_t limb)
{
    const auto order = limbOrder(tree);
    const LeafBeyond leaf(tree, order);
    const double all = leaf.whole(order.trunk);
    if (!(all > 0.0))
        return;
    const double stem_m = stemDiameter_m(tree);
    const auto pipes_m = [&](std::size_t i, double along_m) {
        return stem_m * std::sqrt(leaf.beyond(i, along_m) / all); // (K2)
    };
    const auto most_m = [&](std::size_t i) {
        const auto parent = order.parent[i];
        return parent == kNoLimb
                   ? stem_m
                   : kOfParent *
                         axisPoint(tree.limbs[parent], tree.limbs[i].attachedAt_m).diameter_m;
    };
    std::vector<std::size_t> path{limb};
    if (most_m(limb) < pipes_m(limb, 0.0))
        while (order.parent[path.back()] != kNoLimb)
            path.push_back(order.parent[path.back()]);
    for (auto i = path.rbegin(); i != path.rend(); ++i)
        thicken(tree.limbs[*i], most_m(*i), [&](double along_m) { return pipes_m(*i, along_m); });
}

void thickenByLeaf(Tree& tree, double stemDiameter_m)
{
    const auto order = limbOrder(tree);
    const LeafBeyond leaf(tree, order);
    const double all = leaf.whole(order.trunk);
    if (!(all > 0.0) || !(stemDiameter_m > 0.0))
        throw std::domain_error("thickenByLeaf: need leaf and a stem");
    for (const auto i : order.rootFirst) {
        auto& limb = tree.limbs[i];
        double most = stemDiameter_m;
        if (order.parent[i] != kNoLimb)
            most = kOfParent * axisPoint(tree.limbs[order.parent[i]], limb.attachedAt_m).diameter_m;
        double along = 0.0;
        for (std::size_t s = 0; s < limb.stations.size(); ++s) {
            if (s > 0)
                along += norm(limb.stations[s].position_m - limb.stations[s - 1].position_m);
            const double pipes = stemDiameter_m * std::sqrt(leaf.beyond(i, along) / all); // (K2)
            limb.stations[s].diameter_m = std::min(most, std::max(kTip_m, pipes));
        }
    }
    tree.limbs[order.trunk].stations.front().diameter_m = kButtSwell * stemDiameter_m;
}

} // namespace model::sketch
