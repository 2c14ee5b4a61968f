#pragma once

#include "core/direction/client_plan.h"
#include "core/direction/plan_calendar.h"
#include "core/direction/plan_review.h"

#include <QString>

#include <cstdint>
#include <span>
#include <vector>

namespace chalk::ui::direction {

/// Days without training: the studio is closed, or the client is away. Both ends count.
struct AwayDays {
    base::Date first;
    base::Date last;
    bool isStudioClosed = false;
};

/// Why a week of a plan is taken for missed before anybody said so.
enum class MissedReason : std::uint8_t { None, NothingDone, StudioClosed, ClientAway };

/// By week of the plan. A week that is over and in which nothing was done; else one whose days from Monday to Friday are all away, closed days first.
/// `done` is by lift of the plan.
[[nodiscard]] std::vector<MissedReason> missedReasons(const chalk::direction::BlockPlan& plan, std::span<const std::vector<chalk::direction::DoneSet>> done,
                                                      std::span<const AwayDays> away, base::Date today);

/// What becomes of a plan when weeks are missed.
struct MissedPreview {
    chalk::direction::BlockPlan plan;
    std::vector<std::size_t> leftOut;  ///< weeks of the plan before, counted from 0
    int weeksLater = 0;                ///< it ends so many weeks later
};
[[nodiscard]] MissedPreview missedPreview(const chalk::direction::BlockPlan& plan, std::span<const base::Date> mondays, chalk::direction::MissedWeeks way);

/// A week of the calendar: what the plan had there, and what it has there after; empty for nothing.
struct MissedRow {
    base::Date monday;
    QString before;
    QString shifted;
    QString squeezed;
};
/// All weeks from the first to the last of the three. Weeks are written as `5 Build, lighter`, with the numbers that they had before; missed ones say so.
[[nodiscard]] std::vector<MissedRow> missedRows(const chalk::direction::BlockPlan& plan, std::span<const base::Date> mondays);

/// `Ends on Sun 28 Feb, 1 week later. Nothing is left out.`
[[nodiscard]] QString missedText(const MissedPreview& preview, const chalk::direction::BlockPlan& before);
[[nodiscard]] QString missedReasonText(MissedReason reason);

}  // namespace chalk::ui::direction
