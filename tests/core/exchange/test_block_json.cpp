#include "core/exchange/block_json.h"

#include "core/exchange/event_json.h"

#include <QJsonDocument>

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

/// Where reading an event fails; `none` where it does not.
std::string faultOfBlock(const char* text)
{
    const auto read = readEvent(QJsonDocument::fromJson(text).object(), "events[1]", lifts::Measure::Reps);
    return read ? "none" : read.error().field;
}

}  // namespace

TEST(BlockJson, ReadsBackWhatItWrites)
{
    progression::Block block;
    block.single = base::Load::fromCenti(10250);
    block.isTested = true;
    block.note = "after the holidays";
    const progression::BlockWork heavy{base::Sets(4), base::Reps(4), base::Reps(4), base::Milli(805), base::Seconds(180), 3};
    const progression::BlockWork light{base::Sets(2), base::Reps(6), base::Reps(8), base::Milli(600), base::Seconds(90), 4, true, true};
    const base::Date monday = base::Date::fromYmd(2026, 12, 28).value();
    block.weeks = {{monday, false, {heavy, light}}, {monday + 14, true, {light}}};
    const progression::Event event{monday, block};
    const auto text = QJsonDocument(toJson(event, lifts::Measure::Reps)).toJson();
    const auto read = readEvent(QJsonDocument::fromJson(text).object(), {}, lifts::Measure::Reps);
    ASSERT_TRUE(read.has_value()) << read.error().field << ' ' << read.error().reason;
    EXPECT_EQ(*read, event);
}

TEST(BlockJson, WithoutWeeksItEndsOne)
{
    const auto read = readEvent(QJsonDocument::fromJson(R"({"date": "2026-11-30", "type": "block"})").object(), {}, lifts::Measure::Reps);
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(std::get<progression::Block>(read->body), progression::Block());
}

TEST(BlockJson, FaultsNameTheirPlace)
{
    EXPECT_EQ(faultOfBlock(R"({"date": "2026-11-30", "type": "block", "single": 100, "weeks": [{"monday": "2026-12-01", "work": []}]})"),
              "events[1].weeks[0].monday");
    EXPECT_EQ(faultOfBlock(R"({"date": "2026-11-30", "type": "block", "single": 100, "weeks": [{"monday": "2026-11-30", "work": []}]})"),
              "events[1].weeks[0].work");
    EXPECT_EQ(faultOfBlock(R"({"date": "2026-11-30", "type": "block", "weeks": [{"monday": "2026-11-30", "work": [{"sets": 3, "reps": 5, "percent": 80,
                               "rest_s": 120, "reserve": 2}]}]})"),
              "events[1].single");
    EXPECT_EQ(faultOfBlock(R"({"date": "2026-11-30", "type": "block", "single": 100, "weeks": [{"monday": "2026-11-30", "work": [{"sets": 3, "reps": 5,
                               "percent": 101, "rest_s": 120, "reserve": 2}]}]})"),
              "events[1].weeks[0].work[0].percent");
    EXPECT_EQ(faultOfBlock(R"({"date": "2026-11-30", "type": "block", "load": 3})"), "events[1].load");
}

}  // namespace chalk::exchange
