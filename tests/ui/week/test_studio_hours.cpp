#include "ui/week/studio_hours.h"

#include "tests/support/scripted_dialogs.h"
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
    tests::ScriptedDialogs m_dialogs;
    StudioHours m_hours{m_studio.database(), m_dialogs};
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
    StudioHours again(m_studio.database(), m_dialogs);
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

TEST_F(StudioHoursTest, WhatSomebodyElseSetMeanwhileIsAskedAbout)
{
    const auto second = store::Database::open(m_studio.file(), store::OpenMode::MustExist).value();
    StudioHours theirs(*second, m_dialogs);
    theirs.read(test::smallStudioDay());
    ASSERT_TRUE(theirs.setUnits(lifts::Station::Rack, 7));
    clients::WeekHours mornings;
    ASSERT_TRUE(mornings.add({0, clock(7), clock(12)}));
    m_dialogs.answers = {0};
    EXPECT_FALSE(m_hours.setOpen(mornings)) << "theirs stays";
    ASSERT_EQ(m_dialogs.asked.size(), 1U);
    EXPECT_TRUE(m_hours.refusal().isEmpty()) << "the person said so: that is no refusal";
    EXPECT_NE(m_hours.studio().open, mornings);
    EXPECT_EQ(m_hours.studio().stations.at(lifts::Station::Rack), 7) << "what is there now is on show";

    ASSERT_TRUE(theirs.setCapacity(base::CoachId(1), 5));
    m_dialogs.answers = {2};
    EXPECT_TRUE(m_hours.setHours(base::CoachId(1), mornings)) << "both";
    EXPECT_EQ(m_hours.workOf(base::CoachId(1)).capacity, 5);
    EXPECT_EQ(m_hours.hoursOf(base::CoachId(1)), mornings);

    theirs.read(test::smallStudioDay());
    ASSERT_TRUE(theirs.setCapacity(base::CoachId(1), 3));
    m_dialogs.answers = {1};
    EXPECT_TRUE(m_hours.setCapacity(base::CoachId(1), 4)) << "one's own";
    theirs.read(test::smallStudioDay());
    EXPECT_EQ(theirs.workOf(base::CoachId(1)).capacity, 4);
    EXPECT_EQ(m_dialogs.asked.size(), 3U);
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
