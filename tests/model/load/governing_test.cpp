#include "model/load/governing.hpp"
#include "tests/model/load/samples.hpp"

#include <gtest/gtest.h>

namespace model::load {
namespace {

/// What is asked of the start of every piece that is checked: f(limb, piece, utilisation, bound).
template <typename Told>
void atEveryStart(const LoadCase& load, Told told)
{
    for (std::size_t limb = 0; limb < load.limbs.size(); ++limb)
        walkToBase(load, limb,
                   [&](std::size_t i, const Weight& weight, const DragSums& drag,
                       const PerBearing& share) {
                       const auto& piece = load.limbs[limb].pieces[i];
                       if (piece.thick_m < kLeastChecked_m && i > 0)
                           return;
                       const double strength = load.greenMor_Pa * piece.factorAtStart;
                       told(limb, i, worstStress(piece, weight, drag, share).stress_Pa / strength,
                            stressBound_Pa(piece, weight, drag, share) / strength);
                   });
}

LoadCase someTree(unsigned seed, double gust_m_s)
{
    Tree tree = spreading(seed, 5, 4, 0.3);
    Defect defect;
    defect.kind = seed % 2 == 0 ? DefectKind::cavity : DefectKind::openCavity;
    defect.at_m = 0.4;
    defect.residualWall_m = 0.01;
    tree.limbs[tree.limbs.size() / 2].defects.push_back(defect);
    if (seed % 3 == 0)
        tree.limbs.front().defects.push_back({DefectKind::crack, 0.4, {}, {}, {}, "", {}});
    return loadCase(tree, foliate(tree, redMaple()), redMaple(), kSeaside, Exposure::scattered,
                    {.gust_m_s = gust_m_s, .inFruit = true});
}

// Law: a bound is never less than what it bounds, and near enough to it to be of use.
TEST(StressBound, IsNeverLessThanTheStressAndSeldomMuchMore)
{
    std::size_t asked = 0;
    std::size_t near = 0;
    for (unsigned seed = 0; seed < 20; ++seed)
        for (const double gust : {0.0, 8.0, 35.0})
            atEveryStart(someTree(seed, gust),
                         [&](std::size_t, std::size_t, double utilisation, double bound) {
                             EXPECT_GE(bound, utilisation);
                             ++asked;
                             near += bound <= 1.2 * utilisation ? 1 : 0;
                         });
    EXPECT_GT(asked, 10000U);
    EXPECT_GT(static_cast<double>(near), 0.9 * static_cast<double>(asked));
}

// Brute force: every start of every piece, none left out.
TEST(Governing, IsNeverLessThanAtTheStartOfAnyPiece)
{
    for (unsigned seed = 0; seed < 20; ++seed) {
        const auto load = someTree(seed, 30.0);
        std::vector<double> sound(load.limbs.size());
        std::vector<double> broken(load.limbs.size());
        atEveryStart(load, [&](std::size_t limb, std::size_t i, double utilisation, double) {
            auto& most = load.limbs[limb].pieces[i].hasStrength ? sound[limb] : broken[limb];
            most = std::max(most, utilisation);
        });
        for (std::size_t limb = 0; limb < load.limbs.size(); ++limb) {
            const auto worst = governing(load, limb);
            EXPECT_EQ(worst.hasStrength, broken[limb] == 0.0);
            if (!worst.hasStrength)
                EXPECT_DOUBLE_EQ(worst.utilisation, broken[limb]);
            else if (worst.along_m == 0.0)
                EXPECT_DOUBLE_EQ(worst.utilisation, sound[limb]);
            else
                EXPECT_GT(worst.utilisation, sound[limb]);
        }
    }
}

} // namespace
} // namespace model::load
