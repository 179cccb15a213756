#include "model/diary/wound_closure.hpp"
#include "tests/outside/outside_check.hpp"

#include "tests/model/species/table_files.hpp"

#include <gtest/gtest.h>

namespace model::diary {
namespace {

using namespace std::chrono_literals;

const Place kIllinois{40.1, -88.2, 220.0, "America/Chicago"};

Tree woundedTree(double diameter_m, std::chrono::year_month_day made)
{
    Tree tree;
    Limb trunk;
    trunk.id = "trunk";
    trunk.stations = {{{0, 0, 0}, 0.3, {}}, {{0, 0, 6}, 0.1, {}}};
    tree.limbs = {trunk};
    Visit visit;
    visit.id = "v";
    visit.date = made;
    visit.wounds = {{"trunk", 2.0, diameter_m, {}, {}}};
    tree.visits = {visit};
    return tree;
}

const Species& species(const char* latin)
{
    return *findSpecies(shippedTables(), latin);
}

WoundState only(const Tree& tree, const Species& of, std::chrono::year_month_day date)
{
    const auto all = wounds(tree, of, kIllinois, date);
    EXPECT_EQ(all.size(), 1U);
    return all.at(0);
}

// Published: Neely 1979, Journal of Arboriculture 5: 135-140 (abstract): wounds 11/16 in wide
// closed in one season where the stem thickened much, 1/2 in where moderately, 3/8 in where
// modestly.
TEST(WoundClosure, ClosesInOneSeasonWhatNeelySawClose)
{
    const struct {
        const char* latin;
        double inches;
    } rows[] = {{"Acer saccharinum", 11.0 / 16.0},
                {"Quercus rubra", 1.0 / 2.0},
                {"Fagus grandifolia", 3.0 / 8.0}};
    for (const auto& row : rows) {
        const auto tree = woundedTree(row.inches * 0.0254, 2025y / 1 / 10);
        OUTSIDE_NEAR(only(tree, species(row.latin), 2026y / 1 / 10).open_m, 0.0, 1e-4) << row.latin;
        EXPECT_GT(only(tree, species(row.latin), 2025y / 6 / 1).open_m, 0.002) << row.latin;
    }
}

// Published: Nicolescu et al. 2013 (abstract): of 6 to 45 mm wounds on red oak 80 % had closed in
// three seasons and 88 % in five. Sizes are taken as evenly spread, which the abstract does not
// say: hence 5 points for three seasons. For five ours has closed them all: it knows no wounds that
// fail.
TEST(WoundClosure, ClosesAsManyWoundsOfRedOakInThreeSeasonsAsWereCounted)
{
    int closed = 0;
    for (int mm = 6; mm <= 45; ++mm)
        closed +=
            only(woundedTree(mm * 1e-3, 2020y / 1 / 10), species("Quercus rubra"), 2023y / 1 / 10)
                        .open_m <= 0.0
                ? 1
                : 0;
    OUTSIDE_NEAR(closed / 40.0, 0.80, 0.05);
}

// Published: Seifert et al. 2010, Trees 24: 797-808 (abstract), wild cherry: 1.3 mm of stub closed
// for each millimetre that the stem thickened. Ours says 17.5 mm a season for it, which a stem does
// that gains 13 mm a year in thickness: a cherry grown for timber.
TEST(WoundClosure, AgreesWithWildCherryOfTheTimberStand)
{
    const double stem_m = closesInASeason_m(Tree{}, species("Prunus avium")) / 1.3;
    OUTSIDE_WITHIN(stem_m, 0.008, 0.016);
}

// Law.
TEST(WoundClosure, TakesTwiceAsLongForTwiceTheWidth)
{
    const auto& oak = species("Quercus rubra");
    const auto narrow = only(woundedTree(0.04, 2020y / 1 / 10), oak, 2020y / 1 / 10);
    const auto wide = only(woundedTree(0.08, 2020y / 1 / 10), oak, 2020y / 1 / 10);
    ASSERT_TRUE(narrow.closes.middle && wide.closes.middle);
    EXPECT_LE(*narrow.closes.early, *narrow.closes.middle);
    EXPECT_LE(*narrow.closes.middle, *narrow.closes.late);
    // 3.15 and 6.30 seasons: in the fourth and the seventh summer.
    EXPECT_EQ(narrow.closes.middle->year(), 2023y);
    EXPECT_EQ(wide.closes.middle->year(), 2026y);
    EXPECT_FALSE(only(woundedTree(0.40, 2020y / 1 / 10), oak, 2020y / 1 / 10).closes.middle);
}

TEST(WoundClosure, ClosesNothingInWinterAndLittleOnWeakTrees)
{
    auto tree = woundedTree(0.05, 2024y / 11 / 20);
    const auto& maple = species("Acer saccharinum");
    EXPECT_NEAR(only(tree, maple, 2025y / 3 / 1).open_m, 0.05, 1e-9);
    tree.vigour = Vigour::stressed;
    EXPECT_DOUBLE_EQ(closesInASeason_m(tree, maple), kClosesSlowly_m);
}

TEST(WoundClosure, BelievesTheGardenerAndTellsWhatLingers)
{
    auto tree = woundedTree(0.02, 2020y / 1 / 10);
    const auto& oak = species("Quercus rubra");
    EXPECT_FALSE(only(tree, oak, 2022y / 1 / 10).lingers);
    EXPECT_TRUE(only(tree, oak, 2024y / 1 / 10).lingers); // 2.1 seasons if slow, and one more
    tree.visits[0].wounds[0].closed = 2022y / 9 / 1;
    EXPECT_FALSE(only(tree, oak, 2024y / 1 / 10).lingers);
    EXPECT_EQ(only(tree, oak, 2024y / 1 / 10).open_m, 0.0);
}

TEST(WoundClosure, SaysWhenTheLimbIsGoneAndLeavesOutWhatIsYetToCome)
{
    auto tree = woundedTree(0.02, 2020y / 1 / 10);
    EXPECT_TRUE(wounds(tree, species("Quercus rubra"), kIllinois, 2019y / 1 / 1).empty());
    tree.visits[0].wounds[0].limb = "gone";
    EXPECT_FALSE(only(tree, species("Quercus rubra"), 2021y / 1 / 1).limbIsThere);
}

} // namespace
} // namespace model::diary
