#include "model/light/beam.hpp"
#include "model/light/sun.hpp"
#include "tests/outside/outside_check.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

using namespace model;
using namespace model::light;

namespace {

/// A tree of random curtains over and around a square of ground; some hang, some are balls, some
/// stand upright, and a few are wood.
Canopy randomTree(std::mt19937& random, int bodies, int densities)
{
    std::uniform_real_distribution<double> unit(0.0, 1.0);
    const auto spread = [&](double low, double high) { return low + (high - low) * unit(random); };
    Canopy tree;
    for (int i = 0; i < bodies; ++i) {
        const Vec3 a{spread(-6, 6), spread(-6, 6), spread(2, 9)};
        Vec3 b = a + Vec3{spread(-2, 2), spread(-2, 2), spread(-1, 1)};
        if (i % 7 == 3)
            b = a;
        if (i % 7 == 5)
            b = a + Vec3{0.0, 0.0, 1.5};
        const double hang = i % 3 == 0 ? spread(0.2, 1.5) : 0.0;
        const Curtain solid{a, b, spread(0.2, 1.0), hang};
        if (i % 11 == 10)
            tree.wood.push_back({Curtain{a, b, 0.1, 0.0}, 0, {}});
        else
            tree.leaves.push_back({solid, 0.6 + 0.4 * (i % densities), 0, {}});
    }
    for (auto& body : tree.leaves)
        body.bounds = {centre(body.solid), 20.0};
    for (auto& body : tree.wood)
        body.bounds = {centre(body.solid), 20.0};
    tree.bounds = {{0, 0, 5}, 40.0};
    return tree;
}

} // namespace

class Beams : public testing::TestWithParam<int> {};

// Brute force: ray by ray through leafyPath_m(), which takes no short cuts but bounding balls. In
// float a chord that grazes a body may differ by millimetres.
INSTANTIATE_TEST_SUITE_P(Densities, Beams, testing::Values(1, 2, 3));

TEST_P(Beams, GiveEachRayThePathThatItHasAlone)
{
    std::mt19937 random(7);
    std::uniform_real_distribution<double> unit(0.0, 1.0);
    const auto tree = randomTree(random, 60, GetParam());
    std::vector<Vec3> points;
    for (int i = 0; i < 101; ++i)
        points.push_back({16 * unit(random) - 8, 16 * unit(random) - 8, 4.0 * unit(random)});
    const Vec3 origin{1.0, -2.0, 0.5};
    TreeBeam beam(tree, origin);
    int met = 0;
    double worst = 0.0;
    for (int d = 0; d < 40; ++d) {
        const Vec3 towards =
            d == 0 ? Vec3{0, 0, 1} : towardsSun({5.0 + 85.0 * unit(random), 360 * unit(random), 1});
        const auto frame = beamFrame(towards);
        beam.aim(frame);
        for (const auto& pack : packed(points, origin)) {
            Crossings crossings;
            beam.crossings(aimed(pack, frame), crossings);
            Lanes path;
            Lanes wood;
            leafyPath(crossings.from(0), beam, path, wood);
            for (std::size_t lane = 0; lane < pack.count; ++lane) {
                const auto alone = leafyPath_m(tree, points[pack.point[lane]], towards);
                if (!alone) {
                    EXPECT_EQ(wood[lane], 1.0F);
                    continue;
                }
                EXPECT_EQ(wood[lane], 0.0F);
                worst = std::max(worst, std::abs(path[lane] - *alone));
                EXPECT_NEAR(path[lane], *alone, 0.01) << d;
                met += *alone > 0.0 ? 1 : 0;
            }
        }
    }
    OUTSIDE_NEAR(worst, 0.0, 0.01) << "largest error of a path, m";
    EXPECT_GT(met, 1000);
}

// Closed form: e^-x, to float's precision, and 0 behind wood.
TEST(Through, IsTheExponential)
{
    for (float x = 0.0F; x < 30.0F; x += 0.37F) {
        Lanes share;
        through(allLanes(x), Lanes{0.0F, 1.0F}, 0.5F, share);
        const double exact = std::exp(-0.5 * static_cast<double>(x));
        OUTSIDE_NEAR(share[0] / exact, 1.0, 3e-6) << x;
        EXPECT_EQ(share[1], 0.0F);
    }
    Lanes dark;
    through(allLanes(1e6F), Lanes{}, 1.0F, dark);
    EXPECT_LT(dark[0], 1e-30F);
}

// Law: a tree is what one limb holds and what all others hold. Each alone lets through no less
// than both, together no more than both (they may overlap), and a limb that no ray meets takes
// nothing.
TEST(LimbShares, AddUpToTheTree)
{
    std::mt19937 random(11);
    auto tree = randomTree(random, 150, 2);
    for (std::size_t i = 0; i < tree.leaves.size(); ++i)
        tree.leaves[i].limb = i % 5;
    TreeBeam beam(tree, {});
    const auto frame = beamFrame(towardsSun({50.0, 200.0, 1.0}));
    beam.aim(frame);
    const std::vector<Vec3> points{{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {1, 1, 0}};
    Crossings found;
    beam.crossings(aimed(packed(points, {}).front(), frame), found);
    const auto crossings = found.from(0);
    Lanes path;
    Lanes wood;
    leafyPath(crossings, beam, path, wood);
    Lanes all;
    through(path, wood, 0.3F, all);
    Lanes without;
    Lanes only;
    limbShares(crossings, beam, {1, 3}, 0.3F, without, only);
    Lanes untouched;
    Lanes none;
    limbShares(crossings, beam, {7, 9}, 0.3F, untouched, none);
    EXPECT_TRUE(std::ranges::any_of(only, [](float share) { return share < 0.9F; }));
    for (std::size_t i = 0; i < kLanes; ++i) {
        EXPECT_GE(without[i], all[i] - 1e-6F);
        EXPECT_GE(only[i], all[i] - 1e-6F);
        EXPECT_LE(without[i] * only[i], all[i] + 1e-6F);
        EXPECT_EQ(none[i], 1.0F);
        EXPECT_EQ(untouched[i], all[i]);
    }
}

// Law: every point is in exactly one lane that counts, and packs are compact.
TEST(Packed, PutsEveryPointInOnePack)
{
    std::vector<Vec3> points;
    for (int i = 0; i < 203; ++i)
        points.push_back({static_cast<double>(i % 17), static_cast<double>(i / 17), 0.0});
    std::vector<int> seen(points.size(), 0);
    for (const auto& pack : packed(points, {}))
        for (std::size_t lane = 0; lane < pack.count; ++lane) {
            ++seen[pack.point[lane]];
            EXPECT_LT(std::hypot(pack.x[lane] - pack.x[0], pack.y[lane] - pack.y[0]), 6.0F);
        }
    EXPECT_TRUE(std::ranges::all_of(seen, [](int times) { return times == 1; }));
}
