#include "core/planning/session_days.h"

#include <algorithm>
#include <tuple>

namespace chalk::planning {

namespace {

constexpr int kDays = 7;
constexpr int kDayMinutes = 24 * 60;
constexpr int kWeekMinutes = kDays * kDayMinutes;
constexpr int kDefaultBegin = 9 * 60;
constexpr int kDefaultEnd = 20 * 60;
/// Times tried on one day. Trying all would take too long and find nothing better: what matters is whether one day's time is before another's.
constexpr std::size_t kTimesPerDay = 6;
constexpr std::size_t kTimesPerDayOfMany = 4;
constexpr std::size_t kManySessions = 5;

/// Better is less: minutes missing to 48 hours, sessions outside preferred hours, unevenness, lateness.
using Worth = std::tuple<int, int, int, int>;

clients::WeekHours hoursOf(const clients::WeekHours& free)
{
    if (!free.isEmpty()) {
        return free;
    }
    clients::WeekHours all;
    for (int day = 0; day < kDays; ++day) {
        static_cast<void>(all.add({day, kDefaultBegin, kDefaultEnd}));
    }
    return all;
}

std::vector<lifts::Pattern> sharedPatterns(const TemplateSession& a, const TemplateSession& b)
{
    std::vector<lifts::Pattern> shared;
    std::copy_if(a.patterns.begin(), a.patterns.end(), std::back_inserter(shared), [&b](lifts::Pattern pattern) {
        return std::find(b.patterns.begin(), b.patterns.end(), pattern) != b.patterns.end();
    });
    return shared;
}

/// Tries every choice of days, and of a few times on each, and keeps the best.
class WeekSearch {
public:
    WeekSearch(const PlanTemplate& plan, const SessionHours& hours, int firstWeekday)
        : m_plan(plan), m_hours(hours), m_free(hoursOf(hours.free)), m_firstWeekday(firstWeekday)
    {
        for (int day = 0; day < kDays; ++day) {
            m_times.push_back(timesOn((firstWeekday + day) % kDays));
        }
        const auto usable = std::count_if(m_times.begin(), m_times.end(), [](const std::vector<int>& times) { return !times.empty(); });
        m_count = std::min(plan.sessions.size(), static_cast<std::size_t>(usable));
        for (std::size_t i = 0; i < plan.sessions.size(); ++i) {
            for (std::size_t j = 0; j < plan.sessions.size(); ++j) {
                m_isShared.push_back(i != j && !sharedPatterns(plan.sessions[i], plan.sessions[j]).empty());
            }
        }
    }

    [[nodiscard]] std::vector<WeekSlot> best()
    {
        place(0);
        return m_best;
    }

private:
    [[nodiscard]] std::vector<int> timesOn(int weekday) const
    {
        std::vector<int> wanted;
        for (const clients::DayHours& stretch : m_hours.preferred.stretches()) {
            if (stretch.weekday == weekday) {
                wanted.push_back(stretch.beginMinute);
            }
        }
        const auto stretches = m_free.stretches();
        for (const clients::DayHours& stretch : stretches) {
            if (stretch.weekday == weekday) {
                wanted.push_back(stretch.beginMinute);
                wanted.push_back(stretch.endMinute - m_hours.sessionMinutes);
            }
        }
        for (const clients::DayHours& stretch : stretches) {
            wanted.push_back(stretch.beginMinute);
        }
        std::vector<int> times;
        const std::size_t most = m_plan.sessions.size() < kManySessions ? kTimesPerDay : kTimesPerDayOfMany;
        for (const int minute : wanted) {
            const bool isNew = std::find(times.begin(), times.end(), minute) == times.end();
            if (isNew && times.size() < most && minute >= 0 && m_free.covers(weekday, minute, m_hours.sessionMinutes)) {
                times.push_back(minute);
            }
        }
        return times;
    }

    /// Puts the next session on a day from `day` on, counted from the first weekday.
    void place(int day)
    {
        if (m_slots.size() == m_count) {
            keepIfBetter();
            return;
        }
        for (; day < kDays; ++day) {
            for (const int minute : m_times[static_cast<std::size_t>(day)]) {
                m_slots.push_back({m_slots.size(), (m_firstWeekday + day) % kDays, minute});
                place(day + 1);
                m_slots.pop_back();
            }
        }
    }

    void keepIfBetter()
    {
        const Worth worth = worthOfSlots();
        if (m_best.empty() || worth < m_bestWorth) {
            m_best = m_slots;
            m_bestWorth = worth;
        }
    }

    [[nodiscard]] Worth worthOfSlots() const
    {
        int missing = 0;
        int unpreferred = 0;
        int longest = 0;
        int shortest = kWeekMinutes;
        int lateness = 0;
        for (const WeekSlot& one : m_slots) {
            int next = kWeekMinutes;
            for (const WeekSlot& other : m_slots) {
                const int gap = minutesBetween(one, other);
                next = gap > 0 ? std::min(next, gap) : next;
                if (m_isShared[one.session * m_plan.sessions.size() + other.session]) {
                    missing += std::max(0, kHoursBetween * 60 - gap);
                }
            }
            longest = std::max(longest, next);
            shortest = std::min(shortest, next);
            unpreferred += m_hours.preferred.covers(one.weekday, one.startMinute, m_hours.sessionMinutes) ? 0 : 1;
            lateness += (one.weekday - m_firstWeekday + kDays) % kDays * kDayMinutes + one.startMinute;
        }
        return {missing, unpreferred, longest - shortest, lateness};
    }

    const PlanTemplate& m_plan;
    const SessionHours& m_hours;
    clients::WeekHours m_free;
    int m_firstWeekday;
    std::vector<std::vector<int>> m_times;  ///< by day, counted from the first weekday
    std::vector<bool> m_isShared;           ///< by session × session
    std::size_t m_count = 0;
    std::vector<WeekSlot> m_slots;
    std::vector<WeekSlot> m_best;
    Worth m_bestWorth;
};

}  // namespace

int minutesBetween(const WeekSlot& first, const WeekSlot& second)
{
    const int minutes = (second.weekday - first.weekday) * kDayMinutes + second.startMinute - first.startMinute;
    return (minutes % kWeekMinutes + kWeekMinutes) % kWeekMinutes;
}

WeekOfSessions weekOf(const PlanTemplate& plan, const SessionHours& hours, int firstWeekday)
{
    WeekOfSessions week;
    week.slots = WeekSearch(plan, hours, firstWeekday).best();
    for (std::size_t session = week.slots.size(); session < plan.sessions.size(); ++session) {
        week.unplaced.push_back(session);
    }
    week.tooClose = closeSessionsOf(plan, week.slots);
    return week;
}

std::vector<CloseSessions> closeSessionsOf(const PlanTemplate& plan, const std::vector<WeekSlot>& slots)
{
    std::vector<CloseSessions> close;
    for (const WeekSlot& one : slots) {
        for (const WeekSlot& other : slots) {
            const int minutes = minutesBetween(one, other);
            auto shared = one.session == other.session ? std::vector<lifts::Pattern>()
                                                       : sharedPatterns(plan.sessions[one.session], plan.sessions[other.session]);
            if (!shared.empty() && minutes < kHoursBetween * 60) {
                close.push_back({one.session, other.session, minutes, std::move(shared)});
            }
        }
    }
    return close;
}

bool isInHours(const WeekSlot& slot, const SessionHours& hours)
{
    return hoursOf(hours.free).covers(slot.weekday, slot.startMinute, hours.sessionMinutes);
}

}  // namespace chalk::planning
