#include "ui/direction/plan_comparison_figures.h"

#include "core/direction/plan_calendar.h"
#include "core/exchange/bookings_csv.h"
#include "ui/common/direction_words.h"
#include "ui/common/formats.h"

#include <QByteArrayList>
#include <QCoreApplication>
#include <QLocale>

#include <cmath>

namespace chalk::ui::direction {

namespace {

using chalk::direction::WeekReview;

constexpr double kWholePercent = 100;

QString comparedWords(const char* text)
{
    return QCoreApplication::translate("PlanComparison", text);
}

/// Per cent with a decimal where it is needed; empty for nothing.
QString percentText(double share)
{
    if (share <= 0) {
        return {};
    }
    const double percent = std::round(share * kWholePercent * 10) / 10;
    return QLocale::c().toString(percent, 'f', percent == std::round(percent) ? 0 : 1);
}

void addTo(WeekReview& all, const WeekReview& one)
{
    all.plannedShare += one.plannedShare * one.plannedReps;
    all.doneShare += one.doneShare * one.doneReps;
    all.plannedSets += one.plannedSets;
    all.doneSets += one.doneSets;
    all.plannedReps += one.plannedReps;
    all.doneReps += one.doneReps;
}

QString doneText(int count, const WeekReview& week, base::Date today)
{
    return hasBegun(week, today) ? QString::number(count) : QString();
}

}  // namespace

bool hasBegun(const WeekReview& week, base::Date today)
{
    return week.monday <= today;
}

std::vector<WeekReview> comparedWeeks(const PlanComparisonCase& facts, std::optional<std::size_t> lift)
{
    if (lift) {
        return facts.lifts[*lift].weeks;
    }
    std::vector<WeekReview> all(facts.plan.weeks.size());
    for (std::size_t week = 0; week < all.size(); ++week) {
        all[week].monday = facts.plan.weeks[week].monday;
        for (const ComparedLift& one : facts.lifts) {
            addTo(all[week], one.weeks[week]);
        }
        all[week].plannedShare = all[week].plannedReps > 0 ? all[week].plannedShare / all[week].plannedReps : 0;
        all[week].doneShare = all[week].doneReps > 0 ? all[week].doneShare / all[week].doneReps : 0;
    }
    return all;
}

QString comparedText(std::size_t number, const WeekReview& week, base::Date today)
{
    QString sets = comparedWords("%1 sets planned").arg(week.plannedSets);
    QString share = comparedWords("%1 % planned").arg(percentText(week.plannedShare));
    if (hasBegun(week, today)) {
        sets = comparedWords("%1, %2 done").arg(sets).arg(week.doneSets);
    }
    if (week.doneShare > 0) {
        share = comparedWords("%1, %2 % done").arg(share, percentText(week.doneShare));
    }
    const QString text = comparedWords("Week %1, from %2: %3").arg(number + 1).arg(common::shortDayText(week.monday), sets);
    return week.plannedShare > 0 ? QStringLiteral("%1; %2").arg(text, share) : text;
}

QString comparedSoFar(std::span<const WeekReview> weeks, base::Date today)
{
    int planned = 0;
    int done = 0;
    for (const WeekReview& week : weeks) {
        if (hasBegun(week, today)) {
            planned += week.plannedSets;
            done += week.doneSets;
        }
    }
    return comparedWords("%1 of %2 sets done so far.").arg(done).arg(planned);
}

trends::TrendSheet comparisonSheet(const PlanComparisonCase& facts, std::optional<std::size_t> lift)
{
    trends::TrendSheet sheet;
    sheet.title = lift ? facts.lifts[*lift].name : comparedWords("All lifts");
    sheet.heads = {comparedWords("Week"),         comparedWords("Phase"),     comparedWords("Sets planned"), comparedWords("Sets done"),
                   comparedWords("Reps planned"), comparedWords("Reps done"), comparedWords("% planned"),    comparedWords("% done")};
    sheet.textColumns = 2;
    const auto present = weekOn(facts.plan, facts.today);
    const std::vector<WeekReview> weeks = comparedWeeks(facts, lift);
    for (std::size_t i = 0; i < weeks.size(); ++i) {
        const WeekReview& week = weeks[i];
        const QString name = QStringLiteral("%1  %2").arg(i + 1).arg(common::shortDayText(week.monday));
        const auto& planned = facts.plan.weeks[i];
        const QString phase = common::phaseName(planned.phase);
        sheet.rows.push_back({present == i ? comparedWords("%1 · this week").arg(name) : name,
                              planned.kind == chalk::direction::WeekKind::Lighter ? QStringLiteral("%1, %2").arg(phase, common::weekKindName(planned.kind)) : phase,
                              QString::number(week.plannedSets), doneText(week.doneSets, week, facts.today), QString::number(week.plannedReps),
                              doneText(week.doneReps, week, facts.today), percentText(week.plannedShare), percentText(week.doneShare)});
    }
    return sheet;
}

QByteArray comparisonCsv(const PlanComparisonCase& facts)
{
    QByteArray csv = "lift,week,monday,phase,kind,planned_sets,done_sets,planned_reps,done_reps,planned_percent,done_percent\r\n";
    for (const ComparedLift& lift : facts.lifts) {
        for (std::size_t i = 0; i < lift.weeks.size(); ++i) {
            const WeekReview& week = lift.weeks[i];
            const auto& planned = facts.plan.weeks[i];
            const QStringList fields{lift.name,
                                     QString::number(i + 1),
                                     common::qstring(week.monday.toString()),
                                     common::qstring(keyOf(planned.phase)),
                                     common::qstring(keyOf(planned.kind)),
                                     QString::number(week.plannedSets),
                                     doneText(week.doneSets, week, facts.today),
                                     QString::number(week.plannedReps),
                                     doneText(week.doneReps, week, facts.today),
                                     percentText(week.plannedShare),
                                     percentText(week.doneShare)};
            QByteArrayList record;
            for (const QString& field : fields) {
                record.append(exchange::csvField(field));
            }
            csv += record.join(',') + "\r\n";
        }
    }
    return csv;
}

}  // namespace chalk::ui::direction
