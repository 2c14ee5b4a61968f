#pragma once

#include "core/clients/client.h"
#include "core/store/act.h"
#include "core/store/database.h"
#include "ui/floor/maximum_test_run.h"

#include <QString>

#include <functional>
#include <span>

namespace chalk::ui::floor {

/// The client of a lift that may be tested, as a page knows them. The values are the page's and only read.
struct TestedClient {
    const clients::Client& client;
    const clients::Clearance& clearance;
    std::span<const clients::Caution> cautions;
};

/// Between the guided test of a maximum and the studio: reads what it starts from, writes what it found.
class MaximumTestDesk {
public:
    /// The database outlives the desk. `atUtc` is the moment of an act, ISO 8601.
    MaximumTestDesk(store::Database& database, std::function<QString()> atUtc) : m_database(database), m_atUtc(std::move(atUtc)) {}

    /// A lift of a client as it is tested on `day`, with the single that the test starts from, 0 where none can be worked out. In a plan's test week it is the
    /// work of `session`; else it belongs to none, and the session's work stays as it is.
    [[nodiscard]] store::Result<TestedLift> read(const TestedClient& client, base::LiftId lift, const lifts::Exercise& exercise, base::Date day,
                                                 base::SessionId session = {});
    /// Keeps what was found and lifted, as one act. Nothing was found: the sets alone. Refused where nothing was done.
    [[nodiscard]] store::Result<store::ActOutcome> keep(const TestedLift& lift, const MaximumTestRun& run, const std::string& note);

private:
    store::Database& m_database;
    std::function<QString()> m_atUtc;
};

}  // namespace chalk::ui::floor
