#include "app/drawing/side_scene.hpp"

#include "app/drawing/load_scale.hpp"
#include "tests/app/small_garden.hpp"

#include <QLocale>

#include <gtest/gtest.h>

namespace app {
namespace {

constexpr QSizeF kCanvasSize{900, 500};

class SideSceneTest : public ::testing::Test {
protected:
    SideScene scene(const std::vector<model::headroom::StripHeadroom>* headroom = nullptr,
                    const std::vector<model::advice::PlannedCut>* cuts = nullptr) const
    {
        return sideScene(
            {garden_, tree_, tree_, frame_, kCanvasSize, units_,
             [](const std::string& limb) -> std::optional<LimbShade> {
                 return limb == "bough" ? std::optional(LimbShade{0.42, true}) : std::nullopt;
             },
             headroom, cuts, "bough"});
    }

    model::Garden garden_ = smallGarden();
    const model::Tree& tree_ = garden_.trees[0];
    SideFrame frame_ = fittedSideFrame(tree_, 0.0, kCanvasSize);
    Units units_{QLocale(QLocale::English), Measures::metric};
};

// Closed form: looking north, east is to the right and up is up.
TEST_F(SideSceneTest, LookingNorthEastIsToTheRight)
{
    const QPointF at = frame_.toCanvas({1.0, 5.0, 2.0});
    EXPECT_NEAR(at.x(), frame_.foot.x() + frame_.pixelsPerMetre, 1e-9);
    EXPECT_NEAR(at.y(), frame_.foot.y() - 2.0 * frame_.pixelsPerMetre, 1e-9);
    EXPECT_NEAR(frame_.depth_m({1.0, 5.0, 2.0}), 5.0, 1e-9);
}

// Law: a place survives being drawn and read back, whichever way one looks.
TEST_F(SideSceneTest, APlaceReadBackFromTheCanvasIsThePlace)
{
    const model::Vec3 place{1.3, -2.1, 3.7};
    for (double bearing = 0.0; bearing < 360.0; bearing += 17.0) {
        frame_.bearing_deg = bearing;
        const auto back = frame_.toPlace(frame_.toCanvas(place), frame_.depth_m(place));
        EXPECT_NEAR(model::norm(back - place), 0.0, 1e-9);
    }
}

TEST_F(SideSceneTest, AllOfTheTreeIsOnTheCanvasFromEveryBearing)
{
    for (double bearing = 0.0; bearing < 360.0; bearing += 30.0) {
        frame_ = fittedSideFrame(tree_, bearing, kCanvasSize);
        const QRectF canvas(QPointF(0, 0), kCanvasSize);
        for (const auto& limb : scene().limbs)
            EXPECT_TRUE(canvas.contains(limb.wood.boundingRect()));
        for (const auto& leaf : scene().leaves)
            EXPECT_TRUE(canvas.contains(leaf.bodies.boundingRect()));
    }
}

TEST_F(SideSceneTest, TheTreeIsAsLargeAsFitsAboveTheNamesInTheGround)
{
    const int rows = groundRows(garden_, tree_, frame_, kCanvasSize);
    EXPECT_GE(rows, 1); // a path and a bed
    frame_ = fittedSideFrame(tree_, 0.0, kCanvasSize, rows);
    const double left = kCanvasSize.height() - frame_.pixelsPerMetre * model::height_m(tree_);
    const double beside = kCanvasSize.width() - 2.0 * frame_.pixelsPerMetre * reach_m(tree_);
    EXPECT_LE(std::min(left - 25.0 * rows, beside - 40.0), 46.0 + 1e-9);
    for (const auto& band : scene().bands)
        EXPECT_LT(band.row, rows);
    EXPECT_EQ(groundRows(model::Garden{}, tree_, frame_, kCanvasSize), 0);
}

TEST_F(SideSceneTest, TheRoomForNamesIsTheSameWhicheverWayOneLooks)
{
    const int rows = groundRows(garden_, tree_, frame_, kCanvasSize);
    for (double bearing = 0.0; bearing < 360.0; bearing += 45.0) {
        frame_.bearing_deg = bearing;
        EXPECT_EQ(groundRows(garden_, tree_, frame_, kCanvasSize), rows);
        for (const auto& band : scene().bands)
            EXPECT_LT(band.row, std::max(rows, 1));
    }
}

TEST_F(SideSceneTest, WoodIsDrawnAsThickAsItIs)
{
    const auto found = scene();
    ASSERT_EQ(found.limbs.size(), 2U);
    const auto trunk = std::ranges::find_if(found.limbs, [](const auto& l) { return !l.chosen; });
    const double width =
        trunk->wood
            .intersected([&] {
                QPainterPath band;
                band.addRect(0, frame_.toCanvas({0, 0, 0.02}).y(), kCanvasSize.width(), 0.5);
                return band;
            }())
            .boundingRect()
            .width();
    EXPECT_NEAR(width / frame_.pixelsPerMetre, 0.30, 0.01);
}

TEST_F(SideSceneTest, LimbsCarryTheirLoadsAndTheChosenOneIsMarked)
{
    const auto found = scene();
    for (const auto& limb : found.limbs) {
        EXPECT_EQ(limb.utilisation.has_value(), limb.chosen);
        if (limb.chosen) {
            EXPECT_DOUBLE_EQ(*limb.utilisation, 0.42);
        }
    }
    ASSERT_EQ(found.figures.size(), 1U);
    EXPECT_EQ(found.figures[0].text, units_.share(0.42));
}

TEST_F(SideSceneTest, StripsAndPlantingsLieInTheGroundWhereTheyAreAcrossTheView)
{
    const auto found = scene();
    const auto path = std::ranges::find(found.bands, Ground::strip, &SceneBand::kind);
    ASSERT_NE(path, found.bands.end());
    EXPECT_NEAR(path->fromX, frame_.foot.x() + 2.0 * frame_.pixelsPerMetre, 1e-6);
    EXPECT_NEAR(path->toX, frame_.foot.x() + 3.2 * frame_.pixelsPerMetre, 1e-6);
    EXPECT_NE(std::ranges::find(found.bands, Ground::bed, &SceneBand::kind), found.bands.end());
}

TEST_F(SideSceneTest, BandsInOneRowDoNotMeet)
{
    const auto bands = scene().bands;
    for (std::size_t i = 0; i < bands.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (bands[i].row == bands[j].row) {
                EXPECT_TRUE(bands[i].fromX >= bands[j].toX - 0.5 ||
                            bands[j].fromX >= bands[i].toX - 0.5);
            }
}

TEST_F(SideSceneTest, TheGapIsMeasuredFromTheGroundToTheLeafAndOnToWhatIsNeeded)
{
    std::vector<model::headroom::StripHeadroom> headroom(1);
    headroom[0].strip = "path";
    headroom[0].needed_m = 2.5;
    headroom[0].height_m = 1.9;
    headroom[0].shortfall_m = 0.6;
    headroom[0].lowestAt_m = model::Point2{6.5, 6.0};
    const auto found = scene(&headroom);
    ASSERT_EQ(found.needs.size(), 1U);
    const auto& need = found.needs[0];
    EXPECT_FALSE(need.enough);
    ASSERT_TRUE(need.clear && need.missing);
    EXPECT_NEAR(need.clear->length(), 1.9 * frame_.pixelsPerMetre, 1e-6);
    EXPECT_NEAR(need.missing->length(), 0.6 * frame_.pixelsPerMetre, 1e-6);
    EXPECT_NEAR(need.clear->x1(), frame_.foot.x() + 2.5 * frame_.pixelsPerMetre, 1e-6);
    EXPECT_EQ(need.missingText, units_.length(0.6) + QStringLiteral(" short"));
    EXPECT_NEAR(need.needed.height(), 2.5 * frame_.pixelsPerMetre, 1e-6);
}

TEST_F(SideSceneTest, ARemovalIsMarkedAtTheUnionAndNumbered)
{
    std::vector<model::advice::PlannedCut> cuts(1);
    cuts[0].cut.kind = model::CutKind::removal;
    cuts[0].cut.limb = "bough";
    const auto found = scene(nullptr, &cuts);
    ASSERT_EQ(found.cuts.size(), 1U);
    EXPECT_EQ(found.cuts[0].number, 1);
    const QPointF union_ = frame_.toCanvas({0, 0, 2});
    EXPECT_NEAR(found.cuts[0].stroke.center().x(), union_.x(), 1e-6);
    EXPECT_NEAR(found.cuts[0].stroke.center().y(), union_.y(), 1e-6);
}

TEST(LoadScale, StepsMeetWithoutAGap)
{
    EXPECT_EQ(loadStep(0.0), 0);
    EXPECT_EQ(loadStep(0.1499), 0);
    EXPECT_EQ(loadStep(0.15), 1);
    EXPECT_EQ(loadStep(0.999), 3);
    EXPECT_EQ(loadStep(1.0), 4);
    EXPECT_EQ(loadStep(25.0), 4);
    EXPECT_EQ(static_cast<std::size_t>(loadStepWords().size()), kLoadSteps.size());
}

} // namespace
} // namespace app
