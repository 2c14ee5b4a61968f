#pragma once

#include "core/studio/studio_document.h"
#include "core/store/profile_rows.h"

namespace chalk::store {

/// A session with the names that it is shown with.
struct NamedSession {
    sessions::Session session;
    std::string clientName;
    std::string coachName;
};

/// Reads sessions, and what belongs to the studio as a whole.
class SessionReader {
public:
    explicit SessionReader(Database& database) : m_database(database) {}

    /// A day's sessions, by time, coach and client.
    [[nodiscard]] Result<std::vector<NamedSession>> on(base::Date day);
    /// A client's sessions, the latest first.
    [[nodiscard]] Result<std::vector<NamedSession>> of(base::ClientId client);
    /// The session with that code; nothing where there is none.
    [[nodiscard]] Result<std::optional<NamedSession>> withCode(const std::string& code);

    [[nodiscard]] Result<std::string> studioName();
    [[nodiscard]] Result<std::vector<clients::Coach>> coaches();
    [[nodiscard]] Result<std::vector<studio::StudioEquipment>> equipment();

private:
    [[nodiscard]] std::vector<NamedSession> collect(Statement& rows);

    Database& m_database;
};

}  // namespace chalk::store
