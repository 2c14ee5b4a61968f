#pragma once

#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"
#include "core/screens/pattern_screen.h"
#include "core/store/client_forms.h"
#include "core/store/client_reader.h"
#include "core/store/client_writer.h"
#include "tests/support/fake_clock.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/common/act_history.h"
#include "ui/common/look.h"
#include "ui/onboarding/onboarding_services.h"

namespace chalk::test {

/// The small studio with everything that onboarding works with, on Tuesday 24 November 2026.
class OnboardingBench {
protected:
    /// Cleo Marsh, 36, who came and agreed that health data is kept so many days ago.
    base::ClientId addCleo(int daysAgo = 0);
    /// A whole health intake of today without a single yes.
    void answerAllNo(base::ClientId client);
    /// A finished screen of that day, all points and all pauses marked alike.
    void keepFinished(base::ClientId client, base::Date date, screens::Mark mark, screens::PauseMark pause = screens::PauseMark::NotTried);

    StudioOnTest m_studio;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    const screens::ScreenCatalogue m_screens = exchange::builtInScreenCatalogue(m_catalogue);
    ui::common::Look m_look;
    const tests::FakeClock m_clock;
    tests::ScriptedDialogs m_dialogs;
    ui::common::ActHistory m_acts{m_clock, [](base::ActId act) { return tl::expected<base::ActId, QString>(act); }};
    ui::onboarding::OnboardingServices m_services{m_studio.database(), m_catalogue, m_screens, m_look, m_clock, m_acts, m_dialogs, someMoment};
};

}  // namespace chalk::test
