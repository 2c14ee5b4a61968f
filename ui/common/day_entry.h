#pragma once

#include "core/base/date.h"

#include <QString>

#include <optional>

namespace chalk::ui::common {

/// Reads a day as people write it: `1974-03-05`, `5.3.1974`, `5/3/1974`, `5 Mar 1974`, `5 March 1974`: the day before the month, the year in
/// four digits. Nothing where it is no day. What was read is shown beside the field, so that a month taken for a day is seen.
[[nodiscard]] std::optional<base::Date> dayOfEntry(const QString& text);
/// `5 Mar 1974`, which dayOfEntry reads back.
[[nodiscard]] QString entryOfDay(base::Date day);

}  // namespace chalk::ui::common
