#pragma once

#include "core/lifts/catalogue.h"
#include "core/planning/starting_plan.h"
#include "core/progression/event.h"
#include "core/progression/lift_state.h"
#include "core/tables/table_content.h"

#include <functional>
#include <span>
#include <string>
#include <vector>

namespace chalk::tables {

/// What was done of one exercise on one day.
struct PastExposure {
    const lifts::Exercise* exercise = nullptr;
    progression::Exposure exposure;
};

/// One session of the past: all that was done on a day, in the order of the file.
struct PastSession {
    base::Date day;
    int minutes = 60;
    std::string note;
    std::vector<PastExposure> done;
};

/// Answers the exercise of the catalogue for an index of TableContent::exercises; null for one that is left out.
using ExerciseChoice = std::function<const lifts::Exercise*(std::int32_t)>;

/// The sets of one person by day; `unit` is what the loads become: a load in the other unit is the nearest hundredth. Days on which nothing but
/// exercises that are left out was done make no session.
[[nodiscard]] std::vector<PastSession> pastSessionsOf(const TableContent& content, std::int32_t person, std::span<const ListedSet> sets, const ExerciseChoice& choice,
                                                      base::MassUnit unit);

/// What a lift is begun or gone on with when its past is known and no screen was taken.
struct PastSetup {
    std::string equipmentKey;       ///< of the studio; empty where it has none of that kind
    progression::LiftSetup setup;
};

/// A lift as it begins with its past: what is loaded begins at Base load with the load of the first day, or the next lighter one that the equipment
/// gives; what is not loaded begins at Pattern. Where the studio has no such equipment, the loads that were done are what it gives. Where the body mass is not
/// known, no share of the body counts.
[[nodiscard]] PastSetup pastSetupOf(const lifts::Exercise& exercise, base::MassUnit unit, std::optional<base::Load> bodyMass,
                                    std::span<const planning::EquipmentOnHand> equipment, const std::vector<PastSession>& past);

/// The change to another kit, with its start load.
[[nodiscard]] progression::Swap swapToKit(const progression::Kit& kit);

}  // namespace chalk::tables
