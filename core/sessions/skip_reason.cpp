#include "core/sessions/skip_reason.h"

#include "core/base/enum_keys.h"

namespace chalk::sessions {

namespace {

constexpr std::array<std::string_view, 5> kSkipKeys{"no_time", "equipment_taken", "clients_wish", "pain", "other"};

}  // namespace

std::string_view keyOf(SkipReason reason)
{
    return base::keyIn(kSkipKeys, reason);
}

std::optional<SkipReason> skipReasonOf(std::string_view kept)
{
    return base::enumOf<SkipReason>(kSkipKeys, kept);
}

}  // namespace chalk::sessions
