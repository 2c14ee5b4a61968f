#include "core/exchange/lift_history_json.h"

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

constexpr char kHistory[] = R"({
 "unit": "kg", "region": "lower",
 "equipment": {"kind": "barbell", "bar": 20, "pairs": [[20, 2], [5, 1]]},
 "stage": "base_load", "policy": {"rep_goal": 12},
 "events": [
  {"date": "2026-01-09", "type": "exposure", "sets": [{"load": 30, "reps": 8, "rir": 5}]},
  {"date": "2026-01-05", "type": "exposure", "pain": 1, "sets": [{"load": 20, "reps": 8, "rir": 5}]},
  {"date": "2026-01-12", "type": "swap", "equipment": {"kind": "fixed", "loads": [8, 12]}}
 ],
 "as_of": "2026-01-20"
})";

/// The field of the fault once `from` has become `to`; `none` where the history is read.
std::string historyFaultAfter(const char* from, const char* to)
{
    QByteArray text = kHistory;
    const qsizetype at = text.indexOf(from);
    if (at < 0) {
        return std::string("no such text: ") + from;
    }
    const auto read = readLiftHistory(text.replace(at, static_cast<qsizetype>(std::string_view(from).size()), to));
    return read ? "none" : read.error().field;
}

}  // namespace

TEST(LiftHistoryJson, ReadsEventsInTheOrderGiven)
{
    const auto history = readLiftHistory(kHistory);
    ASSERT_TRUE(history) << history.error().field << ": " << history.error().reason;
    ASSERT_EQ(history->events.size(), 3U);
    EXPECT_EQ(history->events[0].date.toString(), "2026-01-09");
    EXPECT_EQ(history->events[1].date.toString(), "2026-01-05");
    EXPECT_EQ(std::get<progression::Exposure>(history->events[1].body).pain, 1);
    EXPECT_EQ(history->asOf->toString(), "2026-01-20");
}

TEST(LiftHistoryJson, AnUnknownKindIsAFaultOfTheKind)
{
    EXPECT_EQ(historyFaultAfter("\"barbell\"", "\"cable\""), "equipment.kind");
    EXPECT_EQ(historyFaultAfter("\"kind\": \"barbell\", ", ""), "equipment.kind");
    EXPECT_EQ(historyFaultAfter("\"kind\": \"fixed\"", "\"kind\": \"shelf\""), "events[2].equipment.kind");
    EXPECT_EQ(historyFaultAfter("\"kind\": \"fixed\"", "\"kind\": 5"), "events[2].equipment.kind");
    EXPECT_EQ(historyFaultAfter("\"kind\": \"fixed\"", "\"kind\": \"stack\""), "events[2].equipment.loads");
}

TEST(LiftHistoryJson, ADateThatIsNoneIsAFaultOfItsOwnEvent)
{
    for (const char* bad : {"20260105", "2026-02-29", "2026-1-05", "", "today", "9999"}) {
        EXPECT_EQ(historyFaultAfter("2026-01-05", bad), "events[1].date") << bad;
        EXPECT_EQ(historyFaultAfter("2026-01-12", bad), "events[2].date") << bad;
    }
    EXPECT_EQ(historyFaultAfter("\"date\": \"2026-01-05\", ", ""), "events[1].date");
    EXPECT_EQ(historyFaultAfter("\"date\": \"2026-01-05\"", "\"date\": 20260105"), "events[1].date");
}

TEST(LiftHistoryJson, AFieldThatIsThereTwiceIsNamed)
{
    EXPECT_EQ(historyFaultAfter("\"pain\": 1", "\"pain\": 1, \"pain\": 0"), "events[1].pain");
    EXPECT_EQ(historyFaultAfter("\"rir\": 5", "\"rir\": 5, \"load\": 20"), "events[0].sets[0].load");
    EXPECT_EQ(historyFaultAfter("\"unit\": \"kg\"", "\"unit\": \"kg\", \"\\u0075nit\": \"lb\""), "unit");
    EXPECT_EQ(historyFaultAfter("\"rep_goal\": 12", "\"rep_goal\": 12, \"rep_goal\": 12"), "policy.rep_goal");
}

TEST(LiftHistoryJson, WhatIsNoJsonNamesThePlace)
{
    EXPECT_EQ(historyFaultAfter("\"kg\"", "\"k\\x67\""), "line 2, column 12");
    EXPECT_EQ(historyFaultAfter("\"rir\": 5", "\"rir\": 5."), "line 6, column 86");
    // What the parser itself refuses has the place at which it gave up.
    EXPECT_EQ(historyFaultAfter("\"rir\": 5", "\"rir\": 05").substr(0, 8), "line 6, ");
    EXPECT_EQ(historyFaultAfter("\"unit\"", "unit").substr(0, 8), "line 2, ");
}

TEST(LiftHistoryJson, FieldsOutOfRangeAreNamed)
{
    EXPECT_EQ(historyFaultAfter("\"rir\": 5", "\"rir\": 11"), "events[0].sets[0].rir");
    EXPECT_EQ(historyFaultAfter("\"rir\": 5", "\"rir\": 1.5"), "events[0].sets[0].rir");
    EXPECT_EQ(historyFaultAfter("\"load\": 20", "\"load\": 20.005"), "events[1].sets[0].load");
    EXPECT_EQ(historyFaultAfter("\"rep_goal\": 12", "\"rep_goal\": 9"), "policy.rep_goal");
    EXPECT_EQ(historyFaultAfter("\"as_of\": \"2026-01-20\"", "\"as_of\": \"2026-01-10\""), "as_of");
    EXPECT_EQ(historyFaultAfter("\"region\"", "\"colour\": 1, \"region\""), "colour");
    EXPECT_EQ(historyFaultAfter("\"pain\": 1", "\"note\": \"x\""), "events[1].note");
}

}  // namespace chalk::exchange
