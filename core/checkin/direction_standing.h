#pragma once

#include "core/base/date.h"

#include <optional>

namespace chalk::checkin {

/// After a decision about the direction the talk rests for so many days: a cycle of twelve weeks. Common practice.
inline constexpr int kDirectionRestDays = 84;

/// What was agreed on with a client about the time after the beginner months, up to a day.
struct DirectionStanding {
    std::optional<base::Date> planEnd;     ///< the last day of the plan that was begun last, past or to come
    std::optional<base::Date> lastChoice;  ///< the last day on which the direction was decided on at a check-in

    bool operator==(const DirectionStanding&) const = default;
};

[[nodiscard]] bool isPlanRunning(const DirectionStanding& standing, base::Date day);

/// The last day of a plan that was over before `day` and is still to be reviewed: nothing was begun since, and nothing decided on that day or later.
[[nodiscard]] std::optional<base::Date> planToReview(const DirectionStanding& standing, base::Date day);

/// Whether the talk about the direction is not due, whatever the rule says: a plan runs, or the last one was reviewed and the direction was decided on
/// less than kDirectionRestDays ago.
[[nodiscard]] bool isDirectionSettled(const DirectionStanding& standing, base::Date day);

}  // namespace chalk::checkin
