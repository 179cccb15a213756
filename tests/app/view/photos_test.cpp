#include "app/view/diary_view_model.hpp"
#include "app/view/garden_view_model.hpp"
#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/store/picture_files.hpp"

#include <QFile>
#include <QGuiApplication>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace app {
namespace {

model::Garden visitedGarden()
{
    auto garden = smallGarden();
    model::Visit visit;
    visit.id = "2024-07-14";
    visit.date = std::chrono::year(2024) / 7 / 14;
    garden.trees[0].visits = {visit};
    return garden;
}

class PhotosTest : public ::testing::Test {
protected:
    PhotosTest()
    {
        workspace_.document().start(visitedGarden());
        EXPECT_EQ(workspace_.document().saveAs(garden()), QString());
    }

    QString garden() const { return folder_.filePath(QStringLiteral("garden.underbough")); }
    QUrl written(const char* name, const QByteArray& bytes) const
    {
        const QString path = folder_.filePath(QString::fromUtf8(name));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
        return QUrl::fromLocalFile(path);
    }
    const model::Tree& tree() const { return workspace_.garden().trees.at(0); }
    QUndoStack& history() { return workspace_.document().history(); }

    int argc_ = 1;
    char name_[5] = "test";
    char* argv_[2] = {name_, nullptr};
    QGuiApplication application_{argc_, argv_};
    QTemporaryDir folder_;
    Workspace workspace_{tables(), Units(QLocale(QLocale::English), Measures::metric),
                         modelWorks(tables()), std::chrono::year(2025) / 7 / 3};
    GardenViewModel garden_{workspace_, {}};
    DiaryViewModel diary_{workspace_, modelDiaryWork(tables())};
    PhotosViewModel& photos_{*diary_.photos()};
};

TEST_F(PhotosTest, OfATreeAreInTheFileAtOnceAndSurviveARestart)
{
    const auto bytes = test::jpeg(400, 300, 6);
    ASSERT_TRUE(
        photos_.add({}, {written("north.jpg", bytes), written("south.jpg", test::jpeg(40, 30))}));
    ASSERT_EQ(tree().photos.size(), 2U);
    EXPECT_EQ(history().count(), 1) << "two photos added together are one step";
    EXPECT_FALSE(workspace_.document().isDirty());
    EXPECT_EQ(photos_.treeFiles().size(), 2);
    EXPECT_EQ(photos_.small(photos_.treeFiles()[0]).size(), QSize(192, 256));
    EXPECT_EQ(photos_.large(photos_.treeFiles()[0]).size(), QSize(300, 400));

    Document again(tables());
    ASSERT_EQ(again.open(garden()), QString());
    EXPECT_TRUE(again.isOnlyShown()) << "it is open here";
    EXPECT_EQ(again.garden()->trees[0].photos, tree().photos);
    EXPECT_EQ(again.photo(tree().photos[0].file), bytes);
}

TEST_F(PhotosTest, OfAVisitAreShownInTheTimelineAndUndone)
{
    ASSERT_TRUE(
        photos_.add(QStringLiteral("2024-07-14"), {written("after.png", test::jpeg(40, 30))}));
    ASSERT_EQ(tree().visits[0].photos.size(), 1U);
    ASSERT_EQ(diary_.visits()->lines().size(), 1U);
    EXPECT_EQ(diary_.visits()->lines()[0].photoFiles.size(), 1);
    history().undo();
    EXPECT_TRUE(tree().visits[0].photos.empty());
    EXPECT_TRUE(diary_.visits()->lines()[0].photoFiles.isEmpty());
    history().redo();
    EXPECT_FALSE(photos_.small(diary_.visits()->lines()[0].photoFiles[0]).isNull());
}

TEST_F(PhotosTest, TakenOutComeBackWithUndoToTheByte)
{
    const auto bytes = test::jpeg(40, 30);
    ASSERT_TRUE(photos_.add({}, {written("a.jpg", bytes), written("b.jpg", test::jpeg(60, 30))}));
    photos_.show({}, photos_.treeFiles()[0]);
    ASSERT_TRUE(photos_.isOpen());
    photos_.setNote(QStringLiteral("  Seen from the gate "));
    EXPECT_EQ(photos_.note(), QStringLiteral("Seen from the gate"));
    EXPECT_TRUE(photos_.title().endsWith(QStringLiteral("photo 1 of 2")));
    const auto before = tree().photos;
    photos_.remove();
    EXPECT_EQ(tree().photos.size(), 1U);
    EXPECT_EQ(photos_.count(), 1) << "the next one is shown";
    photos_.remove();
    EXPECT_FALSE(photos_.isOpen());
    history().undo();
    history().undo();
    EXPECT_EQ(tree().photos, before);
    EXPECT_EQ(workspace_.document().photo(before[0].file), bytes);
}

TEST_F(PhotosTest, StepFromOneToTheNextAndNoFurther)
{
    ASSERT_TRUE(photos_.add(
        {}, {written("a.jpg", test::jpeg(40, 30)), written("b.jpg", test::jpeg(60, 30))}));
    photos_.show({}, photos_.treeFiles()[0]);
    photos_.step(1);
    EXPECT_EQ(photos_.place(), 1);
    photos_.step(1);
    EXPECT_EQ(photos_.place(), 1);
    history().undo();
    EXPECT_FALSE(photos_.isOpen()) << "what is undone is not shown any more";
}

TEST_F(PhotosTest, ThatAreNoPicturesAreToldAndTheOthersKept)
{
    EXPECT_FALSE(photos_.add(
        {}, {written("notes.txt", "not a picture"), written("b.jpg", test::jpeg(60, 30))}));
    EXPECT_EQ(tree().photos.size(), 1U);
    EXPECT_TRUE(workspace_.problem().startsWith(QStringLiteral("notes.txt is no picture")));
    EXPECT_FALSE(photos_.add(QStringLiteral("no such visit"), {}));
}

TEST_F(PhotosTest, TheSamePictureTwiceIsOne)
{
    const auto file = written("a.jpg", test::jpeg(40, 30));
    EXPECT_TRUE(photos_.add({}, {file, file}));
    EXPECT_TRUE(photos_.add({}, {file}));
    EXPECT_EQ(tree().photos.size(), 1U);
    EXPECT_EQ(history().count(), 1);
}

TEST_F(PhotosTest, OfAVisitBeingWrittenGoInWithItOrNotAtAll)
{
    auto& form = *diary_.form();
    form.start();
    ASSERT_TRUE(form.addPhotos({written("a.jpg", test::jpeg(40, 30))}));
    EXPECT_FALSE(form.addPhotos({written("b.txt", "none")}));
    EXPECT_TRUE(form.problem().startsWith(QStringLiteral("b.txt")));
    EXPECT_FALSE(photos_.small(form.photoFiles()[0]).isNull());
    form.close();
    form.start();
    EXPECT_TRUE(form.photoFiles().isEmpty());
    ASSERT_TRUE(form.addPhotos({written("a.jpg", test::jpeg(40, 30))}));
    form.setPhotoNote(0, QStringLiteral("Before"));
    form.addTip(1);
    EXPECT_EQ(form.tips().size(), 1);
    ASSERT_TRUE(form.save()) << form.problem().toStdString();
    const auto& visit = tree().visits.back();
    ASSERT_EQ(visit.photos.size(), 1U);
    EXPECT_EQ(visit.photos[0].note, "Before");
    EXPECT_FALSE(workspace_.document().photo(visit.photos[0].file).isEmpty());
    ASSERT_EQ(visit.tips.size(), 1U);
    EXPECT_EQ(visit.tips[0].limb, "bough");
    EXPECT_EQ(visit.tips[0].before_m, tree().limbs[1].stations.back().position_m);
}

TEST_F(PhotosTest, AVisitTakenOutComesBackWithUndo)
{
    diary_.removeVisit(QStringLiteral("2024-07-14"));
    EXPECT_TRUE(tree().visits.empty());
    EXPECT_EQ(diary_.visits()->rowCount(), 0);
    history().undo();
    EXPECT_EQ(tree().visits.size(), 1U);
}

} // namespace
} // namespace app
