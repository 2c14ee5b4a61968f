#include "ui/week/week_words.h"

#include "core/lifts/exercise.h"
#include "core/sessions/session.h"
#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

namespace chalk::ui::week {

namespace {

using chalk::week::BlockCount;
using chalk::week::kDayMinutes;
using chalk::week::LeftOver;
using chalk::week::PlanFault;
using chalk::week::PlanRule;
using chalk::week::RecoveryKind;
using chalk::week::SlotBlock;

constexpr int kPercent = 100;

QString weekText(const char* text)
{
    return QCoreApplication::translate("Week", text);
}

QString clockIn(int start)
{
    return common::qstring(sessions::clockText(start % kDayMinutes));
}

QString dayIn(int start)
{
    return QLocale::c().dayName(start / kDayMinutes % chalk::week::kWeekDays + 1, QLocale::LongFormat);
}

QString stationWord(const std::string& id, bool isMany)
{
    switch (lifts::stationOf(id).value_or(lifts::Station::Floor)) {
    case lifts::Station::Rack:
        return isMany ? weekText("racks") : weekText("a rack");
    case lifts::Station::Bench:
        return isMany ? weekText("benches") : weekText("a bench");
    case lifts::Station::Machine:
        return isMany ? weekText("machines") : weekText("a machine");
    case lifts::Station::PullUpBar:
        return isMany ? weekText("pull-up bars") : weekText("a pull-up bar");
    case lifts::Station::Lane:
        return isMany ? weekText("lanes") : weekText("a lane");
    case lifts::Station::Floor:
        break;
    }
    return isMany ? weekText("places on the floor") : weekText("a place on the floor");
}

QString stationShort(const PlanFault& fault, const WeekNames& names)
{
    const int needed = (fault.needed + kPercent - 1) / kPercent;
    const std::string& id = names.week.problem.stations[fault.station.value_or(0)].id;
    return weekText("%1 need %2 at %3, there %4.")
        .arg(needed)
        .arg(stationWord(id, false), clockIn(fault.from), fault.there < kPercent ? weekText("is none") : fault.there < 2 * kPercent ? weekText("is 1") : weekText("are %1").arg(fault.there / kPercent));
}

QString restWords(std::size_t wish, const WeekNames& names)
{
    const chalk::week::Recovery& recovery = names.week.problem.clients[names.week.problem.sessions[wish].client].recovery;
    return recovery.kind == RecoveryKind::RestDay ? weekText("%1 needs a day of rest between sessions.").arg(names.firstName(wish))
                                                  : weekText("%1 needs %2 hours between sessions.").arg(names.firstName(wish)).arg(recovery.hours);
}

QString groupShort(const PlanFault& fault, const WeekNames& names)
{
    if (fault.rule == PlanRule::Capacity) {
        return weekText("%1 at once with %2 at %3, there are %4 places.").arg(fault.needed).arg(names.coach(fault.coach.value_or(0)), clockIn(fault.from)).arg(fault.there);
    }
    return fault.there <= 1 ? weekText("%1 at once at %2, and one of them trains alone.").arg(fault.needed).arg(clockIn(fault.from))
                            : weekText("%1 at once at %2, and one of them shares with %3 at most.").arg(fault.needed).arg(clockIn(fault.from)).arg(fault.there - 1);
}

/// What is in the way of the slot that is wanted.
QString blockWords(const BlockCount& count, std::size_t wish, const WeekNames& names)
{
    const QString coach = names.coach(count.nearest.coach);
    switch (count.block) {
    case SlotBlock::StudioClosed:
        return weekText("The studio is closed then.");
    case SlotBlock::CoachAway:
        return weekText("%1 is not there then.").arg(coach);
    case SlotBlock::ClientAway:
        return weekText("That is outside the free hours.");
    case SlotBlock::LastWeek:
    case SlotBlock::OwnSessions:
        return restWords(wish, names);
    case SlotBlock::LockedBookings:
        return weekText("Locked sessions take the place.");
    case SlotBlock::Group:
        return weekText("No place is left with %1.").arg(coach);
    case SlotBlock::Stations:
        return weekText("All %1 are taken.").arg(stationWord(names.week.problem.stations[count.example.station.value_or(0)].id, true));
    }
    return {};
}

QString iconOf(SlotBlock block)
{
    switch (block) {
    case SlotBlock::StudioClosed:
    case SlotBlock::CoachAway:
    case SlotBlock::ClientAway:
        return QStringLiteral("closed");
    case SlotBlock::LastWeek:
    case SlotBlock::OwnSessions:
        return QStringLiteral("rest");
    case SlotBlock::LockedBookings:
        return QStringLiteral("lock");
    case SlotBlock::Group:
        return QStringLiteral("roster");
    case SlotBlock::Stations:
        return QStringLiteral("rack");
    }
    return {};
}

/// What keeps the session out of all the slots that come nearest to it: the last rule that blocks any.
QString nowhereWords(const BlockCount& count, std::size_t wish, const WeekNames& names)
{
    const QString who = names.firstName(wish);
    switch (count.block) {
    case SlotBlock::StudioClosed:
        return weekText("The studio is closed for the rest of the week.");
    case SlotBlock::CoachAway:
        return weekText("%1 is not there for the rest of the week.").arg(names.coach(count.nearest.coach));
    case SlotBlock::ClientAway:
        return weekText("None of the free hours of %1 is left when the coach is there.").arg(who);
    case SlotBlock::LastWeek:
    case SlotBlock::OwnSessions:
        return restWords(wish, names) + QLatin1Char(' ') + weekText("No other free hour is left.");
    case SlotBlock::LockedBookings:
        return weekText("Whenever %1 can come, locked sessions take the place.").arg(who);
    case SlotBlock::Group:
        return weekText("Whenever %1 can come, no place is left.").arg(who);
    case SlotBlock::Stations:
        return weekText("Whenever %1 can come, all %2 are taken.").arg(who, stationWord(names.week.problem.stations[count.example.station.value_or(0)].id, true));
    }
    return {};
}

}  // namespace

QString WeekNames::name(std::size_t wish) const
{
    return common::qstring(facts.clients[week.problem.sessions[wish].client].client.name);
}

QString WeekNames::firstName(std::size_t wish) const
{
    return name(wish).section(QLatin1Char(' '), 0, 0);
}

QString WeekNames::coach(std::size_t coach) const
{
    return coach < facts.coaches.size() ? common::qstring(facts.coaches[coach].coach.name) : QString();
}

QString slotText(int start)
{
    return dayIn(start).left(3) + QLatin1Char(' ') + clockIn(start);
}

QString longSlotText(int start)
{
    return weekText("%1 at %2").arg(dayIn(start), clockIn(start));
}

QString rangeText(base::Date first, base::Date last)
{
    const auto from = first.ymd();
    const auto to = last.ymd();
    const auto month = [](const std::chrono::year_month_day& day) { return QLocale::c().monthName(static_cast<int>(static_cast<unsigned>(day.month()))); };
    const auto number = [](const std::chrono::year_month_day& day) { return QString::number(static_cast<unsigned>(day.day())); };
    const QString start = from.month() == to.month() ? number(from) : number(from) + QLatin1Char(' ') + month(from);
    return start + QStringLiteral(" – ") + number(to) + QLatin1Char(' ') + month(to);
}

QString numberOfText(int number, int of)
{
    const int last = number % 10;
    const bool isTeen = number / 10 % 10 == 1;
    const char* ending = isTeen || last == 0 || last > 3 ? "th" : last == 1 ? "st" : last == 2 ? "nd" : "rd";
    return weekText("%1%2 of %3").arg(number).arg(QLatin1String(ending)).arg(of);
}

QString faultText(const PlanFault& fault, const WeekNames& names)
{
    const std::size_t wish = fault.sessions.empty() ? 0 : fault.sessions.front();
    const QString who = names.firstName(wish);
    switch (fault.rule) {
    case PlanRule::OffGrid:
        return weekText("%1 does not start on a quarter of an hour.").arg(who);
    case PlanRule::CoachNotAccepted:
        return weekText("%1 does not go to %2.").arg(who, names.coach(fault.coach.value_or(0)));
    case PlanRule::StudioClosed:
        return weekText("The studio is closed at %1.").arg(clockIn(fault.from));
    case PlanRule::CoachAway:
        return weekText("%1 is not there at %2.").arg(names.coach(fault.coach.value_or(0)), clockIn(fault.from));
    case PlanRule::ClientAway:
        return weekText("%1 is not free at %2.").arg(who, clockIn(fault.from));
    case PlanRule::Capacity:
    case PlanRule::GroupSize:
        return groupShort(fault, names);
    case PlanRule::StationUnits:
        return stationShort(fault, names);
    case PlanRule::SameDay:
        return weekText("%1 has two sessions on %2.").arg(who, dayIn(fault.from));
    case PlanRule::RecoveryTime:
        return restWords(wish, names);
    case PlanRule::LockedMoved:
        return weekText("%1 is locked. L unlocks it.").arg(who);
    case PlanRule::LockedLeftOver:
        return weekText("%1 is locked and has no place.").arg(who);
    }
    return {};
}

LeftOverWords leftOverWords(const LeftOver& leftOver, const WeekNames& names)
{
    const std::size_t wish = leftOver.session;
    const auto& standing = names.week.problem.sessions[wish].standing;
    if (standing) {
        const auto blocked = std::find_if(leftOver.blocks.begin(), leftOver.blocks.end(), [&](const BlockCount& count) { return count.nearest == *standing; });
        const QString wants = weekText("Wants %1.").arg(longSlotText(standing->start));
        if (blocked != leftOver.blocks.end()) {
            return {iconOf(blocked->block), wants + QLatin1Char(' ') + blockWords(*blocked, wish, names)};
        }
        if (leftOver.free > 0) {
            return {QStringLiteral("week"), wants};
        }
    }
    if (leftOver.free > 0) {
        return {QStringLiteral("week"), weekText("No time of every week. There is room for it.")};
    }
    if (leftOver.blocks.empty()) {
        return {QStringLiteral("client"), weekText("%1 has no coach.").arg(names.firstName(wish))};
    }
    const auto nearest = std::max_element(leftOver.blocks.begin(), leftOver.blocks.end(), [](const BlockCount& a, const BlockCount& b) { return a.block < b.block; });
    return {iconOf(nearest->block), nowhereWords(*nearest, wish, names)};
}

}  // namespace chalk::ui::week
