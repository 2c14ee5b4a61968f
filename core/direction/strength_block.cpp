#include "core/direction/strength_block.h"

#include <array>

namespace chalk::direction {

namespace {

/// The main lift in one phase: how its numbers go from the first week of work to the last.
struct PhaseRamp {
    Aim aim;
    Ramp sets;
    int reps;
    Ramp share;
    int restSeconds;
};

constexpr std::array<PhaseRamp, 3> kLinear{PhaseRamp{Aim::BasicStrength, {4, 5}, 4, {800, 820}, 180},
                                           PhaseRamp{Aim::Strength, {4, 5}, 3, {850, 870}, 210},
                                           PhaseRamp{Aim::Strength, {4, 2}, 2, {900, 930}, 240}};
constexpr std::array<PhaseRamp, 3> kTurns{PhaseRamp{Aim::BasicStrength, {4, 4}, 4, {800, 800}, 180},
                                          PhaseRamp{Aim::Strength, {5, 5}, 3, {850, 850}, 210},
                                          PhaseRamp{Aim::Strength, {4, 4}, 2, {900, 900}, 240}};
constexpr int kUndulatingRise = 10;  // thousandths, from phase to phase
constexpr std::array kDayParts{base::Milli(1000), kLightDay, kMediumDay};
constexpr std::array<int, 3> kTrialMaxima{8, 6, 4};
constexpr int kTrialPart = 4;  // weeks

PlannedWork workAt(const PhaseRamp& ramp, const WeekFrame& frame, int extra)
{
    const base::Milli share(ramp.share.at(frame.step, frame.steps) + extra);
    const base::Reps reps(ramp.reps);
    return {ramp.aim,
            {base::Sets(ramp.sets.at(frame.step, frame.steps)), reps, share, base::Seconds(ramp.restSeconds), reserveAt(share, reps)},
            reps};
}

std::size_t phaseIndex(Phase phase)
{
    return phase == Phase::Test ? 2 : static_cast<std::size_t>(phase);
}

PlannedWork linearMain(const Place& place)
{
    PlannedWork work = workAt(kLinear[phaseIndex(place.frame.phase)], place.frame, 0);
    const base::Milli part = kDayParts[static_cast<std::size_t>(place.exposure) % kDayParts.size()];
    if (part != kDayParts.front()) {
        work.aim = Aim::LightDay;
        work.scheme.share = partOf(work.scheme.share, part);
        work.scheme.reserve = reserveAt(work.scheme.share, work.scheme.reps);
    }
    return work;
}

PlannedWork undulatingMain(const Place& place)
{
    const auto turn = static_cast<std::size_t>(place.week * place.exposures + place.exposure) % kTurns.size();
    return workAt(kTurns[turn], place.frame, kUndulatingRise * static_cast<int>(phaseIndex(place.frame.phase)));
}

PlannedWork assistance(const Place& place)
{
    const bool isBase = place.frame.phase == Phase::Base;
    const int sets = place.frame.phase >= Phase::Peak ? 2 : 3;
    const base::Milli share(isBase ? 750 : 770);
    return {Aim::Assistance, {base::Sets(sets), base::Reps(8), share, base::Seconds(90), reserveAt(share, base::Reps(8))}, base::Reps(8)};
}

}  // namespace

PlannedWork strengthWork(LiftRole role, Wave wave, const Place& place)
{
    if (role == LiftRole::Main && place.frame.kind == WeekKind::Test) {
        PlannedWork test = workAt(kLinear[2], {Phase::Peak, WeekKind::Work, 0, 1}, 0);
        test.isTest = place.exposure == place.exposures - 1;
        return test.isTest ? test : lightened(test);
    }
    PlannedWork work = role != LiftRole::Main       ? assistance(place)
                       : wave == Wave::Undulating ? undulatingMain(place)
                                                    : linearMain(place);
    return place.frame.kind == WeekKind::Work ? work : lightened(work);
}

base::Reps trialRepMaximum(Wave wave, int week, int day)
{
    const int turn = wave == Wave::Linear ? week / kTrialPart : day;
    return base::Reps(kTrialMaxima[static_cast<std::size_t>(turn) % kTrialMaxima.size()]);
}

}  // namespace chalk::direction
