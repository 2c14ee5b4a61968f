#pragma once

#include "core/clients/health_question.h"
#include "core/clients/profile.h"
#include "core/lifts/equipment.h"

#include <string_view>
#include <vector>

namespace chalk::simulation {

/// A health question that somebody answered with a yes.
struct YesAnswer {
    clients::HealthQuestion question = clients::HealthQuestion::HeartOrPressure;
    std::vector<clients::HealthMark> marks;
    const char* detail = "";
};

/// What somebody of the demo studio told a coach besides name and goal.
struct PersonFacts {
    const char* name = "";
    clients::NormSex sex = clients::NormSex::NotGiven;
    int heightMm = 1700;
    const char* pronouns = "";
    const char* history = "";                 ///< of training, in the client's words
    const char* emergency = "";               ///< whom to call
    bool isRegularExerciser = false;
    std::vector<YesAnswer> yeses;             ///< at the first session
    std::vector<YesAnswer> later{};           ///< of an intake that came after it; none: there was no other
    int laterDaysAgo = 0;
    std::vector<lifts::EquipmentKind> homeKit{};
};

/// The facts of one of the eighteen, by name.
[[nodiscard]] const PersonFacts& factsOf(std::string_view name);

}  // namespace chalk::simulation
