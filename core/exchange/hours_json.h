#pragma once

#include "core/clients/availability.h"
#include "core/exchange/json_reading.h"

#include <QJsonArray>

namespace chalk::exchange {

/// Minutes after midnight of `07:30`, 0 to 1440; 24:00 is the end of a day.
[[nodiscard]] int minuteAt(ObjectReader& reader, const char* field);
/// `07:30`, for 0 to 1440.
[[nodiscard]] QString textOfMinute(int minute);
/// `mon` to `sun`, as 0 to 6.
[[nodiscard]] int weekdayAt(ObjectReader& reader, const char* field);
[[nodiscard]] QString textOfWeekday(int weekday);

/// Hours of a week: a list of `{"day": "mon", "from": "07:00", "to": "12:30"}`; no hours where the field is missing.
[[nodiscard]] clients::WeekHours hoursAt(ObjectReader& parent, const char* field);
[[nodiscard]] QJsonArray toJson(const clients::WeekHours& hours);

}  // namespace chalk::exchange
