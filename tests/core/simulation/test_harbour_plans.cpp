#include "core/simulation/harbour_plans.h"

#include "core/direction/plan_blocks.h"
#include "core/direction/plan_calendar.h"
#include "core/direction/plan_curves.h"
#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"
#include "core/simulation/harbour_studio.h"

#include <gtest/gtest.h>

#include <set>

namespace chalk::simulation {

namespace {

const studio::StudioDocument& studioWithPlans()
{
    static const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    static const studio::StudioDocument document = harbourStudio(catalogue, exchange::builtInScreenCatalogue(catalogue));
    return document;
}

/// Calls `look` for every exposure of a lift with what was due for it and the state before and after.
template <class Look>
void eachExposure(const studio::DocumentLift& lift, Look look)
{
    auto machine = progression::LiftMachine::create(lift.setup).value();
    for (const progression::Event& event : studio::countingEvents(lift)) {
        const progression::LiftMachine before = machine;
        const progression::RuleList rules = machine.apply(event.date, event.body);
        if (const auto* exposure = std::get_if<progression::Exposure>(&event.body)) {
            look(event.date, *exposure, before, machine, rules);
        }
    }
}

/// The exposures that were led by a plan, over all clients with one of a direction.
template <class Look>
void eachLedExposure(direction::Direction direction, Look look)
{
    for (const studio::DocumentClient& client : studioWithPlans().clients) {
        for (const direction::ClientPlan& plan : client.plans) {
            for (std::size_t i = 0; plan.plan.wishes.direction == direction && i < plan.singles.size(); ++i) {
                const studio::DocumentLift& lift = client.lifts[static_cast<std::size_t>(plan.plan.wishes.lifts[i].lift.value()) - 1];
                eachExposure(lift, [&](base::Date date, const progression::Exposure& done, const auto& before, const auto& after, const auto& rules) {
                    if (before.prescriptionOn(date).block && weekOn(plan.plan, date)) {
                        look(plan, date, done, before, after, rules);
                    }
                });
            }
        }
    }
}

/// Plans of a direction whose last week is over on the day of the scenario.
int finishedPlans(direction::Direction direction)
{
    const base::Date scenario = base::Date::fromYmd(2026, 11, 24).value();
    int finished = 0;
    for (const studio::DocumentClient& client : studioWithPlans().clients) {
        for (const direction::ClientPlan& plan : client.plans) {
            finished += plan.plan.wishes.direction == direction && direction::lastDayOf(plan) < scenario ? 1 : 0;
        }
    }
    return finished;
}

}  // namespace

TEST(HarbourPlans, SomebodyRanAPlanOfEachDirectionToItsEnd)
{
    for (const direction::Direction direction : direction::kDirections) {
        EXPECT_GE(finishedPlans(direction), 1) << direction::keyOf(direction);
    }
}

TEST(HarbourPlans, EveryPlanIsSoundAndItsLiftsBeganToFollowItWithTheSinglesItNames)
{
    for (const studio::DocumentClient& client : studioWithPlans().clients) {
        for (const direction::ClientPlan& plan : client.plans) {
            EXPECT_FALSE(direction::faultOf(plan).has_value()) << client.client.name;
            EXPECT_TRUE(direction::departuresOf(plan.plan).empty()) << client.client.name << ": made from published ranges";
            for (std::size_t i = 0; i < plan.singles.size(); ++i) {
                const studio::DocumentLift& lift = client.lifts[static_cast<std::size_t>(plan.plan.wishes.lifts[i].lift.value()) - 1];
                int begun = 0;
                for (const progression::Event& event : studio::countingEvents(lift)) {
                    const auto* block = std::get_if<progression::Block>(&event.body);
                    begun += block != nullptr && event.date == plan.begunOn && block->single == plan.singles[i].load ? 1 : 0;
                }
                EXPECT_EQ(begun, plan.singles[i].load > base::Load() ? 1 : 0) << client.client.name << ", " << lift.exerciseKey;
            }
        }
    }
}

TEST(HarbourPlans, EveryWeekIsPrescribedAsPlannedAtLoadsThatAreOnHand)
{
    for (const direction::Direction direction : direction::kDirections) {
        std::set<int> weeks;
        eachLedExposure(direction, [&](const direction::ClientPlan& plan, base::Date date, const progression::Exposure&, const auto& before, const auto&, const auto&) {
            const progression::Prescription due = before.prescriptionOn(date);
            const direction::PlanWeek& week = plan.plan.weeks[*weekOn(plan.plan, date)];
            EXPECT_EQ(due.block->isLighter, week.kind == direction::WeekKind::Lighter);
            EXPECT_EQ(before.loads().atMost(due.load), due.load) << "a load that the equipment gives";
            EXPECT_LE(due.repsLow, due.repsHigh);
            EXPECT_GE(due.sets, base::Sets(1));
            weeks.insert(due.block->week);
        });
        EXPECT_GE(weeks.size(), 8U) << direction::keyOf(direction);
    }
}

TEST(HarbourPlans, ResultsMoveTheSingleAndTheEndLeadsBackToLoadBuild)
{
    std::set<direction::Direction> moved;
    std::set<direction::Direction> ended;
    for (const direction::Direction direction : direction::kDirections) {
        eachLedExposure(direction, [&](const direction::ClientPlan&, base::Date, const progression::Exposure&, const auto& before, const auto& after, const auto& rules) {
            const bool isMoved = before.state().block && after.state().block && after.state().block->single != before.state().block->single;
            if (isMoved && rules.has(progression::Rule::N2)) {
                moved.insert(direction);
            }
        });
    }
    for (const studio::DocumentClient& client : studioWithPlans().clients) {
        for (const studio::DocumentLift& lift : client.lifts) {
            eachExposure(lift, [&](base::Date date, const progression::Exposure&, const auto& before, const auto&, const auto& rules) {
                if (rules.has(progression::Rule::N3)) {
                    EXPECT_EQ(before.prescriptionOn(date).stage, progression::Stage::LoadBuild) << client.client.name;
                    ended.insert(client.plans.front().plan.wishes.direction);
                }
            });
        }
    }
    EXPECT_TRUE(moved.count(direction::Direction::Strength) && moved.count(direction::Direction::Physique)) << "light work with much left says little";
    EXPECT_GE(ended.size(), 2U) << "those of a plan that another one follows at once have no end of their own";
}

TEST(HarbourPlans, TheMainLiftsOfAStrengthPlanAreTestedAtItsEnd)
{
    std::size_t tests = 0;
    for (const studio::DocumentClient& client : studioWithPlans().clients) {
        for (const studio::DocumentTest& test : client.tests) {
            EXPECT_EQ(test.reps, base::Reps(1));
            EXPECT_GT(test.load, base::Load());
            const auto week = weekOn(client.plans.front().plan, test.day);
            ASSERT_TRUE(week.has_value()) << client.client.name;
            EXPECT_EQ(client.plans.front().plan.weeks[*week].kind, direction::WeekKind::Test);
        }
        tests += client.tests.size();
    }
    EXPECT_EQ(tests, 3U) << "squat, hinge and push";
}

}  // namespace chalk::simulation
