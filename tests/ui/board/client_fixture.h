#pragma once

#include "ui/board/client_case.h"

#include <string>
#include <vector>

namespace chalk::test {

/// How a lift of the fixture is trained: twice a week, from its start to the fixture's day.
struct FixtureLift {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::string name;
    lifts::Region region = lifts::Region::Lower;
    lifts::Equipment equipment;
    double hardAt = 60;  ///< the load at which it is hard at 6, in kg; each cycle 10 per cent more
    int sessions = 60;   ///< how many it has been trained for
    int pieces = 1;
    lifts::Measure measure = lifts::Measure::Reps;
    int painAtEnd = 0;   ///< of the last exposure
    int rehearsals = 2;  ///< that it takes to learn the movement; 0: it still is in Pattern
};

/// The day of the fixture: Tuesday 24 November 2026.
[[nodiscard]] base::Date fixtureDay();

/// A lift that was trained by prescription up to the fixture's day, by somebody who makes most sessions.
[[nodiscard]] ui::board::LiftCase trainedLift(const FixtureLift& how, std::int64_t id);

/// Joaquin Ferro, 45, lower back: eight lifts in all kinds of stages.
[[nodiscard]] ui::board::ClientCase ferro();
/// The same client with so many lifts, at most ten; the last ones have long names.
[[nodiscard]] ui::board::ClientCase clientWithLifts(int count);

[[nodiscard]] lifts::Equipment fixtureBar();
[[nodiscard]] lifts::Equipment fixtureDumbbells();
[[nodiscard]] lifts::Equipment fixtureStack();

}  // namespace chalk::test
