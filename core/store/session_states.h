#pragma once

#include "core/sessions/session.h"

#include <QString>

namespace chalk::store {

/// The states for which `holds`, as a list of SQL: `('planned', 'printed')`.
[[nodiscard]] QString statesWhere(bool (*holds)(sessions::SessionState));

}  // namespace chalk::store
