#include "core/week/packed_week.h"

#include "core/week/plan_cost.h"
#include "tests/support/tiny_week.h"
#include "tests/support/week_judge.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace chalk::week {

namespace {

/// The candidates of a session as a set of coach and start.
std::set<std::pair<std::size_t, int>> candidatesOf(const PackedWeek& week, std::size_t session)
{
    std::set<std::pair<std::size_t, int>> found;
    for (int i = 0; i < week.sessions[session].candidates.size(); ++i) {
        const Slot slot = *week.slotOf(week.candidate(week.sessions[session], i).place);
        found.insert({slot.coach, slot.start});
    }
    return found;
}

}  // namespace

TEST(DaySlotsOfADay, FindRunsAndEnds)
{
    EXPECT_EQ(countOf(slotRun(60, 10)), 10);
    EXPECT_EQ(firstOf(slotRun(60, 10)), 60);
    EXPECT_EQ(lastOf(slotRun(60, 10)), 69);
    EXPECT_EQ(firstOf(slotRun(70, 1)), 70);
    EXPECT_EQ(lastOf(slotRun(3, 2)), 4);
    EXPECT_EQ(startsOfRuns(slotRun(60, 10) | slotRun(80, 3), 4), slotRun(60, 7));
    EXPECT_EQ(startsOfRuns(slotRun(60, 10), 1), slotRun(60, 10));
    EXPECT_EQ(startsOfRuns(slotRun(60, 10), 11), DaySlots{0});
}

TEST(PackedWeek, CandidatesAreWhatAMinuteByMinuteJudgeAllowsOneSessionAlone)
{
    int count = 0;
    for (std::uint64_t seed = 0; seed < 60; ++seed) {
        const WeekProblem problem = test::tinyWeek(seed);
        const PackedWeek week(problem, {});
        for (std::size_t session = 0; session < problem.sessions.size(); ++session) {
            const auto candidates = candidatesOf(week, session);
            for (int start = 0; start < 3 * 1440; start += start % 1440 == 600 ? 1440 - 200 : 20) {
                for (std::size_t coach = 0; coach < problem.coaches.size(); ++coach) {
                    WeekPlan alone(problem.sessions.size());
                    alone[session] = Slot{coach, start};
                    const auto faults = test::judged(problem, alone).faults;
                    // Stations are left to the counters.
                    const bool isAllowed = std::all_of(faults.begin(), faults.end(), [](const auto& fault) { return fault == "station too full"; });
                    EXPECT_EQ(candidates.count({coach, start}) > 0, isAllowed) << "seed " << seed << ", session " << session << ", start " << start;
                    count += isAllowed ? 1 : 0;
                }
            }
        }
    }
    EXPECT_GT(count, 100);
}

TEST(PackedWeek, CandidatesCostWhatThePlanCostsMoreAndComeCheapestFirst)
{
    for (std::uint64_t seed = 0; seed < 60; ++seed) {
        const WeekProblem problem = test::tinyWeek(seed);
        const PackedWeek week(problem, {});
        for (const PackedSession& session : week.sessions) {
            const auto index = static_cast<std::size_t>(&session - week.sessions.data());
            for (int i = 0; i < session.candidates.size(); ++i) {
                const Candidate& candidate = week.candidate(session, i);
                WeekPlan alone(problem.sessions.size());
                alone[index] = week.slotOf(candidate.place);
                const Objective objective = objectiveOf(problem, alone);
                EXPECT_EQ(candidate.cost, objective.standing + objective.preference);
                EXPECT_EQ(candidate.cost, week.costAt(*week.dayOf(session, candidate.place), candidate.place.slot));
                EXPECT_LE(week.candidate(session, 0).cost, candidate.cost);
            }
        }
    }
}

TEST(PackedWeek, APlaceOffTheGridIsMovedBackOntoIt)
{
    const WeekProblem problem = test::tinyWeek(1);
    const PackedWeek week(problem, {});
    const Place place = week.placeOf({1, 1440 + 437});
    EXPECT_EQ(place.coach(), 1);
    EXPECT_EQ(place.day(), 1);
    EXPECT_EQ(week.minuteOf(place), 1440 + 420);
    EXPECT_EQ(week.slotOf(Place{}), std::nullopt);
}

TEST(PackedWeek, KeepsOnlyTheCandidatesThatAreWanted)
{
    const WeekProblem problem = test::tinyWeek(4);
    PackedWeek week(problem, {});
    for (PackedSession& session : week.sessions) {
        const int before = session.candidates.size();
        week.keepCandidates(session, [](Place place) { return place.day() == 1; });
        EXPECT_LE(session.candidates.size(), before);
        for (std::uint32_t i = session.days.begin; i < session.days.end; ++i) {
            EXPECT_EQ(week.days[i].day, 1);
            EXPECT_NE(week.days[i].starts, DaySlots{0});
        }
        for (int i = 0; i < session.candidates.size(); ++i) {
            EXPECT_EQ(week.candidate(session, i).place.day(), 1);
        }
    }
}

}  // namespace chalk::week
