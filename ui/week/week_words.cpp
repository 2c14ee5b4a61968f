#include "ui/week/week_words.h"

#include "core/lifts/exercise.h"
#include "ui/common/formats.h"
#include "ui/print/group_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

namespace chalk::ui::week {

namespace {

using chalk::week::BlockCount;
using chalk::week::SlotBlock;

QString firstWord(const std::string& name)
{
    return common::qstring(name).section(QLatin1Char(' '), 0, 0);
}

QString iconOfBlock(SlotBlock block)
{
    switch (block) {
    case SlotBlock::LastWeek:
    case SlotBlock::OwnSessions:
        return QStringLiteral("rest");
    case SlotBlock::LockedBookings:
        return QStringLiteral("lock");
    case SlotBlock::Group:
        return QStringLiteral("roster");
    case SlotBlock::Stations:
        return QStringLiteral("rack");
    case SlotBlock::StudioClosed:
    case SlotBlock::CoachAway:
    case SlotBlock::ClientAway:
        break;
    }
    return QStringLiteral("closed");
}

}  // namespace

common::WeekNames namesOf(const chalk::week::WeekFacts& facts, const chalk::week::WeekCase& week)
{
    common::WeekNames names;
    for (const chalk::week::ClientOfWeek& client : facts.clients) {
        names.clients.push_back(firstWord(client.client.name));
    }
    for (const chalk::week::CoachOfWeek& coach : facts.coaches) {
        names.coaches.push_back(common::qstring(coach.coach.name));
    }
    for (const chalk::week::Station& station : week.problem.stations) {
        names.stations.push_back(print::stationName(lifts::stationOf(station.id).value_or(lifts::Station::Floor)).toLower());
    }
    return names;
}

QString firstNameOf(const chalk::week::WeekFacts& facts, const chalk::week::WeekCase& week, std::size_t wish)
{
    return firstWord(facts.clients[week.problem.sessions[wish].client].client.name);
}

QString rangeText(base::Date first, base::Date last)
{
    const auto to = last.ymd();
    if (first.ymd().month() != to.month()) {
        return QStringLiteral("%1 – %2").arg(common::shortDayText(first), common::shortDayText(last));
    }
    const QString month = QLocale::c().monthName(static_cast<int>(static_cast<unsigned>(to.month())));
    return QStringLiteral("%1 – %2 %3").arg(static_cast<unsigned>(first.ymd().day())).arg(static_cast<unsigned>(to.day())).arg(month);
}

QString monthText(base::Date day)
{
    const auto ymd = day.ymd();
    return QLocale::c().monthName(static_cast<int>(static_cast<unsigned>(ymd.month()))) + QLatin1Char(' ') + QString::number(static_cast<int>(ymd.year()));
}

QString numberOfText(int number, int of)
{
    const int last = number % 10;
    const bool isTeen = number / 10 % 10 == 1;
    const char* ending = isTeen || last == 0 || last > 3 ? "th" : last == 1 ? "st" : last == 2 ? "nd" : "rd";
    return QCoreApplication::translate("Week", "%1%2 of %3").arg(number).arg(QLatin1String(ending)).arg(of);
}

QString faultText(const chalk::week::PlanFault& fault, const chalk::week::WeekFacts& facts, const chalk::week::WeekCase& week)
{
    const QString said = common::sentenceFor(fault, week.problem, namesOf(facts, week));
    return fault.rule == chalk::week::PlanRule::LockedMoved ? said + QLatin1Char(' ') + QCoreApplication::translate("Week", "L unlocks it.") : said;
}

QString iconOf(const chalk::week::LeftOver& leftOver)
{
    if (leftOver.free > 0) {
        return QStringLiteral("week");
    }
    if (leftOver.countOf(SlotBlock::LastWeek) + leftOver.countOf(SlotBlock::OwnSessions) > 0) {
        return QStringLiteral("rest");
    }
    const auto last = std::max_element(leftOver.blocks.begin(), leftOver.blocks.end(), [](const BlockCount& a, const BlockCount& b) { return a.block < b.block; });
    return last == leftOver.blocks.end() ? QStringLiteral("client") : iconOfBlock(last->block);
}

}  // namespace chalk::ui::week
