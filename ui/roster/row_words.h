#pragma once

#include "core/checkin/client_facts.h"
#include "core/checkin/load_trend.h"
#include "core/store/roster_reader.h"

#include <QString>

namespace chalk::ui::roster {

// The words of a roster line.

/// `45 · Strong, back-safe`; what is not known is left out.
[[nodiscard]] QString detailText(const clients::Client& client, base::Date today);
/// `Today 09:00`, within six days `Thu 07:00`, later `Mon 7 Dec 07:00`; `Not booked`.
[[nodiscard]] QString whenText(const std::optional<sessions::Session>& next, base::Date today);
/// `Rack 1 · 3 of 4`, `Rack 1 · alone`, `Movement screen`; with no session why there is none, as far as that is known.
[[nodiscard]] QString whereText(const store::RosterEntry& entry, base::Date today);
/// `+12 %`, `new`, `back`, a dash where nothing was lifted.
[[nodiscard]] QString trendText(const checkin::LoadTrend& trend);
/// `Last here Tue 17 Nov`; empty where never.
[[nodiscard]] QString lastCameText(const std::optional<base::Date>& lastCame);
/// `on hold`, `since 2 Nov`; empty where that is not known.
[[nodiscard]] QString liftNote(const checkin::LiftFacts& lift);

}  // namespace chalk::ui::roster
