#include "ui/week/week_filling.h"

#include "core/week/week_checker.h"
#include "tests/ui/week/week_fixture.h"

#include <QSignalSpy>
#include <QTest>
#include <QThread>
#include <QThreadPool>

#include <algorithm>

namespace chalk::ui::week {

namespace {

using chalk::week::WeekPlan;
using chalk::week::WeekProblem;

/// Goes to and fro between two plans until it is told to end.
void searchOn(const WeekProblem& /*problem*/, const WeekPlan& booked, const PlanReport& report)
{
    WeekPlan plan = booked;
    for (int i = 0; report(plan); ++i) {
        plan.front() = chalk::week::Slot{0, 540 + i % 2 * 60};
        QThread::msleep(2);
    }
}

chalk::week::WeekCase threeClients()
{
    chalk::week::WeekFacts facts = test::someWeek();
    for (const char* name : {"Ada Lund", "Bo Arden", "Cleo Marsh"}) {
        test::addClient(facts, name).client.sessionsPerWeek = 2;
    }
    return caseOf(facts);
}

}  // namespace

TEST(WeekFilling, FindsBesideTheWindowsThreadAndEndsByItself)
{
    const chalk::week::WeekCase week = threeClients();
    WeekFilling filling;
    QSignalSpy finished(&filling, &WeekFilling::finished);
    WeekPlan best;
    QObject::connect(&filling, &WeekFilling::found, &filling, [&best](const WeekPlan& plan) { best = plan; });
    filling.start(searchForFill, week.problem, week.booked);
    EXPECT_TRUE(filling.isRunning());
    ASSERT_TRUE(finished.wait(20'000));
    ASSERT_EQ(best.size(), 6U);
    EXPECT_TRUE(std::all_of(best.begin(), best.end(), [](const auto& slot) { return slot.has_value(); }));
    EXPECT_TRUE(faultsOf(week.problem, best).empty());
    EXPECT_FALSE(filling.isRunning());
}

TEST(WeekFilling, NoBookingMovesWhateverRuleItBreaks)
{
    chalk::week::WeekFacts facts = test::someWeek();
    chalk::week::ClientOfWeek& ada = test::addClient(facts, "Ada Lund");
    ada.free = {};
    ASSERT_TRUE(ada.free.add({2, test::clock(9), test::clock(12)}));
    test::book(ada, 1, test::clock(15));
    test::addClient(facts, "Bo Arden");
    const chalk::week::WeekCase week = caseOf(facts);
    WeekPlan best;
    searchForFill(week.problem, week.booked, [&best](const WeekPlan& plan) {
        best = plan;
        return false;
    });
    EXPECT_EQ(best[0], week.booked[0]) << "somebody agreed to it";
    EXPECT_TRUE(best[1]);
}

TEST(WeekFilling, StoppedItSaysNoMore)
{
    const chalk::week::WeekCase week = threeClients();
    WeekFilling filling;
    int found = 0;
    QObject::connect(&filling, &WeekFilling::found, &filling, [&found] { ++found; });
    QSignalSpy finished(&filling, &WeekFilling::finished);
    filling.start(searchOn, week.problem, week.booked);
    EXPECT_TRUE(QTest::qWaitFor([&found] { return found > 0; }));
    filling.stop();
    EXPECT_EQ(finished.count(), 1);
    const int atStop = found;
    QTest::qWait(30);
    EXPECT_EQ(found, atStop);
    EXPECT_EQ(finished.count(), 1);
}

TEST(WeekFilling, OfPlansThatCameMeanwhileOnlyTheLastIsTold)
{
    const chalk::week::WeekCase week = threeClients();
    WeekFilling filling;
    int found = 0;
    WeekPlan last;
    QObject::connect(&filling, &WeekFilling::found, &filling, [&](const WeekPlan& plan) {
        ++found;
        last = plan;
    });
    constexpr int kPlans = 50;
    filling.start([](const WeekProblem& /*problem*/, const WeekPlan& booked, const PlanReport& report) {
        WeekPlan plan = booked;
        for (int i = 1; i <= kPlans; ++i) {
            plan.front() = chalk::week::Slot{0, 15 * i};
            report(plan);
        }
    }, week.problem, week.booked);
    QThreadPool::globalInstance()->waitForDone();
    EXPECT_TRUE(QTest::qWaitFor([&filling] { return !filling.isRunning(); }));
    EXPECT_EQ(found, 1);
    EXPECT_EQ(last.front(), (chalk::week::Slot{0, 15 * kPlans}));
}

TEST(WeekFilling, ACoachWhoIsAwayLosesOnlyHisOwnSessions)
{
    chalk::week::WeekFacts facts = test::someWeek();
    test::book(test::addClient(facts, "Ada Lund"), 1, test::clock(9));
    test::book(test::addClient(facts, "Bo Arden"), 2, test::clock(9));
    facts.coaches[0].work.hours.emplace();
    ASSERT_TRUE(facts.coaches[0].work.hours->add({2, test::clock(6), test::clock(21)}));
    const chalk::week::WeekCase week = caseOf(facts);
    WeekPlan mended;
    searchForChange(0)(week.problem, week.booked, [&mended](const WeekPlan& plan) {
        mended = plan;
        return true;
    });
    EXPECT_NE(mended[0], week.booked[0]);
    EXPECT_EQ(mended[1], week.booked[1]);
    EXPECT_TRUE(faultsOf(week.problem, mended).empty());
}

TEST(WeekFilling, ItMayGoAwayWhileItSearches)
{
    const chalk::week::WeekCase week = threeClients();
    auto filling = std::make_unique<WeekFilling>();
    filling->start(searchOn, week.problem, week.booked);
    filling.reset();
    EXPECT_TRUE(QThreadPool::globalInstance()->waitForDone(5000)) << "the search has ended with it";
}

}  // namespace chalk::ui::week
