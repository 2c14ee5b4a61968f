#pragma once

#include "core/lifts/catalogue.h"
#include "core/store/database.h"
#include "core/week/week_case.h"

namespace chalk::store {

/// Reads what a week is planned from.
class WeekReader {
public:
    WeekReader(Database& database, const lifts::Catalogue& catalogue) : m_database(database), m_catalogue(catalogue) {}

    /// Of the week of `monday`. `today` and `minute` of its day say what is past.
    [[nodiscard]] Result<week::WeekFacts> read(base::Date monday, base::Date today, int minute);

private:
    void addClients(week::WeekFacts& facts, base::Date today);
    void addProfiles(week::WeekFacts& facts);
    void addContents(week::WeekFacts& facts);
    void addSessions(week::WeekFacts& facts);

    Database& m_database;
    const lifts::Catalogue& m_catalogue;
};

}  // namespace chalk::store
