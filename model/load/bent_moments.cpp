#include "model/load/bent_moments.hpp"

#include "model/constants.hpp"

namespace model::load {
namespace {

/// What bears beyond a place: mass, and mass times level place.
struct Beyond3 {
    double mass_kg{};
    double east_kgm{};
    double north_kgm{};
    void add(double mass, Vec3 at)
    {
        mass_kg += mass;
        east_kgm += mass * at.x;
        north_kgm += mass * at.y;
    }
    void add(const Beyond3& other)
    {
        mass_kg += other.mass_kg;
        east_kgm += other.east_kgm;
        north_kgm += other.north_kgm;
    }
    [[nodiscard]] Vec3 momentAbout(Vec3 p) const
    {
        return {-kGravity_m_s2 * (north_kgm - p.y * mass_kg),
                kGravity_m_s2 * (east_kgm - p.x * mass_kg), 0.0}; // (L19)
    }
};

/// A place along a bent piece: the parabola through its ends and middle.
Vec3 placeAlong(const BentShape::BentPiece& bent, double share)
{
    const double a = (1.0 - share) * (1.0 - 2.0 * share);
    const double b = 4.0 * share * (1.0 - share);
    const double c = share * (2.0 * share - 1.0);
    return a * bent.start_m + b * bent.middle_m + c * bent.end_m;
}

} // namespace

BentShape::BentPiece asDrawn(const Piece& piece)
{
    const Vec3 run = piece.length_m * piece.direction;
    return {piece.from_m, piece.from_m + 0.5 * run, piece.from_m + run, {}, {}};
}

BentShape drawnShape(const ElasticTree& tree)
{
    BentShape shape;
    shape.push_N.assign(tree.props.size(), 0.0);
    for (const auto& cut : tree.limbs) {
        auto& bent = shape.limbs.emplace_back();
        bent.reserve(cut.pieces.size());
        for (const auto& piece : cut.pieces)
            bent.push_back(asDrawn(piece));
    }
    return shape;
}

TreeSections momentsIn(const ElasticTree& tree, const BentShape& shape, const TreeWeight& weight)
{
    TreeSections moments;
    momentsIn(tree, shape, weight, moments);
    return moments;
}

void momentsIn(const ElasticTree& tree, const BentShape& shape, const TreeWeight& weight,
               TreeSections& moments)
{
    moments.resize(tree.limbs.size());
    std::vector<Beyond3> ofLimbs(tree.limbs.size());
    for (auto limb = tree.order.rootFirst.rbegin(); limb != tree.order.rootFirst.rend(); ++limb) {
        const auto& cut = tree.limbs[*limb];
        const auto& children = tree.order.children[*limb];
        moments[*limb].resize(cut.pieces.size());
        auto& sum = ofLimbs[*limb];
        std::size_t left = children.size();
        const auto takeChildrenAt = [&](std::size_t piece) {
            for (; left > 0 && cut.joinsAt[left - 1] == piece; --left)
                sum.add(ofLimbs[children[left - 1]]);
        };
        takeChildrenAt(cut.pieces.size());
        for (std::size_t i = cut.pieces.size(); i-- > 0;) {
            const auto& bent = shape.limbs[*limb][i];
            const auto& own = weight[*limb][i];
            const double length = cut.pieces[i].length_m;
            for (std::size_t prop = 0; prop < tree.props.size(); ++prop)
                if (tree.props[prop].limb == *limb && tree.props[prop].piece == i)
                    sum.add(-shape.push_N[prop] / kGravity_m_s2, bent.end_m);
            moments[*limb][i][2] = sum.momentAbout(bent.end_m);
            sum.add(own.outer_kg, placeAlong(bent, own.outer_m / length));
            moments[*limb][i][1] = sum.momentAbout(bent.middle_m);
            sum.add(own.inner_kg, placeAlong(bent, own.inner_m / length));
            moments[*limb][i][0] = sum.momentAbout(bent.start_m);
            takeChildrenAt(i);
        }
    }
}

} // namespace model::load
