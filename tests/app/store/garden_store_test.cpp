#include "app/store/garden_store.hpp"

#include "app/store/photo_rows.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/store/outside_sqlite.hpp"
#include "tests/model/document/random_garden.hpp"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QTemporaryDir>

namespace app {
namespace {

using Trouble = StoreError::Kind;

QByteArray picture()
{
    QImage image(640, 480, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

Step stepTo(std::int64_t number, const model::Garden& before, const model::Garden& after)
{
    return {number, "step " + std::to_string(number), 0, difference(before, after)};
}

model::Garden renamed(const std::string& name)
{
    auto garden = smallGarden();
    garden.name = name;
    return garden;
}

class GardenStore : public ::testing::Test {
protected:
    QString file(const char* name = "garden.underbough") const
    {
        return folder_.filePath(QLatin1String(name));
    }
    Edition write(const model::Garden& garden, const StepHistory& history = {},
                  const std::vector<std::string>& names = {}) const
    {
        return writeGardenStore(file(), garden, history, names,
                                [](const std::string&) { return picture(); });
    }
    Trouble kindOfLoading() const
    {
        try {
            (void)loadGarden(file());
        } catch (const StoreError& error) {
            return error.kind();
        }
        return Trouble::failed;
    }

    QTemporaryDir folder_;
};

TEST_F(GardenStore, GivesBackWhatWasWritten)
{
    for (std::uint32_t seed = 1; seed <= 8; ++seed) {
        const auto garden = randomGarden(seed);
        const auto edition = write(garden);
        const auto stored = loadGarden(file());
        EXPECT_TRUE(stored.garden == garden) << seed;
        EXPECT_EQ(stored.edition, edition);
        EXPECT_EQ(outside::integrity(file()), "ok");
    }
    EXPECT_EQ(QDir(folder_.path()).entryList(QDir::Files).size(), 1) << "something was left over";
}

TEST_F(GardenStore, GivesBackItsHistory)
{
    const StepHistory history{
        {stepTo(3, renamed("a"), renamed("b")), stepTo(4, renamed("b"), randomGarden(3))}, 3};
    write(renamed("b"), history);
    EXPECT_EQ(loadGarden(file()).history, history);
    EXPECT_TRUE(checkStore(file()).empty());
}

TEST_F(GardenStore, TakesAnEditIn)
{
    const auto first = write(renamed("a"));
    const Step step = stepTo(1, renamed("a"), renamed("b"));
    const auto second = recordEdit(file(), first, {step.change, {}, {step}, 1, {}});
    const auto stored = loadGarden(file());
    EXPECT_EQ(stored.garden, renamed("b"));
    EXPECT_EQ(stored.history, (StepHistory{{step}, 1}));
    EXPECT_EQ(stored.edition, second);
    EXPECT_NE(second, first);
}

TEST_F(GardenStore, DropsTheStepsThatAnEditReplaces)
{
    const Step old = stepTo(1, renamed("a"), renamed("b"));
    const auto edition = write(renamed("a"), {{old}, 0});
    const Step other = stepTo(2, renamed("a"), renamed("c"));
    (void)recordEdit(file(), edition, {other.change, {1}, {other}, 2, {}});
    EXPECT_EQ(loadGarden(file()).history, (StepHistory{{other}, 2}));
}

TEST_F(GardenStore, TakesNothingInWhenAnotherProgramWroteMeanwhile)
{
    const auto first = write(renamed("a"));
    const Step step = stepTo(1, renamed("a"), renamed("b"));
    (void)recordEdit(file(), first, {step.change, {}, {step}, 1, {}});
    EXPECT_THROW((void)recordEdit(file(), first, {step.change, {}, {step}, 1, {}}), StoreError);
    EXPECT_EQ(loadGarden(file()).garden, renamed("b"));
}

TEST_F(GardenStore, KeepsPhotosToTheByteWithASmallPicture)
{
    write(smallGarden(), {}, {"shots/maple.png"});
    EXPECT_EQ(loadPhoto(file(), "shots/maple.png"), picture());
    const auto small = QImage::fromData(loadThumbnail(file(), "shots/maple.png"));
    EXPECT_EQ(small.size(), QSize(256, 192));
    EXPECT_TRUE(loadPhoto(file(), "other.png").isNull());
    EXPECT_EQ(photoNames(file()), std::vector<std::string>{"shots/maple.png"});
}

TEST_F(GardenStore, ReadsAsRowsInAnotherProgram)
{
    auto garden = smallGarden();
    model::Visit visit;
    visit.id = "v1";
    visit.date = std::chrono::year(2024) / 7 / 14;
    visit.by = "Ada";
    garden.trees[0].visits = {visit};
    write(garden);
    EXPECT_EQ(outside::answer(file(), "SELECT tree || ' ' || date || ' ' || by FROM visit"),
              "maple 2024-07-14 Ada");
    EXPECT_EQ(outside::answer(file(), "SELECT name || ' ' || east_m || ' ' || north_m FROM tree"),
              "the maple 4 6");
}

// The mark of SQLite's file format, section 1.2.1 of its published description, and ours in it.
TEST_F(GardenStore, IsMarkedInItsHeader)
{
    write(smallGarden());
    QFile bytes(file());
    ASSERT_TRUE(bytes.open(QIODevice::ReadOnly));
    const auto head = bytes.read(100);
    EXPECT_TRUE(head.startsWith("SQLite format 3"));
    EXPECT_EQ(head.mid(68, 4), "Ubgh");
    EXPECT_EQ(head.mid(60, 4), QByteArray("\0\0\0\2", 4));
    EXPECT_TRUE(isGardenStore(file()));
}

TEST_F(GardenStore, RefusesAFileFromANewerProgramInOneLine)
{
    write(smallGarden());
    outside::run(file(), "PRAGMA user_version = 3");
    try {
        (void)loadGarden(file());
        FAIL() << "it was opened";
    } catch (const StoreError& error) {
        EXPECT_EQ(error.kind(), Trouble::newer);
        const std::string line = error.what();
        EXPECT_NE(line.find("version 3"), std::string::npos) << line;
        EXPECT_EQ(line.find('\n'), std::string::npos) << line;
    }
}

TEST_F(GardenStore, RefusesAnotherProgramsFile)
{
    outside::run(file(), "CREATE TABLE part(kind)");
    EXPECT_EQ(kindOfLoading(), Trouble::foreign);
}

TEST_F(GardenStore, NoticesANumberThatWasNotWrittenHere)
{
    write(smallGarden());
    outside::run(file(), "UPDATE part SET document = replace(document, '0.26', '0.27')");
    EXPECT_EQ(kindOfLoading(), Trouble::damaged);
}

TEST_F(GardenStore, NoticesAPartThatIsGone)
{
    write(smallGarden());
    outside::run(file(), "DELETE FROM part WHERE kind = 'strips'");
    EXPECT_EQ(kindOfLoading(), Trouble::damaged);
    EXPECT_FALSE(checkStore(file()).empty());
}

TEST_F(GardenStore, IsNeverMadeByReading)
{
    EXPECT_EQ(kindOfLoading(), Trouble::missing);
    EXPECT_FALSE(QFile::exists(file()));
}

// tests/app/store/version_1.py wrote that file, with another language's checksums.
TEST_F(GardenStore, ReadsEveryFormEverShippedAndLeavesItAsItIs)
{
    const QString kept = QStringLiteral(UNDERBOUGH_TESTS "/app/store/version-1.underbough");
    ASSERT_TRUE(QFile::copy(kept, file()));
    const auto stored = loadGarden(file());
    EXPECT_EQ(stored.version, 1);
    EXPECT_EQ(stored.garden.name, "Kept for good");
    ASSERT_EQ(stored.garden.trees.size(), 1U);
    EXPECT_EQ(stored.garden.trees[0].visits.size(), 2U);
    EXPECT_EQ(outside::answer(file(), "PRAGMA user_version"), "1");
}

TEST_F(GardenStore, RaisesAnOlderFormAfterCopyingIt)
{
    const QString kept = QStringLiteral(UNDERBOUGH_TESTS "/app/store/version-1.underbough");
    ASSERT_TRUE(QFile::copy(kept, file()));
    QFile::setPermissions(file(), QFile::ReadOwner | QFile::WriteOwner);
    const auto before = loadGarden(file());
    const QString copy = raiseGarden(file());
    EXPECT_EQ(copy, file("garden, version 1.underbough"));
    EXPECT_EQ(outside::bytes(copy), outside::bytes(kept));
    const auto after = loadGarden(file());
    EXPECT_EQ(after.version, 2);
    EXPECT_TRUE(after.garden == before.garden);
    EXPECT_EQ(after.history, StepHistory{});
    EXPECT_EQ(QImage::fromData(loadThumbnail(file(), "pear.png")).size(), QSize(256, 128));
    EXPECT_TRUE(checkStore(file()).empty());
    EXPECT_TRUE(raiseGarden(file()).isEmpty());
}

} // namespace
} // namespace app
