#pragma once

#include "core/base/date.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace chalk::week {

enum class BookingKind : std::uint8_t { Session, Screening, Trial };
enum class BookingState : std::uint8_t { Proposed, Booked, Done, Missed, Cancelled };

inline constexpr std::array<BookingKind, 3> kBookingKinds{BookingKind::Session, BookingKind::Screening, BookingKind::Trial};
inline constexpr std::array<BookingState, 5> kBookingStates{BookingState::Proposed, BookingState::Booked, BookingState::Done, BookingState::Missed,
                                                            BookingState::Cancelled};

/// A client with a coach on a day, as it leaves the program: nothing but plain values, in wall-clock time of the studio.
struct Booking {
    std::string code;       ///< opaque, stands for this booking alone and stays with it when it moves
    int revision = 0;       ///< 0 or more: how often it was changed since it was first given out
    std::string clientKey;  ///< tells clients of one name from each other
    std::string clientName;
    std::string coachKey;
    std::string coachName;
    base::Date date;
    int startMinute = 0;    ///< of the day, 0 to 1439
    int minutes = 60;       ///< 1 or more; it may end after midnight
    std::string place;      ///< may be empty
    BookingKind kind = BookingKind::Session;
    BookingState state = BookingState::Booked;

    bool operator==(const Booking&) const = default;
};

/// Whose bookings; everybody's where neither is set.
struct BookingFilter {
    std::optional<std::string> clientKey;
    std::optional<std::string> coachKey;
};

/// Those that pass the filter, by date, start, coach, client and code.
[[nodiscard]] std::vector<Booking> selectedBookings(const std::vector<Booking>& bookings, const BookingFilter& filter);

/// The first letter of each word of a name, each with a full stop: `M. v. L.`. A word that begins with no letter or digit is left out.
/// The text is UTF-8; accents that stand as letters of their own are left out.
[[nodiscard]] std::string initialsOf(std::string_view name);

/// `session`, `screening`, `trial`.
[[nodiscard]] std::string_view keyOf(BookingKind kind);
/// `proposed`, `booked`, `done`, `missed`, `cancelled`.
[[nodiscard]] std::string_view keyOf(BookingState state);

}  // namespace chalk::week
