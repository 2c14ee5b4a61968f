#include "app/commands/fill_command.h"

#include "app/commands/plan_text.h"
#include "app/commands/stop_request.h"
#include "core/exchange/week_plan_json.h"
#include "core/exchange/week_problem_json.h"
#include "core/week/week_search.h"
#include "ui/common/formats.h"

#include <QElapsedTimer>
#include <QJsonDocument>

#include <algorithm>
#include <limits>

namespace chalk::app {

namespace {

using ui::common::qstring;
using week::WeekProblem;
using week::WeekSearch;

constexpr int kUsualSeconds = 5;
constexpr int kMostSeconds = 3600;
constexpr int kMostIterations = 2'000'000'000;

/// How long to search.
struct FillEffort {
    int seconds = kUsualSeconds;
    unsigned seed = 1;
    std::optional<std::int64_t> iterations;  ///< where they are given, seconds do not end the search
};

std::optional<FillEffort> effortOf(const CommandContext& context)
{
    const auto seconds = context.wholeNumber(QStringLiteral("seconds"), kUsualSeconds, 1, kMostSeconds);
    const auto seed = seconds ? context.wholeNumber(QStringLiteral("seed"), 1, 0, std::numeric_limits<int>::max()) : std::nullopt;
    const auto iterations = seed ? context.wholeNumber(QStringLiteral("iterations"), 0, 0, kMostIterations) : std::nullopt;
    if (!iterations) {
        return std::nullopt;
    }
    FillEffort effort{*seconds, static_cast<unsigned>(*seed), std::nullopt};
    if (context.has(QStringLiteral("iterations"))) {
        effort.iterations = *iterations;
    }
    return effort;
}

/// Searches until the effort is spent, the plan is proved the best or somebody asks to stop (see StopRequest).
void searchOn(WeekSearch& search, const FillEffort& effort)
{
    constexpr std::int64_t kSlice = 500;
    constexpr qint64 kMilliseconds = 1000;
    QElapsedTimer timer;
    timer.start();
    while (!StopRequest::isMade()) {
        const std::int64_t left = effort.iterations ? *effort.iterations - search.iterations() : kSlice;
        const bool isSpent = effort.iterations ? left <= 0 : timer.hasExpired(effort.seconds * kMilliseconds);
        if (isSpent || !search.advance(std::min(left, kSlice))) {
            break;
        }
    }
}

QJsonObject partsJson(const week::Objective& objective)
{
    const auto number = [](long cost) { return static_cast<qint64>(cost); };
    return {{QStringLiteral("unplaced"), number(objective.unplaced)},     {QStringLiteral("standing"), number(objective.standing)},
            {QStringLiteral("preference"), number(objective.preference)}, {QStringLiteral("gaps"), number(objective.gaps)},
            {QStringLiteral("over"), number(objective.over)},             {QStringLiteral("consecutive"), number(objective.consecutive)}};
}

int runFill(const CommandContext& context)
{
    const auto effort = effortOf(context);
    if (!effort) {
        return kWrongUse;
    }
    const StopRequest stop;
    const auto text = context.readInput(context.operands.front());
    if (!text) {
        return kWrongUse;
    }
    const auto problem = exchange::parseJson(*text).and_then(exchange::readWeekProblem);
    if (!problem) {
        return context.refuse(QStringLiteral("%1: %2: %3").arg(context.operands.front(), qstring(problem.error().field), qstring(problem.error().reason)));
    }
    week::FillOptions options;
    options.seed = effort->seed;
    WeekSearch search(*problem, options);
    searchOn(search, *effort);
    const week::Objective objective = search.objective();
    const PlanText plan(*problem, search.best());
    if (context.isJson()) {
        QJsonObject answer = exchange::toJson(search.best(), *problem, objective.total());
        answer.insert(QStringLiteral("parts"), partsJson(objective));
        answer.insert(QStringLiteral("left_over"), plan.leftOverJson());
        answer.insert(QStringLiteral("contradictions"), plan.contradictionsJson());
        answer.insert(QStringLiteral("proved"), search.isProved());
        context.out << QJsonDocument(answer).toJson(QJsonDocument::Indented);
        return kDone;
    }
    plan.writeDays(context.out);
    context.out << '\n';
    plan.writeLeftOver(context.out);
    plan.writeContradictions(context.out);
    plan.writeObjective(context.out, objective);
    context.out << (search.isProved() ? "Proved: no plan costs less.\n" : "Not proved: the best plan that was found; a cheaper one may be there.\n");
    return kDone;
}

QString fillDetails()
{
    return QStringLiteral(
        "FILE is one JSON object (- for standard input); spans are [day, from, to]: day 0 is Monday, then minutes of that day.\n"
        "  {\"name\": \"week 48\", \"grid\": 15, \"open\": [[0, 360, 1290]],\n"
        "   \"equipment\": [{\"id\": \"rack\", \"units\": 1, \"closures\": [{\"day\": 0, \"from\": 600, \"to\": 720, \"units\": 0}]}],\n"
        "   \"coaches\": [{\"id\": \"Mia\", \"capacity\": 2, \"softMaxMin\": 420, \"windows\": [[0, 420, 720]], \"breaks\": [[0, 600, 630]]}],\n"
        "   \"clients\": [{\"id\": \"Tove\", \"priority\": 2, \"maxGroup\": 2, \"recovery\": {\"type\": \"hours\", \"hours\": 48},\n"
        "     \"available\": [[0, 420, 720]], \"preferred\": [[0, 480, 510]], \"coaches\": {\"Mia\": 0},\n"
        "     \"lastWeek\": [{\"start\": -3330, \"patterns\": [\"squat\"]}]}],\n"
        "   \"sessions\": [{\"id\": \"S1\", \"client\": \"Tove\", \"duration\": 60, \"patterns\": [\"squat\"],\n"
        "     \"equipment\": [{\"id\": \"rack\", \"share\": 40, \"from\": 0, \"to\": 30}],\n"
        "     \"standing\": {\"coach\": \"Mia\", \"start\": 480}, \"locked\": false}]}\n"
        "grid is 15 or 30: sessions start on it. A coach works in windows less breaks and absences, inside of the studio's open hours, and\n"
        "takes capacity sessions at once; softMaxMin is a usual day in minutes. A client shares a coach with at most maxGroup - 1 others,\n"
        "trains inside of an available span, on one day once, and recovers (restDay, or hours from start to start) between sessions with a\n"
        "pattern in common. coaches are those whom the client accepts, and what each costs. share is per cent of one unit. start of a\n"
        "standing slot and of last week counts minutes since Monday 00:00 of this week. A locked session stays on its standing slot, even\n"
        "against the rules.\n"
        "weights may say what a plan costs: unplaced (1000, times the priority), dayMove (80), timeMoveBase (20), timeMovePer15 (4),\n"
        "timeMoveCap (60), coachMove (30), prefPer15 (1), prefCap (12), gapPer15 (2), overPer15 (1), consecutive (6).\n"
        "The search shows the cheapest plan that it found; SIGINT or SIGTERM ends it early. --json writes instance, objective and plan:\n"
        "for each session its coach and start, or null for both where it is left over; the parts of the objective, why sessions are left\n"
        "over and what would help, what no plan can keep, and whether the plan is proved the cheapest.");
}

}  // namespace

Command fillCommand()
{
    return {QStringLiteral("fill"),
            QStringLiteral("plan a week: who trains when with which coach"),
            QStringLiteral("FILE"),
            1,
            1,
            {{QStringLiteral("seconds"), QStringLiteral("N"), QStringLiteral("search for so long; 5 where it is left out")},
             {QStringLiteral("seed"), QStringLiteral("N"), QStringLiteral("begin the search by another chance; 1 where it is left out")},
             {QStringLiteral("iterations"), QStringLiteral("N"), QStringLiteral("search so many steps instead: the same plan every time")}},
            fillDetails(),
            runFill};
}

}  // namespace chalk::app
