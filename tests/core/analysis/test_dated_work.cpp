#include "core/analysis/dated_work.h"

#include "tests/support/table_file.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::test {

namespace {

using analysis::DatedWork;
using base::IsoWeek;
using base::LiftId;
using base::SessionId;
using lifts::Pattern;

base::Date parsedDay(const char* text)
{
    return base::Date::parse(text).value();
}

/// So many repetitions with a kilogram.
analysis::Work kilogramReps(int reps)
{
    return {reps * base::Mass::of(base::Load::fromCenti(100), base::MassUnit::Kilogram), reps, 1, 0};
}

/// Two sessions in the last ISO week of 2026, which ends in 2027, and a lift without a session in the week after.
std::vector<DatedWork> turnOfTheYear()
{
    return {{parsedDay("2026-12-28"), SessionId(1), LiftId(7), Pattern::Squat, kilogramReps(10)},
            {parsedDay("2026-12-28"), SessionId(1), LiftId(8), Pattern::Hinge, kilogramReps(20)},
            {parsedDay("2027-01-03"), SessionId(2), LiftId(7), Pattern::Squat, kilogramReps(30)},
            {parsedDay("2027-01-04"), SessionId(), LiftId(9), Pattern::Squat, kilogramReps(40)}};
}

}  // namespace

TEST(DatedWorkSums, ByLiftPatternSessionAndWeek)
{
    const auto done = turnOfTheYear();
    EXPECT_EQ(analysis::workTogether(done).reps, 100);
    EXPECT_EQ(analysis::workTogether(done).sets, 4);
    const auto lifts = analysis::workByLift(done);
    ASSERT_EQ(lifts.size(), 3U);
    EXPECT_EQ(lifts.at(LiftId(7)).volume.kilograms(), 40);
    const auto patterns = analysis::workByPattern(done);
    EXPECT_EQ(patterns[0].reps, 80);
    EXPECT_EQ(patterns[1].reps, 20);
    EXPECT_EQ(patterns[2], analysis::Work());
    const auto sessions = analysis::workBySession(done);
    ASSERT_EQ(sessions.size(), 3U);
    EXPECT_EQ(sessions.at(SessionId(1)).reps, 30);
    EXPECT_EQ(sessions.at(SessionId()).reps, 40);
    const auto weeks = analysis::workByWeek(done);
    ASSERT_EQ(weeks.size(), 2U);
    EXPECT_EQ(weeks.at(IsoWeek{2026, 53}).reps, 60);
    EXPECT_EQ(weeks.at(IsoWeek{2027, 1}).reps, 40);
}

// ISO 8601 week dates, among them the turns of years with 53 weeks.
TEST(DatedWorkSums, WeeksAreThoseOfTheCalendar)
{
    for (const TableRow& row : readTable("reference/iso_weeks.csv")) {
        const std::string day = row.at("week_day");
        const std::vector<DatedWork> done{{parsedDay(row.at("date").c_str()), SessionId(1), LiftId(1), Pattern::Squat, kilogramReps(1)}};
        const auto weeks = analysis::workByWeek(done);
        ASSERT_EQ(weeks.size(), 1U);
        EXPECT_EQ(toString(weeks.begin()->first), day.substr(0, 8)) << row.at("date");
        EXPECT_EQ(done.front().date.weekday() + 1, day.back() - '0') << row.at("date");
    }
}

TEST(DatedWorkSums, NothingDoneIsNothing)
{
    EXPECT_EQ(analysis::workTogether({}), analysis::Work());
    EXPECT_TRUE(analysis::workByLift({}).empty());
    EXPECT_TRUE(analysis::workByWeek({}).empty());
    EXPECT_EQ(analysis::workByPattern({}), analysis::PatternWork{});
}

RC_GTEST_PROP(DatedWorkProperties, EveryWayOfSummingComesToTheSame, ())
{
    std::vector<DatedWork> done;
    for (int left = *rc::gen::inRange(0, 30); left > 0; --left) {
        done.push_back({base::Date::fromDays(*rc::gen::inRange(20'000, 20'060)), SessionId(*rc::gen::inRange(0, 5)), LiftId(*rc::gen::inRange(1, 9)),
                        *rc::gen::elementOf(std::vector<Pattern>(lifts::kPatterns.begin(), lifts::kPatterns.end())), kilogramReps(*rc::gen::inRange(1, 60))});
    }
    const analysis::Work all = analysis::workTogether(done);
    const auto totalOf = [](const auto& sums) {
        analysis::Work total;
        for (const auto& [key, work] : sums) {
            total += work;
        }
        return total;
    };
    RC_ASSERT(totalOf(analysis::workByLift(done)) == all);
    RC_ASSERT(totalOf(analysis::workBySession(done)) == all);
    RC_ASSERT(totalOf(analysis::workByWeek(done)) == all);
    analysis::Work patterns;
    for (const analysis::Work& work : analysis::workByPattern(done)) {
        patterns += work;
    }
    RC_ASSERT(patterns == all);
}

}  // namespace chalk::test
