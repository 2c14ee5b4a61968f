#pragma once

#include "core/checkin/progress_report.h"
#include "core/lifts/catalogue.h"
#include "core/store/database.h"

#include <vector>

namespace chalk::store {

/// How many weeks a report looks at, the last one included, which need not be over.
inline constexpr int kReportWeeks = 12;

/// Reads what progress reports are made from.
class ReportReader {
public:
    ReportReader(Database& database, const lifts::Catalogue& catalogue) : m_database(database), m_catalogue(catalogue) {}

    /// The report of one client up to `to`. Where loaded work is blocked it says nothing of what comes next; loads from before a swap of the
    /// exercise do not count. Fails where there is no such client.
    [[nodiscard]] Result<checkin::ProgressReport> read(base::ClientId client, base::Date to);
    /// The same from a day on that is not after `to`.
    [[nodiscard]] Result<checkin::ProgressReport> read(base::ClientId client, base::Date from, base::Date to);
    /// Those of clients whose name holds `name`, by name; who has nothing on record in those weeks gets none.
    [[nodiscard]] Result<std::vector<checkin::ProgressReport>> readAll(const QString& name, base::Date to);

private:
    Database& m_database;
    const lifts::Catalogue& m_catalogue;
};

}  // namespace chalk::store
