#include "ui/common/week_words.h"

#include "core/sessions/session.h"
#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

#include <algorithm>

namespace chalk::ui::common {

namespace {

using week::BlockCount;
using week::Contradiction;
using week::ContradictionKind;
using week::LeftOver;
using week::PlanFault;
using week::PlanRule;
using week::SlotBlock;
using week::WayKind;
using week::WayOut;
using week::WeekProblem;

QString weekWord(const char* text)
{
    return QCoreApplication::translate("Week", text);
}

/// One of two texts, for one and for more; %1 is the number.
QString countedWords(int count, const char* one, const char* more)
{
    return count == 1 ? weekWord(one) : weekWord(more).arg(count);
}

/// The part of the sentence for the times that one rule blocks.
QString blockedWords(const BlockCount& block, const QString& client, const WeekNames& names)
{
    switch (block.block) {
    case SlotBlock::ClientAway:
        return countedWords(block.count, QT_TRANSLATE_NOOP("Week", "1 is outside the hours of %1"), QT_TRANSLATE_NOOP("Week", "%1 are outside the hours of %2")).arg(client);
    case SlotBlock::LastWeek:
        return countedWords(block.count, QT_TRANSLATE_NOOP("Week", "1 is too near to last week’s session"), QT_TRANSLATE_NOOP("Week", "%1 are too near to last week’s session"));
    case SlotBlock::LockedBookings:
        return countedWords(block.count, QT_TRANSLATE_NOOP("Week", "1 is taken by locked bookings"), QT_TRANSLATE_NOOP("Week", "%1 are taken by locked bookings"));
    case SlotBlock::OwnSessions:
        return countedWords(block.count, QT_TRANSLATE_NOOP("Week", "1 is too near to another session of %1"), QT_TRANSLATE_NOOP("Week", "%1 are too near to another session of %2")).arg(client);
    case SlotBlock::Group:
        return countedWords(block.count, QT_TRANSLATE_NOOP("Week", "1 is full"), QT_TRANSLATE_NOOP("Week", "%1 are full"));
    case SlotBlock::Stations:
        return countedWords(block.count, QT_TRANSLATE_NOOP("Week", "1 has no %1 free"), QT_TRANSLATE_NOOP("Week", "%1 have no %2 free"))
            .arg(block.example.station ? names.stations.at(*block.example.station) : QString());
    case SlotBlock::StudioClosed:
    case SlotBlock::CoachAway:
        break;
    }
    return {};
}

/// The largest groups first, two at most, of the times at which a coach works.
std::vector<BlockCount> largestBlocks(const LeftOver& left)
{
    std::vector<BlockCount> blocks;
    std::copy_if(left.blocks.begin(), left.blocks.end(), std::back_inserter(blocks), [](const BlockCount& one) { return one.block > SlotBlock::CoachAway; });
    std::stable_sort(blocks.begin(), blocks.end(), [](const BlockCount& a, const BlockCount& b) { return a.count > b.count; });
    blocks.resize(std::min<std::size_t>(blocks.size(), 2));
    return blocks;
}

QString recoveryWords(const week::Recovery& recovery)
{
    return recovery.kind == week::RecoveryKind::RestDay ? weekWord(QT_TRANSLATE_NOOP("Week", "Needs a day of rest between sessions."))
                                                        : weekWord(QT_TRANSLATE_NOOP("Week", "Needs %1 hours between sessions.")).arg(recovery.hours);
}

/// What comes before the numbers: what the session needs or wants. Empty for neither.
QString leadWords(const std::vector<BlockCount>& blocks, const week::SessionWish& wish, const week::ClientWeek& client)
{
    if (std::any_of(blocks.begin(), blocks.end(), [](const BlockCount& one) { return one.block == SlotBlock::LastWeek || one.block == SlotBlock::OwnSessions; })) {
        return recoveryWords(client.recovery);
    }
    return wish.standing ? weekWord(QT_TRANSLATE_NOOP("Week", "Wants %1.")).arg(weekTimeText(wish.standing->start)) : QString();
}

QString numbersOf(const LeftOver& left, const std::vector<BlockCount>& blocks, const QString& client, const WeekNames& names)
{
    const int times = left.candidates - left.countOf(SlotBlock::StudioClosed) - left.countOf(SlotBlock::CoachAway);
    if (times == 0) {
        return weekWord(QT_TRANSLATE_NOOP("Week", "None of the coaches whom %1 goes to works in the opening hours.")).arg(client);
    }
    QStringList parts;
    if (left.free > 0) {
        parts.append(countedWords(left.free, QT_TRANSLATE_NOOP("Week", "1 would fit"), QT_TRANSLATE_NOOP("Week", "%1 would fit")));
    }
    for (const BlockCount& block : blocks) {
        if (parts.size() < 2) {
            parts.append(blockedWords(block, client, names));
        }
    }
    return countedWords(times, QT_TRANSLATE_NOOP("Week", "Of 1 time, %1."), QT_TRANSLATE_NOOP("Week", "Of %1 times, %2."))
        .arg(parts.join(weekWord(QT_TRANSLATE_NOOP("Week", " and "))));
}

QString namesOf(const std::vector<std::size_t>& sessions, const WeekProblem& problem, const WeekNames& names)
{
    QStringList who;
    for (const std::size_t session : sessions) {
        const QString& name = names.clients.at(problem.sessions[session].client);
        if (!who.contains(name)) {
            who.append(name);
        }
    }
    return who.join(QStringLiteral(", "));
}

QString shortStationWords(const PlanFault& fault, const WeekNames& names)
{
    const int units = fault.there / 100;
    const QString there = units == 0 ? weekWord(QT_TRANSLATE_NOOP("Week", "there is none"))
                                     : countedWords(units, QT_TRANSLATE_NOOP("Week", "there is 1"), QT_TRANSLATE_NOOP("Week", "there are %1"));
    return countedWords(static_cast<int>(fault.sessions.size()), QT_TRANSLATE_NOOP("Week", "1 needs a %1 at %2, %3."), QT_TRANSLATE_NOOP("Week", "%1 need a %2 at %3, %4."))
        .arg(names.stations.at(fault.station.value()), weekTimeText(fault.from), there);
}

QString shortRecoveryWords(const PlanFault& fault, const WeekProblem& problem, const QString& client)
{
    const week::Recovery& recovery = problem.clients[problem.sessions[fault.sessions.front()].client].recovery;
    return recovery.kind == week::RecoveryKind::RestDay
               ? weekWord(QT_TRANSLATE_NOOP("Week", "%1 has no day of rest before %2.")).arg(client, weekTimeText(fault.from))
               : weekWord(QT_TRANSLATE_NOOP("Week", "%1 has %2 hours before %3, and needs %4.")).arg(client).arg(fault.there / 60).arg(weekTimeText(fault.from)).arg(fault.needed / 60);
}

/// `Wed 17:00 with Ines`.
QString slotWords(const std::optional<week::Slot>& slot, const WeekNames& names)
{
    return slot ? weekWord(QT_TRANSLATE_NOOP("Week", "%1 with %2")).arg(weekTimeText(slot->start), names.coaches.at(slot->coach)) : QString();
}

QString fewerWords(const WeekProblem& problem, std::size_t session)
{
    const auto left = std::count_if(problem.sessions.begin(), problem.sessions.end(),
                                    [&](const week::SessionWish& one) { return one.client == problem.sessions[session].client; }) - 1;
    return left == 0 ? weekWord(QT_TRANSLATE_NOOP("Week", "Leave out this week")) : weekWord(QT_TRANSLATE_NOOP("Week", "Leave at %1 this week")).arg(left);
}

}  // namespace

QString weekTimeText(int minute)
{
    const int day = (minute / week::kDayMinutes % week::kWeekDays + week::kWeekDays) % week::kWeekDays;
    return QStringLiteral("%1 %2").arg(QLocale::c().dayName(day + 1, QLocale::ShortFormat), qstring(sessions::clockText(minute % week::kDayMinutes)));
}

QString whyLeftOver(const LeftOver& left, const WeekProblem& problem, const WeekNames& names)
{
    const week::SessionWish& wish = problem.sessions[left.session];
    const std::vector<BlockCount> blocks = largestBlocks(left);
    const QString lead = leadWords(blocks, wish, problem.clients[wish.client]);
    const QString numbers = numbersOf(left, blocks, names.clients.at(wish.client), names);
    return lead.isEmpty() ? numbers : lead + QLatin1Char(' ') + numbers;
}

QString sentenceFor(const week::BlockedSlot& blocked, const week::Slot& slot, const week::SessionWish& wish, const WeekNames& names)
{
    const QString& client = names.clients.at(wish.client);
    const QString& coach = names.coaches.at(slot.coach);
    const QString when = weekTimeText(blocked.minute);
    switch (blocked.block) {
    case SlotBlock::StudioClosed: return weekWord(QT_TRANSLATE_NOOP("Week", "The studio is closed at %1.")).arg(when);
    case SlotBlock::CoachAway: return weekWord(QT_TRANSLATE_NOOP("Week", "%1 does not work at %2.")).arg(coach, when);
    case SlotBlock::ClientAway: return weekWord(QT_TRANSLATE_NOOP("Week", "%1 is outside the hours of %2.")).arg(when, client);
    case SlotBlock::LastWeek: return weekWord(QT_TRANSLATE_NOOP("Week", "%1 is too near to last week’s session of %2.")).arg(when, client);
    case SlotBlock::OwnSessions: return weekWord(QT_TRANSLATE_NOOP("Week", "%1 is too near to another session of %2.")).arg(when, client);
    case SlotBlock::LockedBookings:
    case SlotBlock::Group:
    case SlotBlock::Stations: break;
    }
    if (blocked.station) {
        return weekWord(QT_TRANSLATE_NOOP("Week", "No %1 is free at %2.")).arg(names.stations.at(*blocked.station), when);
    }
    return weekWord(QT_TRANSLATE_NOOP("Week", "%1 would have %2 together at %3; the most is %4.")).arg(coach).arg(blocked.needed).arg(when).arg(blocked.there);
}

QString sentenceFor(const PlanFault& fault, const WeekProblem& problem, const WeekNames& names)
{
    const QString who = namesOf(fault.sessions, problem, names);
    const QString coach = fault.coach && *fault.coach < names.coaches.size() ? names.coaches[*fault.coach] : QString();
    const QString when = weekTimeText(fault.from);
    const auto together = [&](const char* text) { return weekWord(text).arg(coach).arg(fault.needed).arg(when).arg(fault.there); };
    switch (fault.rule) {
    case PlanRule::OffGrid: return weekWord(QT_TRANSLATE_NOOP("Week", "%1 starts at %2, which is not on the grid of %3 minutes.")).arg(who, when).arg(problem.grid);
    case PlanRule::CoachNotAccepted: return weekWord(QT_TRANSLATE_NOOP("Week", "%1 does not go to %2.")).arg(who, coach);
    case PlanRule::StudioClosed: return weekWord(QT_TRANSLATE_NOOP("Week", "The studio is closed at %1.")).arg(when);
    case PlanRule::CoachAway: return weekWord(QT_TRANSLATE_NOOP("Week", "%1 does not work at %2.")).arg(coach, when);
    case PlanRule::ClientAway: return weekWord(QT_TRANSLATE_NOOP("Week", "%1 is outside the hours of %2.")).arg(when, who);
    case PlanRule::Capacity: return together(QT_TRANSLATE_NOOP("Week", "%1 has %2 together at %3, and takes %4."));
    case PlanRule::GroupSize: return together(QT_TRANSLATE_NOOP("Week", "%1 has %2 together at %3; for one of them the most is %4."));
    case PlanRule::StationUnits: return shortStationWords(fault, names);
    case PlanRule::SameDay: return weekWord(QT_TRANSLATE_NOOP("Week", "%1 has two sessions on the day of %2.")).arg(who, when);
    case PlanRule::RecoveryTime: return shortRecoveryWords(fault, problem, who);
    case PlanRule::LockedMoved: return weekWord(QT_TRANSLATE_NOOP("Week", "%1 is locked to another time than %2.")).arg(who, when);
    case PlanRule::LockedLeftOver: return weekWord(QT_TRANSLATE_NOOP("Week", "%1 is locked, and has no place.")).arg(who);
    }
    return {};
}

QString offerText(const WayOut& way, const WeekProblem& problem, std::size_t session, const WeekNames& names)
{
    const QString where = slotWords(way.slot, names);
    const QString client = names.clients.at(problem.sessions[session].client);
    switch (way.kind) {
    case WayKind::FitsNow: return weekWord(QT_TRANSLATE_NOOP("Week", "Offer %1")).arg(where);
    case WayKind::WiderHours: return weekWord(QT_TRANSLATE_NOOP("Week", "Ask %1 for %2 minutes more: %3")).arg(client).arg(way.minutes).arg(where);
    case WayKind::OtherCoach: return weekWord(QT_TRANSLATE_NOOP("Week", "Ask %1: %2")).arg(names.coaches.at(way.coach.value()), way.slot ? weekTimeText(way.slot->start) : QString());
    case WayKind::ShorterSession: return weekWord(QT_TRANSLATE_NOOP("Week", "Make it %1 minutes: %2")).arg(way.minutes).arg(where);
    case WayKind::MoreUnits: return weekWord(QT_TRANSLATE_NOOP("Week", "With one more %1: %2")).arg(names.stations.at(way.station.value()), where);
    case WayKind::LargerGroup: return weekWord(QT_TRANSLATE_NOOP("Week", "Let %1 share with one more: %2")).arg(names.clients.at(way.client.value()), where);
    case WayKind::LargerCapacity: return weekWord(QT_TRANSLATE_NOOP("Week", "Let %1 take one more: %2")).arg(names.coaches.at(way.coach.value()), where);
    case WayKind::MoveAnother:
        return weekWord(QT_TRANSLATE_NOOP("Week", "Move %1 to %2: %3"))
            .arg(names.clients.at(problem.sessions[way.moved.value()].client), slotWords(way.movedTo, names), where);
    case WayKind::OneFewer: return fewerWords(problem, session);
    }
    return {};
}

QString sentenceFor(const Contradiction& found, const WeekProblem& problem, const WeekNames& names)
{
    const QString client = found.client ? names.clients.at(*found.client) : QString();
    const auto with = [&](const char* text) { return weekWord(text).arg(client).arg(found.needed).arg(found.there); };
    switch (found.kind) {
    case ContradictionKind::LockedWithoutSlot: return weekWord(QT_TRANSLATE_NOOP("Week", "The locked session of %1 has no time.")).arg(client);
    case ContradictionKind::LockedAgainstRule:
        return weekWord(QT_TRANSLATE_NOOP("Week", "Locked, but not possible: %1")).arg(sentenceFor(found.fault.value(), problem, names));
    case ContradictionKind::NoHours: return weekWord(QT_TRANSLATE_NOOP("Week", "%1 has no hours to come.")).arg(client);
    case ContradictionKind::NoAcceptedCoach: return weekWord(QT_TRANSLATE_NOOP("Week", "%1 goes to none of the coaches.")).arg(client);
    case ContradictionKind::LongerThanHours: return with(QT_TRANSLATE_NOOP("Week", "The session of %1 takes %2 minutes, the longest free time is %3."));
    case ContradictionKind::LongerThanWindows:
        return with(QT_TRANSLATE_NOOP("Week", "The session of %1 takes %2 minutes, and no coach for it works more than %3 at a stretch."));
    case ContradictionKind::NoCommonHours: return weekWord(QT_TRANSLATE_NOOP("Week", "The hours of %1 never meet those of a coach.")).arg(client);
    case ContradictionKind::StationNeverEnough:
        return weekWord(QT_TRANSLATE_NOOP("Week", "The session of %1 needs more than every %2 there is.")).arg(client, names.stations.at(found.station.value()));
    case ContradictionKind::TooFewDays: return with(QT_TRANSLATE_NOOP("Week", "%1 has %2 sessions, and the hours leave room for %3."));
    }
    return {};
}

}  // namespace chalk::ui::common
