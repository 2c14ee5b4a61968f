#include "core/progression/prescription.h"

#include "core/base/enum_keys.h"

#include <algorithm>

namespace chalk::progression {

namespace {

constexpr std::array<std::string_view, 3> kPrescriptionKeys{"rehearse", "work", "hold"};

void setReps(Prescription& next, base::Reps reps)
{
    next.repsLow = reps;
    next.repsHigh = reps;
}

void addWork(Prescription& next, const LiftState& state, const Policy& policy)
{
    next.kind = PrescriptionKind::Work;
    next.load = *state.load;
    next.sets = policy.baseSets;
    next.repsLow = policy.repFloor;
    next.repsHigh = policy.repCeiling;
    next.rest = policy.baseRest;
    next.reserve = policy.reserve;
    next.isPauseAsked = state.isPauseAsked;
    if (state.stage == Stage::LoadBuild && state.bridgeTarget) {
        setReps(next, *state.bridgeTarget);
    } else if (state.stage == Stage::RepBuild) {
        setReps(next, std::max(policy.repFloor, std::min(state.best + base::Reps(1), policy.repGoal)));
    } else if (state.stage == Stage::SetBuild) {
        setReps(next, *state.holdReps);
        next.sets = *state.sets;
    } else if (state.stage == Stage::RestCut) {
        setReps(next, *state.holdReps);
        next.sets = *state.holdSets;
        next.rest = *state.rest;
    }
}

}  // namespace

std::string_view keyOf(PrescriptionKind kind)
{
    return base::keyIn(kPrescriptionKeys, kind);
}

Lever leverOf(Stage stage)
{
    return static_cast<Lever>(numberOf(stage) - 1);
}

std::optional<Lever> movingLeverOf(const Prescription& next)
{
    if (next.isLighter() || (next.block && next.block->isLighter)) {
        return std::nullopt;
    }
    return next.block ? Lever::Load : leverOf(next.stage);
}

Prescription prescriptionOf(const LiftState& state, const Policy& policy)
{
    Prescription next;
    next.stage = state.stage;
    next.cycle = state.cycle;
    next.flags = state.flags;
    if (state.isOnHold) {
        next.kind = PrescriptionKind::Hold;
    } else if (isLoaded(state.stage)) {
        addWork(next, state, policy);
    }
    return next;
}

}  // namespace chalk::progression
