#include "core/exchange/icalendar.h"

#include "tests/support/booking_on_test.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace chalk::exchange {
namespace {

using week::Booking;
using week::BookingState;

CalendarOptions writtenOnSunday()
{
    CalendarOptions options;
    options.stamp = {base::Date::parse("2026-11-22").value(), 18 * 3600 + 5 * 60 + 9};
    return options;
}

QByteArray unfolded(QByteArray text)
{
    return text.replace("\r\n ", "");
}

/// The values of a property, of every component.
QList<QByteArray> valuesOf(const QByteArray& calendar, const QByteArray& property)
{
    QList<QByteArray> values;
    for (const QByteArray& line : unfolded(calendar).split('\n')) {
        if (line.startsWith(property) && (line.mid(property.size()).startsWith(':') || line.mid(property.size()).startsWith(';'))) {
            values.append(line.mid(property.size() + 1).chopped(1));
        }
    }
    return values;
}

TEST(IcalendarTest, AStampIsAMomentInUtc)
{
    const base::Date other = *base::Date::fromYmd(2026, 11, 24);
    EXPECT_EQ(stampOf(QStringLiteral("2026-11-25T00:30:00+01:00"), other).date, other);
    EXPECT_EQ(stampOf(QStringLiteral("2026-11-25T00:30:00+01:00"), other).second, 23 * 3600 + 30 * 60);
    EXPECT_EQ(stampOf(QStringLiteral("soon"), other).date, other);
    EXPECT_EQ(stampOf(QStringLiteral("soon"), other).second, 0);
}

TEST(IcalendarTest, WritesOneEventWithFloatingTimes)
{
    EXPECT_EQ(icalendarOf({test::usualBooking()}, writtenOnSunday()), QByteArray("BEGIN:VCALENDAR\r\n"
                                                                                "PRODID:-//Chalkrung//Week//EN\r\n"
                                                                                "VERSION:2.0\r\n"
                                                                                "BEGIN:VEVENT\r\n"
                                                                                "UID:k7mq2xwd@chalkrung\r\n"
                                                                                "DTSTAMP:20261122T180509Z\r\n"
                                                                                "SEQUENCE:0\r\n"
                                                                                "DTSTART:20261124T173000\r\n"
                                                                                "DTEND:20261124T183000\r\n"
                                                                                "SUMMARY:Maya Lind\r\n"
                                                                                "LOCATION:Ketch Lane 4\\, big room\r\n"
                                                                                "CATEGORIES:SESSION\r\n"
                                                                                "STATUS:CONFIRMED\r\n"
                                                                                "END:VEVENT\r\n"
                                                                                "END:VCALENDAR\r\n"));
}

// RFC 5545, 3.8.1.11, and RFC 5546, 2.1.4: a changed event keeps its UID and gets a higher SEQUENCE.
TEST(IcalendarTest, SaysWhatBecameOfABooking)
{
    Booking booking = test::usualBooking();
    QList<QByteArray> states;
    for (const BookingState state : week::kBookingStates) {
        booking.state = state;
        booking.revision = static_cast<int>(state);
        const QByteArray text = icalendarOf({booking}, writtenOnSunday());
        states.append(valuesOf(text, "STATUS"));
        EXPECT_EQ(valuesOf(text, "SEQUENCE"), QList<QByteArray>{QByteArray::number(booking.revision)});
        EXPECT_EQ(valuesOf(text, "UID"), QList<QByteArray>{"k7mq2xwd@chalkrung"});
    }
    EXPECT_EQ(states, (QList<QByteArray>{"TENTATIVE", "CONFIRMED", "CONFIRMED", "CONFIRMED", "CANCELLED"}));
}

TEST(IcalendarTest, NamesTheOtherOneOfTheTwo)
{
    CalendarOptions options = writtenOnSunday();
    options.title = QStringLiteral("Training, %1");
    EXPECT_EQ(valuesOf(icalendarOf({test::usualBooking()}, options), "SUMMARY"), QList<QByteArray>{"Training\\, Maya Lind"});
    options.hasInitials = true;
    const QByteArray shortened = icalendarOf({test::usualBooking()}, options);
    EXPECT_EQ(valuesOf(shortened, "SUMMARY"), QList<QByteArray>{"Training\\, M. L."});
    EXPECT_FALSE(shortened.contains("Maya") || shortened.contains("Lind"));
    options.owner = CalendarOwner::Client;
    const QByteArray clients = icalendarOf({test::usualBooking()}, options);
    EXPECT_EQ(valuesOf(clients, "SUMMARY"), QList<QByteArray>{"Training\\, Ada Quist"});
    EXPECT_FALSE(clients.contains("Maya"));
}

TEST(IcalendarTest, LeavesOutAPlaceThatNobodySaidAndEndsAfterMidnight)
{
    Booking booking = test::usualBooking();
    booking.place.clear();
    booking.date = base::Date::parse("2026-12-31").value();
    booking.startMinute = 23 * 60 + 30;
    const QByteArray text = icalendarOf({booking}, writtenOnSunday());
    EXPECT_TRUE(valuesOf(text, "LOCATION").isEmpty());
    EXPECT_EQ(valuesOf(text, "DTSTART"), QList<QByteArray>{"20261231T233000"});
    EXPECT_EQ(valuesOf(text, "DTEND"), QList<QByteArray>{"20270101T003000"});
}

// RFC 5545, 3.1: "Lines of text SHOULD NOT be longer than 75 octets, excluding the line break."
TEST(IcalendarTest, FoldsAfter75OctetsAndNotBefore)
{
    EXPECT_EQ(foldedLine(QByteArray(75, 'a')), QByteArray(QByteArray(75, 'a') + "\r\n"));
    EXPECT_EQ(foldedLine(QByteArray(76, 'a')), QByteArray(QByteArray(75, 'a') + "\r\n a\r\n"));
    EXPECT_EQ(foldedLine(QByteArray(75 + 74, 'a')), QByteArray(QByteArray(75, 'a') + "\r\n " + QByteArray(74, 'a') + "\r\n"));
    EXPECT_EQ(foldedLine(QByteArray(75 + 75, 'a')), QByteArray(QByteArray(75, 'a') + "\r\n " + QByteArray(74, 'a') + "\r\n a\r\n"));
    EXPECT_EQ(foldedLine(""), QByteArray("\r\n"));
}

TEST(IcalendarTest, NeverSplitsACharacter)
{
    for (const char* character : {"a", "é", "李", "🏋"}) {
        for (int before = 0; before < 5; ++before) {
            const QByteArray line = QByteArray(before, 'x') + QByteArray(character).repeated(120);
            const QByteArray folded = foldedLine(line);
            EXPECT_EQ(unfolded(folded), QByteArray(line + "\r\n"));
            for (const QByteArray& part : folded.chopped(2).split('\n')) {
                const QByteArray plain = part.endsWith('\r') ? part.chopped(1) : part;
                EXPECT_LE(plain.size(), 75);
                EXPECT_GE(plain.size(), part == folded.chopped(2).split('\n').last() ? 1 : 72) << "no line is short in vain";
                EXPECT_EQ(QString::fromUtf8(plain).toUtf8(), plain);
                EXPECT_FALSE(QString::fromUtf8(plain).contains(QChar::ReplacementCharacter));
            }
        }
    }
}

// RFC 5545, 3.3.11 and 3.8.1.7: their own examples.
TEST(IcalendarTest, EscapesText)
{
    EXPECT_EQ(escapedText(QStringLiteral("Project XYZ Final Review\nConference Room - 3B\nCome Prepared.")),
              QByteArray("Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared."));
    EXPECT_EQ(escapedText(QStringLiteral("Conference Room - F123, Bldg. 002")), QByteArray("Conference Room - F123\\, Bldg. 002"));
    EXPECT_EQ(escapedText(QStringLiteral("a;b\\c:\"d\"")), QByteArray("a\\;b\\\\c:\"d\""));
    EXPECT_EQ(escapedText(QStringLiteral("a\r\nb\rc\td\a\x7F")), QByteArray("a\\nb\\nc\td"));
}

// RFC 5545, 3.6.5: the example of New York "using only the DTSTART property".
TEST(IcalendarTest, BringsTheRulesOfAZone)
{
    Booking booking = test::usualBooking();
    booking.date = base::Date::parse("1999-01-19").value();
    booking.startMinute = 2 * 60;
    Booking later = booking;
    later.date = base::Date::parse("1999-07-01").value();
    CalendarOptions options = writtenOnSunday();
    options.zone = QTimeZone("America/New_York");
    ASSERT_TRUE(options.zone->isValid());
    const QByteArray text = icalendarOf({later, booking}, options);
    EXPECT_TRUE(text.contains("BEGIN:VTIMEZONE\r\n"
                              "TZID:America/New_York\r\n"
                              "BEGIN:STANDARD\r\n"
                              "DTSTART:19981025T020000\r\n"
                              "TZOFFSETFROM:-0400\r\n"
                              "TZOFFSETTO:-0500\r\n"
                              "TZNAME:EST\r\n"
                              "END:STANDARD\r\n"
                              "BEGIN:DAYLIGHT\r\n"
                              "DTSTART:19990404T020000\r\n"
                              "TZOFFSETFROM:-0500\r\n"
                              "TZOFFSETTO:-0400\r\n"
                              "TZNAME:EDT\r\n"
                              "END:DAYLIGHT\r\n"
                              "END:VTIMEZONE\r\n"))
        << text.toStdString();
    EXPECT_TRUE(text.contains("DTSTART;TZID=America/New_York:19990119T020000\r\n"));
}

TEST(IcalendarTest, KnowsZonesThatNeverChange)
{
    CalendarOptions options = writtenOnSunday();
    options.zone = QTimeZone(5 * 3600 + 1800);
    const QByteArray text = icalendarOf({test::usualBooking()}, options);
    EXPECT_EQ(valuesOf(text, "TZOFFSETFROM"), QList<QByteArray>{"+0530"});
    EXPECT_EQ(valuesOf(text, "TZOFFSETTO"), QList<QByteArray>{"+0530"});
    EXPECT_EQ(text.count("BEGIN:STANDARD"), 1);
    EXPECT_FALSE(text.contains("DAYLIGHT"));
}

TEST(IcalendarTest, WritesAnEmptyWeekWithoutAZone)
{
    CalendarOptions options = writtenOnSunday();
    options.zone = QTimeZone("Europe/Berlin");
    EXPECT_EQ(icalendarOf({}, options), QByteArray("BEGIN:VCALENDAR\r\nPRODID:-//Chalkrung//Week//EN\r\nVERSION:2.0\r\nEND:VCALENDAR\r\n"));
}

}  // namespace
}  // namespace chalk::exchange
