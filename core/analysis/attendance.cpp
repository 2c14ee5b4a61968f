#include "core/analysis/attendance.h"

namespace chalk::analysis {

using sessions::SessionState;

std::optional<double> Attendance::share() const
{
    return counted() == 0 ? std::nullopt : std::optional(static_cast<double>(came) / counted());
}

std::optional<bool> wasComeTo(SessionState state)
{
    switch (state) {
    case SessionState::Recorded:
        return true;
    case SessionState::Missed:
    case SessionState::CancelledLate:
        return false;
    case SessionState::Planned:
    case SessionState::Printed:
    case SessionState::CancelledInTime:
    case SessionState::Withdrawn:
        return std::nullopt;
    }
    return std::nullopt;
}

Attendance attendanceOf(std::span<const sessions::Session> sessions, base::Date from, base::Date to)
{
    Attendance attendance;
    for (const sessions::Session& session : sessions) {
        if (session.date >= from && session.date <= to) {
            attendance.came += session.state == SessionState::Recorded ? 1 : 0;
            attendance.missed += session.state == SessionState::Missed ? 1 : 0;
            attendance.cancelledLate += session.state == SessionState::CancelledLate ? 1 : 0;
            attendance.cancelledInTime += session.state == SessionState::CancelledInTime ? 1 : 0;
        }
    }
    return attendance;
}

}  // namespace chalk::analysis
