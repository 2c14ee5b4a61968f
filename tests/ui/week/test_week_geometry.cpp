#include "ui/week/week_geometry.h"

#include "tests/ui/week/week_fixture.h"
#include "ui/common/look.h"

namespace chalk::ui::week {

using test::clock;

class WeekGeometryTest : public ::testing::Test {
protected:
    WeekGeometryTest()
    {
        chalk::week::WeekFacts facts = test::someWeek();
        facts.studio.open = {};
        for (int day = 0; day < 5; ++day) {
            EXPECT_TRUE(facts.studio.open.add({day, clock(7), clock(13)}));
            EXPECT_TRUE(facts.studio.open.add({day, clock(16), clock(20)}));
        }
        test::book(test::addClient(facts, "Ada Lund"), 1, clock(9));
        test::book(test::addClient(facts, "Bo Arden"), 1, clock(9, 30));
        m_scene = test::WeekOnTest(facts).scene();
    }
    WeekGeometry geometry(double width = 900, double height = 640) const { return {m_scene, m_look.theme(), {width, height}}; }

    const common::Look m_look;
    WeekScene m_scene;
};

TEST_F(WeekGeometryTest, TheWholeRoomIsUsedAndATooSmallOneIsLeft)
{
    EXPECT_NEAR(geometry().size().width(), 900, 0.01);
    EXPECT_NEAR(geometry().size().height(), 640, 0.01);
    EXPECT_GT(geometry(100, 100).size().width(), 300);
    EXPECT_GT(geometry(100, 100).size().height(), 300);
}

TEST_F(WeekGeometryTest, FoldedHoursShareTheirBand)
{
    const WeekGeometry week = geometry();
    EXPECT_NEAR(week.yOf(clock(8)) - week.yOf(clock(7)), week.hourHeight(), 0.01);
    EXPECT_NEAR(week.yOf(clock(16)) - week.yOf(clock(13)), 16, 0.01);
    EXPECT_NEAR(week.yOf(clock(17)) - week.yOf(clock(16)), week.hourHeight(), 0.01);
}

TEST_F(WeekGeometryTest, APointAnswersTheSlotThatIsDrawnThere)
{
    const WeekGeometry week = geometry();
    for (const chalk::week::Slot slot : {chalk::week::Slot{0, clock(7)}, chalk::week::Slot{1, 4 * chalk::week::kDayMinutes + clock(16, 15)}}) {
        EXPECT_EQ(week.slotAt(week.slotRect(slot, 15).center()), slot);
    }
    EXPECT_FALSE(week.slotAt({10, 200}));
    EXPECT_FALSE(week.slotAt({week.laneRect(0, 0).center().x(), week.yOf(clock(14))})) << "folded";
    EXPECT_FALSE(week.slotAt(week.rackRect(0, 0, clock(7), clock(8)).center())) << "a rack is no lane";
}

TEST_F(WeekGeometryTest, BlocksThatOverlapInTimeDoNotOverlapOnTheScreen)
{
    const WeekGeometry week = geometry();
    ASSERT_EQ(m_scene.blocks.size(), 2U);
    const QRectF first = week.blockRect(m_scene.blocks[0]);
    const QRectF second = week.blockRect(m_scene.blocks[1]);
    EXPECT_FALSE(first.intersects(second));
    EXPECT_TRUE(week.laneRect(1, 0).contains(first));
    EXPECT_TRUE(week.laneRect(1, 0).contains(second));
    EXPECT_EQ(week.blockAt(second.center()), 1);
    EXPECT_EQ(week.blockAt({0, 0}), -1);
}

}  // namespace chalk::ui::week
