#include "app/commands/direction_text.h"

#include "core/direction/plan_curves.h"
#include "core/direction/planned_load.h"
#include "ui/common/direction_words.h"
#include "ui/common/formats.h"
#include "ui/common/plan_words.h"

#include <QStringList>

#include <cmath>

namespace chalk::app {

namespace {

using direction::BlockPlan;
using direction::PlanWeek;
using direction::WeekReview;
using ui::common::qstring;
using ui::print::PlanPaper;

/// `  3 14 Dec  Base    `.
QString weekHead(const BlockPlan& plan, std::size_t index)
{
    constexpr int kNumberWidth = 4;
    constexpr int kDayWidth = 7;
    constexpr int kKindWidth = 8;
    const PlanWeek& week = plan.weeks[index];
    const QString kind =
        week.kind == direction::WeekKind::Lighter ? ui::common::weekKindName(week.kind) : ui::common::phaseName(week.phase);
    return QStringLiteral("%1 %2%3").arg(QString::number(index + 1).rightJustified(kNumberWidth),
                                         ui::common::shortDayText(week.monday).leftJustified(kDayWidth), kind.leftJustified(kKindWidth));
}

QString percentText(double share)
{
    return QStringLiteral("%1 %").arg(std::lround(share * 100));
}

QString liftHeadOf(const PlanPaper& paper, std::size_t index)
{
    QString head = QStringLiteral("%1: %2").arg(qstring(paper.names[index]),
                                                ui::common::liftRoleName(paper.plan.plan.wishes.lifts[index].role).toLower());
    if (const direction::LiftForPlan* lift = paper.liftAt(index)) {
        const direction::PlanSingle single = direction::singleNow(paper.plan, index, paper.lifts);
        head += QStringLiteral(", single ") + ui::common::planSingleText(single, lift->machine.setup().unit);
        const QString wait = ui::common::planWaitText(*lift, single.load, paper.isRunning());
        head += wait.isEmpty() ? QString() : QStringLiteral("; ") + wait;
    }
    return head;
}

QString workInWeek(const PlanPaper& paper, std::size_t week, std::size_t lift, const direction::PlannedWork& work)
{
    const direction::LiftForPlan* found = paper.liftAt(lift);
    return found == nullptr ? ui::common::planSetsText(work)
                            : ui::common::planWorkText(work, *found, paper.singleIn(lift, paper.plan.plan.weeks[week].monday));
}

void writePlannedLift(QTextStream& out, const PlanPaper& paper, std::size_t lift)
{
    const BlockPlan& plan = paper.plan.plan;
    out << '\n' << liftHeadOf(paper, lift) << '\n';
    for (std::size_t week = 0; week < plan.weeks.size(); ++week) {
        QStringList works;
        for (const direction::PlannedWork& work : plan.weeks[week].work[lift]) {
            works << workInWeek(paper, week, lift, work);
        }
        out << weekHead(plan, week) << (works.isEmpty() ? QStringLiteral("-") : works.join(QStringLiteral("; "))) << '\n';
    }
}

void writeCurves(QTextStream& out, const BlockPlan& plan)
{
    out << "\nBy week: mean intensity of the main lifts, hard sets and repetitions of all lifts\n";
    const auto curves = direction::curvesOf(plan);
    for (std::size_t week = 0; week < curves.size(); ++week) {
        out << weekHead(plan, week) << percentText(curves[week].intensity).rightJustified(6)
            << QString::number(curves[week].hardSets).rightJustified(5) << " sets" << QString::number(curves[week].reps).rightJustified(6)
            << " reps\n";
    }
}

void writeDepartures(QTextStream& out, const PlanPaper& paper)
{
    const auto departures = direction::departuresOf(paper.plan.plan);
    out << (departures.empty() ? "\nEvery figure lies in its published range.\n" : "\nOutside of the published ranges\n");
    for (const direction::PlanDeparture& one : departures) {
        out << QStringLiteral("  week %1, %2, day %3: %4\n")
                   .arg(one.week + 1)
                   .arg(qstring(paper.names[one.lift]))
                   .arg(one.exposure + 1)
                   .arg(ui::common::departureText(one.departure));
    }
}

/// Main lifts of a strength plan are held beside the printed table.
bool hasZones(const BlockPlan& plan, std::size_t lift)
{
    return plan.wishes.direction == direction::Direction::Strength && plan.wishes.lifts[lift].role == direction::LiftRole::Main;
}

QString zonesText(const PlanWeek& week, std::size_t lift)
{
    QStringList texts;
    for (const direction::PlannedWork& work : week.work[lift]) {
        for (const direction::ZoneTotal& total : work.isTest ? std::vector<direction::ZoneTotal>() : direction::totalsOf(work)) {
            const bool isOutside = total.zone && (!total.isTotalInside || !total.areSetsInside);
            texts << ui::common::zoneTotalText(total) + (isOutside ? QStringLiteral(" (outside)") : QString());
        }
    }
    return texts.join(QStringLiteral("; "));
}

void writeZones(QTextStream& out, const PlanPaper& paper)
{
    const BlockPlan& plan = paper.plan.plan;
    for (std::size_t lift = 0; lift < plan.wishes.lifts.size(); ++lift) {
        if (!hasZones(plan, lift)) {
            continue;
        }
        out << "\n" << qstring(paper.names[lift]) << ": repetitions by intensity beside the printed table\n";
        for (std::size_t week = 0; week < plan.weeks.size(); ++week) {
            const QString zones = zonesText(plan.weeks[week], lift);
            out << (zones.isEmpty() ? QString() : weekHead(plan, week) + zones + QLatin1Char('\n'));
        }
    }
}

}  // namespace

void writePlan(QTextStream& out, const PlanPaper& paper)
{
    const BlockPlan& plan = paper.plan.plan;
    out << qstring(paper.clientName) << ": " << ui::common::planTitle(plan)
        << (plan.wishes.direction == direction::Direction::Strength ? QStringLiteral(", ") + ui::common::waveName(plan.wishes.wave)
                                                                    : QString())
        << ", " << ui::common::planDaysText(plan) << '\n'
        << (paper.plan.id.isNone() ? QStringLiteral("Not begun: nothing is written.")
                                   : QStringLiteral("Begun on %1, %2.")
                                         .arg(ui::common::dayText(paper.plan.begunOn), ui::common::planPlaceText(paper.plan, paper.today)))
        << " Planning figures, not tests.\n";
    for (std::size_t lift = 0; lift < paper.names.size(); ++lift) {
        writePlannedLift(out, paper, lift);
    }
    QStringList beside;
    for (const std::string& name : paper.beside) {
        beside << qstring(name);
    }
    out << (beside.isEmpty() ? QString() : QStringLiteral("\nBeside the plan, on the ladder: %1\n").arg(beside.join(QStringLiteral(", "))));
    writeCurves(out, plan);
    writeDepartures(out, paper);
    writeZones(out, paper);
    out << '\n' << ui::common::heavyWorkCautions().join(QLatin1Char(' ')) << '\n';
}

void writeComparison(QTextStream& out, const PlanPaper& paper)
{
    const BlockPlan& plan = paper.plan.plan;
    out << qstring(paper.clientName) << ": " << ui::common::planTitle(plan) << ", " << ui::common::planPlaceText(paper.plan, paper.today)
        << '\n';
    for (std::size_t lift = 0; lift < paper.names.size(); ++lift) {
        const base::Load single = paper.plan.singles[lift].load;
        const bool isSingleKnown = single > base::Load();
        const auto reviews = direction::reviewOf(plan, lift, isSingleKnown ? single : base::Load::fromCenti(1), paper.done[lift]);
        out << '\n' << qstring(paper.names[lift]) << '\n';
        for (std::size_t week = 0; week < reviews.size() && reviews[week].monday <= paper.today; ++week) {
            const WeekReview& review = reviews[week];
            out << weekHead(plan, week)
                << QStringLiteral("%1 of %2 sets, %3 of %4 reps")
                       .arg(review.doneSets)
                       .arg(review.plannedSets)
                       .arg(review.doneReps)
                       .arg(review.plannedReps);
            if (isSingleKnown && review.doneReps > 0) {
                out << QStringLiteral(", at %1, planned %2").arg(percentText(review.doneShare), percentText(review.plannedShare));
            }
            out << '\n';
        }
    }
}

void writeDirections(QTextStream& out, std::span<const direction::DirectionFit> fits, const direction::FitFacts& facts)
{
    constexpr int kNameWidth = 10;
    for (const direction::DirectionFit& fit : fits) {
        const direction::Demands demands = direction::demandsOf(fit.direction);
        QStringList notes;
        for (const direction::FitNote note : fit.notes) {
            notes << ui::common::fitNoteText(note, fit.direction, facts.sessionsAWeek);
        }
        out << (fit.isSuggested ? "  * " : "  - ") << ui::common::directionName(fit.direction).leftJustified(kNameWidth)
            << ui::common::directionText(fit.direction) << '\n'
            << QStringLiteral("    load %1, reps %2, variety %3 of 4; at least %4 a week, %5 to do well. %6.\n")
                   .arg(demands.load)
                   .arg(demands.reps)
                   .arg(demands.variety)
                   .arg(demands.leastSessions == 1 ? QStringLiteral("1 session") : QStringLiteral("%1 sessions").arg(demands.leastSessions))
                   .arg(demands.goodSessions)
                   .arg(notes.join(QStringLiteral("; ")));
    }
    out << ui::common::suggestionText(fits, facts) << '\n';
}

}  // namespace chalk::app
