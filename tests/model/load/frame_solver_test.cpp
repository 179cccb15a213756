#include "model/constants.hpp"
#include "model/load/load_case.hpp"
#include "tests/model/load/frame_solver.hpp"
#include "tests/model/load/samples.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <iostream>

namespace model::load {
namespace {

constexpr double kFrameShare = 0.01;

// Closed form: the solver itself, on a bent bar: 2 m east, then 1 m north, 100 N down at the end
// and 50 N north at the bend.
TEST(FrameSolver, MeetsAFrameWorkedByHand)
{
    Frame frame;
    frame.nodes_m = {{0, 0, 0}, {2, 0, 0}, {2, 1, 0}};
    frame.loads = {{}, {{0, 50, 0}, {}}, {{0, 0, -100}, {}}};
    frame.bars = {{0, 1}, {1, 2}};
    const auto ends = solveFrame(frame, "bend");
    OUTSIDE_NEAR(ends[0].from.bending_Nm, std::hypot(200.0, 100.0), 0.02);
    OUTSIDE_NEAR(ends[0].to.bending_Nm, 0.0, 0.02);
    OUTSIDE_NEAR(ends[0].from.torsion_Nm, 100.0, 0.02);
    OUTSIDE_NEAR(ends[1].from.bending_Nm, 100.0, 0.02);
    OUTSIDE_NEAR(ends[1].from.torsion_Nm, 0.0, 0.02);
}

/// A tree's limbs as a frame: a node at the start of every piece and one in its middle, where its
/// weight and drag are brought together with the moment that this takes.
struct TreeFrame {
    Frame frame{};
    std::vector<std::vector<std::size_t>> starts{};   ///< node at the start of each piece, and tip
    std::vector<std::vector<std::size_t>> firstBar{}; ///< of the two bars of each piece
};

NodeLoad loadOn(const LoadCase& load, std::size_t limb, std::size_t i, std::size_t bearing,
                Vec3 middle)
{
    const auto& piece = load.limbs[limb].pieces[i];
    const auto weight = weightOf(piece, load.wood_kg_m3);
    const auto drag = dragOf(piece, load.wind.pieces[limb][i], bearing, 0.0);
    const Vec3 towards = blowsTowards(bearing);
    return {drag.force_N * towards - Vec3{0, 0, weight.mass_kg * kGravity_m_s2},
            momentAbout(weight, middle) + momentAbout(drag, towards, middle)};
}

TreeFrame asFrame(const LoadCase& load, std::size_t bearing)
{
    TreeFrame result;
    auto& frame = result.frame;
    result.starts.resize(load.limbs.size());
    result.firstBar.resize(load.limbs.size());
    const auto addNode = [&](Vec3 at, const NodeLoad& onIt) {
        frame.nodes_m.push_back(at);
        frame.loads.push_back(onIt);
        return frame.nodes_m.size() - 1;
    };
    for (const auto limb : load.order.rootFirst) {
        const auto parent = load.order.parent[limb];
        const auto& pieces = load.limbs[limb].pieces;
        std::size_t node = 0;
        if (parent == kNoLimb) {
            node = addNode(pieces.front().from_m, {});
        } else {
            const auto& children = load.order.children[parent];
            const auto child =
                static_cast<std::size_t>(std::ranges::find(children, limb) - children.begin());
            node = result.starts[parent][load.limbs[parent].joinsAt[child]];
        }
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            const auto& piece = pieces[i];
            const Vec3 middle = piece.from_m + piece.length_m / 2.0 * piece.direction;
            const auto inside = addNode(middle, loadOn(load, limb, i, bearing, middle));
            const auto end = addNode(piece.from_m + piece.length_m * piece.direction, {});
            result.starts[limb].push_back(node);
            result.firstBar[limb].push_back(frame.bars.size());
            frame.bars.push_back({node, inside});
            frame.bars.push_back({inside, end});
            node = end;
        }
        result.starts[limb].push_back(node);
    }
    return result;
}

/// Compares the moment at every section of every limb, and counts them.
void compare(const Tree& tree, double gust, std::size_t bearing, const std::string& name)
{
    const auto species = redMaple();
    const auto load = loadCase(tree, foliate(tree, species), species, kSeaside, Exposure::scattered,
                               {.gust_m_s = gust});
    const auto made = asFrame(load, bearing);
    const auto ends = solveFrame(made.frame, name);
    double largest = 0.0;
    int compared = 0;
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb) {
        const auto& cut = load.limbs[limb];
        const auto beyond = beyondPieces(load, limb, bearing);
        double base = 0.0;
        for (std::size_t i = 0; i < cut.pieces.size(); ++i) {
            Beyond alone = beyond[i];
            alone.share = 1.0; // the frame's forces are those before lee is taken off
            const auto asked = askedAt(cut.pieces[i], 0.0, alone, {bearing, false}).forces;
            const double moment = std::hypot(asked.bending_Nm, asked.torsion_Nm);
            if (i == 0)
                base = moment;
            // Just below the section: with the laterals that join there.
            const auto bar = made.firstBar[limb][i];
            const auto& below = i == 0 ? ends[bar].from : ends[made.firstBar[limb][i - 1] + 1].to;
            const double solved = std::hypot(below.bending_Nm, below.torsion_Nm);
            OUTSIDE_NEAR(moment, solved, kFrameShare * std::max(solved, 0.01 * base))
                << tree.limbs[limb].id << " at " << cut.pieces[i].at_m;
            largest = std::max(largest, std::abs(moment - solved) / std::max(solved, 0.01 * base));
            ++compared;
            // Just above it, where nothing joins: bending and torsion each.
            if (std::ranges::find(cut.joinsAt, i) != cut.joinsAt.end())
                continue;
            const auto& above = ends[bar].from;
            OUTSIDE_NEAR(asked.bending_Nm, above.bending_Nm,
                         kFrameShare * std::max(moment, 0.01 * base));
            OUTSIDE_NEAR(std::abs(asked.torsion_Nm), above.torsion_Nm,
                         kFrameShare * std::max(moment, 0.01 * base));
        }
    }
    testing::Test::RecordProperty(name + " sections", compared);
    testing::Test::RecordProperty(name + " largest error, parts per million",
                                  static_cast<int>(1e6 * largest));
    std::cout << name << ": " << tree.limbs.size() << " limbs, " << compared
              << " sections, largest difference " << 100.0 * largest << " %\n";
}

// Outside: CalculiX 2.20, a general-purpose finite element program, on branched trees in space:
// 25 and 31 limbs, moments at both ends of every member and at every section between.
TEST(FrameSolver, FindsTheSameMomentsInStillAir)
{
    auto tree = spreading(21, 6, 3);
    for (auto& limb : tree.limbs)
        limb.fruit_kg = limb.parent ? 3.0 : 0.0;
    compare(tree, 0.0, 0, "still");
}

TEST(FrameSolver, FindsTheSameMomentsInWind)
{
    compare(spreading(22, 6, 4, 0.9), 30.0, 4, "wind");
}

} // namespace
} // namespace model::load
