#pragma once

#include "core/progression/lift_machine.h"
#include "core/progression/screen_start.h"

namespace chalk::progression {

/// How something stands against the screen before.
enum class Change : std::uint8_t {
    Better,
    Same,
    Worse,
    NotComparable  ///< not judged in one of the two
};

struct PointChange {
    std::string key;
    screens::Mark before = screens::Mark::NotJudged;
    screens::Mark after = screens::Mark::NotJudged;
    Change change = Change::NotComparable;

    bool operator==(const PointChange&) const = default;
};

struct PauseChange {
    screens::PauseDepth depth = screens::PauseDepth::Top;
    screens::PauseTry before;
    screens::PauseTry after;
    Change change = Change::NotComparable;

    bool operator==(const PauseChange&) const = default;
};

/// One pattern in two screens.
struct PatternChange {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    PatternStart before;
    PatternStart after;
    Change stage = Change::NotComparable;  ///< a hold is worse than any stage
    std::vector<PointChange> points;       ///< those of the later screen, then those that only the earlier one has
    std::array<PauseChange, 3> pauses;     ///< by mark, and by time where both were timed
    Change pain = Change::NotComparable;   ///< by the number, none being 0; not in a pattern that one of them left out
};

/// Two screens side by side, pattern by pattern.
[[nodiscard]] std::array<PatternChange, lifts::kPatterns.size()> comparisonOf(const screens::MovementScreen& before,
                                                                              const screens::MovementScreen& after, const Policy& policy);

/// Days after a screen on which the next one is due: eight weeks. Common practice in the trade.
inline constexpr int kRescreenDays = 56;

/// Why a new screen is due.
enum class RescreenReason : std::uint8_t { NeverScreened, EightWeeks, Layoff, Hold };

/// What a lift says about it.
struct RescreenLift {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    bool isFlagged = false;                ///< the flag `rescreen` of G-3
    std::optional<base::Date> releasedOn;  ///< the last P-4, see lastReleaseOf
};

/// A screen that is due: one reason, the strongest first: never screened, a layoff, a hold, eight weeks.
struct RescreenDue {
    RescreenReason reason = RescreenReason::EightWeeks;
    std::optional<base::Date> since;       ///< the release, or the day on which eight weeks were over
    std::vector<lifts::Pattern> patterns;  ///< of the layoff or the hold; empty: all
};

/// Whether a screen is due on `day`; nothing where it is not. `lastScreen` is the last finished one.
[[nodiscard]] std::optional<RescreenDue> rescreenDueOn(base::Date day, std::optional<base::Date> lastScreen,
                                                       std::span<const RescreenLift> lifts);

/// The day of the last release that ended a hold (P-4); nothing where there was none.
[[nodiscard]] std::optional<base::Date> lastReleaseOf(std::span<const Decision> decisions);

[[nodiscard]] std::string_view keyOf(Change change);
[[nodiscard]] std::string_view keyOf(RescreenReason reason);

}  // namespace chalk::progression
