#include "ui/onboarding/stopwatch.h"

#include <QSignalSpy>

#include <gtest/gtest.h>

namespace chalk::ui::onboarding {

TEST(Stopwatch, CountsFromStartToStopAndNotBeyond)
{
    qint64 now = 5000;
    Stopwatch watch(nullptr, [&now] { return now; });
    EXPECT_EQ(watch.elapsedMs(), 0);
    EXPECT_EQ(watch.stop(), 0);
    watch.start();
    now += 3240;
    EXPECT_EQ(watch.elapsedMs(), 3240);
    EXPECT_EQ(watch.stop(), 3240);
    now += 1000;
    EXPECT_EQ(watch.elapsedMs(), 0);
    watch.start();
    EXPECT_EQ(watch.elapsedMs(), 0);
}

TEST(Stopwatch, TicksWhileItRuns)
{
    Stopwatch watch;
    QSignalSpy ticks(&watch, &Stopwatch::ticked);
    watch.start();
    EXPECT_TRUE(ticks.wait(2000));
    watch.stop();
    ticks.clear();
    EXPECT_FALSE(ticks.wait(250));
}

TEST(Stopwatch, AClockThatGoesBackShowsNothing)
{
    qint64 now = 5000;
    Stopwatch watch(nullptr, [&now] { return now; });
    watch.start();
    now = 0;
    EXPECT_EQ(watch.stop(), 0);
}

}  // namespace chalk::ui::onboarding
