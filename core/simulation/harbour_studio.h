#pragma once

#include "core/lifts/catalogue.h"
#include "core/studio/studio_document.h"

namespace chalk::simulation {

/// The demo studio: an independent studio on a harbour with two coaches and eighteen invented clients, about seven months of
/// sessions up to Tuesday 24 November 2026. The same document every time.
[[nodiscard]] studio::StudioDocument harbourStudio(const lifts::Catalogue& catalogue);

}  // namespace chalk::simulation
