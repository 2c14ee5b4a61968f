#include "ui/direction/plan_outcome_words.h"

#include "ui/common/direction_words.h"
#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <cmath>

namespace chalk::ui::direction {

namespace {

using chalk::direction::PlanSingle;
using chalk::direction::WeekReview;

constexpr double kInPercent = 100;

QString outcomeWords(const char* text)
{
    return QCoreApplication::translate("PlanOutcome", text);
}

QString singleText(const PlanSingle& single, base::MassUnit unit)
{
    if (single.load <= base::Load()) {
        return outcomeWords("not known");
    }
    const QString load = QStringLiteral("%1 %2").arg(common::numberText(single.load), common::unitText(unit));
    return single.isTested ? outcomeWords("%1, tested").arg(load) : outcomeWords("%1, estimated").arg(load);
}

/// `+4.5 %`, `−2 %`, `0 %`.
QString changeText(double change)
{
    const double rounded = std::round(change * 10) / 10;
    const QString size = QLocale::c().toString(std::abs(rounded), 'f', rounded == std::round(rounded) ? 0 : 1);
    const QString sign = rounded > 0 ? QStringLiteral("+") : rounded < 0 ? QStringLiteral("\u2212") : QString();
    return QStringLiteral("%1%2 %").arg(sign, size);
}

struct SetCounts {
    int planned = 0;
    int done = 0;
};

/// Of the weeks that began before the plan was over.
SetCounts countsOf(const std::vector<WeekReview>& weeks, base::Date lastDay)
{
    SetCounts counts;
    for (const WeekReview& week : weeks) {
        if (week.monday <= lastDay) {
            counts.planned += week.plannedSets;
            counts.done += week.doneSets;
        }
    }
    return counts;
}

QString shareText(const SetCounts& counts)
{
    return QStringLiteral("%1 %").arg(counts.planned > 0 ? qRound(kInPercent * counts.done / counts.planned) : 0);
}

QString namesText(const std::vector<OutcomeLift>& lifts, bool (*holds)(const OutcomeLift&))
{
    QStringList names;
    for (const OutcomeLift& lift : lifts) {
        if (holds(lift)) {
            names.append(lift.name);
        }
    }
    return names.join(QStringLiteral(", "));
}

QString setsSentence(const PlanOutcomeCase& outcome)
{
    SetCounts all;
    for (const OutcomeLift& lift : outcome.lifts) {
        const SetCounts one = countsOf(lift.weeks, lastDayOf(outcome.plan));
        all.planned += one.planned;
        all.done += one.done;
    }
    return outcomeWords("%1 of %2 planned sets were done (%3).").arg(all.done).arg(all.planned).arg(shareText(all));
}

QString missedSentence(int missed)
{
    return missed == 0   ? outcomeWords("No week was missed.")
           : missed == 1 ? outcomeWords("1 week was missed.")
                         : outcomeWords("%1 weeks were missed.").arg(missed);
}

}  // namespace

std::optional<double> changeOf(const OutcomeLift& lift)
{
    if (!lift.now || lift.now->load <= base::Load() || lift.before.load <= base::Load()) {
        return std::nullopt;
    }
    return kInPercent * (lift.now->load.centi() - lift.before.load.centi()) / lift.before.load.centi();
}

int weeksMissed(const PlanOutcomeCase& outcome)
{
    const base::Date lastDay = lastDayOf(outcome.plan);
    int missed = 0;
    for (std::size_t i = 0; i < outcome.plan.plan.weeks.size(); ++i) {
        const auto isDone = [i](const OutcomeLift& lift) { return i < lift.weeks.size() && lift.weeks[i].doneSets > 0; };
        missed += outcome.plan.plan.weeks[i].monday <= lastDay && std::none_of(outcome.lifts.begin(), outcome.lifts.end(), isDone) ? 1 : 0;
    }
    return missed;
}

QStringList outcomeSentences(const PlanOutcomeCase& outcome)
{
    QStringList sentences{QStringLiteral("%1: %2.").arg(common::planTitle(outcome.plan.plan), common::planDaysText(outcome.plan.plan))};
    if (outcome.plan.endedOn) {
        sentences.append(outcomeWords("It was ended on %1.").arg(common::dayText(*outcome.plan.endedOn)));
    }
    sentences.append(setsSentence(outcome));
    sentences.append(missedSentence(weeksMissed(outcome)));
    const auto add = [&](const char* sentence, bool (*holds)(const OutcomeLift&)) {
        const QString names = namesText(outcome.lifts, holds);
        if (!names.isEmpty()) {
            sentences.append(outcomeWords(sentence).arg(names));
        }
    };
    add("The single rose: %1.", [](const OutcomeLift& lift) { return changeOf(lift).value_or(0) > 0; });
    add("The single is the same: %1.", [](const OutcomeLift& lift) { return changeOf(lift) == 0.0; });
    add("The single is lower: %1.", [](const OutcomeLift& lift) { return changeOf(lift).value_or(0) < 0; });
    add("No single to compare: %1.", [](const OutcomeLift& lift) { return !changeOf(lift); });
    add("Pain was written down: %1. See to it before the next plan.", [](const OutcomeLift& lift) { return lift.painDays > 0; });
    add("On hold: %1.", [](const OutcomeLift& lift) { return lift.isOnHold; });
    return sentences;
}

trends::TrendSheet outcomeSheet(const PlanOutcomeCase& outcome)
{
    trends::TrendSheet sheet;
    sheet.title = outcomeWords("Lifts of the plan");
    sheet.heads = {outcomeWords("Lift"), outcomeWords("At the beginning"), outcomeWords("Now"), outcomeWords("Marks"), outcomeWords("Change"), outcomeWords("Sets"),
                   outcomeWords("Done")};
    sheet.textColumns = 4;
    for (const OutcomeLift& lift : outcome.lifts) {
        const SetCounts counts = countsOf(lift.weeks, lastDayOf(outcome.plan));
        const auto change = changeOf(lift);
        QStringList marks;
        if (lift.painDays > 0) {
            marks.append(lift.painDays == 1 ? outcomeWords("pain on 1 day") : outcomeWords("pain on %1 days").arg(lift.painDays));
        }
        if (lift.isOnHold) {
            marks.append(outcomeWords("on hold"));
        }
        sheet.rows.push_back({lift.name, singleText(lift.before, lift.unit), lift.now ? singleText(*lift.now, lift.unit) : outcomeWords("not known"),
                              marks.join(QStringLiteral(", ")), change ? changeText(*change) : QStringLiteral("–"),
                              outcomeWords("%1 of %2").arg(counts.done).arg(counts.planned), shareText(counts)});
    }
    return sheet;
}

}  // namespace chalk::ui::direction
