#pragma once

#include "core/clients/client.h"
#include "core/sessions/session.h"
#include "core/week/studio_week.h"

#include <optional>
#include <string>
#include <vector>

namespace chalk::week {

/// A lift of a client, as far as a week needs it.
struct LiftOfWeek {
    base::LiftId id;
    lifts::Pattern pattern = lifts::Pattern::Squat;
    lifts::Station station = lifts::Station::Floor;  ///< the floor while it is rehearsed without load
    std::optional<base::Date> lastTrained;

    bool operator==(const LiftOfWeek&) const = default;
};

/// A session on file, with the lifts that it was planned with; none where nobody planned them.
struct BookedSession {
    sessions::Session session;
    std::vector<base::LiftId> lifts;
    int revision = 0;  ///< how often it was moved, called off or brought back

    bool operator==(const BookedSession&) const = default;
};

struct ClientOfWeek {
    clients::Client client;
    clients::WeekHours free;       ///< empty: every day from 9:00 to 20:00
    clients::WeekHours preferred;  ///< may be empty
    int sessionMinutes = 60;
    bool isInGroup = false;
    bool isBlocked = false;        ///< clearance is awaited: nothing is proposed
    ClientPlanning planning;
    std::vector<LiftOfWeek> lifts;                         ///< none on hold
    std::vector<std::vector<lifts::Pattern>> contents;     ///< of the plan: what its sessions train; may be empty
    std::vector<BookedSession> sessions;                   ///< of this week and of the one before, by time
    std::optional<int> quota = {};                         ///< sessions wanted in this week, where that is not the usual number

    /// Sessions a week; of somebody without a lift one, for the screen.
    [[nodiscard]] int usualSessions() const { return lifts.empty() ? 1 : client.sessionsPerWeek; }
    [[nodiscard]] int sessionsWanted() const { return quota.value_or(usualSessions()); }
};

struct CoachOfWeek {
    clients::Coach coach;
    CoachWork work;
};

/// All that a week is planned from.
struct WeekFacts {
    base::Date monday;
    int nowMinute = 0;                ///< since that Monday: what begins before is past; negative for a week to come
    StudioWeek studio;
    std::vector<CoachOfWeek> coaches;
    std::vector<ClientOfWeek> clients;
    std::vector<Closure> closures;    ///< that touch the week, in any order
};

/// What a session of the problem stands for.
struct WishOrigin {
    base::ClientId client;
    base::SessionId booked;                         ///< none: it is not booked yet
    sessions::SessionKind kind = sessions::SessionKind::Training;
    int number = 1;                                 ///< which one of the client's week, counted from 1
    std::vector<base::LiftId> lifts;                ///< it is planned with; none: those that waited longest

    bool operator==(const WishOrigin&) const = default;
};

/// Somebody for whom nothing is proposed, and why.
enum class NoProposalReason : std::uint8_t {
    AwaitsClearance,
    AwayAllWeek
};

struct NoProposal {
    base::ClientId client;
    NoProposalReason reason = NoProposalReason::AwaitsClearance;
    int sessions = 0;  ///< that are not proposed

    bool operator==(const NoProposal&) const = default;
};

/// A week of the studio as a problem for the solver. Indices of coaches and clients are those of the facts.
struct WeekCase {
    WeekProblem problem;
    std::vector<WishOrigin> origins;       ///< of the problem's sessions, in their order
    WeekPlan booked;                       ///< where each one is booked now; nothing for those that are not
    std::vector<NoProposal> notProposed;
};

inline constexpr int kUsualGroup = 4;  ///< the most in a small group where nothing else is said; common practice is two to six

/// Makes the problem: bookings that are still to come, each standing where it is, and for each client as many more as are missing to the sessions a
/// week, at the standing slots that are free of a booking. What begins before now is past: it counts for recovery and for the number, and nothing is
/// placed before it. A session cancelled in time is planned anew, one that was missed or cancelled late is not.
[[nodiscard]] WeekCase caseOf(const WeekFacts& facts);

/// The most clients that train together with somebody.
[[nodiscard]] int groupOf(const ClientOfWeek& client);

/// Coach, day and time of a slot of the case.
[[nodiscard]] BookingPlace placeOf(const WeekFacts& facts, const WeekCase& week, std::size_t session, const Slot& slot);

[[nodiscard]] std::string_view keyOf(NoProposalReason reason);

}  // namespace chalk::week
