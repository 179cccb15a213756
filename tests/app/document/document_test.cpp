#include "app/document/document.hpp"

#include "app/document/garden_file.hpp"
#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace app {
namespace {

model::Garden renamed(const model::Garden& garden, const std::string& name)
{
    auto other = garden;
    other.name = name;
    return other;
}

QByteArray contents(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

class DocumentTest : public ::testing::Test {
protected:
    DocumentTest() { document_.start(smallGarden()); }
    QString file(const char* name) const { return folder_.filePath(QLatin1String(name)); }

    QTemporaryDir folder_;
    Document document_{tables()};
};

TEST_F(DocumentTest, UndoGivesTheOldGardenBackAndRedoTheNew)
{
    const auto changed = renamed(smallGarden(), "Other");
    EXPECT_EQ(document_.change(QStringLiteral("rename"), changed), QString());
    EXPECT_EQ(*document_.garden(), changed);
    EXPECT_EQ(document_.history().undoText(), QStringLiteral("rename"));
    document_.history().undo();
    EXPECT_EQ(*document_.garden(), smallGarden());
    document_.history().redo();
    EXPECT_EQ(*document_.garden(), changed);
}

TEST_F(DocumentTest, OneGestureIsOneStep)
{
    const int gesture = document_.newGesture();
    for (const auto* name : {"a", "b", "c"})
        EXPECT_EQ(document_.change(QStringLiteral("drag"), renamed(smallGarden(), name), gesture),
                  QString());
    EXPECT_EQ(document_.history().count(), 1);
    document_.history().undo();
    EXPECT_EQ(*document_.garden(), smallGarden());
}

TEST_F(DocumentTest, TwoGesturesAreTwoSteps)
{
    for (const auto* name : {"a", "b"})
        EXPECT_EQ(document_.change(QStringLiteral("drag"), renamed(smallGarden(), name),
                                   document_.newGesture()),
                  QString());
    EXPECT_EQ(document_.history().count(), 2);
}

TEST_F(DocumentTest, NothingChangedMeansNoStep)
{
    EXPECT_EQ(document_.change(QStringLiteral("nothing"), smallGarden()), QString());
    EXPECT_EQ(document_.history().count(), 0);
    EXPECT_FALSE(document_.isDirty());
}

TEST_F(DocumentTest, ADragThereAndBackLeavesNoStep)
{
    const int gesture = document_.newGesture();
    EXPECT_EQ(document_.change(QStringLiteral("drag"), renamed(smallGarden(), "a"), gesture),
              QString());
    EXPECT_EQ(document_.change(QStringLiteral("drag"), smallGarden(), gesture), QString());
    EXPECT_EQ(document_.history().count(), 0);
    EXPECT_FALSE(document_.isDirty());
}

TEST_F(DocumentTest, AGardenThatCantBeReckonedWithIsRefusedAndTheOldOneStays)
{
    auto broken = smallGarden();
    broken.trees[0].limbs[1].stations[1].diameter_m = -0.1;
    EXPECT_NE(document_.change(QStringLiteral("break"), broken), QString());
    EXPECT_EQ(*document_.garden(), smallGarden());
    EXPECT_EQ(document_.history().count(), 0);
}

TEST_F(DocumentTest, GivesBackWhatWasSaved)
{
    EXPECT_EQ(document_.saveAs(file("garden.json")), QString());
    Document other(tables());
    EXPECT_EQ(other.open(file("garden.json")), QString());
    EXPECT_EQ(*other.garden(), smallGarden());
    EXPECT_EQ(other.name(), QStringLiteral("garden"));
}

TEST_F(DocumentTest, IsDirtyFromTheFirstEditUntilItIsSaved)
{
    EXPECT_EQ(document_.saveAs(file("garden.json")), QString());
    EXPECT_FALSE(document_.isDirty());
    EXPECT_EQ(document_.change(QStringLiteral("rename"), renamed(smallGarden(), "b")), QString());
    EXPECT_TRUE(document_.isDirty());
    EXPECT_EQ(document_.save(), QString());
    EXPECT_FALSE(document_.isDirty());
    document_.history().undo();
    EXPECT_TRUE(document_.isDirty());
}

TEST_F(DocumentTest, OpeningReplacesTheGardenAndItsHistory)
{
    ASSERT_EQ(document_.saveAs(file("garden.json")), QString());
    EXPECT_EQ(document_.change(QStringLiteral("rename"), renamed(smallGarden(), "b")), QString());
    EXPECT_EQ(document_.open(file("garden.json")), QString());
    EXPECT_EQ(*document_.garden(), smallGarden());
    EXPECT_EQ(document_.history().count(), 0);
}

TEST_F(DocumentTest, AFileThatCantBeReadLeavesTheOpenGardenAlone)
{
    QFile broken(file("broken.json"));
    ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
    broken.write("{\"format\": \"underbough-garden\", \"version\": 1, ");
    broken.close();
    for (const auto& path : {file("broken.json"), file("missing.json"), folder_.path()}) {
        const QString problem = document_.open(path);
        EXPECT_TRUE(problem.contains(QDir::toNativeSeparators(path))) << problem.toStdString();
        EXPECT_FALSE(problem.contains(QLatin1Char('\n')));
        EXPECT_EQ(*document_.garden(), smallGarden());
    }
}

TEST_F(DocumentTest, AnUnknownSpeciesIsNamedAndNotOpened)
{
    auto garden = smallGarden();
    garden.trees[0].species = "Arbor fabulosa";
    ASSERT_EQ(writeGardenFile(file("fable.json"), garden), QString());
    EXPECT_TRUE(document_.open(file("fable.json")).contains(QStringLiteral("Arbor fabulosa")));
    EXPECT_EQ(*document_.garden(), smallGarden());
}

TEST_F(DocumentTest, AFailedSaveLeavesTheGardenDirtyAndSaysSo)
{
    EXPECT_EQ(document_.change(QStringLiteral("rename"), renamed(smallGarden(), "b")), QString());
    EXPECT_NE(document_.saveAs(file("no/such/folder/garden.json")), QString());
    EXPECT_TRUE(document_.isDirty());
    EXPECT_EQ(document_.path(), QString());
}

TEST_F(DocumentTest, DoesNotWriteOverWhatAnotherProgramWroteMeanwhile)
{
    ASSERT_EQ(document_.saveAs(file("garden.json")), QString());
    QFile foreign(file("garden.json"));
    ASSERT_TRUE(foreign.open(QIODevice::ReadWrite));
    foreign.write("other");
    foreign.flush();
    foreign.setFileTime(QDateTime::currentDateTime().addSecs(5), QFileDevice::FileModificationTime);
    foreign.close();
    const auto theirs = contents(file("garden.json"));
    EXPECT_EQ(document_.change(QStringLiteral("rename"), renamed(smallGarden(), "b")), QString());
    EXPECT_NE(document_.save(), QString());
    EXPECT_EQ(contents(file("garden.json")), theirs);
    EXPECT_TRUE(document_.isDirty());
}

TEST_F(DocumentTest, SavingLeavesNothingElseInTheFolder)
{
    ASSERT_EQ(document_.saveAs(file("garden.json")), QString());
    EXPECT_EQ(QDir(folder_.path()).entryList(QDir::Files),
              QStringList{QStringLiteral("garden.json")});
}

} // namespace
} // namespace app
