#pragma once

#include "core/lifts/catalogue.h"
#include "core/simulation/chance.h"
#include "core/simulation/simulated_lifter.h"
#include "core/studio/studio_document.h"

#include <vector>

namespace chalk::simulation {

/// Bars, plates, dumbbells, kettlebells and stacks of a small studio, in kg, and a bar and dumbbells in lb.
[[nodiscard]] std::vector<studio::StudioEquipment> studioEquipment();

/// An exercise and the equipment that it is done with.
struct LiftChoice {
    const char* exercise;
    const char* equipment;
};

/// The set-up of a lift: what the catalogue says of the exercise, the equipment of that key, and the person.
[[nodiscard]] progression::LiftSetup setupOf(const lifts::Exercise& exercise, const std::vector<studio::StudioEquipment>& equipment,
                                             const char* equipmentKey, const clients::Client& client);

/// A first strength for the lift that suits the person: body mass × a share by pattern and kind × `factor`.
[[nodiscard]] Talent talentFor(const lifts::Exercise& exercise, const progression::LiftSetup& setup, double factor);

/// An opaque code for a session.
[[nodiscard]] std::string sessionCode(Chance& chance);

}  // namespace chalk::simulation
