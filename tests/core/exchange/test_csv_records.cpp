#include "core/exchange/csv_records.h"

#include <gtest/gtest.h>

namespace chalk::exchange {
namespace {

/// All records as texts joined by bars, and faults as they are told.
std::vector<std::string> recordsOf(const QByteArray& text, char separator = ',')
{
    CsvRecords records(text, separator);
    std::vector<std::string> told;
    while (const auto record = records.next()) {
        if (!*record) {
            told.push_back(textOf(record->error()));
            continue;
        }
        std::string joined;
        for (const CsvField& field : **record) {
            joined += (joined.empty() ? "" : "|") + field.text.toStdString();
        }
        told.push_back(joined);
    }
    return told;
}

using Told = std::vector<std::string>;

// RFC 4180, 2: the examples of its rules 1 to 7.
TEST(CsvRecords, ReadsTheExamplesOfTheStandard)
{
    EXPECT_EQ(recordsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), (Told{"aaa|bbb|ccc", "zzz|yyy|xxx"}));
    EXPECT_EQ(recordsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx"), (Told{"aaa|bbb|ccc", "zzz|yyy|xxx"}));
    EXPECT_EQ(recordsOf("field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), (Told{"field_name|field_name|field_name", "aaa|bbb|ccc", "zzz|yyy|xxx"}));
    EXPECT_EQ(recordsOf("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"), (Told{"aaa|bbb|ccc", "zzz|yyy|xxx"}));
    EXPECT_EQ(recordsOf("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"), (Told{"aaa|b\r\nbb|ccc", "zzz|yyy|xxx"}));
    EXPECT_EQ(recordsOf("\"aaa\",\"b\"\"bb\",\"ccc\""), (Told{"aaa|b\"bb|ccc"}));
}

TEST(CsvRecords, TakesOtherSeparatorsAndLineEnds)
{
    EXPECT_EQ(recordsOf("a;b,c\rd;\"e;f\"", ';'), (Told{"a|b,c", "d|e;f"}));
    EXPECT_EQ(recordsOf("a\tb\n\n\nc\td\n", '\t'), (Told{"a|b", "c|d"}));
    EXPECT_EQ(recordsOf("\xEF\xBB\xBF" "a,b"), (Told{"a|b"}));
}

TEST(CsvRecords, GoesOnBehindAFault)
{
    EXPECT_EQ(recordsOf("a,b\n1,x\"y\n2,z\n"), (Told{"a|b", "line 2, column 4: a field with a quote must stand in quotes", "2|z"}));
    EXPECT_EQ(recordsOf("a,b\n1,\"x\"y\n2,z\n"), (Told{"a|b", "line 2, column 6: a field ends where its quotes close", "2|z"}));
    EXPECT_EQ(recordsOf("a,b\n1,\"x\n2,z\n"), (Told{"a|b", "line 2, column 3: the quote that opens here is never closed", "2|z"}));
    EXPECT_EQ(recordsOf(""), Told());
}

}  // namespace
}  // namespace chalk::exchange
