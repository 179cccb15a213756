#include "app/document/garden_file.hpp"
#include "app/view/day_view_model.hpp"
#include "app/view/diary_view_model.hpp"
#include "app/view/garden_view_model.hpp"
#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/wait_for.hpp"

#include <QAbstractItemModelTester>
#include <QCoreApplication>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <algorithm>

namespace app {
namespace {

using namespace std::chrono_literals;

/// The small maple with its bough so low that it has to be cut.
model::Garden lowGarden()
{
    auto garden = smallGarden();
    auto& bough = garden.trees[0].limbs[1];
    bough.stations[1].position_m.z = 2.3;
    bough.stations[2].position_m.z = 2.3;
    return garden;
}

class DiaryViewTest : public ::testing::Test {
protected:
    DiaryViewTest() { restart(lowGarden()); }

    void restart(model::Garden garden)
    {
        workspace_.document().start(std::move(garden));
        settle();
    }
    void settle()
    {
        ASSERT_TRUE(waitFor([this] { return !workspace_.isBusy() && !diary_.isBusy(); }));
        QCoreApplication::processEvents();
    }
    const model::Tree& tree() const { return workspace_.garden().trees.at(0); }
    bool isDue(const char* what) const
    {
        const auto& lines = const_cast<DiaryViewTest*>(this)->diary_.due()->lines();
        return std::ranges::any_of(lines, [&](const DueLine& line) {
            return line.what.contains(QLatin1String(what)) &&
                   line.state == QLatin1String("overdue");
        });
    }

    int argc_ = 0;
    QCoreApplication application_{argc_, nullptr};
    Workspace workspace_{tables(), Units(QLocale(QLocale::English), Measures::metric),
                         modelWorks(tables()), std::chrono::year(2025) / 7 / 3};
    GardenViewModel garden_{workspace_, {}};
    DiaryViewModel diary_{workspace_, modelDiaryWork(tables())};
    VisitForm& form_{*diary_.form()};
};

TEST_F(DiaryViewTest, ModelsKeepTheirPromises)
{
    const QAbstractItemModelTester due(diary_.due(),
                                       QAbstractItemModelTester::FailureReportingMode::Fatal);
    const QAbstractItemModelTester visits(diary_.visits(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    const QAbstractItemModelTester ticks(form_.ticks(),
                                         QAbstractItemModelTester::FailureReportingMode::Fatal);
    const QAbstractItemModelTester strips(form_.strips(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    form_.start();
    form_.ticks()->tickAll();
    form_.save();
    settle();
    EXPECT_GT(diary_.due()->rowCount(), 0);
    EXPECT_EQ(diary_.visits()->rowCount(), 1);
}

TEST_F(DiaryViewTest, TickingThePlanWritesAVisitAndCutsTheSketchInOneStep)
{
    ASSERT_TRUE(isDue("Headroom"));
    form_.start();
    ASSERT_GT(form_.ticks()->rowCount(), 0);
    EXPECT_EQ(form_.property("date").toString(), QStringLiteral("2025-07-03"));
    EXPECT_FALSE(form_.canCutSketch());
    form_.ticks()->tickAll();
    EXPECT_TRUE(form_.canCutSketch());
    EXPECT_TRUE(form_.leafHint().contains(QLatin1String("by the plan")));
    form_.setProperty("by", QStringLiteral("Ann"));
    form_.strips()->setBefore(0, QStringLiteral("1.5 m"));
    form_.strips()->setAfter(0, QStringLiteral("2.6"));
    ASSERT_TRUE(form_.save()) << form_.problem().toStdString();
    EXPECT_FALSE(form_.isOpen());
    EXPECT_EQ(workspace_.document().history().count(), 1);
    ASSERT_EQ(tree().visits.size(), 1U);
    const auto& visit = tree().visits[0];
    EXPECT_EQ(visit.date, 2025y / 7 / 3);
    EXPECT_EQ(visit.by, "Ann");
    EXPECT_FALSE(visit.cuts.empty());
    EXPECT_FALSE(visit.limbsBefore.empty());
    EXPECT_GT(visit.leafShare.value_or(0.0), 0.0);
    ASSERT_EQ(visit.headroom.size(), 1U);
    EXPECT_DOUBLE_EQ(*visit.headroom[0].after_m, 2.6);
    settle();
    EXPECT_FALSE(isDue("Headroom"));
    EXPECT_GT(diary_.taken(), 0.0);
    EXPECT_EQ(diary_.visits()->lines().at(0).title, QStringLiteral("July 3, 2025, Ann"));
    EXPECT_TRUE(diary_.visits()->lines().at(0).hasPictures);
    EXPECT_EQ(diary_.sketchesOf(0)->before.limbs.size(), lowGarden().trees[0].limbs.size());
    garden_.undo();
    settle();
    EXPECT_EQ(workspace_.garden(), lowGarden());
    EXPECT_TRUE(isDue("Headroom"));
    EXPECT_EQ(diary_.visits()->rowCount(), 0);
}

TEST_F(DiaryViewTest, ASecondVisitSeesWhatTheFirstTook)
{
    const double before = workspace_.treeAssessment()->suggestion.allowance;
    form_.start();
    form_.setProperty("leaf", QStringLiteral("20 %"));
    form_.addCut(2, QStringLiteral("stem"), QStringLiteral("20 %"));
    ASSERT_TRUE(form_.save()) << form_.problem().toStdString();
    settle();
    EXPECT_NEAR(workspace_.treeAssessment()->suggestion.allowance, before - 0.20, 1e-9);
    EXPECT_NEAR(diary_.taken(), 0.20, 1e-9);
}

TEST_F(DiaryViewTest, AnEarlierVisitIsWrittenByHandAndLeavesTheSketch)
{
    form_.start();
    form_.setProperty("date", QStringLiteral("2019-02-14"));
    EXPECT_TRUE(form_.addCut(0, QStringLiteral("a limb long gone"), {}));
    EXPECT_FALSE(form_.canCutSketch());
    EXPECT_TRUE(form_.addCut(3, QStringLiteral("path bough"), QStringLiteral("2.3 m")));
    EXPECT_EQ(form_.freeCuts().size(), 2);
    form_.removeCut(1);
    EXPECT_EQ(form_.freeCuts().size(), 1);
    form_.setProperty("note", QStringLiteral("Before the drawing was made."));
    ASSERT_TRUE(form_.save()) << form_.problem().toStdString();
    EXPECT_EQ(tree().limbs, lowGarden().trees[0].limbs);
    EXPECT_EQ(tree().visits.at(0).cuts.at(0).limb, "a limb long gone");
    EXPECT_FALSE(tree().visits.at(0).leafShare);
}

TEST_F(DiaryViewTest, ACutMadeOtherwiseIsWrittenAsItWasMade)
{
    form_.start();
    ASSERT_GT(form_.ticks()->rowCount(), 0);
    form_.ticks()->setTick(0, Tick::Changed);
    EXPECT_FALSE(form_.save());
    EXPECT_TRUE(form_.problem().contains(QLatin1String("Cut 1")));
    form_.ticks()->setAmount(0, QStringLiteral("0.7"));
    const auto planned = workspace_.treeAssessment()->suggestion.cuts.at(0).cut;
    ASSERT_TRUE(form_.save()) << form_.problem().toStdString();
    const auto& made = tree().visits.at(0).cuts.at(0);
    EXPECT_EQ(made.limb, planned.limb);
    EXPECT_NE(made, planned);
}

TEST_F(DiaryViewTest, AWoundIsFollowedUntilItIsSeenClosed)
{
    form_.start();
    form_.setProperty("date", QStringLiteral("2022-02-01"));
    form_.addCut(1, QStringLiteral("path bough"), QStringLiteral("2 m"));
    form_.setCutsSketch(false);
    ASSERT_TRUE(form_.save()) << form_.problem().toStdString();
    EXPECT_EQ(tree().limbs, lowGarden().trees[0].limbs);
    settle();
    ASSERT_EQ(diary_.wounds().size(), 1);
    EXPECT_TRUE(diary_.wounds().at(0).contains(QLatin1String("path bough")));
    EXPECT_TRUE(diary_.woundsOpen().at(0));
    diary_.noteClosed(0);
    settle();
    EXPECT_EQ(tree().visits.at(0).wounds.at(0).closed, 2025y / 7 / 3);
    EXPECT_FALSE(diary_.woundsOpen().at(0));
}

TEST_F(DiaryViewTest, WhatCantBeReadIsToldAndNothingIsLost)
{
    form_.start();
    for (const auto& [field, wrong] :
         {std::pair("date", "yesterday"), std::pair("leaf", "a lot"), std::pair("air", "hot"),
          std::pair("humidity", "140 %"), std::pair("gust", "breezy"),
          std::pair("nextDue", "2020-01-01")}) {
        const QVariant good = form_.property(field);
        form_.setProperty(field, QString::fromLatin1(wrong));
        EXPECT_FALSE(form_.save()) << field;
        EXPECT_FALSE(form_.problem().isEmpty()) << field;
        EXPECT_EQ(form_.property(field).toString(), QLatin1String(wrong));
        form_.setProperty(field, good);
    }
    EXPECT_FALSE(form_.addCut(1, QStringLiteral("stem"), QStringLiteral("far out")));
    EXPECT_FALSE(form_.addCut(0, QStringLiteral("  "), {}));
    EXPECT_TRUE(tree().visits.empty());
    EXPECT_EQ(workspace_.document().history().count(), 0);
    EXPECT_TRUE(form_.isOpen());
}

TEST_F(DiaryViewTest, DoneOpensTheFormOfTheTreeInQuestion)
{
    auto garden = lowGarden();
    auto other = garden.trees[0];
    other.id = "second";
    other.name = "the other maple";
    other.position_m = {20, 20};
    garden.trees.push_back(other);
    restart(garden);
    diary_.startVisit(QStringLiteral("second"));
    EXPECT_EQ(workspace_.tree()->id, "second");
    EXPECT_TRUE(form_.isOpen());
    EXPECT_TRUE(form_.title().contains(QLatin1String("the other maple")));
    diary_.chooseTree(QStringLiteral("maple"));
    EXPECT_FALSE(form_.isOpen());
}

TEST_F(DiaryViewTest, ExportsACalendarOrSaysWhyNot)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("trees.ics"));
    ASSERT_TRUE(diary_.exportCalendar(QUrl::fromLocalFile(path)));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray text = file.readAll();
    EXPECT_TRUE(text.startsWith("BEGIN:VCALENDAR\r\n"));
    EXPECT_EQ(text.count("BEGIN:VEVENT"), diary_.due()->rowCount());
    EXPECT_FALSE(diary_.exportCalendar(
        QUrl::fromLocalFile(folder.filePath(QStringLiteral("no/such/folder.ics")))));
    EXPECT_FALSE(garden_.problem().isEmpty());
}

// Law: what is written to a file and read again is the same garden, visit and all.
TEST_F(DiaryViewTest, AVisitLastsInTheFile)
{
    form_.start();
    form_.ticks()->tickAll();
    form_.setProperty("air", QStringLiteral("18 °C"));
    ASSERT_TRUE(form_.save()) << form_.problem().toStdString();
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("garden.json"));
    ASSERT_TRUE(writeGardenFile(path, workspace_.garden()).isEmpty());
    const auto read = readGardenFile(path, tables());
    ASSERT_TRUE(read.garden) << read.problem.toStdString();
    EXPECT_EQ(*read.garden, workspace_.garden());
}

// The thresholds are those of day_check_test.cpp; here only that they reach the page.
TEST_F(DiaryViewTest, TheDayIsCheckedFromWhatIsTyped)
{
    DayViewModel day(workspace_);
    EXPECT_EQ(day.tone(), Tone::Plain);
    day.setAir(QStringLiteral("21"));
    day.setGust(QStringLiteral("10 km/h"));
    EXPECT_TRUE(day.findings().isEmpty());
    day.setGust(QStringLiteral("60 km/h"));
    EXPECT_EQ(day.tone(), Tone::Grave);
    EXPECT_EQ(day.findings().size(), 1);
    day.setGust(QStringLiteral("strongish"));
    EXPECT_EQ(day.tone(), Tone::Mind);
    EXPECT_TRUE(day.headline().contains(QLatin1String("gusts can't be read")));
    EXPECT_GE(day.checks().size(), 2);
}

} // namespace
} // namespace app
