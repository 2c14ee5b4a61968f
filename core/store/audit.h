#pragma once

#include "core/base/id.h"
#include "core/store/database.h"

#include <QJsonObject>

#include <cstdint>
#include <optional>
#include <string_view>

namespace chalk::store {

/// What was changed or done that is no act of the log.
enum class AuditWhat : std::uint8_t {
    ClientAdded, ClientDetails, Profile, HealthIntake, BodyMeasures, MovementScreen, FieldTests, StartingPlan, Clearance, Letter, Cautions,
    Planning, WeekQuota, LiftsStarted, ClientDiscarded, ClientErased,
    StudioWeek, CoachWork, Closures, Templates, RestingLimits,
    StudioExported, ClientExported, DossierMade, StudioRestored, SignedIn
};
inline constexpr int kAuditWhats = 26;

[[nodiscard]] std::string_view keyOf(AuditWhat what);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<AuditWhat> auditWhatOf(std::string_view key);
/// Whether it is about somebody's health: of such a change the fields are named and no value is kept.
[[nodiscard]] bool isHealth(AuditWhat what);

/// Adds a row to the audit: who is the author of the connection, when is the moment by the database's own clock, so that many coaches at one
/// server have one time. Belongs into the transaction of the change. Does nothing in a studio that is open for reading only.
void writeAudit(Database& database, AuditWhat what, base::ClientId client, const QJsonObject& before = {}, const QJsonObject& after = {});
/// The same in a transaction of its own, for what changes nothing in the studio: an export, a sign-in.
[[nodiscard]] Result<void> noteInAudit(Database& database, AuditWhat what, base::ClientId client, const QJsonObject& after = {});

/// Takes the audit of a client away, who leaves no trace: one who is discarded or erased. Belongs into a transaction.
void forgetAuditOf(Database& database, base::ClientId client);

/// A change that is written down with what was there before and after it. It is made before the change, inside of its transaction, and
/// `keep` comes after it: where nothing changed, nothing is written.
class AuditedChange {
public:
    /// `client` is none where the studio's own settings change.
    AuditedChange(Database& database, AuditWhat what, base::ClientId client = {});
    void keep();

private:
    Database& m_database;
    AuditWhat m_what;
    base::ClientId m_client;
    QJsonObject m_before;
};

}  // namespace chalk::store
