#pragma once

#include "core/simulation/harbour_people.h"

namespace chalk::simulation {

/// The hours of the studio and its two coaches, and what is closed around the day of the scenario.
void addHours(studio::StudioDocument& studio);

/// Somebody's standing slots, the group that is wanted, and a few who would come more often than they have slots.
void addPlanning(studio::DocumentClient& client, const Person& person);

}  // namespace chalk::simulation
