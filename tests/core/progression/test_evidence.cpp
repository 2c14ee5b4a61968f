#include "core/progression/evidence.h"

#include "tests/support/journey.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace chalk::progression {

using test::Journey;
using test::kilos;
using test::lowerLift;

namespace {

/// The record that Evidence asks for, made from nothing but what Evidence says. `change` is added to the reps.
EventBody recordFor(const Evidence& evidence, int change = 0)
{
    const EvidenceTarget& target = *evidence.target;
    if (!isLoaded(evidence.stage)) {
        Rehearsal rehearsal = test::goodRehearsal();
        rehearsal.reps = target.repsLow;
        if (evidence.stage == Stage::Pattern) {
            rehearsal.pauses = {};
        }
        return rehearsal;
    }
    SetRecord set;
    set.load = target.load;
    set.amount = target.repsLow.value() + change;
    set.rir = static_cast<std::int16_t>(target.capacityMin ? target.capacityMin->value() - set.amount : target.reserve);
    set.restSeconds = static_cast<std::int16_t>(target.rest.value_or(base::Seconds(180)).value());
    return Exposure{0, std::vector<SetRecord>(static_cast<std::size_t>(target.sets.value()), set)};
}

bool hasMoved(const LiftMachine& before, const LiftMachine& after)
{
    return before.state().stage != after.state().stage || before.state().cycle != after.state().cycle;
}

/// Whether a check that is not met stands for records still to come before the target can lead on.
bool isWayClear(const Evidence& evidence)
{
    for (const CheckKind kind : {CheckKind::SetsReached, CheckKind::RestReached}) {
        const Check* check = checkOf(evidence, kind);
        if (check != nullptr && !check->isMet) {
            return false;
        }
    }
    return true;
}

void expectAgreement(const Journey& journey)
{
    const Evidence evidence = journey.evidence();
    RC_ASSERT(evidence.checks.size() >= 1U);
    if (journey.state().isOnHold) {
        RC_ASSERT((!evidence.next && !evidence.target));
        RC_ASSERT(evidence.checks.front().kind == CheckKind::Released);
        return;
    }
    RC_ASSERT(evidence.checks.back().kind == CheckKind::Target);
    LiftMachine before = journey.machine().withoutLighterWeek();
    before.apply(journey.day(), Exposure{});
    LiftMachine after = before;
    after.apply(journey.day(), recordFor(evidence));
    RC_ASSERT(hasMoved(before, after) == isWayClear(evidence));
    if (hasMoved(before, after)) {
        RC_ASSERT(evidence.next == after.state().stage);
        const Prescription first = after.prescriptionOn(journey.day());
        RC_ASSERT(evidence.arrival->load == first.load);
        RC_ASSERT(evidence.arrival->cycle == first.cycle);
    }
}

void expectFewerRepsStay(const Journey& journey)
{
    const Evidence evidence = journey.evidence();
    if (!evidence.shortfall || evidence.shortfall->misses + 1 >= evidence.shortfall->limit) {
        return;
    }
    const int change = evidence.target->repsLeast.value() - evidence.target->repsLow.value();
    LiftMachine before = journey.machine().withoutLighterWeek();
    before.apply(journey.day(), Exposure{});
    LiftMachine least = before;
    least.apply(journey.day(), recordFor(evidence, change));
    RC_ASSERT(hasMoved(before, least) == isWayClear(evidence));
    LiftMachine fewer = before;
    fewer.apply(journey.day(), recordFor(evidence, change - 1));
    RC_ASSERT(!hasMoved(before, fewer));
}

void expectShortfall(const Journey& journey)
{
    const Evidence evidence = journey.evidence();
    if (!evidence.shortfall) {
        return;
    }
    LiftMachine machine = journey.machine().withoutLighterWeek();
    machine.apply(journey.day(), Exposure{});
    const LiftMachine before = machine;
    const base::Load held = *before.state().load;
    Exposure miss = test::exposureOf({});
    miss.sets.assign(static_cast<std::size_t>(before.setup().policy.topSets.value()), SetRecord{held, 1, 0, 30});
    for (int misses = evidence.shortfall->misses; misses < evidence.shortfall->limit; ++misses) {
        RC_ASSERT(!hasMoved(before, machine));
        RC_ASSERT(machine.state().load == held);
        machine.apply(journey.day(), miss);
    }
    const LiftState& end = machine.state();
    const Shortfall& shortfall = *evidence.shortfall;
    switch (shortfall.end) {
    case Shortfall::End::SettleLoad:
        RC_ASSERT((end.stage == Stage::RepBuild && end.load == shortfall.load));
        break;
    case Shortfall::End::CutLoad:
        RC_ASSERT((end.stage == evidence.stage && (end.load < held || held == before.loads().lightest())));
        break;
    case Shortfall::End::MoveOnWithReps:
        RC_ASSERT((end.stage == Stage::SetBuild && *end.holdReps == shortfall.reps));
        break;
    case Shortfall::End::MoveOnWithSets:
        RC_ASSERT((end.stage == Stage::RestCut && *end.holdSets == shortfall.sets));
        break;
    case Shortfall::End::RestFound:
        RC_ASSERT(end.cycle == before.state().cycle + 1);
        break;
    }
}

/// An upper-body lift, so that each step is a bridge.
LiftSetup kettlebellLift()
{
    LiftSetup setup = lowerLift(test::kettlebellKit());
    setup.region = lifts::Region::Upper;
    return setup;
}

/// A lift with a bar or with kettlebells that has lived through some months.
Journey anyJourney()
{
    const bool hasBar = *rc::gen::arbitrary<bool>();
    Journey journey(hasBar ? lowerLift() : kettlebellLift(), Stage::BaseLoad);
    const auto whim = rc::gen::inRange<std::uint32_t>(0, 4'000'000'000U);
    for (const std::uint32_t value : *rc::gen::scale(3.0, rc::gen::container<std::vector<std::uint32_t>>(whim))) {
        journey.live(value);
    }
    return journey;
}

}  // namespace

RC_GTEST_PROP(EvidenceProperty, TheTargetLeadsOnExactlyWhenTheWayIsClear, ())
{
    const Journey journey = anyJourney();
    RC_TAG(std::string(keyOf(journey.evidence().stage)));
    expectAgreement(journey);
}

RC_GTEST_PROP(EvidenceProperty, FewerThanTheLeastRepsNeverLeadOn, ())
{
    expectFewerRepsStay(anyJourney());
}

RC_GTEST_PROP(EvidenceProperty, AShortfallEndsAsItSays, ())
{
    expectShortfall(anyJourney());
}

TEST(Evidence, AHoldAsksForItsRelease)
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    journey.record(test::exposureOf({{50, 8, 5}, {50, 8, 5}}, 5));
    journey.pass(3);
    const Evidence evidence = journey.evidence();
    EXPECT_FALSE(evidence.next);
    ASSERT_EQ(evidence.checks.size(), 1U);
    EXPECT_EQ(evidence.checks[0].kind, CheckKind::Released);
    EXPECT_EQ(evidence.checks[0].value, 5);
    EXPECT_EQ(evidence.checks[0].date, journey.day() - 3);
}

TEST(Evidence, ALongLayoffIsDealtWithAndAsksForARescreen)
{
    Journey journey(lowerLift(), Stage::BaseLoad);
    journey.work(2, 50, 8, 5);
    journey.pass(60);
    const Evidence evidence = journey.evidence();
    EXPECT_EQ(evidence.stage, Stage::BaseLoad);
    EXPECT_NE(checkOf(evidence, CheckKind::Rescreened), nullptr);
    EXPECT_EQ(checkOf(evidence, CheckKind::PainFree), nullptr);
    EXPECT_EQ(journey.state().stage, Stage::LoadBuild);
}

}  // namespace chalk::progression
