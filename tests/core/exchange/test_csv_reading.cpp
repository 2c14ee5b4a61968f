#include "core/exchange/csv_reading.h"

#include <QStringBuilder>

#include <gtest/gtest.h>

#include <functional>

namespace chalk::exchange {
namespace {

/// What reading the one field of a table answers, or its fault.
std::string faultOfCell(const QByteArray& cell, const std::function<void(CsvReader&)>& read)
{
    const auto table = parseCsv("id,x\n7,\"" + cell + "\"\n");
    CsvReader reader(*table);
    EXPECT_TRUE(reader.next());
    read(reader);
    return reader.fault() ? textOf(*reader.fault()) : "";
}

TEST(CsvReading, GoesThroughTheRecords)
{
    const auto table = parseCsv("x,y\n1,a\n2,b\n");
    CsvReader reader(*table);
    reader.needs({"y", "x"});
    ASSERT_TRUE(reader.next());
    EXPECT_EQ(reader.wholeNumber("x", 0, 9), 1);
    ASSERT_TRUE(reader.next());
    EXPECT_EQ(reader.text("y"), "b");
    EXPECT_FALSE(reader.next());
    EXPECT_FALSE(reader.fault());
}

TEST(CsvReading, NeedsItsColumns)
{
    const auto table = parseCsv("x,y\n1,a\n");
    CsvReader reader(*table);
    reader.needs({"x", "z"});
    EXPECT_FALSE(reader.next());
    ASSERT_TRUE(reader.fault());
    EXPECT_EQ(textOf(*reader.fault()), "line 1, column 1: z: there is no such column");
}

TEST(CsvReading, ReadsWholeNumbersStrictly)
{
    const auto read = [](CsvReader& reader) { static_cast<void>(reader.wholeNumber("x", -5, 30)); };
    for (const char* good : {"-5", "0", "30", "007"}) {
        EXPECT_EQ(faultOfCell(good, read), "") << good;
    }
    for (const char* bad : {"-6", "31", "", " 1", "1 ", "1.0", "+1", "1e1", "99999999999", "x"}) {
        EXPECT_EQ(faultOfCell(bad, read), "line 2, column 3: x: must be a whole number from -5 to 30") << bad;
    }
}

TEST(CsvReading, AnEmptyFieldIsNoNumber)
{
    EXPECT_EQ(faultOfCell("", [](CsvReader& reader) { EXPECT_FALSE(reader.optionalWholeNumber("x", 0, 9)); }), "");
    EXPECT_EQ(faultOfCell("3", [](CsvReader& reader) { EXPECT_EQ(reader.optionalWholeNumber("x", 0, 9), 3); }), "");
    EXPECT_NE(faultOfCell("10", [](CsvReader& reader) { static_cast<void>(reader.optionalWholeNumber("x", 0, 9)); }), "");
}

TEST(CsvReading, ReadsHundredthsExactly)
{
    const auto isRead = [](const char* cell, int wanted) {
        EXPECT_EQ(faultOfCell(cell, [&](CsvReader& reader) { EXPECT_EQ(reader.hundredths("x", 0, 1'000'000), wanted); }), "") << cell;
    };
    isRead("0", 0);
    isRead("37.5", 3750);
    isRead("7.37", 737);
    isRead("126.70", 12670);
    isRead("10000", 1'000'000);
    for (const char* bad : {"", ".", ".5", "5.", "1.234", "-1", "1,5", "1e2", "10000.01", "12345678", "1.2.3", "nan"}) {
        EXPECT_EQ(faultOfCell(bad, [](CsvReader& reader) { static_cast<void>(reader.hundredths("x", 0, 1'000'000)); }),
                  "line 2, column 3: x: must be a number from 0 to 10000 with two decimals at most")
            << bad;
    }
}

TEST(CsvReading, ReadsDaysAndFlags)
{
    EXPECT_EQ(faultOfCell("2026-02-28", [](CsvReader& reader) { EXPECT_EQ(reader.date("x").toString(), "2026-02-28"); }), "");
    EXPECT_EQ(faultOfCell("2026-02-29", [](CsvReader& reader) { static_cast<void>(reader.date("x")); }),
              "line 2, column 3: x: must be a day such as 2026-11-25");
    EXPECT_EQ(faultOfCell("1", [](CsvReader& reader) { EXPECT_TRUE(reader.flag("x")); }), "");
    EXPECT_EQ(faultOfCell("0", [](CsvReader& reader) { EXPECT_FALSE(reader.flag("x")); }), "");
    EXPECT_NE(faultOfCell("yes", [](CsvReader& reader) { static_cast<void>(reader.flag("x")); }), "");
}

TEST(CsvReading, TextIsThereAndUtf8)
{
    const auto read = [](CsvReader& reader) { static_cast<void>(reader.text("x")); };
    EXPECT_EQ(faultOfCell("Bj\xC3\xB6rk", read), "");
    EXPECT_EQ(faultOfCell("", read), "line 2, column 3: x: must not be empty");
    EXPECT_EQ(faultOfCell("Bj\xF6rk", read), "line 2, column 3: x: must be text in UTF-8");
}

TEST(CsvReading, TheFirstFaultIsKept)
{
    const auto fault = faultOfCell("x", [](CsvReader& reader) {
        static_cast<void>(reader.date("x"));
        static_cast<void>(reader.wholeNumber("x", 0, 1));
        EXPECT_FALSE(reader.next());
    });
    EXPECT_EQ(fault, "line 2, column 3: x: must be a day such as 2026-11-25");
}

}  // namespace
}  // namespace chalk::exchange
