#include "core/simulation/simulated_lifter.h"

#include "core/direction/maximum_test.h"

#include <algorithm>

namespace chalk::simulation {

namespace {

using progression::Exposure;
using progression::Prescription;
using progression::SetRecord;
using progression::Steadiness;
using progression::Verdict;

constexpr const char* kPoints[] = {"depth", "path", "balance", "trunk"};  ///< what a rehearsal is looked at for
constexpr double kFormDeviation = 0.04;
constexpr double kFatiguePerSet = 0.012;
constexpr double kShortRestFatigue = 0.03;  ///< of a rest of a minute in place of three

double effectiveOf(const progression::LiftMachine& machine, base::Load load)
{
    const double body = machine.setup().bodyMass.value_or(base::Load()).centi() * machine.kit().bodyShare.value() / 1000.0;
    return (load.centi() + body) / 100.0;
}

int amountFor(int reps, const progression::LiftMachine& machine)
{
    switch (machine.kit().measure) {
    case lifts::Measure::Reps:
        return reps;
    case lifts::Measure::Seconds:
        return reps * machine.setup().policy.secondsPerRep.value();
    case lifts::Measure::Metres:
        return reps * machine.setup().policy.metresPerRep.value();
    }
    return reps;
}

/// A light set before the work, where there is something much lighter.
void addWarmup(Exposure& exposure, const progression::LiftMachine& machine, base::Load load)
{
    const base::Load light = machine.loads().atMost(base::Load::fromCenti(load.centi() * 6 / 10));
    if (light < load && load.centi() > 0) {
        SetRecord set;
        set.load = light;
        set.amount = amountFor(6, machine);
        set.isWarmup = true;
        exposure.sets.push_back(set);
    }
}

}  // namespace

std::optional<progression::EventBody> SimulatedLifter::answer(const progression::LiftMachine& machine, base::Date day, double weeks)
{
    const Prescription due = machine.prescriptionOn(day);
    switch (due.kind) {
    case progression::PrescriptionKind::Hold:
        return std::nullopt;
    case progression::PrescriptionKind::Rehearse:
        return rehearse(due);
    case progression::PrescriptionKind::Work:
        return due.block && due.block->isTest ? testMaximum(machine, weeks) : work(machine, due, weeks);
    }
    return std::nullopt;
}

progression::EventBody SimulatedLifter::rehearse(const Prescription& due)
{
    ++m_rehearsals;
    progression::Rehearsal trial;
    const bool isLearned = m_chance.happens(std::min(95, m_talent.learning + 8 * m_rehearsals));
    for (const char* point : kPoints) {
        const bool isMet = isLearned || m_chance.happens(70);
        trial.criteria.push_back({point, isMet ? Verdict::Met : m_chance.happens(70) ? Verdict::Partly : Verdict::NotMet});
    }
    trial.reps = base::Reps(5 + m_chance.below(2));
    const bool isInControl = due.stage == progression::Stage::Control || m_chance.happens(20);
    const auto pause = [this, isInControl] { return isInControl && m_chance.happens(85) ? 1000 + 100 * m_chance.below(6) : 600; };
    trial.pauses = {pause(), pause(), pause()};
    trial.steadiness = m_chance.happens(m_talent.shaky * 3) ? Steadiness::Shaky : Steadiness::Steady;
    return trial;
}

progression::EventBody SimulatedLifter::screen()
{
    progression::Rehearsal trial;
    for (const char* point : kPoints) {
        trial.criteria.push_back({point, Verdict::Met});
    }
    trial.reps = base::Reps(5);
    trial.pauses = {1200, 1100, 1300};
    return trial;
}

progression::EventBody SimulatedLifter::tryLightly(const progression::LiftMachine& machine)
{
    SetRecord set;
    set.load = machine.loads().lightest();
    set.amount = amountFor(6, machine);
    set.rir = 8;
    Exposure exposure;
    exposure.sets.push_back(set);
    return exposure;
}

double SimulatedLifter::strengthToday(double weeks)
{
    const double grown = m_talent.strength * (1 + m_talent.gain * weeks / (weeks + 16));
    return grown * (1 + kFormDeviation * m_chance.normal());
}

progression::EventBody SimulatedLifter::testMaximum(const progression::LiftMachine& machine, double weeks)
{
    const double today = strengthToday(weeks);
    direction::MaximumTest test(machine.setup().region, machine.loads(), machine.prescriptionOn(machine.state().block->week).load);
    Exposure exposure;
    while (const auto wanted = test.next()) {
        const bool isAttempt = wanted->step == direction::TestStep::Attempt;
        const bool isMade = !isAttempt || effectiveOf(machine, wanted->load) <= today;
        SetRecord set;
        set.load = wanted->load;
        set.amount = isMade ? amountFor(wanted->repsLeast.value(), machine) : 0;
        set.isWarmup = !isAttempt;
        set.rir = isAttempt ? std::int16_t{0} : SetRecord::kNotRecorded;
        exposure.sets.push_back(set);
        test.record({wanted->load, isMade, 0});
    }
    return exposure;
}

progression::EventBody SimulatedLifter::work(const progression::LiftMachine& machine, const Prescription& due, double weeks)
{
    const double today = strengthToday(weeks);
    Exposure exposure;
    exposure.pain = m_chance.happens(m_talent.sore) ? 1 + m_chance.below(2) : 0;
    addWarmup(exposure, machine, due.load);
    const bool isShaky = m_chance.happens(m_talent.shaky);
    const bool isForgotten = m_chance.happens(m_talent.forgetful);
    const bool isProud = m_chance.happens(m_talent.proud);
    const int wanted = due.repsLow == due.repsHigh ? due.repsHigh.value() : 8;
    const int reserve = isProud ? std::max(0, due.reserve - 1) : due.reserve;
    const int sets = std::max(1, due.sets.value() - (m_chance.happens(m_talent.hurried) ? 1 : 0));
    const double shortRest = kShortRestFatigue * (180 - std::min(180, due.rest.value())) / 120.0;
    for (int i = 0; i < sets; ++i) {
        const double fresh = today * (1 - i * (kFatiguePerSet + shortRest));
        const int possible = static_cast<int>(30 * (fresh / effectiveOf(machine, due.load) - 1));
        const int most = isProud ? 30 : wanted;
        const int reps = std::clamp(std::min(most, possible - reserve + (m_chance.happens(15) ? 1 : 0)), 1, 30);
        const int left = std::clamp(possible - reps + (m_chance.happens(25) ? m_chance.below(3) - 1 : 0), 0, 10);
        SetRecord set;
        set.load = due.load;
        set.amount = amountFor(reps, machine);
        set.rir = isForgotten ? SetRecord::kNotRecorded : static_cast<std::int16_t>(left);
        set.restSeconds = i == 0 ? SetRecord::kNotRecorded : static_cast<std::int16_t>(due.rest.value() + 5 * m_chance.below(3));
        set.steadiness = isShaky && i + 1 == sets ? Steadiness::Shaky : Steadiness::Steady;
        exposure.sets.push_back(set);
    }
    return exposure;
}

}  // namespace chalk::simulation
