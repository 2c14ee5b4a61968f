#pragma once

#include "core/week/left_over.h"
#include "core/week/week_case.h"
#include "core/week/week_checker.h"

#include <QString>

namespace chalk::ui::week {

// The rules of the week and its times in words, in one place.

/// What the words are about. Outlives the call.
struct WeekNames {
    const chalk::week::WeekFacts& facts;
    const chalk::week::WeekCase& week;

    [[nodiscard]] QString firstName(std::size_t wish) const;
    [[nodiscard]] QString name(std::size_t wish) const;
    [[nodiscard]] QString coach(std::size_t coach) const;
};

/// `Thu 17:30`, of minutes since Monday.
[[nodiscard]] QString slotText(int start);
/// `Thursday at 17:30`.
[[nodiscard]] QString longSlotText(int start);
/// `23 – 28 November`, `30 November – 5 December`, from the first to the last day.
[[nodiscard]] QString rangeText(base::Date first, base::Date last);
/// `2nd of 3`.
[[nodiscard]] QString numberOfText(int number, int of);

/// A broken rule in one sentence, with its numbers: `3 need a rack at 17:30, there are 2.`
[[nodiscard]] QString faultText(const chalk::week::PlanFault& fault, const WeekNames& names);

/// A reason with the icon that stands before it.
struct LeftOverWords {
    QString icon;
    QString reason;
};
/// Why a session has no place: `Wants Thursday at 17:30. Both racks are taken.`
[[nodiscard]] LeftOverWords leftOverWords(const chalk::week::LeftOver& leftOver, const WeekNames& names);

}  // namespace chalk::ui::week
