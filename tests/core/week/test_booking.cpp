#include "core/week/booking.h"

#include <gtest/gtest.h>

#include <set>

namespace chalk::week {

TEST(BookingTest, ShortensNamesToTheirInitials)
{
    EXPECT_EQ(initialsOf("Maya Lind"), "M. L.");
    EXPECT_EQ(initialsOf("  Maya  von\tLind "), "M. v. L.");
    EXPECT_EQ(initialsOf("Élodie Ørsted"), "É. Ø.");
    EXPECT_EQ(initialsOf("李 小龙"), "李. 小.");
    EXPECT_EQ(initialsOf("Anne-Marie (Ada) 2nd"), "A. 2.");
    EXPECT_EQ(initialsOf(""), "");
}

TEST(BookingTest, SelectsByClientAndCoachAndPutsThemInOrder)
{
    const base::Date monday = base::Date::parse("2026-11-23").value();
    Booking late;
    late.code = "late";
    late.clientKey = "7";
    late.coachKey = "1";
    late.date = monday + 1;
    Booking early = late;
    early.code = "early";
    early.startMinute = 600;
    early.date = monday;
    Booking first = early;
    first.code = "first";
    first.clientKey = "8";
    first.startMinute = 540;
    const auto codes = [&](const BookingFilter& filter) {
        std::vector<std::string> found;
        for (const Booking& one : selectedBookings({late, early, first}, filter)) {
            found.push_back(one.code);
        }
        return found;
    };
    EXPECT_EQ(codes({}), (std::vector<std::string>{"first", "early", "late"}));
    EXPECT_EQ(codes({"7", {}}), (std::vector<std::string>{"early", "late"}));
    EXPECT_EQ(codes({"8", "1"}), (std::vector<std::string>{"first"}));
    EXPECT_EQ(codes({{}, "2"}), std::vector<std::string>());
}

TEST(BookingTest, HasAKeyForEachKindAndState)
{
    std::set<std::string_view> keys;
    for (const BookingKind kind : kBookingKinds) {
        keys.insert(keyOf(kind));
    }
    for (const BookingState state : kBookingStates) {
        keys.insert(keyOf(state));
    }
    EXPECT_EQ(keys.size(), kBookingKinds.size() + kBookingStates.size());
    EXPECT_FALSE(keys.contains(""));
}

}  // namespace chalk::week
