#include "app/commands/roster_command.h"

#include "core/store/roster_reader.h"
#include "ui/common/formats.h"
#include "ui/common/lock_words.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

using store::RosterEntry;
using ui::common::qstring;

/// `Tue 24 Nov 09:00 Rack 1`, or `not booked`.
QString nextText(const RosterEntry& entry)
{
    if (!entry.next) {
        return QStringLiteral("not booked");
    }
    return QStringLiteral("%1 %2 %3").arg(ui::common::dayText(entry.next->date), qstring(sessions::clockText(entry.next->startMinute)),
                                          qstring(entry.next->place));
}

/// The stage of each pattern, `5` or `5/2` in the second cycle, `!` on hold, `-` where there is none.
QString stagesText(const RosterEntry& entry)
{
    QStringList stages;
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        QString text = QStringLiteral("-");
        for (const store::LiftStand& lift : entry.lifts) {
            if (lift.pattern == pattern) {
                text = QString::number(progression::numberOf(lift.stage)) + (lift.cycle > 1 ? QStringLiteral("/%1").arg(lift.cycle) : QString()) +
                       (lift.isOnHold ? QStringLiteral("!") : QString());
                break;
            }
        }
        stages.append(text.leftJustified(4));
    }
    return stages.join(QString());
}

QJsonObject toJson(const RosterEntry& entry, base::Date today)
{
    QJsonArray lifts;
    for (const store::LiftStand& lift : entry.lifts) {
        lifts.append(QJsonObject{{QStringLiteral("pattern"), qstring(lifts::keyOf(lift.pattern))},
                                 {QStringLiteral("exercise"), qstring(lift.exerciseKey)},
                                 {QStringLiteral("stage"), qstring(progression::keyOf(lift.stage))},
                                 {QStringLiteral("cycle"), lift.cycle},
                                 {QStringLiteral("on_hold"), lift.isOnHold}});
    }
    QJsonObject object{{QStringLiteral("id"), static_cast<qint64>(entry.client.id.value())},
                       {QStringLiteral("name"), qstring(entry.client.name)},
                       {QStringLiteral("goal"), qstring(entry.client.goal)},
                       {QStringLiteral("coach"), qstring(entry.coachName)},
                       {QStringLiteral("blocked"), clients::isBlocked(entry.clearance, today)},
                       {QStringLiteral("lifts"), lifts}};
    if (entry.next) {
        object.insert(QStringLiteral("next"), QJsonObject{{QStringLiteral("date"), qstring(entry.next->date.toString())},
                                                          {QStringLiteral("at"), qstring(sessions::clockText(entry.next->startMinute))},
                                                          {QStringLiteral("place"), qstring(entry.next->place)}});
    }
    return object;
}

int runRoster(const CommandContext& context)
{
    const auto database = context.openStudio(store::OpenMode::ReadOnly);
    if (!database) {
        return context.report(database.error());
    }
    const auto entries = store::RosterReader(**database).read(context.today);
    if (!entries) {
        return context.report(entries.error());
    }
    if (context.isJson()) {
        QJsonArray array;
        for (const RosterEntry& entry : *entries) {
            array.append(toJson(entry, context.today));
        }
        context.out << QJsonDocument(array).toJson();
        return kDone;
    }
    context.out << QStringLiteral("Client").leftJustified(24) << QStringLiteral("Coach").leftJustified(9) << "Sq  Hi  HP  HL  VP  VL  1L  Ca  Next session\n";
    for (const RosterEntry& entry : *entries) {
        const QString brief = ui::common::lockWordsOf(entry.clearance, entry.client, context.today).brief;
        const QString waits = brief.isEmpty() ? QString() : QStringLiteral("  ") + brief.toLower();
        context.out << qstring(entry.client.name).leftJustified(24) << qstring(entry.coachName).leftJustified(9) << stagesText(entry) << nextText(entry) << waits
                    << '\n';
    }
    return kDone;
}

}  // namespace

Command rosterCommand()
{
    return {QStringLiteral("roster"), QStringLiteral("show everybody and where their lifts stand"), {}, 0, 0, {},
            QStringLiteral("A lift is shown by the number of its stage, then /2 in the second cycle and so on; ! is on hold."), runRoster};
}

}  // namespace chalk::app
