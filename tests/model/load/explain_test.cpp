#include "model/load/drag.hpp"
#include "model/load/explain.hpp"
#include "model/load/strength.hpp"
#include "tests/model/load/samples.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace model::load {
namespace {

class Explained {
public:
    explicit Explained(std::vector<Step> steps) : steps_(std::move(steps)) {}
    [[nodiscard]] bool has(Quantity quantity) const
    {
        return std::ranges::find(steps_, quantity, &Step::quantity) != steps_.end();
    }
    [[nodiscard]] double operator[](Quantity quantity) const
    {
        const auto step = std::ranges::find(steps_, quantity, &Step::quantity);
        EXPECT_NE(step, steps_.end());
        return step == steps_.end() ? std::nan("") : step->value;
    }

private:
    std::vector<Step> steps_;
};

// Law: every figure of the chain follows from those before it, and its end is what treeLoad says.
TEST(Explain, LeadsFromTheWindToTheUtilisation)
{
    const auto tree = spreading(41, 5, 3);
    const auto species = redMaple();
    const auto foliation = foliate(tree, species);
    const Conditions wind{.gust_m_s = 27.0};
    const auto loads =
        treeLoad(tree, foliation, species, kSeaside, Exposure::scattered, wind).limbs;
    for (std::size_t limb = 0; limb < tree.limbs.size(); ++limb) {
        const Explained step(
            explain(tree, limb, foliation, species, kSeaside, Exposure::scattered, wind));
        using enum Quantity;
        EXPECT_NEAR(step[windForce],
                    dynamicPressure_Pa(step[airDensity], step[gustHere]) * step[dragCoefficient] *
                        step[outline],
                    1e-6 * step[windForce]);
        EXPECT_NEAR(step[windMoment], step[windForce] * step[windArm], 1e-6);
        EXPECT_NEAR(step[bendingStress], step[bendingMoment] / step[sectionModulus], 1.0);
        EXPECT_NEAR(step[principalStress], loads[limb].stress_Pa, 1e-6 * loads[limb].stress_Pa);
        EXPECT_NEAR(step[strength], step[clearWoodStrength] * step[limbFactor] * step[unionFactor],
                    1.0);
        EXPECT_NEAR(step[utilisation], step[principalStress] / step[strength], 1e-9);
        EXPECT_DOUBLE_EQ(step[utilisation], loads[limb].utilisation);
        EXPECT_DOUBLE_EQ(step[bendingMoment], loads[limb].moment_Nm);
        EXPECT_DOUBLE_EQ(step[weightMoment], loads[limb].weightMoment_Nm);
    }
}

TEST(Explain, SaysNothingOfWindInStillAirAndNothingOfUseForDeadWood)
{
    auto tree = spreading(42, 3, 1);
    Defect dead;
    dead.kind = DefectKind::dead;
    tree.limbs[1].defects.push_back(dead);
    const auto species = redMaple();
    const Explained step(explain(tree, 1, foliate(tree, species), species, kSeaside, Exposure::open,
                                 {.gust_m_s = 0.0}));
    EXPECT_FALSE(step.has(Quantity::windForce));
    EXPECT_FALSE(step.has(Quantity::utilisation));
    EXPECT_DOUBLE_EQ(step[Quantity::strength], 0.0);
    EXPECT_GT(step[Quantity::woodMass], 0.0);
}

TEST(Explain, RefusesALimbThatIsNotThere)
{
    const auto tree = spreading(43, 3, 1);
    const auto species = redMaple();
    EXPECT_THROW(
        (void)explain(tree, 99, foliate(tree, species), species, kSeaside, Exposure::open, {}),
        std::out_of_range);
}

} // namespace
} // namespace model::load
