#include "ui/week/week_scene.h"

#include "tests/ui/week/week_fixture.h"

namespace chalk::ui::week {

namespace {

using test::addClient;
using test::book;
using test::clock;
using test::WeekOnTest;

constexpr int kTuesday = 1;

std::vector<QString> firstNames(const WeekBlock& block)
{
    std::vector<QString> names;
    for (const BlockMember& member : block.members) {
        names.push_back(member.firstName);
    }
    return names;
}

}  // namespace

TEST(WeekScene, SessionsThatBeginTogetherAreOneBlock)
{
    chalk::week::WeekFacts facts = test::someWeek();
    book(addClient(facts, "Ada Lund"), kTuesday, clock(9));
    book(addClient(facts, "Bo Arden"), kTuesday, clock(9));
    book(addClient(facts, "Cleo Marsh"), kTuesday, clock(10));
    const WeekScene scene = WeekOnTest(facts).scene();
    ASSERT_EQ(scene.blocks.size(), 2U);
    EXPECT_EQ(firstNames(scene.blocks[0]), (std::vector<QString>{QStringLiteral("Ada"), QStringLiteral("Bo")}));
    EXPECT_EQ(scene.blocks[0].places, 3);
    EXPECT_EQ(scene.blocks[0].taken(), 2);
    EXPECT_EQ(scene.blocks[0].state, BlockState::Free);
    EXPECT_EQ(scene.blocks[0].columns, 1) << "one follows on the other";
    EXPECT_TRUE(scene.faults.empty());
}

TEST(WeekScene, AGroupWithoutAPlaceLeftIsFullAndOneToOneIsNot)
{
    chalk::week::WeekFacts facts = test::someWeek();
    for (const char* name : {"Ada Lund", "Bo Arden", "Cleo Marsh"}) {
        book(addClient(facts, name), kTuesday, clock(9));
    }
    book(addClient(facts, "Dora Pell"), kTuesday, clock(11)).placeCapacity = 1;
    const WeekScene scene = WeekOnTest(facts).scene();
    ASSERT_EQ(scene.blocks.size(), 2U);
    EXPECT_EQ(scene.blocks[0].state, BlockState::Full);
    EXPECT_EQ(scene.blocks[1].state, BlockState::Free);
}

TEST(WeekScene, WhatIsOverIsDoneAndWhatWasMissedKeepsItsPlaceInSight)
{
    chalk::week::WeekFacts facts = test::someWeek();
    book(addClient(facts, "Ada Lund"), 0, clock(9)).state = sessions::SessionState::Recorded;
    book(addClient(facts, "Bo Arden"), kTuesday, clock(9)).state = sessions::SessionState::Missed;
    book(addClient(facts, "Cleo Marsh"), kTuesday, clock(9)).state = sessions::SessionState::CancelledInTime;
    book(addClient(facts, "Dora Pell"), kTuesday, clock(12));
    facts.nowMinute = chalk::week::kDayMinutes + clock(10, 30);
    const WeekScene scene = WeekOnTest(facts).scene();
    ASSERT_EQ(scene.blocks.size(), 3U);
    EXPECT_EQ(scene.blocks[0].state, BlockState::Done);
    EXPECT_EQ(firstNames(scene.blocks[1]), std::vector<QString>{QStringLiteral("Bo")}) << "called off in time leaves no trace";
    EXPECT_EQ(scene.blocks[1].taken(), 0);
    EXPECT_TRUE(scene.blocks[2].isNext);
    EXPECT_FALSE(scene.blocks[1].isNext);
    EXPECT_EQ(scene.now, chalk::week::kDayMinutes + clock(10, 30));
}

TEST(WeekScene, WhatIsNotSavedWhereItStandsIsProposed)
{
    chalk::week::WeekFacts facts = test::someWeek();
    book(addClient(facts, "Ada Lund"), kTuesday, clock(9));
    addClient(facts, "Bo Arden");
    WeekOnTest week(facts);
    week.plan[1] = chalk::week::Slot{0, 3 * chalk::week::kDayMinutes + clock(10)};
    const WeekScene proposed = week.scene();
    ASSERT_EQ(proposed.blocks.size(), 2U);
    EXPECT_EQ(proposed.blocks[0].state, BlockState::Free);
    EXPECT_EQ(proposed.blocks[1].state, BlockState::Proposed);
    EXPECT_EQ(proposed.blockOf(1), 1U);
    week.plan[0] = chalk::week::Slot{1, chalk::week::kDayMinutes + clock(9)};
    EXPECT_EQ(week.scene().blocks[0].state, BlockState::Conflict) << "Ada goes to Ines alone";
}

TEST(WeekScene, BlocksOfOneCoachThatOverlapStandSideBySide)
{
    chalk::week::WeekFacts facts = test::someWeek();
    book(addClient(facts, "Ada Lund"), kTuesday, clock(9));
    book(addClient(facts, "Bo Arden"), kTuesday, clock(9, 30));
    book(addClient(facts, "Cleo Marsh"), kTuesday, clock(10));
    book(addClient(facts, "Dora Pell"), kTuesday, clock(9, 30), 2);
    const WeekScene scene = WeekOnTest(facts).scene();
    ASSERT_EQ(scene.blocks.size(), 4U);
    EXPECT_EQ(std::pair(scene.blocks[0].column, scene.blocks[0].columns), std::pair(0, 2));
    EXPECT_EQ(std::pair(scene.blocks[1].column, scene.blocks[1].columns), std::pair(1, 2));
    EXPECT_EQ(std::pair(scene.blocks[3].column, scene.blocks[3].columns), std::pair(0, 2)) << "the place of the first is free again";
    EXPECT_EQ(scene.blocks[2].columns, 1) << "another coach";
}

TEST(WeekScene, ABrokenRuleMarksEveryBlockThatHasAPartInIt)
{
    chalk::week::WeekFacts facts = test::someWeek();
    facts.coaches[0].work.capacity = 1;
    book(addClient(facts, "Ada Lund"), kTuesday, clock(9));
    book(addClient(facts, "Bo Arden"), kTuesday, clock(9, 30));
    book(addClient(facts, "Cleo Marsh"), 3, clock(9));
    const WeekScene scene = WeekOnTest(facts).scene();
    ASSERT_EQ(scene.faults.size(), 1U);
    EXPECT_EQ(scene.faults[0].rule, chalk::week::PlanRule::Capacity);
    EXPECT_EQ(scene.blocks[0].state, BlockState::Conflict);
    EXPECT_EQ(scene.blocks[1].faults, std::vector<std::size_t>{0});
    EXPECT_EQ(scene.blocks[2].state, BlockState::Free);
}

}  // namespace chalk::ui::week
