#pragma once

#include "core/week/booking.h"

#include <QString>

#include <optional>
#include <vector>

namespace chalk::ui::common {

/// The sessions that stand, a line each, as they are sent to a client: `Tue 24 Nov 17:30, 60 min with Ines`. Proposed ones say that they are not
/// fixed yet; those that are over or called off are left out.
[[nodiscard]] QString bookingLines(const std::vector<chalk::week::Booking>& bookings);

/// A time with somebody.
struct SpokenSlot {
    base::Date date;
    int startMinute = 0;  ///< of the day
    QString coach;
};

/// What is sent to a client whose session goes elsewhere, or finds no place: nothing in `to`.
[[nodiscard]] QString changeMessage(const QString& firstName, const SpokenSlot& from, const std::optional<SpokenSlot>& to);

}  // namespace chalk::ui::common
