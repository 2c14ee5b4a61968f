#include "ui/week/week_words.h"

#include "tests/ui/week/week_fixture.h"

namespace chalk::ui::week {

using chalk::week::PlanFault;
using chalk::week::PlanRule;
using test::clock;

class WeekNamesTest : public ::testing::Test {
protected:
    WeekNamesTest()
    {
        m_facts = test::someWeek();
        test::addClient(m_facts, "Gwen Tarrant");
        m_week = caseOf(m_facts);
    }

    chalk::week::WeekFacts m_facts;
    chalk::week::WeekCase m_week;
};

TEST_F(WeekNamesTest, RangesAndNumbers)
{
    EXPECT_EQ(rangeText(m_facts.monday, m_facts.monday + 5), QStringLiteral("23 – 28 November"));
    EXPECT_EQ(rangeText(m_facts.monday + 7, m_facts.monday + 12), QStringLiteral("30 Nov – 5 Dec"));
    EXPECT_EQ(monthText(m_facts.monday), QStringLiteral("November 2026"));
    EXPECT_EQ(numberOfText(1, 2), QStringLiteral("1st of 2"));
    EXPECT_EQ(numberOfText(2, 3), QStringLiteral("2nd of 3"));
    EXPECT_EQ(numberOfText(3, 3), QStringLiteral("3rd of 3"));
    EXPECT_EQ(numberOfText(4, 7), QStringLiteral("4th of 7"));
}

TEST_F(WeekNamesTest, NamesStandInTheOrderOfTheCase)
{
    const common::WeekNames names = namesOf(m_facts, m_week);
    EXPECT_EQ(names.clients, std::vector<QString>{QStringLiteral("Gwen")});
    EXPECT_EQ(names.coaches.size(), m_week.problem.coaches.size());
    ASSERT_EQ(names.stations.size(), m_week.problem.stations.size());
    for (std::size_t i = 0; i < names.stations.size(); ++i) {
        EXPECT_EQ(m_week.problem.stations[i].id == "rack", names.stations[i] == QStringLiteral("rack"));
    }
}

TEST_F(WeekNamesTest, ALockedSessionSaysHowItIsUnlocked)
{
    PlanFault fault;
    fault.rule = PlanRule::LockedMoved;
    fault.sessions = {0};
    fault.from = clock(9);
    EXPECT_TRUE(faultText(fault, m_facts, m_week).endsWith(QStringLiteral("L unlocks it.")));
    fault.rule = PlanRule::CoachNotAccepted;
    fault.coach = 1;
    EXPECT_EQ(faultText(fault, m_facts, m_week), QStringLiteral("Gwen does not go to Tobias."));
}

TEST_F(WeekNamesTest, TheIconIsOfWhatIsInTheWay)
{
    m_facts.studio.stations = {{lifts::Station::Rack, 1}};
    m_facts.closures = {{m_facts.monday, m_facts.monday + 6, 0, chalk::week::kDayMinutes, {}, lifts::Station::Rack, 0, "Repair"}};
    const chalk::week::WeekCase shut = caseOf(m_facts);
    EXPECT_EQ(iconOf(leftOverOf(shut.problem, shut.booked, 0)), QStringLiteral("rack"));
    EXPECT_EQ(iconOf(leftOverOf(m_week.problem, m_week.booked, 0)), QStringLiteral("week")) << "there is room";
}

}  // namespace chalk::ui::week
