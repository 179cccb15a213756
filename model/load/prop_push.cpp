#include "model/load/prop_push.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

namespace model::load {
namespace {

using Path = std::vector<std::pair<std::size_t, std::size_t>>; ///< limb and piece, tip first

/// The pieces between a prop's place and the foot of the stem.
Path pathTo(const ElasticTree& tree, const PropPlace& prop)
{
    Path path;
    std::size_t limb = prop.limb;
    std::size_t count = prop.piece + 1;
    while (true) {
        for (std::size_t i = count; i-- > 0;)
            path.emplace_back(limb, i);
        const auto parent = tree.order.parent[limb];
        if (parent == kNoLimb)
            return path;
        const auto& siblings = tree.order.children[parent];
        const auto child = std::ranges::find(siblings, limb) - siblings.begin();
        count = tree.limbs[parent].joinsAt[static_cast<std::size_t>(child)];
        limb = parent;
    }
}

Vec3 placeOf(const ElasticTree& tree, const PropPlace& prop)
{
    const auto& piece = tree.limbs[prop.limb].pieces[prop.piece];
    return piece.from_m + piece.length_m * piece.direction;
}

/// Moments of 1 N upwards at `from` at the sections of a piece.
Sections unitMoments(const Piece& piece, Vec3 from)
{
    Sections moments;
    for (std::size_t k = 0; k < 3; ++k) {
        const Vec3 at =
            piece.from_m + 0.5 * static_cast<double>(k) * piece.length_m * piece.direction;
        moments[k] = cross(from - at, {0.0, 0.0, 1.0});
    }
    return moments;
}

/// Virtual work of two sets of moments in one piece, by Simpson's rule (L30).
double work_Nm(const ElasticTree& tree, std::size_t limb, const Piece& piece, const Sections& one,
               const Sections& other)
{
    constexpr std::array kSimpson{1.0 / 6.0, 4.0 / 6.0, 1.0 / 6.0};
    double sum = 0.0;
    for (std::size_t k = 0; k < 3; ++k) {
        const double thick =
            piece.thick_m + 0.5 * static_cast<double>(k) * (piece.thin_m - piece.thick_m);
        const double twist = dot(one[k], piece.direction) * dot(other[k], piece.direction);
        sum += kSimpson[k] * piece.length_m *
               (dot(one[k], other[k]) + (tree.twistToBend - 1.0) * twist) /
               (tree.stiffness_Pa[limb] * std::numbers::pi / 64.0 * std::pow(thick, 4));
    }
    return sum;
}

} // namespace

std::vector<std::vector<double>> propGive(const ElasticTree& tree)
{
    const std::size_t count = tree.props.size();
    std::vector<std::vector<double>> give(count, std::vector<double>(count, 0.0));
    for (std::size_t i = 0; i < count; ++i) {
        const auto own = pathTo(tree, tree.props[i]);
        const Vec3 from = placeOf(tree, tree.props[i]);
        for (std::size_t j = i; j < count; ++j) {
            const auto others = pathTo(tree, tree.props[j]);
            const Vec3 other = placeOf(tree, tree.props[j]);
            for (const auto& [limb, i2] : own) {
                if (std::ranges::find(others, std::pair{limb, i2}) == others.end())
                    continue;
                const auto& piece = tree.limbs[limb].pieces[i2];
                give[i][j] +=
                    work_Nm(tree, limb, piece, unitMoments(piece, from), unitMoments(piece, other));
            }
            give[j][i] = give[i][j];
        }
    }
    return give;
}

std::vector<double> propRises_m(const ElasticTree& tree, const TreeSections& change_Nm)
{
    std::vector<double> rises;
    for (const auto& prop : tree.props) {
        double rise = 0.0;
        const Vec3 from = placeOf(tree, prop);
        for (const auto& [limb, i] : pathTo(tree, prop)) {
            const auto& piece = tree.limbs[limb].pieces[i];
            rise += work_Nm(tree, limb, piece, unitMoments(piece, from), change_Nm[limb][i]);
        }
        rises.push_back(rise);
    }
    return rises;
}

std::vector<double> pushesFor(const std::vector<std::vector<double>>& give,
                              const std::vector<double>& free_m)
{
    // Gauss-Seidel with each push kept from pulling: settles because give is symmetric and its
    // work is never negative.
    constexpr int kRounds = 500;
    std::vector<double> push(free_m.size(), 0.0);
    for (int round = 0; round < kRounds; ++round) {
        double changed = 0.0;
        for (std::size_t i = 0; i < push.size(); ++i) {
            double rise = free_m[i];
            for (std::size_t j = 0; j < push.size(); ++j)
                rise += give[i][j] * push[j];
            const double next = give[i][i] > 0.0 ? std::max(0.0, push[i] - rise / give[i][i]) : 0.0;
            changed = std::max(changed, std::abs(next - push[i]));
            push[i] = next;
        }
        if (changed < 1e-6)
            break;
    }
    return push;
}

} // namespace model::load
