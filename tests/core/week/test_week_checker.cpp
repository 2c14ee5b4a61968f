#include "core/week/week_checker.h"

#include "tests/support/tiny_week.h"
#include "tests/support/week_judge.h"
#include "tests/support/week_on_test.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>

namespace chalk::week {

using test::at;
using test::kFri;
using test::kMon;
using test::kSat;
using test::kSun;
using test::kTue;
using test::kWed;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

class WeekCheckerTest : public ::testing::Test {
protected:
    /// Another client with one session, and its place.
    std::size_t place(int start, std::size_t coach = 0, int minutes = 60, int maxGroup = 3)
    {
        const std::size_t session = test::addSession(m_problem, test::addClient(m_problem, maxGroup), minutes);
        m_plan.resize(session + 1);
        m_plan[session] = Slot{coach, start};
        return session;
    }

    /// Another session of the client of `session`.
    std::size_t placeAgain(std::size_t session, int start)
    {
        const std::size_t other = test::addSession(m_problem, m_problem.sessions[session].client);
        m_plan.resize(other + 1);
        m_plan[other] = Slot{0, start};
        return other;
    }

    [[nodiscard]] std::vector<PlanFault> faults() const { return faultsOf(m_problem, m_plan); }
    [[nodiscard]] std::vector<PlanRule> rules() const
    {
        std::vector<PlanRule> rules;
        for (const PlanFault& fault : faults()) {
            rules.push_back(fault.rule);
        }
        return rules;
    }

    WeekProblem m_problem = test::quietWeek();
    WeekPlan m_plan;
};

TEST_F(WeekCheckerTest, FindsNothingInAnEmptyPlanAndInOneThatFits)
{
    EXPECT_THAT(faults(), IsEmpty());
    place(at(kMon, 8));
    place(at(kFri, 17));
    EXPECT_THAT(faults(), IsEmpty());
    m_plan.clear();
    EXPECT_THAT(faults(), IsEmpty()) << "left over is no fault";
}

TEST_F(WeekCheckerTest, WantsStartsOnTheGrid)
{
    const std::size_t session = place(at(kMon, 8, 15));
    EXPECT_THAT(rules(), IsEmpty());
    m_problem.grid = 30;
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::OffGrid, {session}, 0, {}, {}, at(kMon, 8, 15), at(kMon, 9, 15), 0, 0}));
    m_problem.grid = 15;
    m_plan[session]->start += 1;
    EXPECT_THAT(rules(), ElementsAre(PlanRule::OffGrid));
}

TEST_F(WeekCheckerTest, WantsACoachWhomTheClientAccepts)
{
    const std::size_t session = place(at(kMon, 12), 1);
    EXPECT_THAT(rules(), IsEmpty());
    m_problem.clients[0].coaches.pop_back();
    EXPECT_THAT(rules(), ElementsAre(PlanRule::CoachNotAccepted));
    m_plan[session]->coach = 2;
    EXPECT_THAT(rules(), ElementsAre(PlanRule::CoachNotAccepted)) << "nobody has that index";
}

TEST_F(WeekCheckerTest, KeepsToTheOpeningHoursToTheMinute)
{
    const std::size_t session = place(at(kMon, 8));
    m_problem.open = {{kMon, 8 * 60, 9 * 60}};
    EXPECT_THAT(rules(), IsEmpty());
    m_problem.open = {{kMon, 8 * 60 + 1, 9 * 60 - 1}};
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::StudioClosed, {session}, 0, {}, {}, at(kMon, 8), at(kMon, 8, 1), 0, 0})) << "its first stretch";
    m_problem.open = {{kMon, 8 * 60, 8 * 60 + 20}, {kMon, 8 * 60 + 20, 9 * 60}};
    EXPECT_THAT(rules(), IsEmpty()) << "hours that touch are one";
    m_problem.open.clear();
    EXPECT_THAT(rules(), ElementsAre(PlanRule::StudioClosed));
}

TEST_F(WeekCheckerTest, KeepsToTheCoachsWindowsBreaksAndAbsences)
{
    const std::size_t session = place(at(kMon, 10));
    m_problem.coaches[0].breaks = {{kMon, 9 * 60 + 30, 10 * 60}, {kMon, 11 * 60, 11 * 60 + 30}};
    EXPECT_THAT(rules(), IsEmpty()) << "breaks that touch";
    m_problem.coaches[0].breaks[0].to += 1;
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::CoachAway, {session}, 0, {}, {}, at(kMon, 10), at(kMon, 10, 1), 0, 0}));
    m_problem.coaches[0].breaks.pop_back();
    m_problem.coaches[0].breaks[0] = {kMon, 11 * 60 - 1, 11 * 60};
    EXPECT_EQ(faults().at(0).from, at(kMon, 10, 59));
    m_problem.coaches[0].breaks.clear();
    m_problem.coaches[0].absences = {{kMon, 0, kDayMinutes}};
    EXPECT_THAT(rules(), ElementsAre(PlanRule::CoachAway));
    m_problem.coaches[0].absences = {{kTue, 0, kDayMinutes}};
    EXPECT_THAT(rules(), IsEmpty());
    m_problem.coaches[0].windows = {{kMon, 10 * 60 + 15, 18 * 60}};
    EXPECT_THAT(rules(), ElementsAre(PlanRule::CoachAway));
}

TEST_F(WeekCheckerTest, RoundsBusyTimeUpToTheGridForTheCoachAndNotForTheClient)
{
    place(at(kMon, 17, 15), 0, 50);
    EXPECT_THAT(rules(), ElementsAre(PlanRule::CoachAway)) << "busy until 18:15, and the coach leaves at 18:00";
    m_plan[0]->start = at(kMon, 17);
    m_problem.clients[0].available = {{kMon, 17 * 60, 17 * 60 + 50}};
    EXPECT_THAT(rules(), IsEmpty());
    m_problem.clients[0].available[0].to -= 1;
    EXPECT_THAT(rules(), ElementsAre(PlanRule::ClientAway));
}

TEST_F(WeekCheckerTest, WantsOneSpanOfTheClientAroundTheWholeSession)
{
    place(at(kMon, 10));
    m_problem.clients[0].available = {{kTue, 10 * 60, 11 * 60}};
    EXPECT_THAT(rules(), ElementsAre(PlanRule::ClientAway));
    m_problem.clients[0].available = {{kMon, 9 * 60, 10 * 60 + 30}, {kMon, 10 * 60 + 30, 12 * 60}};
    EXPECT_THAT(rules(), ElementsAre(PlanRule::ClientAway)) << "two spans that touch are two";
    m_problem.clients[0].available = {{kMon, 10 * 60, 11 * 60}};
    EXPECT_THAT(rules(), IsEmpty());
}

TEST_F(WeekCheckerTest, EndsAtMidnightAtTheLatest)
{
    m_problem.open = test::everyDay(kMon, kSun, 0, 24);
    m_problem.coaches[0].windows = m_problem.open;
    place(at(kMon, 23));
    m_problem.clients[0].available = m_problem.open;
    EXPECT_THAT(rules(), IsEmpty());
    m_plan[0]->start = at(kMon, 23, 15);
    EXPECT_THAT(rules(), ElementsAre(PlanRule::StudioClosed, PlanRule::CoachAway, PlanRule::ClientAway));
    EXPECT_EQ(faults().at(0).from, at(kTue, 0));
    m_plan[0]->start = at(kSun, 23);
    EXPECT_THAT(rules(), IsEmpty());
    m_plan[0]->start = at(kSun + 1, 8);
    EXPECT_THAT(rules(), ElementsAre(PlanRule::StudioClosed, PlanRule::CoachAway, PlanRule::ClientAway)) << "next week is not this one";
    EXPECT_EQ(faults().at(0).day(), 7);
    m_plan[0]->start = at(-1, 8);
    EXPECT_THAT(rules(), ElementsAre(PlanRule::StudioClosed, PlanRule::CoachAway, PlanRule::ClientAway));
    EXPECT_EQ(faults().at(0).day(), -1);
}

TEST_F(WeekCheckerTest, CountsSessionsAtOnceAgainstTheCoachsCapacity)
{
    const std::size_t first = place(at(kMon, 10));
    const std::size_t second = place(at(kMon, 10, 30));
    EXPECT_THAT(rules(), IsEmpty());
    m_problem.coaches[0].capacity = 1;
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::Capacity, {first, second}, 0, {}, {}, at(kMon, 10, 30), at(kMon, 11), 2, 1}));
    m_plan[second]->start = at(kMon, 11);
    EXPECT_THAT(rules(), IsEmpty()) << "one after the other";
    m_problem.sessions[first].minutes = 61;
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::Capacity, {first, second}, 0, {}, {}, at(kMon, 11), at(kMon, 11, 15), 2, 1}));
    m_plan[second]->coach = 1;
    m_plan[second]->start = at(kMon, 12);
    m_plan[first]->start = at(kMon, 12);
    EXPECT_THAT(rules(), IsEmpty()) << "with another coach";
}

TEST_F(WeekCheckerTest, NamesEveryStretchThatIsOverCapacity)
{
    m_problem.coaches[0].capacity = 1;
    const std::size_t across = place(at(kMon, 10), 0, 90);
    const std::size_t early = place(at(kMon, 9, 45), 0, 30);
    const std::size_t late = place(at(kMon, 11), 0, 30);
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::Capacity, {across, early}, 0, {}, {}, at(kMon, 10), at(kMon, 10, 15), 2, 1},
                                      PlanFault{PlanRule::Capacity, {across, late}, 0, {}, {}, at(kMon, 11), at(kMon, 11, 30), 2, 1}));
}

TEST_F(WeekCheckerTest, KeepsTheSmallestGroupOfThoseInIt)
{
    const std::size_t first = place(at(kMon, 10), 0, 60, 2);
    const std::size_t second = place(at(kMon, 10));
    EXPECT_THAT(rules(), IsEmpty());
    const std::size_t third = place(at(kMon, 10, 45));
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::GroupSize, {first, second, third}, 0, {}, {}, at(kMon, 10, 45), at(kMon, 11), 3, 2}));
    m_problem.coaches[0].capacity = 2;
    EXPECT_THAT(rules(), ElementsAre(PlanRule::Capacity, PlanRule::GroupSize)) << "both are said";
    m_plan[third].reset();
    m_problem.clients[1].maxGroup = 1;
    EXPECT_THAT(rules(), ElementsAre(PlanRule::GroupSize)) << "one-to-one is alone";
}

TEST_F(WeekCheckerTest, AddsUpWhatStationsAreNeeded)
{
    std::vector<std::size_t> all{place(at(kMon, 10)), place(at(kMon, 10)), place(at(kMon, 12), 1)};
    m_plan[all[2]]->start = at(kMon, 12);
    for (const std::size_t session : all) {
        m_problem.sessions[session].needs = {{0, 100, 0, 60}};
    }
    EXPECT_THAT(rules(), IsEmpty()) << "two racks, two sessions";
    m_problem.stations[0].units = 1;
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::StationUnits, {all[0], all[1]}, {}, 0, {}, at(kMon, 10), at(kMon, 11), 200, 100}));
    m_problem.sessions[all[0]].needs = {{0, 50, 0, 60}};
    m_problem.sessions[all[1]].needs = {{0, 50, 0, 60}};
    EXPECT_THAT(rules(), IsEmpty()) << "half a rack each";
    m_problem.sessions[all[1]].needs = {{0, 51, 0, 60}};
    EXPECT_EQ(faults().at(0).needed, 101);
    m_problem.sessions[all[1]].needs = {{0, 51, 0, 60}, {0, 49, 0, 15}};
    EXPECT_EQ(faults().at(0).needed, 150) << "one session may need a station twice";
    EXPECT_EQ(faults().at(0).sessions, (std::vector<std::size_t>{all[0], all[1]}));
}

TEST_F(WeekCheckerTest, SharesStationsAcrossCoaches)
{
    const std::size_t first = place(at(kMon, 12));
    const std::size_t second = place(at(kMon, 12), 1);
    m_problem.stations[0].units = 1;
    m_problem.sessions[first].needs = m_problem.sessions[second].needs = {{0, 100, 0, 30}};
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::StationUnits, {first, second}, {}, 0, {}, at(kMon, 12), at(kMon, 12, 30), 200, 100}));
    m_problem.sessions[second].needs = {{0, 100, 30, 60}};
    EXPECT_THAT(rules(), IsEmpty());
    m_problem.sessions[second].needs = {{0, 100, 29, 60}};
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::StationUnits, {first, second}, {}, 0, {}, at(kMon, 12, 15), at(kMon, 12, 30), 200, 100}))
        << "from the grid before";
    m_problem.sessions[second].needs = {{0, 100, 30, 60}};
    m_problem.sessions[first].needs = {{0, 100, 0, 31}};
    EXPECT_EQ(faults().at(0).to, at(kMon, 12, 45)) << "to the grid after";
}

TEST_F(WeekCheckerTest, TakesClosuresOfStationsIntoAccount)
{
    const std::size_t session = place(at(kMon, 10));
    m_problem.sessions[session].needs = {{0, 100, 0, 60}};
    m_problem.stations[0].closures = {{{kMon, 11 * 60, 12 * 60}, 0}, {{kTue, 10 * 60, 11 * 60}, 0}, {{kMon, 9 * 60, 10 * 60}, 0}};
    EXPECT_THAT(rules(), IsEmpty()) << "closures that touch";
    m_problem.stations[0].closures[0].span.from -= 1;
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::StationUnits, {session}, {}, 0, {}, at(kMon, 10, 45), at(kMon, 11), 100, 0}));
    m_problem.stations[0].closures[0].units = 1;
    EXPECT_THAT(rules(), IsEmpty()) << "one rack is left";
    m_problem.stations[0].closures.push_back({{kMon, 10 * 60, 11 * 60}, 0});
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::StationUnits, {session}, {}, 0, {}, at(kMon, 10), at(kMon, 11), 100, 0})) << "the fewest units count";
}

TEST_F(WeekCheckerTest, AllowsAClientOneSessionADay)
{
    const std::size_t first = place(at(kMon, 8));
    const std::size_t second = placeAgain(first, at(kMon, 17));
    m_problem.sessions[second].patterns = {"pull"};
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::SameDay, {first, second}, {}, {}, {}, at(kMon, 17), at(kMon, 18), 0, 0}));
    m_plan[second]->start = at(kTue, 8);
    EXPECT_THAT(rules(), IsEmpty());
}

TEST_F(WeekCheckerTest, KeepsTheHoursBetweenSessionsThatShareAPattern)
{
    const std::size_t first = place(at(kMon, 10));
    const std::size_t second = placeAgain(first, at(kWed, 10));
    EXPECT_THAT(rules(), IsEmpty());
    m_plan[second]->start = at(kWed, 9, 45);
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::RecoveryTime, {first, second}, {}, {}, {}, at(kWed, 9, 45), at(kWed, 10, 45), 48 * 60, 48 * 60 - 15}));
    std::swap(m_plan[first], m_plan[second]);
    EXPECT_EQ(faults().at(0).from, at(kWed, 9, 45)) << "whichever comes first";
    m_problem.sessions[second].patterns = {"hinge", "pull"};
    EXPECT_THAT(rules(), IsEmpty());
    m_problem.sessions[first].patterns = {"pull"};
    EXPECT_THAT(rules(), ElementsAre(PlanRule::RecoveryTime));
    m_plan[second]->start = at(kWed, 17);
    EXPECT_THAT(rules(), ElementsAre(PlanRule::SameDay, PlanRule::RecoveryTime)) << "every fault is said";
}

TEST_F(WeekCheckerTest, KeepsARestDayBetweenWhateverTheHours)
{
    const std::size_t first = place(at(kMon, 8));
    m_problem.clients[0].recovery.kind = RecoveryKind::RestDay;
    const std::size_t second = placeAgain(first, at(kTue, 17));
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::RecoveryTime, {first, second}, {}, {}, {}, at(kTue, 17), at(kTue, 18), 2, 1}));
    m_plan[first]->start = at(kMon, 17);
    m_plan[second]->start = at(kWed, 8);
    EXPECT_THAT(rules(), IsEmpty()) << "39 hours, and a day between";
}

TEST_F(WeekCheckerTest, CountsLastWeeksSessions)
{
    const std::size_t session = place(at(kMon, 18), 1);
    m_problem.clients[0].lastWeek = {{at(-3, 10), {"squat"}}, {at(-2, 18), {"squat"}}};
    EXPECT_THAT(rules(), IsEmpty());
    m_problem.clients[0].lastWeek[1].start += 1;
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::RecoveryTime, {session}, {}, {}, 1, at(kMon, 18), at(kMon, 19), 48 * 60, 48 * 60 - 1}));
    m_problem.clients[0].lastWeek[1].patterns = {"pull"};
    EXPECT_THAT(rules(), IsEmpty());
    m_problem.clients[0].recovery.kind = RecoveryKind::RestDay;
    m_problem.clients[0].lastWeek = {{-1, {"squat"}}, {at(-2, 23), {"squat"}}};
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::RecoveryTime, {session}, {}, {}, 0, at(kMon, 18), at(kMon, 19), 2, 1})) << "Sunday's last minute";
}

TEST_F(WeekCheckerTest, LeavesLockedSessionsWhereTheyStand)
{
    const std::size_t session = place(at(kMon, 10));
    m_problem.sessions[session].standing = Slot{0, at(kMon, 10)};
    m_problem.sessions[session].isLocked = true;
    EXPECT_THAT(rules(), IsEmpty());
    m_plan[session]->start = at(kMon, 10, 15);
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::LockedMoved, {session}, 0, {}, {}, at(kMon, 10, 15), at(kMon, 11, 15), 0, 0}));
    m_plan[session] = Slot{1, at(kMon, 12)};
    m_problem.sessions[session].standing = Slot{0, at(kMon, 12)};
    EXPECT_THAT(rules(), ElementsAre(PlanRule::LockedMoved)) << "with another coach";
    m_plan[session].reset();
    EXPECT_THAT(faults(), ElementsAre(PlanFault{PlanRule::LockedLeftOver, {session}, {}, {}, {}, 0, 0, 0, 0}));
    m_problem.sessions[session].isLocked = false;
    EXPECT_THAT(rules(), IsEmpty());
}

TEST_F(WeekCheckerTest, FindsEveryFaultOfABrokenPlan)
{
    const std::size_t first = place(at(kSat, 5, 7), 1, 60, 1);
    place(at(kSat, 5, 7), 1);
    m_problem.clients[0].coaches.clear();
    m_problem.sessions[first].needs = {{0, 300, 0, 60}};
    EXPECT_THAT(rules(), ElementsAre(PlanRule::OffGrid, PlanRule::OffGrid, PlanRule::CoachNotAccepted, PlanRule::StudioClosed, PlanRule::StudioClosed,
                                     PlanRule::CoachAway, PlanRule::CoachAway, PlanRule::ClientAway, PlanRule::ClientAway, PlanRule::GroupSize,
                                     PlanRule::StationUnits));
}

TEST(WeekCheckerPropertyTest, AgreesWithAnotherJudgeOnDrawnPlans)
{
    std::array<int, 2> seen{};
    for (unsigned seed = 0; seed < 60; ++seed) {
        std::mt19937 random(seed);
        const WeekProblem problem = seed % 2 == 0 ? test::tinyWeek(seed) : test::drawnWeek(seed, 3);
        for (int turn = 0; turn < 4; ++turn) {
            WeekPlan plan = test::drawnPlan(problem, seed);
            const auto session = static_cast<std::size_t>(test::drawFrom(random, 0, static_cast<int>(plan.size()) - 1));
            const std::vector<DaySpan>& hours = problem.clients[problem.sessions[session].client].available;
            if (turn > 0 && !hours.empty()) {
                const DaySpan& span = hours[static_cast<std::size_t>(test::drawFrom(random, 0, static_cast<int>(hours.size()) - 1))];
                const int minute = test::drawFrom(random, span.from, span.to) / problem.grid * problem.grid;
                plan[session] = Slot{static_cast<std::size_t>(test::drawFrom(random, 0, 1)), at(span.day, 0, minute)};
            }
            const std::vector<std::string> judged = test::judged(problem, plan).faults;
            const bool isLegal = faultsOf(problem, plan).empty();
            EXPECT_EQ(isLegal, judged.empty()) << problem.name << ' ' << seed << ' ' << (judged.empty() ? "" : judged.front());
            ++seen.at(isLegal ? 1 : 0);
        }
    }
    EXPECT_GT(seen[0], 20);
    EXPECT_GT(seen[1], 20);
}

}  // namespace chalk::week
