#include "core/week/week_bookings.h"

#include <algorithm>

namespace chalk::week {

namespace {

using sessions::SessionKind;
using sessions::SessionState;

BookingKind kindOf(SessionKind kind)
{
    switch (kind) {
    case SessionKind::Training: return BookingKind::Session;
    case SessionKind::MovementScreen: return BookingKind::Screening;
    case SessionKind::Trial: return BookingKind::Trial;
    }
    return BookingKind::Session;
}

BookingState stateOf(SessionState state)
{
    switch (state) {
    case SessionState::Planned:
    case SessionState::Printed: return BookingState::Booked;
    case SessionState::Recorded: return BookingState::Done;
    case SessionState::Missed: return BookingState::Missed;
    case SessionState::CancelledInTime:
    case SessionState::CancelledLate:
    case SessionState::Withdrawn: return BookingState::Cancelled;
    }
    return BookingState::Booked;
}

/// A client and a coach, put into a booking.
void name(Booking& booking, const WeekFacts& facts, const ClientOfWeek& client, base::CoachId coach)
{
    booking.clientKey = std::to_string(client.client.id.value());
    booking.clientName = client.client.name;
    booking.coachKey = std::to_string(coach.value());
    for (const CoachOfWeek& one : facts.coaches) {
        if (one.coach.id == coach) {
            booking.coachName = one.coach.name;
        }
    }
}

Booking bookingOf(const WeekFacts& facts, const ClientOfWeek& client, const BookedSession& booked)
{
    const sessions::Session& session = booked.session;
    Booking booking;
    booking.code = session.code;
    booking.revision = booked.revision;
    name(booking, facts, client, session.coach);
    booking.date = session.date;
    booking.startMinute = session.startMinute;
    booking.minutes = session.minutes;
    booking.place = session.place;
    booking.kind = kindOf(session.kind);
    booking.state = stateOf(session.state);
    return booking;
}

/// Puts a booking where the plan wants it.
void propose(Booking& booking, const WeekFacts& facts, const ClientOfWeek& client, const BookingPlace& place)
{
    name(booking, facts, client, place.coach);
    booking.date = place.date;
    booking.startMinute = place.startMinute;
    booking.minutes = place.minutes;
    booking.place = place.place;
    booking.state = BookingState::Proposed;
}

}  // namespace

std::vector<Booking> bookingsOf(const WeekFacts& facts, const WeekCase& week, const WeekPlan& plan)
{
    std::vector<Booking> bookings;
    for (const ClientOfWeek& client : facts.clients) {
        for (const BookedSession& booked : client.sessions) {
            const auto origin = std::find_if(week.origins.begin(), week.origins.end(), [&](const WishOrigin& one) { return one.booked == booked.session.id; });
            const auto index = static_cast<std::size_t>(origin - week.origins.begin());
            if (booked.session.date < facts.monday) {
                continue;
            }
            Booking booking = bookingOf(facts, client, booked);
            if (origin != week.origins.end() && plan[index] && plan[index] != week.booked[index]) {
                propose(booking, facts, client, placeOf(facts, week, index, *plan[index]));
            }
            bookings.push_back(std::move(booking));
        }
    }
    for (std::size_t i = 0; i < plan.size(); ++i) {
        if (week.origins[i].booked.isNone() && plan[i]) {
            Booking booking;
            booking.code = week.problem.sessions[i].id;
            booking.kind = kindOf(week.origins[i].kind);
            propose(booking, facts, facts.clients[week.problem.sessions[i].client], placeOf(facts, week, i, *plan[i]));
            bookings.push_back(std::move(booking));
        }
    }
    return selectedBookings(bookings, {});
}

}  // namespace chalk::week
