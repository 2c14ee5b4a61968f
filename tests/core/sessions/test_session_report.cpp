#include "core/sessions/session_report.h"

#include <gtest/gtest.h>

namespace chalk::sessions {

namespace {

std::string faultyField(const SessionReport& report)
{
    const auto fault = faultOf(report);
    return fault ? fault->field : "none";
}

}  // namespace

TEST(SessionReport, NothingHasToBeSaid)
{
    EXPECT_TRUE(SessionReport().isEmpty());
    EXPECT_FALSE(SessionReport().hasReadiness());
    EXPECT_EQ(faultOf({}), std::nullopt);
    EXPECT_FALSE((SessionReport{{}, {}, {}, 0, {}, {}}.isEmpty())) << "an effort of 0 was said";
    EXPECT_FALSE((SessionReport{{}, {}, {}, 70, 60, "late"}.hasReadiness()));
    EXPECT_TRUE((SessionReport{{}, {}, 3, {}, {}, {}}.hasReadiness()));
}

TEST(SessionReport, EveryFieldHasItsRange)
{
    EXPECT_EQ(faultyField({1, 1, 1, 0, 1, {}}), "none");
    EXPECT_EQ(faultyField({5, 5, 5, 100, 480, std::string(4000, 'n')}), "none");
    EXPECT_EQ(faultyField({0, {}, {}, {}, {}, {}}), "sleep");
    EXPECT_EQ(faultyField({6, {}, {}, {}, {}, {}}), "sleep");
    EXPECT_EQ(faultyField({{}, 0, {}, {}, {}, {}}), "soreness");
    EXPECT_EQ(faultyField({{}, 6, {}, {}, {}, {}}), "soreness");
    EXPECT_EQ(faultyField({{}, {}, 0, {}, {}, {}}), "stress");
    EXPECT_EQ(faultyField({{}, {}, 6, {}, {}, {}}), "stress");
    EXPECT_EQ(faultyField({{}, {}, {}, -5, {}, {}}), "effort");
    EXPECT_EQ(faultyField({{}, {}, {}, 105, {}, {}}), "effort");
    EXPECT_EQ(faultyField({{}, {}, {}, 72, {}, {}}), "effort") << "halves of a point alone";
    EXPECT_EQ(faultyField({{}, {}, {}, {}, 0, {}}), "minutes");
    EXPECT_EQ(faultyField({{}, {}, {}, {}, 481, {}}), "minutes");
    EXPECT_EQ(faultyField({{}, {}, {}, {}, {}, std::string(4001, 'n')}), "note");
    EXPECT_EQ(faultyField({{}, {}, {}, {}, {}, " \n"}), "note");
}

TEST(SessionReport, LoadIsEffortTimesMinutes)
{
    // Foster et al. 2001: 30 min at an effort of 5 are a load of 150.
    EXPECT_EQ(sessionLoad({{}, {}, {}, 50, 30, {}}), 150);
    EXPECT_EQ(sessionLoad({{}, {}, {}, 75, 61, {}}), 458) << "457.5, half up";
    EXPECT_EQ(sessionLoad({{}, {}, {}, 0, 60, {}}), 0);
    EXPECT_EQ(sessionLoad({{}, {}, {}, 70, {}, {}}), std::nullopt);
    EXPECT_EQ(sessionLoad({{}, {}, {}, {}, 60, {}}), std::nullopt);
}

TEST(SessionReport, RemarksAreLinesOfTheNote)
{
    SessionReport report;
    addToNote(report, "");
    EXPECT_EQ(report.note, "");
    addToNote(report, "Back squat: belt on");
    addToNote(report, "Plank: hips low");
    EXPECT_EQ(report.note, "Back squat: belt on\nPlank: hips low");
}

TEST(SessionReport, WhatIsToldLaterStandsOverWhatWasToldBefore)
{
    const SessionReport before{3, 2, {}, 50, {}, "late"};
    EXPECT_EQ(toldOver(before, {}), before);
    EXPECT_EQ(toldOver(before, {{}, {}, 4, 75, 60, "left early"}), (SessionReport{3, 2, 4, 75, 60, "late\nleft early"}));
    EXPECT_EQ(toldOver(before, {5, 1, {}, {}, {}, {}}), (SessionReport{5, 1, {}, 50, {}, "late"}));
}

}  // namespace chalk::sessions
