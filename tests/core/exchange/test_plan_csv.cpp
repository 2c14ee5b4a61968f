#include "core/exchange/plan_csv.h"

#include "tests/support/lift_on_test.h"

#include <QByteArrayList>

#include <gtest/gtest.h>

namespace chalk::exchange {

namespace {

using direction::Aim;
using direction::ClientPlan;
using direction::LiftForPlan;
using direction::Phase;
using direction::PlannedWork;
using direction::WeekKind;

const base::Date kPlanMonday = *base::Date::fromYmd(2026, 12, 28);
const std::vector<std::string> kPlanNames{"Squat, \"low\" bar", "Press"};

PlannedWork workOfCsv(int sets, int reps, int milli)
{
    return {Aim::BasicStrength, {base::Sets(sets), base::Reps(reps), base::Milli(milli), base::Seconds(180), 2}, base::Reps(reps)};
}

/// A bar in kilograms and dumbbells in pounds.
std::vector<LiftForPlan> liftsOfCsv()
{
    progression::LiftSetup pounds = test::lowerLift(test::fixedKit({20, 25, 30}));
    pounds.unit = base::MassUnit::Pound;
    pounds.policy = progression::Policy::defaultsFor(base::MassUnit::Pound);
    return {{base::LiftId(4), lifts::Pattern::VerticalPush, "dumbbell_overhead_press", *progression::LiftMachine::create(pounds), {}, {}, false},
            {base::LiftId(3), lifts::Pattern::Squat, "back_squat", *progression::LiftMachine::create(test::lowerLift()), {}, {}, false}};
}

/// Two weeks over the end of a year of 53 weeks: one of work and one that tests the squat.
ClientPlan planOfCsv()
{
    ClientPlan plan;
    plan.plan.wishes.lifts = {{base::LiftId(3), direction::LiftRole::Main, 1}, {base::LiftId(4), direction::LiftRole::Assistance, 1}};
    plan.singles = {{test::kilos(104), true}, {test::kilos(36), false}};
    PlannedWork press = workOfCsv(3, 8, 755);
    press.aim = Aim::Assistance;
    press.repsMost = base::Reps(10);
    press.scheme.rest = base::Seconds(20);
    press.isPauseAsked = true;
    PlannedWork tested = workOfCsv(2, 2, 900);
    tested.isTest = true;
    plan.plan.weeks = {{kPlanMonday, Phase::Peak, WeekKind::Work, {{workOfCsv(4, 4, 800)}, {press}}}, {kPlanMonday + 7, Phase::Test, WeekKind::Test, {{tested}, {}}}};
    return plan;
}

}  // namespace

// RFC 4180, 2: rules 1 (CRLF), 3 (a header), 4 (as many fields in each record), 6 and 7 (quotes). 80 per cent of 104 kg are 83.2, of which the bar takes 82.5;
// 75.5 per cent of 36 lb are 27.18. Rests of assistance work are printed as 30 s and more (Haff and Triplett 2016, table 17.12).
TEST(PlanCsv, OneExposureARecord)
{
    const auto lifts = liftsOfCsv();
    const ClientPlan plan = planOfCsv();
    EXPECT_EQ(planCsvOf({plan, lifts, kPlanNames}).toStdString(),
              "monday,week,phase,kind,lift,role,exposure,sets,reps,reps_most,percent,load,unit,rest_s,reserve,pause,test,published\r\n"
              "2026-12-28,1,peak,work,\"Squat, \"\"low\"\" bar\",main,1,4,4,4,80,82.5,kg,180,2,no,no,yes\r\n"
              "2026-12-28,1,peak,work,Press,assistance,1,3,8,10,75.5,25,lb,20,2,yes,no,rest\r\n"
              "2027-01-04,2,test,test,\"Squat, \"\"low\"\" bar\",main,1,1,1,1,100,102.5,kg,180,0,no,yes,\r\n");
}

TEST(PlanCsv, WhereNoSingleIsKnownThereIsNoLoad)
{
    const auto lifts = liftsOfCsv();
    ClientPlan plan = planOfCsv();
    plan.singles[1] = {};
    plan.plan.weeks[0].work[1][0].scheme.sets = base::Sets(20);
    const QByteArray text = planCsvOf({plan, lifts, kPlanNames});
    EXPECT_TRUE(text.contains("Press,assistance,1,20,8,10,75.5,,lb,20,2,yes,no,sets rest\r\n")) << text.toStdString();
}

TEST(PlanCsv, PlannedBesideDone)
{
    const auto lifts = liftsOfCsv();
    const ClientPlan plan = planOfCsv();
    const std::vector<std::vector<direction::DoneSet>> done{
        {{kPlanMonday + 2, test::kilos(78), base::Reps(4)}, {kPlanMonday + 2, test::kilos(83.2), base::Reps(4)}}, {}};
    EXPECT_EQ(planComparisonCsvOf({plan, lifts, kPlanNames}, done, kPlanMonday + 6).toStdString(),
              "monday,week,phase,kind,lift,planned_sets,done_sets,planned_reps,done_reps,planned_percent,done_percent\r\n"
              "2026-12-28,1,peak,work,\"Squat, \"\"low\"\" bar\",4,2,16,8,80,77.5\r\n"
              "2026-12-28,1,peak,work,Press,3,0,24,0,75.5,\r\n"
              "2027-01-04,2,test,test,\"Squat, \"\"low\"\" bar\",1,,1,,100,\r\n"
              "2027-01-04,2,test,test,Press,0,,0,,,\r\n");
}

TEST(PlanCsv, SetsCountWithoutASingleButHaveNoShare)
{
    const auto lifts = liftsOfCsv();
    ClientPlan plan = planOfCsv();
    plan.singles[0] = {};
    const std::vector<std::vector<direction::DoneSet>> done{{{kPlanMonday, test::kilos(80), base::Reps(5)}}, {}};
    const QByteArrayList records = planComparisonCsvOf({plan, lifts, kPlanNames}, done, kPlanMonday).split('\n');
    EXPECT_EQ(records.at(1), QByteArray("2026-12-28,1,peak,work,\"Squat, \"\"low\"\" bar\",4,1,16,5,80,\r"));
}

}  // namespace chalk::exchange
