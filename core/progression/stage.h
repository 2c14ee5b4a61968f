#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>

namespace chalk::progression {

/// The seven stages of a lift; the number is the one shown.
enum class Stage : std::uint8_t { Pattern = 1, Control, BaseLoad, LoadBuild, RepBuild, SetBuild, RestCut };

inline constexpr std::array kStages{Stage::Pattern,  Stage::Control,  Stage::BaseLoad, Stage::LoadBuild,
                                    Stage::RepBuild, Stage::SetBuild, Stage::RestCut};

/// 1 to 7.
[[nodiscard]] constexpr int numberOf(Stage stage) { return static_cast<int>(stage); }
/// Stages 3 to 7 carry a load.
[[nodiscard]] constexpr bool isLoaded(Stage stage) { return stage >= Stage::BaseLoad; }
/// The key in files: `pattern`, `base_load` …
[[nodiscard]] std::string_view keyOf(Stage stage);
/// Nothing where the key is unknown.
[[nodiscard]] std::optional<Stage> stageOf(std::string_view key);

}  // namespace chalk::progression
