#include "core/store/audit.h"

#include "core/base/enum_keys.h"
#include "core/store/client_forms.h"
#include "core/store/profile_rows.h"
#include "core/store/statement.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace chalk::store {

namespace {

constexpr std::array<std::string_view, kAuditWhats> kAuditKeys{
    "client_added", "client_details", "profile", "health_intake", "body_measures", "movement_screen", "field_tests", "starting_plan", "clearance", "letter",
    "cautions", "planning", "week_quota", "lifts_started", "client_discarded", "client_erased",
    "studio_week", "coach_work", "closures", "templates", "resting_limits",
    "studio_exported", "client_exported", "dossier_made", "studio_restored", "signed_in"};

/// ISO 8601 in UTC to the second, as acts have it: both engines write the date, a space and the time first.
const QString& momentByDatabase()
{
    static const QString sql = QStringLiteral("replace(substr(CAST(CURRENT_TIMESTAMP AS TEXT), 1, 19), ' ', 'T') || 'Z'");
    return sql;
}

QString auditText(const QJsonObject& object)
{
    return QString::fromUtf8(QJsonDocument(object).toJson(QJsonDocument::Compact));
}

QJsonObject auditObjectOf(const QString& text)
{
    return QJsonDocument::fromJson(text.toUtf8()).object();
}

/// The columns of one row by their names; what is not there is left out.
QJsonObject imageOfRow(Database& database, const QStringList& columns, const QString& table, base::ClientId client)
{
    QJsonObject image;
    Statement row(database, QStringLiteral("SELECT %1 FROM %2 WHERE id = ?").arg(columns.join(QLatin1Char(',')), table));
    if (row.run(client) && row.next()) {
        for (int i = 0; i < columns.size(); ++i) {
            if (!row.isNull(i)) {
                image.insert(columns[i], row.qtext(i));
            }
        }
    }
    return image;
}

/// Rows of a key and a text.
template <class... Values>
QJsonObject imageOfRows(Database& database, const QString& sql, const Values&... values)
{
    QJsonObject image;
    Statement rows(database, sql);
    rows.run(values...);
    while (rows.next()) {
        const QString text = rows.qtext(1);
        image.insert(rows.qtext(0), text.startsWith(QLatin1Char('{')) ? QJsonValue(auditObjectOf(text)) : QJsonValue(text));
    }
    return image;
}

/// The form that is open, or the one that was begun last.
QJsonObject imageOfForm(Database& database, FormKind kind, base::ClientId client)
{
    const auto forms = ClientForms(database).all(client, kind);
    if (!forms || forms->empty()) {
        return {};
    }
    const Form* shown = &forms->back();
    for (const Form& form : *forms) {
        shown = form.isFinished ? shown : &form;
    }
    QJsonObject image = shown->detail;
    image.insert(QStringLiteral("finished"), shown->isFinished);
    return image;
}

void putAudited(QJsonObject& image, const char* field, const std::string& text)
{
    if (!text.empty()) {
        image.insert(QLatin1String(field), QString::fromStdString(text));
    }
}

void putAuditedDay(QJsonObject& image, const char* field, const std::optional<base::Date>& day)
{
    putAudited(image, field, day ? day->toString() : std::string());
}

QJsonObject imageOfClearance(Database& database, base::ClientId client)
{
    const clients::Clearance clearance = readClearance(database, client);
    QJsonObject image;
    putAudited(image, "state", std::string(clients::keyOf(clearance.state)));
    putAudited(image, "reason", clearance.reason);
    putAudited(image, "limits", clearance.limits);
    putAudited(image, "granted_by", clearance.grantedBy);
    putAuditedDay(image, "asked", clearance.askedOn);
    putAuditedDay(image, "granted", clearance.grantedOn);
    putAuditedDay(image, "valid_until", clearance.validUntil);
    putAuditedDay(image, "remind", clearance.remindOn);
    return image;
}

QJsonObject imageOfCautions(Database& database, base::ClientId client)
{
    QJsonObject image;
    for (const clients::Caution& caution : readCautions(database, client, {})) {
        QJsonObject one;
        putAudited(one, "body_part", caution.bodyPart);
        putAudited(one, "text", caution.text);
        putAudited(one, "short", caution.shortText);
        putAuditedDay(one, "until", caution.until);
        one.insert(QStringLiteral("tags"), textOfTags(caution.tags));
        image.insert(QStringLiteral("caution %1").arg(caution.id.value()), one);
    }
    return image;
}

QJsonObject imageOfLetters(Database& database, base::ClientId client)
{
    QJsonObject image;
    const auto letters = ClientForms(database).letters(client);
    for (std::size_t i = 0; letters && i < letters->size(); ++i) {
        image.insert(QStringLiteral("letter %1").arg(i + 1), QString::fromStdString((*letters)[i].writtenBy));
    }
    return image;
}

QJsonObject imageOfSetting(Database& database, const QString& name)
{
    Statement row(database, QStringLiteral("SELECT settings FROM studio"));
    return row.run() && row.next() ? auditObjectOf(row.qtext(0)).value(name).toObject() : QJsonObject();
}

QJsonObject imageOfDetails(Database& database, base::ClientId id)
{
    QJsonObject image;
    Statement row(database, QStringLiteral("SELECT ") + clientColumns() + QStringLiteral(", o.name FROM client c JOIN coach o ON o.id = c.coach_id WHERE c.id = ?"));
    if (!row.run(id) || !row.next()) {
        return image;
    }
    const clients::Client client = clientOf(row);
    putAudited(image, "name", client.name);
    putAudited(image, "goal", client.goal);
    putAudited(image, "coach", row.text(kClientColumns));
    putAudited(image, "unit", client.unit == base::MassUnit::Pound ? "lb" : "kg");
    putAudited(image, "sessions_per_week", std::to_string(client.sessionsPerWeek));
    putAuditedDay(image, "born", client.birthDate);
    putAuditedDay(image, "started", client.startedOn);
    putAuditedDay(image, "away_until", client.awayUntil);
    return image;
}

/// What there is of a thing now; empty for what leaves no state behind.
QJsonObject imageOf(Database& database, AuditWhat what, base::ClientId client)
{
    switch (what) {
    case AuditWhat::ClientDetails:
        return imageOfDetails(database, client);
    case AuditWhat::Profile:
        return imageOfForm(database, FormKind::Profile, client);
    case AuditWhat::HealthIntake:
        return imageOfForm(database, FormKind::HealthIntake, client);
    case AuditWhat::BodyMeasures:
        return imageOfForm(database, FormKind::BodyMeasures, client);
    case AuditWhat::MovementScreen:
        return imageOfForm(database, FormKind::MovementScreen, client);
    case AuditWhat::FieldTests:
        return imageOfForm(database, FormKind::FieldTests, client);
    case AuditWhat::StartingPlan:
        return imageOfForm(database, FormKind::StartingPlan, client);
    case AuditWhat::Clearance:
        return imageOfClearance(database, client);
    case AuditWhat::Letter:
        return imageOfLetters(database, client);
    case AuditWhat::Cautions:
        return imageOfCautions(database, client);
    case AuditWhat::Planning:
        return auditObjectOf(imageOfRow(database, {QStringLiteral("planning")}, QStringLiteral("client"), client).value(QStringLiteral("planning")).toString());
    case AuditWhat::WeekQuota:
        return imageOfRows(database, QStringLiteral("SELECT monday, sessions FROM week_quota WHERE client_id = ?"), client);
    case AuditWhat::LiftsStarted:
        return imageOfRows(database, QStringLiteral("SELECT pattern, equipment_key FROM lift WHERE client_id = ?"), client);
    case AuditWhat::StudioWeek:
        return imageOfSetting(database, QStringLiteral("week"));
    case AuditWhat::RestingLimits:
        return imageOfSetting(database, QStringLiteral("resting_limits"));
    case AuditWhat::CoachWork:
        return imageOfRows(database, QStringLiteral("SELECT name, work FROM coach"));
    case AuditWhat::Closures:
        return imageOfRows(database, QStringLiteral("SELECT id, why FROM closure"));
    case AuditWhat::Templates:
        return imageOfRows(database, QStringLiteral("SELECT name, detail FROM plan_template"));
    case AuditWhat::ClientAdded:
    case AuditWhat::ClientDiscarded:
    case AuditWhat::ClientErased:
    case AuditWhat::StudioExported:
    case AuditWhat::ClientExported:
    case AuditWhat::DossierMade:
    case AuditWhat::StudioRestored:
    case AuditWhat::SignedIn:
        return {};
    }
    return {};
}

/// The fields of `one` that are not the same in `other`.
QJsonObject changedFields(const QJsonObject& one, const QJsonObject& other)
{
    QJsonObject changed;
    for (auto field = one.begin(); field != one.end(); ++field) {
        if (field.value() != other.value(field.key())) {
            changed.insert(field.key(), field.value());
        }
    }
    return changed;
}

QJsonObject changedNames(const QJsonObject& before, const QJsonObject& after)
{
    QJsonObject both = after;
    for (auto field = before.begin(); field != before.end(); ++field) {
        both.insert(field.key(), field.value());
    }
    return {{QStringLiteral("fields"), QJsonArray::fromStringList(both.keys())}};
}

}  // namespace

std::string_view keyOf(AuditWhat what)
{
    return base::keyIn(kAuditKeys, what);
}

std::optional<AuditWhat> auditWhatOf(std::string_view key)
{
    return base::enumOf<AuditWhat>(kAuditKeys, key);
}

bool isHealth(AuditWhat what)
{
    return what >= AuditWhat::HealthIntake && what <= AuditWhat::Cautions && what != AuditWhat::StartingPlan;
}

void writeAudit(Database& database, AuditWhat what, base::ClientId client, const QJsonObject& before, const QJsonObject& after)
{
    if (!database.isReadOnly()) {
        Vault& vault = database.vault();
        const SealedRow place = vault.toWrite("audit", client, keyOf(what));
        Statement(database, QStringLiteral("INSERT INTO audit (at_utc, coach_id, client_id, what, before, after) VALUES (%1, ?, ?, ?, ?, ?)").arg(momentByDatabase()))
            .run(database.author(), client, keyOf(what), vault.sealed(place, "before", auditText(before)), vault.sealed(place, "after", auditText(after)));
    }
}

Result<void> noteInAudit(Database& database, AuditWhat what, base::ClientId client, const QJsonObject& after)
{
    if (database.isReadOnly()) {
        return {};
    }
    Transaction transaction(database);
    writeAudit(database, what, client, {}, after);
    return transaction.commit();
}

void forgetAuditOf(Database& database, base::ClientId client)
{
    Statement(database, QStringLiteral("INSERT INTO erasing (client_id) VALUES (?)")).run(client);
    Statement(database, QStringLiteral("DELETE FROM audit WHERE client_id = ?")).run(client);
    Statement(database, QStringLiteral("DELETE FROM erasing WHERE client_id = ?")).run(client);
}

AuditedChange::AuditedChange(Database& database, AuditWhat what, base::ClientId client)
    : m_database(database), m_what(what), m_client(client), m_before(imageOf(database, what, client))
{
}

void AuditedChange::keep()
{
    if (m_database.failure()) {
        return;
    }
    const QJsonObject now = imageOf(m_database, m_what, m_client);
    const QJsonObject before = changedFields(m_before, now);
    const QJsonObject after = changedFields(now, m_before);
    if (before.isEmpty() && after.isEmpty()) {
        return;
    }
    if (isHealth(m_what)) {
        writeAudit(m_database, m_what, m_client, {}, changedNames(before, after));
    } else {
        writeAudit(m_database, m_what, m_client, before, after);
    }
}

}  // namespace chalk::store
