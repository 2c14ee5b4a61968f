#include "ui/direction/missed_weeks_preview.h"

#include "ui/common/direction_words.h"
#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <map>

namespace chalk::ui::direction {

namespace {

using chalk::direction::BlockPlan;
using chalk::direction::MissedWeeks;
using chalk::direction::PlanWeek;
using chalk::direction::WeekKind;

constexpr int kWeekLength = 7;
constexpr int kFriday = 4;

QString missedWords(const char* text, int count = -1)
{
    return QCoreApplication::translate("MissedWeeks", text, nullptr, count);
}

bool isAway(base::Date monday, std::span<const AwayDays> away, bool isStudioAlone)
{
    for (int day = 0; day <= kFriday; ++day) {
        const base::Date date = monday + day;
        const auto covers = [&](const AwayDays& days) { return days.first <= date && date <= days.last && (days.isStudioClosed || !isStudioAlone); };
        if (std::none_of(away.begin(), away.end(), covers)) {
            return false;
        }
    }
    return true;
}

/// For each week of the plan after, which one it was before: weeks keep their order, and some are left out.
std::vector<std::size_t> numbersBefore(const BlockPlan& before, const BlockPlan& after)
{
    std::vector<std::size_t> numbers;
    std::size_t at = 0;
    for (std::size_t i = 0; i < after.weeks.size(); ++i) {
        const PlanWeek& week = after.weeks[i];
        const std::size_t last = before.weeks.size() - (after.weeks.size() - i);
        while (at < last && (before.weeks[at].phase != week.phase || before.weeks[at].kind != week.kind || before.weeks[at].work != week.work)) {
            ++at;
        }
        numbers.push_back(at++);
    }
    return numbers;
}

QString missedWeekText(const PlanWeek& week, std::size_t number)
{
    const QString text = QStringLiteral("%1  %2").arg(number + 1).arg(common::phaseName(week.phase));
    return week.kind == WeekKind::Lighter ? QStringLiteral("%1, %2").arg(text, common::weekKindName(week.kind)) : text;
}

/// What stands at each Monday of a plan.
std::map<base::Date, QString> textsOf(const BlockPlan& before, const BlockPlan& plan)
{
    const std::vector<std::size_t> numbers = numbersBefore(before, plan);
    std::map<base::Date, QString> texts;
    for (std::size_t i = 0; i < plan.weeks.size(); ++i) {
        texts[plan.weeks[i].monday] = missedWeekText(plan.weeks[i], numbers[i]);
    }
    return texts;
}

QString textAt(const std::map<base::Date, QString>& texts, base::Date monday)
{
    const auto found = texts.find(monday);
    return found == texts.end() ? QString() : found->second;
}

}  // namespace

std::vector<MissedReason> missedReasons(const BlockPlan& plan, std::span<const std::vector<chalk::direction::DoneSet>> done, std::span<const AwayDays> away,
                                        base::Date today)
{
    std::vector<bool> hasWork(plan.weeks.size(), false);
    for (const auto& sets : done) {
        for (const chalk::direction::DoneSet& set : sets) {
            if (const auto week = weekOn(plan, set.date)) {
                hasWork[*week] = true;
            }
        }
    }
    std::vector<MissedReason> reasons;
    for (std::size_t i = 0; i < plan.weeks.size(); ++i) {
        const base::Date monday = plan.weeks[i].monday;
        const bool isOver = monday + kWeekLength <= today;
        reasons.push_back(hasWork[i]                  ? MissedReason::None
                          : isAway(monday, away, true)  ? MissedReason::StudioClosed
                          : isAway(monday, away, false) ? MissedReason::ClientAway
                          : isOver                      ? MissedReason::NothingDone
                                                        : MissedReason::None);
    }
    return reasons;
}

MissedPreview missedPreview(const BlockPlan& plan, std::span<const base::Date> mondays, MissedWeeks way)
{
    MissedPreview preview{withMissedWeeks(plan, mondays, way), {}, 0};
    const std::vector<std::size_t> numbers = numbersBefore(plan, preview.plan);
    for (std::size_t i = 0; i < plan.weeks.size(); ++i) {
        if (std::find(numbers.begin(), numbers.end(), i) == numbers.end()) {
            preview.leftOut.push_back(i);
        }
    }
    preview.weeksLater = (preview.plan.weeks.back().monday - plan.weeks.back().monday) / kWeekLength;
    return preview;
}

std::vector<MissedRow> missedRows(const BlockPlan& plan, std::span<const base::Date> mondays)
{
    const BlockPlan shifted = withMissedWeeks(plan, mondays, MissedWeeks::Shift);
    const auto before = textsOf(plan, plan);
    const auto afterShift = textsOf(plan, shifted);
    const auto afterSqueeze = textsOf(plan, withMissedWeeks(plan, mondays, MissedWeeks::Squeeze));
    std::vector<MissedRow> rows;
    for (base::Date monday = plan.weeks.front().monday; monday <= shifted.weeks.back().monday; monday = monday + kWeekLength) {
        const bool isMissed = std::find(mondays.begin(), mondays.end(), monday) != mondays.end();
        const auto after = [&](const auto& texts) { return isMissed ? missedWords("missed") : textAt(texts, monday); };
        rows.push_back({monday, textAt(before, monday), after(afterShift), after(afterSqueeze)});
    }
    return rows;
}

QString missedText(const MissedPreview& preview, const BlockPlan& before)
{
    const QString day = common::dayText(preview.plan.weeks.back().monday + kWeekLength - 1);
    const QString end = preview.weeksLater > 0 ? preview.weeksLater == 1 ? missedWords("Ends on %1, 1 week later.").arg(day)
                                                                         : missedWords("Ends on %1, %2 weeks later.").arg(day).arg(preview.weeksLater)
                                               : missedWords("Ends on %1, as planned.").arg(day);
    if (preview.leftOut.empty()) {
        return QStringLiteral("%1 %2").arg(end, missedWords("Nothing is left out."));
    }
    QStringList weeks;
    for (const std::size_t week : preview.leftOut) {
        const PlanWeek& one = before.weeks[week];
        weeks.append(missedWords("week %1 (%2)").arg(week + 1).arg(one.kind == WeekKind::Lighter ? common::weekKindName(one.kind) : common::phaseName(one.phase)));
    }
    return QStringLiteral("%1 %2").arg(end, missedWords("Left out: %1.").arg(weeks.join(QStringLiteral(", "))));
}

QString missedReasonText(MissedReason reason)
{
    switch (reason) {
    case MissedReason::None: return {};
    case MissedReason::NothingDone: return missedWords("nothing done");
    case MissedReason::StudioClosed: return missedWords("studio closed");
    case MissedReason::ClientAway: return missedWords("client away");
    }
    return {};
}

}  // namespace chalk::ui::direction
