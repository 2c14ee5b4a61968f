#include "core/store/act.h"

#include "core/base/enum_keys.h"

namespace chalk::store {

namespace {

constexpr std::array<std::string_view, 15> kActKeys{"import",    "record",  "release", "set",  "swap",   "correct",
                                                    "take_back", "session", "undo",    "redo", "report", "decide",
                                                    "plan",      "test",    "merge"};

}  // namespace

std::string_view keyOf(ActKind kind)
{
    return base::keyIn(kActKeys, kind);
}

std::optional<ActKind> actKindOf(std::string_view key)
{
    return base::enumOf<ActKind>(kActKeys, key);
}

}  // namespace chalk::store
