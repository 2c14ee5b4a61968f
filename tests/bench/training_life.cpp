#include "tests/bench/training_life.h"

#include "tests/support/lift_on_test.h"

#include <algorithm>
#include <array>

namespace chalk::bench {

namespace {

using progression::EventBody;
using progression::Exposure;
using progression::LiftMachine;
using progression::Prescription;
using progression::PrescriptionKind;
using progression::Rehearsal;
using progression::SetRecord;
using progression::Stage;
using progression::Steadiness;
using progression::Verdict;

constexpr int kSets = 10;

progression::Kit kitOf(lifts::Equipment equipment)
{
    progression::Kit kit;
    kit.equipment = std::move(equipment);
    return kit;
}

progression::Kit someKit(int which)
{
    switch (which) {
    case 0:
        return test::fixedKit({6, 8, 10, 12, 14, 16, 18, 20, 24, 28, 32, 36, 40});
    case 1:
        return kitOf(lifts::Stack{test::kilos(5), test::kilos(120), test::kilos(5)});
    default:
        return test::barbellKit();
    }
}

base::Load share(base::Load load, int percent)
{
    return base::Load::fromCenti(load.centi() * percent / 100);
}

}  // namespace

progression::LiftSetup TrainingLives::someSetup()
{
    progression::LiftSetup setup = test::lowerLift(someKit(below(6)));
    setup.region = below(2) == 0 ? lifts::Region::Upper : lifts::Region::Lower;
    setup.bodyMass = test::kilos(55 + below(50));
    setup.startStage = below(4) == 0 ? Stage::BaseLoad : Stage::Pattern;
    return setup;
}

Rehearsal TrainingLives::rehearse()
{
    Rehearsal rehearsal = test::goodRehearsal();
    if (isChance(250)) {
        rehearsal.criteria.back().verdict = Verdict::Partly;
    }
    if (isChance(200)) {
        rehearsal.pauses.middleMs.reset();
    }
    return rehearsal;
}

Exposure TrainingLives::work(const LiftMachine& machine, const Prescription& due)
{
    // Strength that suffices for a long way up, and then no further: so that lifts go round all stages. Some days are bad.
    const int able = isChance(60) ? 2 : std::max(2, m_fresh - due.load.centi() / (500 + 100 * (due.cycle + below(3))));
    const int wanted = due.stage == Stage::BaseLoad ? 8 : std::max(due.repsLow.value(), std::min(able, due.repsHigh.value()));
    SetRecord set;
    set.load = isChance(20) ? machine.loads().atMost(share(due.load, 95)) : due.load;
    set.amount = std::max(1, std::min(wanted, able) - (isChance(150) ? 1 : 0));
    set.rir = static_cast<std::int16_t>(std::clamp(able + 2 - set.amount + below(2), 0, 10));
    set.restSeconds = static_cast<std::int16_t>(due.rest.value() + below(20));
    if (due.stage == Stage::BaseLoad && isChance(100)) {
        set.amount = able;  // too close to failure
        set.rir = 1;
    }
    const int full = due.sets.value() - (isChance(20) ? 1 : 0);
    Exposure exposure;
    exposure.sets.reserve(kSets);
    for (int i = 0; i < kSets - full; ++i) {
        SetRecord lighter = set;
        lighter.load = machine.loads().atMost(share(due.load, 30 + 8 * i));
        lighter.isWarmup = i < kSets - full - 1 || lighter.load == set.load;  // the last one is a set too light
        exposure.sets.push_back(lighter);
    }
    exposure.sets.insert(exposure.sets.end(), static_cast<std::size_t>(std::max(full, 0)), set);
    if (isChance(15)) {
        exposure.sets.back().steadiness = Steadiness::Shaky;
    } else if (isChance(8)) {
        exposure.sets.back().steadiness = Steadiness::Lost;
    }
    if (isChance(20)) {
        exposure.sets.back().rir = 1;
    }
    exposure.pain = isChance(15) ? 1 + below(3) : isChance(4) ? 5 : 0;
    if (isChance(10)) {
        std::for_each(exposure.sets.begin(), exposure.sets.end(), [](SetRecord& one) { one.rir = SetRecord::kNotRecorded; });
    }
    return exposure;
}

EventBody TrainingLives::answer(const LiftMachine& machine, const Prescription& due)
{
    if (due.kind == PrescriptionKind::Hold) {
        return isChance(200) ? EventBody(work(machine, due)) : EventBody(progression::Release{"moves without pain again"});
    }
    if (due.kind == PrescriptionKind::Rehearse) {
        return rehearse();
    }
    if (isChance(3)) {
        progression::Swap swap;
        swap.equipment = someKit(below(3)).equipment;
        return swap;
    }
    if (isChance(2)) {
        progression::CoachSet set;
        set.stage = Stage::RepBuild;
        set.load = machine.loads().atMost(share(due.load, 90));
        set.reason = "felt heavy all week";
        return set;
    }
    return isChance(5) ? EventBody(progression::LighterWeek{}) : EventBody(work(machine, due));
}

progression::Block TrainingLives::block(base::Date day)
{
    if (isChance(200)) {
        return {};
    }
    using progression::BlockWork;
    const BlockWork heavy{base::Sets(4), base::Reps(4), base::Reps(4), base::Milli(800), base::Seconds(180), 3};
    const BlockWork light{base::Sets(4), base::Reps(4), base::Reps(6), base::Milli(640), base::Seconds(180), 4};
    const base::Date monday = day - day.weekday();
    return {{{monday, false, {heavy, light}}, {monday + 7, false, {heavy, light}}, {monday + 14, true, {light}}}, test::kilos(40 + below(80)), false};
}

TrainingLife TrainingLives::next(int exposures)
{
    TrainingLife life{someSetup(), {}, 0};
    LiftMachine machine = LiftMachine::create(life.setup).value();
    m_fresh = isChance(100) ? 9 : 14;
    base::Date day = base::Date::fromDays(19'000 + below(400));
    constexpr std::array kGaps{2, 2, 3, 2, 2, 3, 4, 2};
    while (life.exposures < exposures) {
        day = day + (isChance(6) ? std::array{15, 30, 60}[static_cast<std::size_t>(below(3))] : kGaps[static_cast<std::size_t>(below(8))]);
        if (isChance(4)) {
            life.events.push_back({day, block(day)});
            machine.apply(day, life.events.back().body);
        }
        life.events.push_back({day, answer(machine, machine.prescriptionOn(day))});
        machine.apply(day, life.events.back().body);
        life.exposures += std::holds_alternative<Exposure>(life.events.back().body) ? 1 : 0;
    }
    return life;
}

}  // namespace chalk::bench
