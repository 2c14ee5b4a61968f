#pragma once

#include "core/sessions/session.h"

#include <QString>

namespace chalk::ui::floor {

/// `missed`, `called off in time`, `called off late`; empty where the client came or is still to come.
[[nodiscard]] QString absenceText(sessions::SessionState state);
/// What a state is set by: `Mark as missed`, `Planned again`.
[[nodiscard]] QString stateAction(sessions::SessionState state);
/// What was done, for undo: `Joaquin missed`, `Joaquin called off late`.
[[nodiscard]] QString stateDone(sessions::SessionState state, const QString& name);
/// Whether calling off now is late: less than 24 hours before the start. Common practice; the coach decides.
[[nodiscard]] bool isLateNow(const sessions::Session& session, base::Date today, int minuteOfDay);

}  // namespace chalk::ui::floor
