#include "ui/common/plan_words.h"

#include "core/direction/plan_calendar.h"
#include "core/direction/planned_load.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::common {

namespace {

constexpr base::Milli kWholeSingle{1000};
constexpr int kHalfUnit = 50;  ///< hundredths; an estimate is not known more closely

QString planWords(const char* text)
{
    return QCoreApplication::translate("Plan", text);
}

}  // namespace

QString planShareText(base::Milli share)
{
    const int tenths = share.value() % 10;
    const QString whole = QString::number(share.value() / 10);
    return tenths == 0 ? QStringLiteral("%1 %").arg(whole) : QStringLiteral("%1.%2 %").arg(whole).arg(tenths);
}

QString planSetsText(const chalk::direction::PlannedWork& work)
{
    if (work.isTest) {
        return planWords(QT_TRANSLATE_NOOP("Plan", "test"));
    }
    const QString reps = QString::number(work.scheme.reps.value());
    const QString range = work.repsMost > work.scheme.reps ? reps + QChar(0x2013) + QString::number(work.repsMost.value()) : reps;
    return QStringLiteral("%1 × %2").arg(work.scheme.sets.value()).arg(range);
}

QString planLoadText(const chalk::direction::LiftForPlan& lift, base::Load load)
{
    const progression::Kit& kit = lift.machine.kit();
    return loadText(load, lift.machine.setup().unit, kit.pieces, std::holds_alternative<lifts::BodyAdded>(kit.equipment));
}

QString planLoadText(const chalk::direction::LiftForPlan& lift, base::Load single, base::Milli share)
{
    const auto load = chalk::direction::plannedLoad(lift, single, share);
    return load ? planLoadText(lift, *load) : planShareText(share);
}

QString planWorkText(const chalk::direction::PlannedWork& work, const chalk::direction::LiftForPlan& lift, base::Load single)
{
    if (work.isTest) {
        const auto about = chalk::direction::plannedLoad(lift, single, kWholeSingle);
        return about ? planWords(QT_TRANSLATE_NOOP("Plan", "test, about %1")).arg(planLoadText(lift, *about)) : planSetsText(work);
    }
    const QString text = planWords(QT_TRANSLATE_NOOP("Plan", "%1 at %2, rest %3, %4 left"))
                             .arg(planSetsText(work), planLoadText(lift, single, work.scheme.share), restText(work.scheme.rest))
                             .arg(work.scheme.reserve);
    return work.isPauseAsked ? planWords(QT_TRANSLATE_NOOP("Plan", "%1, with a pause")).arg(text) : text;
}

base::Load estimateShown(base::Load single)
{
    return base::Load::fromCenti((single.centi() + kHalfUnit / 2) / kHalfUnit * kHalfUnit);
}

QString planSingleText(const chalk::direction::PlanSingle& single, base::MassUnit unit)
{
    if (single.load <= base::Load()) {
        return planWords(QT_TRANSLATE_NOOP("Plan", "not known yet"));
    }
    if (single.isTested) {
        return planWords(QT_TRANSLATE_NOOP("Plan", "%1, tested")).arg(loadText(single.load, unit));
    }
    return planWords(QT_TRANSLATE_NOOP("Plan", "%1, estimated")).arg(loadText(estimateShown(single.load), unit));
}

QString planWaitText(const chalk::direction::LiftForPlan& lift, base::Load single, bool isRunning)
{
    const progression::LiftState& state = lift.machine.state();
    if (state.isOnHold) {
        return planWords(QT_TRANSLATE_NOOP("Plan", "on hold, joins once it is released"));
    }
    if (!progression::isLoaded(state.stage)) {
        return planWords(QT_TRANSLATE_NOOP("Plan", "joins once it is loaded"));
    }
    if (single <= base::Load()) {
        return planWords(QT_TRANSLATE_NOOP("Plan", "joins once a single is known"));
    }
    return isRunning && !state.block ? planWords(QT_TRANSLATE_NOOP("Plan", "off the plan")) : QString();
}

QString planPlaceText(const chalk::direction::ClientPlan& plan, base::Date day)
{
    const base::Date last = chalk::direction::lastDayOf(plan);
    if (day > last) {
        return planWords(QT_TRANSLATE_NOOP("Plan", "over since %1")).arg(dayText(last));
    }
    const auto& weeks = plan.plan.weeks;
    if (const auto week = chalk::direction::weekOn(plan.plan, day)) {
        return planWords(QT_TRANSLATE_NOOP("Plan", "week %1 of %2")).arg(*week + 1).arg(weeks.size());
    }
    const auto next = std::find_if(weeks.begin(), weeks.end(), [day](const chalk::direction::PlanWeek& week) { return week.monday > day; });
    if (next == weeks.end()) {
        return {};
    }
    return (next == weeks.begin() ? planWords(QT_TRANSLATE_NOOP("Plan", "begins on %1"))
                                  : planWords(QT_TRANSLATE_NOOP("Plan", "away, goes on on %1")))
        .arg(dayText(next->monday));
}

}  // namespace chalk::ui::common
