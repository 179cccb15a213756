#include "model/advice/prune.hpp"
#include "model/crown/foliage_study.hpp"
#include "model/load/load_study.hpp"
#include "model/sketch/reshape.hpp"
#include "tests/model/load/samples.hpp"

#include <gtest/gtest.h>

namespace model::load {
namespace {

constexpr double kRounding = 1e-12;

void expectSame(const LimbLoad& a, const LimbLoad& b, const std::string& where)
{
    const auto same = [&where](double x, double y) {
        EXPECT_NEAR(x, y, kRounding * std::max(1.0, std::abs(y))) << where;
    };
    EXPECT_EQ(a.limb, b.limb) << where;
    EXPECT_EQ(a.hasStrength, b.hasStrength) << where;
    same(a.mass_kg, b.mass_kg);
    same(a.wind_N, b.wind_N);
    same(a.governingAt_m, b.governingAt_m);
    same(a.governingBearing_deg, b.governingBearing_deg);
    same(a.moment_Nm, b.moment_Nm);
    same(a.torsion_Nm, b.torsion_Nm);
    same(a.stress_Pa, b.stress_Pa);
    same(a.utilisation, b.utilisation);
}

void expectSame(const TreeLoad& a, const TreeLoad& b, const std::string& where)
{
    ASSERT_EQ(a.limbs.size(), b.limbs.size()) << where;
    for (std::size_t i = 0; i < a.limbs.size(); ++i)
        expectSame(a.limbs[i], b.limbs[i], where + " limb " + std::to_string(i));
    EXPECT_NEAR(a.baseMoment_Nm, b.baseMoment_Nm, kRounding * b.baseMoment_Nm) << where;
    EXPECT_NEAR(a.mass_kg, b.mass_kg, kRounding * b.mass_kg) << where;
    EXPECT_NEAR(a.gustAtTop_m_s, b.gustAtTop_m_s, kRounding * b.gustAtTop_m_s) << where;
}

/// One thing that a gardener may do to the drawing, by chance.
Tree changed(const Tree& tree, std::mt19937& random)
{
    const auto pick = [&random](std::size_t count) { return random() % count; };
    const auto& limb = tree.limbs[pick(tree.limbs.size())];
    const Vec3 off{0.01 * static_cast<double>(pick(60)) - 0.3,
                   0.01 * static_cast<double>(pick(60)) - 0.3,
                   0.01 * static_cast<double>(pick(60)) - 0.3};
    const auto station = 1 + pick(limb.stations.size() - 1);
    switch (pick(9)) {
    case 0:
        return limb.parent
                   ? sketch::slideUnion(tree, limb.id, limb.stations.front().position_m + off)
                   : tree;
    case 1:
        return sketch::setDiameter(tree, limb.id, station,
                                   0.04 + 0.001 * static_cast<double>(pick(60)));
    case 2:
        return limb.parent && tree.limbs.size() > 8 ? sketch::removeLimb(tree, limb.id) : tree;
    case 3:
        return advice::afterCut(tree, {CutKind::thinning, limb.id, 0.0, std::nullopt, 0.2, {}});
    case 4: { // another limb, first in the list
        Tree grown = tree;
        const auto at = axisPoint(tree.limbs.front(), 2.5).position_m;
        grown.limbs.insert(grown.limbs.begin(),
                           leafy(growing(straight("new" + std::to_string(random()), at,
                                                  at + Vec3{1.0, 0.5, 1.0} + off, 0.08, 0.03),
                                         tree.limbs[limbOrder(tree).trunk].id, 2.5),
                                 0.4, 0.5));
        return grown;
    }
    case 5: {
        Tree ill = tree;
        Defect dead;
        dead.kind = DefectKind::dead;
        dead.at_m = 0.5;
        ill.limbs[pick(tree.limbs.size())].defects = {dead};
        return ill;
    }
    default:
        return sketch::bendLimb(tree, limb.id, station, limb.stations[station].position_m + off);
    }
}

// Law: whatever was drawn before, the loads are those of the drawing as it is.
TEST(LoadStudy, AnswersAsIfFromScratchWhateverIsDrawn)
{
    for (const unsigned seed : {21U, 22U, 23U}) {
        std::mt19937 random(seed);
        auto tree = spreading(seed, 6, 3, seed == 22U ? 0.8 : 0.0);
        const auto foliation = foliate(tree, redMaple());
        const Conditions windy{.gust_m_s = 28.0, .glaze_m = seed == 23U ? 0.005 : 0.0};
        LoadStudy study(tree, foliation, redMaple(), kSeaside, Exposure::scattered, windy);
        for (int step = 0; step < 40; ++step) {
            tree = changed(tree, random);
            expectSame(study.redraw(tree, foliation),
                       treeLoad(tree, foliation, redMaple(), kSeaside, Exposure::scattered, windy),
                       "seed " + std::to_string(seed) + " step " + std::to_string(step));
        }
    }
}

// The same, as a drawing does it: a moved limb changes how much leaf the crown bears.
TEST(LoadStudy, FollowsTheLeafThatTheDrawingBears)
{
    std::mt19937 random(5);
    auto tree = spreading(31, 5, 3);
    const Conditions windy{.gust_m_s = 28.0, .inFruit = false, .inRain = true, .glaze_m = 0.002};
    LoadStudy study(tree, foliate(tree, redMaple()), redMaple(), kSeaside, Exposure::builtUp,
                    windy);
    for (int step = 0; step < 10; ++step) {
        tree = changed(tree, random);
        const auto foliation = foliate(tree, redMaple());
        expectSame(study.redraw(tree, foliation),
                   treeLoad(tree, foliation, redMaple(), kSeaside, Exposure::builtUp, windy),
                   "step " + std::to_string(step));
    }
}

// Law: the leaf of the moved drawing, without what light asks for. Unions of polygons by
// Boost.Geometry round to a grid, hence 1e-6.
TEST(FoliageStudy, AgreesWithTheWholeDrawing)
{
    std::mt19937 random(7);
    auto tree = spreading(34, 5, 3, 0.5);
    FoliageStudy study(redMaple());
    for (int step = 0; step < 25; ++step) {
        const auto whole = foliate(tree, redMaple());
        const auto kept = study.redraw(tree);
        EXPECT_NEAR(kept.crownArea_m2, whole.crownArea_m2, 1e-6 * whole.crownArea_m2) << step;
        EXPECT_NEAR(kept.outlineArea_m2, whole.outlineArea_m2, 1e-9 * whole.outlineArea_m2) << step;
        EXPECT_NEAR(kept.leafArea_m2, whole.leafArea_m2, 1e-6 * whole.leafArea_m2) << step;
        EXPECT_NEAR(kept.leafPerSharingVolume_1_m, whole.leafPerSharingVolume_1_m,
                    1e-6 * whole.leafPerSharingVolume_1_m)
            << step;
        tree = changed(tree, random);
    }
}

// Law: stations drawn on a straight stretch change nothing of what the crown covers on plan.
TEST(FoliageStudy, HeedsNoStationsBetween)
{
    auto tree = spreading(35, 4, 2);
    const auto coarse = foliate(tree, redMaple());
    for (auto& limb : tree.limbs) {
        std::vector<Station> stations{limb.stations.front()};
        for (std::size_t s = 1; s < limb.stations.size(); ++s)
            for (const double t : {0.25, 0.5, 1.0}) {
                const auto& a = limb.stations[s - 1];
                const auto& b = limb.stations[s];
                stations.push_back({between(a.position_m, b.position_m, t),
                                    a.diameter_m + t * (b.diameter_m - a.diameter_m),
                                    {}});
            }
        limb.stations = stations;
    }
    const auto fine = foliate(tree, redMaple());
    EXPECT_NEAR(fine.crownArea_m2, coarse.crownArea_m2, 1e-6 * coarse.crownArea_m2);
    EXPECT_NEAR(fine.leafArea_m2, coarse.leafArea_m2, 1e-6 * coarse.leafArea_m2);
}

TEST(LoadStudy, OfTheSameDrawingStays)
{
    const auto tree = spreading(32, 5, 3);
    const auto foliation = foliate(tree, redMaple());
    LoadStudy study(tree, foliation, redMaple(), kSeaside, Exposure::open, {.gust_m_s = 20.0});
    const auto before = study.load();
    expectSame(study.redraw(tree, foliation), before, "again");
}

TEST(LoadStudy, RefusesWhatTreeLoadRefuses)
{
    const auto tree = spreading(33, 3, 2);
    const auto foliation = foliate(tree, redMaple());
    EXPECT_THROW(
        LoadStudy(tree, foliation, redMaple(), kSeaside, Exposure::open, {.gust_m_s = -1.0}),
        std::domain_error);
    LoadStudy study(tree, foliation, redMaple(), kSeaside, Exposure::open, {.gust_m_s = 20.0});
    auto rootless = tree;
    rootless.limbs.front().parent = "nobody";
    EXPECT_THROW((void)study.redraw(rootless, foliation), std::domain_error);
    EXPECT_EQ(study.redraw(tree, foliation).limbs.size(), tree.limbs.size());
}

} // namespace
} // namespace model::load
