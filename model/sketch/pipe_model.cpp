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

/// The pipe model (K2): wood whose section is in proportion to the leaf beyond it.
class Pipes {
public:
    Pipes(const Tree& tree, const LimbOrder& order, double stem_m)
        : order_(order), leaf_(tree, order), stem_m_(stem_m)
    {
    }

    [[nodiscard]] bool hasLeaf() const { return leaf_.whole(order_.trunk) > 0.0; }
    /// Of a limb, so far along it.
    [[nodiscard]] double diameter_m(std::size_t limb, double along_m) const
    {
        return stem_m_ * std::sqrt(leaf_.beyond(limb, along_m) / leaf_.whole(order_.trunk));
    }
    /// The most that a limb may be, by the wood that it grows from as that is now.
    [[nodiscard]] double most_m(const Tree& tree, std::size_t limb) const
    {
        const auto parent = order_.parent[limb];
        return parent == kNoLimb
                   ? stem_m_
                   : kOfParent *
                         axisPoint(tree.limbs[parent], tree.limbs[limb].attachedAt_m).diameter_m;
    }

private:
    const LimbOrder& order_;
    LeafBeyond leaf_;
    double stem_m_;
};

/// How far along the limb each station is, m.
std::vector<double> along_m(const Limb& limb)
{
    std::vector<double> all{0.0};
    for (std::size_t s = 1; s < limb.stations.size(); ++s)
        all.push_back(all.back() +
                      norm(limb.stations[s].position_m - limb.stations[s - 1].position_m));
    return all;
}

/// Makes a guessed limb as thick as the leaf beyond asks for; nowhere thinner than it was.
void thicken(Tree& tree, std::size_t limb, const Pipes& pipes)
{
    auto& drawn = tree.limbs[limb];
    if (drawn.measured != Measured::guessed)
        return;
    const double most = pipes.most_m(tree, limb);
    const auto along = along_m(drawn);
    for (std::size_t s = 0; s < along.size(); ++s) {
        const bool isTaped = !drawn.parent && (s == 0 || along[s - 1] < kBreastHeight_m);
        auto& diameter_m = drawn.stations[s].diameter_m;
        if (!isTaped)
            diameter_m = std::max(diameter_m, std::min(most, pipes.diameter_m(limb, along[s])));
    }
}

} // namespace

void thickenLimbByLeaf(Tree& tree, std::size_t limb)
{
    const auto order = limbOrder(tree);
    const Pipes pipes(tree, order, stemDiameter_m(tree));
    if (!pipes.hasLeaf())
        return;
    std::vector<std::size_t> path{limb};
    if (pipes.most_m(tree, limb) < pipes.diameter_m(limb, 0.0))
        while (order.parent[path.back()] != kNoLimb)
            path.push_back(order.parent[path.back()]);
    for (auto i = path.rbegin(); i != path.rend(); ++i)
        thicken(tree, *i, pipes);
}

void thickenByLeaf(Tree& tree, double stemDiameter_m)
{
    const auto order = limbOrder(tree);
    const Pipes pipes(tree, order, stemDiameter_m);
    if (!pipes.hasLeaf() || !(stemDiameter_m > 0.0))
        throw std::domain_error("thickenByLeaf: need leaf and a stem");
    for (const auto i : order.rootFirst) {
        const double most = pipes.most_m(tree, i);
        const auto along = along_m(tree.limbs[i]);
        for (std::size_t s = 0; s < along.size(); ++s)
            tree.limbs[i].stations[s].diameter_m =
                std::min(most, std::max(kTip_m, pipes.diameter_m(i, along[s])));
    }
    tree.limbs[order.trunk].stations.front().diameter_m = kButtSwell * stemDiameter_m;
}

} // namespace model::sketch
