#pragma once

#include "core/base/id.h"
#include "core/progression/lift_machine.h"

#include <QByteArray>

#include <map>
#include <optional>
#include <vector>

namespace chalk::store {

/// The first day of a stage in a cycle.
struct StageReached {
    int cycle = 1;
    progression::Stage stage = progression::Stage::Pattern;
    base::Date day;

    bool operator==(const StageReached&) const = default;
};

/// A lift as it stands, with what is kept of the way it came.
struct CachedLift {
    base::LiftId id;
    base::ClientId client;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    progression::LiftMachine machine;
    base::Date started;
    base::Date stageSince;                    ///< since when it is in its stage
    progression::RuleList decided;            ///< the rules of the last decision that said what comes next
    std::optional<base::Date> lastEvent;
    std::optional<base::Date> firstWork;      ///< the first exposure that was judged in a loaded stage
    std::optional<base::Date> heldSince;      ///< while it is on hold
    int holdPain = 0;                         ///< the pain that put it on hold, 0 to 10
};

/// Load volume by week, named by its Monday: repetitions × mass, exact.
using WeekVolumes = std::map<base::Date, base::Mass>;

/// What one more event did.
struct Step {
    progression::RuleList rules;
    std::vector<StageReached> reached;  ///< stages entered, the present one last
    base::Mass volume;                  ///< load volume of its working sets
    QByteArray logged;                  ///< what it adds to the lift's log for the plateau detector, see lift_log_codec.h
};

/// Judges one more event, no earlier than the last one, and keeps up everything in `lift`. The event has no fault.
Step advance(CachedLift& lift, const progression::Event& event);

/// A lift that went through its log.
struct LiftReplay {
    CachedLift lift;
    std::vector<progression::Decision> decisions;  ///< one for each event, in their order
    std::vector<StageReached> reached;             ///< in the order in which they were entered; some more than once
    WeekVolumes weeks;
    QByteArray log;                                ///< for the plateau detector, see lift_log_codec.h
};

/// Judges events in their order on a lift as it was set up. Fails at the first event that cannot be.
[[nodiscard]] tl::expected<LiftReplay, progression::ReplayFault> replayOf(CachedLift fresh, const std::vector<const progression::Event*>& ordered);

/// Load volume of an exposure's working sets: Σ repetitions × load × pieces; assistance and body mass are left out. What nobody can
/// lift counts as 1,000,000 kg × repetitions at most, so that sums stay in range.
[[nodiscard]] base::Mass volumeOf(const progression::Exposure& exposure, const progression::LiftSetup& setup, const progression::Kit& kit);

}  // namespace chalk::store
