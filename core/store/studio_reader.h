#pragma once

#include "core/clients/client.h"
#include "core/exchange/studio_document.h"
#include "core/store/database.h"

#include <string>
#include <vector>

namespace chalk::store {

/// Reads what belongs to the studio as a whole.
class StudioReader {
public:
    explicit StudioReader(Database& database) : m_database(database) {}

    /// Empty where nothing was taken in yet.
    [[nodiscard]] Result<std::string> name();
    /// Who takes sessions.
    [[nodiscard]] Result<std::vector<clients::Coach>> coaches();
    /// Those, and who works at the front desk only: for the name beside what somebody did.
    [[nodiscard]] Result<std::vector<clients::Coach>> everybody();
    [[nodiscard]] Result<std::vector<exchange::StudioEquipment>> equipment();

private:
    [[nodiscard]] Result<std::vector<clients::Coach>> coachesBy(const QString& query);

    Database& m_database;
};

}  // namespace chalk::store
