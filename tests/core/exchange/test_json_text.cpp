#include "core/exchange/json_text.h"

#include <QJsonArray>
#include <QJsonObject>

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

/// Where a text stops being JSON; −1 where it does not.
qsizetype faultIn(const QByteArray& text)
{
    const auto value = parseJsonText(text);
    return value ? -1 : value.error().offset;
}

}  // namespace

// The grammar is that of RFC 8259, sections 6 and 7.
TEST(JsonText, TakesWhatTheGrammarGives)
{
    for (const char* text : {"[]", "{}", "[0, -0, 10.25, 1e3, 1E-2, -2.5e+10]", "[true, false, null]", R"(["\" \\ \/ \b \f \n \r \t \u00e4"])",
                             "\xEF\xBB\xBF[1]", " \r\n\t[1 , 2]\n", R"({"a": {"a": 1}, "b": [{"a": 1}, {"a": 2}]})"}) {
        EXPECT_EQ(faultIn(text), -1) << text;
    }
}

TEST(JsonText, RefusesEscapesThatJsonDoesNotKnow)
{
    EXPECT_EQ(faultIn(R"(["ab\x41"])"), 4);
    EXPECT_EQ(faultIn(R"({"\q": 1})"), 2);
    EXPECT_EQ(faultIn(R"(["\'"])"), 2);
    EXPECT_NE(faultIn(R"(["\u12"])"), -1);
    EXPECT_EQ(faultIn("[\"a\tb\"]"), 3);
}

TEST(JsonText, RefusesNumbersThatJsonDoesNotKnow)
{
    for (const char* text : {"[01]", "[1.]", "[-]", "[1e]", "[.5]", "[+1]", "[0x10]", "[1 2]", "[--1]", "[NaN]", "[Infinity]", "[1,]", "[1", "", "[1] 2"}) {
        EXPECT_NE(faultIn(text), -1) << text;
    }
}

TEST(JsonText, NamesTheFieldThatIsThereTwice)
{
    const auto value = parseJsonText(R"({"lifts": [{"a": 1}, {"a": 1, "b": "}", "a": 2}]})");
    ASSERT_FALSE(value);
    EXPECT_EQ(value.error().field, "lifts[1].a");
    EXPECT_EQ(value.error().offset, 40);
}

}  // namespace chalk::exchange
