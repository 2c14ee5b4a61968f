#include "core/plateau/entry_mark.h"

#include "core/base/enum_keys.h"

namespace chalk::plateau {

namespace {

constexpr std::array<std::string_view, 8> kEntryMarkKeys{"check_rir",  "deload",     "pain",       "light",
                                                         "check_load", "check_reps", "check_jump", "new_level"};

}  // namespace

std::string_view keyOf(EntryMark mark)
{
    return base::keyIn(kEntryMarkKeys, mark);
}

}  // namespace chalk::plateau
