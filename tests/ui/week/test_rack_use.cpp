#include "ui/week/rack_use.h"

#include "tests/ui/week/week_fixture.h"

namespace chalk::ui::week {

namespace {

using test::addClient;
using test::book;
using test::clock;
using test::WeekOnTest;

/// Clients who need a whole rack each.
chalk::week::WeekFacts rackWeek(int clients, int units)
{
    chalk::week::WeekFacts facts = test::someWeek();
    facts.studio.stations = {{lifts::Station::Rack, units}};
    for (int i = 0; i < clients; ++i) {
        chalk::week::ClientOfWeek& client = addClient(facts, "Ada Lund");
        client.lifts.pop_back();
        book(client, 1, clock(9));
    }
    return facts;
}

}  // namespace

TEST(RackUse, ARackIsInUseAsLongAsTheSessionTakesIt)
{
    const WeekScene scene = WeekOnTest(rackWeek(1, 2)).scene();
    EXPECT_EQ(scene.racks, 2);
    EXPECT_EQ(scene.rackUse, (std::vector<RackStretch>{{1, 0, clock(9), clock(10), RackState::Used}}));
}

TEST(RackUse, HalvesOfTwoClientsShareOneRack)
{
    chalk::week::WeekFacts facts = test::someWeek();
    book(addClient(facts, "Ada Lund"), 1, clock(9));
    book(addClient(facts, "Bo Arden"), 1, clock(9));
    EXPECT_EQ(WeekOnTest(facts).scene().rackUse.size(), 1U);
}

TEST(RackUse, MoreThanThereAreIsShort)
{
    const WeekScene scene = WeekOnTest(rackWeek(2, 1)).scene();
    EXPECT_EQ(scene.rackUse, (std::vector<RackStretch>{{1, 0, clock(9), clock(10), RackState::Short}}));
    chalk::week::WeekFacts repaired = rackWeek(2, 2);
    repaired.closures = {{repaired.monday + 1, repaired.monday + 1, clock(9, 30), clock(24), {}, lifts::Station::Rack, 1, "Repair"}};
    EXPECT_EQ(WeekOnTest(repaired).scene().rackUse.front(), (RackStretch{1, 0, clock(9), clock(9, 30), RackState::Used}));
    EXPECT_EQ(WeekOnTest(repaired).scene().rackUse[1], (RackStretch{1, 0, clock(9, 30), clock(10), RackState::Short}));
}

TEST(RackUse, WhatIsOverStillShowsWhatItTook)
{
    chalk::week::WeekFacts facts = rackWeek(1, 2);
    facts.nowMinute = 3 * chalk::week::kDayMinutes;
    EXPECT_EQ(WeekOnTest(facts).scene().rackUse.size(), 1U);
}

TEST(RackUse, WhatIsProposedIsMarkedAsSuch)
{
    chalk::week::WeekFacts facts = rackWeek(1, 2);
    facts.clients.front().sessions.clear();
    WeekOnTest week(facts);
    week.plan[0] = chalk::week::Slot{0, chalk::week::kDayMinutes + clock(9)};
    EXPECT_EQ(week.scene().rackUse, (std::vector<RackStretch>{{1, 0, clock(9), clock(10), RackState::Proposed}}));
}

TEST(RackUse, AStudioWithoutRacksHasNoColumns)
{
    chalk::week::WeekFacts facts = rackWeek(1, 2);
    facts.studio.stations = {{lifts::Station::Bench, 2}};
    const WeekScene scene = WeekOnTest(facts).scene();
    EXPECT_EQ(scene.racks, 0);
    EXPECT_TRUE(scene.rackUse.empty());
}

}  // namespace chalk::ui::week
