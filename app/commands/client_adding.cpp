#include "app/commands/client_adding.h"

#include "core/exchange/new_client_json.h"
#include "core/store/client_writer.h"
#include "core/store/studio_reader.h"
#include "core/store/studio_settings.h"
#include "ui/common/formats.h"
#include "ui/common/health_words.h"

#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

using store::AddedClient;
using studio::NewClient;
using ui::common::qstring;

std::string reasonOfOutcome(const clients::HealthOutcome& outcome)
{
    return ui::common::outcomeReason(outcome).toStdString();
}

QJsonObject addedJson(const NewClient& client, const AddedClient& added, base::Date today)
{
    const QJsonValue outcome = added.outcome ? QJsonValue(qstring(keyOf(added.outcome->level))) : QJsonValue(QJsonValue::Null);
    return {{QStringLiteral("id"), static_cast<qint64>(added.id.value())},
            {QStringLiteral("name"), qstring(client.client.name)},
            {QStringLiteral("outcome"), outcome},
            {QStringLiteral("clearance"), qstring(keyOf(added.clearance.state))},
            {QStringLiteral("reason"), qstring(added.clearance.reason)},
            {QStringLiteral("medical_care_now"), added.outcome && added.outcome->isCareNeededNow},
            {QStringLiteral("blocked"), clients::isBlocked(added.clearance, today)}};
}

void writeAdded(QTextStream& out, const NewClient& client, const AddedClient& added, base::Date today)
{
    out << "Client " << added.id.value() << ": " << qstring(client.client.name) << " is taken in.\n";
    out << "  " << (added.outcome ? ui::common::outcomeHeadline(*added.outcome) : QStringLiteral("The health intake is still to be asked")) << ".\n";
    if (!added.clearance.reason.empty()) {
        out << "  " << qstring(added.clearance.reason) << '\n';
    }
    out << (clients::isBlocked(added.clearance, today) ? "  Blocked: no loaded work before this is settled.\n" : "  Not blocked.\n");
    if (added.outcome && added.outcome->isCareNeededNow) {
        out << "  " << ui::common::emergencyText() << '\n';
    }
}

int addInto(const CommandContext& context, store::Database& database, const QJsonValue& value, const QString& file)
{
    const auto coaches = store::StudioReader(database).coaches();
    if (!coaches) {
        return context.report(coaches.error());
    }
    const auto limits = store::StudioSettings(database).restingLimits();
    if (!limits) {
        return context.report(limits.error());
    }
    const auto client = exchange::readNewClient(value, *coaches, context.today);
    if (!client) {
        return context.refuse(QStringLiteral("%1: %2 %3").arg(file, QString::fromStdString(client.error().field), QString::fromStdString(client.error().reason)));
    }
    const auto sameName = context.has(QStringLiteral("same-name")) ? store::SameName::Allow : store::SameName::Refuse;
    const auto added = store::ClientWriter(database).addWhole(*client, *limits, reasonOfOutcome, sameName, context.today);
    if (!added && added.error().kind == store::StoreError::Kind::Refused) {
        return context.refuse(QStringLiteral("%1: %2").arg(file, added.error().message));
    }
    if (!added) {
        return context.report(added.error());
    }
    if (context.isJson()) {
        context.out << QJsonDocument(addedJson(*client, *added, context.today)).toJson();
    } else {
        writeAdded(context.out, *client, *added, context.today);
    }
    return kDone;
}

}  // namespace

int addClient(const CommandContext& context)
{
    if (context.operands.front() != QLatin1String("add")) {
        return context.refuse(QStringLiteral("name one client, or `add FILE`"));
    }
    if (context.has(QStringLiteral("all"))) {
        return context.refuse(QStringLiteral("--all goes without `add`"));
    }
    const QString file = context.operands.back();
    const auto text = context.readInput(file);
    if (!text) {
        return kWrongUse;
    }
    const auto value = exchange::parseJson(*text);
    if (!value) {
        return context.refuse(QStringLiteral("%1: %2: %3").arg(file, QString::fromStdString(value.error().field), QString::fromStdString(value.error().reason)));
    }
    const auto database = context.openStudio(store::OpenMode::MustExist);
    return database ? addInto(context, **database, *value, file) : context.report(database.error());
}

QString clientAddingDetails()
{
    return QStringLiteral(
        "add takes in a new client from FILE (- for standard input), all of it or nothing. FILE is one JSON object:\n"
        "  {\"name\": \"Tove Aldane\", \"born\": \"1991-05-14\", \"goal\": \"Carry the boat again\", \"coach\": \"Ines\", \"unit\": \"kg\",\n"
        "   \"started\": \"2026-11-25\", \"sessions_per_week\": 2,\n"
        "   \"profile\": {\"sex\": \"female\", \"phone\": \"01632 960 417\", \"email\": \"tove@example.org\", \"consent\": \"2026-11-25\",\n"
        "    \"emergency\": {\"name\": \"Ralf Aldane\", \"phone\": \"01632 960 418\"}, \"session_minutes\": 60, \"home_kit\": [],\n"
        "    \"free\": [{\"day\": \"tue\", \"from\": \"07:00\", \"to\": \"09:30\"}]},\n"
        "   \"intake\": {\"answers\": {\"chest_pain\": false, \"joint_bone_back\": {\"yes\": true, \"marks\": [\"knee\"], \"detail\": \"left\"}},\n"
        "    \"regular_exerciser\": false},\n"
        "   \"measures\": [{\"date\": \"2026-11-25\", \"mass_kg\": 68.5, \"height_cm\": 171.0}],\n"
        "   \"field_tests\": [{\"date\": \"2026-11-25\", \"tests\": [{\"test\": \"plank\", \"seconds\": 62.5}]}],\n"
        "   \"cautions\": [{\"body_part\": \"Left knee\", \"text\": \"No deep bend under load\", \"short\": \"Knee: no deep bend\", \"tags\": [\"knee\"]}]}\n"
        "name alone must be there, and coach where the studio has several. intake is as in `chalkrung clearance`, movement_screen as in\n"
        "the studio's files. Without profile.consent no intake, measures, movement screen or field tests are taken; for a minor guardian\n"
        "and guardian_consent are needed too. Until the intake is whole the client waits: no loaded work. A name that is there already is\n"
        "refused without --same-name.");
}

}  // namespace chalk::app
