#include "core/exchange/bookings_csv.h"

#include "tests/support/booking_on_test.h"

#include <gtest/gtest.h>

namespace chalk::exchange {
namespace {

// RFC 4180, 2: rules 1 (CRLF), 3 (a header) and 4 (as many fields in each record).
TEST(BookingsCsvTest, WritesAHeaderAndARecordForEachBooking)
{
    week::Booking second = test::usualBooking();
    second.startMinute = 23 * 60 + 30;
    second.clientName = "Lind, Maya \"Mo\"";
    second.place = "";
    second.kind = week::BookingKind::Screening;
    second.state = week::BookingState::Missed;
    EXPECT_EQ(bookingsCsvOf({test::usualBooking(), second}),
              QByteArray("date,start,end,minutes,client,coach,place,kind,state,code\r\n"
                         "2026-11-24,17:30,18:30,60,Maya Lind,Ada Quist,\"Ketch Lane 4, big room\",session,booked,k7mq2xwd\r\n"
                         "2026-11-24,23:30,00:30,60,\"Lind, Maya \"\"Mo\"\"\",Ada Quist,,screening,missed,k7mq2xwd\r\n"));
    EXPECT_EQ(bookingsCsvOf({}), QByteArray("date,start,end,minutes,client,coach,place,kind,state,code\r\n"));
}

TEST(BookingsCsvTest, ShortensClientsAlone)
{
    const QByteArray text = bookingsCsvOf({test::usualBooking()}, true);
    EXPECT_TRUE(text.contains(",M. L.,Ada Quist,"));
    EXPECT_FALSE(text.contains("Maya"));
}

// RFC 4180, 2: rules 5 to 7, with the fields of its own examples.
TEST(BookingsCsvTest, QuotesAFieldOnlyWhereItMust)
{
    EXPECT_EQ(csvField(QStringLiteral("aaa")), QByteArray("aaa"));
    EXPECT_EQ(csvField(QStringLiteral("b\r\nbb")), QByteArray("\"b\r\nbb\""));
    EXPECT_EQ(csvField(QStringLiteral("b\"bb")), QByteArray("\"b\"\"bb\""));
    EXPECT_EQ(csvField(QStringLiteral("b,bb")), QByteArray("\"b,bb\""));
    EXPECT_EQ(csvField(QStringLiteral("b\nb")), QByteArray("\"b\nb\""));
    EXPECT_EQ(csvField(QStringLiteral(" Élodie ")), QByteArray(" Élodie "));
    EXPECT_EQ(csvField(QString()), QByteArray());
}

}  // namespace
}  // namespace chalk::exchange
