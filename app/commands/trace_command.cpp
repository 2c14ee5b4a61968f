#include "app/commands/trace_command.h"

#include "core/exchange/lift_history_json.h"
#include "ui/common/formats.h"
#include "ui/common/rule_words.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <fmt/core.h>

namespace chalk::app {

namespace {

using exchange::JsonFault;
using progression::Decision;
using progression::LiftMachine;

/// The decisions on one history and what is due at its end, as one object; or its fault.
class Trace {
public:
    [[nodiscard]] static exchange::JsonResult<QJsonObject> of(const QByteArray& text)
    {
        auto history = exchange::readLiftHistory(text);
        if (!history) {
            return tl::make_unexpected(history.error());
        }
        auto machine = LiftMachine::create(history->setup);
        if (!machine) {
            return tl::make_unexpected(JsonFault{machine.error().field, machine.error().reason});
        }
        const auto decisions = progression::replay(*machine, history->events);
        if (!decisions) {
            const auto& fault = decisions.error();
            const std::string place = fault.index ? fmt::format("events[{}].", *fault.index) : std::string();
            return tl::make_unexpected(JsonFault{place + fault.fault.field, fault.fault.reason});
        }
        return Trace(*history, *machine).written(*decisions);
    }

private:
    Trace(const exchange::LiftHistory& history, const LiftMachine& machine) : m_history(history), m_machine(machine) {}

    [[nodiscard]] QJsonObject written(const std::vector<Decision>& decisions) const
    {
        QJsonArray array;
        for (const Decision& decision : decisions) {
            const auto& event = m_history.events[decision.index];
            array.append(QJsonObject{{QStringLiteral("index"), static_cast<qint64>(decision.index)},
                                     {QStringLiteral("date"), ui::common::qstring(decision.date.toString())},
                                     {QStringLiteral("type"), ui::common::qstring(progression::typeKeyOf(event.body))},
                                     {QStringLiteral("rules"), exchange::toJson(decision.rules)},
                                     {QStringLiteral("after"), prescription(decision.after, decision.rules)}});
        }
        const base::Date last = decisions.empty() ? base::Date() : decisions.back().date;
        const auto due = m_machine.prescriptionOn(m_history.asOf.value_or(last));
        const auto decided = decisions.empty() ? progression::RuleList() : decisions.back().rules;
        return {{QStringLiteral("decisions"), array}, {QStringLiteral("next"), prescription(due, decided)}};
    }

    [[nodiscard]] QJsonObject prescription(const progression::Prescription& next, const progression::RuleList& decided) const
    {
        const bool isAdded = std::holds_alternative<lifts::BodyAdded>(m_machine.kit().equipment);
        const ui::common::RuleFacts facts{m_history.setup.policy, m_history.setup.unit, m_machine.kit().measure, 1, isAdded};
        return exchange::toJson(next, ui::common::whyOf(decided, next, facts));
    }

    const exchange::LiftHistory& m_history;
    const LiftMachine& m_machine;
};

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
        const auto traced = Trace::of(line);
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
    const auto traced = Trace::of(*text);
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
                           "body_share, measure, start_load, stage, policy and as_of. Events are of type exposure, rehearsal, release, set or swap.\n"
                           "The answer names for each event the rules that fired and what was due after it, and at the end what is next."),
            runTrace};
}

}  // namespace chalk::app
