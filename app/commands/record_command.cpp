#include "app/commands/record_command.h"

#include "app/commands/client_choice.h"
#include "app/commands/lift_text.h"
#include "app/commands/record_check.h"
#include "core/exchange/catalogue_json.h"
#include "core/exchange/lift_history_json.h"
#include "core/exchange/session_report_json.h"
#include "core/store/client_reader.h"
#include "core/store/record_writer.h"
#include "ui/common/formats.h"
#include "ui/common/report_words.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>

namespace chalk::app {

namespace {

using progression::LiftMachine;
using store::ClientFile;
using store::ClientLift;
using ui::common::qstring;

/// What was recorded, in words or as JSON. `client` is read after it was written.
class RecordReport {
public:
    RecordReport(const store::ActOutcome& outcome, const ClientFile& client, const lifts::Catalogue& catalogue, const CheckedRecords& checked,
                 base::Date today)
        : m_outcome(outcome), m_client(client), m_catalogue(catalogue), m_checked(checked), m_isBlocked(clients::isBlocked(client.clearance, today))
    {
    }

    void write(QTextStream& out) const
    {
        out << "Recorded for " << qstring(m_client.client.name) << '\n';
        for (const store::LiftOutcome& one : m_outcome.lifts) {
            const LiftMachine& machine = machineOf(one.lift);
            out << "  " << nameOfLift(machine, m_catalogue).leftJustified(26) << " next time " << dueTextOf(one.after, machine, m_isBlocked) << '\n';
            if (!isWithheld(one.after, m_isBlocked)) {
                out << "      " << ui::common::whyOf(one.rules, one.after, factsOfLift(machine)) << '\n';
            }
        }
        if (m_checked.report) {
            out << "  Session: " << ui::common::reportText(*m_checked.report) << '\n';
        }
        for (const QString& doubt : m_checked.doubts) {
            out << "  Is that right? " << doubt << '\n';
        }
        for (const store::ChangedDecision& one : m_outcome.changed) {
            out << "  Became different: " << nameOfLift(machineOf(one.lift), m_catalogue) << " on " << ui::common::dayText(one.date) << ", " << namesOf(one.before)
                << " is now " << namesOf(one.after) << '\n';
        }
    }

    [[nodiscard]] QJsonObject json() const
    {
        QJsonArray lifts;
        for (const store::LiftOutcome& one : m_outcome.lifts) {
            const LiftMachine& machine = machineOf(one.lift);
            const QString why = ui::common::whyOf(one.rules, one.after, factsOfLift(machine));
            lifts.append(QJsonObject{{QStringLiteral("exercise"), qstring(machine.kit().exerciseKey)},
                                     {QStringLiteral("pattern"), qstring(lifts::keyOf(liftOf(one.lift).lift.pattern))},
                                     {QStringLiteral("rules"), exchange::toJson(one.rules)},
                                     {QStringLiteral("next"), isWithheld(one.after, m_isBlocked) ? QJsonValue(QJsonValue::Null)
                                                                                                 : QJsonValue(exchange::toJson(one.after, why))}});
        }
        QJsonArray changed;
        for (const store::ChangedDecision& one : m_outcome.changed) {
            changed.append(QJsonObject{{QStringLiteral("pattern"), qstring(lifts::keyOf(liftOf(one.lift).lift.pattern))},
                                       {QStringLiteral("date"), qstring(one.date.toString())},
                                       {QStringLiteral("before"), exchange::toJson(one.before)},
                                       {QStringLiteral("after"), exchange::toJson(one.after)}});
        }
        const auto load = m_checked.report ? sessions::sessionLoad(*m_checked.report) : std::nullopt;
        return {{QStringLiteral("client"), static_cast<qint64>(m_client.client.id.value())},
                {QStringLiteral("name"), qstring(m_client.client.name)},
                {QStringLiteral("act"), static_cast<qint64>(m_outcome.act.value())},
                {QStringLiteral("lifts"), lifts},
                {QStringLiteral("changed"), changed},
                {QStringLiteral("report"), m_checked.report ? QJsonValue(exchange::toJson(*m_checked.report)) : QJsonValue(QJsonValue::Null)},
                {QStringLiteral("session_load"), load ? QJsonValue(*load) : QJsonValue(QJsonValue::Null)},
                {QStringLiteral("doubts"), QJsonArray::fromStringList(m_checked.doubts)}};
    }

private:
    [[nodiscard]] const ClientLift& liftOf(base::LiftId id) const
    {
        return *std::find_if(m_client.lifts.begin(), m_client.lifts.end(), [id](const ClientLift& lift) { return lift.lift.id == id; });
    }
    [[nodiscard]] const LiftMachine& machineOf(base::LiftId id) const { return liftOf(id).lift.machine; }

    static QString namesOf(const progression::RuleList& rules)
    {
        QStringList names;
        for (const progression::Rule rule : rules) {
            names.append(qstring(progression::nameOf(rule)));
        }
        return names.join(QLatin1Char(' '));
    }

    const store::ActOutcome& m_outcome;
    const ClientFile& m_client;
    const lifts::Catalogue& m_catalogue;
    const CheckedRecords& m_checked;
    bool m_isBlocked;
};

int recordInto(const CommandContext& context, store::Database& database, const RecordInput& input)
{
    const auto id = chooseClient(context, database, input.client);
    if (!id) {
        return kWrongUse;
    }
    store::ClientReader reader(database);
    const auto before = reader.read(*id, context.today);
    if (!before) {
        return context.report(before.error());
    }
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    const auto checked = checkRecords(database, *before, catalogue, input, context.today);
    if (!checked) {
        const RecordRefusal& refusal = checked.error();
        return refusal.store ? context.report(*refusal.store) : context.refuse(refusal.message);
    }
    const auto outcome = store::RecordWriter(database, context.atUtc).record(*id, checked->session, checked->records, checked->report);
    if (!outcome) {
        return context.report(outcome.error());
    }
    const auto after = reader.read(*id, context.today);
    if (!after) {
        return context.report(after.error());
    }
    const RecordReport report(*outcome, *after, catalogue, *checked, context.today);
    if (context.isJson()) {
        context.out << QJsonDocument(report.json()).toJson();
    } else {
        report.write(context.out);
    }
    return kDone;
}

int runRecord(const CommandContext& context)
{
    const QString name = context.operands.front();
    const auto text = context.readInput(name);
    if (!text) {
        return kWrongUse;
    }
    const auto input = readRecordInput(*text);
    if (!input) {
        return context.refuse(name + QStringLiteral(": ") + input.error());
    }
    const auto database = context.openStudio(store::OpenMode::MustExist);
    return database ? recordInto(context, **database, *input) : context.report(database.error());
}

}  // namespace

Command recordCommand()
{
    return {QStringLiteral("record"),
            QStringLiteral("record one client's results and say what follows next time"),
            QStringLiteral("FILE"),
            1,
            1,
            {},
            QStringLiteral("FILE (- for standard input) has lines:\n\n"
                           "    client: Joaquin Ferro\n"
                           "    date: 2026-11-24\n"
                           "    squat: 8 8 7 @80 r2\n\n"
                           "client is a name, a part of one, or an id. A lift is a pattern or an exercise; its entry is reps set by set, @ the load, r the\n"
                           "reps left in reserve, a rest as 2:15, p pain of 10, s shaky; nothing at all is a lift that went as planned. date is today where\n"
                           "it is left out; session: CODE names the session. What is said once of the session has lines of its own, each where it was\n"
                           "asked: sleep: 1 bad to 5 good, soreness: and stress: 1 none to 5 much (these three with the client's consent alone), effort:\n"
                           "of the whole session, 0 to 10 in halves, minutes: and note:. Or FILE is one JSON object with client, date, session, report\n"
                           "and records, each with a lift and either an entry or an event in the words of `chalkrung trace`. All of it is recorded as\n"
                           "one act, or nothing."),
            runRecord};
}

}  // namespace chalk::app
