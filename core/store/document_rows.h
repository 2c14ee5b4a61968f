#pragma once

#include "core/lifts/catalogue.h"
#include "core/store/database.h"
#include "core/studio/studio_document.h"

#include <map>
#include <string>
#include <vector>

namespace chalk::store {

// What a studio's document says besides people, sessions and logs, to and from its rows. What cannot be read is a failure of the database
// that names the place.

/// Belong into a transaction.
void insertForms(Database& database, base::ClientId client, const std::vector<studio::DocumentForm>& forms);
void insertLetters(Database& database, base::ClientId client, const std::vector<studio::DocumentLetter>& letters);
void insertTemplates(Database& database, const std::vector<planning::PlanTemplate>& templates);
/// Limits by default are left to the default.
void insertSettings(Database& database, const clients::RestingLimits& limits);
/// The lifts that a session is planned with, in their order.
void insertPlannedLifts(Database& database, base::SessionId session, const std::vector<base::LiftId>& lifts);

[[nodiscard]] std::vector<studio::DocumentForm> readDocumentForms(Database& database, base::ClientId client);
[[nodiscard]] std::vector<studio::DocumentLetter> readDocumentLetters(Database& database, base::ClientId client);
[[nodiscard]] std::vector<planning::PlanTemplate> readDocumentTemplates(Database& database, const lifts::Catalogue& catalogue);
/// By the code of the session.
[[nodiscard]] std::map<std::string, std::vector<lifts::Pattern>> readPlannedLifts(Database& database, base::ClientId client);
/// Those of them that are left out, and why.
[[nodiscard]] std::map<std::string, std::map<lifts::Pattern, std::string>> readLeftOutLifts(Database& database, base::ClientId client);

}  // namespace chalk::store
