#include "ui/week/week_words.h"

#include "tests/ui/week/week_fixture.h"

namespace chalk::ui::week {

using chalk::week::kDayMinutes;
using chalk::week::PlanFault;
using chalk::week::PlanRule;
using test::clock;

class WeekWordsTest : public ::testing::Test {
protected:
    WeekWordsTest()
    {
        m_facts = test::someWeek();
        test::addClient(m_facts, "Gwen Tarrant").planning.standing = {{3, clock(17, 30), base::CoachId(1)}};
        m_week = caseOf(m_facts);
    }
    QString said(const PlanFault& fault) const { return faultText(fault, {m_facts, m_week}); }

    chalk::week::WeekFacts m_facts;
    chalk::week::WeekCase m_week;
};

TEST_F(WeekWordsTest, TimesAndRanges)
{
    EXPECT_EQ(slotText(3 * kDayMinutes + clock(17, 30)), QStringLiteral("Thu 17:30"));
    EXPECT_EQ(longSlotText(3 * kDayMinutes + clock(17, 30)), QStringLiteral("Thursday at 17:30"));
    EXPECT_EQ(rangeText(m_facts.monday, m_facts.monday + 5), QStringLiteral("23 – 28 November"));
    EXPECT_EQ(rangeText(m_facts.monday + 7, m_facts.monday + 12), QStringLiteral("30 November – 5 December"));
    EXPECT_EQ(numberOfText(1, 2), QStringLiteral("1st of 2"));
    EXPECT_EQ(numberOfText(2, 3), QStringLiteral("2nd of 3"));
    EXPECT_EQ(numberOfText(3, 3), QStringLiteral("3rd of 3"));
    EXPECT_EQ(numberOfText(4, 7), QStringLiteral("4th of 7"));
}

TEST_F(WeekWordsTest, ABrokenRuleSaysItsNumbers)
{
    PlanFault fault;
    fault.rule = PlanRule::StationUnits;
    fault.sessions = {0};
    const auto& stations = m_week.problem.stations;
    for (std::size_t i = 0; i < stations.size(); ++i) {
        fault.station = stations[i].id == "rack" ? std::optional(i) : fault.station;
    }
    ASSERT_TRUE(fault.station);
    fault.from = clock(17, 30);
    fault.needed = 250;
    fault.there = 200;
    EXPECT_EQ(said(fault), QStringLiteral("3 need a rack at 17:30, there are 2."));
    fault.there = 100;
    EXPECT_EQ(said(fault), QStringLiteral("3 need a rack at 17:30, there is 1."));
    fault.there = 0;
    EXPECT_EQ(said(fault), QStringLiteral("3 need a rack at 17:30, there is none."));
    fault.rule = PlanRule::Capacity;
    fault.coach = 1;
    fault.needed = 5;
    fault.there = 4;
    EXPECT_EQ(said(fault), QStringLiteral("5 at once with Tobias at 17:30, there are 4 places."));
    fault.rule = PlanRule::RecoveryTime;
    EXPECT_EQ(said(fault), QStringLiteral("Gwen needs 48 hours between sessions."));
}

TEST_F(WeekWordsTest, EveryRuleHasASentence)
{
    for (int rule = 0; rule < chalk::week::kPlanRuleCount; ++rule) {
        PlanFault fault;
        fault.rule = static_cast<PlanRule>(rule);
        fault.sessions = {0};
        fault.coach = 0;
        fault.station = 0;
        EXPECT_TRUE(said(fault).endsWith(QLatin1Char('.'))) << rule;
    }
}

TEST_F(WeekWordsTest, WhatIsLeftOverSaysWhatItWantsAndWhatIsInTheWay)
{
    m_facts.closures = {{m_facts.monday + 3, m_facts.monday + 3, clock(16), clock(24), base::CoachId(1), {}, 0, ""}};
    m_week = caseOf(m_facts);
    const LeftOverWords words = leftOverWords(leftOverOf(m_week.problem, m_week.booked, 0), {m_facts, m_week});
    EXPECT_EQ(words.reason, QStringLiteral("Wants Thursday at 17:30. Ines is not there then."));
    EXPECT_EQ(words.icon, QStringLiteral("closed"));
}

TEST_F(WeekWordsTest, WithoutATimeOfItsOwnTheLastThingInTheWayIsSaid)
{
    m_facts.clients[0].planning.standing.clear();
    m_facts.studio.stations = {{lifts::Station::Rack, 1}};
    m_facts.closures = {{m_facts.monday, m_facts.monday + 6, 0, kDayMinutes, {}, lifts::Station::Rack, 0, "Repair"}};
    m_week = caseOf(m_facts);
    const LeftOverWords words = leftOverWords(leftOverOf(m_week.problem, m_week.booked, 0), {m_facts, m_week});
    EXPECT_EQ(words.reason, QStringLiteral("Whenever Gwen can come, all racks are taken."));
}

}  // namespace chalk::ui::week
