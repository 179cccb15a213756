#include "model/advice/fruit_wood.hpp"
#include "tests/model/species/table_files.hpp"

#include <gtest/gtest.h>

namespace model::advice {
namespace {

// Published: University of California, The Backyard Orchard, yearly pruning of bearing trees, share
// of last year's wood; from memory, as the table in fruit_wood.cpp.
TEST(FruitWood, IsRenewedByAHalfOnAPeachAndATenthToAFifthOnAnApple)
{
    const auto of = [](const char* latin) {
        return yearlyRenewal(*findSpecies(shippedTables(), latin));
    };
    EXPECT_DOUBLE_EQ(of("Prunus persica")->least, 0.40);
    EXPECT_DOUBLE_EQ(of("Prunus persica")->most, 0.50);
    EXPECT_DOUBLE_EQ(of("Malus domestica")->least, 0.10);
    EXPECT_DOUBLE_EQ(of("Malus domestica")->most, 0.20);
    EXPECT_DOUBLE_EQ(of("Prunus armeniaca")->most, 0.20);
    EXPECT_FALSE(of("Quercus robur").has_value());
}

// Law: all that a note is given for is in the species tables, by the name that it has there.
TEST(FruitWood, IsKnownOfFruitTreesAlone)
{
    int known = 0;
    for (const auto& species : shippedTables().species)
        if (renewalNote(species)) {
            ++known;
            EXPECT_TRUE(species.latin.starts_with("Prunus") || species.latin.starts_with("Malus") ||
                        species.latin.starts_with("Pyrus"))
                << species.latin;
        }
    EXPECT_EQ(known, 8);
}

} // namespace
} // namespace model::advice
