#include "core/exchange/bookings_csv.h"

#include "core/sessions/session.h"

#include <QByteArrayList>
#include <QStringList>

namespace chalk::exchange {

namespace {

constexpr int kMinutesOfADay = 24 * 60;

QByteArray recordOf(const QStringList& fields)
{
    QByteArrayList written;
    for (const QString& field : fields) {
        written.append(csvField(field));
    }
    return written.join(',') + "\r\n";
}

QString csvText(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

}  // namespace

QByteArray csvField(const QString& text)
{
    QByteArray field = text.toUtf8();
    if (field.contains(',') || field.contains('"') || field.contains('\r') || field.contains('\n')) {
        return "\"" + field.replace("\"", "\"\"") + "\"";
    }
    return field;
}

QByteArray bookingsCsvOf(const std::vector<week::Booking>& bookings, bool hasInitials)
{
    QByteArray text = "date,start,end,minutes,client,coach,place,kind,state,code\r\n";
    for (const week::Booking& one : bookings) {
        text += recordOf({csvText(one.date.toString()), csvText(sessions::clockText(one.startMinute)), csvText(sessions::clockText((one.startMinute + one.minutes) % kMinutesOfADay)), QString::number(one.minutes),
                          csvText(hasInitials ? week::initialsOf(one.clientName) : one.clientName), csvText(one.coachName), csvText(one.place),
                          csvText(week::keyOf(one.kind)), csvText(week::keyOf(one.state)), csvText(one.code)});
    }
    return text;
}

}  // namespace chalk::exchange
