#include "core/studio/client_form.h"

#include <array>

namespace chalk::studio {

namespace {

constexpr std::array<std::string_view, std::variant_size_v<FormContent>> kContentKinds{"profile", "health_intake", "body_measures",
                                                                                 "movement_screen", "field_tests", "starting_plan"};

/// Moves the days inside of a form.
struct ContentSlide {
    int days = 0;

    void move(std::optional<base::Date>& day) const
    {
        if (day) {
            day = *day + days;
        }
    }

    void operator()(clients::Profile& profile) const
    {
        move(profile.consentOn);
        move(profile.guardianConsentOn);
    }
    void operator()(clients::HealthIntake& intake) const { move(intake.agreedOn); }
    void operator()(clients::BodyMeasures& measures) const { measures.date = measures.date + days; }
    void operator()(screens::MovementScreen& screen) const { screen.date = screen.date + days; }
    void operator()(screens::FieldTestDay& tests) const { tests.date = tests.date + days; }
    void operator()(planning::PlanDraft& draft) const { move(draft.firstDay); }
};

}  // namespace

std::string_view kindOf(const FormContent& content)
{
    return kContentKinds[content.index()];
}

void slideForm(DocumentForm& form, int days)
{
    form.day = form.day + days;
    std::visit(ContentSlide{days}, form.content);
}

}  // namespace chalk::studio
