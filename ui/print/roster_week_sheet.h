#pragma once

#include "core/week/booking.h"
#include "ui/print/paper.h"
#include "ui/print/sheet.h"

#include <QString>

#include <array>
#include <vector>

namespace chalk::ui::print {

/// A week for the wall, or for one coach.
struct RosterWeek {
    base::Date monday;
    QString title;                               ///< the studio's name, or the coach's
    std::vector<chalk::week::Booking> bookings;  ///< by date and start; those that were called off are left out
    std::array<QString, 7> notes;                ///< what is said of each day: `Closes 12:00, harbour lights`
    bool isOneCoach = false;                     ///< the coach's name is not repeated
    bool hasInitialsOnly = false;
};

/// The week on A4 or Letter, lying: a column for each day, in it the times with coach and clients. Days that do not fit go on on a further page. A
/// Sunday without anything is left out.
[[nodiscard]] std::vector<Sheet> rosterWeekSheets(const RosterWeek& week, PaperSize paper);

}  // namespace chalk::ui::print
