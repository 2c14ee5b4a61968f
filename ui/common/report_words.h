#pragma once

#include "core/sessions/session_report.h"

#include <QString>

namespace chalk::ui::common {

/// `7.5`, as effort is said: nothing behind the point where it is a whole number.
[[nodiscard]] QString effortText(int tenths);
/// The figures of a report in a row: `effort 7.5 of 10, 55 min, load 413, sleep 4 of 5`. Empty where there are none.
[[nodiscard]] QString reportFiguresText(const sessions::SessionReport& report);
/// The figures and the note in a row: `effort 7.5 of 10, 55 min, load 413; late from work`.
[[nodiscard]] QString reportText(const sessions::SessionReport& report);

}  // namespace chalk::ui::common
