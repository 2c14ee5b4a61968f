#include "core/store/client_writer.h"

#include "core/clients/intake_clearance.h"
#include "core/exchange/field_test_json.h"
#include "core/exchange/health_intake_json.h"
#include "core/exchange/profile_json.h"
#include "core/store/audit.h"
#include "core/store/client_inserts.h"
#include "core/store/client_row_json.h"
#include "core/store/form_rows.h"
#include "core/store/lift_codec.h"
#include "core/store/lift_start.h"
#include "core/store/profile_rows.h"
#include "core/store/studio_settings.h"

#include <QJsonDocument>

#include <algorithm>

namespace chalk::store {

namespace {

bool isHealthForm(FormKind kind)
{
    switch (kind) {
    case FormKind::Profile:
    case FormKind::StartingPlan:
        return false;
    case FormKind::HealthIntake:
    case FormKind::BodyMeasures:
    case FormKind::MovementScreen:
    case FormKind::FieldTests:
        return true;
    }
    return true;
}

AuditWhat auditOf(FormKind kind)
{
    switch (kind) {
    case FormKind::Profile:
        return AuditWhat::Profile;
    case FormKind::HealthIntake:
        return AuditWhat::HealthIntake;
    case FormKind::BodyMeasures:
        return AuditWhat::BodyMeasures;
    case FormKind::MovementScreen:
        return AuditWhat::MovementScreen;
    case FormKind::FieldTests:
        return AuditWhat::FieldTests;
    case FormKind::StartingPlan:
        return AuditWhat::StartingPlan;
    }
    return AuditWhat::Profile;
}

void compareClient(Database& database, const clients::Client& client, const std::optional<clients::Client>& seen)
{
    Statement row(database, QStringLiteral("SELECT ") + clientColumns() + QStringLiteral(" FROM client c WHERE c.id = ?"));
    if (!seen || !row.run(client.id) || !row.next()) {
        return;
    }
    Conflict conflict{ConflictAbout::Client, client.id};
    conflict.yours = rowJson(client);
    conflict.theirs = rowJson(clientOf(row));
    refuseChanged(database, std::move(conflict), rowJson(*seen));
}

ConflictAbout aboutForm(FormKind kind)
{
    switch (kind) {
    case FormKind::Profile: return ConflictAbout::Profile;
    case FormKind::HealthIntake: return ConflictAbout::HealthIntake;
    case FormKind::BodyMeasures: return ConflictAbout::BodyMeasures;
    case FormKind::MovementScreen: return ConflictAbout::MovementScreen;
    case FormKind::FieldTests: return ConflictAbout::FieldTests;
    case FormKind::StartingPlan: return ConflictAbout::StartingPlan;
    }
    return ConflictAbout::Profile;
}

}  // namespace

void ClientWriter::refuse(const QString& reason)
{
    m_database.fail({StoreError::Kind::Refused, reason});
}

void ClientWriter::refuse(const std::optional<clients::ProfileFault>& fault)
{
    if (fault) {
        refuse(qstringOf(fault->field) + QLatin1Char(' ') + qstringOf(fault->reason));
    }
}

template <class T>
Result<T> ClientWriter::finish(Transaction& transaction, T value)
{
    if (auto committed = transaction.commit(); !committed) {
        return tl::make_unexpected(committed.error());
    }
    return value;
}

void ClientWriter::checkClient(const clients::Client& client, base::Date today)
{
    if (client.name.find_first_not_of(' ') == std::string::npos) {
        refuse(QStringLiteral("name is required"));
    }
    if (client.birthDate) {
        refuse(clients::faultOfBirth(*client.birthDate, today));
    }
    if (client.sessionsPerWeek < 1 || client.sessionsPerWeek > 7) {
        refuse(QStringLiteral("sessions_per_week must be 1 to 7"));
    }
}

void ClientWriter::checkConsent(base::ClientId client, base::Date today)
{
    Statement birth(m_database, QStringLiteral("SELECT birth_day FROM client WHERE id = ?"));
    if (!birth.run(client) || !birth.next()) {
        refuse(QStringLiteral("There is no client %1").arg(client.value()));
        return;
    }
    const auto born = birth.optionalDate(0);
    const auto profile = ClientForms(m_database).profile(client);
    if (!profile) {
        m_database.fail(profile.error());
    } else if (!clients::canKeepHealth(*profile, born, today)) {
        refuse(QStringLiteral("Without consent no health data is kept"));
    }
}

void ClientWriter::compareForm(base::ClientId client, FormKind kind, const QJsonObject& detail, const Seen& seen, std::optional<base::Date> day)
{
    if (!seen) {
        return;
    }
    const auto forms = ClientForms(m_database).all(client, kind);
    const auto isMeant = [&day](const Form& form) { return !day || form.day == *day; };
    const auto newest = forms ? std::find_if(forms->rbegin(), forms->rend(), isMeant) : decltype(forms->rbegin())();
    if (!forms || newest == forms->rend()) {
        return;  // nothing is there that could be lost
    }
    Conflict conflict{aboutForm(kind), client};
    conflict.yours = detail;
    conflict.theirs = newest->detail;
    refuseChanged(m_database, std::move(conflict), seen);
}

void ClientWriter::compareCaution(base::ClientId client, const clients::Caution& caution, const std::optional<clients::Caution>& seen)
{
    const auto cautions = readCautions(m_database, client, {});
    const auto now = std::find_if(cautions.begin(), cautions.end(), [&caution](const clients::Caution& one) { return one.id == caution.id; });
    if (!seen || now == cautions.end()) {
        return;
    }
    Conflict conflict{ConflictAbout::Caution, client};
    conflict.yours = rowJson(caution);
    conflict.theirs = rowJson(*now);
    refuseChanged(m_database, std::move(conflict), rowJson(*seen));
}

Result<base::ClientId> ClientWriter::add(const clients::Client& client, base::Date today)
{
    Transaction transaction(m_database);
    checkClient(client, today);
    ClientInserts inserts(m_database);
    const base::ClientId id = inserts.client(client);
    clients::Clearance clearance;
    clearance.state = clients::ClearanceState::Unanswered;
    inserts.clearance(id, clearance);
    writeAudit(m_database, AuditWhat::ClientAdded, id);
    return finish(transaction, id);
}

Result<void> ClientWriter::change(const clients::Client& client, base::Date today, const std::optional<clients::Client>& seen)
{
    Transaction transaction(m_database);
    AuditedChange details(m_database, AuditWhat::ClientDetails, client.id);
    checkClient(client, today);
    compareClient(m_database, client, seen);
    Vault& vault = m_database.vault();
    Statement(m_database, QStringLiteral("UPDATE client SET name = ?, birth_day = ?, goal = ?, coach_id = ?, unit = ?, body_mass_centi = ?, started_day = ?, "
                                         "sessions_per_week = ?, away_until_day = ? WHERE id = ?"))
        .run(client.name, client.birthDate, vault.sealed(vault.toWrite("client", client.id), "goal", client.goal), client.coach, textOfUnit(client.unit),
             client.bodyMass, client.startedOn, client.sessionsPerWeek, client.awayUntil, client.id);
    details.keep();
    return transaction.commit();
}

Result<void> ClientWriter::saveProfile(base::ClientId client, const clients::Profile& profile, base::Date today, const Seen& seen)
{
    Transaction transaction(m_database);
    AuditedChange form(m_database, AuditWhat::Profile, client);
    compareForm(client, FormKind::Profile, exchange::toJson(profile), seen);
    refuse(clients::faultOf(profile, today));
    putForm(client, FormKind::Profile, exchange::toJson(profile), today);
    form.keep();
    return transaction.commit();
}

Result<clients::HealthOutcome> ClientWriter::saveIntake(base::ClientId client, const clients::HealthIntake& intake, const clients::RestingLimits& limits,
                                                        const std::string& reason, base::Date today, const Seen& seen)
{
    Transaction transaction(m_database);
    AuditedChange form(m_database, AuditWhat::HealthIntake, client);
    AuditedChange cleared(m_database, AuditWhat::Clearance, client);
    checkConsent(client, today);
    compareForm(client, FormKind::HealthIntake, exchange::toJson(intake), seen);
    putForm(client, FormKind::HealthIntake, exchange::toJson(intake), today);
    clients::HealthOutcome outcome = clients::outcomeOf(intake, limits);
    if (const auto letters = ClientForms(m_database).letters(client)) {
        const auto answered = letters->empty() ? std::nullopt : std::optional(letters->back().answers);
        ClientInserts(m_database).clearance(client, clients::clearanceAfter(readClearance(m_database, client), outcome, reason, answered));
    }
    form.keep();
    cleared.keep();
    return finish(transaction, std::move(outcome));
}

Result<void> ClientWriter::askForLetter(base::ClientId client, base::Date day)
{
    Transaction transaction(m_database);
    AuditedChange cleared(m_database, AuditWhat::Clearance, client);
    Statement(m_database, QStringLiteral("UPDATE clearance SET asked_day = ? WHERE client_id = ?")).run(day, client);
    cleared.keep();
    return transaction.commit();
}

Result<void> ClientWriter::remindOfLetter(base::ClientId client, base::Date day)
{
    Transaction transaction(m_database);
    AuditedChange cleared(m_database, AuditWhat::Clearance, client);
    Statement(m_database, QStringLiteral("UPDATE clearance SET remind_day = ? WHERE client_id = ?")).run(day, client);
    cleared.keep();
    return transaction.commit();
}

std::vector<clients::HealthMark> ClientWriter::findingsToAnswer(base::ClientId client)
{
    const auto intake = ClientForms(m_database).healthIntake(client);
    const auto limits = StudioSettings(m_database).restingLimits();
    return intake && *intake && limits ? clients::askedAbout(clients::outcomeOf(**intake, *limits)) : std::vector<clients::HealthMark>();
}

Result<void> ClientWriter::recordLetter(base::ClientId client, const Letter& letter, base::Date today)
{
    Transaction transaction(m_database);
    AuditedChange letters(m_database, AuditWhat::Letter, client);
    AuditedChange cleared(m_database, AuditWhat::Clearance, client);
    checkConsent(client, today);
    if (letter.writtenBy.empty()) {
        refuse(QStringLiteral("written_by is required"));
    }
    if (letter.day > today) {
        refuse(QStringLiteral("day is still to come"));
    }
    if (letter.validUntil && *letter.validUntil < letter.day) {
        refuse(QStringLiteral("valid_until is before the letter's day"));
    }
    Letter kept = letter;
    kept.answers = findingsToAnswer(client);
    LetterRows(m_database).add(client, kept);
    clients::Clearance clearance = readClearance(m_database, client);
    clearance.state = clients::ClearanceState::Granted;
    clearance.grantedOn = letter.day;
    clearance.validUntil = letter.validUntil;
    clearance.limits = letter.limits;
    clearance.grantedBy = letter.writtenBy;
    clearance.remindOn.reset();
    ClientInserts(m_database).clearance(client, clearance);
    letters.keep();
    cleared.keep();
    return transaction.commit();
}

Result<void> ClientWriter::saveMeasures(base::ClientId client, const clients::BodyMeasures& measures, base::Date today, const Seen& seen)
{
    Transaction transaction(m_database);
    AuditedChange form(m_database, AuditWhat::BodyMeasures, client);
    compareForm(client, FormKind::BodyMeasures, exchange::toJson(measures), seen, measures.date);
    checkConsent(client, today);
    refuse(clients::faultOf(measures, today));
    putFormOfDay(client, FormKind::BodyMeasures, exchange::toJson(measures), measures.date);
    takeLatestMass(client);
    form.keep();
    return transaction.commit();
}

void ClientWriter::putFormOfDay(base::ClientId client, FormKind kind, const QJsonObject& detail, base::Date day)
{
    Statement open(m_database, QStringLiteral("SELECT day FROM form WHERE client_id = ? AND kind = ? AND is_finished = 0"));
    if (open.run(client, keyOf(kind)) && open.next() && open.date(0) != day) {
        closeOpenForm(m_database, client, kind);
    }
    putForm(client, kind, detail, day);
}

Result<void> ClientWriter::saveFieldTests(base::ClientId client, const screens::FieldTestDay& tests, base::Date today, const Seen& seen)
{
    Transaction transaction(m_database);
    AuditedChange form(m_database, AuditWhat::FieldTests, client);
    compareForm(client, FormKind::FieldTests, exchange::toJson(tests), seen, tests.date);
    checkConsent(client, today);
    if (tests.date > today) {
        refuse(QStringLiteral("date is after today"));
    }
    putFormOfDay(client, FormKind::FieldTests, exchange::toJson(tests), tests.date);
    form.keep();
    return transaction.commit();
}

void ClientWriter::takeLatestMass(base::ClientId client)
{
    const auto measures = ClientForms(m_database).measures(client);
    if (!measures) {
        return;
    }
    const auto latest = std::find_if(measures->rbegin(), measures->rend(), [](const clients::BodyMeasures& day) { return day.mass.has_value(); });
    Statement unit(m_database, QStringLiteral("SELECT unit FROM client WHERE id = ?"));
    if (latest != measures->rend() && unit.run(client) && unit.next()) {
        Statement(m_database, QStringLiteral("UPDATE client SET body_mass_centi = ? WHERE id = ?")).run(latest->mass->in(unitOf(unit.qtext(0))), client);
    }
}

Result<void> ClientWriter::saveForm(base::ClientId client, FormKind kind, const QJsonObject& detail, base::Date day, const Seen& seen)
{
    Transaction transaction(m_database);
    AuditedChange form(m_database, auditOf(kind), client);
    compareForm(client, kind, detail, seen);
    if (isHealthForm(kind)) {
        checkConsent(client, day);
    }
    putForm(client, kind, detail, day);
    form.keep();
    return transaction.commit();
}

Result<void> ClientWriter::finishForm(base::ClientId client, FormKind kind)
{
    Transaction transaction(m_database);
    AuditedChange form(m_database, auditOf(kind), client);
    closeOpenForm(m_database, client, kind);
    form.keep();
    return transaction.commit();
}

void ClientWriter::putForm(base::ClientId client, FormKind kind, const QJsonObject& detail, base::Date day)
{
    putOpenForm(m_database, client, kind, day, QString::fromUtf8(QJsonDocument(detail).toJson(QJsonDocument::Compact)));
}

Result<void> ClientWriter::discard(base::ClientId client)
{
    Transaction transaction(m_database);
    for (const char* table : {"lift", "session", "act", "client_change"}) {
        Statement kept(m_database, QStringLiteral("SELECT 1 FROM %1 WHERE client_id = ? LIMIT 1").arg(QLatin1String(table)));
        if (kept.run(client) && kept.next()) {
            refuse(QStringLiteral("This client has a lift or a session already and stays on file"));
            return transaction.commit();
        }
    }
    for (const char* table : {"caution", "clearance", "form", "letter", "client_week"}) {
        Statement(m_database, QStringLiteral("DELETE FROM %1 WHERE client_id = ?").arg(QLatin1String(table))).run(client);
    }
    forgetAuditOf(m_database, client);
    Statement(m_database, QStringLiteral("DELETE FROM client WHERE id = ?")).run(client);
    writeAudit(m_database, AuditWhat::ClientDiscarded, {});
    return transaction.commit();
}

Result<base::CautionId> ClientWriter::saveCaution(base::ClientId client, const clients::Caution& caution, base::Date today,
                                                   const std::optional<clients::Caution>& seen)
{
    Transaction transaction(m_database);
    AuditedChange cautions(m_database, AuditWhat::Cautions, client);
    checkConsent(client, today);
    compareCaution(client, caution, seen);
    if (caution.bodyPart.empty()) {
        refuse(QStringLiteral("body_part is required"));
    }
    base::CautionId id = caution.id;
    if (id.isNone()) {
        id = ClientInserts(m_database).caution(client, caution);
    } else {
        ClientInserts(m_database).changeCaution(client, caution);
    }
    cautions.keep();
    return finish(transaction, id);
}

Result<void> ClientWriter::endCaution(base::CautionId caution, base::Date day, const std::optional<clients::Caution>& seen)
{
    Transaction transaction(m_database);
    Statement owner(m_database, QStringLiteral("SELECT client_id FROM caution WHERE id = ?"));
    const base::ClientId client(owner.run(caution) && owner.next() ? owner.integer(0) : 0);
    AuditedChange cautions(m_database, AuditWhat::Cautions, client);
    if (seen) {
        clients::Caution ended = *seen;
        ended.id = caution;
        ended.until = day - 1;
        compareCaution(client, ended, seen);
    }
    Statement(m_database, QStringLiteral("UPDATE caution SET until_day = ? WHERE id = ?")).run(day - 1, caution);
    cautions.keep();
    return transaction.commit();
}

Result<std::vector<base::LiftId>> ClientWriter::startLifts(base::ClientId client, const std::vector<NewLift>& lifts)
{
    Transaction transaction(m_database);
    std::vector<base::LiftId> started = beginLifts(m_database, client, lifts);
    return finish(transaction, std::move(started));
}

}  // namespace chalk::store
