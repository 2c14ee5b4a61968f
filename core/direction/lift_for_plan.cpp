#include "core/direction/lift_for_plan.h"

#include "core/progression/load_steps.h"
#include "core/progression/single_estimate.h"

#include <algorithm>

namespace chalk::direction {

namespace {

using lifts::Pattern;

constexpr int kUsualExposures = 2;
constexpr int kLiftsASession = 5;

/// A tested one of the last days, the latest; nothing where there is none.
std::optional<base::Load> lastTested(std::span<const SpokenSingle> spoken, base::Date day)
{
    std::optional<base::Load> found;
    for (const SpokenSingle& one : spoken) {
        if (one.isTested && one.date <= day && day - one.date <= kTestCountsDays) {
            found = one.load;
        }
    }
    return found;
}

std::vector<base::Load> latestEstimates(std::span<const SpokenSingle> spoken, base::Date day, bool isRough)
{
    std::vector<base::Load> latest;
    for (auto one = spoken.rbegin(); one != spoken.rend() && latest.size() < kSpokenMost; ++one) {
        if (!one->isTested && one->isRough == isRough && one->date <= day && day - one->date <= kSpokenDays) {
            latest.push_back(one->load);
        }
    }
    return latest;
}

/// Whether `a` says more of a single than `b`: a sure one more than a rough one, then the heavier one.
bool saysMore(const SpokenSingle& a, const SpokenSingle& b)
{
    return a.isRough != b.isRough ? b.isRough : a.load > b.load;
}

/// Gives lifts of a role a second day while there is room; answers the room that is left.
int giveSecondDay(std::vector<PlannedLift>& lifts, bool isMain, int room)
{
    for (PlannedLift& lift : lifts) {
        if (room > 0 && (lift.role == LiftRole::Main) == isMain) {
            lift.exposures = kUsualExposures;
            --room;
        }
    }
    return room;
}

base::Date nextMonday(base::Date day)
{
    return day.weekday() == 0 ? day : day + (7 - day.weekday());
}

}  // namespace

std::optional<SpokenSingle> spokenIn(base::Date date, const progression::Exposure& exposure, const progression::LiftMachine& lift,
                                     bool isTest)
{
    if (lift.kit().measure != lifts::Measure::Reps) {
        return std::nullopt;
    }
    const progression::LoadSteps steps(lift.setup(), lift.kit(), lift.loads());
    std::optional<SpokenSingle> best;
    for (const progression::SetRecord& set : exposure.sets) {
        const base::Load load = steps.effectiveLoad(set.load);
        const bool hasReserve = set.rir != progression::SetRecord::kNotRecorded;
        if (set.isWarmup || (!hasReserve && !isTest) || load <= base::Load() || set.steadiness == progression::Steadiness::Lost) {
            continue;
        }
        const auto spoken = progression::spokenFor({load, base::Reps(set.amount), hasReserve ? set.rir : 0});
        if (!spoken) {
            continue;
        }
        const SpokenSingle one{date, spoken->load, isTest, spoken->isRough};
        if (!best || saysMore(one, *best)) {
            best = one;
        }
    }
    return best;
}

std::optional<PlanSingle> startingSingle(std::span<const SpokenSingle> spoken, base::Date day)
{
    if (const auto tested = lastTested(spoken, day)) {
        return PlanSingle{*tested, true};
    }
    std::vector<base::Load> latest = latestEstimates(spoken, day, false);
    if (latest.empty()) {
        latest = latestEstimates(spoken, day, true);
    }
    if (latest.empty()) {
        return std::nullopt;
    }
    std::sort(latest.begin(), latest.end());
    return PlanSingle{latest[(latest.size() - 1) / 2], false};
}

bool LiftForPlan::canFollow() const
{
    const progression::LiftState& state = machine.state();
    return canBePlanned() && progression::isLoaded(state.stage) && !state.isOnHold && single.has_value();
}

LiftRole usualRole(Direction direction, Pattern pattern)
{
    switch (direction) {
    case Direction::Strength:
        return pattern == Pattern::Squat || pattern == Pattern::Hinge || pattern == Pattern::HorizontalPush ? LiftRole::Main : LiftRole::Assistance;
    case Direction::Physique:
        return LiftRole::Main;
    case Direction::Movement:
        return pattern == Pattern::Squat || pattern == Pattern::Hinge || pattern == Pattern::SingleLeg || pattern == Pattern::VerticalPush ? LiftRole::Main
                                                                                                                                       : LiftRole::Upkeep;
    }
    return LiftRole::Main;
}

void shareOutDays(std::vector<PlannedLift>& lifts, int sessionsAWeek)
{
    for (PlannedLift& lift : lifts) {
        lift.exposures = 1;
    }
    if (sessionsAWeek >= kUsualExposures) {
        const int room = kLiftsASession * sessionsAWeek - static_cast<int>(lifts.size());
        giveSecondDay(lifts, false, giveSecondDay(lifts, true, room));
    }
}

PlanWishes usualWishes(Direction direction, std::span<const LiftForPlan> lifts, int sessionsAWeek, base::Date day)
{
    PlanWishes wishes;
    wishes.direction = direction;
    wishes.sessionsAWeek = sessionsAWeek;
    wishes.start = nextMonday(day);
    for (const LiftForPlan& lift : lifts) {
        if (lift.canBePlanned() && lift.firstLoad) {
            wishes.lifts.push_back({lift.lift, usualRole(direction, lift.pattern), 1});
        }
    }
    shareOutDays(wishes.lifts, sessionsAWeek);
    return wishes;
}

std::vector<PlanSingle> singlesFor(const PlanWishes& wishes, std::span<const LiftForPlan> lifts)
{
    std::vector<PlanSingle> singles;
    for (const PlannedLift& planned : wishes.lifts) {
        const auto lift = std::find_if(lifts.begin(), lifts.end(), [&planned](const LiftForPlan& one) { return one.lift == planned.lift; });
        singles.push_back(lift != lifts.end() && lift->single ? *lift->single : PlanSingle());
    }
    return singles;
}

}  // namespace chalk::direction
