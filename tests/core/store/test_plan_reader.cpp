#include "core/store/plan_reader.h"

#include "core/store/plan_writer.h"
#include "core/store/record_writer.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace chalk::store {

using test::kilos;

class PlanReaderTest : public ::testing::Test {
protected:
    direction::LiftForPlan liftOf(lifts::Pattern pattern, base::Date day)
    {
        auto lifts = m_reader.lifts(m_ada, day).value();
        return *std::find_if(lifts.begin(), lifts.end(), [pattern](const direction::LiftForPlan& lift) { return lift.pattern == pattern; });
    }

    test::StudioOnTest m_studio;
    PlanReader m_reader{m_studio.database()};
    base::Date m_day = test::smallStudioDay();
    base::ClientId m_ada = test::clientNamed(m_studio.database(), "Ada Lund");
};

// Ada's last three exposures with 8 to 10 repetitions to failure: 40 kg for 8 with 2 left, 45 kg for 8 with 1 and for 7 with 2. By the chart (Haff and Triplett
// 2016, table 17.7: 9 repetitions at 77 per cent, 10 at 75) they speak for 53.3 and 58.4 kg; what had three and more left is rough, and not asked.
TEST_F(PlanReaderTest, LiftsComeWithTheSingleThatTheirSetsSpokeFor)
{
    const direction::LiftForPlan squat = liftOf(lifts::Pattern::Squat, m_day);
    ASSERT_TRUE(squat.single.has_value());
    EXPECT_NEAR(squat.single->load.centi() / 100.0, 53.3, 0.1) << "of two the lighter one";
    EXPECT_FALSE(squat.single->isTested);
    EXPECT_TRUE(squat.canFollow());
    EXPECT_EQ(squat.firstLoad, m_day - 35);
    EXPECT_FALSE(liftOf(lifts::Pattern::Hinge, m_day).canFollow()) << "on hold";
    EXPECT_FALSE(liftOf(lifts::Pattern::HorizontalPush, m_day).single.has_value());
    EXPECT_FALSE(liftOf(lifts::Pattern::Squat, m_day + 100).single.has_value()) << "too long ago";
}

TEST_F(PlanReaderTest, DoneSetsAreThoseOfThePlansDays)
{
    const base::LiftId squat = test::liftOf(m_studio.database(), m_ada, lifts::Pattern::Squat);
    direction::ClientPlan plan;
    plan.client = m_ada;
    plan.begunOn = m_day - 8;
    plan.plan = direction::planFor({direction::Direction::Strength, direction::Wave::Linear, 8, 2, true, m_day - 8, {{squat, direction::LiftRole::Main, 2}}});
    plan.singles = {{kilos(60), false}};
    ASSERT_EQ(plan.plan.wishes.start.weekday(), 0);
    const auto done = m_reader.done(plan, m_day).value();
    ASSERT_EQ(done.size(), 1U);
    ASSERT_EQ(done[0].size(), 2U) << "those of the week before the day, without what came earlier";
    EXPECT_EQ(done[0][0].load, kilos(45));
    EXPECT_EQ(done[0][1].reps, base::Reps(7));
    EXPECT_TRUE(m_reader.done(plan, m_day - 8).value()[0].empty());
}

TEST_F(PlanReaderTest, ThereIsNothingBeforeAPlan)
{
    EXPECT_TRUE(m_reader.history(m_ada).value().empty());
    EXPECT_FALSE(m_reader.running(m_ada, m_day).value().has_value());
    EXPECT_TRUE(m_reader.standings(m_day).value().empty());
    EXPECT_TRUE(m_reader.tests(m_ada).value().empty());
    EXPECT_FALSE(m_reader.plan(base::PlanId(1)));
}

}  // namespace chalk::store
