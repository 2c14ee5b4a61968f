#include "core/exchange/lift_trace_json.h"

#include <QJsonArray>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using progression::Decision;
using progression::LiftMachine;

QString textOfWord(std::string_view word)
{
    return QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
}

QJsonObject traced(const LiftHistory& history, const LiftMachine& machine, const std::vector<Decision>& decisions, const TraceWords& words)
{
    QJsonArray array;
    for (const Decision& decision : decisions) {
        array.append(QJsonObject{{QStringLiteral("index"), static_cast<qint64>(decision.index)},
                                 {QStringLiteral("date"), QString::fromStdString(decision.date.toString())},
                                 {QStringLiteral("type"), textOfWord(progression::typeKeyOf(history.events[decision.index].body))},
                                 {QStringLiteral("rules"), toJson(decision.rules)},
                                 {QStringLiteral("after"), toJson(decision.after, words(decision.rules, decision.after, machine))}});
    }
    const base::Date last = decisions.empty() ? base::Date() : decisions.back().date;
    const auto decided = decisions.empty() ? progression::RuleList() : decisions.back().rules;
    const auto due = machine.prescriptionOn(history.asOf.value_or(last));
    return {{QStringLiteral("decisions"), array}, {QStringLiteral("next"), toJson(due, words(decided, due, machine))}};
}

}  // namespace

JsonResult<QJsonObject> traceOf(const QByteArray& text, const TraceWords& words)
{
    const auto history = readLiftHistory(text);
    if (!history) {
        return tl::make_unexpected(history.error());
    }
    auto machine = LiftMachine::create(history->setup);
    if (!machine) {
        return jsonFault(machine.error().field, machine.error().reason);
    }
    const auto decisions = progression::replay(*machine, history->events);
    if (!decisions) {
        const auto& [index, fault] = decisions.error();
        return jsonFault((index ? fmt::format("events[{}].", *index) : std::string()) + fault.field, fault.reason);
    }
    return traced(*history, *machine, *decisions, words);
}

}  // namespace chalk::exchange
