#include "core/exchange/csv_reading.h"

#include "core/exchange/bookings_csv.h"

#include <gtest/gtest.h>

namespace chalk::exchange {
namespace {

std::vector<QByteArray> textsOf(const std::vector<CsvField>& record)
{
    std::vector<QByteArray> texts;
    for (const CsvField& field : record) {
        texts.push_back(field.text);
    }
    return texts;
}

void expectCsvFault(const QByteArray& text, int line, int column, const std::string& reason)
{
    const auto table = parseCsv(text);
    ASSERT_FALSE(table) << text.constData();
    EXPECT_EQ(table.error(), (CsvFault{line, column, {}, reason})) << text.constData();
}

// RFC 4180, 2: rules 1 and 2, the last line with its end and without.
TEST(CsvParsing, ReadsLinesOfEitherEnd)
{
    for (const char* text : {"a,b\n1,2\n3,4\n", "a,b\r\n1,2\r\n3,4\r\n", "a,b\n1,2\n3,4", "\xEF\xBB\xBF" "a,b\n1,2\n\n3,4\n\n"}) {
        const auto table = parseCsv(text);
        ASSERT_TRUE(table) << text;
        EXPECT_EQ(table->columns, (std::vector<QByteArray>{"a", "b"}));
        ASSERT_EQ(table->records.size(), 2U);
        EXPECT_EQ(textsOf(table->records[1]), (std::vector<QByteArray>{"3", "4"}));
    }
}

// RFC 4180, 2: rules 5 to 7, with the fields of its own examples.
TEST(CsvParsing, ReadsFieldsInQuotes)
{
    const auto table = parseCsv("a,b,c\r\n\"aaa\",\"b\r\nbb\",\"b\"\"bb\"\r\n\"\",,\"x,y\"");
    ASSERT_TRUE(table);
    EXPECT_EQ(textsOf(table->records[0]), (std::vector<QByteArray>{"aaa", "b\r\nbb", "b\"bb"}));
    EXPECT_EQ(textsOf(table->records[1]), (std::vector<QByteArray>{"", "", "x,y"}));
}

TEST(CsvParsing, ReadsBackWhatIsWritten)
{
    for (const QString& text : {QStringLiteral("plain"), QStringLiteral("a,b"), QStringLiteral("a\"b\""), QStringLiteral("a\r\nb"), QStringLiteral("ä\rb")}) {
        const auto table = parseCsv("x,y\n1," + csvField(text) + "\n");
        ASSERT_TRUE(table) << text.toStdString();
        EXPECT_EQ(table->records[0][1].text, text.toUtf8());
    }
}

TEST(CsvParsing, KnowsWhereAFieldBegins)
{
    const auto table = parseCsv("a,b,c\n\"x\ny\",\xC3\xA4\xC3\xB6,z\n");
    ASSERT_TRUE(table);
    const auto& record = table->records[0];
    EXPECT_EQ(record[0].line, 2);
    EXPECT_EQ(record[0].column, 1);
    EXPECT_EQ(record[1].line, 3);
    EXPECT_EQ(record[1].column, 4);
    EXPECT_EQ(record[2].column, 7);
}

TEST(CsvParsing, SaysWhatIsNoCsvAndWhere)
{
    expectCsvFault("", 1, 1, "there is nothing in it");
    expectCsvFault("\n\n", 1, 1, "there is nothing in it");
    expectCsvFault("a,b\n1,\"2\n3\n", 2, 3, "the quote that opens here is never closed");
    expectCsvFault("a,b\n1,\"2\"3\n", 2, 6, "a field ends where its quotes close");
    expectCsvFault("a,b\n1,2\"3\n", 2, 4, "a field with a quote must stand in quotes");
    expectCsvFault("a,b\n1,2\n1,2,3\n", 3, 1, "the record has 3 fields for 2 columns");
    expectCsvFault("a,b\n1\n", 2, 1, "the record has 1 fields for 2 columns");
}

TEST(CsvParsing, AColumnIsThereOnce)
{
    const auto table = parseCsv("a,b,a\n");
    ASSERT_FALSE(table);
    EXPECT_EQ(textOf(table.error()), "line 1, column 5: a: the column is there twice");
}

}  // namespace
}  // namespace chalk::exchange
