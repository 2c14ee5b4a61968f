#include "app/commands/client_command.h"

#include "core/exchange/catalogue_json.h"
#include "core/exchange/lift_history_json.h"
#include "core/store/client_reader.h"
#include "ui/common/formats.h"
#include "ui/common/rule_words.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

using progression::Prescription;
using progression::PrescriptionKind;
using store::ClientFile;
using store::ClientLift;
using ui::common::qstring;

/// A client's file with the catalogue that names its lifts.
struct BoardText {
    const ClientFile& file;
    const lifts::Catalogue& catalogue;
    base::Date today;

    [[nodiscard]] bool isBlocked() const { return clients::isBlocked(file.clearance, today); }

    [[nodiscard]] ui::common::RuleFacts factsOf(const ClientLift& lift) const
    {
        const auto& machine = lift.lift.machine;
        return {machine.setup().policy, machine.setup().unit, machine.kit().measure, machine.kit().pieces,
                std::holds_alternative<lifts::BodyAdded>(machine.kit().equipment)};
    }

    /// Nothing loaded is prescribed to somebody whose clearance is missing.
    [[nodiscard]] bool isWithheld(const Prescription& next) const { return isBlocked() && progression::isLoaded(next.stage); }

    [[nodiscard]] QString dueText(const ClientLift& lift, const Prescription& next) const
    {
        if (isWithheld(next)) {
            return QStringLiteral("waiting for clearance");
        }
        if (next.kind != PrescriptionKind::Work) {
            return next.kind == PrescriptionKind::Hold ? QStringLiteral("on hold") : QStringLiteral("rehearse without load");
        }
        const auto facts = factsOf(lift);
        return QStringLiteral("%1 × %2 at %3, rest %4, stop with %5 left")
            .arg(QString::number(next.sets.value()), ui::common::targetText(next, facts.measure, facts.policy),
                 ui::common::loadText(next.load, facts.unit, facts.pieces, facts.isAddedToBody), ui::common::restText(next.rest),
                 QString::number(next.reserve));
    }

    [[nodiscard]] QString nameOf(const ClientLift& lift) const
    {
        const auto* exercise = catalogue.find(lift.lift.machine.kit().exerciseKey);
        return exercise == nullptr ? qstring(lift.lift.machine.kit().exerciseKey) : qstring(exercise->name);
    }

    void write(QTextStream& out) const
    {
        out << qstring(file.client.name) << ", " << qstring(file.client.goal) << ", with " << qstring(file.coachName) << '\n';
        if (isBlocked()) {
            out << "  Waiting for clearance: " << qstring(file.clearance.reason) << '\n';
        }
        for (const clients::Caution& caution : file.cautions) {
            out << "  Take care, " << qstring(caution.bodyPart) << ": " << qstring(caution.text) << '\n';
        }
        for (const ClientLift& lift : file.lifts) {
            const Prescription next = lift.lift.machine.prescriptionOn(today);
            out << "  " << nameOf(lift).leftJustified(26) << ' ' << progression::numberOf(next.stage) << ' '
                << ui::common::stageName(next.stage).leftJustified(11) << (next.cycle > 1 ? QStringLiteral("cycle %1  ").arg(next.cycle) : QString())
                << dueText(lift, next) << '\n';
            if (!isWithheld(next)) {
                out << "      " << ui::common::whyOf(lift.lift.decided, next, factsOf(lift)) << '\n';
            }
        }
        out << '\n';
    }

    [[nodiscard]] QJsonObject json() const
    {
        QJsonArray lifts;
        for (const ClientLift& lift : file.lifts) {
            const Prescription next = lift.lift.machine.prescriptionOn(today);
            QJsonObject one{{QStringLiteral("exercise"), qstring(lift.lift.machine.kit().exerciseKey)},
                            {QStringLiteral("pattern"), qstring(lifts::keyOf(lift.lift.pattern))}};
            if (isWithheld(next)) {
                one.insert(QStringLiteral("next"), QJsonValue(QJsonValue::Null));
            } else {
                one.insert(QStringLiteral("next"), exchange::toJson(next, ui::common::whyOf(lift.lift.decided, next, factsOf(lift))));
            }
            lifts.append(one);
        }
        return {{QStringLiteral("id"), static_cast<qint64>(file.client.id.value())},
                {QStringLiteral("name"), qstring(file.client.name)},
                {QStringLiteral("blocked"), isBlocked()},
                {QStringLiteral("lifts"), lifts}};
    }
};

/// The clients that an operand means: an id, or part of a name; everybody for none.
std::vector<base::ClientId> clientsMeant(const CommandContext& context, const std::vector<std::pair<base::ClientId, std::string>>& names)
{
    std::vector<base::ClientId> meant;
    const QString wanted = context.operands.value(0);
    for (const auto& [id, name] : names) {
        if (wanted.isEmpty() || QString::number(id.value()) == wanted || qstring(name).contains(wanted, Qt::CaseInsensitive)) {
            meant.push_back(id);
        }
    }
    return meant;
}

int runClient(const CommandContext& context)
{
    if (context.operands.isEmpty() != context.has(QStringLiteral("all"))) {
        return context.refuse(QStringLiteral("name a client, or everybody by --all"));
    }
    const auto database = context.openStudio(store::OpenMode::ReadOnly);
    if (!database) {
        return context.report(database.error());
    }
    store::ClientReader reader(**database);
    const auto names = reader.names();
    if (!names) {
        return context.report(names.error());
    }
    const auto meant = clientsMeant(context, *names);
    if (meant.empty() || (meant.size() > 1 && !context.has(QStringLiteral("all")))) {
        return context.refuse(meant.empty() ? QStringLiteral("no client matches %1").arg(context.operands.value(0))
                                            : QStringLiteral("%1 clients match %2").arg(meant.size()).arg(context.operands.value(0)));
    }
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    QJsonArray array;
    for (const base::ClientId id : meant) {
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

}  // namespace

Command clientCommand()
{
    return {QStringLiteral("client"), QStringLiteral("show a client's lifts, what is next for each, and why"), QStringLiteral("[NAME|ID]"), 0, 1,
            {{QStringLiteral("all"), {}, QStringLiteral("show everybody")}}, {}, runClient};
}

}  // namespace chalk::app
