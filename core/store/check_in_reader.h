#pragma once

#include "core/checkin/check_in.h"
#include "core/checkin/forecast.h"
#include "core/lifts/catalogue.h"
#include "core/store/database.h"

#include <vector>

namespace chalk::store {

/// Whether there is a forecast, or why not.
using ForecastOrLack = tl::expected<checkin::Forecast, checkin::ForecastLack>;

/// Reads what the weekly check-in finds.
class CheckInReader {
public:
    CheckInReader(Database& database, const lifts::Catalogue& catalogue) : m_database(database), m_catalogue(catalogue) {}

    /// Everybody whose review is due on `day`, or about whom something was decided in its week, in the order of the queue. Lifts are judged by the logs that are
    /// kept of them, which takes no replay.
    [[nodiscard]] Result<std::vector<checkin::QueueEntry>> queue(base::Date day);
    /// Everything about one client; the finding is the one of the queue. Fails where there is no such client.
    [[nodiscard]] Result<checkin::ClientEvidence> page(base::ClientId client, base::Date day);
    /// How one of a client's lifts would go on. Fails where there is no such client or the lift is not one of theirs.
    [[nodiscard]] Result<ForecastOrLack> forecast(base::ClientId client, base::LiftId lift, base::Date day);

private:
    Database& m_database;
    const lifts::Catalogue& m_catalogue;
};

}  // namespace chalk::store
