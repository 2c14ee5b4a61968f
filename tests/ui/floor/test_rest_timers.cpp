#include "ui/floor/rest_timers.h"

#include "ui/common/formats.h"

#include <gtest/gtest.h>

#include <memory>

namespace chalk::ui::floor {

class RestTimersTest : public ::testing::Test {
protected:
    static PlannedRest planOf(int client, int seconds)
    {
        return {base::ClientId(client), QStringLiteral("Client %1").arg(client), QStringLiteral("Back squat"), base::Seconds(seconds)};
    }
    void pass(int ms) { m_now += std::chrono::milliseconds(ms); }
    Rest only() const
    {
        EXPECT_EQ(m_timers.rests().size(), 1U);
        return m_timers.rests().front();
    }
    std::vector<int> clients() const
    {
        std::vector<int> ids;
        for (const Rest& one : m_timers.rests()) {
            ids.push_back(static_cast<int>(one.plan.client.value()));
        }
        return ids;
    }

    RestTimers::Moment m_now{};
    RestTimers m_timers{[this] { return m_now; }};
    const base::ClientId m_ada{1};
};

TEST_F(RestTimersTest, CountsDownAndThenUp)
{
    m_timers.start(planOf(1, 150));
    EXPECT_EQ(only().left, base::Seconds(150));
    EXPECT_EQ(common::restText(only().left), QStringLiteral("2:30"));
    pass(1);
    EXPECT_EQ(only().left, base::Seconds(150)) << "a begun second counts whole";
    pass(999);
    EXPECT_EQ(only().left, base::Seconds(149));
    pass(148'999);
    EXPECT_EQ(only().left, base::Seconds(1));
    EXPECT_FALSE(only().isOver);
    pass(1);
    EXPECT_TRUE(only().isOver);
    EXPECT_EQ(only().left, base::Seconds(0));
    EXPECT_EQ(only().over, base::Seconds(0));
    pass(61'500);
    EXPECT_EQ(only().over, base::Seconds(61));
}

TEST_F(RestTimersTest, TellsThePartThatIsLeft)
{
    m_timers.start(planOf(1, 120));
    EXPECT_DOUBLE_EQ(only().partLeft(), 1.0);
    pass(90'000);
    EXPECT_DOUBLE_EQ(only().partLeft(), 0.25);
    pass(90'000);
    EXPECT_DOUBLE_EQ(only().partLeft(), 0.0);
    m_timers.start(planOf(1, 0));
    EXPECT_DOUBLE_EQ(only().partLeft(), 0.0);
    EXPECT_TRUE(only().isOver);
}

TEST_F(RestTimersTest, AHeldRestStandsStill)
{
    m_timers.start(planOf(1, 60));
    pass(10'400);
    EXPECT_TRUE(m_timers.holdOrGoOn(m_ada));
    pass(600'000);
    EXPECT_TRUE(only().isHeld);
    EXPECT_EQ(only().left, base::Seconds(50));
    EXPECT_TRUE(m_timers.holdOrGoOn(m_ada));
    EXPECT_FALSE(only().isHeld);
    pass(600);
    EXPECT_EQ(only().left, base::Seconds(49)) << "the part of a second before the hold counts";
}

TEST_F(RestTimersTest, StopsAndStartsAnew)
{
    m_timers.start(planOf(1, 60));
    pass(70'000);
    EXPECT_TRUE(m_timers.holdOrGoOn(m_ada));
    EXPECT_TRUE(m_timers.restart(m_ada));
    EXPECT_EQ(only().left, base::Seconds(60));
    EXPECT_FALSE(only().isHeld);
    EXPECT_TRUE(m_timers.has(m_ada));
    EXPECT_TRUE(m_timers.stop(m_ada));
    EXPECT_TRUE(m_timers.isEmpty());
    EXPECT_FALSE(m_timers.has(m_ada));
    EXPECT_FALSE(m_timers.stop(m_ada));
    EXPECT_FALSE(m_timers.restart(m_ada));
    EXPECT_FALSE(m_timers.holdOrGoOn(m_ada));
}

TEST_F(RestTimersTest, OneAClientAndTheMostPressingFirst)
{
    m_timers.start(planOf(1, 180));
    m_timers.start(planOf(2, 60));
    m_timers.start(planOf(3, 60));
    EXPECT_EQ(clients(), (std::vector<int>{2, 3, 1}));
    pass(61'000);
    m_timers.start(planOf(4, 30));
    EXPECT_EQ(clients(), (std::vector<int>{2, 3, 4, 1}));
    m_timers.start(planOf(2, 90));
    EXPECT_EQ(clients(), (std::vector<int>{3, 4, 2, 1}));
    pass(30'500);
    EXPECT_EQ(clients(), (std::vector<int>{3, 4, 2, 1}));
}

TEST_F(RestTimersTest, AnEndIsToldOnce)
{
    m_timers.start(planOf(1, 30));
    m_timers.start(planOf(2, 60));
    EXPECT_TRUE(m_timers.endedSinceAsked().empty());
    pass(30'000);
    EXPECT_EQ(m_timers.endedSinceAsked(), (std::vector<base::ClientId>{m_ada}));
    EXPECT_TRUE(m_timers.endedSinceAsked().empty());
    m_timers.restart(m_ada);
    pass(30'000);
    EXPECT_EQ(m_timers.endedSinceAsked().size(), 2U);
}

TEST_F(RestTimersTest, SaysWhenAFigureChangesNext)
{
    EXPECT_FALSE(m_timers.untilNextChange());
    m_timers.start(planOf(1, 60));
    EXPECT_EQ(m_timers.untilNextChange(), std::chrono::milliseconds(1000));
    pass(300);
    m_timers.start(planOf(2, 60));
    EXPECT_EQ(m_timers.untilNextChange(), std::chrono::milliseconds(700));
    m_timers.holdOrGoOn(m_ada);
    EXPECT_EQ(m_timers.untilNextChange(), std::chrono::milliseconds(1000));
    m_now += std::chrono::microseconds(999'900);
    EXPECT_EQ(m_timers.untilNextChange(), std::chrono::milliseconds(1)) << "never 0: that would spin";
    m_timers.holdOrGoOn(base::ClientId(2));
    EXPECT_FALSE(m_timers.untilNextChange());
}

}  // namespace chalk::ui::floor
