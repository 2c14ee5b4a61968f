#include "core/store/week_changes.h"

#include <algorithm>

namespace chalk::store {

namespace {

sessions::Session sessionAt(const week::BookingPlace& place, const week::WishOrigin& origin)
{
    sessions::Session session;
    session.client = origin.client;
    session.coach = place.coach;
    session.date = place.date;
    session.startMinute = place.startMinute;
    session.minutes = place.minutes;
    session.place = place.place;
    session.placeCapacity = place.placeCapacity;
    session.kind = origin.kind;
    return session;
}

}  // namespace

week::BookingPlace placeOf(const sessions::Session& session)
{
    return {session.coach, session.date, session.startMinute, session.minutes, session.place, session.placeCapacity, session.isLocked};
}

std::optional<SeenBooking> seenBooking(const week::WeekFacts& facts, base::ClientId client, base::SessionId session)
{
    for (const week::ClientOfWeek& one : facts.clients) {
        if (one.client.id != client) {
            continue;
        }
        const auto at = std::find_if(one.sessions.begin(), one.sessions.end(), [session](const week::BookedSession& booked) { return booked.session.id == session; });
        return at == one.sessions.end() ? std::nullopt : std::optional(SeenBooking{placeOf(at->session), at->session.state});
    }
    return std::nullopt;
}

BookingChanges changesTo(const week::WeekFacts& facts, const week::WeekCase& week, const week::WeekPlan& plan, const SessionChoice& isMeant)
{
    BookingChanges changes;
    for (std::size_t i = 0; i < plan.size(); ++i) {
        if (!plan[i] || plan[i] == week.booked[i] || (isMeant && !isMeant(i))) {
            continue;
        }
        const week::BookingPlace place = week::placeOf(facts, week, i, *plan[i]);
        if (week.origins[i].booked.isNone()) {
            changes.booked.push_back(sessionAt(place, week.origins[i]));
        } else {
            const auto seen = seenBooking(facts, week.origins[i].client, week.origins[i].booked);
            changes.moved.push_back({week.origins[i].booked, place, seen ? std::optional(seen->place) : std::nullopt});
        }
    }
    return changes;
}

}  // namespace chalk::store
