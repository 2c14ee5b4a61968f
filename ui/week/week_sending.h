#pragma once

#include "core/week/booking.h"

#include <QString>

#include <optional>
#include <vector>

class QWidget;

namespace chalk::ui::common {
class Dialogs;
}

namespace chalk::ui::week {

/// Whose week goes out. The name is in the file's, and nobody's names means everybody's week.
struct WeekRecipient {
    chalk::week::BookingFilter filter;
    QString name;
};

/// A week as it leaves the program: to a file that is asked for.
struct WeekToSend {
    base::Date monday;
    std::vector<chalk::week::Booking> bookings;  ///< of everybody
    QString atUtc;                               ///< now
};

/// What became of it.
struct SendingOutcome {
    QString failure;  ///< empty where it was written or called off
    QString file;     ///< empty where it was not written
};

/// As iCalendar: a client's calendar names the coaches, any other one the clients.
[[nodiscard]] SendingOutcome saveCalendar(const WeekToSend& week, const WeekRecipient& recipient, common::Dialogs& dialogs, QWidget* parent);
/// As CSV.
[[nodiscard]] SendingOutcome saveTable(const WeekToSend& week, common::Dialogs& dialogs, QWidget* parent);
/// As lines on the clipboard; how many sessions are on it.
int copyLines(const WeekToSend& week, const WeekRecipient& recipient);

}  // namespace chalk::ui::week
