#pragma once

#include "core/exchange/studio_document.h"
#include "core/lifts/catalogue.h"

namespace chalk::simulation {

/// The demo studio: an independent studio on a harbour with two coaches and eighteen invented clients, about seven months of
/// sessions up to Tuesday 24 November 2026. The same document every time.
[[nodiscard]] exchange::StudioDocument harbourStudio(const lifts::Catalogue& catalogue);

}  // namespace chalk::simulation
