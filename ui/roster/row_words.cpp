#include "ui/roster/row_words.h"

#include "ui/common/formats.h"
#include "ui/common/lock_words.h"

#include <QCoreApplication>

#include <cstdlib>

namespace chalk::ui::roster {

namespace {

QString rowWords(const char* text)
{
    return QCoreApplication::translate("Roster", text);
}

QString separated(const QString& a, const QString& b)
{
    const QLatin1String between = a.isEmpty() || b.isEmpty() ? QLatin1String() : QLatin1String(" \xB7 ");
    return a + between + b;
}

/// Why somebody without a session has none.
QString unbookedText(const store::RosterEntry& entry, base::Date today)
{
    if (clients::isBlocked(entry.clearance, today)) {
        return common::lockWordsOf(entry.clearance, entry.client, today).brief;
    }
    if (entry.client.awayUntil && today < *entry.client.awayUntil) {
        return rowWords(QT_TRANSLATE_NOOP("Roster", "Away, back %1")).arg(common::shortDayText(*entry.client.awayUntil));
    }
    return lastCameText(entry.lastSession);
}

}  // namespace

QString detailText(const clients::Client& client, base::Date today)
{
    const QString age = client.birthDate ? QString::number(base::ageOn(*client.birthDate, today)) : QString();
    return separated(age, common::qstring(client.goal));
}

QString whenText(const std::optional<sessions::Session>& next, base::Date today)
{
    if (!next) {
        return rowWords(QT_TRANSLATE_NOOP("Roster", "Not booked"));
    }
    const QString clock = common::qstring(sessions::clockText(next->startMinute));
    if (next->date == today) {
        return rowWords(QT_TRANSLATE_NOOP("Roster", "Today %1")).arg(clock);
    }
    const QString day = common::dayText(next->date);
    const bool isThisWeek = next->date - today < 7;
    return (isThisWeek ? day.section(QLatin1Char(' '), 0, 0) : day) + QLatin1Char(' ') + clock;
}

QString whereText(const store::RosterEntry& entry, base::Date today)
{
    if (!entry.next) {
        return unbookedText(entry, today);
    }
    switch (entry.next->kind) {
    case sessions::SessionKind::MovementScreen:
        return rowWords(QT_TRANSLATE_NOOP("Roster", "Movement screen"));
    case sessions::SessionKind::Trial:
        return rowWords(QT_TRANSLATE_NOOP("Roster", "Trial session"));
    case sessions::SessionKind::Training:
        break;
    }
    const QString company = entry.next->placeCapacity <= 1
                                ? rowWords(QT_TRANSLATE_NOOP("Roster", "alone"))
                                : rowWords(QT_TRANSLATE_NOOP("Roster", "%1 of %2")).arg(entry.nextTaken).arg(entry.next->placeCapacity);
    return separated(common::qstring(entry.next->place), company);
}

QString trendText(const checkin::LoadTrend& trend)
{
    switch (trend.kind) {
    case checkin::LoadTrend::Kind::None:
        return QStringLiteral("–");
    case checkin::LoadTrend::Kind::New:
        return rowWords(QT_TRANSLATE_NOOP("Roster", "new"));
    case checkin::LoadTrend::Kind::Back:
        return rowWords(QT_TRANSLATE_NOOP("Roster", "back"));
    case checkin::LoadTrend::Kind::Change:
        break;
    }
    const QString sign = trend.percent > 0 ? QStringLiteral("+") : trend.percent < 0 ? QStringLiteral("−") : QString();
    return rowWords(QT_TRANSLATE_NOOP("Roster", "%1%2 %")).arg(sign).arg(std::abs(trend.percent));
}

QString lastCameText(const std::optional<base::Date>& lastCame)
{
    return lastCame ? rowWords(QT_TRANSLATE_NOOP("Roster", "Last here %1")).arg(common::dayText(*lastCame)) : QString();
}

QString liftNote(const checkin::LiftFacts& lift)
{
    if (lift.isOnHold) {
        return rowWords(QT_TRANSLATE_NOOP("Roster", "on hold"));
    }
    // A lift that came back to Control has been there before, and the first day is not the one that is meant.
    const bool isBack = !progression::isLoaded(lift.stage) && lift.firstWork;
    return lift.stageSince && !isBack ? rowWords(QT_TRANSLATE_NOOP("Roster", "since %1")).arg(common::shortDayText(*lift.stageSince)) : QString();
}

}  // namespace chalk::ui::roster
