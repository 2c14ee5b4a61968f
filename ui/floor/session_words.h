#pragma once

#include "core/sessions/session.h"
#include "core/sessions/skip_reason.h"

#include <QString>

#include <string>

namespace chalk::ui::floor {

/// `missed`, `called off in time`, `called off late`; empty where the client came or is still to come.
[[nodiscard]] QString absenceText(sessions::SessionState state);
/// What a state is set by: `Mark as missed`, `Planned again`.
[[nodiscard]] QString stateAction(sessions::SessionState state);
/// What was done, for undo: `Joaquin missed`, `Joaquin called off late`.
[[nodiscard]] QString stateDone(sessions::SessionState state, const QString& name);
/// Why a lift is left out, from what is kept of it: `no time`, or the coach's own words.
[[nodiscard]] QString skipReasonText(const std::string& kept);
/// What a reason is chosen by, with its letter: `&No time`.
[[nodiscard]] QString skipReasonAction(sessions::SkipReason reason);
/// Whether calling off now is late: less than 24 hours before the start. Common practice; the coach decides.
[[nodiscard]] bool isLateNow(const sessions::Session& session, base::Date today, int minuteOfDay);

}  // namespace chalk::ui::floor
