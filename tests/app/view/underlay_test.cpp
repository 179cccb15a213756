#include "app/view/underlay_view_model.hpp"

#include "app/drawing/photo_lay.hpp"
#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"

#include <QCoreApplication>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace app {
namespace {

class UnderlayTest : public ::testing::Test {
protected:
    UnderlayTest()
    {
        workspace_.document().start(smallGarden());
        side_.resize(900, 500);
    }
    QUrl picture(const QString& name, QSize size)
    {
        QImage image(size, QImage::Format_RGB32);
        image.fill(Qt::white);
        const QString path = folder_.filePath(name);
        EXPECT_TRUE(image.save(path));
        return QUrl::fromLocalFile(path);
    }
    const model::Photo& laid() const { return workspace_.tree()->photos.back(); }

    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
    QTemporaryDir folder_;
    Workspace workspace_{tables(), Units(QLocale(QLocale::English), Measures::metric),
                         modelWorks(tables()), std::chrono::year(2025) / 7 / 3};
    SideViewModel side_{workspace_};
    UnderlayViewModel underlay_{workspace_, side_};
};

TEST_F(UnderlayTest, LiesUnderTheViewItWasLaidForAndUndoesInOneStep)
{
    ASSERT_TRUE(underlay_.lay(picture(QStringLiteral("gate.png"), {300, 400})));
    EXPECT_TRUE(underlay_.isThere());
    EXPECT_TRUE(laid().file.starts_with("photos/gate-"));
    EXPECT_FALSE(side_.scene().underlay.image.isNull());
    side_.setBearing(side_.bearing() + 90.0);
    EXPECT_FALSE(underlay_.isThere());
    EXPECT_TRUE(side_.scene().underlay.image.isNull());
    EXPECT_FALSE(underlay_.elsewhere().isEmpty());
    underlay_.lookThatWay();
    EXPECT_TRUE(underlay_.isThere());
    workspace_.document().history().undo();
    EXPECT_FALSE(underlay_.isThere());
    EXPECT_EQ(workspace_.garden(), smallGarden());
}

TEST_F(UnderlayTest, AKnownLengthSetsTheScale)
{
    ASSERT_TRUE(underlay_.lay(picture(QStringLiteral("gate.png"), {300, 400})));
    const auto underlay = side_.scene().underlay;
    underlay_.setTool(UnderlayViewModel::Length);
    for (const QPointF pixel : {QPointF(200.0, 380.0), QPointF(200.0, 280.0)}) {
        const QPointF at = underlay.toCanvas.map(pixel);
        underlay_.press(at.x(), at.y());
    }
    ASSERT_TRUE(underlay_.wantsLength());
    EXPECT_EQ(side_.scene().underlay.marks.size(), 2u);
    EXPECT_FALSE(underlay_.setLength(QStringLiteral("tall")));
    EXPECT_TRUE(underlay_.setLength(QStringLiteral("2 m")));
    EXPECT_NEAR(*laid().metresPerPixel, 0.02, 1e-9);
    // The two ends are now drawn two metres apart.
    const auto scaled = side_.scene().underlay;
    const QPointF apart =
        scaled.toCanvas.map(QPointF(200.0, 380.0)) - scaled.toCanvas.map(QPointF(200.0, 280.0));
    EXPECT_NEAR(apart.y() / side_.frame().pixelsPerMetre, 2.0, 1e-6);
}

TEST_F(UnderlayTest, AnUprightEdgeTakesTheTiltOut)
{
    ASSERT_TRUE(underlay_.lay(picture(QStringLiteral("wall.png"), {3000, 4000})));
    underlay_.setTool(UnderlayViewModel::Upright);
    const QPointF low(2600.0, 3500.0), high(2400.0, 500.0); // leans inwards, upwards
    for (const QPointF pixel : {low, high}) {
        const QPointF at = photoToCanvas(laid(), {3000.0, 4000.0}, side_.frame()).map(pixel);
        underlay_.press(at.x(), at.y());
    }
    EXPECT_GT(laid().underlay->tilt_deg, 1.0);
    const auto toCanvas = photoToCanvas(laid(), {3000.0, 4000.0}, side_.frame());
    EXPECT_NEAR(toCanvas.map(low).x(), toCanvas.map(high).x(), 1e-6);
    EXPECT_EQ(underlay_.tool(), UnderlayViewModel::None);
    EXPECT_FALSE(underlay_.tiltText().isEmpty());
}

TEST_F(UnderlayTest, ARunOfMovesIsOneStep)
{
    ASSERT_TRUE(underlay_.lay(picture(QStringLiteral("gate.png"), {300, 400})));
    const auto before = laid();
    underlay_.press(100.0, 100.0);
    for (int i = 1; i <= 5; ++i)
        underlay_.dragTo(100.0 + 4.0 * i, 100.0);
    underlay_.release();
    EXPECT_EQ(workspace_.document().history().count(), 2);
    const double perPixel = side_.frame().pixelsPerMetre * *before.metresPerPixel;
    EXPECT_NEAR(laid().underlay->foot_px.x, before.underlay->foot_px.x - 20.0 / perPixel, 1e-9);
    underlay_.setOpacity(0.3);
    underlay_.setOpacity(0.2);
    EXPECT_EQ(workspace_.document().history().count(), 3);
}

TEST_F(UnderlayTest, IsKeptInTheGardensFile)
{
    ASSERT_TRUE(underlay_.lay(picture(QStringLiteral("gate.png"), {300, 400})));
    underlay_.setTurned(3.0);
    const auto kept = laid();
    const QString file = folder_.filePath(QStringLiteral("kept.underbough"));
    ASSERT_TRUE(workspace_.document().saveAs(file).isEmpty());
    workspace_.document().start(smallGarden());
    ASSERT_FALSE(underlay_.isThere());
    ASSERT_TRUE(workspace_.document().open(file).isEmpty());
    EXPECT_EQ(laid(), kept);
    EXPECT_EQ(side_.scene().underlay.image.size(), QSize(300, 400));
}

// EXIF, orientation 6 (Exif 2.32, 4.6.4: row 0 is the right side): stands upright, 20 wide, 40
// high.
TEST_F(UnderlayTest, StandsUprightByItsExif)
{
    QImage image(40, 20, QImage::Format_RGB32);
    image.fill(Qt::white);
    const QString path = folder_.filePath(QStringLiteral("side.jpg"));
    ASSERT_TRUE(image.save(path));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    auto bytes = file.readAll();
    const QByteArray exif =
        QByteArray::fromHex("ffe10022457869660000"     // APP1, 34 bytes, "Exif"
                            "4d4d002a00000008"         // big endian, the directory 8 bytes on
                            "0001"                     // one entry
                            "011200030000000100060000" // orientation, a short, one of them: 6
                            "00000000");
    bytes.insert(2, exif);
    file.resize(0);
    file.write(bytes);
    file.close();
    ASSERT_TRUE(underlay_.lay(QUrl::fromLocalFile(path)));
    EXPECT_EQ(side_.scene().underlay.image.size(), QSize(20, 40));
}

TEST_F(UnderlayTest, TakenAwayItStaysAmongTheTreesPhotosAndCanBeLaidAgain)
{
    const QUrl gate = picture(QStringLiteral("gate.png"), {300, 400});
    ASSERT_TRUE(underlay_.lay(gate));
    underlay_.takeAway();
    EXPECT_FALSE(underlay_.isThere());
    EXPECT_TRUE(side_.scene().underlay.image.isNull());
    ASSERT_EQ(workspace_.tree()->photos.size(), 1u);
    ASSERT_TRUE(underlay_.lay(gate));
    EXPECT_TRUE(underlay_.isThere());
    EXPECT_EQ(workspace_.tree()->photos.size(), 1u);
    ASSERT_TRUE(underlay_.lay(picture(QStringLiteral("lawn.png"), {400, 300})));
    EXPECT_EQ(workspace_.tree()->photos.size(), 2u);
    EXPECT_EQ(side_.scene().underlay.image.size(), QSize(400, 300));
}

TEST_F(UnderlayTest, WhatIsNoPictureIsSaid)
{
    const QString path = folder_.filePath(QStringLiteral("notes.jpg"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("not a picture");
    file.close();
    EXPECT_FALSE(underlay_.lay(QUrl::fromLocalFile(path)));
    EXPECT_TRUE(workspace_.problem().contains(QStringLiteral("notes.jpg")));
    EXPECT_EQ(workspace_.garden(), smallGarden());
}

} // namespace
} // namespace app
