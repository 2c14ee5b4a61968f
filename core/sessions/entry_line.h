#pragma once

#include "core/lifts/equipment.h"
#include "core/lifts/pattern.h"
#include "core/progression/event.h"
#include "core/progression/lift_state.h"
#include "core/progression/policy.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace chalk::sessions {

/// What a part of an entry line says.
enum class EntryPart : std::uint8_t { Reps, SetsAndReps, Load, Rir, Rest, Pain, Felt, Skip, Verdict, Pause, Unknown };

/// A part of the line and where it stands, in bytes.
struct EntryToken {
    std::size_t begin = 0;
    std::size_t length = 0;
    EntryPart part = EntryPart::Unknown;
};

/// What was said of one set alone: `8r1`, `7s`, `8@80`.
struct EntrySet {
    std::optional<int> rir;
    std::optional<base::Load> load;
    std::optional<progression::Steadiness> felt;

    bool operator==(const EntrySet&) const = default;
};

/// One lift's result as it was typed. What is absent was not said.
struct EntryLine {
    std::vector<EntryToken> tokens;
    std::vector<int> amounts;                          ///< reps, seconds or metres, set by set
    std::vector<EntrySet> own;                         ///< as many: what goes before what is said of all sets
    std::optional<base::Load> load;
    std::optional<int> rir;
    std::optional<int> restSeconds;
    std::optional<int> pain;
    std::optional<progression::Steadiness> felt;
    std::optional<progression::Verdict> verdict;       ///< of a rehearsal
    progression::Pauses pauses;                        ///< of a rehearsal
    bool isSkipped = false;
    std::string note;                                  ///< after two spaces

    /// Whether every part was understood.
    [[nodiscard]] bool isUnderstood() const;
    [[nodiscard]] bool isEmpty() const { return tokens.empty(); }
};

/// Reads a line as the trade writes it: `8 8 7 @80 r2 2:15 p1 s`. Numbers alone are sets one by one, `5x8` is five sets of eight,
/// `@80` the load, `r2` the reps left in reserve, `2:15` the rest, `p1` pain of 10, `s` shaky, `lost` a lost set, `x` skipped. What
/// stands right behind a number is said of that set alone: `8r2 8r2 7r0s`, `3x8@80`, and `l` for lost. For an
/// unloaded rehearsal `met`, `partly` or `not`, the reps, and the pauses `t1 m1 b1.5` in seconds. Two spaces begin a note. Nothing is
/// guessed: what makes no sense is a token of its own.
[[nodiscard]] EntryLine parseEntryLine(std::string_view line);

/// What the plan says, for the parts of a line that were not said.
struct EntryPlan {
    const progression::Prescription& due;
    lifts::Measure measure = lifts::Measure::Reps;
    const progression::Policy& policy;
};

/// The amount of each planned set: the target, or the middle of the range, in the measure.
[[nodiscard]] int plannedAmount(const EntryPlan& plan);

/// The event that a line stands for: an empty line is a session that went as planned. RIR that was not said counts as planned
/// only where the reps were not said either. Nothing for a skipped lift, one on hold, or a line that is not understood.
[[nodiscard]] std::optional<progression::EventBody> eventOf(const EntryLine& line, const EntryPlan& plan);

/// What should be asked about before an entry is kept: not refused, for somebody may have done it.
enum class EntryDoubt : std::uint8_t { LoadFarOff, LoadInOtherUnit, ManyReps, LoadNotOnHand };

/// The doubts about an exposure beside its plan.
[[nodiscard]] std::vector<EntryDoubt> doubtsAbout(const progression::Exposure& exposure, const EntryPlan& plan, const lifts::LoadTable& loads);

}  // namespace chalk::sessions
