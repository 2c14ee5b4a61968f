#pragma once

#include "core/lifts/catalogue.h"
#include "core/simulation/harbour_people.h"

#include <vector>

namespace chalk::simulation {

/// The plans that one of the eighteen was begun with, by day, for the choices that are counted in repetitions; their lifts are numbers of the choices, from
/// 1. Empty for most. The singles are for `settlePlans`.
[[nodiscard]] std::vector<direction::ClientPlan> plansOf(const Person& person, const lifts::Catalogue& catalogue, base::Date today);

/// What the lift of a choice (from 0) has of the plans.
[[nodiscard]] std::vector<PlanPart> partsOf(const std::vector<direction::ClientPlan>& plans, std::size_t choice);

/// Puts the plans into the document, with the singles that the lifts' logs say, and what was tested in them.
void settlePlans(studio::DocumentClient& client, std::vector<direction::ClientPlan> plans);

}  // namespace chalk::simulation
