#include "core/sessions/session.h"

#include "core/base/enum_keys.h"

#include <fmt/core.h>

namespace chalk::sessions {

namespace {

constexpr std::array<std::string_view, 3> kKindKeys{"training", "movement_screen", "trial"};
constexpr std::array<std::string_view, 7> kStateKeys{"planned", "printed", "recorded", "missed", "cancelled_in_time", "cancelled_late", "withdrawn"};

}  // namespace

std::string_view keyOf(SessionKind kind)
{
    return base::keyIn(kKindKeys, kind);
}

std::string_view keyOf(SessionState state)
{
    return base::keyIn(kStateKeys, state);
}

std::optional<SessionKind> sessionKindOf(std::string_view key)
{
    return base::enumOf<SessionKind>(kKindKeys, key);
}

std::optional<SessionState> sessionStateOf(std::string_view key)
{
    return base::enumOf<SessionState>(kStateKeys, key);
}

bool isCalledOff(SessionState state)
{
    return state == SessionState::CancelledInTime || state == SessionState::CancelledLate;
}

bool isOpen(SessionState state)
{
    return state == SessionState::Planned || state == SessionState::Printed;
}

bool takesTime(SessionState state)
{
    return isOpen(state) || state == SessionState::Recorded;
}

std::string clockText(int minuteOfDay)
{
    return fmt::format("{:02}:{:02}", minuteOfDay / 60, minuteOfDay % 60);
}

std::optional<int> parseClock(std::string_view text)
{
    const auto isDigit = [&text](std::size_t i) { return text[i] >= '0' && text[i] <= '9'; };
    if (text.size() != 5 || text[2] != ':' || !isDigit(0) || !isDigit(1) || !isDigit(3) || !isDigit(4)) {
        return std::nullopt;
    }
    const int hour = (text[0] - '0') * 10 + (text[1] - '0');
    const int minute = (text[3] - '0') * 10 + (text[4] - '0');
    return hour < 24 && minute < 60 ? std::optional(hour * 60 + minute) : std::nullopt;
}

}  // namespace chalk::sessions
