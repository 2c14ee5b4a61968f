#pragma once

#include "core/base/date.h"
#include "core/sessions/session.h"

#include <optional>
#include <span>

namespace chalk::analysis {

/// What became of the sessions of a span that are over.
struct Attendance {
    int came = 0;
    int missed = 0;
    int cancelledLate = 0;
    int cancelledInTime = 0;  ///< said in time: not counted against anybody

    /// Those that count: came, missed and called off late.
    [[nodiscard]] int counted() const { return came + missed + cancelledLate; }
    /// came / counted, 0 to 1; nothing where none counts.
    [[nodiscard]] std::optional<double> share() const;
    bool operator==(const Attendance&) const = default;
};

/// Whether a session in that state was come to; nothing where it does not count: it is still to come, was called off in time or withdrawn.
[[nodiscard]] std::optional<bool> wasComeTo(sessions::SessionState state);

/// Of the sessions from `from` to `to`, both days in. Screens and trials count like trainings. All 0 where `to` is before `from`.
[[nodiscard]] Attendance attendanceOf(std::span<const sessions::Session> sessions, base::Date from, base::Date to);

}  // namespace chalk::analysis
