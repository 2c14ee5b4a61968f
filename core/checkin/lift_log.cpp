#include "core/checkin/lift_log.h"

#include "core/analysis/lift_work.h"
#include "core/plateau/detector_figures.h"
#include "core/progression/exposure_facts.h"

#include <string>

namespace chalk::checkin {

namespace {

using plateau::LoggedExposure;
using progression::LiftMachine;

/// The mass that is moved, in the lift's unit. A lift that uses body mass has one: it could not be set up without.
base::Load movedLoad(base::Load load, const LiftMachine& lift)
{
    return analysis::massMoved(load, lift.setup(), lift.kit(), analysis::BodyShare::Counted).value_or(base::Mass()).in(lift.setup().unit);
}

void addWork(LoggedExposure& logged, const progression::Exposure& exposure, base::Load workingLoad, const LiftMachine& lift)
{
    for (const progression::SetRecord& set : exposure.sets) {
        if (set.isWarmup || set.load != workingLoad) {
            continue;
        }
        if (logged.reps.empty() && set.rir != progression::SetRecord::kNotRecorded && set.rir <= plateau::kFigures.reserveMost) {
            logged.reserve = set.rir;
        }
        logged.reps.emplace_back(progression::repsOf(set.amount, lift.kit().measure, lift.setup().policy));
    }
}

}  // namespace

std::optional<LoggedExposure> loggedExposureOf(const LiftMachine& before, base::Date date, const progression::Exposure& exposure, int swaps)
{
    const progression::Prescription asked = before.prescriptionOn(date);
    const progression::ExposureFacts facts = progression::factsOf(exposure, before.kit().measure, before.setup().policy);
    if (asked.kind != progression::PrescriptionKind::Work || facts.workingSets == 0) {
        return std::nullopt;
    }
    LoggedExposure logged;
    logged.targetLoad = movedLoad(asked.load, before);
    if (logged.targetLoad <= base::Load()) {
        return std::nullopt;
    }
    logged.date = date;
    logged.variation = std::to_string(swaps);
    logged.stage = asked.stage;
    logged.targetSets = asked.sets;
    logged.targetReps = asked.repsLow;
    logged.targetRest = asked.rest;
    logged.load = movedLoad(facts.workingLoad, before);
    addWork(logged, exposure, facts.workingLoad, before);
    if (facts.longestRest) {
        logged.rest = base::Seconds(*facts.longestRest);
    }
    logged.isSteady = !facts.isLost && !facts.isShaky;
    logged.hasPain = exposure.pain > 0;
    logged.isLighterWeek = asked.isLighter() || (asked.block && asked.block->isLighter);
    if (asked.block) {
        logged.planSingle = before.state().block->single;
    }
    return logged;
}

std::vector<LoggedExposure> logOf(LiftMachine fresh, std::span<const progression::Event> events)
{
    std::vector<LoggedExposure> log;
    int swaps = 0;
    for (const progression::Event& event : events) {
        if (const auto* exposure = std::get_if<progression::Exposure>(&event.body)) {
            if (auto logged = loggedExposureOf(fresh, event.date, *exposure, swaps)) {
                log.push_back(*std::move(logged));
            }
        }
        swaps += std::holds_alternative<progression::Swap>(event.body) ? 1 : 0;
        fresh.apply(event.date, event.body);
    }
    return log;
}

}  // namespace chalk::checkin
