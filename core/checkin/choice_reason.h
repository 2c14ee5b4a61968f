#pragma once

#include <array>
#include <cstdint>
#include <string_view>

namespace chalk::checkin {

/// Why a choice is the suggested one.
enum class ChoiceReason : std::uint8_t {
    None,              ///< it is not
    OnCourse,          ///< nothing speaks against carrying on
    TooLittle,         ///< too little is known to change anything
    OnHold,            ///< the lift is on hold because of pain
    Attendance,        ///< too few of the planned sessions were come to: coming is first
    Tired,             ///< stalled, with poor sleep, sore muscles or stress, and no lighter week of late
    Hard,              ///< stalled with next to nothing in reserve, and no lighter week of late
    Rested,            ///< stalled although there was a lighter week
    InReserve,         ///< stalled with repetitions in reserve
    Falling,           ///< estimated strength falls
    ManyStalls,        ///< two lifts or more have stalled after the first three months
    LearningForLong,   ///< weeks in a learning stage without ever having been loaded
    AfterLayoff,       ///< a layoff asks for another screen
    PlanOver           ///< a plan is over and waits for its review
};

inline constexpr std::array kChoiceReasons{ChoiceReason::None,      ChoiceReason::OnCourse, ChoiceReason::TooLittle,       ChoiceReason::OnHold,
                                           ChoiceReason::Attendance, ChoiceReason::Tired,   ChoiceReason::Hard,            ChoiceReason::Rested,
                                           ChoiceReason::InReserve, ChoiceReason::Falling,  ChoiceReason::ManyStalls,      ChoiceReason::LearningForLong,
                                           ChoiceReason::AfterLayoff, ChoiceReason::PlanOver};

/// `none`, `on_course`, `too_little`, `on_hold`, `attendance`, `tired`, `hard`, `rested`, `in_reserve`, `falling`, `many_stalls`,
/// `learning_for_long`, `after_layoff`, `plan_over`.
[[nodiscard]] std::string_view keyOf(ChoiceReason reason);

}  // namespace chalk::checkin
