#include "core/checkin/check_in.h"

#include <algorithm>

namespace chalk::checkin {

namespace {

constexpr std::array<std::string_view, kFindingKinds.size()> kFindingKeys{"pain", "clearance", "plateau", "direction", "attendance", "rescreen", "on_course"};
constexpr std::array<std::string_view, kChoiceKinds.size()> kChoiceKeys{"lighter_week", "hold", "move_on", "swap", "by_hand", "rescreen", "direction"};

/// The kind whose key it is; the kinds count from 0.
template <class Kind, std::size_t N>
std::optional<Kind> kindWith(const std::array<std::string_view, N>& keys, std::string_view key)
{
    const auto at = std::find(keys.begin(), keys.end(), key);
    return at == keys.end() ? std::nullopt : std::optional(static_cast<Kind>(at - keys.begin()));
}

}  // namespace

DayRange checkInDays(base::Date day)
{
    constexpr int kDaysOfAWeek = 7;
    const base::Date monday = day - day.weekday();
    return {monday - kDaysOfAWeek * (kCheckInWeeks - 1), monday + (kDaysOfAWeek - 1)};
}

std::string_view keyOf(FindingKind kind)
{
    return kFindingKeys.at(static_cast<std::size_t>(kind));
}

std::optional<FindingKind> findingKindOf(std::string_view key)
{
    return kindWith<FindingKind>(kFindingKeys, key);
}

std::string_view keyOf(ChoiceKind kind)
{
    return kChoiceKeys.at(static_cast<std::size_t>(kind));
}

std::optional<ChoiceKind> choiceKindOf(std::string_view key)
{
    return kindWith<ChoiceKind>(kChoiceKeys, key);
}

}  // namespace chalk::checkin
