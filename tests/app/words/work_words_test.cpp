#include "app/words/work_words.hpp"

#include "tests/app/words/told_garden.hpp"

#include <gtest/gtest.h>

namespace app {
namespace {

using model::advice::Piece;
using model::advice::PlannedCut;
using model::advice::Tool;
using model::advice::Under;

Piece pieceOf(double at_m, double length_m, double mass_kg, Tool tool)
{
    Piece piece;
    piece.limb = "west";
    piece.at_m = at_m;
    piece.cut_m = {0.0, 0.0, 1.9};
    piece.diameter_m = 0.034;
    piece.length_m = length_m;
    piece.mass_kg = mass_kg;
    piece.tool = tool;
    piece.dropRadius_m = 3.2;
    return piece;
}

TEST(WorkWords, TellEveryLengthWithItsToolAndWeight)
{
    PlannedCut cut;
    cut.diameter_m = 0.034;
    cut.pieces = {pieceOf(2.1, 1.9, 6.2, Tool::loppers), pieceOf(0.0, 1.8, 9.0, Tool::handSaw)};
    cut.inZone = {{Under::strip, "path", 0.4, 3.2}};
    const auto lines = workLines(cut, Told("en_GB").wording);
    ASSERT_EQ(lines.size(), 2);
    EXPECT_EQ(shown(lines[0]),
              "Take it down in 2 lengths, from the tip inwards: 1.9 m and about 6.2 kg (off “West "
              "limb” at 2.1 m from its union; 3.4 cm thick, 1.9 m up; loppers); 1.8 m and about 9 "
              "kg (“West limb” at its union; 3.4 cm thick, 1.9 m up; hand saw).");
    EXPECT_EQ(shown(lines[1]), "Pieces can come down up to 3.2 m from the place under the cut. "
                               "There: “Path to the gate”.");
}

TEST(WorkWords, NameEachToolOnce)
{
    PlannedCut cut;
    cut.pieces = {pieceOf(2.1, 1.9, 6.2, Tool::poleSaw), pieceOf(0.0, 1.8, 9.0, Tool::secateurs),
                  pieceOf(0.0, 1.8, 9.0, Tool::poleSaw), pieceOf(0.0, 1.8, 9.0, Tool::outOfReach)};
    EXPECT_EQ(toolsOf({cut}),
              (QStringList{QStringLiteral("secateurs"), QStringLiteral("pole saw")}));
}

TEST(WorkWords, TellWhatHasToBeCarriedAway)
{
    model::advice::Debris debris;
    debris.mass_kg = 107.0;
    debris.brush_m3 = 1.1;
    debris.brushLow_m3 = 0.52;
    debris.brushHigh_m3 = 2.75;
    EXPECT_EQ(shown(debrisWords(debris, Told("en_GB").wording)),
              "To carry away: about 107 kg, 1.1 m³ of brush on a heap (0.5 m³ to 2.8 m³, as it "
              "packs).");
    debris.logs_kg = 30.0;
    debris.logs_m3 = 0.046;
    EXPECT_EQ(shown(debrisWords(debris, Told("en_US").wording)),
              "To carry away: about 236 lb, 1.4 yd³ of brush on a heap (0.7 yd³ to 3.6 yd³, as it "
              "packs), and 0.06 yd³ of logs stacked (66 lb, 2 in thick and over).");
}

TEST(WorkWords, TellWhichCutsRemainForTheGardener)
{
    const Told told("en_GB");
    EXPECT_TRUE(sharedWords({{0, 1}, {}, false}, told.wording).isEmpty());
    EXPECT_EQ(shown(sharedWords({{0, 2}, {1}, false}, told.wording)),
              "By number, for the arborist: 2; for you: 1 and 3.");
    EXPECT_EQ(shown(sharedWords({{}, {0}, false}, told.wording)),
              "None of the cuts remains for you.");
    EXPECT_NE(shown(sharedWords({{}, {0}, true}, told.wording)).find("whole tree"),
              std::string::npos);
}

} // namespace
} // namespace app
