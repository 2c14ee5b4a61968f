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
    [[nodiscard]] Result<std::vector<clients::Coach>> coaches();
    [[nodiscard]] Result<std::vector<exchange::StudioEquipment>> equipment();

private:
    Database& m_database;
};

}  // namespace chalk::store
