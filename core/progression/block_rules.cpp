#include "core/progression/block_rules.h"

#include "core/lifts/repetition_chart.h"
#include "core/progression/exposure_facts.h"
#include "core/progression/single_estimate.h"

#include <algorithm>

namespace chalk::progression {

namespace {

constexpr int kLastRowOfChart = 10;

/// The share of the single that a made set of Load build is planned at: `hard_reps` and the reserve to failure.
base::Milli shareAfterBlock(const Policy& policy)
{
    return *lifts::chartShare(base::Reps(std::clamp(policy.hardReps.value() + policy.reserve, 1, kLastRowOfChart)));
}

bool canFollow(const LiftState& state)
{
    return isLoaded(state.stage) && !state.isOnHold;
}

/// The single that the best working set spoke for; what is only known to be that or more counts where it is above the present one. In a test a set
/// without a reserve counts as one to failure.
std::optional<base::Load> bestSpoken(const Exposure& exposure, const Kit& kit, base::Load present, bool isTest, const Policy& policy,
                                     const LoadSteps& steps)
{
    std::optional<base::Load> best;
    for (const SetRecord& set : exposure.sets) {
        if (set.isWarmup) {
            continue;
        }
        const bool hasReserve = set.rir != SetRecord::kNotRecorded;
        const std::optional<int> reserve = hasReserve ? std::optional<int>(set.rir) : isTest ? std::optional(0) : std::nullopt;
        const auto spoken = spokenFor({steps.effectiveLoad(set.load), base::Reps(repsOf(set.amount, kit.measure, policy)), reserve});
        const bool counts = spoken && (!spoken->isAtLeast || spoken->load > present);
        if (counts && (!best || spoken->load > *best)) {
            best = spoken->load;
        }
    }
    return best;
}

/// Whether every working set did what was planned.
bool isAsPlanned(const Exposure& exposure, const BlockWork& work, base::Load load, const Kit& kit, const Policy& policy)
{
    return std::all_of(exposure.sets.begin(), exposure.sets.end(), [&](const SetRecord& set) {
        const bool isReserveLeft = set.rir == SetRecord::kNotRecorded || set.rir >= work.reserve;
        const bool isDone = set.load >= load && base::Reps(repsOf(set.amount, kit.measure, policy)) >= work.repsLow;
        return set.isWarmup || (isDone && isReserveLeft);
    });
}

}  // namespace

Rule applyBlock(const Block& block, LiftState& state, const Policy& policy, const LoadSteps& steps)
{
    if (block.weeks.empty()) {
        if (!state.block) {
            return Rule::N5;
        }
        endBlock(state, policy, steps);
        return Rule::N4;
    }
    if (!canFollow(state)) {
        return Rule::N5;
    }
    state.block = BlockRun{std::make_shared<const Block>(block), block.single, base::Date(), 0};
    return Rule::N1;
}

bool isBlockOver(base::Date day, const LiftState& state)
{
    return state.block && isOver(day, *state.block);
}

void endBlock(LiftState& state, const Policy& policy, const LoadSteps& steps)
{
    const base::Load load = steps.atShare(state.block->single, shareAfterBlock(policy));
    state.block.reset();
    state.misses = 0;
    state.best = base::Reps(0);
    state.lastMade.reset();
    state.bridgeTarget.reset();
    state.flags.clear(Flag::Stalled);
    if (isLoaded(state.stage)) {
        state.stage = Stage::LoadBuild;
        state.load = load;
    } else if (state.returnStage) {
        state.returnStage = Stage::LoadBuild;
        state.load = load;
    }
}

void moveSingle(base::Date day, const Exposure& exposure, const Kit& kit, LiftState& state, const Policy& policy, const LoadSteps& steps)
{
    BlockRun& run = *state.block;
    const auto place = placeOn(day, run);
    const BlockWork* work = place ? &run.block->weeks[place->week].work[place->exposure] : nullptr;
    const bool isTest = work != nullptr && work->isTest;
    const auto spoken = bestSpoken(exposure, kit, run.single, isTest, policy, steps);
    if (!spoken) {
        return;
    }
    const base::Load moved = isTest ? *spoken : estimateAfter(run.single, *spoken);
    const bool isNoSign = work != nullptr && !isTest && isAsPlanned(exposure, *work, steps.atShare(run.single, work->share), kit, policy);
    run.single = moved < run.single && isNoSign ? run.single : moved;
}

void followBlock(Prescription& next, base::Date day, const BlockRun& run, const LoadSteps& steps)
{
    const auto place = placeOn(day, run);
    if (next.kind != PrescriptionKind::Work || !place) {
        return;
    }
    const BlockWeek& week = run.block->weeks[place->week];
    const BlockWork& work = week.work[place->exposure];
    next.load = steps.atShare(run.single, work.share);
    next.sets = work.sets;
    next.repsLow = work.repsLow;
    next.repsHigh = work.repsHigh;
    next.rest = work.rest;
    next.reserve = work.reserve;
    next.isPauseAsked = next.isPauseAsked || work.isPauseAsked;
    next.block = BlockMark{static_cast<int>(place->week) + 1, static_cast<int>(run.block->weeks.size()), week.isLighter, work.isTest};
}

}  // namespace chalk::progression
