#include "ui/direction/direction_changes.h"

#include "core/direction/fit_facts.h"
#include "ui/common/direction_words.h"
#include "ui/common/formats.h"
#include "ui/common/lock_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace chalk::ui::direction {

namespace {

using chalk::direction::BlockPlan;
using chalk::direction::Direction;
using chalk::direction::FitNote;
using chalk::direction::LiftRole;
using chalk::direction::WeekKind;

struct ChangeText {
    Q_DECLARE_TR_FUNCTIONS(DirectionChanges)
};

constexpr std::array kWeekdayWords{QT_TRANSLATE_NOOP("DirectionChanges", "Mon"), QT_TRANSLATE_NOOP("DirectionChanges", "Tue"),
                                   QT_TRANSLATE_NOOP("DirectionChanges", "Wed"), QT_TRANSLATE_NOOP("DirectionChanges", "Thu"),
                                   QT_TRANSLATE_NOOP("DirectionChanges", "Fri"), QT_TRANSLATE_NOOP("DirectionChanges", "Sat"),
                                   QT_TRANSLATE_NOOP("DirectionChanges", "Sun")};

/// `a, b and c`.
QString joined(const QStringList& parts)
{
    if (parts.size() < 2) {
        return parts.join(QString());
    }
    return ChangeText::tr("%1 and %2").arg(parts.mid(0, parts.size() - 1).join(QStringLiteral(", ")), parts.last());
}

QString capitalised(QString text)
{
    if (!text.isEmpty()) {
        text[0] = text[0].toUpper();
    }
    return text;
}

std::vector<std::size_t> liftsOfRole(const BlockPlan& plan, LiftRole role)
{
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < plan.wishes.lifts.size(); ++i) {
        if (plan.wishes.lifts[i].role == role) {
            found.push_back(i);
        }
    }
    return found;
}

void addLeaders(std::vector<ChangeLine>& lines, const DirectionCase& client, const BlockPlan& plan)
{
    const std::vector<std::size_t> main = liftsOfRole(plan, LiftRole::Main);
    std::vector<std::size_t> beside = liftsOfRole(plan, LiftRole::Assistance);
    const std::vector<std::size_t> upkeep = liftsOfRole(plan, LiftRole::Upkeep);
    beside.insert(beside.end(), upkeep.begin(), upkeep.end());
    const QString names = capitalised(liftListText(client, plan, main));
    QString text;
    switch (plan.wishes.direction) {
    case Direction::Strength:
        text = main.size() == 1 ? ChangeText::tr("%1 leads its day.").arg(names) : ChangeText::tr("%1 lead their days.").arg(names);
        break;
    case Direction::Physique:
        text = ChangeText::tr("All %1 lifts get more sets at moderate loads.").arg(main.size());
        break;
    case Direction::Movement:
        text = main.size() == 1 ? ChangeText::tr("%1 is worked for range and control, with a pause.").arg(names)
                                : ChangeText::tr("%1 are worked for range and control, with a pause.").arg(names);
        break;
    }
    if (!main.empty()) {
        lines.push_back({QStringLiteral("bar"), text});
    }
    if (!beside.empty()) {
        const QString others = capitalised(liftListText(client, plan, beside));
        const bool isUpkeep = plan.wishes.direction == Direction::Movement;
        text = isUpkeep ? (beside.size() == 1 ? ChangeText::tr("%1 is kept up at lighter loads.") : ChangeText::tr("%1 are kept up at lighter loads."))
                        : (beside.size() == 1 ? ChangeText::tr("%1 goes beside them.") : ChangeText::tr("%1 go beside them."));
        lines.push_back({QStringLiteral("plates"), text.arg(others)});
    }
}

/// Lifts that no plan can lead stay where they are.
void addLadder(std::vector<ChangeLine>& lines, const DirectionCase& client, const BlockPlan& plan)
{
    QStringList names;
    for (const DirectionLift& one : client.lifts) {
        const bool isPlanned = std::ranges::find(plan.wishes.lifts, one.lift.lift, &chalk::direction::PlannedLift::lift) != plan.wishes.lifts.end();
        if (!isPlanned) {
            names.append(common::qstring(one.name).toLower());
        }
    }
    if (!names.isEmpty()) {
        const QString text = names.size() == 1 ? ChangeText::tr("%1 stays on the ladder.") : ChangeText::tr("%1 stay on the ladder.");
        lines.push_back({QStringLiteral("board"), text.arg(capitalised(joined(names)))});
    }
}

QString sessionsText(const DirectionCase& client, const BlockPlan& plan)
{
    const int sessions = plan.wishes.sessionsAWeek;
    const QString count = sessions == 1 ? ChangeText::tr("1 session a week") : ChangeText::tr("%1 sessions a week").arg(sessions);
    if (sessions != client.client.sessionsPerWeek) {
        return ChangeText::tr("%1, %2 now.").arg(count).arg(client.client.sessionsPerWeek);
    }
    QStringList days;
    for (const int day : client.weekdays) {
        days.append(QCoreApplication::translate("DirectionChanges", kWeekdayWords[static_cast<std::size_t>(day)]));
    }
    return static_cast<int>(days.size()) != sessions ? ChangeText::tr("%1 as now.").arg(count) : ChangeText::tr("%1 as now: %2.").arg(count, days.join(QStringLiteral(", ")));
}

/// The longest rest of the main lifts now and in the plan; 0 where there is none.
std::pair<int, int> longestRests(const DirectionCase& client, const BlockPlan& plan)
{
    int now = 0;
    int then = 0;
    for (const std::size_t i : liftsOfRole(plan, LiftRole::Main)) {
        const DirectionLift* lift = client.lift(plan.wishes.lifts[i].lift);
        if (lift != nullptr && lift->next.kind == progression::PrescriptionKind::Work) {
            now = std::max(now, lift->next.rest.value());
        }
        for (const chalk::direction::PlanWeek& week : plan.weeks) {
            for (const chalk::direction::PlannedWork& work : week.work[i]) {
                then = std::max(then, work.scheme.rest.value());
            }
        }
    }
    return {now, then};
}

QString restLine(const DirectionCase& client, const BlockPlan& plan)
{
    const auto [now, then] = longestRests(client, plan);
    const QString planned = common::restText(base::Seconds(then));
    if (now == 0 || now == then) {
        return ChangeText::tr("Rest on the main lifts is up to %1.").arg(planned);
    }
    const QString before = common::restText(base::Seconds(now));
    return now < then ? ChangeText::tr("Rest goes up to %1 on the main lifts, from %2 now.").arg(planned, before)
                      : ChangeText::tr("Rest goes down to %1 on the main lifts, from %2 now.").arg(planned, before);
}

void addClosures(std::vector<ChangeLine>& lines, const DirectionCase& client, const BlockPlan& plan)
{
    for (const ClosedDays& closed : client.closures) {
        const std::vector<int> weeks = closedWeeks(plan, closed);
        if (weeks.empty()) {
            continue;
        }
        const QString days = closed.first == closed.last
                                 ? common::shortDayText(closed.first)
                                 : QStringLiteral("%1 – %2").arg(common::shortDayText(closed.first), common::shortDayText(closed.last));
        lines.push_back({QStringLiteral("closed"), ChangeText::tr("%1: the studio is closed. That is in %2.").arg(days, weekListText(weeks))});
    }
}

QString checkInText(const BlockPlan& plan)
{
    std::vector<int> weeks;
    for (std::size_t i = 0; i < plan.weeks.size(); ++i) {
        if (plan.weeks[i].kind == WeekKind::Lighter) {
            weeks.push_back(static_cast<int>(i) + 1);
        }
    }
    return weeks.empty() ? ChangeText::tr("A check-in when the plan ends.")
                         : ChangeText::tr("Lighter %1: check-ins at their end, and when the plan ends.").arg(weekListText(weeks));
}

}  // namespace

QString firstNameOf(const clients::Client& client)
{
    return common::qstring(client.name).section(QLatin1Char(' '), 0, 0);
}

QString liftListText(const DirectionCase& client, const BlockPlan& plan, const std::vector<std::size_t>& lifts)
{
    QStringList names;
    for (const std::size_t i : lifts) {
        if (const DirectionLift* lift = client.lift(plan.wishes.lifts[i].lift)) {
            names.append(common::qstring(lift->name).toLower());
        }
    }
    return joined(names);
}

QString numberListText(const std::vector<int>& numbers)
{
    QStringList words;
    for (const int number : numbers) {
        words.append(QString::number(number));
    }
    return joined(words);
}

QString weekListText(const std::vector<int>& weeks)
{
    return weeks.size() == 1 ? ChangeText::tr("week %1").arg(weeks.front()) : ChangeText::tr("weeks %1").arg(numberListText(weeks));
}

std::vector<ChangeLine> changeLines(const DirectionCase& client, const DirectionOffer& offer)
{
    std::vector<ChangeLine> lines;
    const BlockPlan& plan = offer.plan;
    if (plan.weeks.empty()) {
        return lines;
    }
    addLeaders(lines, client, plan);
    addLadder(lines, client, plan);
    for (const AsideLift& aside : asideLifts(client, plan, offer.singles, false)) {
        lines.push_back({aside.why == AsideWhy::OnHold ? QStringLiteral("hold") : QStringLiteral("info"), asideText(client, plan, aside)});
    }
    lines.push_back({QStringLiteral("week"), sessionsText(client, plan)});
    lines.push_back({QStringLiteral("rest"), restLine(client, plan)});
    addClosures(lines, client, plan);
    lines.push_back({QStringLiteral("checkin"), checkInText(plan)});
    if (std::ranges::find(offer.fit.notes, FitNote::CareWithHeavyLoads) != offer.fit.notes.end()) {
        lines.push_back({QStringLiteral("warning"), ChangeText::tr("A caution is on file. Heavy loads are to be agreed with whoever treats %1 first.")
                                                        .arg(firstNameOf(client.client))});
    }
    return lines;
}

QString asideText(const DirectionCase& client, const BlockPlan& plan, const AsideLift& aside)
{
    const QString name = capitalised(liftListText(client, plan, {aside.lift}));
    switch (aside.why) {
    case AsideWhy::OnHold:
        return ChangeText::tr("%1 is on hold. It can join once it is released.").arg(name);
    case AsideWhy::NotLoaded:
        return ChangeText::tr("%1 is done without load now. It can join when it carries load again.").arg(name);
    case AsideWhy::NoSingle:
        return ChangeText::tr("%1 has no estimated single. A test of three to five repetitions, or sets with the reserve written down, give one.").arg(name);
    case AsideWhy::LeftThePlan:
        return ChangeText::tr("%1 left the plan when it was changed by hand, swapped or released. It goes by the ladder.").arg(name);
    }
    return {};
}

QString talkText(const DirectionCase& client)
{
    const TalkState& talk = client.talk;
    const QString name = firstNameOf(client.client);
    if (!talk.firstLoad) {
        return ChangeText::tr("The talk about a direction comes 180 days after the first load. %1 has not lifted any yet.").arg(name);
    }
    const QString first = common::shortDayText(*talk.firstLoad);
    const QString stalls = talk.stalls == 1 ? ChangeText::tr("1 lift has stalled") : ChangeText::tr("%1 lifts have stalled").arg(talk.stalls);
    if (client.decided && client.decided->nextReview > client.today) {
        return ChangeText::tr("On %1 it was agreed to stay in the cycle. The next talk is on %2.")
            .arg(common::shortDayText(client.decided->day), common::shortDayText(client.decided->nextReview));
    }
    if (talk.isDue) {
        return ChangeText::tr("The talk is due since %1: first load on %2, %3 days ago, and %4.")
            .arg(common::shortDayText(*talk.dueFrom), first)
            .arg(talk.days)
            .arg(talk.stalls == 0 ? ChangeText::tr("no lift has stalled") : stalls);
    }
    return ChangeText::tr("The talk is due from %1, or from %2 where two lifts have stalled. First load on %3, %4 days ago; %5.")
        .arg(common::shortDayText(*talk.dueFrom), common::shortDayText(*talk.dueEarly), first)
        .arg(talk.days)
        .arg(talk.stalls == 0 ? ChangeText::tr("no lift has stalled") : stalls);
}

QString startBarText(const DirectionCase& client, StartBar bar)
{
    const QString name = firstNameOf(client.client);
    switch (bar) {
    case StartBar::Clearance:
        return ChangeText::tr("%1. No plan can begin until then.").arg(common::lockWordsOf(client.clearance, client.client, client.today).headline);
    case StartBar::NothingLoaded:
        return ChangeText::tr("No lift that is counted in repetitions has carried load yet. The ladder comes first.");
    case StartBar::AllOnHold:
        return ChangeText::tr("All lifts of the plan are on hold. Release one or swap it first.");
    case StartBar::NoneLoaded:
        return ChangeText::tr("No lift of the plan carries load now. It can begin when one does.");
    case StartBar::NoSingle:
        return ChangeText::tr("No single is known of any lift. Test three to five repetitions of one, or write down the reserve of working sets.");
    }
    return {};
}

}  // namespace chalk::ui::direction
