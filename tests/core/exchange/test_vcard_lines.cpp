#include "core/exchange/vcard_lines.h"

#include <gtest/gtest.h>

namespace chalk::exchange {
namespace {

// RFC 6350, 3.2: its example of folding, from memory.
TEST(VCardLines, UnfoldsLines)
{
    for (const char* text : {"NOTE:This is a long description\r\n  that exists o\r\n n a long line.\r\n", "NOTE:This is a long description\n  that exists o\n\tn a long line.\n"}) {
        const auto lines = vcardLines(text);
        ASSERT_EQ(lines.size(), 1U);
        EXPECT_EQ(lines[0].name, "NOTE");
        EXPECT_EQ(lines[0].value, "This is a long description that exists on a long line.");
    }
}

TEST(VCardLines, ReadsGroupsAndParameters)
{
    const auto lines = vcardLines("item1.tel;VALUE=uri;PREF=1;TYPE=\"voice,home\",cell:tel:+1-555\nEMAIL;INTERNET:a@b.c\nno colon here\n\nX;A=\"b:c;d\":e");
    ASSERT_EQ(lines.size(), 4U);
    EXPECT_EQ(lines[0].group, "item1");
    EXPECT_EQ(lines[0].name, "TEL");
    EXPECT_EQ(lines[0].first("PREF"), "1");
    EXPECT_TRUE(lines[0].has("TYPE", "CELL"));
    EXPECT_TRUE(lines[0].has("VALUE", "uri"));
    EXPECT_EQ(lines[0].value, "tel:+1-555");
    EXPECT_TRUE(lines[1].has("TYPE", "internet"));
    EXPECT_EQ(lines[2].name, "");
    EXPECT_EQ(lines[2].line, 3);
    EXPECT_EQ(lines[3].first("A"), "b:c;d");
    EXPECT_EQ(lines[3].value, "e");
    EXPECT_EQ(lines[3].valueColumn, 13);
    EXPECT_EQ(lines[3].line, 5);
}

// RFC 6350, 3.4.
TEST(VCardLines, UndoesEscapes)
{
    EXPECT_EQ(unescaped("Mr. John Q. Public\\, Esq."), "Mr. John Q. Public, Esq.");
    EXPECT_EQ(unescaped("a\\nb\\Nc\\\\d\\;e\\"), "a\nb\nc\\d;e\\");
    EXPECT_EQ(componentsOf("Public;John;Quinlan,Paul;a\\;b"), (std::vector<QByteArray>{"Public", "John", "Quinlan,Paul", "a\\;b"}));
}

// RFC 2045, 6.7: quoted-printable, as older cards have it.
TEST(VCardLines, UndoesQuotedPrintable)
{
    const auto lines = vcardLines("N;CHARSET=UTF-8;ENCODING=QUOTED-PRINTABLE:M=C3=BCl=\r\nler;Jo\r\nFN;QUOTED-PRINTABLE:M=FCller\r\n");
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].value, "Müller;Jo");
    EXPECT_EQ(lines[1].value, "Müller");
}

}  // namespace
}  // namespace chalk::exchange
