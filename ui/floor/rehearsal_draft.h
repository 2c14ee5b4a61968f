#pragma once

#include "core/progression/event.h"
#include "core/progression/policy.h"
#include "core/screens/screen_catalogue.h"

#include <QString>

#include <array>
#include <optional>
#include <vector>

namespace chalk::ui::floor {

/// Something that a coach can see in an unloaded movement.
struct RehearsalPoint {
    std::string key;  ///< as kept in the log: `depth`
    QString words;    ///< `Thighs reach level`
};

using RehearsalPoints = std::vector<RehearsalPoint>;

/// How many points a rehearsal is judged by at most.
inline constexpr std::size_t kMostRehearsalPoints = screens::kPointsPerPattern;

/// The points that a pattern is judged by, in the order in which they are looked at: those of its screen.
[[nodiscard]] RehearsalPoints rehearsalPoints(const screens::PatternGuide& guide);
/// Those that a record is corrected by: its own where it names one that is not of the pattern's screen, the first six of them at most.
[[nodiscard]] RehearsalPoints pointsOf(const progression::Rehearsal& rehearsal, const screens::PatternGuide& guide);

/// Where something is missing or wrong in a draft.
enum class RehearsalPlace : std::uint8_t { Point, Reps, PauseTop, PauseMiddle, PauseBottom };

struct RehearsalFault {
    RehearsalPlace place = RehearsalPlace::Point;
    int point = 0;    ///< which, for Point
    QString message;  ///< names the place and what it takes

    bool operator==(const RehearsalFault&) const = default;
};

/// An unloaded trial as it is judged on the floor, point by point.
struct RehearsalDraft {
    std::array<std::optional<progression::Verdict>, kMostRehearsalPoints> verdicts;
    QString reps;                   ///< as typed; empty: as planned
    std::array<QString, 3> pauses;  ///< top, middle, bottom in seconds as typed; empty: not tried
    progression::Steadiness felt = progression::Steadiness::Steady;
    int pain = 0;

    bool operator==(const RehearsalDraft&) const = default;
    /// Whether nothing was judged, timed or counted yet.
    [[nodiscard]] bool isEmpty() const { return *this == RehearsalDraft(); }
};

/// The first thing that keeps the draft from being a rehearsal: a point that is not judged (in Pattern all are asked for), reps
/// or seconds that make no sense. Nothing where it can be saved.
[[nodiscard]] std::optional<RehearsalFault> faultOf(const RehearsalDraft& draft, const RehearsalPoints& points, bool areAllPointsAsked);
/// The draft as a record. It has no fault.
[[nodiscard]] progression::Rehearsal rehearsalOf(const RehearsalDraft& draft, const RehearsalPoints& points, const progression::Policy& policy);
/// A record as a draft, for a correction. Points that it names otherwise are left open.
[[nodiscard]] RehearsalDraft draftOf(const progression::Rehearsal& rehearsal, const RehearsalPoints& points);

}  // namespace chalk::ui::floor
