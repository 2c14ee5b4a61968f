#pragma once

#include "core/lifts/catalogue.h"
#include "core/store/people_import.h"
#include "core/tables/exercise_match.h"
#include "core/tables/people_match.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace chalk::store {

/// An import as it is proposed: everything in it may be settled otherwise before it is done.
struct PeopleProposal {
    PeopleToImport people;                              ///< who is certainly a client is added to, doubtful ones and unknown exercises are left out
    std::vector<tables::KnownPerson> known;
    std::vector<tables::PersonMatch> matches;           ///< listed persons with the client that each may be
    std::vector<tables::ExerciseMatch> exercises;       ///< by their index in the content
    std::vector<std::string> unknownCoaches;            ///< named in the list and not in the studio
};

/// Reads what lists of people are compared with.
class PeopleReader {
public:
    explicit PeopleReader(Database& database) : m_database(database) {}

    /// Everybody with what a duplicate is told by, by name.
    [[nodiscard]] Result<std::vector<tables::KnownPerson>> known();
    /// The days on which something was recorded, by client.
    [[nodiscard]] Result<std::map<base::ClientId, std::set<base::Date>>> recordedDays();
    /// Those of the known who consented to keep health data, as on a day.
    [[nodiscard]] Result<std::set<base::ClientId>> consented(const std::vector<tables::KnownPerson>& known, base::Date day);
    /// The unit that most clients are written in; kilograms where there are none.
    [[nodiscard]] Result<base::MassUnit> usualUnit();
    /// What an import of a content would be by itself. The content and the catalogue outlive the answer.
    [[nodiscard]] Result<PeopleProposal> proposal(const tables::TableContent& content, const lifts::Catalogue& catalogue, base::Date today);

private:
    Database& m_database;
};

}  // namespace chalk::store
