#pragma once

#include "core/week/booking.h"

#include <QByteArray>
#include <QString>
#include <QTimeZone>

#include <optional>
#include <vector>

namespace chalk::exchange {

/// Whose calendar it is, which decides whose name an event carries.
enum class CalendarOwner { Coach, Client };

/// When a calendar is written: UTC.
struct CalendarStamp {
    base::Date date;
    int second = 0;  ///< of the day, 0 to 86399
};

/// The stamp of a moment such as `2026-11-24T08:42:00Z`; midnight of `otherwise` where the text is no moment.
[[nodiscard]] CalendarStamp stampOf(const QString& utc, base::Date otherwise);

struct CalendarOptions {
    CalendarStamp stamp;
    CalendarOwner owner = CalendarOwner::Coach;
    bool hasInitials = false;       ///< clients by their initials alone
    QString title = QStringLiteral("%1");  ///< what an event is called; %1 is the client's name, or the coach's in a client's calendar
    /// Nothing: floating times, which mean the wall clock wherever they are read (RFC 5545, 3.3.5, form 1). That is what a studio says
    /// and needs no rules of a zone, so it is what is usual. With a zone, times are local times of it (form 3) and the calendar brings the
    /// zone's changes from the one in force before the first event to the last event. Must be valid.
    std::optional<QTimeZone> zone;
};

/// Bookings as an iCalendar object (RFC 5545), UTF-8, in the given order. UID is the booking's code at `chalkrung`, SEQUENCE its revision; a
/// proposed one is TENTATIVE, a cancelled one CANCELLED, all others CONFIRMED; CATEGORIES is its kind. There is no METHOD: without an organizer
/// none may be named (RFC 5546, 3.2). A wall-clock time that a change of the clock skips is written as it is.
[[nodiscard]] QByteArray icalendarOf(const std::vector<week::Booking>& bookings, const CalendarOptions& options);

/// A content line with its CRLF, folded so that none is longer than 75 octets without it and no character of UTF-8 is split (3.1).
[[nodiscard]] QByteArray foldedLine(const QByteArray& line);

/// A text as a value (3.3.11): backslash, semicolon and comma escaped, line ends as `\n`, control characters left out.
[[nodiscard]] QByteArray escapedText(const QString& text);

}  // namespace chalk::exchange
