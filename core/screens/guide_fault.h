#pragma once

#include "core/screens/screen_catalogue.h"

#include <optional>

namespace chalk::screens {

/// The first thing that is wrong with a list of guides (see ScreenCatalogue::of); nothing where it is sound.
[[nodiscard]] std::optional<GuideFault> faultOf(std::span<const PatternGuide> guides, const lifts::Catalogue& lifts);

}  // namespace chalk::screens
