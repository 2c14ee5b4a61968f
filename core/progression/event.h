#pragma once

#include "core/base/date.h"
#include "core/base/load.h"
#include "core/base/quantity.h"
#include "core/lifts/equipment.h"
#include "core/lifts/pattern.h"
#include "core/progression/block.h"
#include "core/progression/stage.h"

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace chalk::progression {

enum class Steadiness : std::uint8_t { Steady, Shaky, Lost };

enum class Verdict : std::uint8_t { Met, Partly, NotMet };

/// One set as it was done. Small and flat: histories of a million exposures are replayed.
struct SetRecord {
    static constexpr std::int16_t kNotRecorded = -1;

    base::Load load;                        ///< in the lift's unit
    std::int32_t amount = 0;                ///< reps, seconds or metres, by the lift's measure; 0 or more
    std::int16_t rir = kNotRecorded;        ///< repetitions in reserve, 0 to 10
    std::int16_t restSeconds = kNotRecorded;///< the rest taken before this set
    Steadiness steadiness = Steadiness::Steady;
    bool isWarmup = false;

    bool operator==(const SetRecord&) const = default;
};

/// One session's record of one lift.
struct Exposure {
    int pain = 0;  ///< 0 to 10
    std::vector<SetRecord> sets;

    bool operator==(const Exposure&) const = default;
};

/// One observable point of an unloaded movement and how it was judged.
struct Criterion {
    std::string key;
    Verdict verdict = Verdict::NotMet;

    bool operator==(const Criterion&) const = default;
};

/// Pauses in milliseconds; nothing where it was not tried.
struct Pauses {
    std::optional<int> topMs;
    std::optional<int> middleMs;
    std::optional<int> bottomMs;

    bool operator==(const Pauses&) const = default;
};

/// An unloaded trial of the pattern.
struct Rehearsal {
    std::vector<Criterion> criteria;
    base::Reps reps;
    Pauses pauses;
    Steadiness steadiness = Steadiness::Steady;
    int pain = 0;  ///< 0 to 10

    bool operator==(const Rehearsal&) const = default;
};

/// The coach lets a lift off its hold. A note is required.
struct Release {
    std::string note;

    bool operator==(const Release&) const = default;
};

/// The coach sets the lift by hand; what is absent stays as the specification of `set` says. A reason is required.
struct CoachSet {
    std::optional<Stage> stage;
    std::optional<base::Load> load;
    std::optional<base::Reps> reps;
    std::optional<base::Sets> sets;
    std::optional<base::Seconds> rest;
    std::string reason;

    bool operator==(const CoachSet&) const = default;
};

/// Another exercise or other equipment for the pattern.
struct Swap {
    lifts::Equipment equipment;
    std::optional<base::Load> startLoad;
    std::optional<base::Milli> bodyShare;
    std::optional<lifts::Measure> measure;
    std::string exerciseKey;  ///< of the catalogue; no rule reads it
    int pieces = 1;           ///< 2 where a pair is held; no rule reads it

    bool operator==(const Swap&) const = default;
};

/// The coach makes the week that begins on the event's day a lighter one, see lighter_week.h.
struct LighterWeek {
    std::string note;  ///< may be empty

    bool operator==(const LighterWeek&) const = default;
};

using EventBody = std::variant<Exposure, Rehearsal, Release, CoachSet, Swap, LighterWeek, Block>;

struct Event {
    base::Date date;
    EventBody body;

    bool operator==(const Event&) const = default;
};

[[nodiscard]] std::string_view keyOf(Steadiness steadiness);
[[nodiscard]] std::string_view keyOf(Verdict verdict);
/// `exposure`, `rehearsal`, `release`, `set`, `swap`, `lighter`.
[[nodiscard]] std::string_view typeKeyOf(const EventBody& body);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<Steadiness> steadinessOf(std::string_view key);
[[nodiscard]] std::optional<Verdict> verdictOf(std::string_view key);

}  // namespace chalk::progression
