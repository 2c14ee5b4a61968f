#include "core/store/week_changes.h"

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
            changes.moved.push_back({week.origins[i].booked, place});
        }
    }
    return changes;
}

}  // namespace chalk::store
