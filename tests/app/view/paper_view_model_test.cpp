#include "app/view/paper_view_model.hpp"

#include "tests/app/shipped_tables.hpp"
#include "tests/app/small_garden.hpp"
#include "tests/app/wait_for.hpp"

#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QSignalSpy>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace app {
namespace {

/// A report without its year of light, which takes the longest and is not what is tested here.
PaperReport quickReport(const GardenSnapshot& garden, const model::Question& question,
                        const std::string& tree, const std::atomic<bool>&)
{
    PaperReport report;
    report.garden = garden;
    report.assessment = assess(*garden, tables(), question, tree);
    return report;
}

class PaperViewModelTest : public ::testing::Test {
protected:
    PaperViewModelTest() { workspace_.document().start(smallGarden()); }

    void prepare()
    {
        paper_.prepare();
        ASSERT_TRUE(waitFor([this] { return paper_.pageCount() > 0 && !paper_.busy(); }));
    }

    int argc_ = 1;
    char name_[5] = "test";
    char* argv_[2] = {name_, nullptr};
    QGuiApplication application_{argc_, argv_};
    Workspace workspace_{tables(), Units(QLocale(QLocale::English), Measures::metric),
                         modelWorks(tables()), std::chrono::year(2025) / 7 / 3};
    PaperViewModel paper_{workspace_, &quickReport};
    QTemporaryDir folder_;
};

TEST_F(PaperViewModelTest, ShowsThePagesOfTheChosenTree)
{
    EXPECT_EQ(paper_.pageCount(), 0);
    prepare();
    EXPECT_TRUE(paper_.title().contains(QLatin1String("the maple")));
    EXPECT_GT(paper_.pageCount(), 1);
    EXPECT_FALSE(paper_.busy());
}

TEST_F(PaperViewModelTest, LaysThePagesOutAnewForOtherPaper)
{
    prepare();
    paper_.setLetter(false);
    QSignalSpy changed(&paper_, &PaperViewModel::changed);
    paper_.setLetter(true);
    EXPECT_EQ(changed.count(), 1);
    EXPECT_NEAR(paper_.heightOfWidth(), 11.0 / 8.5, 1e-3);
    paper_.setLetter(false);
    EXPECT_NEAR(paper_.heightOfWidth(), 297.0 / 210.0, 2e-3);
    paper_.setForArborist(true);
    EXPECT_EQ(paper_.pageCount(), 1);
}

TEST_F(PaperViewModelTest, SavesAndSaysWhatCameOfIt)
{
    EXPECT_FALSE(paper_.save(QUrl::fromLocalFile(folder_.filePath(QStringLiteral("a.pdf")))));
    prepare();
    const QString pdf = folder_.filePath(QStringLiteral("a.pdf"));
    EXPECT_TRUE(paper_.save(QUrl::fromLocalFile(pdf)));
    QFile file(pdf);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
    const QString html = folder_.filePath(QStringLiteral("a.html"));
    EXPECT_TRUE(paper_.save(QUrl::fromLocalFile(html)));
    QFile page(html);
    ASSERT_TRUE(page.open(QIODevice::ReadOnly));
    EXPECT_TRUE(page.readAll().startsWith("<!DOCTYPE html>"));
    EXPECT_FALSE(paper_.save(QUrl::fromLocalFile(QStringLiteral("/no/such/folder/a.pdf"))));
    EXPECT_TRUE(paper_.said().contains(QLatin1String("could not be written")));
}

TEST_F(PaperViewModelTest, PutsPicturesTablesAndPlanInTheFolderThatIsNamed)
{
    prepare();
    const QDir parts(folder_.filePath(QStringLiteral("new/for the neighbour")));
    EXPECT_TRUE(paper_.saveParts(QUrl::fromLocalFile(parts.path())));
    EXPECT_TRUE(paper_.said().contains(QDir::toNativeSeparators(parts.path())));
    const auto count = [&parts](const QString& ending) {
        return parts.entryList({QLatin1Char('*') + ending}, QDir::Files).size();
    };
    EXPECT_GE(count(QStringLiteral(".png")), 1);
    EXPECT_EQ(count(QStringLiteral(".csv")), 3);
    EXPECT_EQ(count(QStringLiteral(".geojson")), 1);
    QFile inTheWay(folder_.filePath(QStringLiteral("a file")));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    EXPECT_FALSE(paper_.saveParts(QUrl::fromLocalFile(inTheWay.fileName())));
    EXPECT_TRUE(paper_.said().contains(QLatin1String("Choose another place")));
}

} // namespace
} // namespace app
