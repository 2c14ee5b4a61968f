#pragma once

#include "core/analysis/lift_work.h"
#include "core/base/date.h"
#include "core/base/id.h"
#include "core/lifts/pattern.h"

#include <array>
#include <map>
#include <span>

namespace chalk::analysis {

/// The work of one exposure, with what it is summed by.
struct DatedWork {
    base::Date date;
    base::SessionId session;  ///< none where it was recorded outside of a session
    base::LiftId lift;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    Work work;

    bool operator==(const DatedWork&) const = default;
};

/// The work of each pattern, in the order of lifts::kPatterns.
using PatternWork = std::array<Work, lifts::kPatterns.size()>;

[[nodiscard]] Work workTogether(std::span<const DatedWork> done);
[[nodiscard]] std::map<base::LiftId, Work> workByLift(std::span<const DatedWork> done);
[[nodiscard]] PatternWork workByPattern(std::span<const DatedWork> done);
/// What was recorded outside of a session stands under no session.
[[nodiscard]] std::map<base::SessionId, Work> workBySession(std::span<const DatedWork> done);
/// ISO weeks, Monday to Sunday; those without work are not in it.
[[nodiscard]] std::map<base::IsoWeek, Work> workByWeek(std::span<const DatedWork> done);

}  // namespace chalk::analysis
