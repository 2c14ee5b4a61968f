#pragma once

#include "core/store/act_work.h"
#include "core/store/client_inserts.h"
#include "core/store/session_code.h"
#include "core/store/studio_import.h"
#include "core/tables/past_lifts.h"

#include <functional>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace chalk::store {

/// What becomes of somebody whom a list names.
enum class PersonChoice : std::uint8_t {
    New,    ///< another person: a new client
    AddTo,  ///< the same as a client: gaps are filled, sessions are added
    Skip    ///< left out, with all sessions
};

struct PersonDecision {
    PersonChoice choice = PersonChoice::New;
    base::ClientId client;  ///< of AddTo
};

/// Everything that an import needs, settled by a person.
struct PeopleToImport {
    const tables::TableContent* content = nullptr;      ///< outlives the import
    std::vector<PersonDecision> persons;                ///< by their index in the content
    std::vector<const lifts::Exercise*> exercises;      ///< by their index in the content; null for those left out
    base::CoachId coach;                                ///< of those whose coach the studio does not have
    base::MassUnit unit = base::MassUnit::Kilogram;     ///< of new clients for whom no row says one
    std::set<base::ClientId> consented;                 ///< clients whose health data may be kept, for previewOf; importPeople asks the studio itself
    std::string source;                                 ///< names of the files, for people
    base::Date today;
};

/// What an import did, or would do.
struct PeopleImported {
    base::ActId act;
    int newClients = 0;
    int knownClients = 0;      ///< whom something was added to
    int skippedPersons = 0;
    int sessions = 0;
    int sessionsThere = 0;     ///< days on which the client has a recorded session already: left out
    int lifts = 0;             ///< begun
    int exposures = 0;
    int setsLeftOut = 0;       ///< of exercises that are left out
    int massesLeftOut = 0;     ///< body masses of those who did not consent to keep health data

    bool operator==(const PeopleImported&) const = default;
};

/// Counts what an import would do, without a database; `recorded` are the days on which something was recorded, by client. Lifts are not counted.
[[nodiscard]] PeopleImported previewOf(const PeopleToImport& people, const std::map<base::ClientId, std::set<base::Date>>& recorded);

/// Takes people and their past in, everything in one transaction and as one act of kind Import, which undo takes back whole. What was done is judged
/// day by day by the rules of progression, as if it had been recorded then; see pastSetupOf for where a lift begins. New clients wait for their health intake:
/// their loaded work is blocked. A body mass is kept of those alone who consented to keep health data, so of no new client. `progress` hears of persons; where it answers false, nothing was taken in.
[[nodiscard]] Result<PeopleImported> importPeople(Database& database, const PeopleToImport& people, const QString& atUtc, const SessionCodes& newCode = randomSessionCode,
                                                  const Progress& progress = {});

}  // namespace chalk::store
