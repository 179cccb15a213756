#include "model/growth/grown.hpp"

#include "model/crown/foliage.hpp"
#include "model/growth/shoot_rate.hpp"
#include "tests/model/advice/limb_from.hpp"

#include <gtest/gtest.h>

namespace model::growth {
namespace {

Tree stemWithLimb(const Foliage& foliage)
{
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.3, {}}, {{0, 0, 5}, 0.1, {}}};
    auto limb = advice::limbFrom("limb", trunk, 3.0, {2.5, 0, 0.5}, 0.08);
    limb.foliage = foliage;
    Tree tree;
    tree.limbs = {trunk, limb};
    return tree;
}

double leafOf(const Tree& tree)
{
    Foliation unit;
    unit.leafPerSharingVolume_1_m = 1.0;
    return leafAreaByLimb_m2(tree, unit)[1];
}

// By hand: what hangs comes down by all that it grows, what was lifted from where it was lifted to.
TEST(Grown, BringsHangingShootsDownByTheirLength)
{
    const auto hanging =
        grown(stemWithLimb({0.5, 0.4, 1.0, {}, FoliageDensity::medium, 0.0, {}}), 0.3);
    EXPECT_DOUBLE_EQ(hanging.limbs[1].foliage->hanging_m, 1.3);
    const auto lifted =
        grown(stemWithLimb({0.5, 0.4, 1.0, 2.2, FoliageDensity::medium, 0.0, {}}), 0.3);
    EXPECT_DOUBLE_EQ(*lifted.limbs[1].foliage->hem_m, 1.9);
    EXPECT_DOUBLE_EQ(lifted.limbs[1].foliage->hanging_m, 1.0);
}

// Law: other twigs reach further with no more leaf, thinned before or not.
TEST(Grown, SpreadsTheSameLeafWider)
{
    for (const double thinned : {0.0, 0.2}) {
        const auto before = stemWithLimb({0.5, 0.6, 0.0, {}, FoliageDensity::dense, thinned, {}});
        const auto after = grown(before, 0.9);
        EXPECT_NEAR(after.limbs[1].foliage->radius_m, 0.6 + kUndersideShare * 0.9, 1e-12);
        EXPECT_NEAR(leafOf(after), leafOf(before), 1e-9 * leafOf(before));
    }
}

TEST(Grown, LeavesDeadAndBareLimbsAlone)
{
    auto tree = stemWithLimb({0.5, 0.6, 0.0, {}, FoliageDensity::dense, 0.0, {}});
    tree.limbs[1].defects.push_back({DefectKind::dead, 0.0, {}, {}, {}, {}, {}});
    EXPECT_EQ(grown(tree, 0.5), tree);
    tree.limbs[1].foliage.reset();
    EXPECT_EQ(grown(tree, 0.5), tree);
}

} // namespace
} // namespace model::growth
