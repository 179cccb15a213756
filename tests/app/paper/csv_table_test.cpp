#include "app/paper/csv_table.hpp"

#include <gtest/gtest.h>

namespace app {
namespace {

// Published: RFC 4180, section 2, rules 1, 5, 6 and 7 with their examples.
TEST(CsvTable, QuotesAsTheStandardDoes)
{
    const auto s = [](const char* text) { return QString::fromUtf8(text); };
    EXPECT_EQ(csvOf({{s("aaa"), s("bbb"), s("ccc")}, {s("zzz"), s("yyy"), s("xxx")}}),
              QByteArray("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"));
    EXPECT_EQ(csvOf({{s("aaa"), s("b\r\nbb"), s("ccc")}}), QByteArray("aaa,\"b\r\nbb\",ccc\r\n"));
    EXPECT_EQ(csvOf({{s("aaa"), s("b\"bb"), s("c,c")}}), QByteArray("aaa,\"b\"\"bb\",\"c,c\"\r\n"));
}

TEST(CsvTable, KeepsBlanksAndLettersOfAnyTongue)
{
    EXPECT_EQ(csvOf({{QString(), QStringLiteral("Ahorn über dem Weg"), QString()}}),
              QByteArray(",Ahorn über dem Weg,\r\n"));
}

} // namespace
} // namespace app
