#include "app/document/change_garden_file.hpp"
#include "app/document/document.hpp"
#include "app/document/file_sentences.hpp"
#include "app/document/garden_file.hpp"
#include "app/document/photo_files.hpp"
#include "app/store/schema.hpp"
#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/store/outside_sqlite.hpp"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace app {
namespace {

model::Garden renamed(const std::string& name)
{
    auto garden = smallGarden();
    garden.name = name;
    return garden;
}

model::Garden withPhoto()
{
    auto garden = smallGarden();
    garden.trees[0].photos = {{"shots/from the gate.jpg", {}, {}, "spring", {}}};
    return garden;
}

/// A document on a garden file, and the folder that it lies in.
class DocumentStore : public ::testing::Test {
protected:
    DocumentStore()
    {
        document_.start(renamed("a"));
        EXPECT_EQ(document_.saveAs(path()), QString());
    }
    QString path(const char* name = "garden.underbough") const
    {
        return folder_.filePath(QLatin1String(name));
    }
    void rename(const char* name)
    {
        EXPECT_EQ(
            document_.change(QStringLiteral("rename to ") + QLatin1String(name), renamed(name)),
            QString());
    }
    static std::string nameIn(const QString& path)
    {
        return outside::answer(path, "SELECT json_extract(document, '$.name') FROM part "
                                     "WHERE kind = 'garden'");
    }

    QTemporaryDir folder_;
    Document document_{tables()};
};

TEST_F(DocumentStore, EveryEditIsInTheFileAsItHappens)
{
    rename("b");
    EXPECT_FALSE(document_.isDirty());
    EXPECT_EQ(nameIn(path()), "b");
    document_.history().undo();
    EXPECT_EQ(nameIn(path()), "a");
    document_.history().redo();
    EXPECT_EQ(nameIn(path()), "b");
    EXPECT_EQ(outside::integrity(path()), "ok");
}

TEST_F(DocumentStore, UndoAndRedoGoOnAfterARestart)
{
    rename("b");
    rename("c");
    rename("d");
    document_.history().undo();
    document_.start(smallGarden()); // lets the file go
    Document later(tables());
    ASSERT_EQ(later.open(path()), QString());
    EXPECT_EQ(later.garden()->name, "c");
    EXPECT_EQ(later.history().undoText(), QStringLiteral("rename to c"));
    EXPECT_EQ(later.history().redoText(), QStringLiteral("rename to d"));
    later.history().redo();
    EXPECT_EQ(*later.garden(), renamed("d"));
    for (int i = 0; i < 3; ++i)
        later.history().undo();
    EXPECT_EQ(*later.garden(), renamed("a"));
    EXPECT_FALSE(later.history().canUndo());
    EXPECT_EQ(nameIn(path()), "a");
}

TEST_F(DocumentStore, ANewStepAfterARestartReplacesWhatWasUndone)
{
    rename("b");
    rename("c");
    document_.history().undo();
    document_.start(smallGarden());
    {
        Document later(tables());
        ASSERT_EQ(later.open(path()), QString());
        EXPECT_EQ(later.change(QStringLiteral("other"), renamed("e")), QString());
        EXPECT_FALSE(later.history().canRedo());
    }
    Document last(tables());
    ASSERT_EQ(last.open(path()), QString());
    EXPECT_EQ(last.history().count(), 2);
    EXPECT_EQ(last.history().undoText(), QStringLiteral("other"));
    last.history().undo();
    EXPECT_EQ(last.garden()->name, "b");
}

TEST_F(DocumentStore, OneDragIsOneStepInTheFileToo)
{
    const int gesture = document_.newGesture();
    for (const auto* name : {"b", "c", "d"})
        EXPECT_EQ(document_.change(QStringLiteral("drag"), renamed(name), gesture), QString());
    EXPECT_TRUE(document_.flush());
    EXPECT_EQ(outside::answer(path(), "SELECT count(*) FROM step"), "1");
    EXPECT_EQ(nameIn(path()), "d");
    document_.start(smallGarden());
    Document later(tables());
    ASSERT_EQ(later.open(path()), QString());
    const int next = later.newGesture();
    EXPECT_GT(next, gesture) << "a new drag would join the old one";
    later.history().undo();
    EXPECT_EQ(later.garden()->name, "a");
}

TEST_F(DocumentStore, ADragThereAndBackLeavesNothingInTheFile)
{
    const int gesture = document_.newGesture();
    for (const auto* name : {"b", "a"})
        EXPECT_EQ(document_.change(QStringLiteral("drag"), renamed(name), gesture), QString());
    EXPECT_TRUE(document_.flush());
    EXPECT_EQ(outside::answer(path(), "SELECT count(*) FROM step"), "0");
}

TEST_F(DocumentStore, KeepsNoMoreThanTheLastThousandSteps)
{
    for (int i = 0; i < 20; ++i)
        rename(i % 2 == 0 ? "b" : "c");
    EXPECT_EQ(outside::answer(path(), "SELECT count(*) FROM step"), "20");
    EXPECT_EQ(document_.history().undoLimit(), kHistorySteps);
}

TEST_F(DocumentStore, TheSecondWindowIsReadOnlyAndSaysSo)
{
    rename("b");
    Document second(tables());
    ASSERT_EQ(second.open(path()), QString());
    EXPECT_TRUE(second.isOnlyShown());
    EXPECT_TRUE(second.fileProblem().contains(QStringLiteral("another window")));
    EXPECT_EQ(second.garden()->name, "b");
    EXPECT_NE(second.change(QStringLiteral("rename"), renamed("c")), QString());
    EXPECT_EQ(second.garden()->name, "b");
    EXPECT_NE(second.saveAs(path()), QString());
    rename("d");
    EXPECT_EQ(nameIn(path()), "d");
    EXPECT_EQ(second.saveAs(path("copy.underbough")), QString());
    EXPECT_EQ(second.change(QStringLiteral("rename"), renamed("e")), QString());
    EXPECT_EQ(nameIn(path("copy.underbough")), "e");
    EXPECT_EQ(nameIn(path()), "d");
}

TEST_F(DocumentStore, AWindowThatClosedLetsTheNextOneWrite)
{
    document_.start(smallGarden());
    Document next(tables());
    ASSERT_EQ(next.open(path()), QString());
    EXPECT_TRUE(next.savesItself());
    EXPECT_EQ(next.fileProblem(), QString());
}

TEST_F(DocumentStore, AMovedFileIsToldAndNothingIsLost)
{
    ASSERT_TRUE(QFile::rename(path(), path("moved.underbough")));
    rename("b");
    EXPECT_TRUE(document_.isDirty());
    EXPECT_TRUE(document_.fileProblem().contains(QStringLiteral("no longer there")))
        << document_.fileProblem().toStdString();
    EXPECT_FALSE(QFile::exists(path())) << "a new file was made";
    EXPECT_EQ(document_.garden()->name, "b");
    EXPECT_EQ(document_.saveAs(path("elsewhere.underbough")), QString());
    EXPECT_FALSE(document_.isDirty());
    EXPECT_EQ(document_.fileProblem(), QString());
    EXPECT_EQ(nameIn(path("elsewhere.underbough")), "b");
    EXPECT_EQ(document_.history().count(), 1);
}

TEST_F(DocumentStore, AFileThatComesBackTakesInWhatWaited)
{
    ASSERT_TRUE(QFile::rename(path(), path("away")));
    rename("b");
    rename("c");
    ASSERT_TRUE(QFile::rename(path("away"), path()));
    EXPECT_EQ(document_.save(), QString());
    EXPECT_FALSE(document_.isDirty());
    EXPECT_EQ(nameIn(path()), "c");
    EXPECT_EQ(outside::answer(path(), "SELECT count(*) FROM step"), "2");
}

TEST_F(DocumentStore, DoesNotWriteIntoAnotherGardenOfThatName)
{
    Document other(tables());
    other.start(renamed("other"));
    ASSERT_EQ(other.saveAs(path("other.underbough")), QString());
    other.start(smallGarden());
    ASSERT_TRUE(QFile::remove(path()));
    ASSERT_TRUE(QFile::rename(path("other.underbough"), path()));
    rename("b");
    EXPECT_TRUE(document_.isDirty());
    EXPECT_TRUE(document_.fileProblem().contains(QStringLiteral("changed")));
    EXPECT_EQ(nameIn(path()), "other");
}

TEST_F(DocumentStore, PhotosGoWhereTheGardenGoes)
{
    const QByteArray bytes("not really a picture");
    const std::string name = "shots/from the gate.jpg";
    document_.addPhoto(name, bytes);
    EXPECT_EQ(document_.photo(name), bytes) << "before it is in a file";
    EXPECT_EQ(document_.change(QStringLiteral("photo"), withPhoto()), QString());
    EXPECT_FALSE(document_.isDirty());
    EXPECT_EQ(document_.photo(name), bytes);
    ASSERT_TRUE(QDir(folder_.path()).mkdir(QStringLiteral("json")));
    ASSERT_EQ(document_.saveAs(path("json/garden.json")), QString());
    EXPECT_EQ(outside::bytes(path("json/shots/from the gate.jpg")), bytes);
    EXPECT_EQ(document_.photo(name), bytes) << "from a file beside it";
    ASSERT_EQ(document_.saveAs(path("again.underbough")), QString());
    EXPECT_EQ(document_.photo(name), bytes) << "from a garden file again";
}

TEST_F(DocumentStore, ExportAndImportAreLossless)
{
    const QByteArray bytes("\0\1 not really a picture \xff", 25);
    const std::string name = "shots/from the gate.jpg";
    document_.addPhoto(name, bytes);
    ASSERT_EQ(document_.change(QStringLiteral("photo"), withPhoto()), QString());
    ASSERT_TRUE(QDir(folder_.path()).mkdir(QStringLiteral("out")));
    const auto out = exportGarden(path(), path("out/garden.json"), tables());
    EXPECT_EQ(out.problem, QString());
    EXPECT_EQ(out.photos, 1U);
    EXPECT_EQ(outside::bytes(path("out/shots/from the gate.jpg")), bytes);
    const auto in = importGarden(path("out/garden.json"), path("back.underbough"), tables());
    EXPECT_EQ(in.problem, QString());
    EXPECT_EQ(in.photos, 1U);
    Document back(tables());
    ASSERT_EQ(back.open(path("back.underbough")), QString());
    EXPECT_EQ(*back.garden(), withPhoto());
    EXPECT_EQ(back.photo(name), bytes);
}

TEST_F(DocumentStore, ExportAndImportOverwriteNothingAndNameMissingPhotos)
{
    ASSERT_EQ(document_.change(QStringLiteral("photo"), withPhoto()), QString());
    const auto out = exportGarden(path(), path("garden.json"), tables());
    EXPECT_EQ(out.missing, std::vector<std::string>{"shots/from the gate.jpg"});
    EXPECT_NE(exportGarden(path(), path("garden.json"), tables()).problem, QString());
    EXPECT_NE(importGarden(path("garden.json"), path(), tables()).problem, QString());
    EXPECT_EQ(nameIn(path()), "Test garden");
}

TEST_F(DocumentStore, AChangeWithoutAWindowIsAStepToo)
{
    document_.start(smallGarden());
    const auto edit = [](model::Garden& garden) {
        garden.name = "by command";
        return QString();
    };
    EXPECT_EQ(changeGardenFile(path(), tables(), QStringLiteral("rename"), edit), QString());
    EXPECT_EQ(nameIn(path()), "by command");
    ASSERT_EQ(document_.open(path()), QString());
    EXPECT_EQ(document_.history().undoText(), QStringLiteral("rename"));
    EXPECT_NE(changeGardenFile(path(), tables(), QStringLiteral("rename"), edit), QString())
        << "a window has it open";
}

TEST_F(DocumentStore, AnOlderFileIsRaisedWithACopyAndTheWindowSaysSo)
{
    const QString kept = QStringLiteral(UNDERBOUGH_TESTS "/app/store/version-1.underbough");
    ASSERT_TRUE(QFile::copy(kept, path("old.underbough")));
    QFile::setPermissions(path("old.underbough"), QFile::ReadOwner | QFile::WriteOwner);
    ASSERT_EQ(document_.open(path("old.underbough")), QString());
    EXPECT_TRUE(document_.fileProblem().contains(QStringLiteral("old, version 1.underbough")));
    EXPECT_EQ(outside::answer(path("old.underbough"), "PRAGMA user_version"), "2");
    auto garden = *document_.garden();
    garden.name = "raised";
    EXPECT_EQ(document_.change(QStringLiteral("rename"), garden), QString());
    EXPECT_EQ(nameIn(path("old.underbough")), "raised");
    EXPECT_EQ(document_.fileProblem(), QString());
}

TEST_F(DocumentStore, ANewerFileIsRefusedAndTheOpenGardenStays)
{
    Document newer(tables());
    newer.start(smallGarden());
    ASSERT_EQ(newer.saveAs(path("newer.underbough")), QString());
    newer.start(smallGarden());
    outside::run(path("newer.underbough"), "PRAGMA user_version = 99");
    const QString problem = document_.open(path("newer.underbough"));
    EXPECT_TRUE(problem.contains(QStringLiteral("version 99"))) << problem.toStdString();
    EXPECT_FALSE(problem.contains(QLatin1Char('\n')));
    EXPECT_EQ(document_.path(), path());
    rename("still here");
    EXPECT_EQ(nameIn(path()), "still here");
}

TEST(FileSentences, SayWhatWasSavedOfADamagedFileAndWhatWasLost)
{
    Recovery recovery{.trees = 3, .limbs = 40, .visits = 12, .photos = 2, .lost = {}};
    EXPECT_EQ(recoverySummary(recovery).toStdString(),
              "trees: 3, limbs: 40, visits: 12, photos: 2");
    recovery.lost = {"of limbs \"east\" (oak)", "b", "c"};
    recovery.photos = 0;
    EXPECT_EQ(recoverySummary(recovery).toStdString(),
              "trees: 3, limbs: 40, visits: 12; lost: of limbs \"east\" (oak), b, c");
    recovery.lost.insert(recovery.lost.end(), 2, "d");
    EXPECT_EQ(recoverySummary(recovery).toStdString(),
              "trees: 3, limbs: 40, visits: 12; lost: of limbs \"east\" (oak), b, c and 2 more");
}

TEST_F(DocumentStore, ADamagedFileIsLeftAloneAndWhatCanBeReadIsOpened)
{
    rename("b");
    document_.start(smallGarden());
    outside::run(path(), "UPDATE part SET document = replace(document, '0.26', '0.27')");
    const QByteArray before = outside::bytes(path());
    ASSERT_EQ(document_.open(path()), QString());
    EXPECT_EQ(document_.path(), path("garden, recovered.underbough"));
    EXPECT_TRUE(document_.fileProblem().contains(QStringLiteral("doubtful: 1")))
        << document_.fileProblem().toStdString();
    EXPECT_EQ(outside::bytes(path()), before);
    EXPECT_EQ(document_.garden()->trees[0].limbs.size(), 2U);
    EXPECT_EQ(document_.garden()->name, "b");
}

TEST_F(DocumentStore, TheSameFileCanBeOpenedAgain)
{
    rename("b");
    ASSERT_EQ(document_.open(path()), QString());
    EXPECT_TRUE(document_.savesItself());
    EXPECT_EQ(document_.garden()->name, "b");
    rename("c");
    EXPECT_EQ(nameIn(path()), "c");
}

} // namespace
} // namespace app
