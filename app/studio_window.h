#pragma once

#include "app/system_clock.h"
#include "core/seal/passphrase.h"

#include <QString>

#include <memory>

namespace chalk::app {

/// Opens the window on a studio and runs it to its end; answers the exit status. A sealed one opens by `passphrase`; where that is empty or another one, the
/// program asks. Where the studio cannot be opened, says so in a box of
/// its own and on standard error.
int runStudioWindow(int& argc, char** argv, const QString& studioFile, bool isNamed, const seal::Passphrase& passphrase, const SystemClock& clock);

}  // namespace chalk::app
