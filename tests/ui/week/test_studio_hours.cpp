#include "ui/week/studio_hours.h"

#include "tests/support/small_studio.h"
#include "tests/ui/week/week_fixture.h"

namespace chalk::ui::week {

using test::clock;

class StudioHoursTest : public ::testing::Test {
protected:
    StudioHoursTest() { m_hours.read(test::smallStudioDay()); }

    static chalk::week::Closure lights()
    {
        return {test::smallStudioDay() + 11, test::smallStudioDay() + 11, clock(12), chalk::week::kDayMinutes, {}, {}, 0, "Harbour lights"};
    }
    test::StudioOnTest m_studio;
    StudioHours m_hours{m_studio.database()};
};

TEST_F(StudioHoursTest, WhatIsSetIsKeptAtOnce)
{
    const base::CoachId ines(1);
    EXPECT_EQ(m_hours.hoursOf(ines), m_hours.studio().open) << "nobody has set any";
    clients::WeekHours mornings;
    ASSERT_TRUE(mornings.add({0, clock(7), clock(12)}));
    EXPECT_TRUE(m_hours.setHours(ines, mornings));
    EXPECT_TRUE(m_hours.setCapacity(ines, 6));
    EXPECT_TRUE(m_hours.setUnits(lifts::Station::Rack, 3));
    EXPECT_TRUE(m_hours.setOpen(mornings));
    StudioHours again(m_studio.database());
    again.read(test::smallStudioDay());
    EXPECT_EQ(again.hoursOf(ines), mornings);
    EXPECT_EQ(again.workOf(ines).capacity, 6);
    EXPECT_EQ(again.studio().stations.at(lifts::Station::Rack), 3);
    EXPECT_EQ(again.studio().open, mornings);
    EXPECT_TRUE(again.setUnits(lifts::Station::Rack, 0));
    EXPECT_EQ(again.studio().stations.count(lifts::Station::Rack), 0U);
}

TEST_F(StudioHoursTest, WhatIsOutOfRangeIsRefusedAndSaid)
{
    EXPECT_FALSE(m_hours.setCapacity(base::CoachId(1), 99));
    EXPECT_FALSE(m_hours.refusal().isEmpty());
    EXPECT_EQ(m_hours.workOf(base::CoachId(1)).capacity, chalk::week::CoachWork().capacity);
    EXPECT_TRUE(m_hours.setCapacity(base::CoachId(1), 2));
    EXPECT_TRUE(m_hours.refusal().isEmpty());
}

TEST_F(StudioHoursTest, ClosuresComeAndGo)
{
    EXPECT_TRUE(m_hours.addClosure(lights()));
    ASSERT_EQ(m_hours.closures().size(), 1U);
    EXPECT_EQ(m_hours.closures()[0].closure, lights());
    EXPECT_TRUE(m_hours.removeClosure(m_hours.closures()[0].id));
    EXPECT_TRUE(m_hours.closures().empty());
    EXPECT_FALSE(m_hours.removeClosure(77));
}

TEST_F(StudioHoursTest, AClosureInWords)
{
    chalk::week::Closure closure = lights();
    EXPECT_EQ(closureLine(closure, m_hours.coaches()), QStringLiteral("Sat 5 Dec · Closed from 12:00: Harbour lights"));
    closure.last = closure.first + 1;
    closure.coach = base::CoachId(2);
    EXPECT_EQ(closureLine(closure, m_hours.coaches()), QStringLiteral("Sat 5 Dec – Sun 6 Dec · Tobias away from 12:00: Harbour lights"));
}

}  // namespace chalk::ui::week
