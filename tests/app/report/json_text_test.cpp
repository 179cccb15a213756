#include "app/report/json_text.hpp"

#include <gtest/gtest.h>

namespace app {
namespace {

TEST(JsonText, KeepsTheOrderAndTheShortestNumbers)
{
    const Json value{{"b", 1.10363}, {"a", {1.5, 28.0}}, {"c", nullptr}, {"d", true}, {"e", 3}};
    EXPECT_EQ(jsonText(value), "{\n"
                               "  \"b\": 1.10363,\n"
                               "  \"a\": [1.5, 28],\n"
                               "  \"c\": null,\n"
                               "  \"d\": true,\n"
                               "  \"e\": 3\n"
                               "}\n");
}

TEST(JsonText, ReadsBackToTheSameValue)
{
    const Json value{{"empty list", Json::array()},
                     {"empty object", Json::object()},
                     {"texts", {"a \"quoted\" word", "two\nlines", "Lövbacken"}},
                     {"nested", Json::array({Json{{"x", 0.1}}, Json{{"y", {1, 2}}}})},
                     {"small", 1e-300},
                     {"large", 37523500.0}};
    EXPECT_EQ(Json::parse(jsonText(value)), value);
}

} // namespace
} // namespace app
