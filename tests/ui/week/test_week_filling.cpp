#include "ui/week/week_filling.h"

#include "core/week/week_checker.h"
#include "tests/ui/week/week_fixture.h"

#include <QSignalSpy>
#include <QTest>
#include <QThread>
#include <QThreadPool>

namespace chalk::ui::week {

namespace {

using chalk::week::WeekPlan;
using chalk::week::WeekProblem;

/// Reports the same plan until it is told to end.
void searchOn(const WeekProblem& /*problem*/, const WeekPlan& booked, const PlanReport& report)
{
    while (report(booked)) {
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

TEST(WeekFilling, TheNearestPlacesBreakNoRule)
{
    const chalk::week::WeekCase week = threeClients();
    WeekPlan best;
    fillNearest(week.problem, week.booked, [&best](const WeekPlan& plan) {
        best = plan;
        return true;
    });
    ASSERT_EQ(best.size(), 6U);
    EXPECT_TRUE(std::all_of(best.begin(), best.end(), [](const auto& slot) { return slot.has_value(); }));
    EXPECT_TRUE(faultsOf(week.problem, best).empty());
}

TEST(WeekFilling, FindsBesideTheWindowsThreadAndEndsByItself)
{
    const chalk::week::WeekCase week = threeClients();
    WeekFilling filling(fillNearest);
    QSignalSpy finished(&filling, &WeekFilling::finished);
    int found = 0;
    QObject::connect(&filling, &WeekFilling::found, &filling, [&found] { ++found; });
    filling.start(week.problem, week.booked);
    EXPECT_TRUE(filling.isRunning());
    ASSERT_TRUE(finished.wait());
    EXPECT_EQ(found, 6);
    EXPECT_FALSE(filling.isRunning());
}

TEST(WeekFilling, StoppedItSaysNoMore)
{
    const chalk::week::WeekCase week = threeClients();
    WeekFilling filling(searchOn);
    int found = 0;
    QObject::connect(&filling, &WeekFilling::found, &filling, [&found] { ++found; });
    QSignalSpy finished(&filling, &WeekFilling::finished);
    filling.start(week.problem, week.booked);
    EXPECT_TRUE(QTest::qWaitFor([&found] { return found > 0; }));
    filling.stop();
    EXPECT_EQ(finished.count(), 1);
    const int atStop = found;
    QTest::qWait(30);
    EXPECT_EQ(found, atStop);
    EXPECT_EQ(finished.count(), 1);
}

TEST(WeekFilling, ItMayGoAwayWhileItSearches)
{
    const chalk::week::WeekCase week = threeClients();
    auto filling = std::make_unique<WeekFilling>(searchOn);
    filling->start(week.problem, week.booked);
    filling.reset();
    EXPECT_TRUE(QThreadPool::globalInstance()->waitForDone(5000)) << "the search has ended with it";
}

}  // namespace chalk::ui::week
