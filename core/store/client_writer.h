#pragma once

#include "core/clients/body_measures.h"
#include "core/clients/client.h"
#include "core/clients/health_intake.h"
#include "core/clients/profile.h"
#include "core/store/client_forms.h"
#include "core/store/client_inserts.h"
#include "core/store/conflict.h"
#include "core/studio/new_client.h"

#include <functional>
#include <vector>

namespace chalk::store {

/// Whether a second client of a name is taken in. Upper and lower case are the same.
enum class SameName : std::uint8_t { Refuse, Allow };

/// Somebody who was taken in whole.
struct AddedClient {
    base::ClientId id;
    std::optional<clients::HealthOutcome> outcome;  ///< where there was an intake
    clients::Clearance clearance;
};

/// Says in words why an outcome asks a doctor.
using ReasonWords = std::function<std::string(const clients::HealthOutcome&)>;

/// Writes what a client's file holds besides the log of lifts. Each call is one transaction. What cannot be is refused with a message that
/// names the field; nothing is written then. `seen` is what was on file when
/// whoever writes began: where it is something else by now, that is a Conflict.
class ClientWriter {
public:
    explicit ClientWriter(Database& database) : m_database(database) {}

    /// A new client, whose loaded work waits for the health intake. Refused without a name, or with a birth date that cannot be.
    [[nodiscard]] Result<base::ClientId> add(const clients::Client& client, base::Date today);
    /// A new client with all that is known: everything, or nothing where any of it cannot be. Refused without consent where there is health data.
    [[nodiscard]] Result<AddedClient> addWhole(const studio::NewClient& added, const clients::RestingLimits& limits, const ReasonWords& reasonOf,
                                               SameName sameName, base::Date today);
    /// Puts other values in the place of a client's own; `client.id` says whose.
    [[nodiscard]] Result<void> change(const clients::Client& client, base::Date today, const std::optional<clients::Client>& seen = {});
    /// Takes a client out of the studio with all that was kept of them. Refused once a lift has begun or a session is booked.
    [[nodiscard]] Result<void> discard(base::ClientId client);
    [[nodiscard]] Result<void> saveProfile(base::ClientId client, const clients::Profile& profile, base::Date today, const Seen& seen = {});

    /// Keeps an intake, whole or half, and what follows from it for the clearance; `reason` says why in words. Refused without consent to keep
    /// health data. A letter stays good as long as it answers every finding that asks for one and nothing calls for care now.
    [[nodiscard]] Result<clients::HealthOutcome> saveIntake(base::ClientId client, const clients::HealthIntake& intake, const clients::RestingLimits& limits,
                                                            const std::string& reason, base::Date today, const Seen& seen = {});
    /// Notes that a letter to the doctor went out.
    [[nodiscard]] Result<void> askForLetter(base::ClientId client, base::Date day);
    /// The answer is to be asked for again on that day; what needs attention says so. A letter takes it away.
    [[nodiscard]] Result<void> remindOfLetter(base::ClientId client, base::Date day);
    /// Puts a doctor's answer on file: loaded work may begin, until it runs out. Refused without a writer, or where it ends before it begins.
    /// It answers what the newest intake asks about; `letter.answers` is not looked at.
    [[nodiscard]] Result<void> recordLetter(base::ClientId client, const Letter& letter, base::Date today);

    /// Measures of one day in the place of those of the same day; the latest mass becomes the client's. Refused without consent.
    [[nodiscard]] Result<void> saveMeasures(base::ClientId client, const clients::BodyMeasures& measures, base::Date today, const Seen& seen = {});
    /// Results of one day in the place of those of the same day; those of an earlier day stay as they are. Refused without consent.
    [[nodiscard]] Result<void> saveFieldTests(base::ClientId client, const screens::FieldTestDay& tests, base::Date today, const Seen& seen = {});
    /// Writes over the open form of a kind, or begins one on `day`. Refused without consent, but for a profile and a plan.
    [[nodiscard]] Result<void> saveForm(base::ClientId client, FormKind kind, const QJsonObject& detail, base::Date day, const Seen& seen = {});
    /// Closes the open form: from now on it stays as it is. Nothing where none is open.
    [[nodiscard]] Result<void> finishForm(base::ClientId client, FormKind kind);

    /// A caution without an id is new; else it takes the place of the one with that id. Refused without consent.
    [[nodiscard]] Result<base::CautionId> saveCaution(base::ClientId client, const clients::Caution& caution, base::Date today,
                                                        const std::optional<clients::Caution>& seen = {});
    /// The caution ends with the day before `day`; it stays on file. Refused as a conflict where it is no longer as `seen`.
    [[nodiscard]] Result<void> endCaution(base::CautionId caution, base::Date day, const std::optional<clients::Caution>& seen = {});

    /// Begins lifts. Refused where the client has a lift of that pattern already, or the setup cannot be.
    [[nodiscard]] Result<std::vector<base::LiftId>> startLifts(base::ClientId client, const std::vector<NewLift>& lifts);

private:
    void refuse(const QString& reason);
    void refuse(const std::optional<clients::ProfileFault>& fault);
    void checkClient(const clients::Client& client, base::Date today);
    void checkNew(const studio::NewClient& added, SameName sameName, base::Date today);
    void putHealth(base::ClientId id, const studio::NewClient& added, base::Date today);
    void compareForm(base::ClientId client, FormKind kind, const QJsonObject& detail, const Seen& seen, std::optional<base::Date> day = {});
    void compareCaution(base::ClientId client, const clients::Caution& caution, const std::optional<clients::Caution>& seen);
    void checkConsent(base::ClientId client, base::Date today);
    /// What the newest intake asks a doctor about.
    [[nodiscard]] std::vector<clients::HealthMark> findingsToAnswer(base::ClientId client);
    void putForm(base::ClientId client, FormKind kind, const QJsonObject& detail, base::Date day);
    /// The same, but an open one of another day is closed and stays.
    void putFormOfDay(base::ClientId client, FormKind kind, const QJsonObject& detail, base::Date day);
    /// The mass measured last by date becomes the client's.
    void takeLatestMass(base::ClientId client);
    template <class T>
    [[nodiscard]] Result<T> finish(class Transaction& transaction, T value);

    Database& m_database;
};

}  // namespace chalk::store
