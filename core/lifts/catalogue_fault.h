#pragma once

#include "core/lifts/catalogue.h"

#include <optional>

namespace chalk::lifts {

/// The first thing that is wrong with a list of exercises (see Catalogue::of); nothing where it is sound.
[[nodiscard]] std::optional<CatalogueFault> faultOf(std::span<const Exercise> exercises);

}  // namespace chalk::lifts
