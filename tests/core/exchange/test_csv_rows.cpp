#include "core/exchange/csv_rows.h"

#include <QBuffer>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::exchange {

namespace {

std::vector<QByteArrayList> rowsOfLarge(QByteArray text)
{
    QBuffer file(&text);
    file.open(QIODevice::ReadOnly);
    CsvRows records(file);
    std::vector<QByteArrayList> all{records.columns()};
    while (records.next()) {
        all.push_back(records.fields());
    }
    EXPECT_FALSE(records.fault()) << textOf(*records.fault());
    return all;
}

std::string faultOf(QByteArray text)
{
    QBuffer file(&text);
    file.open(QIODevice::ReadOnly);
    CsvRows records(file);
    while (records.next()) {
    }
    return records.fault() ? textOf(*records.fault()) : std::string();
}

}  // namespace

// The examples of RFC 4180, section 2, rules 1 to 7.
TEST(CsvRows, ReadsTheExamplesOfRfc4180)
{
    const QByteArrayList first{"aaa", "bbb", "ccc"};
    const QByteArrayList second{"zzz", "yyy", "xxx"};
    EXPECT_EQ(rowsOfLarge("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), (std::vector{first, second})) << "rule 1";
    EXPECT_EQ(rowsOfLarge("aaa,bbb,ccc\r\nzzz,yyy,xxx"), (std::vector{first, second})) << "rule 2: the last line may have no end";
    EXPECT_EQ(rowsOfLarge("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"), (std::vector{first, second})) << "rule 5";
    EXPECT_EQ(rowsOfLarge("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"), (std::vector{QByteArrayList{"aaa", "b\r\nbb", "ccc"}, second})) << "rule 6";
    EXPECT_EQ(rowsOfLarge("\"aaa\",\"b\"\"bb\",\"ccc\""), (std::vector{QByteArrayList{"aaa", "b\"bb", "ccc"}})) << "rule 7";
}

TEST(CsvRows, NamesTheLineOfAFault)
{
    EXPECT_EQ(faultOf("a,b\r\n1,\"two\r\n"), "line 2, column 1: a quote is never closed");
    EXPECT_EQ(faultOf("a,b\r\n1,2\r\n1\r\n"), "line 3, column 1: has 1 fields where there are 2 columns");
    EXPECT_NE(faultOf("a,b\r\n1,\"2\"3\r\n").find("line 2"), std::string::npos);
    EXPECT_NE(faultOf("a,b\r\n1\",2\"\r\n").find("line 2"), std::string::npos);
    EXPECT_NE(faultOf(""), "");
    EXPECT_NE(faultOf("a,a\r\n"), "");
}

RC_GTEST_PROP(CsvRows, WhatIsWrittenIsReadAgain, (std::vector<std::string> words))
{
    RC_PRE(!words.empty());
    QByteArrayList fields{"first"};
    QByteArrayList columns{"c0"};
    for (const std::string& word : words) {
        columns.append("c" + QByteArray::number(columns.size()));
        fields.append(QByteArray::fromStdString(word));
    }
    RC_ASSERT(rowsOfLarge(csvRow(columns) + csvRow(fields)) == (std::vector{columns, fields}));
}

}  // namespace chalk::exchange
