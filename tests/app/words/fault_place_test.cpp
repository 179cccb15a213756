#include "app/words/fault_place.hpp"

#include "app/words/fault_words.hpp"
#include "model/document/validate.hpp"
#include "tests/app/words/told_garden.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace {
using namespace app;

const QByteArray kGarden(R"({"name": "plot", "trees": [{"id": "a", "name": "the maple", "limbs": [
  {"id": "trunk"}, {"id": "east", "name": "east limb", "stations": [{"diameter_m": 0}]}, 7]}],
  "strips": [{"id": "s", "name": "drive\n"}, {}]})");

TEST(FaultPlace, NamesTheLimbAndItsTree)
{
    EXPECT_EQ(faultPlace("/trees/0/limbs/1/stations/0/diameter_m", kGarden).toStdString(),
              "“east limb” of “the maple”");
}

TEST(FaultPlace, TakesTheIdOfWhatHasNoName)
{
    EXPECT_EQ(faultPlace("/trees/0/limbs/0/stations", kGarden).toStdString(),
              "“trunk” of “the maple”");
}

TEST(FaultPlace, StaysOnOneLine)
{
    EXPECT_FALSE(faultPlace("/strips/0/headroom_m", kGarden).contains(QLatin1Char('\n')));
    EXPECT_TRUE(faultPlace("/strips/0/headroom_m", kGarden).contains(QStringLiteral("drive")));
}

TEST(FaultPlace, IsEmptyWhereNothingHasAName)
{
    for (const char* pointer : {"", "/", "/place/latitude_deg", "/strips/1/headroom_m", "/strips/9",
                                "/nowhere/0/limbs", "/trees/-1", "/trees/x/limbs/0"})
        EXPECT_TRUE(faultPlace(pointer, kGarden).isEmpty()) << pointer;
    EXPECT_TRUE(faultPlace("/trees/0/limbs/1", "{\"trees\": [").isEmpty());
}

TEST(FaultPlace, StandsBeforeThePointerInALine)
{
    const model::Fault fault{"/trees/0/limbs/1/stations/0/diameter_m", "0",
                             "a diameter in metres over 0 and up to 5"};
    EXPECT_EQ(placedFaultLine(fault, kGarden).toStdString(),
              "“east limb” of “the maple” (/trees/0/limbs/1/stations/0/diameter_m): found 0, "
              "expected a diameter in metres over 0 and up to 5");
    EXPECT_EQ(placedFaultLine(fault, {}), faultLine(fault));
}

TEST(FaultPlace, TellsWhatOfADrawingCantBe)
{
    auto garden = toldGarden();
    garden.trees[0].limbs[1].stations[0].diameter_m = 6.0;
    const auto faults = model::validate(garden);
    const auto fault = std::ranges::find_if(
        faults, [](const model::Fault& found) { return found.pointer.ends_with("/diameter_m"); });
    ASSERT_NE(fault, faults.end());
    EXPECT_TRUE(refusedDrawing(*fault, garden)
                    .startsWith(QStringLiteral("“West limb” of “Old apple” can't be drawn like "
                                               "that: it needs ")))
        << refusedDrawing(*fault, garden).toStdString();
    EXPECT_TRUE(refusedDrawing({"", "nothing", "a garden"}, garden)
                    .startsWith(QStringLiteral("That can't be drawn")));
}

} // namespace
