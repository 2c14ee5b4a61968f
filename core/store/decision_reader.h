#pragma once

#include "core/checkin/check_in.h"
#include "core/store/database.h"

#include <map>
#include <vector>

namespace chalk::store {

/// Reads what was decided at check-ins; what was taken back is left out.
class DecisionReader {
public:
    explicit DecisionReader(Database& database) : m_database(database) {}

    /// Of a client, the latest first.
    [[nodiscard]] Result<std::vector<checkin::Decision>> history(base::ClientId client);
    /// Of all clients, on days of the range, the earliest first.
    [[nodiscard]] Result<std::vector<checkin::Decision>> decisionsIn(checkin::DayRange days);
    /// The last decision of each client who has one, on `day` or before it: when the next review is, among the rest.
    [[nodiscard]] Result<std::map<base::ClientId, checkin::Decision>> latest(base::Date day);

private:
    Database& m_database;
};

}  // namespace chalk::store
