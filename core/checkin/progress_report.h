#pragma once

#include "core/lifts/exercise.h"
#include "core/progression/event.h"
#include "core/progression/lift_state.h"
#include "core/sessions/session.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace chalk::checkin {

/// What was done of a lift on one day, at the heaviest working load.
struct WorkDone {
    base::Date date;
    base::Load load;
    int sets = 0;    ///< at that load
    int amount = 0;  ///< the least of those sets: reps, seconds or metres
    std::optional<base::Seconds> rest;  ///< the longest that was written down

    bool operator==(const WorkDone&) const = default;
};

/// Nothing where there is no working set.
[[nodiscard]] std::optional<WorkDone> workDoneOf(base::Date date, const progression::Exposure& exposure);

/// One entry of a lift's history, as a report needs it.
struct ReportEntry {
    base::Date date;
    std::optional<WorkDone> work;
    int pain = 0;  ///< 0 to 10
    progression::Stage stageAfter = progression::Stage::Pattern;
    int cycleAfter = 1;
};

/// A lift with its history, by date.
struct ReportHistory {
    std::string name;
    base::MassUnit unit = base::MassUnit::Kilogram;
    lifts::Measure measure = lifts::Measure::Reps;
    lifts::EquipmentKind equipment = lifts::EquipmentKind::None;
    int pieces = 1;
    std::vector<ReportEntry> entries;
    std::optional<progression::Prescription> next;  ///< nothing while nothing may be done
    int nextAmount = 0;  ///< of `next`, in the measure
};

/// Where a lift stood when the report begins, where it stands now, and the way between.
struct ReportLift {
    std::string name;
    base::MassUnit unit = base::MassUnit::Kilogram;
    lifts::Measure measure = lifts::Measure::Reps;
    lifts::EquipmentKind equipment = lifts::EquipmentKind::None;
    int pieces = 1;
    progression::Stage stageThen = progression::Stage::Pattern;
    progression::Stage stageNow = progression::Stage::Pattern;
    int cycleThen = 1;
    int cycleNow = 1;
    std::vector<WorkDone> work;  ///< by date; the first one is where it stood at the beginning
    std::optional<progression::Prescription> next;
    int nextAmount = 0;

    /// The load's rise in thousandths of what it was; nothing without two loads above 0, the first and the last.
    [[nodiscard]] std::optional<int> riseMilli() const;
};

/// A week's sessions that were come to or not.
struct ReportWeek {
    base::Date monday;
    std::vector<bool> came;  ///< in their order; called off in time is not counted
};

/// All that a progress report says; how it is worded and drawn is not said here.
struct ProgressReport {
    std::string studioName;
    std::string clientName;
    std::string coachName;
    base::Date from;
    base::Date to;
    std::vector<ReportWeek> weeks;   ///< every week, from that of `from` to that of `to`
    std::vector<ReportLift> lifts;   ///< those with an entry up to `to`, in the order they were given
    std::optional<int> mostPain;     ///< of the entries in between, 0 to 10

    [[nodiscard]] int came() const;
    [[nodiscard]] int counted() const;
    /// Whether there is anything to report: lifts with an entry, or sessions that count.
    [[nodiscard]] bool hasRecords() const { return !lifts.empty() || counted() > 0; }
    /// The lifts with a load at both ends, those that rose most by their share first: indices of `lifts`.
    [[nodiscard]] std::vector<std::size_t> byRise() const;
};

/// What a report is made from. The values are the caller's and only read.
struct ReportRequest {
    std::string studioName;
    std::string clientName;
    std::string coachName;
    base::Date from;
    base::Date to;  ///< not before `from`; it counts
    std::span<const sessions::Session> sessions;
    std::span<const ReportHistory> lifts;
};

/// Where a lift stood at the beginning is what the last entry before `from` left, else the first one in between.
[[nodiscard]] ProgressReport progressReportOf(const ReportRequest& request);

}  // namespace chalk::checkin
