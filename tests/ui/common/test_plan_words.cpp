#include "ui/common/plan_words.h"

#include "tests/support/lift_on_test.h"

#include <gtest/gtest.h>

namespace chalk::ui::common {

namespace {

using chalk::direction::PlannedWork;

const base::Date kWordsMonday = *base::Date::fromYmd(2026, 11, 30);

chalk::direction::LiftForPlan liftWithKit(const progression::Kit& kit, base::MassUnit unit = base::MassUnit::Kilogram)
{
    progression::LiftSetup setup = test::lowerLift(kit);
    setup.unit = unit;
    setup.policy = progression::Policy::defaultsFor(unit);
    return {base::LiftId(1), lifts::Pattern::Squat, "back_squat", *progression::LiftMachine::create(setup), {}, {}, false};
}

PlannedWork fourByFour()
{
    return {chalk::direction::Aim::BasicStrength, {base::Sets(4), base::Reps(4), base::Milli(825), base::Seconds(180), 2}, base::Reps(4)};
}

chalk::direction::ClientPlan planOfWeeks(std::initializer_list<int> days)
{
    chalk::direction::ClientPlan plan;
    plan.begunOn = kWordsMonday - 5;
    for (const int day : days) {
        plan.plan.weeks.push_back({kWordsMonday + day, chalk::direction::Phase::Base, chalk::direction::WeekKind::Work, {}});
    }
    return plan;
}

}  // namespace

TEST(PlanWords, AnExposureIsOneLine)
{
    const chalk::direction::LiftForPlan bar = liftWithKit(test::barbellKit());
    EXPECT_EQ(planWorkText(fourByFour(), bar, test::kilos(104)), QStringLiteral("4 × 4 at 85 kg, rest 3:00, 2 left"));
    EXPECT_EQ(planWorkText(fourByFour(), bar, base::Load()), QStringLiteral("4 × 4 at 82.5 %, rest 3:00, 2 left"));
    PlannedWork ranged = fourByFour();
    ranged.repsMost = base::Reps(6);
    ranged.isPauseAsked = true;
    EXPECT_EQ(planWorkText(ranged, bar, test::kilos(104)), QStringLiteral("4 × 4–6 at 85 kg, rest 3:00, 2 left, with a pause"));
    PlannedWork tested = fourByFour();
    tested.isTest = true;
    EXPECT_EQ(planWorkText(tested, bar, test::kilos(104)), QStringLiteral("test, about 102.5 kg"));
    EXPECT_EQ(planWorkText(tested, bar, base::Load()), QStringLiteral("test"));
}

TEST(PlanWords, LoadsAreWrittenAsTheLiftIs)
{
    progression::Kit pair = test::fixedKit({20, 25, 30});
    pair.pieces = 2;
    EXPECT_EQ(planLoadText(liftWithKit(pair, base::MassUnit::Pound), test::kilos(36), base::Milli(800)), QStringLiteral("2 × 25 lb"));
    EXPECT_EQ(planSingleText({test::kilos(86.67), false}, base::MassUnit::Kilogram), QStringLiteral("86.5 kg, estimated"));
    EXPECT_EQ(planSingleText({test::kilos(86.75), false}, base::MassUnit::Kilogram), QStringLiteral("87 kg, estimated"));
    EXPECT_EQ(planSingleText({test::kilos(225.25), true}, base::MassUnit::Pound), QStringLiteral("225.25 lb, tested"));
    EXPECT_EQ(planSingleText({}, base::MassUnit::Pound), QStringLiteral("not known yet"));
    EXPECT_EQ(planShareText(base::Milli(800)), QStringLiteral("80 %"));
}

TEST(PlanWords, ALiftThatDoesNotFollowSaysWhy)
{
    chalk::direction::LiftForPlan lift = liftWithKit(test::barbellKit());
    EXPECT_EQ(planWaitText(lift, test::kilos(104), false), QStringLiteral("joins once it is loaded"));
    test::LiftOnTest loaded;
    loaded.set(progression::Stage::LoadBuild, 60);
    lift.machine = loaded.machine();
    EXPECT_EQ(planWaitText(lift, test::kilos(104), false), QString());
    EXPECT_EQ(planWaitText(lift, base::Load(), false), QStringLiteral("joins once a single is known"));
    EXPECT_EQ(planWaitText(lift, test::kilos(104), true), QStringLiteral("off the plan"));
    loaded.work({{60, 5, 2}}, 7);
    lift.machine = loaded.machine();
    EXPECT_EQ(planWaitText(lift, test::kilos(104), false), QStringLiteral("on hold, joins once it is released"));
}

TEST(PlanWords, ADayHasItsPlace)
{
    const chalk::direction::ClientPlan plan = planOfWeeks({0, 7, 14, 42});
    EXPECT_EQ(planPlaceText(plan, kWordsMonday - 1), QStringLiteral("begins on Mon 30 Nov"));
    EXPECT_EQ(planPlaceText(plan, kWordsMonday), QStringLiteral("week 1 of 4"));
    EXPECT_EQ(planPlaceText(plan, kWordsMonday + 20), QStringLiteral("week 3 of 4"));
    EXPECT_EQ(planPlaceText(plan, kWordsMonday + 21), QStringLiteral("away, goes on on Mon 11 Jan"));
    EXPECT_EQ(planPlaceText(plan, kWordsMonday + 48), QStringLiteral("week 4 of 4"));
    EXPECT_EQ(planPlaceText(plan, kWordsMonday + 49), QStringLiteral("over since Sun 17 Jan"));
}

}  // namespace chalk::ui::common
