#include "core/exchange/icalendar.h"

#include <QDateTime>

#include <algorithm>

namespace chalk::exchange {

namespace {

using week::Booking;
using week::BookingState;

constexpr qsizetype kMostOctets = 75;
constexpr int kMinutesADay = 24 * 60;

QString utf8Text(const std::string& text)
{
    return QString::fromStdString(text);
}

QByteArray padded(int number, int digits)
{
    return QByteArray::number(number).rightJustified(digits, '0');
}

QByteArray dateText(base::Date date)
{
    return QByteArray::fromStdString(date.toString()).replace("-", "");
}

/// `20261124T173000`: form 1 of 3.3.5.
QByteArray localText(base::Date date, int minute)
{
    const int days = minute / kMinutesADay;
    const int ofDay = minute % kMinutesADay;
    return dateText(date + days) + "T" + padded(ofDay / 60, 2) + padded(ofDay % 60, 2) + "00";
}

QByteArray stampText(const CalendarStamp& stamp)
{
    return dateText(stamp.date) + "T" + padded(stamp.second / 3600, 2) + padded(stamp.second / 60 % 60, 2) + padded(stamp.second % 60, 2) + "Z";
}

/// `+0100`, `-033030`: 3.3.14; seconds only where there are any.
QByteArray offsetText(int seconds)
{
    const int size = std::abs(seconds);
    const QByteArray sign = seconds < 0 ? "-" : "+";
    return sign + padded(size / 3600, 2) + padded(size / 60 % 60, 2) + (size % 60 == 0 ? QByteArray() : padded(size % 60, 2));
}

QByteArray statusOf(BookingState state)
{
    switch (state) {
    case BookingState::Proposed: return "TENTATIVE";
    case BookingState::Cancelled: return "CANCELLED";
    case BookingState::Booked:
    case BookingState::Done:
    case BookingState::Missed: break;
    }
    return "CONFIRMED";
}

class CalendarWriting {
public:
    explicit CalendarWriting(const CalendarOptions& options) : m_options(options) {}

    QByteArray written(const std::vector<Booking>& bookings)
    {
        line("BEGIN:VCALENDAR");
        line("PRODID:-//Chalkrung//Week//EN");
        line("VERSION:2.0");
        if (m_options.zone && !bookings.empty()) {
            writeZone(bookings);
        }
        for (const Booking& booking : bookings) {
            writeEvent(booking);
        }
        line("END:VCALENDAR");
        return m_text;
    }

private:
    void line(const QByteArray& text) { m_text += foldedLine(text); }

    [[nodiscard]] QByteArray timeLine(const QByteArray& name, base::Date date, int minute) const
    {
        return name + (m_options.zone ? ";TZID=" + m_options.zone->id() : QByteArray()) + ":" + localText(date, minute);
    }

    [[nodiscard]] QString titleOf(const Booking& booking) const
    {
        const std::string client = m_options.hasInitials ? week::initialsOf(booking.clientName) : booking.clientName;
        return m_options.title.arg(utf8Text(m_options.owner == CalendarOwner::Coach ? client : booking.coachName));
    }

    void writeEvent(const Booking& booking)
    {
        line("BEGIN:VEVENT");
        line("UID:" + escapedText(utf8Text(booking.code)) + "@chalkrung");
        line("DTSTAMP:" + stampText(m_options.stamp));
        line("SEQUENCE:" + QByteArray::number(booking.revision));
        line(timeLine("DTSTART", booking.date, booking.startMinute));
        line(timeLine("DTEND", booking.date, booking.startMinute + booking.minutes));
        line("SUMMARY:" + escapedText(titleOf(booking)));
        if (!booking.place.empty()) {
            line("LOCATION:" + escapedText(utf8Text(booking.place)));
        }
        line("CATEGORIES:" + QByteArray::fromStdString(std::string(week::keyOf(booking.kind))).toUpper());
        line("STATUS:" + statusOf(booking.state));
        line("END:VEVENT");
    }

    [[nodiscard]] QDateTime momentOf(base::Date date, int minute) const
    {
        return QDateTime(QDate(1970, 1, 1).addDays(date.daysSince1970()), QTime(0, 0), Qt::UTC).addSecs(minute * 60);
    }

    /// Each offset that is in force from before the first event to the end of the last one, from the moment on at which it begins (3.6.5).
    void writeZone(const std::vector<Booking>& bookings)
    {
        const QTimeZone& zone = *m_options.zone;
        const auto begins = [this](const Booking& one) { return momentOf(one.date, one.startMinute); };
        QDateTime first = begins(bookings.front());
        QDateTime last = first;
        for (const Booking& booking : bookings) {
            first = std::min(first, begins(booking));
            last = std::max(last, begins(booking).addSecs(booking.minutes * 60));
        }
        // Wall-clock times read as UTC are off by less than a day.
        first = first.addDays(-1);
        last = last.addDays(1);
        line("BEGIN:VTIMEZONE");
        line("TZID:" + zone.id());
        const QDateTime inForce = zone.previousTransition(first).atUtc;
        if (inForce.isValid()) {
            writeOffset(zone, inForce, inForce);
        } else {
            writeOffset(zone, QDateTime(QDate(1970, 1, 1), QTime(0, 0), Qt::UTC), first);
        }
        for (const QTimeZone::OffsetData& change : zone.transitions(first, last)) {
            writeOffset(zone, change.atUtc, change.atUtc);
        }
        line("END:VTIMEZONE");
    }

    /// The offset at `moment`, in force from `onset` on. The onset is local time by the offset before it.
    void writeOffset(const QTimeZone& zone, const QDateTime& onset, const QDateTime& moment)
    {
        const int offset = zone.offsetFromUtc(moment);
        const int before = onset == moment ? zone.offsetFromUtc(moment.addSecs(-1)) : offset;
        const QByteArray kind = zone.isDaylightTime(moment) ? "DAYLIGHT" : "STANDARD";
        line("BEGIN:" + kind);
        line("DTSTART:" + onset.addSecs(before).toString(QStringLiteral("yyyyMMdd'T'HHmmss")).toLatin1());
        line("TZOFFSETFROM:" + offsetText(before));
        line("TZOFFSETTO:" + offsetText(offset));
        line("TZNAME:" + escapedText(zone.abbreviation(moment)));
        line("END:" + kind);
    }

    const CalendarOptions& m_options;
    QByteArray m_text;
};

bool isInsideCharacter(char byte)
{
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

}  // namespace

CalendarStamp stampOf(const QString& utc, base::Date otherwise)
{
    const QDateTime moment = QDateTime::fromString(utc, Qt::ISODate).toUTC();
    const auto date = base::Date::fromYmd(moment.date().year(), moment.date().month(), moment.date().day());
    return {date.value_or(otherwise), date ? moment.time().msecsSinceStartOfDay() / 1000 : 0};
}

QByteArray foldedLine(const QByteArray& line)
{
    QByteArray folded;
    qsizetype from = 0;
    qsizetype room = kMostOctets;
    while (line.size() - from > room) {
        qsizetype to = from + room;
        while (to > from + 1 && isInsideCharacter(line[to])) {
            --to;
        }
        folded += line.mid(from, to - from) + "\r\n ";
        from = to;
        room = kMostOctets - 1;  // the space that a folded line begins with counts
    }
    return folded + line.mid(from) + "\r\n";
}

QByteArray escapedText(const QString& text)
{
    QByteArray escaped;
    QString lines = text;
    lines.replace(QLatin1String("\r\n"), QLatin1String("\n")).replace(QLatin1Char('\r'), QLatin1Char('\n'));
    for (const char byte : lines.toUtf8()) {
        if (byte == '\n') {
            escaped += "\\n";
        } else if (byte == '\\' || byte == ';' || byte == ',') {
            escaped += '\\';
            escaped += byte;
        } else if (byte == '\t' || (static_cast<unsigned char>(byte) >= 0x20U && byte != '\x7F')) {
            escaped += byte;
        }
    }
    return escaped;
}

QByteArray icalendarOf(const std::vector<Booking>& bookings, const CalendarOptions& options)
{
    return CalendarWriting(options).written(bookings);
}

}  // namespace chalk::exchange
