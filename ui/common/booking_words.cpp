#include "ui/common/booking_words.h"

#include "core/sessions/session.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

namespace chalk::ui::common {

namespace {

QString bookingWord(const char* text)
{
    return QCoreApplication::translate("Booking", text);
}

QString momentText(base::Date date, int startMinute)
{
    return QStringLiteral("%1 %2").arg(dayText(date), qstring(sessions::clockText(startMinute)));
}

}  // namespace

QString bookingLines(const std::vector<week::Booking>& bookings)
{
    QString lines;
    for (const week::Booking& booking : bookings) {
        const bool isProposed = booking.state == week::BookingState::Proposed;
        if (booking.state == week::BookingState::Booked || isProposed) {
            lines += bookingWord("%1, %2 min with %3").arg(momentText(booking.date, booking.startMinute)).arg(booking.minutes).arg(qstring(booking.coachName));
            lines += isProposed ? QLatin1Char(' ') + bookingWord("(not fixed yet)") + QLatin1Char('\n') : QStringLiteral("\n");
        }
    }
    return lines;
}

QString changeMessage(const QString& firstName, const SpokenSlot& from, const std::optional<SpokenSlot>& to)
{
    const QString was = bookingWord("%1, your session on %2 with %3").arg(firstName, momentText(from.date, from.startMinute), from.coach);
    if (!to) {
        return was + QLatin1Char(' ') + bookingWord("cannot take place. Which other time would suit you?");
    }
    return was + QLatin1Char(' ') + bookingWord("moves to %1 with %2. Is that all right?").arg(momentText(to->date, to->startMinute), to->coach);
}

}  // namespace chalk::ui::common
