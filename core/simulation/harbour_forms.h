#pragma once

#include "core/screens/screen_catalogue.h"
#include "core/simulation/harbour_people.h"

namespace chalk::simulation {

/// Puts a person's profile, intakes, letters, measures, field tests and movement screens into the document. Its name, days, sessions,
/// cautions and clearance are there already. `number` counts the people from 1.
void addForms(studio::DocumentClient& client, const Person& person, int number, base::Date today, const screens::ScreenCatalogue& guides);

}  // namespace chalk::simulation
