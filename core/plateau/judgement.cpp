#include "core/plateau/judgement.h"

#include "core/base/enum_keys.h"

namespace chalk::plateau {

namespace {

constexpr std::array<std::string_view, 4> kVerdictKeys{"progressing", "stalled", "regressing", "not_enough_data"};
constexpr std::array<std::string_view, 10> kReasonKeys{"",       "no_exposures", "few_exposures", "new_variation", "away_now", "back_from_break",
                                                       "deload", "pain",         "attendance",    "new_best"};
constexpr std::array<std::string_view, 3> kStrengthKeys{"possible", "likely", "strong"};

}  // namespace

std::string_view keyOf(PlateauVerdict verdict)
{
    return base::keyIn(kVerdictKeys, verdict);
}

std::string_view keyOf(PlateauReason reason)
{
    return base::keyIn(kReasonKeys, reason);
}

std::string_view keyOf(PlateauStrength strength)
{
    return base::keyIn(kStrengthKeys, strength);
}

}  // namespace chalk::plateau
