#include "app/store/picture.hpp"

#include "app/document/new_photo.hpp"
#include "tests/app/store/picture_files.hpp"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

namespace app {
namespace {

bool isRed(QRgb pixel)
{
    return qRed(pixel) > 180 && qBlue(pixel) < 80;
}

/// The eight orientations of EXIF 2.32 (CIPA DC-008, 4.6.4 A): where row 0 and column 0 are seen.
struct Held {
    int orientation;
    bool onItsSide;
    bool redAbove; ///< where the top left corner of what is stored is seen
    bool redLeft;
};

class PictureHeld : public ::testing::TestWithParam<Held> {};

TEST_P(PictureHeld, IsTurnedAsTheCameraWasHeld)
{
    const auto& held = GetParam();
    const auto bytes = test::jpeg(64, 48, held.orientation);
    const QImage image = pictureOf(bytes, 1000);
    ASSERT_FALSE(image.isNull());
    EXPECT_EQ(image.size(), held.onItsSide ? QSize(48, 64) : QSize(64, 48));
    EXPECT_EQ(pictureSize_px(bytes), image.size());
    const int x = held.redLeft ? 4 : image.width() - 5;
    const int y = held.redAbove ? 4 : image.height() - 5;
    EXPECT_TRUE(isRed(image.pixel(x, y)));
    EXPECT_FALSE(isRed(image.pixel(image.width() - 1 - x, image.height() - 1 - y)));
}

INSTANTIATE_TEST_SUITE_P(Exif, PictureHeld,
                         ::testing::Values(Held{1, false, true, true}, Held{2, false, true, false},
                                           Held{3, false, false, false},
                                           Held{4, false, false, true}, Held{5, true, true, true},
                                           Held{6, true, true, false}, Held{7, true, false, false},
                                           Held{8, true, false, true}));

TEST(Picture, IsMadeSmallerAndNeverBlownUp)
{
    EXPECT_EQ(pictureOf(test::jpeg(640, 320, 6), 160).size(), QSize(80, 160));
    EXPECT_EQ(pictureOf(test::jpeg(64, 48), 256).size(), QSize(64, 48));
}

TEST(Picture, OfBytesThatAreNoneIsNull)
{
    EXPECT_TRUE(pictureOf("no picture", 256).isNull());
    EXPECT_TRUE(pictureOf(test::jpeg(64, 48).left(40), 256).isNull());
    EXPECT_EQ(pictureFormat("no picture"), QByteArray());
    EXPECT_FALSE(pictureSize_px({}).isValid());
}

class NewPhotoTest : public ::testing::Test {
protected:
    QString written(const char* name, const QByteArray& bytes) const
    {
        const QString path = folder_.filePath(QString::fromUtf8(name));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
        return path;
    }
    QTemporaryDir folder_;
};

TEST_F(NewPhotoTest, KeepsItsBytesAndGetsANameOfItsOwn)
{
    const auto bytes = test::jpeg(64, 48, 6);
    const auto photo = readNewPhoto(written("North side (2).JPG", bytes));
    EXPECT_EQ(photo.problem, QString());
    EXPECT_EQ(photo.bytes, bytes);
    EXPECT_EQ(photo.name.substr(0, 20), "photos/north-side-2-");
    EXPECT_EQ(photo.name.substr(photo.name.size() - 4), ".jpg");
    EXPECT_EQ(readNewPhoto(written("North side (2).JPG", bytes)).name, photo.name);
    EXPECT_NE(readNewPhoto(written("North side (2).JPG", test::jpeg(64, 40))).name, photo.name);
}

TEST_F(NewPhotoTest, ThatCantBeTakenIsToldInOneSentence)
{
    const auto text = readNewPhoto(written("notes.jpg", "not a picture"));
    EXPECT_TRUE(text.problem.startsWith(QStringLiteral("notes.jpg is no picture")));
    EXPECT_TRUE(text.bytes.isEmpty());
    const auto gone = readNewPhoto(folder_.filePath(QStringLiteral("gone.jpg")));
    EXPECT_TRUE(gone.problem.startsWith(QStringLiteral("gone.jpg can't be read")));
    const QString large = written("large.jpg", {});
    ASSERT_TRUE(QFile::resize(large, kMostPhotoBytes + 1));
    EXPECT_TRUE(readNewPhoto(large).problem.contains(QStringLiteral("larger than 40 MB")));
    EXPECT_FALSE(readNewPhoto(folder_.path()).problem.isEmpty());
}

} // namespace
} // namespace app
