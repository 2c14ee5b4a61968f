#include "app/commands/plan_command.h"

#include "app/commands/client_choice.h"
#include "app/commands/plan_desk.h"
#include "app/commands/plan_overview.h"
#include "app/commands/plan_wishes.h"

namespace chalk::app {

namespace {

int runPlan(const CommandContext& context)
{
    if (const QString fault = planOptionFault(context); !fault.isEmpty()) {
        return context.refuse(fault);
    }
    const bool isAct = context.has(QStringLiteral("begin")) || context.has(QStringLiteral("missed")) || context.has(QStringLiteral("end"));
    const auto database = context.openStudio(isAct ? store::OpenMode::MustExist : store::OpenMode::ReadOnly);
    if (!database) {
        return context.report(database.error());
    }
    if (!context.has(QStringLiteral("client"))) {
        return showPlanOverview(context, **database);
    }
    const auto client = chooseClient(context, **database, context.value(QStringLiteral("client")));
    return client ? PlanDesk(context, **database, *client).run() : kWrongUse;
}

std::vector<Option> planOptions()
{
    return {{QStringLiteral("client"), QStringLiteral("NAME"),
             QStringLiteral("the plan of one client, or the directions; by name, part of one, or id")},
            {QStringLiteral("direction"), QStringLiteral("D"),
             QStringLiteral("show a plan: strength, physique or movement; nothing is written without --begin")},
            {QStringLiteral("wave"), QStringLiteral("W"), QStringLiteral("strength: linear (as by itself) or undulating")},
            {QStringLiteral("weeks"), QStringLiteral("N"), QStringLiteral("8 to 16 weeks; 12 where it is left out")},
            {QStringLiteral("from"), QStringLiteral("DAY"), QStringLiteral("the Monday it starts on; the next one where it is left out")},
            {QStringLiteral("begin"), {}, QStringLiteral("with --direction: begin it")},
            {QStringLiteral("missed"), QStringLiteral("MONDAYS"),
             QStringLiteral("weeks of the running plan that were or will be missed, MONDAY[,MONDAY...]")},
            {QStringLiteral("shift"), {}, QStringLiteral("with --missed: the plan goes on where it stopped and ends later")},
            {QStringLiteral("squeeze"), {}, QStringLiteral("with --missed: the plan ends when it was to end, with less work")},
            {QStringLiteral("end"), {}, QStringLiteral("end the running plan: its lifts go back to the ladder")},
            {QStringLiteral("note"), QStringLiteral("TEXT"), QStringLiteral("with --begin or --end: a note of the coach")},
            {QStringLiteral("compare"), {}, QStringLiteral("what was planned beside what was done, of the running or the last plan")},
            {QStringLiteral("csv"), QStringLiteral("FILE"),
             QStringLiteral("write the plan, or with --compare what was done, as CSV (- for standard output)")},
            {QStringLiteral("pdf"), QStringLiteral("FILE"), QStringLiteral("write the plan as PDF, on A4")},
            {QStringLiteral("tests"), {}, QStringLiteral("what tests of maxima found")}};
}

QString planDetails()
{
    return QStringLiteral(
        "Without --client: who is due for the talk about a direction, whose plan runs and in which week it is, and whose last one is over.\n"
        "With --client: the running plan; where none runs, the three directions with what each asks of the week and how it fits. None is\n"
        "forced. A plan says for each lift and week sets, reps, load, rest and reps left, then intensity and hard sets by week, which\n"
        "figures leave their published range with the source, and of a strength plan the reps by intensity beside the printed table.\n"
        "Loads are shares of an estimated or tested single, rounded down to what the equipment gives: planning figures, not tests. Lifts\n"
        "on hold, without a load or without a known single join later.\n"
        "An act is written whole or not at all, and the window takes it back like any other. Heavy work needs safeties or a spotter; what\n"
        "concerns health is a physician's to say.");
}

}  // namespace

Command planCommand()
{
    return {QStringLiteral("plan"),
            QStringLiteral("plan the weeks after the beginner months, and compare them with what was done"),
            {},
            0,
            0,
            planOptions(),
            planDetails(),
            runPlan,
            Painting::WithPaper};
}

}  // namespace chalk::app
