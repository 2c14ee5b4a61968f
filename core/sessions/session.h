#pragma once

#include "core/base/date.h"
#include "core/base/id.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace chalk::sessions {

enum class SessionKind : std::uint8_t { Training, MovementScreen, Trial };

/// What became of a session. A withdrawn one was a booking that somebody took away: it is shown nowhere.
enum class SessionState : std::uint8_t { Planned, Printed, Recorded, Missed, CancelledInTime, CancelledLate, Withdrawn };

inline constexpr std::array<SessionState, 7> kSessionStates{SessionState::Planned, SessionState::Printed, SessionState::Recorded, SessionState::Missed,
                                                            SessionState::CancelledInTime, SessionState::CancelledLate, SessionState::Withdrawn};

/// One client's session: booked, and later what became of it.
struct Session {
    base::SessionId id;
    base::ClientId client;
    base::CoachId coach;
    base::Date date;
    int startMinute = 0;    ///< since midnight, 0 to 1439
    int minutes = 60;       ///< 5 to 480
    std::string place;      ///< `Rack 1`, `Floor`
    int placeCapacity = 1;  ///< how many clients the slot takes
    SessionKind kind = SessionKind::Training;
    SessionState state = SessionState::Planned;
    std::string code;       ///< opaque, unique: what the card's code carries
    bool isLocked = false;  ///< planning the week never moves it

    bool operator==(const Session&) const = default;
};

/// One lift that a session is planned with.
struct SessionLift {
    base::LiftId lift;
    std::optional<std::string> leftOut = {};  ///< why it is not done today: the key of a SkipReason, own words or empty; nothing where it is done

    bool operator==(const SessionLift&) const = default;
};

[[nodiscard]] std::string_view keyOf(SessionKind kind);
[[nodiscard]] std::string_view keyOf(SessionState state);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<SessionKind> sessionKindOf(std::string_view key);
[[nodiscard]] std::optional<SessionState> sessionStateOf(std::string_view key);
/// Whether the client said beforehand that they would not come, in time or late.
[[nodiscard]] bool isCalledOff(SessionState state);
/// Whether it is still to come.
[[nodiscard]] bool isOpen(SessionState state);
/// Whether it takes the client's time: it is still to come, or it took place. Not where it was missed, called off or withdrawn.
[[nodiscard]] bool takesTime(SessionState state);
/// `09:00`.
[[nodiscard]] std::string clockText(int minuteOfDay);
/// Reads exactly `HH:MM`; nothing for anything else.
[[nodiscard]] std::optional<int> parseClock(std::string_view text);

}  // namespace chalk::sessions
