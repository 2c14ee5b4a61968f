#include "core/store/week_changes.h"

#include "core/exchange/catalogue_json.h"
#include "core/store/week_reader.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::store {

/// The small studio in the week after its day.
class WeekChangesTest : public ::testing::Test {
protected:
    WeekChangesTest() { readAgain(); }

    void readAgain()
    {
        const base::Date today = test::smallStudioDay();
        m_facts = WeekReader(m_studio.database(), exchange::builtInCatalogue()).read(today - today.weekday() + 7, today, 0).value();
        m_week = week::caseOf(m_facts);
    }
    /// The plan as it is booked, with one more session on Thursday at noon.
    week::WeekPlan planWithOneMore(std::size_t& session) const
    {
        week::WeekPlan plan = m_week.booked;
        const auto open = std::find(plan.begin(), plan.end(), std::nullopt);
        session = static_cast<std::size_t>(open - plan.begin());
        plan.at(session) = week::Slot{0, 3 * week::kDayMinutes + 12 * 60};
        return plan;
    }

    test::StudioOnTest m_studio;
    week::WeekFacts m_facts;
    week::WeekCase m_week;
};

TEST_F(WeekChangesTest, NothingChangesForThePlanThatIsBooked)
{
    EXPECT_TRUE(changesTo(m_facts, m_week, m_week.booked).isEmpty());
}

TEST_F(WeekChangesTest, WhatIsProposedIsBookedAndThenLiesThere)
{
    std::size_t session = 0;
    const week::WeekPlan plan = planWithOneMore(session);
    const BookingChanges changes = changesTo(m_facts, m_week, plan);
    ASSERT_EQ(changes.booked.size(), 1U);
    EXPECT_EQ(changes.booked[0].date, m_facts.monday + 3);
    ASSERT_TRUE(SessionWriter(m_studio.database(), test::someMoment).apply(changes));
    const std::size_t before = static_cast<std::size_t>(std::count_if(m_week.booked.begin(), m_week.booked.end(), [](const auto& slot) { return slot.has_value(); }));
    readAgain();
    const std::size_t after = static_cast<std::size_t>(std::count_if(m_week.booked.begin(), m_week.booked.end(), [](const auto& slot) { return slot.has_value(); }));
    EXPECT_EQ(after, before + 1);
}

TEST_F(WeekChangesTest, OnlyWhatIsMeantChanges)
{
    std::size_t session = 0;
    const week::WeekPlan plan = planWithOneMore(session);
    EXPECT_TRUE(changesTo(m_facts, m_week, plan, [session](std::size_t one) { return one != session; }).isEmpty());
}

}  // namespace chalk::store
