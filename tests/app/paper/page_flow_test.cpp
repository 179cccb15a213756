#include "app/paper/page_flow.hpp"

#include "app/paper/pdf_sheets.hpp"
#include "app/paper/usual_paper.hpp"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QGuiApplication>
#include <QLocale>
#include <QProcess>
#include <QTemporaryFile>

namespace app {
namespace {

/// Qt's letters, without a screen.
class Letters : public testing::Environment {
public:
    void SetUp() override
    {
        if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
            qputenv("QT_QPA_PLATFORM", "offscreen");
        application_ = std::make_unique<QGuiApplication>(count_, words_);
    }
    void TearDown() override { application_.reset(); }

private:
    int count_{1};
    char name_[11]{"paper_test"};
    char* words_[2]{name_, nullptr};
    std::unique_ptr<QGuiApplication> application_;
};
[[maybe_unused]] const auto* const kLetters = testing::AddGlobalTestEnvironment(new Letters);

/// The words of each page, as poppler's pdftotext reads them.
std::vector<QString> pagesRead(const Sheet& sheet, QPageSize::PageSizeId paper)
{
    QTemporaryFile file;
    EXPECT_TRUE(file.open());
    EXPECT_TRUE(writePdf(laidOut(sheet, paper), paper, file));
    file.flush();
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"),
                 {QStringLiteral("-layout"), file.fileName(), QStringLiteral("-")});
    EXPECT_TRUE(reader.waitForFinished()) << "pdftotext of poppler-utils";
    const auto text = QString::fromUtf8(reader.readAllStandardOutput());
    std::vector<QString> pages;
    for (const auto& page : text.split(QLatin1Char('\f')))
        pages.push_back(page);
    pages.pop_back(); // after the last form feed
    return pages;
}

Sheet sheetOf(std::vector<SheetBlock> blocks)
{
    return {QStringLiteral("Test"), QStringLiteral("foot words"), std::move(blocks)};
}

QString number(const char* prefix, int i)
{
    return QLatin1String(prefix) + QString::number(i);
}

// Brute force: every row is three lines high; the three stand on one page, whatever page that is.
TEST(PageFlow, NeverSplitsARowOfATable)
{
    Table table;
    table.head = {QStringLiteral("Headword"), QStringLiteral("More")};
    table.widths = {0.5, 0.5};
    for (int i = 0; i < 90; ++i)
        table.rows.push_back({number("a", i) + QLatin1Char('\n') + number("b", i) +
                                  QLatin1Char('\n') + number("c", i),
                              QStringLiteral("x")});
    for (const auto paper : {QPageSize::A4, QPageSize::Letter}) {
        const auto pages = pagesRead(sheetOf({table}), paper);
        EXPECT_GT(pages.size(), 3u);
        int rows = 0;
        for (const auto& page : pages) {
            EXPECT_TRUE(page.contains(QLatin1String("Headword")));
            const auto words = page.simplified().split(QLatin1Char(' '));
            for (int i = 0; i < 90; ++i) {
                const bool first = words.contains(number("a", i));
                EXPECT_EQ(words.contains(number("b", i)), first) << i;
                EXPECT_EQ(words.contains(number("c", i)), first) << i;
                rows += first ? 1 : 0;
            }
        }
        EXPECT_EQ(rows, 90);
    }
}

TEST(PageFlow, LosesNoWordOfALongTextAndNoLetterOfALongWord)
{
    QString text;
    for (int i = 0; i < 2500; ++i)
        text += number("w", i) + QLatin1Char(' ');
    const QString longWord = QString(300, QLatin1Char('Q'));
    const auto pages =
        pagesRead(sheetOf({Paragraph{text}, Paragraph{longWord}}), QPageSize::Letter);
    const auto read = QStringList(pages.begin(), pages.end()).join(QLatin1Char(' ')).simplified();
    const auto words = read.split(QLatin1Char(' '));
    for (int i = 0; i < 2500; ++i)
        EXPECT_TRUE(words.contains(number("w", i))) << i;
    EXPECT_EQ(read.count(QLatin1Char('Q')), 300);
}

TEST(PageFlow, NumbersThePagesAndRepeatsTheFoot)
{
    const auto pages = pagesRead(
        sheetOf({Paragraph{QStringLiteral("one")}, NewPage{}, Paragraph{QStringLiteral("two")}}),
        QPageSize::A4);
    ASSERT_EQ(pages.size(), 2u);
    EXPECT_TRUE(pages[0].contains(QLatin1String("Page 1 of 2")));
    EXPECT_TRUE(pages[1].contains(QLatin1String("Page 2 of 2")));
    for (const auto& page : pages)
        EXPECT_TRUE(page.contains(QLatin1String("foot words")));
}

TEST(PageFlow, NeverLeavesAHeadingAloneAtTheFoot)
{
    for (int lines = 30; lines < 70; ++lines) {
        std::vector<SheetBlock> blocks;
        for (int i = 0; i < lines; ++i)
            blocks.emplace_back(Paragraph{QStringLiteral("line")});
        blocks.emplace_back(Heading{QStringLiteral("HEADING")});
        blocks.emplace_back(Paragraph{QStringLiteral("follows")});
        if (lines % 8 != 0)
            continue; // a few depths are enough to find the foot
        for (const auto& page : pagesRead(sheetOf(blocks), QPageSize::A4))
            EXPECT_EQ(page.contains(QLatin1String("HEADING")),
                      page.contains(QLatin1String("follows")))
                << lines;
    }
}

TEST(PageFlow, LaysPagesOutInTheirSize)
{
    const auto sheet = laidOut(sheetOf({Paragraph{QStringLiteral("one")}}), QPageSize::Letter);
    EXPECT_EQ(sheet.page / (72.0 * kPerPoint), QSizeF(8.5, 11.0)); // inches
}

TEST(PageFlow, TakesThePaperThatIsUsualWhereOneLives)
{
    EXPECT_EQ(usualPaper(QLocale(QStringLiteral("en_US"))), QPageSize::Letter);
    EXPECT_EQ(usualPaper(QLocale(QStringLiteral("fr_CA"))), QPageSize::Letter);
    EXPECT_EQ(usualPaper(QLocale(QStringLiteral("en_GB"))), QPageSize::A4);
    EXPECT_EQ(usualPaper(QLocale(QStringLiteral("de_DE"))), QPageSize::A4);
}

} // namespace
} // namespace app
