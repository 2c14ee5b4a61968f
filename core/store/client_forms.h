#pragma once

#include "core/base/date.h"
#include "core/base/id.h"
#include "core/clients/body_measures.h"
#include "core/clients/health_intake.h"
#include "core/clients/profile.h"
#include "core/planning/plan_draft.h"
#include "core/screens/field_tests.h"
#include "core/screens/pattern_screen.h"
#include "core/store/database.h"

#include <QJsonObject>

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace chalk::store {

/// What is asked and looked at of a client.
enum class FormKind : std::uint8_t { Profile, HealthIntake, BodyMeasures, MovementScreen, FieldTests, StartingPlan };

[[nodiscard]] std::string_view keyOf(FormKind kind);

/// A form as it stands in the file.
struct Form {
    base::Date day;           ///< it was begun
    bool isFinished = false;
    QJsonObject detail;       ///< in the words of the open format

    bool operator==(const Form&) const = default;
};

/// A doctor's answer on file.
struct Letter {
    std::string writtenBy;
    base::Date day;
    std::optional<base::Date> validUntil;      ///< last day
    std::string limits;
    std::vector<clients::HealthMark> answers;  ///< the findings that it was asked about
    std::string fileName;                      ///< of the copy; empty where there is none
    QByteArray file;                           ///< the copy itself
};

/// Reads what a client was asked, and what was found.
class ClientForms {
public:
    explicit ClientForms(Database& database) : m_database(database) {}

    /// The newest one of a kind, finished or not; nothing where there is none.
    [[nodiscard]] Result<std::optional<Form>> latest(base::ClientId client, FormKind kind);
    /// All of a kind, the oldest first.
    [[nodiscard]] Result<std::vector<Form>> all(base::ClientId client, FormKind kind);

    /// The profile, an empty one where there is none. What cannot be read is a fault of the file.
    [[nodiscard]] Result<clients::Profile> profile(base::ClientId client);
    /// The newest intake; nothing where there is none.
    [[nodiscard]] Result<std::optional<clients::HealthIntake>> healthIntake(base::ClientId client);
    /// The newest movement screen, finished or not; nothing where there is none.
    [[nodiscard]] Result<std::optional<screens::MovementScreen>> movementScreen(base::ClientId client);
    /// All of them, the oldest first.
    [[nodiscard]] Result<std::vector<screens::MovementScreen>> movementScreens(base::ClientId client);
    /// What was tested, by day, the oldest first.
    [[nodiscard]] Result<std::vector<screens::FieldTestDay>> fieldTests(base::ClientId client);
    /// The plan that is being made or was started last; an empty one where there is none.
    [[nodiscard]] Result<planning::PlanDraft> planDraft(base::ClientId client);
    /// Measures by day, the oldest first.
    [[nodiscard]] Result<std::vector<clients::BodyMeasures>> measures(base::ClientId client);
    /// Letters by day, the oldest first; without their copies.
    [[nodiscard]] Result<std::vector<Letter>> letters(base::ClientId client);
    /// The copy of the newest letter.
    [[nodiscard]] Result<std::optional<Letter>> latestLetter(base::ClientId client);

private:
    [[nodiscard]] std::vector<Letter> readLetters(base::ClientId client, bool withCopies);

    Database& m_database;
};

}  // namespace chalk::store
