#include "ui/common/booking_words.h"

#include <gtest/gtest.h>

namespace chalk::ui::common {

namespace {

week::Booking bookingOn(int day, week::BookingState state)
{
    week::Booking booking;
    booking.clientName = "Priya Raman";
    booking.coachName = "Ines";
    booking.date = *base::Date::fromYmd(2026, 11, day);
    booking.startMinute = 17 * 60 + 30;
    booking.minutes = 45;
    booking.state = state;
    return booking;
}

}  // namespace

TEST(BookingWords, OnlyWhatStandsIsSent)
{
    EXPECT_EQ(bookingLines({bookingOn(23, week::BookingState::Done), bookingOn(24, week::BookingState::Booked), bookingOn(25, week::BookingState::Cancelled),
                            bookingOn(26, week::BookingState::Proposed)}),
              QStringLiteral("Tue 24 Nov 17:30, 45 min with Ines\nThu 26 Nov 17:30, 45 min with Ines (not fixed yet)\n"));
    EXPECT_TRUE(bookingLines({}).isEmpty());
}

TEST(BookingWords, AChangeSaysFromWhereToWhere)
{
    const SpokenSlot from{*base::Date::fromYmd(2026, 11, 26), 16 * 60 + 30, QStringLiteral("Tobias")};
    const SpokenSlot to{*base::Date::fromYmd(2026, 11, 27), 9 * 60, QStringLiteral("Ines")};
    EXPECT_EQ(changeMessage(QStringLiteral("Priya"), from, to),
              QStringLiteral("Priya, your session on Thu 26 Nov 16:30 with Tobias moves to Fri 27 Nov 09:00 with Ines. Is that all right?"));
    EXPECT_EQ(changeMessage(QStringLiteral("Priya"), from, std::nullopt),
              QStringLiteral("Priya, your session on Thu 26 Nov 16:30 with Tobias cannot take place. Which other time would suit you?"));
}

}  // namespace chalk::ui::common
