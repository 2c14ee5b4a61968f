#pragma once

#include "core/base/date.h"
#include "core/studio/studio_document.h"

namespace chalk::simulation {

/// Puts what was said once of the later sessions into the document: effort and minutes of most, sleep, soreness and stress of some, a note
/// now and then. Sessions and their states are there already. `number` counts the people from 1.
void addReports(studio::DocumentClient& client, int number, base::Date today);

}  // namespace chalk::simulation
