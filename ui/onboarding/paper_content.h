#pragma once

#include "core/store/database.h"
#include "ui/print/health_papers.h"

namespace chalk::ui::onboarding {

/// What the papers of a client say today, with the newest intake, finished or not; an empty one where nothing was asked yet. A fault of the
/// file, or a client that is not there, is an error.
[[nodiscard]] store::Result<print::HealthPaperContent> readPaperContent(store::Database& database, base::ClientId client, base::Date today);

/// Whether a doctor is asked for a view: an answer is awaited, or the intake calls for one.
[[nodiscard]] bool isDoctorAsked(const clients::Clearance& clearance, const clients::HealthOutcome& outcome);

}  // namespace chalk::ui::onboarding
