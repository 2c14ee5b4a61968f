#pragma once

#include "core/base/date.h"
#include "core/base/id.h"
#include "core/base/load.h"
#include "core/store/database.h"

#include <QString>

#include <optional>
#include <string>

namespace chalk::store {

// What an import or a merge changes of clients besides the log of lifts, with the notes that undo needs. Belongs into an act's transaction; failures go to
// the database.

/// The facts of a client that an import or a merge may change.
struct ClientFacts {
    std::optional<base::Date> birthDate;
    std::string goal;
    std::optional<base::Load> bodyMass;  ///< in the client's unit
    bool isWithdrawn = false;
    QString profile;                     ///< the open profile as JSON; empty where there is none

    bool operator==(const ClientFacts&) const = default;
};

/// What an act gives to another client.
enum class OwnedThing : std::uint8_t { Lift, Session, Caution };

/// Refused where there is no such client.
[[nodiscard]] ClientFacts readClientFacts(Database& database, base::ClientId client);
/// Puts facts in the place of the former ones and notes both. `day` is that of a profile that begins.
void changeClientFacts(Database& database, base::ActId act, base::ClientId client, const ClientFacts& before, const ClientFacts& after, base::Date day);
/// Gives a lift with its load volumes, a session or a caution to another client, and notes it.
void giveTo(Database& database, base::ActId act, OwnedThing thing, std::int64_t id, base::ClientId before, base::ClientId after);

/// Puts the facts and the things of an act back, and notes that for the act `by`. Refused where they were changed since.
void takeBackPeople(Database& database, base::ActId act, base::ActId by);

/// Whether the act is an import of people, which can be taken back.
[[nodiscard]] bool isPeopleImport(Database& database, base::ActId act);
/// Refuses to take an import back once the clients that it brought have gone on: lifts, sessions or acts that are not its own.
void refuseWhereBuiltUpon(Database& database, base::ActId act);

}  // namespace chalk::store
