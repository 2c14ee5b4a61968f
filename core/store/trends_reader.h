#pragma once

#include "core/base/id.h"
#include "core/checkin/trends.h"
#include "core/lifts/catalogue.h"
#include "core/store/database.h"

#include <string>

namespace chalk::store {

/// The trends of one client.
struct ClientTrends {
    base::ClientId client;
    std::string name;
    base::MassUnit unit = base::MassUnit::Kilogram;  ///< that the client's loads are shown in
    checkin::Trends trends;
};

/// Reads what trends are worked out from, in a few queries for everything, and works them out.
class TrendsReader {
public:
    TrendsReader(Database& database, const lifts::Catalogue& catalogue) : m_database(database), m_catalogue(catalogue) {}

    /// Of one client over the weeks that end with that of `day`; what is on record after `day` is left out. Fails where there is no such client.
    [[nodiscard]] Result<ClientTrends> read(base::ClientId client, base::Date day, int weeks);
    /// Of everybody, by name.
    [[nodiscard]] Result<checkin::StudioTrends> readAll(base::Date day, int weeks);

private:
    Database& m_database;
    const lifts::Catalogue& m_catalogue;
};

}  // namespace chalk::store
