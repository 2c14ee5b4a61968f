#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace chalk::week {

inline constexpr int kDayMinutes = 24 * 60;
inline constexpr int kWeekDays = 7;

/// A stretch of a day of the week: minutes after its midnight, 0 <= from < to <= 1440.
struct DaySpan {
    int day = 0;  ///< 0 Monday to 6 Sunday
    int from = 0;
    int to = 0;

    bool operator==(const DaySpan&) const = default;
};

/// What a plan costs. Every weight is 0 or more.
struct Weights {
    int unplaced = 1000;   ///< × priority, of each session left over
    int dayMove = 80;      ///< off the standing slot: another day
    int timeMoveBase = 20; ///< another time of the same day
    int timeMovePer15 = 4;
    int timeMoveCap = 60;
    int coachMove = 30;    ///< another coach
    int prefPer15 = 1;     ///< for every quarter of an hour outside the preferred starts
    int prefCap = 12;
    int gapPer15 = 2;      ///< idle, between a coach's first and last session of a day
    int overPer15 = 1;     ///< above a coach's soft daily maximum
    int consecutive = 6;   ///< two successive days of one client

    bool operator==(const Weights&) const = default;
};

/// Fewer units than usual for a while.
struct StationClosure {
    DaySpan span;
    int units = 0;  ///< that are left

    bool operator==(const StationClosure&) const = default;
};

/// Racks, benches, floor …: what sessions share.
struct Station {
    std::string id;
    int units = 1;
    std::vector<StationClosure> closures;

    bool operator==(const Station&) const = default;
};

struct CoachWeek {
    std::string id;
    int capacity = 1;                ///< sessions at once
    int softMaxMinutes = 480;        ///< busy minutes a day
    std::vector<DaySpan> windows;    ///< at work; cut to the studio's hours
    std::vector<DaySpan> breaks;
    std::vector<DaySpan> absences;

    bool operator==(const CoachWeek&) const = default;
};

enum class RecoveryKind : std::uint8_t { Hours, RestDay };

/// Between two sessions of a client that share a pattern: so many hours from start to start, or a whole day.
struct Recovery {
    RecoveryKind kind = RecoveryKind::Hours;
    int hours = 48;  ///< of Hours alone

    bool operator==(const Recovery&) const = default;
};

/// A coach whom the client accepts, and what it costs to be given this one off the standing slot.
struct AcceptedCoach {
    std::size_t coach = 0;  ///< index in the problem
    int cost = 0;

    bool operator==(const AcceptedCoach&) const = default;
};

struct PastSession {
    int start = 0;  ///< minutes since Monday of this week: negative
    std::vector<std::string> patterns;

    bool operator==(const PastSession&) const = default;
};

struct ClientWeek {
    std::string id;
    int priority = 1;
    int maxGroup = 1;                 ///< the most sessions at once of the coach that this client shares; 1 is one-to-one
    Recovery recovery;
    std::vector<DaySpan> available;   ///< a session lies inside of one of them
    std::vector<DaySpan> preferred;   ///< starts, the last minute included: from may be to; none: no preference
    std::vector<AcceptedCoach> coaches;
    std::vector<PastSession> lastWeek;

    bool operator==(const ClientWeek&) const = default;
};

/// What a session takes of a station, and when.
struct StationNeed {
    std::size_t station = 0;  ///< index in the problem
    int share = 100;          ///< per cent of one unit
    int from = 0;             ///< minutes after the session's start
    int to = 0;

    bool operator==(const StationNeed&) const = default;
};

/// A coach and a start: minutes since Monday 00:00 of the week.
struct Slot {
    std::size_t coach = 0;  ///< index in the problem
    int start = 0;

    bool operator==(const Slot&) const = default;
};

struct SessionWish {
    std::string id;
    std::size_t client = 0;  ///< index in the problem
    int minutes = 60;
    std::vector<std::string> patterns;
    std::vector<StationNeed> needs;
    std::optional<Slot> standing;
    bool isLocked = false;   ///< stays on its standing slot, which it has

    bool operator==(const SessionWish&) const = default;
};

/// A week to be planned. Minutes count in wall-clock time: a week with a clock change is as long as any other.
struct WeekProblem {
    std::string name;
    int grid = 15;  ///< minutes, 15 or 30: sessions start on it
    std::vector<DaySpan> open;
    Weights weights;
    std::vector<Station> stations;
    std::vector<CoachWeek> coaches;
    std::vector<ClientWeek> clients;
    std::vector<SessionWish> sessions;

    bool operator==(const WeekProblem&) const = default;
};

/// Where each session of a problem goes, by its index; nothing where it is left over.
using WeekPlan = std::vector<std::optional<Slot>>;

/// What a plan costs, by part; lowest is best.
struct Objective {
    long unplaced = 0;     ///< Σ weight × priority of those left over
    long standing = 0;     ///< off standing slots
    long preference = 0;   ///< of sessions without a standing slot
    long gaps = 0;
    long over = 0;
    long consecutive = 0;
    int leftOver = 0;      ///< sessions; costs nothing by itself
    int moved = 0;         ///< sessions off their standing slot; costs nothing by itself

    [[nodiscard]] long total() const { return unplaced + standing + preference + gaps + over + consecutive; }
    bool operator==(const Objective&) const = default;
};

[[nodiscard]] std::string_view keyOf(RecoveryKind kind);

}  // namespace chalk::week
