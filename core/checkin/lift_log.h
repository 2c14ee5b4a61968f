#pragma once

#include "core/plateau/logged_exposure.h"
#include "core/progression/event.h"
#include "core/progression/lift_machine.h"

#include <optional>
#include <span>
#include <vector>

namespace chalk::checkin {

/// What the plateau detector is told of an exposure, judged by `before`: the lift as it stood then. What was asked for is what the lift was to do on
/// the day; of a range of repetitions, its lower end. What was done are the sets at the working load, in repetitions whatever the measure; their
/// load is the mass that is moved in the lift's unit, body and both pieces of a pair included. `swaps`: how often the exercise was changed before,
/// each of which begins another variation. More in reserve than the detector takes is as if it were not written down: it is no slip of the pen.
/// Nothing where no work was asked for, where none was done, and where nothing is lifted.
[[nodiscard]] std::optional<plateau::LoggedExposure> loggedExposureOf(const progression::LiftMachine& before, base::Date date,
                                                                      const progression::Exposure& exposure, int swaps);

/// The log of a lift from its events, by date, in one pass: `fresh` is the lift as it was set up, or as it stood before the first of them.
[[nodiscard]] std::vector<plateau::LoggedExposure> logOf(progression::LiftMachine fresh, std::span<const progression::Event> events);

}  // namespace chalk::checkin
