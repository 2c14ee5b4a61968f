#include "app/commands/trace_command.h"

#include "core/exchange/lift_trace_json.h"
#include "ui/common/rule_words.h"

#include <QJsonDocument>

namespace chalk::app {

namespace {

using exchange::JsonFault;

QString words(const progression::RuleList& decided, const progression::Prescription& next, const progression::LiftMachine& machine)
{
    const auto& setup = machine.setup();
    const bool isAdded = std::holds_alternative<lifts::BodyAdded>(machine.kit().equipment);
    return ui::common::whyOf(decided, next, {setup.policy, setup.unit, machine.kit().measure, 1, isAdded});
}

QString faultText(const JsonFault& fault)
{
    return QString::fromStdString(fault.field + ": " + fault.reason);
}

/// One history a line in, one object a line out: what was decided, or `{"error": …}`.
int traceLines(const CommandContext& context, const QByteArray& text)
{
    for (const QByteArray& line : text.split('\n')) {
        if (line.trimmed().isEmpty()) {
            continue;
        }
        const auto traced = exchange::traceOf(line, words);
        const QJsonObject object = traced ? *traced : QJsonObject{{QStringLiteral("error"), faultText(traced.error())}};
        context.out << QJsonDocument(object).toJson(QJsonDocument::Compact) << '\n';
    }
    return kDone;
}

int runTrace(const CommandContext& context)
{
    const auto text = context.readInput(context.operands.front());
    if (!text) {
        return kWrongUse;
    }
    if (context.has(QStringLiteral("lines"))) {
        return traceLines(context, *text);
    }
    const auto traced = exchange::traceOf(*text, words);
    if (!traced) {
        return context.refuse(faultText(traced.error()));
    }
    context.out << QJsonDocument(*traced).toJson(QJsonDocument::Indented);
    return kDone;
}

}  // namespace

Command traceCommand()
{
    return {QStringLiteral("trace"),
            QStringLiteral("run one lift's history through the rules and print every decision"),
            QStringLiteral("FILE"),
            1,
            1,
            {{QStringLiteral("lines"), {}, QStringLiteral("read one history a line, write one answer a line")}},
            QStringLiteral("FILE is one JSON object (- for standard input) with unit, region, equipment and events, and, where wanted, body_mass,\n"
                           "body_share, measure, start_load, stage, policy and as_of. Events are of type exposure, rehearsal, release, set, swap,\n"
                           "lighter or block. The answer names for each event the rules that fired and what was due after it, and at the end what is next."),
            runTrace};
}

}  // namespace chalk::app
