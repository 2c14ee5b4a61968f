#pragma once

#include "core/week/booking.h"

#include <QByteArray>
#include <QString>

#include <vector>

namespace chalk::exchange {

/// Bookings as CSV (RFC 4180), UTF-8, in the given order, under the header
/// `date,start,end,minutes,client,coach,place,kind,state,code`. Dates are `YYYY-MM-DD`, times `HH:MM`; an end after midnight is the time of
/// the next day. With `hasInitials`, clients by their initials alone.
[[nodiscard]] QByteArray bookingsCsvOf(const std::vector<week::Booking>& bookings, bool hasInitials = false);

/// A field of a record: in quotes where it holds a comma, a quote or a line end, its quotes doubled (RFC 4180, 2.6 and 2.7).
[[nodiscard]] QByteArray csvField(const QString& text);

}  // namespace chalk::exchange
