#include "core/direction/block_plan.h"

#include "core/base/enum_keys.h"
#include "core/direction/movement_block.h"
#include "core/direction/physique_block.h"
#include "core/direction/strength_block.h"

#include <algorithm>

namespace chalk::direction {

namespace {

constexpr std::array<std::string_view, 2> kWaveKeys{"linear", "undulating"};
constexpr std::array<std::string_view, 4> kPhaseKeys{"base", "build", "peak", "test"};
constexpr std::array<std::string_view, 3> kWeekKindKeys{"work", "lighter", "test"};
constexpr std::array<std::string_view, 3> kLiftRoleKeys{"main", "assistance", "upkeep"};
constexpr int kDaysOfWeek = 7;

bool isLighterWeek(int number, int weeks, bool endsWithTest)
{
    const int lastLighter = endsWithTest ? weeks - 2 : weeks - 1;
    return number % kLighterEvery == 0 && number <= lastLighter;
}

/// The weeks of work that are base, build and peak: 3 : 3 : 2, the odd ones to the peak.
std::array<int, 3> sharedOut(int work)
{
    const int part = (work * 3 + 4) / 8;
    return {part, part, work - 2 * part};
}

std::vector<PlannedWork> workOf(const PlannedLift& lift, const PlanWishes& wishes, const WeekFrame& frame, int week)
{
    std::vector<PlannedWork> exposures;
    for (int i = 0; i < lift.exposures; ++i) {
        const Place place{frame, week, i, lift.exposures};
        switch (wishes.direction) {
        case Direction::Strength: exposures.push_back(strengthWork(lift.role, wishes.wave, place)); break;
        case Direction::Physique: exposures.push_back(physiqueWork(lift.role, place)); break;
        case Direction::Movement: exposures.push_back(movementWork(lift.role, place)); break;
        }
    }
    return exposures;
}

}  // namespace

std::optional<WishFault> faultOf(const PlanWishes& wishes)
{
    if (wishes.weeks < kLeastWeeks || wishes.weeks > kMostWeeks) {
        return WishFault{"weeks", "must be 8 to 16"};
    }
    if (wishes.sessionsAWeek < 1 || wishes.sessionsAWeek > kDaysOfWeek) {
        return WishFault{"sessions", "must be 1 to 7"};
    }
    if (wishes.start.weekday() != 0) {
        return WishFault{"start", "must be a Monday"};
    }
    if (wishes.lifts.empty()) {
        return WishFault{"lifts", "must have one at least"};
    }
    const auto isOff = [&](const PlannedLift& lift) { return lift.exposures < 1 || lift.exposures > wishes.sessionsAWeek; };
    if (std::any_of(wishes.lifts.begin(), wishes.lifts.end(), isOff)) {
        return WishFault{"exposures", "must be 1 to the sessions of a week"};
    }
    return std::nullopt;
}

std::vector<WeekFrame> weekFrames(int weeks, bool endsWithTest)
{
    const int last = endsWithTest ? weeks - 1 : weeks;
    int work = 0;
    for (int number = 1; number <= last; ++number) {
        work += isLighterWeek(number, weeks, endsWithTest) ? 0 : 1;
    }
    const auto parts = sharedOut(work);
    std::vector<WeekFrame> frames;
    std::size_t phase = 0;
    int step = 0;
    for (int number = 1; number <= last; ++number) {
        if (isLighterWeek(number, weeks, endsWithTest)) {
            WeekFrame lighter = frames.back();
            lighter.kind = WeekKind::Lighter;
            frames.push_back(lighter);
            continue;
        }
        if (step == parts[phase]) {
            ++phase;
            step = 0;
        }
        frames.push_back({static_cast<Phase>(phase), WeekKind::Work, step++, parts[phase]});
    }
    if (endsWithTest) {
        frames.push_back({Phase::Test, WeekKind::Test, 0, 1});
    }
    return frames;
}

BlockPlan planFor(const PlanWishes& wishes)
{
    const bool endsWithTest = wishes.direction == Direction::Strength && wishes.endsWithTest;
    BlockPlan plan{wishes, {}};
    base::Date monday = wishes.start;
    int number = 0;
    for (const WeekFrame& frame : weekFrames(wishes.weeks, endsWithTest)) {
        PlanWeek week{monday, frame.phase, frame.kind, {}};
        for (const PlannedLift& lift : wishes.lifts) {
            week.work.push_back(workOf(lift, wishes, frame, number));
        }
        plan.weeks.push_back(std::move(week));
        monday = monday + kDaysOfWeek;
        ++number;
    }
    return plan;
}

std::string_view keyOf(Wave wave)
{
    return base::keyIn(kWaveKeys, wave);
}

std::string_view keyOf(Phase phase)
{
    return base::keyIn(kPhaseKeys, phase);
}

std::string_view keyOf(WeekKind kind)
{
    return base::keyIn(kWeekKindKeys, kind);
}

std::string_view keyOf(LiftRole role)
{
    return base::keyIn(kLiftRoleKeys, role);
}

std::optional<Wave> waveOf(std::string_view key)
{
    return base::enumOf<Wave>(kWaveKeys, key);
}

std::optional<Phase> phaseOf(std::string_view key)
{
    return base::enumOf<Phase>(kPhaseKeys, key);
}

std::optional<WeekKind> weekKindOf(std::string_view key)
{
    return base::enumOf<WeekKind>(kWeekKindKeys, key);
}

std::optional<LiftRole> liftRoleOf(std::string_view key)
{
    return base::enumOf<LiftRole>(kLiftRoleKeys, key);
}

}  // namespace chalk::direction
