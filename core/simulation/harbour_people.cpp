#include "core/simulation/harbour_people.h"

namespace chalk::simulation {

namespace {

constexpr int kTue = 1;
constexpr int kWed = 2;
constexpr int kThu = 3;
constexpr int kFri = 4;
constexpr int kMon = 0;
constexpr int kSat = 5;
constexpr int kSun = 6;

constexpr int at(int hour, int minute = 0)
{
    return hour * 60 + minute;
}

/// Choices in the order of the patterns: for somebody at home with bars, for dumbbells and machines, and for a careful start.
std::vector<LiftChoice> barLifts()
{
    return {{"back_squat", "bar"},         {"trap_bar_deadlift", "trap_bar"}, {"bench_press", "bar"}, {"chest_rested_row", "bar"},
            {"overhead_press", "light_bar"}, {"pulldown", "pulldown_stack"},    {"split_squat", "dumbbells"}, {"suitcase_carry", "kettlebells"}};
}

std::vector<LiftChoice> mixedLifts()
{
    return {{"goblet_squat", "kettlebells"},         {"kettlebell_deadlift", "kettlebells"}, {"dumbbell_bench_press", "dumbbells"},
            {"machine_row", "row_stack"},            {"angled_cable_press", "press_stack"},  {"pulldown", "pulldown_stack"},
            {"split_squat", "dumbbells"},            {"farmer_carry", "dumbbells"}};
}

/// The mixed lifts with nothing that is done lying flat.
std::vector<LiftChoice> uprightLifts()
{
    std::vector<LiftChoice> lifts = mixedLifts();
    lifts[2] = {"incline_dumbbell_press", "dumbbells"};
    return lifts;
}

std::vector<LiftChoice> gentleLifts()
{
    return {{"box_squat", "light_bar"}, {"romanian_deadlift", "light_bar"}, {"floor_press", "dumbbells"}, {"machine_row", "row_stack"},
            {"half_kneeling_press", "dumbbell"}, {"pulldown", "pulldown_stack"}, {"step_up", "dumbbells"}, {"farmer_carry", "dumbbells"}};
}

/// The gentle lifts with nothing that bends the knee deep.
std::vector<LiftChoice> kneeLifts()
{
    std::vector<LiftChoice> lifts = gentleLifts();
    lifts[6] = {"hip_dominant_single_leg_deadlift", "kettlebells"};
    return lifts;
}

std::vector<LiftChoice> climberLifts()
{
    return {{"back_squat", "bar"}, {"trap_bar_deadlift", "trap_bar"}, {"push_up", "body"}, {"ring_row", "body"},
            {"dumbbell_overhead_press", "dumbbells"}, {"assisted_pull_up", "pull_up_help"}, {"reverse_lunge", "dumbbells"}, {"suitcase_carry", "kettlebells"}};
}

std::vector<LiftChoice> poundLifts()
{
    return {{"back_squat", "bar_lb"}, {"conventional_deadlift", "bar_lb"}, {"dumbbell_bench_press", "dumbbells_lb"}, {"bent_row", "bar_lb"},
            {"dumbbell_overhead_press", "dumbbells_lb"}, {"assisted_pull_up", "pull_up_help"}, {"split_squat", "dumbbells_lb"}, {"farmer_carry", "dumbbells_lb"}};
}

std::vector<Person> peopleOfInes()
{
    return {
        {"Joaquin Ferro", 45, 84, "Strong, back-safe", 1, 29, 1.25, 91, {{kTue, at(9), 1, "Rack 1", 4}, {kThu, at(9), 1, "Rack 1", 4}}, barLifts(),
         {{5, 2}, {4, 2}, {6}, {7}, {4, 1, true}, {5, 2}, {3}, {4}}},
        {"Adaeze Quill", 33, 68, "Back to running", 1, 11, 0.8, 90, {{kTue, at(9), 1, "Floor", 4}, {kSat, at(9), 1, "Floor", 4}}, mixedLifts(),
         {{3}, {3}, {2}, {4}, {2}, {3}, {2}, {3}}},
        {"Callum Strand", 19, 76, "Build muscle for work", 1, 21, 1.15, 92, {{kTue, at(9), 1, "Rack 2", 4}, {kThu, at(9), 1, "Rack 2", 4}}, barLifts(),
         {{6}, {5}, {6}, {5}, {5}, {4}, {4}, {5}}},
        {"Marit Eskelin", 52, 70, "Start lifting", 1, 1, 0.8, 100, {{kTue, at(12), 1, "Movement screen", 1, 50}}, {{"goblet_squat", "kettlebells"}, {"kettlebell_deadlift", "kettlebells"}},
         {{2}, {1}}},
        {"Sefa Reid", 27, 74, "Coastal rowing", 1, 30, 1.3, 99, {{kTue, at(17, 30), 1, "Rack 1", 1}, {kFri, at(7), 1, "Rack 1", 1}}, barLifts(),
         {{4, 3}, {4, 3}, {4, 2}, {4, 3}, {4, 2}, {4, 2}, {4, 2}, {7, 2}}},
        {"Hanne Skov-Adler", 57, 66, "Bone density", 1, 24, 0.85, 94, {{kTue, at(7), 1, "Rack 2", 4}, {kThu, at(7), 1, "Rack 2", 4}}, gentleLifts(),
         {{4}, {5}, {4}, {5}, {3}, {4}, {3}, {4}}},
        {"Noor Castell", 24, 63, "Physique", 1, 30, 1.2, 97, {{kTue, at(8), 1, "Rack 1", 1, 40}, {kThu, at(8), 1, "Rack 1", 1, 40}}, barLifts(),
         {{7, 3}, {6, 3}, {7, 2}, {5, 3}, {6, 2}, {5, 2}, {6, 2}, {5, 2}}},
        {"Lars Pemberley", 71, 79, "Keep sailing", 1, 27, 0.75, 93, {{kTue, at(7), 1, "Floor", 4}, {kThu, at(7), 1, "Floor", 4}}, kneeLifts(),
         {{4}, {4}, {3}, {4}, {3}, {4}, {2}, {4}}},
        {"Beatrix Lowe", 59, 72, "Knee confidence", 1, 26, 0.75, 93, {{kWed, at(7), 1, "Floor", 4}, {kMon, at(7), 1, "Floor", 4}}, kneeLifts(),
         {{3}, {4}, {4}, {4}, {3}, {4}, {2}, {4}}},
        {"Mireille Dacosta", 41, 150, "Ski season", 1, 22, 1, 88, {{kMon, at(18), 1, "Rack 2", 2}, {kSat, at(9), 1, "Rack 2", 4}}, poundLifts(),
         {{5}, {6}, {4}, {5}, {4}, {4}, {3}, {5}}, base::MassUnit::Pound},
        {"Ingrid Sollund", 63, 69, "Hip strength", 1, 28, 0.7, 85, {{kFri, at(10), 1, "Floor", 3}}, gentleLifts(),
         {{3}, {4}, {3}, {4}, {2}, {4}, {3}, {3}}},
    };
}

std::vector<Person> peopleOfTobias()
{
    return {
        {"Dmitri Oake", 36, 88, "Desk stiffness", 2, 5, 0.9, 92, {{kTue, at(10, 30), 2, "Floor", 3}, {kThu, at(10, 30), 2, "Floor", 3}}, mixedLifts(),
         {{2}, {1}, {2}, {3}, {1}, {2}, {1}, {2}}},
        {"Gwen Tarrant", 48, 71, "General strength", 2, 20, 0.9, 70, {{kTue, at(10, 30), 2, "Rack 1", 3}, {kFri, at(18, 30), 2, "Rack 1", 3}}, mixedLifts(),
         {{4}, {4}, {4}, {5}, {4}, {4}, {3}, {4}}},
        {"Osric Bell", 66, 92, "Health, stairs", 2, 1, 0.7, 100, {}, {}, {}},
        {"Tomasz Wyre", 39, 82, "Shoulder rebuild", 2, 29, 1.2, 99, {{kTue, at(16, 30), 2, "Rack 1", 3}, {kFri, at(16, 30), 2, "Rack 1", 3}}, barLifts(),
         {{5, 2}, {6, 2}, {4, 2, true}, {6}, {3}, {4, 2}, {5}, {5}}},
        {"Priya Venn", 29, 58, "Climbing strength", 2, 25, 1.15, 91, {{kTue, at(16, 30), 2, "Floor", 3}, {kThu, at(16, 30), 2, "Floor", 3}}, climberLifts(),
         {{5}, {5}, {4}, {7, 2}, {5}, {7, 2}, {5}, {6}}},
        {"Yara Hadley", 31, 66, "Strong for two", 2, 18, 1, 90, {{kWed, at(18), 2, "Floor", 3}}, uprightLifts(), {{4}, {5}, {4}, {4}, {3}, {5}, {3}, {4}}},
        {"Pella Nakamura-Voss", 22, 55, "First pull-up", 2, 12, 0.9, 94, {{kWed, at(12), 2, "Floor", 3}, {kSun, at(9, 30), 2, "Floor", 3}}, climberLifts(),
         {{4}, {4}, {3}, {4}, {2}, {4}, {3}, {4}}},
    };
}

}  // namespace

std::vector<Person> harbourPeople()
{
    std::vector<Person> people = peopleOfInes();
    for (Person& person : peopleOfTobias()) {
        people.push_back(std::move(person));
    }
    return people;
}

}  // namespace chalk::simulation
