#include "core/exchange/table_row.h"

#include <gtest/gtest.h>

#include <stdexcept>

namespace chalk::exchange {

namespace {

const StudioTable& table()
{
    static const StudioTable made{"racks", "rack", "racks", true, "where lifts are done",
                                  {{"name", "name", CellKind::Text, "of its own"},
                                   {"load", "load", CellKind::Number, "the most"},
                                   {"units", "units", CellKind::Number, "how many"},
                                   {"free", "free", CellKind::Truth, "whether it is"}}};
    return made;
}

}  // namespace

TEST(TableRow, HasItsValuesInTheirColumnsInAnyOrder)
{
    TableRow row(table());
    row("free", true);
    row("units", 3);
    row("name", std::string_view("by the door"));
    row("load", -42.5);
    std::string text;
    row.appendTo(text, {1, 12});
    EXPECT_EQ(text, "1,12,by the door,-42.5,3,true,\r\n");
}

TEST(TableRow, BeginsAnew)
{
    TableRow row(table());
    row("units", 3);
    std::string text;
    row.appendTo(text, {1});
    row("load", 20.0);
    row.appendTo(text, {2});
    EXPECT_EQ(text, "1,,,3,,\r\n2,,20,,,\r\n");
}

TEST(TableRow, QuotesWhatNeedsIt)
{
    TableRow row(table());
    row("name", std::string_view("the \"old\" one, left"));
    std::string text;
    row.appendTo(text, {1});
    EXPECT_EQ(text, "1,\"the \"\"old\"\" one, left\",,,,\r\n") << "RFC 4180, 2.6 and 2.7";
}

TEST(TableRow, RefusesAFieldWithoutAColumn)
{
    TableRow row(table());
    EXPECT_THROW(row("colour", 1), std::invalid_argument);
}

}  // namespace chalk::exchange
