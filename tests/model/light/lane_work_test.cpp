#include "model/light/lane_work.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

using namespace model::light;

namespace {

BeamAxes slanting()
{
    return {{0.48F, 0.36F, 0.8F}, {-0.6F, 0.8F, 0.0F}, {-0.64F, -0.48F, 0.6F}};
}

Pack somePoints(std::mt19937& random)
{
    std::uniform_real_distribution<float> place(-3.0F, 3.0F);
    Pack pack;
    pack.count = kLanes;
    for (std::size_t i = 0; i < kLanes; ++i) {
        pack.x[i] = place(random);
        pack.y[i] = place(random);
    }
    return pack;
}

EightCapsules someCapsules(std::mt19937& random)
{
    std::uniform_real_distribution<float> place(-2.0F, 2.0F);
    EightCapsules eight;
    for (std::size_t i = 0; i < kLanes; ++i) {
        const float x = place(random);
        const float y = place(random);
        const float z = place(random);
        eight.ax[i] = 2.0F + place(random);
        eight.ay[i] = 2.0F + place(random);
        eight.az[i] = 4.0F + place(random);
        eight.bx[i] = eight.ax[i] + x;
        eight.by[i] = eight.ay[i] + y;
        eight.bz[i] = eight.az[i] + z;
        eight.radius[i] = 0.9F;
        eight.perLength[i] = 1.0F / std::sqrt(x * x + y * y + z * z);
    }
    return eight;
}

struct Answer {
    Lanes path{};
    Lanes wood{};
    Lanes share{};
    Lanes without{};
    Lanes only{};
    std::size_t rows{};
};

Answer answer(const LaneWork& work, const Pack& pack, const EightCapsules& capsules)
{
    AimedPack seen;
    work.aimPack(pack, slanting(), seen);
    EightOutlines outlines;
    work.outline(capsules, slanting(), outlines);
    std::vector<Capsule> bodies;
    std::vector<BodyName> names;
    for (std::size_t i = 0; i < kLanes; ++i) {
        bodies.push_back({capsules.ax[i], capsules.ay[i], capsules.az[i],
                          capsules.bx[i] - capsules.ax[i], capsules.by[i] - capsules.ay[i],
                          capsules.bz[i] - capsules.az[i], capsules.radius[i],
                          capsules.perLength[i]});
        names.push_back({1.0F, static_cast<std::int32_t>(i)});
    }
    std::vector<Crossing> slots(kLanes + 1);
    CrossingRows rows{slots.data() + 1};
    const EightMet met{&outlines, 0};
    work.crossCapsules({&met, 1}, {bodies.data(), names.data()}, seen, slanting(), rows);
    const std::size_t count = rows.count;
    Answer result;
    result.rows = count;
    std::vector<Lanes> scratch(scratchLanes(count, 1));
    const float layer = 1.0F;
    const Rows found{slots.data() + 1, count, {&layer, 1}, scratch.data()};
    work.pathAndWood(found, result.path, result.wood);
    work.through(result.path, result.wood, 0.4F, result.share);
    work.limbShares(found, {2, 5}, 0.4F, result.without, result.only);
    return result;
}

} // namespace

// Law: whichever processor the lanes were compiled for, they say the same. Fused multiplication
// rounds once less, which a ray that grazes a body feels most.
TEST(LaneWork, SaysTheSameOnEveryProcessor)
{
    std::mt19937 random(5);
    int met = 0;
    for (int i = 0; i < 500; ++i) {
        const auto pack = somePoints(random);
        const auto capsules = someCapsules(random);
        const Answer plain = answer(kPlainLanes, pack, capsules);
        const Answer here = answer(laneWork(), pack, capsules);
        EXPECT_EQ(plain.rows, here.rows);
        for (std::size_t lane = 0; lane < kLanes; ++lane) {
            EXPECT_NEAR(plain.path[lane], here.path[lane], 0.005F);
            EXPECT_EQ(plain.wood[lane], here.wood[lane]);
            EXPECT_NEAR(plain.share[lane], here.share[lane], 0.002F);
            EXPECT_NEAR(plain.without[lane], here.without[lane], 0.002F);
            EXPECT_NEAR(plain.only[lane], here.only[lane], 0.002F);
            met += plain.path[lane] > 0.0F ? 1 : 0;
        }
    }
    EXPECT_GT(met, 500);
}
