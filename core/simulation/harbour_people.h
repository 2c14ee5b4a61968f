#pragma once

#include "core/simulation/lift_story.h"
#include "core/simulation/simulated_studio.h"

#include <array>
#include <string>
#include <vector>

namespace chalk::simulation {

/// When somebody comes: a weekday (0 is Monday), a time, a coach and a place.
struct Slot {
    int weekday = 0;
    int startMinute = 0;
    int coach = 1;  ///< 1 Ines, 2 Tobias
    const char* place = "Floor";
    int capacity = 1;
    int minutes = 60;
};

/// One person of the demo studio, as the scenario wants them.
struct Person {
    const char* name;
    int age;
    double bodyMass;
    const char* goal;
    int coach;
    int weeksHere;                       ///< since the first session
    double strength;                     ///< 1 is an untrained adult
    int comes;                           ///< per cent of sessions that are kept
    std::vector<Slot> slots;
    std::vector<LiftChoice> choices;     ///< in the order of the patterns; none for somebody without lifts
    std::vector<Ending> endings;         ///< of each choice
    base::MassUnit unit = base::MassUnit::Kilogram;
};

/// The eighteen, in the order of the scenario.
[[nodiscard]] std::vector<Person> harbourPeople();

/// The figures of the policy that are somebody's own, or a lift's.
void addPolicy(progression::Policy& policy, const std::string& name, lifts::Pattern pattern);

/// Cautions, clearance, and what else is particular to somebody, put into the document.
void addParticulars(studio::DocumentClient& client, base::Date today);

/// What is particular to somebody's lift, put into the story: what coaches do to it, its pains, lighter weeks, turns and slips.
void addEvents(LiftStory& story, const std::string& name, base::Date today);

}  // namespace chalk::simulation
