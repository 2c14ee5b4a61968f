#include "ui/print/group_words.h"

#include "ui/common/formats.h"
#include "ui/print/card_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::print {

namespace {

using common::qstring;
using planning::GroupMember;
using planning::GroupSession;
using planning::GroupTurn;

constexpr int kEasyMinutes = 5;
constexpr double kGroupSpace = 1.1;

QString groupText(const char* text)
{
    return QCoreApplication::translate("Card", text);
}

/// When the first lifts begin, in minutes since midnight.
int firstMinute(const GroupSession& group)
{
    const bool hasDrills = std::any_of(group.members.begin(), group.members.end(), [](const GroupMember& one) { return !one.card.drills.empty(); });
    return group.members.front().card.startMinute + (hasDrills ? kEasyMinutes : 0);
}

QString clockAfter(const GroupSession& group, int seconds)
{
    constexpr int kMinutesOfDay = 24 * 60;
    const int minute = (firstMinute(group) + (seconds + 30) / 60) % kMinutesOfDay;
    return QStringLiteral("%1:%2").arg(minute / 60).arg(minute % 60, 2, 10, QLatin1Char('0'));
}

Run groupRun(QString text, QFont::Weight weight, double gap)
{
    return {std::move(text), 10.5, weight, false, false, gap};
}

}  // namespace

QString stationName(lifts::Station station)
{
    switch (station) {
    case lifts::Station::Floor:
        return groupText(QT_TRANSLATE_NOOP("Card", "Floor"));
    case lifts::Station::Rack:
        return groupText(QT_TRANSLATE_NOOP("Card", "Rack"));
    case lifts::Station::Bench:
        return groupText(QT_TRANSLATE_NOOP("Card", "Bench"));
    case lifts::Station::Machine:
        return groupText(QT_TRANSLATE_NOOP("Card", "Machine"));
    case lifts::Station::PullUpBar:
        return groupText(QT_TRANSLATE_NOOP("Card", "Pull-up bar"));
    case lifts::Station::Lane:
        return groupText(QT_TRANSLATE_NOOP("Card", "Lane"));
    }
    return {};
}

QString placeName(const planning::GroupPlace& place)
{
    return place.isOnlyOne ? stationName(place.station) : QStringLiteral("%1 %2").arg(stationName(place.station)).arg(place.unit + 1);
}

QString placeLetter(std::size_t place)
{
    constexpr std::size_t kLetters = 26;
    const QChar letter(static_cast<char16_t>(u'A' + place % kLetters));
    return place < kLetters ? QString(letter) : letter + QString::number(place / kLetters + 1);
}

QString groupTitle(const GroupSession& group)
{
    const sessions::CardContent& first = group.members.front().card;
    return QStringLiteral("%1, %2").arg(common::longDayText(first.date), qstring(sessions::clockText(first.startMinute)));
}

std::vector<Runs> groupLines(const GroupSession& group)
{
    QStringList parts;
    if (const std::string& coach = group.members.front().card.coachName; !coach.empty()) {
        parts.append(qstring(coach));
    }
    parts.append(group.members.size() == 1 ? groupText(QT_TRANSLATE_NOOP("Card", "1 client"))
                                           : groupText(QT_TRANSLATE_NOOP("Card", "%1 clients")).arg(group.members.size()));
    if (group.endSecond() > 0) {
        parts.append(groupText(QT_TRANSLATE_NOOP("Card", "to about %1")).arg(clockAfter(group, group.endSecond())));
    }
    if (!group.isProved) {
        parts.append(groupText(QT_TRANSLATE_NOOP("Card", "best order found, not proved best")));
    }
    const Runs line{groupRun(parts.join(QStringLiteral(" · ")), QFont::Medium, 0)};
    std::vector<Runs> lines;
    for (const Runs& said : instructions(everybodysLifts(group))) {
        lines.push_back(line);
        lines.back().push_back(groupRun(QStringLiteral("·"), QFont::Medium, kGroupSpace));
        lines.back().insert(lines.back().end(), said.begin(), said.end());
        lines.back()[2].gap = kGroupSpace;
    }
    lines.push_back(line);
    return lines;
}

sessions::CardContent everybodysLifts(const GroupSession& group)
{
    sessions::CardContent all;
    for (const GroupMember& member : group.members) {
        all.lifts.insert(all.lifts.end(), member.card.lifts.begin(), member.card.lifts.end());
    }
    return all;
}

QString beginText(const GroupSession& group, const GroupTurn& turn)
{
    return turn.beginSecond ? clockAfter(group, *turn.beginSecond) : QString();
}

QStringList shortNames(const GroupSession& group)
{
    QStringList first;
    for (const GroupMember& member : group.members) {
        const QString name = qstring(member.card.clientName);
        const QString word = name.section(QLatin1Char(' '), 0, 0);
        first.append(word.contains(QLatin1Char('.')) ? name : word);
    }
    QStringList names;
    for (qsizetype i = 0; i < first.size(); ++i) {
        names.append(first.count(first[i]) == 1 ? first[i] : qstring(group.members[static_cast<std::size_t>(i)].card.clientName));
    }
    return names;
}

QStringList waitTexts(const GroupSession& group)
{
    const QStringList names = shortNames(group);
    QStringList waits;
    for (std::size_t m = 0; m < group.members.size(); ++m) {
        const GroupMember& member = group.members[m];
        for (const GroupTurn& turn : member.turns) {
            if (turn.waitedSeconds > 0) {
                waits.append(groupText(QT_TRANSLATE_NOOP("Card", "%1 waits %2 before %3 (%4)"))
                                 .arg(names[static_cast<qsizetype>(m)], common::restText(base::Seconds(turn.waitedSeconds)), qstring(member.card.lifts[turn.lift].name),
                                      placeLetter(turn.place)));
            }
        }
    }
    if (waits.isEmpty()) {
        waits.append(groupText(QT_TRANSLATE_NOOP("Card", "Nobody waits for a station.")));
    }
    return waits;
}

}  // namespace chalk::ui::print
