#pragma once

#include "core/base/date.h"
#include "core/base/quantity.h"
#include "core/lifts/pattern.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace chalk::screens {

/// How a coach judged one observable point.
enum class Mark : std::uint8_t { NotJudged, Met, Partly, NotMet };

/// How a pause at one depth went.
enum class PauseMark : std::uint8_t { NotTried, Held, Shaky, NotHeld };

/// The three depths, in the order in which they are tried.
enum class PauseDepth : std::uint8_t { Top, Middle, Bottom };

inline constexpr std::array kPauseDepths{PauseDepth::Top, PauseDepth::Middle, PauseDepth::Bottom};

/// How the whole movement looked.
enum class MovementSteadiness : std::uint8_t { Steady, Shaky, Lost };

/// The longest pause that can be noted, in milliseconds.
inline constexpr int kMostPauseMs = 600'000;
/// The most repetitions that can be noted.
inline constexpr int kMostScreenReps = 100;

/// One point of the catalogue and its mark.
struct PointMark {
    std::string key;
    Mark mark = Mark::NotJudged;

    bool operator==(const PointMark&) const = default;
};

/// One pause. A time is there only where a stopwatch was used.
struct PauseTry {
    PauseMark mark = PauseMark::NotTried;
    std::optional<int> heldMs;  ///< milliseconds, 0 to kMostPauseMs

    bool operator==(const PauseTry&) const = default;
};

/// Pain that was named in the screen.
struct ScreenPain {
    std::string place;         ///< in the client's words
    std::optional<int> score;  ///< 0 to 10; nothing while it is not asked yet

    bool operator==(const ScreenPain&) const = default;
};

/// What a coach marked for one pattern.
struct PatternScreen {
    lifts::Pattern pattern = lifts::Pattern::Squat;
    std::vector<PointMark> points;                 ///< those of the catalogue, in its order
    std::array<PauseTry, 3> pauses;                ///< by depth
    std::optional<MovementSteadiness> steadiness;  ///< nothing: as steady as the pauses
    std::optional<base::Reps> reps;                ///< done in the screen; nothing: as many as were asked for
    std::optional<ScreenPain> pain;                ///< nothing: none was named; a score of 0 without a place: asked, and there is none
    std::string note;

    [[nodiscard]] const PauseTry& pauseAt(PauseDepth depth) const { return pauses[static_cast<std::size_t>(depth)]; }
    [[nodiscard]] PauseTry& pauseAt(PauseDepth depth) { return pauses[static_cast<std::size_t>(depth)]; }

    bool operator==(const PatternScreen&) const = default;
};

/// A screen of all eight patterns on one day.
struct MovementScreen {
    base::Date date;
    std::array<PatternScreen, lifts::kPatterns.size()> patterns;  ///< in the order of lifts::kPatterns
    bool isFinished = false;                                      ///< the coach closed it; what is open then stays open

    [[nodiscard]] const PatternScreen& of(lifts::Pattern pattern) const { return patterns[static_cast<std::size_t>(pattern)]; }
    [[nodiscard]] PatternScreen& of(lifts::Pattern pattern) { return patterns[static_cast<std::size_t>(pattern)]; }

    bool operator==(const MovementScreen&) const = default;
};

/// What is still to be marked in one pattern.
struct OpenMarks {
    std::vector<std::string> points;  ///< keys of points that are not judged
    std::vector<PauseDepth> pauses;   ///< asked for only where every point is met: before that they decide nothing
    bool isPainScoreOpen = false;     ///< pain was named without a number

    [[nodiscard]] bool isNothing() const { return points.empty() && pauses.empty() && !isPainScoreOpen; }
    bool operator==(const OpenMarks&) const = default;
};

/// A field of a screen that is out of its range (`points[2]`, `pauses.top`, `pain`, `reps`) and why.
struct ScreenFault {
    std::string field;
    std::string reason;
};

/// Whether pain was named; a score of 0 says that there is none. A place without a score counts as pain.
[[nodiscard]] bool isPainful(const PatternScreen& screen);
/// Whether anything at all is marked. A note alone is no mark.
[[nodiscard]] bool isStarted(const PatternScreen& screen);
/// What is still open. Pain ends the pattern: then only its number can be open.
[[nodiscard]] OpenMarks openMarksOf(const PatternScreen& screen);
/// The patterns in which something is open, in order.
[[nodiscard]] std::vector<lifts::Pattern> openPatternsOf(const MovementScreen& screen);
/// How the movement looked: as noted, and no better than the least steady pause.
[[nodiscard]] MovementSteadiness steadinessOf(const PatternScreen& screen);
/// The first thing out of range; nothing where all is in it.
[[nodiscard]] std::optional<ScreenFault> faultOf(const PatternScreen& screen);

/// Keys in files: `met`, `not_judged`; `held`, `not_tried`; `top`; `steady`.
[[nodiscard]] std::string_view keyOf(Mark mark);
[[nodiscard]] std::string_view keyOf(PauseMark mark);
[[nodiscard]] std::string_view keyOf(PauseDepth depth);
[[nodiscard]] std::string_view keyOf(MovementSteadiness steadiness);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<Mark> markOf(std::string_view key);
[[nodiscard]] std::optional<PauseMark> pauseMarkOf(std::string_view key);
[[nodiscard]] std::optional<MovementSteadiness> movementSteadinessOf(std::string_view key);

}  // namespace chalk::screens
