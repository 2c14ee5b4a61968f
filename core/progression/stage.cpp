#include "core/progression/stage.h"

#include "core/base/enum_keys.h"

namespace chalk::progression {

namespace {

constexpr std::array<std::string_view, 7> kStageKeys{"pattern",   "control",   "base_load", "load_build",
                                                     "rep_build", "set_build", "rest_cut"};

}  // namespace

std::string_view keyOf(Stage stage)
{
    return base::keyIn(kStageKeys, stage, 1);
}

std::optional<Stage> stageOf(std::string_view key)
{
    return base::enumOf<Stage>(kStageKeys, key, 1);
}

}  // namespace chalk::progression
