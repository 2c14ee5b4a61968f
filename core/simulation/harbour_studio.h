#pragma once

#include "core/lifts/catalogue.h"
#include "core/screens/screen_catalogue.h"
#include "core/studio/studio_document.h"

namespace chalk::simulation {

/// The moment at which the demo studio is opened, in minutes since midnight: the first sessions of the day are done.
inline constexpr int kOpeningMinute = 8 * 60 + 40;

/// The demo studio: an independent studio on a harbour with two coaches and eighteen invented clients, about seven months of
/// forms and sessions up to Sunday 29 November 2026. The scenario is that of the Tuesday of that week; the days after it are there so that the
/// studio can be opened on any day of a week. The same document every time.
[[nodiscard]] studio::StudioDocument harbourStudio(const lifts::Catalogue& catalogue, const screens::ScreenCatalogue& guides);

/// Moves a studio by whole weeks into the week of `day` and puts it back to the morning of that day: nothing of it lies ahead but what
/// is booked.
void openOn(studio::StudioDocument& document, base::Date day);

}  // namespace chalk::simulation
