#include "core/week/booking.h"

#include <algorithm>
#include <tuple>

namespace chalk::week {

namespace {

bool isWordGap(char byte)
{
    return byte == ' ' || byte == '\t' || byte == '\n' || byte == '\r';
}

/// How many bytes the character takes that begins with this one.
std::size_t utf8Length(char first)
{
    const auto byte = static_cast<unsigned char>(first);
    return byte < 0xC0 ? 1 : byte < 0xE0 ? 2 : byte < 0xF0 ? 3 : 4;
}

/// Letters and digits of ASCII, and everything beyond it.
bool isInitial(char first)
{
    const auto byte = static_cast<unsigned char>(first);
    const unsigned char lower = byte | 0x20U;
    return (lower >= 'a' && lower <= 'z') || (byte >= '0' && byte <= '9') || byte >= 0xC0;
}

}  // namespace

std::vector<Booking> selectedBookings(const std::vector<Booking>& bookings, const BookingFilter& filter)
{
    std::vector<Booking> selected;
    std::copy_if(bookings.begin(), bookings.end(), std::back_inserter(selected), [&](const Booking& one) {
        return (!filter.clientKey || one.clientKey == *filter.clientKey) && (!filter.coachKey || one.coachKey == *filter.coachKey);
    });
    const auto place = [](const Booking& one) { return std::tie(one.date, one.startMinute, one.coachName, one.clientName, one.code); };
    std::stable_sort(selected.begin(), selected.end(), [&](const Booking& a, const Booking& b) { return place(a) < place(b); });
    return selected;
}

std::string initialsOf(std::string_view name)
{
    std::string initials;
    bool isWordStart = true;
    for (std::size_t at = 0; at < name.size(); ++at) {
        if (isWordGap(name[at])) {
            isWordStart = true;
        } else if (isWordStart) {
            isWordStart = false;
            if (isInitial(name[at])) {
                initials += initials.empty() ? "" : " ";
                initials += name.substr(at, utf8Length(name[at]));
                initials += '.';
            }
        }
    }
    return initials;
}

std::string_view keyOf(BookingKind kind)
{
    switch (kind) {
    case BookingKind::Session: return "session";
    case BookingKind::Screening: return "screening";
    case BookingKind::Trial: return "trial";
    }
    return {};
}

std::string_view keyOf(BookingState state)
{
    switch (state) {
    case BookingState::Proposed: return "proposed";
    case BookingState::Booked: return "booked";
    case BookingState::Done: return "done";
    case BookingState::Missed: return "missed";
    case BookingState::Cancelled: return "cancelled";
    }
    return {};
}

}  // namespace chalk::week
