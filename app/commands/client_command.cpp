#include "app/commands/client_command.h"

#include "app/commands/client_adding.h"
#include "app/commands/client_choice.h"
#include "app/commands/client_paper.h"
#include "app/commands/lift_text.h"
#include "core/exchange/catalogue_json.h"
#include "core/exchange/lift_history_json.h"
#include "core/store/client_reader.h"
#include "ui/common/formats.h"
#include "ui/common/lock_words.h"
#include "ui/common/rule_words.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

using progression::Prescription;
using store::ClientFile;
using store::ClientLift;
using ui::common::qstring;

/// A client's file with the catalogue that names its lifts.
struct BoardText {
    const ClientFile& file;
    const lifts::Catalogue& catalogue;
    base::Date today;

    [[nodiscard]] bool isBlocked() const { return clients::isBlocked(file.clearance, today); }

    void write(QTextStream& out) const
    {
        out << qstring(file.client.name) << ", " << qstring(file.client.goal) << ", with " << qstring(file.coachName) << '\n';
        if (isBlocked()) {
            const ui::common::LockWords lock = ui::common::lockWordsOf(file.clearance, file.client, today);
            out << "  " << lock.headline << ". " << (file.clearance.reason.empty() ? QString() : qstring(file.clearance.reason) + QLatin1Char(' ')) << lock.text << '\n';
        }
        for (const clients::Caution& caution : file.cautions) {
            out << "  Take care, " << qstring(caution.bodyPart) << ": " << qstring(caution.text) << '\n';
        }
        for (const ClientLift& lift : file.lifts) {
            const auto& machine = lift.lift.machine;
            const Prescription next = machine.prescriptionOn(today);
            out << "  " << nameOfLift(machine, catalogue).leftJustified(26) << ' ' << progression::numberOf(next.stage) << ' '
                << ui::common::stageName(next.stage).leftJustified(11) << (next.cycle > 1 ? QStringLiteral("cycle %1  ").arg(next.cycle) : QString())
                << dueTextOf(next, machine, isBlocked()) << '\n';
            if (!isWithheld(next, isBlocked())) {
                out << "      " << ui::common::whyOf(lift.lift.decided, next, factsOfLift(machine)) << '\n';
            }
        }
        out << '\n';
    }

    [[nodiscard]] QJsonObject json() const
    {
        QJsonArray lifts;
        for (const ClientLift& lift : file.lifts) {
            const auto& machine = lift.lift.machine;
            const Prescription next = machine.prescriptionOn(today);
            QJsonObject one{{QStringLiteral("exercise"), qstring(machine.kit().exerciseKey)},
                            {QStringLiteral("pattern"), qstring(lifts::keyOf(lift.lift.pattern))}};
            if (isWithheld(next, isBlocked())) {
                one.insert(QStringLiteral("next"), QJsonValue(QJsonValue::Null));
            } else {
                one.insert(QStringLiteral("next"), exchange::toJson(next, ui::common::whyOf(lift.lift.decided, next, factsOfLift(machine))));
            }
            lifts.append(one);
        }
        return {{QStringLiteral("id"), static_cast<qint64>(file.client.id.value())},
                {QStringLiteral("name"), qstring(file.client.name)},
                {QStringLiteral("blocked"), isBlocked()},
                {QStringLiteral("lifts"), lifts}};
    }
};

/// The ids of the clients to show; nothing, and a message, where the operand means none or several.
std::optional<std::vector<base::ClientId>> clientsMeant(const CommandContext& context, store::Database& database)
{
    if (!context.has(QStringLiteral("all"))) {
        const auto client = chooseClient(context, database, context.operands.front());
        return client ? std::optional(std::vector{*client}) : std::nullopt;
    }
    const auto names = store::ClientReader(database).names();
    if (!names) {
        context.report(names.error());
        return std::nullopt;
    }
    std::vector<base::ClientId> everybody;
    for (const auto& [id, name] : *names) {
        everybody.push_back(id);
    }
    return everybody;
}

int showClients(const CommandContext& context)
{
    const auto database = context.openStudio(store::OpenMode::ReadOnly);
    if (!database) {
        return context.report(database.error());
    }
    const auto meant = clientsMeant(context, **database);
    if (!meant) {
        return kWrongUse;
    }
    store::ClientReader reader(**database);
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    QJsonArray array;
    for (const base::ClientId id : *meant) {
        const auto file = reader.read(id, context.today);
        if (!file) {
            return context.report(file.error());
        }
        const BoardText board{*file, catalogue, context.today};
        if (context.isJson()) {
            array.append(board.json());
        } else {
            board.write(context.out);
        }
    }
    if (context.isJson()) {
        context.out << (context.has(QStringLiteral("all")) ? QJsonDocument(array) : QJsonDocument(array.first().toObject())).toJson();
    }
    return kDone;
}

int runClient(const CommandContext& context)
{
    const QString paperOption = givenPaperOption(context);
    if (!paperOption.isEmpty() && (context.operands.size() != 1 || context.has(QStringLiteral("all")) || !context.has(QStringLiteral("paper")))) {
        return context.refuse(QStringLiteral("%1 goes with `client NAME --paper PAPER` alone").arg(paperOption));
    }
    if (context.operands.size() == 2) {
        return addClient(context);
    }
    if (context.has(QStringLiteral("same-name"))) {
        return context.refuse(QStringLiteral("--same-name goes with `client add FILE` alone"));
    }
    if (context.operands.isEmpty() != context.has(QStringLiteral("all"))) {
        return context.refuse(QStringLiteral("name a client, or everybody by --all"));
    }
    return paperOption.isEmpty() ? showClients(context) : makeClientPaper(context);
}

}  // namespace

Command clientCommand()
{
    std::vector<Option> options{{QStringLiteral("all"), {}, QStringLiteral("show everybody")},
                                {QStringLiteral("same-name"), {}, QStringLiteral("add: take in a second client of the same name")}};
    const std::vector<Option> ofPapers = clientPaperOptions();
    options.insert(options.end(), ofPapers.begin(), ofPapers.end());
    return {QStringLiteral("client"),
            QStringLiteral("show a client's lifts, what is next for each, and why; make a client's papers; or take in a new client"),
            QStringLiteral("[NAME|ID] | add FILE"),
            0,
            2,
            options,
            clientPaperDetails() + QLatin1Char('\n') + clientAddingDetails(),
            runClient,
            Painting::WithPaper};
}

}  // namespace chalk::app
