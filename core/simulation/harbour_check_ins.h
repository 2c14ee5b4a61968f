#pragma once

#include "core/studio/studio_document.h"

namespace chalk::simulation {

/// What was decided about somebody at the check-ins of the past weeks; the events of those choices are in the logs of the lifts.
void addDecisions(studio::DocumentClient& client, base::Date today);

}  // namespace chalk::simulation
