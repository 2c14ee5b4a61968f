#pragma once

#include "core/week/booking.h"

namespace chalk::test {

/// Maya Lind with Ada Quist on Tuesday 24 November 2026 from 17:30 to 18:30, in the big room.
inline week::Booking usualBooking()
{
    week::Booking booking;
    booking.code = "k7mq2xwd";
    booking.clientKey = "3";
    booking.clientName = "Maya Lind";
    booking.coachKey = "1";
    booking.coachName = "Ada Quist";
    booking.date = base::Date::parse("2026-11-24").value();
    booking.startMinute = 17 * 60 + 30;
    booking.place = "Ketch Lane 4, big room";
    return booking;
}

}  // namespace chalk::test
