#pragma once

#include "app/system_clock.h"

#include <QString>

#include <memory>

namespace chalk::app {

/// Opens the window on a studio and runs it to its end; answers the exit status. Where the studio cannot be opened, says so in a box of
/// its own and on standard error.
int runStudioWindow(int& argc, char** argv, const QString& studioFile, bool isNamed, const SystemClock& clock);

}  // namespace chalk::app
