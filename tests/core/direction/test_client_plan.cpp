#include "core/direction/client_plan.h"

#include <gtest/gtest.h>

namespace chalk::test {

namespace {

direction::ClientPlan someClientPlan()
{
    direction::ClientPlan plan;
    plan.begunOn = base::Date::fromYmd(2026, 11, 25).value();
    plan.plan = direction::planFor({direction::Direction::Strength, direction::Wave::Linear, 8, 3, true, base::Date::fromYmd(2026, 11, 30).value(),
                                    {{base::LiftId(1), direction::LiftRole::Main, 2}}});
    plan.singles = {{base::Load::fromCenti(10000), false}};
    return plan;
}

std::string faultyField(const direction::ClientPlan& plan)
{
    const auto fault = faultOf(plan);
    return fault ? fault->field : std::string("none");
}

}  // namespace

TEST(ClientPlan, RunsFromTheDayItWasAgreedOnToItsLastSunday)
{
    direction::ClientPlan plan = someClientPlan();
    EXPECT_EQ(lastDayOf(plan), base::Date::fromYmd(2027, 1, 24).value());
    EXPECT_FALSE(isRunning(plan, plan.begunOn - 1));
    EXPECT_TRUE(isRunning(plan, plan.begunOn));
    EXPECT_TRUE(isRunning(plan, lastDayOf(plan)));
    EXPECT_FALSE(isRunning(plan, lastDayOf(plan) + 1));
    plan.endedOn = plan.begunOn + 10;
    EXPECT_TRUE(isRunning(plan, plan.begunOn + 9));
    EXPECT_FALSE(isRunning(plan, plan.begunOn + 10));
}

TEST(ClientPlan, AFaultNamesItsField)
{
    direction::ClientPlan plan = someClientPlan();
    EXPECT_EQ(faultyField(plan), "none");
    plan.singles.push_back({});
    EXPECT_EQ(faultyField(plan), "singles");
    plan = someClientPlan();
    plan.singles[0].load = base::Load::fromCenti(-1);
    EXPECT_EQ(faultyField(plan), "singles[0]");
    plan = someClientPlan();
    plan.plan.weeks.clear();
    EXPECT_EQ(faultyField(plan), "plan");
    plan = someClientPlan();
    plan.begunOn = lastDayOf(plan) + 1;
    EXPECT_EQ(faultyField(plan), "begun_on");
    plan = someClientPlan();
    plan.endedOn = plan.begunOn - 1;
    EXPECT_EQ(faultyField(plan), "ended_on");
}

}  // namespace chalk::test
