#pragma once

#include "core/base/date.h"

namespace chalk::ui::common {

/// What day and time it is. Only main knows a real clock; with the day pinned, the day stands still and the time goes on.
class Clock {
public:
    virtual ~Clock() = default;

    [[nodiscard]] virtual base::Date today() const = 0;
    /// Minutes since midnight, 0 to 1439.
    [[nodiscard]] virtual int minuteOfDay() const = 0;
};

}  // namespace chalk::ui::common
