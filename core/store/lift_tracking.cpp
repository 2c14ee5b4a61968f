#include "core/store/lift_tracking.h"

#include "core/checkin/lift_log.h"
#include "core/progression/exposure_facts.h"
#include "core/store/lift_log_codec.h"

#include <algorithm>

namespace chalk::store {

namespace {

using progression::Event;
using progression::Exposure;
using progression::Rule;
using progression::RuleList;
using progression::Stage;

/// 1,000,000 kg.
constexpr std::int64_t kMostVolume = 10'000'000'000'000'000;
constexpr int kMostPieces = 100;

/// Whether a decision says anything about what comes next; what was only kept does not.
bool isTelling(const RuleList& rules)
{
    return std::any_of(rules.begin(), rules.end(), [](Rule rule) {
        return rule != Rule::P3 && rule != Rule::P5 && rule != Rule::V1 && rule != Rule::K3 && rule != Rule::U3;
    });
}

bool hasWorkingSet(const Exposure& exposure)
{
    return std::any_of(exposure.sets.begin(), exposure.sets.end(), [](const progression::SetRecord& set) { return !set.isWarmup; });
}

/// The first stage that was entered on the way to the present one. One event can climb several rungs: U-1 with K-1, B-5 or a T
/// rule with L-8.
Stage firstEntered(Stage before, int cycleBefore, const progression::LiftState& now, const RuleList& rules)
{
    if (rules.has(Rule::U1)) {
        return Stage::Control;
    }
    if (now.cycle > cycleBefore) {
        return Stage::LoadBuild;
    }
    const bool isClimb = progression::isLoaded(before) && now.stage > before && !rules.has(Rule::O1);
    return isClimb ? static_cast<Stage>(progression::numberOf(before) + 1) : now.stage;
}

void noteHold(CachedLift& lift, const Event& event, const RuleList& rules)
{
    if (!lift.machine.state().isOnHold) {
        lift.heldSince.reset();
        lift.holdPain = 0;
    } else if (rules.has(Rule::P1)) {
        lift.heldSince = event.date;
        const auto* exposure = std::get_if<Exposure>(&event.body);
        lift.holdPain = exposure != nullptr ? exposure->pain : std::get<progression::Rehearsal>(event.body).pain;
    }
}

/// What an event that the lift has not taken yet adds to its log. The swaps before it are in the log, so it need not count them.
QByteArray loggedOf(const CachedLift& lift, const Event& event)
{
    QByteArray log;
    if (const auto* exposure = std::get_if<Exposure>(&event.body)) {
        if (const auto logged = checkin::loggedExposureOf(lift.machine, event.date, *exposure, 0)) {
            addExposure(log, *logged);
        }
    } else if (std::holds_alternative<progression::Swap>(event.body)) {
        addSwap(log);
    }
    return log;
}

}  // namespace

base::Mass volumeOf(const Exposure& exposure, const progression::LiftSetup& setup, const progression::Kit& kit)
{
    std::int64_t volume = 0;
    for (const progression::SetRecord& set : exposure.sets) {
        if (!set.isWarmup && set.load.centi() > 0) {
            const int reps = progression::repsOf(set.amount, kit.measure, setup.policy);
            const std::int64_t piece = std::min((reps * base::Mass::of(set.load, setup.unit)).raw(), kMostVolume);
            volume = std::min(volume + std::clamp(kit.pieces, 1, kMostPieces) * piece, kMostVolume);
        }
    }
    return base::Mass::fromRaw(volume);
}

Step advance(CachedLift& lift, const Event& event)
{
    const progression::LiftState& now = lift.machine.state();
    const Stage before = now.stage;
    const int cycleBefore = now.cycle;
    const auto* exposure = std::get_if<Exposure>(&event.body);
    Step step;
    if (exposure != nullptr) {
        step.volume = volumeOf(*exposure, lift.machine.setup(), lift.machine.kit());
    }
    step.logged = loggedOf(lift, event);
    step.rules = lift.machine.apply(event.date, event.body);
    if (isTelling(step.rules)) {
        lift.decided = step.rules;
    }
    if (now.stage != before || now.cycle != cycleBefore) {
        lift.stageSince = event.date;
        for (Stage stage = firstEntered(before, cycleBefore, now, step.rules); stage < now.stage;
             stage = static_cast<Stage>(progression::numberOf(stage) + 1)) {
            step.reached.push_back({now.cycle, stage, event.date});
        }
        step.reached.push_back({now.cycle, now.stage, event.date});
    }
    lift.lastEvent = event.date;
    if (!lift.firstWork && exposure != nullptr && progression::isLoaded(before) && hasWorkingSet(*exposure) && !step.rules.has(Rule::P3)) {
        lift.firstWork = event.date;
    }
    noteHold(lift, event, step.rules);
    return step;
}

tl::expected<LiftReplay, progression::ReplayFault> replayOf(CachedLift fresh, const std::vector<const Event*>& ordered)
{
    LiftReplay replay{std::move(fresh), {}, {}, {}, {}};
    CachedLift& lift = replay.lift;
    replay.reached.push_back({lift.machine.state().cycle, lift.machine.state().stage, lift.started});
    replay.decisions.reserve(ordered.size());
    for (std::size_t i = 0; i < ordered.size(); ++i) {
        const Event& event = *ordered[i];
        if (auto fault = lift.machine.faultOf(event.body)) {
            return tl::make_unexpected(progression::ReplayFault{i, *std::move(fault)});
        }
        const Step step = advance(lift, event);
        replay.reached.insert(replay.reached.end(), step.reached.begin(), step.reached.end());
        replay.log += step.logged;
        if (step.volume > base::Mass()) {
            replay.weeks[event.date - event.date.weekday()] += step.volume;
        }
        replay.decisions.push_back({i, event.date, step.rules, lift.machine.prescriptionOn(event.date)});
    }
    return replay;
}

}  // namespace chalk::store
