#include "core/checkin/choice_reason.h"

namespace chalk::checkin {

namespace {

constexpr std::array<std::string_view, kChoiceReasons.size()> kReasonKeys{
    "none",   "on_course", "too_little", "on_hold", "attendance",  "tired",           "hard",
    "rested", "in_reserve", "falling",   "many_stalls", "learning_for_long", "after_layoff", "plan_over"};

}  // namespace

std::string_view keyOf(ChoiceReason reason)
{
    return kReasonKeys.at(static_cast<std::size_t>(reason));
}

}  // namespace chalk::checkin
