#include "model/load/elastic_tree.hpp"

#include "model/crown/foliage.hpp"
#include "model/load/stiffness.hpp"
#include "model/load/strength.hpp"

#include <algorithm>
#include <cmath>
#include <span>
#include <stdexcept>

namespace model::load {
namespace {

constexpr double kSamePlace_m = 1e-5;

/// The two halves of a piece, each with its wood and half of what is spread along it.
PieceWeight halves(const Piece& piece, double spread_kg, double wood_kg_m3)
{
    const double half = piece.length_m / 2.0;
    const double middle = 0.5 * (piece.thick_m + piece.thin_m);
    const auto part = [&](double thick, double thin, double start, double& mass, double& at) {
        const Frustum wood = frustum(thick, thin, half);
        const double wood_kg = wood.volume_m3 * wood_kg_m3;
        mass = wood_kg + spread_kg / 2.0;
        at = start + (wood_kg * wood.centre_m + spread_kg / 2.0 * half / 2.0) / mass;
    };
    PieceWeight weight;
    part(piece.thick_m, middle, 0.0, weight.inner_kg, weight.inner_m);
    part(middle, piece.thin_m, half, weight.outer_kg, weight.outer_m);
    return weight;
}

template <typename Spread>
TreeWeight weigh(const std::vector<LimbPieces>& limbs, const Species& species, Spread spread_kg)
{
    TreeWeight all;
    all.reserve(limbs.size());
    for (const auto& cut : limbs) {
        auto& limb = all.emplace_back();
        limb.reserve(cut.pieces.size());
        for (const auto& piece : cut.pieces)
            limb.push_back(halves(piece, spread_kg(piece), species.wood.limbDensity_kg_m3.value));
    }
    return all;
}

/// Of what hangs on each limb and beyond for a while, the share that is fruit.
std::vector<double> fruitShares(const LimbOrder& order, const std::vector<LimbPieces>& limbs)
{
    std::vector<double> fruit(limbs.size());
    std::vector<double> all(limbs.size());
    for (auto limb = order.rootFirst.rbegin(); limb != order.rootFirst.rend(); ++limb) {
        const auto& cut = limbs[*limb];
        fruit[*limb] += cut.fruit_kg;
        all[*limb] += cut.fruit_kg + cut.rain_kg + cut.ice_kg;
        if (const auto parent = order.parent[*limb]; parent != kNoLimb) {
            fruit[parent] += fruit[*limb];
            all[parent] += all[*limb];
        }
    }
    for (std::size_t i = 0; i < fruit.size(); ++i)
        fruit[i] = all[i] > 0.0 ? fruit[i] / all[i] : 0.0;
    return fruit;
}

} // namespace

std::vector<LimbPieces> cutLimbs(const Tree& tree, const LimbOrder& order,
                                 const Foliation& foliation, const Species& species,
                                 const Conditions& conditions)
{
    const Cutting cutting{tree, order, foliation, species, conditions};
    const auto bodies = leafyBodies(tree);
    const auto onDeadWood = growsFromDeadWood(tree, order);
    std::vector<LimbPieces> limbs;
    limbs.reserve(tree.limbs.size());
    for (std::size_t i = 0; i < tree.limbs.size(); ++i) {
        const auto own = std::ranges::equal_range(bodies, i, {}, &LeafyBody::limb);
        limbs.push_back(cutLimb(cutting, i, std::span(own.begin(), own.end()),
                                aspectRatio(tree, order, i), onDeadWood[i]));
    }
    return limbs;
}

ElasticTree elasticTree(const Tree& tree, const LimbOrder& order,
                        const std::vector<LimbPieces>& limbs, const Species& species)
{
    if (!(species.wood.greenMoe_Pa.value > 0.0))
        throw std::domain_error("elasticTree: the species' wood needs a stiffness");
    ElasticTree elastic{.order = order, .limbs = limbs, .stiffness_Pa = {}};
    const auto fruit = fruitShares(order, limbs);
    for (std::size_t limb = 0; limb < limbs.size(); ++limb) {
        const double creep = 1.0 + (kCreep - 1.0) * fruit[limb]; // (L28)
        elastic.stiffness_Pa.push_back(limbStiffness_Pa(species, order.parent[limb] == kNoLimb) /
                                       creep);
        const auto& pieces = limbs[limb].pieces;
        for (const auto& prop : tree.limbs[limb].props) {
            const auto beyond =
                std::ranges::lower_bound(pieces, prop.at_m - kSamePlace_m, {}, &Piece::at_m);
            if (beyond != pieces.begin()) // a prop right under the union bears nothing
                elastic.props.push_back(
                    {limb, static_cast<std::size_t>(beyond - pieces.begin()) - 1});
        }
    }
    return elastic;
}

TreeWeight hungWeight(const std::vector<LimbPieces>& limbs, const Species& species)
{
    return weigh(limbs, species, [](const Piece& piece) {
        return piece.leafy_kg + piece.fruit_kg + piece.rain_kg + piece.ice_kg;
    });
}

TreeWeight drawnWeight(const std::vector<LimbPieces>& limbs, const Species& species)
{
    const auto perArea = leafyMassPerArea(species);
    return weigh(limbs, species, [&](const Piece& piece) {
        return piece.leaf_m2 * (perArea.leaf_kg + perArea.twig_kg);
    });
}

} // namespace model::load
