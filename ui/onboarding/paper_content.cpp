#include "ui/onboarding/paper_content.h"

#include "core/store/client_forms.h"
#include "core/store/client_reader.h"
#include "core/store/studio_reader.h"
#include "core/store/studio_settings.h"

namespace chalk::ui::onboarding {

store::Result<print::HealthPaperContent> readPaperContent(store::Database& database, base::ClientId client, base::Date today)
{
    store::ClientForms forms(database);
    const auto file = store::ClientReader(database).read(client, today);
    if (!file) {
        return tl::make_unexpected(file.error());
    }
    const auto profile = forms.profile(client);
    if (!profile) {
        return tl::make_unexpected(profile.error());
    }
    const auto intake = forms.healthIntake(client);
    if (!intake) {
        return tl::make_unexpected(intake.error());
    }
    const auto limits = store::StudioSettings(database).restingLimits();
    if (!limits) {
        return tl::make_unexpected(limits.error());
    }
    const auto studio = store::StudioReader(database).name();
    if (!studio) {
        return tl::make_unexpected(studio.error());
    }
    const clients::HealthIntake answers = intake->value_or(clients::HealthIntake());
    const clients::HealthOutcome outcome = clients::outcomeOf(answers, *limits);
    return print::HealthPaperContent{*studio, file->coachName, file->client, *profile, file->clearance, answers, outcome, file->cautions, today};
}

bool isDoctorAsked(const clients::Clearance& clearance, const clients::HealthOutcome& outcome)
{
    const bool isAwaited = clearance.state == clients::ClearanceState::Recommended || clearance.state == clients::ClearanceState::StopAndSeek;
    return isAwaited || outcome.level >= clients::HealthLevel::AskDoctor;
}

}  // namespace chalk::ui::onboarding
