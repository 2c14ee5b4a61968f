#include "core/exchange/plan_csv.h"

#include "core/direction/plan_curves.h"
#include "core/direction/planned_load.h"
#include "core/exchange/bookings_csv.h"
#include "core/exchange/json_writing.h"

#include <QByteArrayList>

#include <cmath>

namespace chalk::exchange {

namespace {

using direction::PlanFigure;
using direction::PlannedWork;
using direction::PlanWeek;
using direction::WeekReview;

constexpr int kPlanDigits = 10;
constexpr double kCentiOfOne = 100;
constexpr double kMilliOfPercent = 10;
constexpr double kTenthsOfShare = 1000;  ///< of a per cent

/// Where a record stands in the plan.
struct PlanCell {
    std::size_t week = 0;
    std::size_t lift = 0;
    std::size_t exposure = 0;
};

QByteArray planNumber(double number)
{
    return QByteArray::number(number, 'g', kPlanDigits);
}

QByteArray keyCell(std::string_view key)
{
    return textOf(key).toUtf8();
}

QByteArray yesOrNo(bool is)
{
    return is ? "yes" : "no";
}

QByteArray figureKey(PlanFigure figure)
{
    switch (figure) {
    case PlanFigure::Share: return "share";
    case PlanFigure::Reps: return "reps";
    case PlanFigure::Sets: return "sets";
    case PlanFigure::Rest: return "rest";
    }
    return {};
}

QByteArray publishedCell(direction::WeekKind kind, const PlannedWork& work)
{
    if (kind != direction::WeekKind::Work) {
        return {};
    }
    QByteArrayList figures;
    for (const direction::Departure& departure : direction::departuresOf(work.scheme, work.aim)) {
        figures.append(figureKey(departure.figure));
    }
    return figures.isEmpty() ? QByteArray("yes") : figures.join(' ');
}

/// The fields that every record of a plan begins with.
QByteArrayList firstCells(const PlanForCsv& plan, std::size_t index, std::size_t lift)
{
    const PlanWeek& week = plan.plan.plan.weeks[index];
    return {keyCell(week.monday.toString()), QByteArray::number(static_cast<qulonglong>(index + 1)), keyCell(keyOf(week.phase)),
            keyCell(keyOf(week.kind)), csvField(textOf(plan.names[lift]))};
}

/// The load and its unit.
QByteArrayList loadCells(const PlanForCsv& plan, std::size_t index, base::Milli share)
{
    const direction::LiftForPlan* lift = direction::liftWith(plan.lifts, plan.plan.plan.wishes.lifts[index].lift);
    if (lift == nullptr) {
        return {QByteArray(), QByteArray()};
    }
    const auto load = direction::plannedLoad(*lift, direction::singleNow(plan.plan, index, plan.lifts).load, share);
    return {load ? planNumber(load->centi() / kCentiOfOne) : QByteArray(),
            lift->machine.setup().unit == base::MassUnit::Kilogram ? "kg" : "lb"};
}

QByteArray planRecord(const PlanForCsv& plan, const PlanCell& cell)
{
    const PlanWeek& week = plan.plan.plan.weeks[cell.week];
    const PlannedWork& work = week.work[cell.lift][cell.exposure];
    const base::Milli share = work.isTest ? base::Milli(1000) : work.scheme.share;
    const int sets = work.isTest ? 1 : work.scheme.sets.value();
    const int reps = work.isTest ? 1 : work.scheme.reps.value();
    QByteArrayList cells = firstCells(plan, cell.week, cell.lift);
    cells << keyCell(keyOf(plan.plan.plan.wishes.lifts[cell.lift].role)) << QByteArray::number(static_cast<qulonglong>(cell.exposure + 1))
          << QByteArray::number(sets) << QByteArray::number(reps) << QByteArray::number(work.isTest ? 1 : work.repsMost.value())
          << planNumber(share.value() / kMilliOfPercent) << loadCells(plan, cell.lift, share)
          << QByteArray::number(work.scheme.rest.value()) << QByteArray::number(work.isTest ? 0 : work.scheme.reserve)
          << yesOrNo(work.isPauseAsked) << yesOrNo(work.isTest) << publishedCell(week.kind, work);
    return cells.join(',') + "\r\n";
}

QByteArray shareCell(double share)
{
    return planNumber(std::round(share * kTenthsOfShare) / kMilliOfPercent);
}

QByteArray comparisonRecord(const QByteArrayList& first, const WeekReview& review, bool isBegun, bool isSingleKnown)
{
    const auto done = [isBegun](int number) { return isBegun ? QByteArray::number(number) : QByteArray(); };
    const bool hasShare = isBegun && isSingleKnown && review.doneReps > 0;
    QByteArrayList cells = first;
    cells << QByteArray::number(review.plannedSets) << done(review.doneSets) << QByteArray::number(review.plannedReps)
          << done(review.doneReps) << (review.plannedReps > 0 ? shareCell(review.plannedShare) : QByteArray())
          << (hasShare ? shareCell(review.doneShare) : QByteArray());
    return cells.join(',') + "\r\n";
}

}  // namespace

QByteArray planCsvOf(const PlanForCsv& plan)
{
    QByteArray text =
        "monday,week,phase,kind,lift,role,exposure,sets,reps,reps_most,percent,load,unit,rest_s,reserve,pause,test,published\r\n";
    const auto& weeks = plan.plan.plan.weeks;
    for (std::size_t week = 0; week < weeks.size(); ++week) {
        for (std::size_t lift = 0; lift < weeks[week].work.size(); ++lift) {
            for (std::size_t exposure = 0; exposure < weeks[week].work[lift].size(); ++exposure) {
                text += planRecord(plan, {week, lift, exposure});
            }
        }
    }
    return text;
}

QByteArray planComparisonCsvOf(const PlanForCsv& plan, std::span<const std::vector<direction::DoneSet>> done, base::Date day)
{
    const direction::BlockPlan& block = plan.plan.plan;
    std::vector<std::vector<WeekReview>> reviews;
    for (std::size_t lift = 0; lift < block.wishes.lifts.size(); ++lift) {
        const base::Load single = plan.plan.singles[lift].load;
        reviews.push_back(direction::reviewOf(block, lift, single > base::Load() ? single : base::Load::fromCenti(1), done[lift]));
    }
    QByteArray text = "monday,week,phase,kind,lift,planned_sets,done_sets,planned_reps,done_reps,planned_percent,done_percent\r\n";
    for (std::size_t week = 0; week < block.weeks.size(); ++week) {
        for (std::size_t lift = 0; lift < reviews.size(); ++lift) {
            text += comparisonRecord(firstCells(plan, week, lift), reviews[lift][week], block.weeks[week].monday <= day,
                                     plan.plan.singles[lift].load > base::Load());
        }
    }
    return text;
}

}  // namespace chalk::exchange
