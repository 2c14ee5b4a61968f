#include "core/simulation/harbour_plans.h"

#include "core/direction/lift_for_plan.h"

#include <algorithm>
#include <string_view>

namespace chalk::simulation {

namespace {

using direction::ClientPlan;
using direction::Direction;
using direction::Wave;

constexpr int kWeekDays = 7;

/// One plan, with the day that it was begun on counted back from the studio's day: a Tuesday.
struct ToldPlan {
    std::string_view who;
    Direction direction;
    Wave wave;
    int weeks;
    bool endsWithTest;
    int daysAgo;
    const char* note;
};

constexpr ToldPlan kPlans[] = {
    {"Sefa Reid", Direction::Strength, Wave::Undulating, 10, true, 75, "Leg drive for the winter boat"},
    {"Noor Castell", Direction::Physique, Wave::Linear, 12, false, 103, "Legs and back for the stage"},
    {"Noor Castell", Direction::Physique, Wave::Linear, 8, false, 15, "Shoulders and arms until the new year"},
    {"Lars Pemberley", Direction::Movement, Wave::Linear, 8, false, 82, "Steady on deck"},
    {"Mireille Dacosta", Direction::Strength, Wave::Linear, 12, true, 31, "Strong legs for the snow"},
};

ClientPlan planOf(const ToldPlan& told, const Person& person, const lifts::Catalogue& catalogue, base::Date today)
{
    ClientPlan plan;
    plan.begunOn = today - told.daysAgo;
    plan.note = told.note;
    direction::PlanWishes& wishes = plan.plan.wishes;
    const int sessions = static_cast<int>(person.slots.size());
    const base::Date start = plan.begunOn + (kWeekDays - plan.begunOn.weekday()) % kWeekDays;
    wishes = {told.direction, told.wave, told.weeks, sessions, told.endsWithTest, start, {}};
    for (std::size_t i = 0; i < person.choices.size(); ++i) {
        const lifts::Exercise& exercise = *catalogue.find(person.choices[i].exercise);
        if (exercise.measure == lifts::Measure::Reps) {
            wishes.lifts.push_back({base::LiftId(static_cast<std::int64_t>(i) + 1), direction::usualRole(told.direction, exercise.pattern), 1});
        }
    }
    direction::shareOutDays(wishes.lifts, sessions);
    plan.plan = direction::planFor(wishes);
    return plan;
}

/// The single that a lift began to follow a plan with; 0 where it did not.
direction::PlanSingle singleIn(const studio::DocumentLift& lift, base::Date begunOn)
{
    for (const progression::Event& event : studio::countingEvents(lift)) {
        const auto* block = event.date == begunOn ? std::get_if<progression::Block>(&event.body) : nullptr;
        if (block != nullptr) {
            return {block->single, block->isTested};
        }
    }
    return {};
}

/// The heaviest single of an exposure; nothing where none was made.
std::optional<base::Load> heaviestSingle(const progression::Exposure& exposure)
{
    std::optional<base::Load> heaviest;
    for (const progression::SetRecord& set : exposure.sets) {
        if (!set.isWarmup && set.amount > 0 && (!heaviest || set.load > *heaviest)) {
            heaviest = set.load;
        }
    }
    return heaviest;
}

/// What was tested in the weeks of plans.
void addTests(studio::DocumentClient& client, const studio::DocumentLift& lift)
{
    auto machine = progression::LiftMachine::create(lift.setup).value();
    for (const progression::Event& event : studio::countingEvents(lift)) {
        const progression::Prescription due = machine.prescriptionOn(event.date);
        const auto* exposure = std::get_if<progression::Exposure>(&event.body);
        const bool isTest = exposure != nullptr && due.block && due.block->isTest;
        if (const auto single = isTest ? heaviestSingle(*exposure) : std::nullopt) {
            client.tests.push_back({lift.pattern, event.date, *single, base::Reps(1), direction::TestEnd::Found, {}});
        }
        machine.apply(event.date, event.body);
    }
}

}  // namespace

std::vector<ClientPlan> plansOf(const Person& person, const lifts::Catalogue& catalogue, base::Date today)
{
    std::vector<ClientPlan> plans;
    for (const ToldPlan& told : kPlans) {
        if (told.who == person.name) {
            plans.push_back(planOf(told, person, catalogue, today));
        }
    }
    return plans;
}

std::vector<PlanPart> partsOf(const std::vector<ClientPlan>& plans, std::size_t choice)
{
    std::vector<PlanPart> parts;
    for (const ClientPlan& plan : plans) {
        const auto& lifts = plan.plan.wishes.lifts;
        const auto isIt = [choice](const direction::PlannedLift& lift) { return lift.lift.value() == static_cast<std::int64_t>(choice) + 1; };
        if (const auto found = std::find_if(lifts.begin(), lifts.end(), isIt); found != lifts.end()) {
            parts.push_back({plan, static_cast<std::size_t>(found - lifts.begin())});
        }
    }
    return parts;
}

void settlePlans(studio::DocumentClient& client, std::vector<ClientPlan> plans)
{
    for (ClientPlan& plan : plans) {
        plan.singles.clear();
        for (const direction::PlannedLift& planned : plan.plan.wishes.lifts) {
            plan.singles.push_back(singleIn(client.lifts[static_cast<std::size_t>(planned.lift.value()) - 1], plan.begunOn));
        }
        client.plans.push_back(std::move(plan));
    }
    for (const studio::DocumentLift& lift : client.lifts) {
        addTests(client, lift);
    }
}

}  // namespace chalk::simulation
