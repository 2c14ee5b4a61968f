#pragma once

#include "ui/shell/ledge_day.h"

#include <functional>
#include <vector>

class QSettings;

namespace chalk::ui::common {
class ActHistory;
class Clock;
class Look;
}

namespace chalk::ui::shell {

/// What the window works with. Everything outlives the window.
struct WindowServices {
    common::Look& look;
    common::ActHistory& acts;
    const common::Clock& clock;
    QSettings& settings;
    QString studioName;
    /// Today's sessions as they stand now; read at the start, after each change and at midnight.
    std::function<std::vector<LedgeSession>()> sessionsToday;
};

}  // namespace chalk::ui::shell
