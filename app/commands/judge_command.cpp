#include "app/commands/judge_command.h"

#include "core/exchange/plateau_csv.h"
#include "core/exchange/plateau_json.h"
#include "ui/common/formats.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace chalk::app {

namespace {

/// What `read` makes of a file. Writes one line and answers nothing where it cannot be read.
template <class Value>
std::optional<Value> readFrom(const CommandContext& context, const QString& name, exchange::CsvResult<Value> (*read)(const QByteArray&))
{
    const auto text = context.readInput(name);
    if (!text) {
        return std::nullopt;
    }
    auto value = read(*text);
    if (!value) {
        context.refuse(name + QStringLiteral(": ") + ui::common::qstring(exchange::textOf(value.error())));
        return std::nullopt;
    }
    return std::move(*value);
}

int runJudge(const CommandContext& context)
{
    if (!context.has(QStringLiteral("checkins"))) {
        return context.refuse(QStringLiteral("--checkins FILE is missing: the days to judge on"));
    }
    const QString checkins = context.value(QStringLiteral("checkins"));
    if (checkins == QLatin1String("-") && context.operands.front() == checkins) {
        return context.refuse(QStringLiteral("only one of the two files can be standard input"));
    }
    const auto logs = readFrom(context, context.operands.front(), exchange::readExposuresCsv);
    const auto checks = logs ? readFrom(context, checkins, exchange::readCheckinsCsv) : std::nullopt;
    if (!checks) {
        return kWrongUse;
    }
    const auto judged = exchange::judgeAll(*logs, *checks);
    const bool hasTrace = context.has(QStringLiteral("trace"));
    if (context.isJson()) {
        QJsonArray all;
        for (const exchange::JudgedCheck& one : judged) {
            all.append(exchange::toJson(one, hasTrace));
        }
        context.out << QJsonDocument(all).toJson(QJsonDocument::Indented);
    } else {
        context.out << (hasTrace ? exchange::traceCsvOf(judged) : exchange::verdictsCsvOf(judged));
    }
    return kDone;
}

QString judgeDetails()
{
    return QStringLiteral(
        "FILE is CSV (- for standard input) whose first line names its columns, in any order:\n"
        "  client,lift,date,variant,stage,target_load,target_sets,target_reps,target_rest,load,sets,reps,reps_each,rir,rest,control,pain,\n"
        "  deload\n"
        "all on one line, then a line for each lift and session:\n"
        "  Tove,squat,2026-11-24,back squat,load,40,3,10,180,40,3,10,10|10|8,1,175,1,0,0\n"
        "stage is base, load, rep, set or rest. Loads are in one unit, effective ones where body mass counts; rests are seconds. reps is of\n"
        "the first set, reps_each of every set, rir the reps in reserve of the first. rir and rest may be empty; control, pain and deload are\n"
        "1 or 0. The check-ins are CSV too:\n"
        "  client,lift,check_date,planned_28d,attended_28d\n"
        "  Tove,squat,2026-11-29,8,7\n"
        "A lift is judged by what was done up to the day, and of that by its last variation. The verdict is progressing, stalled, regressing\n"
        "or not_enough_data; progressing says that there is no sign of a stall, not that there is none. Two witnesses speak: the trend of\n"
        "estimated strength, and targets missed beside the client's own record. A new best outweighs them.\n"
        "The trace adds n, slope (natural logarithm a week), se, swr (the least slope worth having) and zA of the trend; misses of the last\n"
        "four, base (the usual share) and zB of the targets; the days since a best; Z, both together, of which 0.5 or more is a stall; p_low\n"
        "and p_stop, how likely the gain is below 0.5 % a week and none at all; reason; watch; and the strength of an alarm. Reals have ten\n"
        "digits. --json says why in figures.\n"
        "The figures behind it were found on simulated beginners, not on real ones. There a lift that progressed was called stalled at one\n"
        "weekly check-in in five months, and 4 of 10 stalls were found within 8 weeks.");
}

}  // namespace

Command judgeCommand()
{
    return {QStringLiteral("judge"),
            QStringLiteral("judge by logs which lifts have stalled"),
            QStringLiteral("FILE"),
            1,
            1,
            {{QStringLiteral("checkins"), QStringLiteral("FILE"), QStringLiteral("the days to judge on; must be given")},
             {QStringLiteral("trace"), {}, QStringLiteral("add everything on the way to a verdict")}},
            judgeDetails(),
            runJudge};
}

}  // namespace chalk::app
