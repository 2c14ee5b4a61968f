#pragma once

#include "core/clients/body_measures.h"
#include "core/clients/health_intake.h"
#include "core/clients/profile.h"
#include "core/planning/plan_draft.h"
#include "core/screens/field_tests.h"
#include "core/screens/pattern_screen.h"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace chalk::studio {

/// What a form of a client says, by its kind.
using FormContent = std::variant<clients::Profile, clients::HealthIntake, clients::BodyMeasures, screens::MovementScreen, screens::FieldTestDay,
                                 planning::PlanDraft>;

/// The key of the kind in files: `profile`, `health_intake`, `body_measures`, `movement_screen`, `field_tests`, `starting_plan`.
[[nodiscard]] std::string_view kindOf(const FormContent& content);

/// A form of a client as it stands on file.
struct DocumentForm {
    base::Date day;           ///< it was begun
    bool isFinished = false;  ///< of each kind at most one is not
    FormContent content;

    bool operator==(const DocumentForm&) const = default;
};

/// A doctor's answer on file.
struct DocumentLetter {
    std::string writtenBy;
    base::Date day;
    std::optional<base::Date> validUntil;      ///< last day
    std::string limits;
    std::vector<clients::HealthMark> answers;  ///< the findings that it was asked about
    std::string fileName;                      ///< of the copy; empty where there is none
    std::string copy;                          ///< the bytes of the copy

    bool operator==(const DocumentLetter&) const = default;
};

/// Moves every day that the form names, by whole weeks.
void slideForm(DocumentForm& form, int days);

}  // namespace chalk::studio
