#include "core/week/replan.h"

#include "core/week/slot_table.h"
#include "core/week/week_checker.h"
#include "tests/support/week_on_test.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <utility>

namespace chalk::week {
namespace {

using test::at;
using test::kMon;
using test::kTue;
using test::kWed;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

/// Σ priority left over, and moves of sessions that had a slot.
using JudgedValue = std::pair<long, int>;

JudgedValue judgedValue(const WeekProblem& problem, const WeekPlan& present, const WeekPlan& plan)
{
    JudgedValue value{0, 0};
    for (std::size_t session = 0; session < plan.size(); ++session) {
        value.first += plan[session] ? 0 : problem.clients[problem.sessions[session].client].priority;
        value.second += present[session] && plan[session] != present[session] ? 1 : 0;
    }
    return value;
}

/// Goes through every plan of a small week: the judge of what is needed.
class EveryPlan {
public:
    EveryPlan(const WeekProblem& problem, const WeekPlan& present) : m_problem(problem), m_present(present), m_table(problem, {})
    {
        for (std::size_t session = 0; session < present.size(); ++session) {
            std::vector<Slot>& slots = m_slots.emplace_back(m_table.candidatesOf(session));
            std::erase_if(slots, [&](const Slot& slot) { return m_table.hoursBlockOf(session, slot).has_value(); });
            std::stable_partition(slots.begin(), slots.end(), [&](const Slot& slot) { return present[session] == slot; });
            if (problem.sessions[session].isLocked) {
                m_table.place(session, *problem.sessions[session].standing);
            }
        }
        go(0, {0, 0});
    }

    [[nodiscard]] JudgedValue best() const { return m_best; }
    [[nodiscard]] bool isComplete() const { return m_steps < kMostSteps; }

private:
    static constexpr int kMostSteps = 30'000;

    void go(std::size_t session, JudgedValue value)
    {
        if (value >= m_best || m_steps >= kMostSteps) {
            return;
        }
        if (session == m_present.size()) {
            m_best = value;
            return;
        }
        ++m_steps;
        const std::optional<Slot>& present = m_present[session];
        if (m_problem.sessions[session].isLocked) {
            go(session + 1, {value.first, value.second + (present && present != m_table.plan()[session] ? 1 : 0)});
            return;
        }
        for (const Slot& slot : m_slots[session]) {
            if (m_table.fits(session, slot)) {
                m_table.place(session, slot);
                go(session + 1, {value.first, value.second + (present && present != slot ? 1 : 0)});
                m_table.remove(session);
            }
        }
        const int priority = m_problem.clients[m_problem.sessions[session].client].priority;
        go(session + 1, {value.first + priority, value.second + (present ? 1 : 0)});
    }

    const WeekProblem& m_problem;
    const WeekPlan& m_present;
    SlotTable m_table;
    std::vector<std::vector<Slot>> m_slots;  ///< by session, what hours allow; the present one first
    JudgedValue m_best{1'000'000, 0};
    int m_steps = 0;
};

/// A week and its plan from before, after something happened.
struct ChangedWeek {
    WeekProblem problem;
    WeekPlan present;
};

/// Whether the locked ones stand legally, which no new plan can help.
bool isLockedSound(const WeekProblem& problem)
{
    WeekPlan locked(problem.sessions.size());
    for (std::size_t session = 0; session < locked.size(); ++session) {
        locked[session] = problem.sessions[session].isLocked ? problem.sessions[session].standing : std::nullopt;
    }
    return faultsOf(problem, locked).empty();
}

ChangedWeek changedWeek(unsigned seed, std::size_t clients)
{
    std::mt19937 random(seed);
    WeekProblem problem = test::drawnWeek(seed, clients);
    const WeekPlan drawn = test::drawnPlan(problem, seed);
    WeekPlan plan = replanned(problem, drawn).plan;
    switch (seed % 4) {
    case 0: {
        const auto gone = static_cast<std::ptrdiff_t>(test::drawFrom(random, 0, static_cast<int>(plan.size()) - 1));
        problem.sessions.erase(problem.sessions.begin() + gone);
        plan.erase(plan.begin() + gone);
        break;
    }
    case 1: problem.coaches[0].absences.push_back({test::drawFrom(random, kMon, kWed), 7 * 60, 14 * 60}); break;
    case 2: problem.stations[0].closures.push_back({{test::drawFrom(random, kMon, kWed), 0, kDayMinutes}, 0}); break;
    default: problem.coaches[0].capacity = problem.coaches[1].capacity = 1; break;
    }
    return {problem, plan};
}

TEST(ReplanPropertyTest, KeepsTheRulesAndMovesNoMoreThanIsNeeded)
{
    int judged = 0;
    int moved = 0;
    for (unsigned seed = 400; seed < 428; ++seed) {
        const ChangedWeek week = changedWeek(seed, 4);
        if (!isLockedSound(week.problem)) {
            continue;
        }
        const Replan after = replanned(week.problem, week.present);
        EXPECT_THAT(faultsOf(week.problem, after.plan), IsEmpty()) << seed;
        EXPECT_EQ(after.moves, movesBetween(week.present, after.plan)) << seed;
        const JudgedValue value = judgedValue(week.problem, week.present, after.plan);
        const EveryPlan every(week.problem, week.present);
        if (every.isComplete()) {
            EXPECT_EQ(value, every.best()) << seed;
            moved += value.second;
            ++judged;
        }
    }
    EXPECT_GT(judged, 12);
    EXPECT_GT(moved, 3);
}

TEST(ReplanPropertyTest, BreaksNoRuleButThoseThatLockedSessionsBreakWhereTheyStand)
{
    std::size_t broken = 0;
    for (unsigned seed = 700; seed < 708; ++seed) {
        WeekProblem problem = test::drawnWeek(seed, 10);
        const WeekPlan present = replanned(problem, test::drawnPlan(problem, seed)).plan;
        WeekPlan locked(present.size());
        for (std::size_t session = 0; session < present.size(); ++session) {
            locked[session] = problem.sessions[session].isLocked ? present[session] : std::nullopt;
        }
        problem.coaches[seed % 2].absences.push_back({static_cast<int>(seed % 3), 0, kDayMinutes});
        const std::vector<PlanFault> faults = faultsOf(problem, replanned(problem, present).plan);
        EXPECT_EQ(faults, faultsOf(problem, locked)) << seed;
        broken += faults.size();
    }
    EXPECT_GT(broken, 0U) << "the coaches are never away where somebody is locked";
}

TEST(ReplanPropertyTest, ChangesNothingWhereNothingChanged)
{
    for (unsigned seed = 500; seed < 512; ++seed) {
        const WeekProblem problem = test::drawnWeek(seed, 9);
        const Replan first = replanned(problem, test::drawnPlan(problem, seed));
        const Replan again = replanned(problem, first.plan);
        EXPECT_THAT(again.moves, IsEmpty()) << seed;
        EXPECT_EQ(again.plan, first.plan) << seed;
    }
}

TEST(ReplanPropertyTest, MovesAfterACancellationOnlyWhereSomethingLeftOverGains)
{
    int gained = 0;
    for (unsigned seed = 600; seed < 632; seed += 4) {
        const ChangedWeek week = changedWeek(seed, 10);
        const Replan after = replanned(week.problem, week.present);
        EXPECT_THAT(faultsOf(week.problem, after.plan), IsEmpty()) << seed;
        const JudgedValue before = judgedValue(week.problem, week.present, week.present);
        const JudgedValue value = judgedValue(week.problem, week.present, after.plan);
        EXPECT_LE(value.first, before.first) << seed;
        EXPECT_TRUE(after.moves.empty() || value.first < before.first) << seed;
        gained += after.moves.empty() ? 0 : 1;
    }
    EXPECT_GT(gained, 0) << "the weeks never have anybody who waits for a place";
}

TEST(ReplanPropertyTest, IsTheSameEveryTime)
{
    const ChangedWeek week = changedWeek(401, 8);
    EXPECT_EQ(replanned(week.problem, week.present), replanned(week.problem, week.present));
}

/// One coach who takes one at once, Monday to Wednesday from 10 to 13.
class ReplanTest : public ::testing::Test {
protected:
    ReplanTest()
    {
        m_problem.coaches.resize(1);
        m_problem.coaches[0].windows = test::everyDay(kMon, kWed, 10, 13);
        m_problem.coaches[0].capacity = 1;
    }

    std::size_t addOne(std::optional<int> start)
    {
        const std::size_t client = test::addClient(m_problem);
        m_problem.clients[client].coaches.resize(1);
        m_plan.push_back(start ? std::optional(Slot{0, *start}) : std::nullopt);
        return test::addSession(m_problem, client);
    }

    [[nodiscard]] std::vector<SessionMove> moves() const
    {
        const Replan after = replanned(m_problem, m_plan, m_options);
        return after.moves;
    }

    WeekProblem m_problem = test::quietWeek();
    WeekPlan m_plan;
    ReplanOptions m_options;
};

TEST_F(ReplanTest, LeavesALegalPlanAsItIsWhateverItCosts)
{
    const std::size_t dear = addOne(at(kMon, 12));
    m_problem.sessions[dear].standing = Slot{0, at(kTue, 10)};
    m_problem.clients[0].preferred = {{kTue, 600, 600}};
    addOne(at(kMon, 10));
    EXPECT_THAT(moves(), IsEmpty());
}

TEST_F(ReplanTest, MovesWhoLostTheCoachToTheNearestTimeAndNobodyElse)
{
    const std::size_t away = addOne(at(kMon, 10));
    const std::size_t other = addOne(at(kMon, 12));
    m_problem.sessions[away].standing = m_plan[away];
    m_problem.coaches[0].absences = {{kMon, 10 * 60, 10 * 60 + 30}};
    EXPECT_THAT(moves(), ElementsAre(SessionMove{away, Slot{0, at(kMon, 10)}, Slot{0, at(kMon, 10, 30)}}))
        << "as soon as the coach is back";
    EXPECT_EQ(moves()[0].kind(), MoveKind::Moved);
    EXPECT_EQ(replanned(m_problem, m_plan).plan[other], m_plan[other]);
}

TEST_F(ReplanTest, GivesAFreedPlaceToWhoWaits)
{
    const std::size_t waiting = addOne(std::nullopt);
    m_problem.clients[0].available = {{kMon, 10 * 60, 11 * 60}};
    addOne(at(kMon, 11));
    EXPECT_THAT(moves(), ElementsAre(SessionMove{waiting, {}, Slot{0, at(kMon, 10)}}));
    EXPECT_EQ(moves()[0].kind(), MoveKind::Placed);
}

TEST_F(ReplanTest, MakesRoomForANewClientByOneMove)
{
    const std::size_t there = addOne(at(kMon, 10));
    const std::size_t other = addOne(at(kMon, 11));
    const std::size_t added = addOne(std::nullopt);
    m_problem.clients[added].available = {{kMon, 10 * 60, 11 * 60}};
    EXPECT_THAT(moves(), ElementsAre(SessionMove{there, Slot{0, at(kMon, 10)}, Slot{0, at(kMon, 12)}}, SessionMove{added, {}, Slot{0, at(kMon, 10)}}));
    m_problem.sessions[there].standing = m_plan[there];
    m_problem.sessions[there].isLocked = true;
    EXPECT_THAT(moves(), IsEmpty()) << "a locked one stays";
    EXPECT_EQ(replanned(m_problem, m_plan).plan[other], m_plan[other]);
}

TEST_F(ReplanTest, LeavesTheOneOfLeastPriorityOverWhereNotAllFit)
{
    m_problem.coaches[0].windows = {{kMon, 10 * 60, 11 * 60}};
    m_problem.coaches[0].capacity = 2;
    const std::size_t first = addOne(at(kMon, 10));
    addOne(at(kMon, 10));
    m_problem.clients[1].priority = 2;
    m_problem.coaches[0].capacity = 1;
    EXPECT_THAT(moves(), ElementsAre(SessionMove{first, Slot{0, at(kMon, 10)}, {}}));
    EXPECT_EQ(moves()[0].kind(), MoveKind::LeftOver);
}

TEST_F(ReplanTest, MovesOneOfTwoWhoCannotShareAnyMore)
{
    m_problem.coaches[0].capacity = 3;
    m_problem.stations[0].units = 1;
    const std::size_t whole = addOne(at(kMon, 10));
    for (const int share : {50, 50}) {
        m_problem.sessions[addOne(at(kMon, 10))].needs = {{0, share, 0, 60}};
    }
    m_problem.sessions[whole].needs = {{0, 100, 0, 60}};
    ASSERT_EQ(moves().size(), 1U) << "the one who takes the whole rack, not the two who share it";
    EXPECT_EQ(moves()[0].session, whole);
    EXPECT_EQ(moves()[0].kind(), MoveKind::Moved);
}

TEST_F(ReplanTest, LeavesThePastAlone)
{
    const std::size_t past = addOne(at(kMon, 10));
    const std::size_t waiting = addOne(std::nullopt);
    m_options.fromMinute = at(kTue, 11);
    m_problem.coaches[0].absences = {{kMon, 0, kDayMinutes}};
    m_problem.clients[1].available = {{kMon, 10 * 60, 13 * 60}, {kTue, 10 * 60, 12 * 60}};
    EXPECT_THAT(moves(), ElementsAre(SessionMove{waiting, {}, Slot{0, at(kTue, 11)}})) << "not before it is eleven";
    EXPECT_EQ(replanned(m_problem, m_plan, m_options).plan[past], m_plan[past]) << "though the coach was away";
    m_options.fromMinute += 1;
    EXPECT_THAT(moves(), IsEmpty());
}

TEST_F(ReplanTest, CopesWithACoachWhoIsGone)
{
    const std::size_t session = addOne(std::nullopt);
    m_plan[session] = Slot{5, at(kMon, 11)};
    EXPECT_THAT(moves(), ElementsAre(SessionMove{session, Slot{5, at(kMon, 11)}, Slot{0, at(kMon, 11)}}));
}

TEST_F(ReplanTest, TakesAShorterPlanForSessionsThatAreNew)
{
    addOne(at(kMon, 10));
    const std::size_t added = addOne(std::nullopt);
    m_plan.pop_back();
    ASSERT_EQ(moves().size(), 1U);
    EXPECT_EQ(moves()[0].session, added);
}

}  // namespace
}  // namespace chalk::week
