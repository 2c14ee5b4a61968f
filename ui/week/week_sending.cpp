#include "ui/week/week_sending.h"

#include "core/exchange/bookings_csv.h"
#include "core/exchange/icalendar.h"
#include "ui/common/booking_words.h"
#include "ui/common/dialogs.h"
#include "ui/common/formats.h"
#include "ui/common/whole_file.h"

#include <QClipboard>
#include <QCoreApplication>
#include <QGuiApplication>

namespace chalk::ui::week {

namespace {

QString sendingText(const char* text)
{
    return QCoreApplication::translate("WeekSending", text);
}

/// `week-2026-W48-ines.ics`.
QString fileName(const WeekToSend& week, const QString& whose, const QString& suffix)
{
    QString name = QStringLiteral("week-%1").arg(common::qstring(base::toString(week.monday.isoWeek())));
    if (!whose.isEmpty()) {
        QString plain;
        for (const QChar letter : whose.toLower()) {
            plain += letter.isLetterOrNumber() ? letter : QLatin1Char('-');
        }
        name += QLatin1Char('-') + plain;
    }
    return name + QLatin1Char('.') + suffix;
}

SendingOutcome writeFile(const QString& path, const QByteArray& bytes)
{
    if (const auto fault = common::writeWhole(path, bytes)) {
        return {sendingText("%1 could not be written: %2").arg(path, *fault), {}};
    }
    return {{}, path};
}

}  // namespace

SendingOutcome saveCalendar(const WeekToSend& week, const WeekRecipient& recipient, common::Dialogs& dialogs, QWidget* parent)
{
    const auto path = dialogs.fileToSave(parent, {sendingText("Save the calendar"), {}, fileName(week, recipient.name, QStringLiteral("ics")), sendingText("Calendar (*.ics)"), QStringLiteral("ics")});
    if (!path) {
        return {};
    }
    exchange::CalendarOptions options;
    options.stamp = exchange::stampOf(week.atUtc, week.monday);
    options.owner = recipient.filter.clientKey ? exchange::CalendarOwner::Client : exchange::CalendarOwner::Coach;
    return writeFile(*path, exchange::icalendarOf(selectedBookings(week.bookings, recipient.filter), options));
}

SendingOutcome saveTable(const WeekToSend& week, common::Dialogs& dialogs, QWidget* parent)
{
    const auto path = dialogs.fileToSave(parent, {sendingText("Save the week as a table"), {}, fileName(week, {}, QStringLiteral("csv")), sendingText("Table (*.csv)"), QStringLiteral("csv")});
    return path ? writeFile(*path, exchange::bookingsCsvOf(week.bookings)) : SendingOutcome();
}

int copyLines(const WeekToSend& week, const WeekRecipient& recipient)
{
    const QString lines = common::bookingLines(selectedBookings(week.bookings, recipient.filter));
    QGuiApplication::clipboard()->setText(lines);
    return static_cast<int>(lines.count(QLatin1Char('\n')));
}

}  // namespace chalk::ui::week
