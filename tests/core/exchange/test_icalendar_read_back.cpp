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

/// A content line of a calendar as another reader unfolds it and reads its escapes.
std::string summaryReadBack(const QByteArray& contentLine)
{
    const QByteArray calendar = "BEGIN:VCALENDAR\r\nPRODID:-//x//y//EN\r\nVERSION:2.0\r\nBEGIN:VEVENT\r\nUID:a@b\r\nDTSTAMP:19970714T170000Z\r\n"
                                "DTSTART:19970714T170000Z\r\n" + contentLine + "END:VEVENT\r\nEND:VCALENDAR\r\n";
    const Component read(icalparser_parse_string(calendar.constData()));
    const char* text = read ? icalcomponent_get_summary(icalcomponent_get_first_component(read.get(), ICAL_VEVENT_COMPONENT)) : nullptr;
    return text != nullptr ? text : "not read";
}

/// The days of an example of a recurring event, nine in the morning in New York, as RFC 5545 lists them in 3.8.5.3.
struct ListedDays {
    const char* example;
    std::vector<const char*> days;
    std::vector<int> offsets;  ///< hours of UTC that the RFC names beside them: EDT -4, EST -5
};

const std::vector<ListedDays>& listedDays()
{
    static const std::vector<ListedDays> listed{
        {"RRULE:FREQ=WEEKLY;COUNT=10, 'Weekly for 10 occurrences'",
         {"1997-09-02", "1997-09-09", "1997-09-16", "1997-09-23", "1997-09-30", "1997-10-07", "1997-10-14", "1997-10-21", "1997-10-28", "1997-11-04"},
         {-4, -4, -4, -4, -4, -4, -4, -4, -5, -5}},
        {"RRULE:FREQ=MONTHLY;COUNT=6;BYDAY=-2MO, 'Monthly on the second-to-last Monday of the month for 6 months'",
         {"1997-09-22", "1997-10-20", "1997-11-17", "1997-12-22", "1998-01-19", "1998-02-16"},
         {-4, -4, -5, -5, -5, -5}},
        {"RRULE:FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3, 'The third instance into the month'",
         {"1997-09-04", "1997-10-07", "1997-11-06"},
         {-4, -4, -5}}};
    return listed;
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

/// RFC 5545, 3.1: "DESCRIPTION:This is a long description that exists on a long line." folded inside of a word.
TEST(IcalendarReadBackTest, AFoldedLineIsOneLineToAnotherReader)
{
    for (const int length : {1, 66, 67, 68, 140, 400}) {
        for (const char* character : {"a", "é", "李", "🏋"}) {
            const std::string text = QByteArray(character).repeated(length).toStdString();
            EXPECT_EQ(summaryReadBack(foldedLine("SUMMARY:" + escapedText(QString::fromStdString(text)))), text) << length << ' ' << character;
        }
    }
    const std::string long1 = "This is a long description that exists on a long line.";
    EXPECT_EQ(summaryReadBack("SUMMARY:This is a lo\r\n ng description\r\n  that exists on a long line.\r\n"), long1) << "the reader itself, by the RFC's own folding";
    EXPECT_EQ(summaryReadBack(foldedLine("SUMMARY:" + escapedText(QString::fromStdString(long1)))), long1);
}

/// RFC 5545, 3.3.11: its example of a TEXT value with line ends, and every character that it escapes.
TEST(IcalendarReadBackTest, EscapedTextIsTheSameToAnotherReader)
{
    for (const char* text : {"Project XYZ Final Review\nConference Room - 3B\nCome Prepared.", "a;b,c\\d", "\\n is no line end", "\\;\\,\\\\", "colon: \"quoted\""}) {
        EXPECT_EQ(summaryReadBack(foldedLine("SUMMARY:" + escapedText(QString::fromUtf8(text)))), text);
    }
}

/// RFC 5545, 3.8.5.3. Chalkrung writes no RRULE: every booking is an event of its own. So each day that an example lists is written as one, and
/// another reader must find the moment that the RFC names, on both sides of the change of the clock.
TEST(IcalendarReadBackTest, TheDaysOfTheExamplesAreTheMomentsThatTheRfcNames)
{
    CalendarOptions options;
    options.zone = QTimeZone("America/New_York");
    ASSERT_TRUE(options.zone->isValid());
    for (const ListedDays& listed : listedDays()) {
        std::vector<Booking> bookings;
        for (const char* day : listed.days) {
            Booking booking = test::usualBooking();
            booking.date = base::Date::parse(day).value();
            booking.startMinute = 9 * 60;
            bookings.push_back(booking);
        }
        const Component calendar = readBack(bookings, options);
        icalcomponent* event = icalcomponent_get_first_component(calendar.get(), ICAL_VEVENT_COMPONENT);
        for (std::size_t i = 0; i < bookings.size(); ++i) {
            ASSERT_NE(event, nullptr);
            const icaltimetype start = icalcomponent_get_dtstart(event);
            const qint64 midnight = qint64(bookings[i].date.daysSince1970()) * 86'400;
            EXPECT_EQ(icaltime_as_timet_with_zone(start, start.zone), midnight + (9 - listed.offsets[i]) * 3600) << listed.example << ' ' << listed.days[i];
            event = icalcomponent_get_next_component(calendar.get(), ICAL_VEVENT_COMPONENT);
        }
        EXPECT_EQ(event, nullptr);
        EXPECT_FALSE(icalendarOf(bookings, options).contains("RRULE"));
    }
}

}  // namespace
}  // namespace chalk::exchange
