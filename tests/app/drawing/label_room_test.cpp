#include "app/drawing/label_room.hpp"

#include <gtest/gtest.h>

namespace app {
namespace {

TEST(LabelRoom, TakesTheFirstFreePlace)
{
    LabelRoom room({100, 100});
    room.take({0, 0, 50, 50});
    EXPECT_EQ(room.place({{10, 10, 20, 10}, {60, 10, 20, 10}}), QRectF(60, 10, 20, 10));
    EXPECT_EQ(room.place({{60, 10, 20, 10}, {60, 30, 20, 10}}), QRectF(60, 30, 20, 10));
}

TEST(LabelRoom, StaysInsideTheCanvas)
{
    LabelRoom room({100, 100});
    EXPECT_EQ(room.place({{90, 10, 20, 10}, {70, 10, 20, 10}}), QRectF(70, 10, 20, 10));
}

TEST(LabelRoom, FallsBackOnTheFirstPlaceRatherThanLoseALabel)
{
    LabelRoom room({100, 100});
    room.take({0, 0, 100, 100});
    EXPECT_EQ(room.place({{10, 10, 20, 10}, {60, 10, 20, 10}}), QRectF(10, 10, 20, 10));
}

} // namespace
} // namespace app
