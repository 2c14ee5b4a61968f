#include "core/tables/cell_reading.h"

#include <gtest/gtest.h>

namespace chalk::tables {
namespace {

const base::Date kCellDay = *base::Date::fromYmd(2026, 11, 25);

TEST(CellReading, ReadsNumbersByTheirDecimalSign)
{
    EXPECT_EQ(readHundredths("82.5", DecimalSign::Point), 8250);
    EXPECT_EQ(readHundredths(" 82,5 ", DecimalSign::Comma), 8250);
    EXPECT_EQ(readHundredths("1,234.50", DecimalSign::Point), 123450);
    EXPECT_EQ(readHundredths("1.234,5", DecimalSign::Comma), 123450);
    EXPECT_EQ(readHundredths("1'234", DecimalSign::Point), 123400);
    EXPECT_EQ(readHundredths("-12.5", DecimalSign::Point), -1250);
    EXPECT_EQ(readHundredths("0.125", DecimalSign::Point), 13);
    for (const char* text : {"", "82,5", "8.", "abc", "1,23.4", "12,34,567", "--3", "1e5", "99999999", "."}) {
        EXPECT_EQ(readHundredths(text, DecimalSign::Point), std::nullopt) << text;
    }
    EXPECT_EQ(readWhole("8.0", DecimalSign::Point), 8);
    EXPECT_EQ(readWhole("8.5", DecimalSign::Point), std::nullopt);
}

TEST(CellReading, ReadsAMassWithItsUnit)
{
    EXPECT_EQ(readMass("80 kg", DecimalSign::Point), (CellMass{base::Load::fromCenti(8000), base::MassUnit::Kilogram}));
    EXPECT_EQ(readMass("176,4lbs", DecimalSign::Comma), (CellMass{base::Load::fromCenti(17640), base::MassUnit::Pound}));
    EXPECT_EQ(readMass("80", DecimalSign::Point), (CellMass{base::Load::fromCenti(8000), std::nullopt}));
    EXPECT_EQ(readMass("80 stones", DecimalSign::Point), std::nullopt);
    EXPECT_EQ(unitInHeading("Weight (kg)"), base::MassUnit::Kilogram);
    EXPECT_EQ(unitInHeading("load lb"), base::MassUnit::Pound);
    EXPECT_EQ(unitInHeading("Weight"), std::nullopt);
}

TEST(CellReading, ReadsDaysInEveryOrder)
{
    const auto day = base::Date::fromYmd(2025, 4, 3);
    EXPECT_EQ(readDay("2025-04-03", DateOrder::Mdy, kCellDay), day);  // ISO 8601 is read in any case
    EXPECT_EQ(readDay("3.4.2025", DateOrder::Dmy, kCellDay), day);
    EXPECT_EQ(readDay("03/04/25", DateOrder::Dmy, kCellDay), day);
    EXPECT_EQ(readDay("4/3/2025", DateOrder::Mdy, kCellDay), day);
    EXPECT_EQ(readDay("2025-04-03 18:30", DateOrder::Ymd, kCellDay), day);
    EXPECT_EQ(readDay("2025-04-03T18:30:00Z", DateOrder::Ymd, kCellDay), day);
    EXPECT_EQ(readDay("03. 04. 2025", DateOrder::Dmy, kCellDay), day);
    EXPECT_EQ(readDay("5.6.58", DateOrder::Dmy, kCellDay), base::Date::fromYmd(1958, 6, 5));
    EXPECT_EQ(readDay("29.2.2024", DateOrder::Dmy, kCellDay), base::Date::fromYmd(2024, 2, 29));
    for (const char* text : {"", "3.4.", "31.2.2025", "2025-13-01", "3.4.2025x", "yesterday", "3.4.205", "20250403"}) {
        EXPECT_EQ(readDay(text, DateOrder::Dmy, kCellDay), std::nullopt) << text;
    }
    EXPECT_EQ(readDay("3.4.2025", DateOrder::Ymd, kCellDay), std::nullopt);
}

TEST(CellReading, ReadsRestsAndLengths)
{
    EXPECT_EQ(readSeconds("90", 1, DecimalSign::Point), 90);
    EXPECT_EQ(readSeconds("1:30", 1, DecimalSign::Point), 90);
    EXPECT_EQ(readSeconds("1,5 min", 1, DecimalSign::Comma), 90);
    EXPECT_EQ(readSeconds("2", 60, DecimalSign::Point), 120);
    EXPECT_EQ(readSeconds("90 s", 60, DecimalSign::Point), 90);
    for (const char* text : {"", "1:75", "long", "-3", "5 hours"}) {
        EXPECT_EQ(readSeconds(text, 1, DecimalSign::Point), std::nullopt) << text;
    }
}

}  // namespace
}  // namespace chalk::tables
