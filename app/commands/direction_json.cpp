#include "app/commands/direction_json.h"

#include "core/direction/plan_curves.h"
#include "core/direction/planned_load.h"
#include "core/exchange/client_plan_json.h"
#include "ui/common/formats.h"
#include "ui/common/plan_words.h"

#include <cmath>

namespace chalk::app {

namespace {

using direction::BlockPlan;
using direction::PlanWeek;
using ui::common::qstring;
using ui::print::PlanPaper;

constexpr std::array kFitNoteKeys{"fits_the_week",         "fewer_than_wanted", "too_few_sessions",
                                  "care_with_heavy_loads", "lift_on_hold",      "few_lifts_gone_round"};
constexpr std::array kFigureKeys{"share", "reps", "sets", "rest"};

/// Whole and tenth per cent.
double percentOf(double share)
{
    return std::round(share * 1000) / 10;
}

QString unitOf(const direction::LiftForPlan* lift)
{
    return lift == nullptr ? QString() : ui::common::unitText(lift->machine.setup().unit);
}

QJsonArray plannedLiftsJson(const PlanPaper& paper)
{
    QJsonArray lifts;
    for (std::size_t i = 0; i < paper.names.size(); ++i) {
        const direction::LiftForPlan* lift = paper.liftAt(i);
        const direction::PlanSingle single = direction::singleNow(paper.plan, i, paper.lifts);
        lifts.append(QJsonObject{
            {QStringLiteral("name"), qstring(paper.names[i])},
            {QStringLiteral("pattern"), lift == nullptr ? QString() : qstring(lifts::keyOf(lift->pattern))},
            {QStringLiteral("unit"), unitOf(lift)},
            {QStringLiteral("single"), single.load.centi() / 100.0},
            {QStringLiteral("tested"), single.isTested},
            {QStringLiteral("waits"), lift == nullptr ? QString() : ui::common::planWaitText(*lift, single.load, paper.isRunning())}});
    }
    return lifts;
}

/// By week, by lift, by exposure: what is put on the lift; null where no single is known.
QJsonArray loadsJson(const PlanPaper& paper)
{
    QJsonArray weeks;
    for (const PlanWeek& week : paper.plan.plan.weeks) {
        QJsonArray lifts;
        for (std::size_t lift = 0; lift < week.work.size(); ++lift) {
            QJsonArray works;
            const direction::LiftForPlan* found = paper.liftAt(lift);
            for (const direction::PlannedWork& work : week.work[lift]) {
                const base::Milli share = work.isTest ? base::Milli(1000) : work.scheme.share;
                const auto load =
                    found == nullptr ? std::nullopt : direction::plannedLoad(*found, paper.singleIn(lift, week.monday), share);
                works.append(load ? QJsonValue(load->centi() / 100.0) : QJsonValue(QJsonValue::Null));
            }
            lifts.append(works);
        }
        weeks.append(lifts);
    }
    return weeks;
}

QJsonArray curvesJson(const BlockPlan& plan)
{
    QJsonArray curves;
    for (const direction::WeekCurve& curve : direction::curvesOf(plan)) {
        curves.append(QJsonObject{{QStringLiteral("monday"), qstring(curve.monday.toString())},
                                  {QStringLiteral("phase"), qstring(direction::keyOf(curve.phase))},
                                  {QStringLiteral("kind"), qstring(direction::keyOf(curve.kind))},
                                  {QStringLiteral("percent"), percentOf(curve.intensity)},
                                  {QStringLiteral("sets"), curve.hardSets},
                                  {QStringLiteral("reps"), curve.reps}});
    }
    return curves;
}

/// Counted from 1, as people count.
QJsonObject placeJson(std::size_t week, std::size_t lift, std::size_t exposure)
{
    return {{QStringLiteral("week"), static_cast<qint64>(week + 1)},
            {QStringLiteral("lift"), static_cast<qint64>(lift + 1)},
            {QStringLiteral("exposure"), static_cast<qint64>(exposure + 1)}};
}

QJsonArray departuresJson(const BlockPlan& plan)
{
    QJsonArray departures;
    for (const direction::PlanDeparture& found : direction::departuresOf(plan)) {
        QJsonObject one = placeJson(found.week, found.lift, found.exposure);
        one.insert(QStringLiteral("figure"), QLatin1String(kFigureKeys[static_cast<std::size_t>(found.departure.figure)]));
        one.insert(QStringLiteral("value"), found.departure.value);
        one.insert(QStringLiteral("least"), found.departure.range.least);
        one.insert(QStringLiteral("most"), found.departure.range.most);
        one.insert(QStringLiteral("source"), qstring(found.departure.source));
        departures.append(one);
    }
    return departures;
}

void addZones(QJsonArray& zones, const PlanWeek& week, std::size_t index, std::size_t lift)
{
    for (std::size_t exposure = 0; exposure < week.work[lift].size(); ++exposure) {
        const direction::PlannedWork& work = week.work[lift][exposure];
        for (const direction::ZoneTotal& total : work.isTest ? std::vector<direction::ZoneTotal>() : direction::totalsOf(work)) {
            QJsonObject one = placeJson(index, lift, exposure);
            one.insert(QStringLiteral("reps"), total.reps);
            one.insert(QStringLiteral("from"), total.zone ? QJsonValue(total.zone->from.value() / 10) : QJsonValue(QJsonValue::Null));
            one.insert(QStringLiteral("to"), total.zone ? QJsonValue(total.zone->to.value() / 10) : QJsonValue(QJsonValue::Null));
            one.insert(QStringLiteral("inside"),
                       total.zone ? QJsonValue(total.isTotalInside && total.areSetsInside) : QJsonValue(QJsonValue::Null));
            zones.append(one);
        }
    }
}

QJsonArray zonesJson(const BlockPlan& plan)
{
    QJsonArray zones;
    for (std::size_t week = 0; week < plan.weeks.size(); ++week) {
        for (std::size_t lift = 0; lift < plan.wishes.lifts.size(); ++lift) {
            if (plan.wishes.direction == direction::Direction::Strength && plan.wishes.lifts[lift].role == direction::LiftRole::Main) {
                addZones(zones, plan.weeks[week], week, lift);
            }
        }
    }
    return zones;
}

QJsonObject weekReviewJson(const direction::WeekReview& review, bool isBegun, bool isSingleKnown)
{
    const auto done = [isBegun](int number) { return isBegun ? QJsonValue(number) : QJsonValue(QJsonValue::Null); };
    const bool hasShare = isBegun && isSingleKnown && review.doneReps > 0;
    return {{QStringLiteral("monday"), qstring(review.monday.toString())},
            {QStringLiteral("planned_sets"), review.plannedSets},
            {QStringLiteral("done_sets"), done(review.doneSets)},
            {QStringLiteral("planned_reps"), review.plannedReps},
            {QStringLiteral("done_reps"), done(review.doneReps)},
            {QStringLiteral("planned_percent"), percentOf(review.plannedShare)},
            {QStringLiteral("done_percent"), hasShare ? QJsonValue(percentOf(review.doneShare)) : QJsonValue(QJsonValue::Null)}};
}

/// What every object about a plan begins with.
QJsonObject planHeadJson(const PlanPaper& paper)
{
    return {{QStringLiteral("client"), static_cast<qint64>(paper.plan.client.value())},
            {QStringLiteral("name"), qstring(paper.clientName)},
            {QStringLiteral("id"), static_cast<qint64>(paper.plan.id.value())}};
}

}  // namespace

QJsonObject planJson(const PlanPaper& paper)
{
    QJsonObject object = planHeadJson(paper);
    const QJsonObject kept = exchange::toJson(paper.plan);
    for (const QString& key : kept.keys()) {
        object.insert(key, kept.value(key));
    }
    object.insert(QStringLiteral("running"), paper.isRunning());
    object.insert(QStringLiteral("last_day"), qstring(direction::lastDayOf(paper.plan).toString()));
    object.insert(QStringLiteral("lifts"), plannedLiftsJson(paper));
    object.insert(QStringLiteral("loads"), loadsJson(paper));
    object.insert(QStringLiteral("curves"), curvesJson(paper.plan.plan));
    object.insert(QStringLiteral("departures"), departuresJson(paper.plan.plan));
    object.insert(QStringLiteral("zones"), zonesJson(paper.plan.plan));
    return object;
}

QJsonObject comparisonJson(const PlanPaper& paper)
{
    QJsonArray lifts;
    for (std::size_t lift = 0; lift < paper.names.size(); ++lift) {
        const base::Load single = paper.plan.singles[lift].load;
        const bool isSingleKnown = single > base::Load();
        QJsonArray weeks;
        for (const direction::WeekReview& review :
             direction::reviewOf(paper.plan.plan, lift, isSingleKnown ? single : base::Load::fromCenti(1), paper.done[lift])) {
            weeks.append(weekReviewJson(review, review.monday <= paper.today, isSingleKnown));
        }
        lifts.append(QJsonObject{{QStringLiteral("name"), qstring(paper.names[lift])}, {QStringLiteral("weeks"), weeks}});
    }
    QJsonObject object = planHeadJson(paper);
    object.insert(QStringLiteral("lifts"), lifts);
    return object;
}

QJsonArray directionsJson(std::span<const direction::DirectionFit> fits)
{
    QJsonArray directions;
    for (const direction::DirectionFit& fit : fits) {
        const direction::Demands demands = direction::demandsOf(fit.direction);
        QJsonArray notes;
        for (const direction::FitNote note : fit.notes) {
            notes.append(QLatin1String(kFitNoteKeys[static_cast<std::size_t>(note)]));
        }
        directions.append(QJsonObject{{QStringLiteral("direction"), qstring(direction::keyOf(fit.direction))},
                                      {QStringLiteral("suggested"), fit.isSuggested},
                                      {QStringLiteral("notes"), notes},
                                      {QStringLiteral("load"), demands.load},
                                      {QStringLiteral("reps"), demands.reps},
                                      {QStringLiteral("variety"), demands.variety},
                                      {QStringLiteral("least_sessions"), demands.leastSessions},
                                      {QStringLiteral("good_sessions"), demands.goodSessions}});
    }
    return directions;
}

}  // namespace chalk::app
