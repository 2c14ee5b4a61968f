#include "ui/direction/running_view.h"

#include "core/direction/plan_calendar.h"
#include "core/direction/planned_load.h"
#include "ui/common/direction_words.h"
#include "ui/common/formats.h"
#include "ui/common/plan_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::direction {

namespace {

using chalk::direction::ClientPlan;
using chalk::direction::LiftForPlan;
using chalk::direction::LiftRole;
using chalk::direction::PlanWeek;
using chalk::direction::WeekKind;

constexpr int kDaysToSunday = 6;
constexpr int kDaysOfPlanWeek = 7;

struct RunningText {
    Q_DECLARE_TR_FUNCTIONS(RunningPlan)
};

/// The week that runs, else the next one; null after the last.
const PlanWeek* weekFrom(const ClientPlan& plan, base::Date day)
{
    const auto found = std::ranges::find_if(plan.plan.weeks, [day](const PlanWeek& week) { return week.monday + kDaysToSunday >= day; });
    return found == plan.plan.weeks.end() ? nullptr : &*found;
}

std::vector<LiftForPlan> liftsOf(const DirectionCase& client)
{
    std::vector<LiftForPlan> lifts;
    for (const DirectionLift& one : client.lifts) {
        lifts.push_back(one.lift);
    }
    return lifts;
}

/// `4 × 4 at 85 kg; 4 × 4 at 67.5 kg`: the exposures of a lift in a week.
QString weekWorkText(const PlanWeek* week, std::size_t lift, const LiftForPlan& shown, base::Load single)
{
    if (week == nullptr || week->work[lift].empty()) {
        return QStringLiteral("–");
    }
    QStringList parts;
    for (const chalk::direction::PlannedWork& work : week->work[lift]) {
        const QString load = common::planLoadText(shown, single, work.scheme.share);
        parts.append(work.isTest ? common::planSetsText(work) : RunningText::tr("%1 at %2").arg(common::planSetsText(work), load));
    }
    parts.removeDuplicates();
    return parts.join(QStringLiteral("; "));
}

QString weekText(const PlanWeek& week)
{
    switch (week.kind) {
    case WeekKind::Work:
        return common::phaseName(week.phase);
    case WeekKind::Lighter:
        return RunningText::tr("%1, lighter week").arg(common::phaseName(week.phase));
    case WeekKind::Test:
        return RunningText::tr("test week");
    }
    return {};
}

/// What a column of a week is called: by its day where the week of `day` is another one.
QString weekHead(const PlanWeek* week, base::Date day, const QString& usual)
{
    return week != nullptr && week->monday > day ? RunningText::tr("From %1").arg(common::shortDayText(week->monday)) : usual;
}

void addWeeks(std::vector<ChangeLine>& lines, const ClientPlan& plan, base::Date today)
{
    const PlanWeek* now = weekFrom(plan, today);
    if (now == nullptr) {
        return;
    }
    const QString start = common::shortDayText(now->monday);
    lines.push_back({QStringLiteral("direction"),
                     now->monday <= today ? RunningText::tr("Now: %1, %2.").arg(common::planPlaceText(plan, today), weekText(*now))
                     : now == plan.plan.weeks.data() ? RunningText::tr("The plan begins on %1: %2. Until then the ladder goes on.").arg(start, weekText(*now))
                                                     : RunningText::tr("Away now. The plan goes on from %1: %2.").arg(start, weekText(*now))});
    for (const PlanWeek* week = now + 1; week != plan.plan.weeks.data() + plan.plan.weeks.size(); ++week) {
        if (week->kind == WeekKind::Lighter) {
            lines.push_back({QStringLiteral("checkin"), RunningText::tr("The next lighter week begins on %1. Its end is a check-in.").arg(common::shortDayText(week->monday))});
            break;
        }
    }
    const PlanWeek& last = plan.plan.weeks.back();
    if (last.kind == WeekKind::Test && last.monday > today) {
        lines.push_back({QStringLiteral("ready"), RunningText::tr("The test week begins on %1.").arg(common::shortDayText(last.monday))});
    }
    lines.push_back({QStringLiteral("calendar"), RunningText::tr("The plan ends on %1.").arg(common::shortDayText(chalk::direction::lastDayOf(plan)))});
}

}  // namespace

PlanPanelView runningPanelView(const DirectionCase& client)
{
    const ClientPlan& plan = *client.running;
    const std::vector<LiftForPlan> lifts = liftsOf(client);
    PlanPanelView view;
    view.title = RunningText::tr("%1, %2").arg(common::directionName(plan.plan.wishes.direction), common::planPlaceText(plan, client.today));
    view.note = common::planDaysText(plan.plan);
    view.isAlone = true;
    view.chart = planChartScene(plan.plan, client.closures, client.today);
    const PlanWeek* now = weekFrom(plan, client.today);
    const PlanWeek* next = now != nullptr && now != &plan.plan.weeks.back() ? now + 1 : nullptr;
    view.heads = QStringList{RunningText::tr("Lift"), weekHead(now, client.today, RunningText::tr("This week")),
                             weekHead(next, client.today + kDaysOfPlanWeek, RunningText::tr("Next week")), RunningText::tr("Single now")};
    for (std::size_t i = 0; i < plan.plan.wishes.lifts.size(); ++i) {
        const DirectionLift* lift = client.lift(plan.plan.wishes.lifts[i].lift);
        if (lift == nullptr) {
            continue;
        }
        const chalk::direction::PlanSingle single = chalk::direction::singleNow(plan, i, lifts);
        view.rows.push_back({common::qstring(lift->name), weekWorkText(now, i, lift->lift, single.load), weekWorkText(next, i, lift->lift, single.load),
                             common::planSingleText(single, lift->lift.machine.setup().unit)});
    }
    view.footnote = RunningText::tr("Loads come from the single as results have moved it. They are planning figures, not tests.");
    return view;
}

DirectionSideView runningSideView(const DirectionCase& client)
{
    const ClientPlan& plan = *client.running;
    DirectionSideView view;
    view.title = RunningText::tr("What is next for %1").arg(firstNameOf(client.client));
    addWeeks(view.lines, plan, client.today);
    for (const ClosedDays& closed : client.closures) {
        const std::vector<int> weeks = closedWeeks(plan.plan, closed);
        if (closed.last >= client.today && !weeks.empty()) {
            view.lines.push_back({QStringLiteral("closed"), RunningText::tr("%1 – %2: the studio is closed, in %3. Missed weeks can shift or squeeze the plan.")
                                                                .arg(common::shortDayText(closed.first), common::shortDayText(closed.last), weekListText(weeks))});
        }
    }
    for (const AsideLift& aside : asideLifts(client, plan.plan, plan.singles, true)) {
        view.lines.push_back({aside.why == AsideWhy::OnHold ? QStringLiteral("hold") : QStringLiteral("info"), asideText(client, plan.plan, aside)});
    }
    if (client.isBlocked()) {
        view.bar = startBarText(client, StartBar::Clearance);
    }
    return view;
}

bool canTakeUp(const DirectionCase& client)
{
    const ClientPlan& plan = *client.running;
    if (client.isBlocked()) {
        return false;
    }
    return std::ranges::any_of(asideLifts(client, plan.plan, plan.singles, true), [](const AsideLift& aside) { return aside.why == AsideWhy::LeftThePlan; });
}

}  // namespace chalk::ui::direction
