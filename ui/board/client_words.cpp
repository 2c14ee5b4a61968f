#include "ui/board/client_words.h"

#include "ui/board/board_text.h"
#include "ui/board/board_words.h"
#include "ui/common/formats.h"

#include <QStringList>

namespace chalk::ui::board {

namespace {

QString timesAWeek(int times)
{
    switch (times) {
    case 1:
        return BoardText::tr("once a week");
    case 2:
        return BoardText::tr("twice a week");
    default:
        return BoardText::tr("%1 times a week").arg(times);
    }
}

/// The month of coaching that `day` falls in, 1 the first.
int monthOf(base::Date start, base::Date day)
{
    const auto from = start.ymd();
    const auto to = day.ymd();
    const int months = (static_cast<int>(to.year()) - static_cast<int>(from.year())) * 12 +
                       static_cast<int>(static_cast<unsigned>(to.month())) - static_cast<int>(static_cast<unsigned>(from.month()));
    return to.day() < from.day() ? months : months + 1;
}

QString firstName(const ClientCase& client)
{
    return common::qstring(client.client.name).section(QLatin1Char(' '), 0, 0);
}

QString nameOf(const LiftCase& lift)
{
    return common::qstring(lift.exercise.name);
}

}  // namespace

QString subtitleOf(const ClientCase& client)
{
    QStringList parts;
    if (client.client.birthDate) {
        parts.append(QString::number(base::ageOn(*client.client.birthDate, client.today)));
    }
    if (!client.client.goal.empty()) {
        parts.append(common::qstring(client.client.goal));
    }
    parts.append(BoardText::tr("with %1").arg(common::qstring(client.coachName)));
    if (const int month = monthOf(client.client.startedOn, client.today); month > 0) {
        parts.append(BoardText::tr("month %1").arg(month));
    }
    parts.append(timesAWeek(client.client.sessionsPerWeek));
    return parts.join(QStringLiteral(" · "));
}

NextSessionWords nextSessionWordsOf(const ClientCase& client)
{
    if (!client.nextSession) {
        return {BoardText::tr("Not booked"), {}};
    }
    const sessions::Session& session = *client.nextSession;
    const QString day = session.date == client.today ? BoardText::tr("Today") : common::dayText(session.date);
    NextSessionWords words;
    words.when =
        QStringLiteral("%1 %2, %3").arg(day, common::qstring(sessions::clockText(session.startMinute)), common::qstring(session.place));
    words.places = session.placeCapacity > 1
                       ? BoardText::tr("%1 of %2 places taken").arg(client.nextSessionTaken).arg(session.placeCapacity)
                       : BoardText::tr("alone");
    return words;
}

QString heldWords(const LiftCase& lift, const ClientCase& client)
{
    return BoardText::tr("%1 held at %2 for %3").arg(nameOf(lift), loadTextOf(lift, lift.next.load), firstName(client));
}

QString changedWords(const LiftCase& lift, const progression::Prescription& after, const ClientCase& client)
{
    if (after.kind != progression::PrescriptionKind::Work) {
        return BoardText::tr("%1 set to %2 for %3").arg(nameOf(lift), common::stageName(after.stage), firstName(client));
    }
    return BoardText::tr("%1 set to %2, %3, for %4")
        .arg(nameOf(lift), loadTextOf(lift, after.load), setsTextOf(lift, after), firstName(client));
}

QString releasedWords(const LiftCase& lift, const ClientCase& client)
{
    return BoardText::tr("%1 released for %2").arg(nameOf(lift), firstName(client));
}

QString swappedWords(const LiftCase& lift, const QString& exercise, const ClientCase& client)
{
    return BoardText::tr("%1 swapped for %2 for %3").arg(nameOf(lift), exercise, firstName(client));
}

}  // namespace chalk::ui::board
