#include "core/week/week_copy.h"

#include "core/week/slot_table.h"

#include <algorithm>
#include <optional>
#include <set>

namespace chalk::week {

namespace {

/// Whether somebody came then, or was expected to.
bool isRepeated(sessions::SessionState state)
{
    switch (state) {
    case sessions::SessionState::Planned:
    case sessions::SessionState::Printed:
    case sessions::SessionState::Recorded:
    case sessions::SessionState::Missed:
    case sessions::SessionState::CancelledInTime:
    case sessions::SessionState::CancelledLate:
        return true;
    case sessions::SessionState::Withdrawn:
        return false;
    }
    return false;
}

std::optional<std::size_t> coachIn(const WeekFacts& facts, base::CoachId id)
{
    const auto at = std::find_if(facts.coaches.begin(), facts.coaches.end(), [id](const CoachOfWeek& one) { return one.coach.id == id; });
    return at == facts.coaches.end() ? std::nullopt : std::optional(static_cast<std::size_t>(at - facts.coaches.begin()));
}

bool isAccepted(const ClientWeek& client, std::size_t coach)
{
    return std::any_of(client.coaches.begin(), client.coaches.end(), [coach](const AcceptedCoach& one) { return one.coach == coach; });
}

/// The client's times of the week before, on weekdays without a session in this one.
std::vector<Slot> timesOfLastWeek(const WeekFacts& facts, const ClientOfWeek& client)
{
    std::set<int> taken;
    for (const BookedSession& booked : client.sessions) {
        if (booked.session.date >= facts.monday) {
            taken.insert(booked.session.date.weekday());
        }
    }
    std::vector<Slot> times;
    for (const BookedSession& booked : client.sessions) {
        const int day = booked.session.date.weekday();
        const auto coach = coachIn(facts, booked.session.coach);
        if (booked.session.date < facts.monday && isRepeated(booked.session.state) && coach && taken.insert(day).second) {
            times.push_back({*coach, day * kDayMinutes + booked.session.startMinute});
        }
    }
    return times;
}

}  // namespace

WeekPlan copyOfLastWeek(const WeekFacts& facts, const WeekCase& week)
{
    SlotTable table(week.problem, week.booked);
    for (std::size_t client = 0; client < facts.clients.size(); ++client) {
        std::vector<Slot> times = timesOfLastWeek(facts, facts.clients[client]);
        for (std::size_t i = 0; i < week.problem.sessions.size(); ++i) {
            if (week.problem.sessions[i].client != client || table.plan()[i]) {
                continue;
            }
            const auto time = std::find_if(times.begin(), times.end(), [&](const Slot& slot) {
                return isAccepted(week.problem.clients[client], slot.coach) && table.fits(i, slot);
            });
            if (time != times.end()) {
                table.place(i, *time);
                times.erase(time);
            }
        }
    }
    return table.plan();
}

}  // namespace chalk::week
