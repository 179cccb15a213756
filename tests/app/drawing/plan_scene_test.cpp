#include "app/drawing/plan_scene.hpp"

#include "app/drawing/scale_bar.hpp"
#include "tests/app/small_garden.hpp"

#include <QLocale>

#include <gtest/gtest.h>

namespace app {
namespace {

class PlanSceneTest : public ::testing::Test {
protected:
    PlanScene scene(const model::light::Shadows* shadows = nullptr,
                    const model::light::SunPosition* sun = nullptr, double bearing_deg = 0.0) const
    {
        return planScene({garden_, &garden_.trees[0], frame_, bearing_deg, shadows, sun, units_});
    }

    model::Garden garden_ = smallGarden();
    PlanFrame frame_ = fittedPlanFrame(garden_, &garden_.trees[0], {420, 300});
    Units units_{QLocale(QLocale::English), Measures::metric};
};

TEST_F(PlanSceneTest, NorthIsUpAndEastIsRight)
{
    const QPointF at = frame_.toCanvas({4, 6});
    EXPECT_GT(frame_.toCanvas({5, 6}).x(), at.x());
    EXPECT_LT(frame_.toCanvas({4, 7}).y(), at.y());
    const auto back = frame_.toPlace(at);
    EXPECT_NEAR(back.x, 4.0, 1e-9);
    EXPECT_NEAR(back.y, 6.0, 1e-9);
}

TEST_F(PlanSceneTest, TheWholeGardenIsOnTheCanvas)
{
    const QRectF canvas(QPointF(0, 0), frame_.canvas);
    for (const auto& shape : scene().shapes)
        EXPECT_TRUE(canvas.contains(shape.outline.boundingRect()));
    for (const auto& tree : scene().trees)
        EXPECT_TRUE(canvas.contains(tree.crown.boundingRect()));
    EXPECT_TRUE(canvas.contains(scene().eye));
}

TEST_F(PlanSceneTest, WhoLooksNorthStandsToTheSouth)
{
    const auto found = scene(nullptr, nullptr, 0.0);
    EXPECT_NEAR(found.eye.x(), found.gaze.x2(), 1e-9);
    EXPECT_GT(found.eye.y(), found.gaze.y2());
}

TEST_F(PlanSceneTest, TheWorstWindBlowsTowardsTheTreeFromWhereItComes)
{
    const PlanInput input{.garden = garden_,
                          .chosen = &garden_.trees[0],
                          .frame = frame_,
                          .units = units_,
                          .wind_deg = 270.0, // from the west, as forecasts say it
                          .windText = QStringLiteral("worst wind for bough")};
    const auto found = planScene(input);
    const QPointF stem = frame_.toCanvas(garden_.trees[0].position_m);
    ASSERT_TRUE(found.wind);
    EXPECT_LT(found.wind->x1(), found.wind->x2());
    EXPECT_LT(found.wind->x2(), stem.x());
    EXPECT_NEAR(found.wind->y1(), stem.y(), 1e-9);
    EXPECT_EQ(found.windText, input.windText);
    EXPECT_FALSE(scene().wind);
}

TEST_F(PlanSceneTest, TheSunIsDrawnOnItsOwnSideAndNotAtNight)
{
    const model::light::SunPosition east{
        .elevation_deg = 20.0, .azimuth_deg = 90.0, .distance_au = 1.0};
    const auto found = scene(nullptr, &east);
    ASSERT_TRUE(found.sunRay);
    EXPECT_GT(found.sunRay->x1(), found.gaze.x2());
    const model::light::SunPosition night{
        .elevation_deg = -5.0, .azimuth_deg = 90.0, .distance_au = 1.0};
    EXPECT_FALSE(scene(nullptr, &night).sunRay);
}

TEST_F(PlanSceneTest, AHoleInAShadowStaysLight)
{
    const model::light::Shadows shadows{std::make_shared<const model::Region>(
        model::Region{{{{{0, 0}, {4, 0}, {4, 4}, {0, 4}}, {{1, 1}, {1, 3}, {3, 3}, {3, 1}}}}})};
    const auto found = scene(&shadows);
    EXPECT_TRUE(found.shadow.contains(frame_.toCanvas({0.5, 0.5})));
    EXPECT_FALSE(found.shadow.contains(frame_.toCanvas({2.0, 2.0})));
}

TEST_F(PlanSceneTest, AGardenWithNothingInItIsDrawnAllTheSame)
{
    const model::Garden empty;
    const auto frame = fittedPlanFrame(empty, nullptr, {420, 300});
    const auto found = planScene({empty, nullptr, frame, 0.0, nullptr, nullptr, units_});
    EXPECT_TRUE(found.trees.empty());
    EXPECT_GT(frame.pixelsPerMetre, 0.0);
}

TEST(ScaleBar, IsRoundAndFits)
{
    const Units metric(QLocale(QLocale::English), Measures::metric);
    EXPECT_DOUBLE_EQ(scaleBarLength_m(40.0, 110.0, metric), 2.0);
    EXPECT_DOUBLE_EQ(scaleBarLength_m(9.0, 110.0, metric), 10.0);
    EXPECT_DOUBLE_EQ(scaleBarLength_m(220.0, 110.0, metric), 0.5);
    const Units us(QLocale(QLocale::English), Measures::unitedStates);
    EXPECT_NEAR(scaleBarLength_m(40.0, 110.0, us), 5 * 0.3048, 1e-12);
}

TEST_F(PlanSceneTest, TheMapLiesOverItsGroundInPlaceOfTheShadow)
{
    SunMap map;
    map.grid = model::light::mapGrid({0.0, 0.0}, {4.0, 2.0}, 1.0);
    map.open_h = 10.0;
    for (std::size_t i = 0; i < 8; ++i)
        map.points.push_back({static_cast<double>(i), 0.0});
    const model::light::Shadows shadows{
        std::make_shared<const model::Region>(model::Region{{{{{0, 0}, {1, 0}, {1, 1}}}}})};
    const auto found =
        planScene({garden_, &garden_.trees[0], frame_, 0.0, &shadows, nullptr, units_, &map});
    ASSERT_TRUE(found.map);
    EXPECT_TRUE(found.shadow.isEmpty());
    EXPECT_EQ(found.map->columns, 4);
    EXPECT_EQ(found.map->rows, 2);
    EXPECT_NEAR(found.map->share[7], 0.7, 1e-12);
    const QPointF northWest = frame_.toCanvas({0.0, 2.0});
    EXPECT_NEAR(found.map->target.left(), northWest.x(), 1e-9);
    EXPECT_NEAR(found.map->target.top(), northWest.y(), 1e-9);
    EXPECT_NEAR(found.map->target.width(), 4.0 * frame_.pixelsPerMetre, 1e-9);
}

TEST_F(PlanSceneTest, NeighboursAreDrawnAsWideAsTheyAre)
{
    model::Neighbour beech;
    beech.id = "beech";
    beech.name = "the beech next door";
    beech.position_m = {-6.0, 3.0};
    beech.spread_m = 8.0;
    beech.across_m = 4.0;
    beech.bearing_deg = 90.0;
    garden_.neighbours = {beech};
    const auto frame = fittedPlanFrame(garden_, &garden_.trees[0], {420, 300});
    const auto found =
        planScene({garden_, &garden_.trees[0], frame, 0.0, nullptr, nullptr, units_});
    const auto& drawn = found.trees.front();
    EXPECT_EQ(drawn.name, QStringLiteral("the beech next door"));
    EXPECT_NEAR(drawn.crown.boundingRect().width(), 8.0 * frame.pixelsPerMetre, 0.5);
    EXPECT_NEAR(drawn.crown.boundingRect().height(), 4.0 * frame.pixelsPerMetre, 0.5);
    EXPECT_TRUE(QRectF(QPointF(), frame.canvas).contains(drawn.crown.boundingRect()));
}

// Law: what is kept free at the top stays free, and the garden lies whole under it.
TEST_F(PlanSceneTest, TheGardenFitsUnderWhatCoversTheTop)
{
    constexpr double kCovered = 120.0;
    const auto frame = fittedPlanFrame(garden_, &garden_.trees[0], {420, 300}, kCovered);
    const auto found =
        planScene({garden_, &garden_.trees[0], frame, 0.0, nullptr, nullptr, units_});
    const QRectF free(0.0, kCovered, 420.0, 300.0 - kCovered);
    for (const auto& shape : found.shapes)
        EXPECT_TRUE(free.contains(shape.outline.boundingRect())) << shape.name.toStdString();
    EXPECT_TRUE(free.contains(found.trees.front().crown.boundingRect()));
}

} // namespace
} // namespace app
