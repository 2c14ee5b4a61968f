#include "core/week/studio_week.h"

#include <set>
#include <utility>

namespace chalk::week {

namespace {

constexpr int kMostWeight = 1'000'000;
constexpr int kMostRecoveryHours = 168;
constexpr int kSaturday = 5;

bool isIn(int value, int low, int high)
{
    return value >= low && value <= high;
}

}  // namespace

clients::WeekHours StudioWeek::usualOpeningHours()
{
    clients::WeekHours hours;
    bool isSound = true;
    for (int day = 0; day < kSaturday; ++day) {
        isSound = hours.add({day, 6 * 60, 21 * 60}) && isSound;
    }
    return hours.add({kSaturday, 8 * 60, 14 * 60}) && isSound ? hours : clients::WeekHours();
}

std::optional<WeekFault> faultOf(const Weights& weights)
{
    const std::pair<const char*, int> all[] = {{"unplaced", weights.unplaced}, {"day_move", weights.dayMove}, {"time_move_base", weights.timeMoveBase},
                                               {"time_move_per_15", weights.timeMovePer15}, {"time_move_cap", weights.timeMoveCap},
                                               {"coach_move", weights.coachMove}, {"preference_per_15", weights.prefPer15},
                                               {"preference_cap", weights.prefCap}, {"gap_per_15", weights.gapPer15}, {"over_per_15", weights.overPer15},
                                               {"consecutive", weights.consecutive}};
    for (const auto& [field, value] : all) {
        if (!isIn(value, 0, kMostWeight)) {
            return WeekFault{field, "must be 0 to 1000000"};
        }
    }
    return std::nullopt;
}

std::optional<WeekFault> faultOf(const StudioWeek& week)
{
    for (const auto& [station, units] : week.stations) {
        if (!isIn(units, 0, 20)) {
            return WeekFault{"stations." + std::string(lifts::keyOf(station)), "must be 0 to 20"};
        }
    }
    return faultOf(week.weights);
}

std::optional<WeekFault> faultOf(const CoachWork& work)
{
    if (!isIn(work.capacity, 1, kMostCapacity)) {
        return WeekFault{"capacity", "must be 1 to 12"};
    }
    if (!isIn(work.softMaxMinutes, 60, 960)) {
        return WeekFault{"soft_max_minutes", "must be 60 to 960"};
    }
    return std::nullopt;
}

std::optional<WeekFault> faultOf(const ClientPlanning& planning)
{
    if (!isIn(planning.priority, 1, kMostPriority)) {
        return WeekFault{"priority", "must be 1 to 9"};
    }
    if (planning.maxGroup && !isIn(*planning.maxGroup, 1, kMostCapacity)) {
        return WeekFault{"max_group", "must be 1 to 12"};
    }
    if (!isIn(planning.recovery.hours, 0, kMostRecoveryHours)) {
        return WeekFault{"recovery_hours", "must be 0 to 168"};
    }
    std::set<base::CoachId> coaches;
    for (const CoachWish& wish : planning.otherCoaches) {
        if (!isIn(wish.cost, 0, 100)) {
            return WeekFault{"other_coaches", "must cost 0 to 100 each"};
        }
        if (!coaches.insert(wish.coach).second) {
            return WeekFault{"other_coaches", "must not name a coach twice"};
        }
    }
    std::set<int> days;
    for (const StandingSlot& slot : planning.standing) {
        if (!isIn(slot.weekday, 0, kWeekDays - 1) || !isIn(slot.startMinute, 0, kDayMinutes - 1)) {
            return WeekFault{"standing", "must be times of the week"};
        }
        if (!days.insert(slot.weekday).second) {
            return WeekFault{"standing", "must not name a day twice"};
        }
    }
    return std::nullopt;
}

std::optional<WeekFault> faultOf(const Closure& closure)
{
    if (closure.last < closure.first) {
        return WeekFault{"last", "must not lie before `first`"};
    }
    if (!isIn(closure.fromMinute, 0, kDayMinutes) || !isIn(closure.toMinute, 0, kDayMinutes) || closure.toMinute <= closure.fromMinute) {
        return WeekFault{"to", "must be a time after `from`"};
    }
    if (closure.station && !closure.coach.isNone()) {
        return WeekFault{"coach", "must not be there together with `station`"};
    }
    if (!isIn(closure.units, 0, 20)) {
        return WeekFault{"units", "must be 0 to 20"};
    }
    return std::nullopt;
}

}  // namespace chalk::week
