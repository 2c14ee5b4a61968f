#pragma once

#include "ui/common/week_words.h"

#include "core/week/week_case.h"

#include <QString>

namespace chalk::ui::week {

// What the page of the week says of times, numbers and broken rules; the sentences are those of ui/common.

/// What the people and things of a week are called on the page: clients by their first name.
[[nodiscard]] common::WeekNames namesOf(const chalk::week::WeekFacts& facts, const chalk::week::WeekCase& week);
/// The first name of a session's client.
[[nodiscard]] QString firstNameOf(const chalk::week::WeekFacts& facts, const chalk::week::WeekCase& week, std::size_t wish);

/// `23 – 28 November`, `30 Nov – 5 Dec`, from the first to the last day.
[[nodiscard]] QString rangeText(base::Date first, base::Date last);
/// `November 2026`.
[[nodiscard]] QString monthText(base::Date day);
/// `2nd of 3`.
[[nodiscard]] QString numberOfText(int number, int of);
/// A broken rule in one sentence; of a locked session with the key that unlocks it.
[[nodiscard]] QString faultText(const chalk::week::PlanFault& fault, const chalk::week::WeekFacts& facts, const chalk::week::WeekCase& week);
/// The icon of what keeps a session without a place.
[[nodiscard]] QString iconOf(const chalk::week::LeftOver& leftOver);

}  // namespace chalk::ui::week
