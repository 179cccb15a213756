#include "app/report/text_page.hpp"

#include <gtest/gtest.h>

namespace app {
namespace {

TEST(TextPage, BreaksLinesBetweenWordsAndHangsListsIn)
{
    TextPage page(20);
    page.heading(QStringLiteral("Headroom"));
    page.bullet(QStringLiteral("one two three four five"));
    page.numbered(1, QStringLiteral("six seven eight nine"));
    EXPECT_EQ(page.text().toStdString(), "Headroom\n"
                                         "--------\n"
                                         "  - one two three\n"
                                         "    four five\n"
                                         "  1. six seven eight\n"
                                         "     nine\n");
}

TEST(TextPage, KeepsANumberWithItsUnit)
{
    TextPage page(10);
    page.paragraph(QStringLiteral("about 12\u00a0kg of it"));
    EXPECT_EQ(page.text().toStdString(), "about\n12 kg of\nit\n");
}

TEST(TextPage, CutsNothingOffAWordThatIsTooLong)
{
    TextPage page(6);
    page.paragraph(QStringLiteral("a Metasequoia b"));
    EXPECT_EQ(page.text().toStdString(), "a\nMetasequoia\nb\n");
}

TEST(TextPage, LeavesTheRowsOfATableAlone)
{
    TextPage page(6);
    page.row(QStringLiteral("  May     4.2    9.1"));
    EXPECT_EQ(page.text().toStdString(), "  May     4.2    9.1\n");
}

TEST(TextPage, LeavesOneEmptyLineAtMost)
{
    TextPage page;
    page.paragraph(QStringLiteral("a"));
    page.gap();
    page.gap();
    page.paragraph(QStringLiteral("b"));
    EXPECT_EQ(page.text().toStdString(), "a\n\nb\n");
}

} // namespace
} // namespace app
