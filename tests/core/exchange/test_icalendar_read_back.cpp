#include "core/exchange/icalendar.h"

#include "tests/support/booking_on_test.h"

#include <gtest/gtest.h>
#include <libical/ical.h>

#include <memory>

namespace chalk::exchange {
namespace {

using week::Booking;

struct ComponentFreeing {
    void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};
using Component = std::unique_ptr<icalcomponent, ComponentFreeing>;

/// Read by another hand than the one that wrote it.
Component readBack(const std::vector<Booking>& bookings, const CalendarOptions& options)
{
    Component calendar(icalparser_parse_string(icalendarOf(bookings, options).constData()));
    EXPECT_TRUE(calendar);
    EXPECT_EQ(icalcomponent_count_errors(calendar.get()), 0);
    EXPECT_EQ(icalrestriction_check(calendar.get()), 1);
    EXPECT_EQ(icalcomponent_count_errors(calendar.get()), 0);
    return calendar;
}

std::string textOf(const icaltimetype& time)
{
    char* text = icaltime_as_ical_string_r(time);
    std::string copy = text;
    icalmemory_free_buffer(text);
    return copy;
}

Booking oddBooking()
{
    Booking booking = test::usualBooking();
    booking.code = "b3n9rt5z";
    booking.clientName = "Élodie O’Brien; \"Lo\", with a name that goes on and on so that its line is folded 李小龙";
    booking.place = "Back\\room\nfirst floor";
    booking.date = base::Date::parse("2026-10-25").value();
    booking.startMinute = 23 * 60 + 45;
    booking.revision = 4;
    booking.state = week::BookingState::Cancelled;
    return booking;
}

TEST(IcalendarReadBackTest, SaysTheSameToAnotherReader)
{
    const std::vector<Booking> bookings{test::usualBooking(), oddBooking()};
    const Component calendar = readBack(bookings, {});
    std::size_t read = 0;
    for (icalcomponent* event = icalcomponent_get_first_component(calendar.get(), ICAL_VEVENT_COMPONENT); event != nullptr;
         event = icalcomponent_get_next_component(calendar.get(), ICAL_VEVENT_COMPONENT)) {
        ASSERT_LT(read, bookings.size());
        const Booking& booking = bookings[read++];
        EXPECT_EQ(icalcomponent_get_uid(event), booking.code + "@chalkrung");
        EXPECT_EQ(icalcomponent_get_summary(event), booking.clientName);
        EXPECT_EQ(icalcomponent_get_location(event), booking.place);
        EXPECT_EQ(icalcomponent_get_sequence(event), booking.revision);
        EXPECT_EQ(icalcomponent_get_status(event), booking.revision == 4 ? ICAL_STATUS_CANCELLED : ICAL_STATUS_CONFIRMED);
        EXPECT_EQ(icaldurationtype_as_int(icalcomponent_get_duration(event)), 3600);
        EXPECT_EQ(icalcomponent_get_dtstart(event).zone, nullptr) << "floating";
    }
    EXPECT_EQ(read, bookings.size());
    EXPECT_EQ(textOf(icalcomponent_get_dtstart(icalcomponent_get_first_component(calendar.get(), ICAL_VEVENT_COMPONENT))), "20261124T173000");
    EXPECT_EQ(textOf(icalcomponent_get_dtend(icalcomponent_get_next_component(calendar.get(), ICAL_VEVENT_COMPONENT))), "20261026T004500");
}

/// The clock goes back in the night to 25 October 2026 in Berlin, and forward in the one to 28 March 2027.
TEST(IcalendarReadBackTest, MeansTheSameMomentsInAZone)
{
    CalendarOptions options;
    options.zone = QTimeZone("Europe/Berlin");
    ASSERT_TRUE(options.zone->isValid());
    for (const char* day : {"2026-10-24", "2026-10-25", "2026-11-24", "2027-03-27", "2027-03-28", "2027-07-01"}) {
        for (const int minute : {0, 90, 4 * 60, 17 * 60 + 30}) {
            Booking booking = test::usualBooking();
            booking.date = base::Date::parse(day).value();
            booking.startMinute = minute;
            const Component calendar = readBack({test::usualBooking(), booking}, options);
            icalcomponent_get_first_component(calendar.get(), ICAL_VEVENT_COMPONENT);
            const icaltimetype start = icalcomponent_get_dtstart(icalcomponent_get_next_component(calendar.get(), ICAL_VEVENT_COMPONENT));
            ASSERT_NE(start.zone, nullptr);
            const auto ymd = booking.date.ymd();
            const QDateTime wanted(QDate(static_cast<int>(ymd.year()), static_cast<int>(static_cast<unsigned>(ymd.month())), static_cast<int>(static_cast<unsigned>(ymd.day()))),
                                   QTime(minute / 60, minute % 60), *options.zone);
            EXPECT_EQ(icaltime_as_timet_with_zone(start, start.zone), wanted.toSecsSinceEpoch()) << day << ' ' << minute;
        }
    }
}

}  // namespace
}  // namespace chalk::exchange
