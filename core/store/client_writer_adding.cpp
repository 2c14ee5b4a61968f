#include "core/clients/intake_clearance.h"
#include "core/exchange/field_test_json.h"
#include "core/exchange/health_intake_json.h"
#include "core/exchange/movement_screen_json.h"
#include "core/exchange/profile_json.h"
#include "core/store/audit.h"
#include "core/store/client_writer.h"
#include "core/store/lift_start.h"

#include <algorithm>

namespace chalk::store {

namespace {

using studio::NewClient;

std::string missingConsent(const NewClient& added)
{
    const char* field = added.profile.consentOn ? "profile.guardian_consent" : "profile.consent";
    const char* whose = added.profile.consentOn ? "a guardian" : "the client";
    return std::string(field) + " is missing: without the consent of " + whose + " no health data is kept, so no intake, measures, movement screen, field tests or cautions";
}

}  // namespace

void ClientWriter::checkNew(const NewClient& added, SameName sameName, base::Date today)
{
    checkClient(added.client, today);
    refuse(clients::faultOf(added.profile, today));
    for (const clients::BodyMeasures& measures : added.measures) {
        refuse(clients::faultOf(measures, today));
    }
    if (added.hasHealth() && !clients::canKeepHealth(added.profile, added.client.birthDate, today)) {
        refuse(QString::fromStdString(missingConsent(added)));
    }
    for (const clients::Caution& caution : added.cautions) {
        if (caution.bodyPart.empty()) {
            refuse(QStringLiteral("body_part is required"));
        }
    }
    Statement namesakes(m_database, QStringLiteral("SELECT name FROM client WHERE is_withdrawn = 0"));
    const QString name = QString::fromStdString(added.client.name).simplified();
    namesakes.run();
    while (sameName == SameName::Refuse && namesakes.next()) {
        if (namesakes.qtext(0).simplified().compare(name, Qt::CaseInsensitive) == 0) {
            refuse(QStringLiteral("name: there is a %1 already").arg(namesakes.qtext(0)));
        }
    }
}

void ClientWriter::putHealth(base::ClientId id, const NewClient& added, base::Date today)
{
    std::vector<clients::BodyMeasures> days = added.measures;
    std::sort(days.begin(), days.end(), [](const auto& left, const auto& right) { return left.date < right.date; });
    for (const clients::BodyMeasures& measures : days) {
        putFormOfDay(id, FormKind::BodyMeasures, exchange::toJson(measures), measures.date);
    }
    takeLatestMass(id);
    std::vector<screens::FieldTestDay> tests = added.fieldTests;
    std::sort(tests.begin(), tests.end(), [](const auto& left, const auto& right) { return left.date < right.date; });
    for (const screens::FieldTestDay& tested : tests) {
        putFormOfDay(id, FormKind::FieldTests, exchange::toJson(tested), tested.date);
    }
    if (added.screen) {
        putForm(id, FormKind::MovementScreen, exchange::toJson(*added.screen), added.screen->date);
        if (added.screen->isFinished) {
            closeOpenForm(m_database, id, FormKind::MovementScreen);
        }
    }
    if (added.intake) {
        putForm(id, FormKind::HealthIntake, exchange::toJson(*added.intake), added.intake->agreedOn.value_or(today));
    }
}

Result<AddedClient> ClientWriter::addWhole(const NewClient& added, const clients::RestingLimits& limits, const ReasonWords& reasonOf, SameName sameName,
                                           base::Date today)
{
    Transaction transaction(m_database);
    checkNew(added, sameName, today);
    ClientInserts inserts(m_database);
    AddedClient done;
    done.id = inserts.client(added.client);
    done.clearance.state = clients::ClearanceState::Unanswered;
    putForm(done.id, FormKind::Profile, exchange::toJson(added.profile), today);
    putHealth(done.id, added, today);
    if (added.intake) {
        done.outcome = clients::outcomeOf(*added.intake, limits);
        done.clearance = clients::clearanceAfter(done.clearance, *done.outcome, reasonOf(*done.outcome), std::nullopt);
    }
    inserts.clearance(done.id, done.clearance);
    for (const clients::Caution& caution : added.cautions) {
        inserts.caution(done.id, caution);
    }
    writeAudit(m_database, AuditWhat::ClientAdded, done.id);
    if (auto committed = transaction.commit(); !committed) {
        return tl::make_unexpected(committed.error());
    }
    return done;
}

}  // namespace chalk::store
