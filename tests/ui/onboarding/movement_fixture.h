#pragma once

#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"
#include "core/store/client_forms.h"
#include "core/store/client_writer.h"
#include "tests/support/fake_clock.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/common/act_history.h"
#include "ui/common/look.h"
#include "ui/onboarding/movement_step.h"
#include "ui/onboarding/onboarding_case.h"

#include <gtest/gtest.h>

namespace chalk::test {

/// The movement step of Cleo Marsh, 36, who consented and is clear to start, on Tuesday 24 November 2026. The stopwatch stands until a test
/// moves it.
class MovementTest : public ::testing::Test {
protected:
    MovementTest();

    /// Reads the case anew and shows it, as the page does.
    void show();
    /// A key goes to what has the focus.
    static void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    static void type(const QString& text);
    /// Marks the six points and the three pauses of the pattern on show with these digits.
    void markPattern(const char* digits);
    screens::MovementScreen kept();
    std::vector<screens::FieldTestDay> keptTests();
    /// A finished screen of that day, all points marked alike.
    void keepFinished(base::Date date, screens::Mark mark);

    base::ClientId m_client;
    base::Date m_today = smallStudioDay();
    qint64 m_now = 0;
    QStringList m_refusals;
    int m_nextAsked = 0;
    StudioOnTest m_studio;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    const screens::ScreenCatalogue m_screens = exchange::builtInScreenCatalogue(m_catalogue);
    ui::common::Look m_look;
    const tests::FakeClock m_clock;
    tests::ScriptedDialogs m_dialogs;
    ui::common::ActHistory m_acts{m_clock, [](base::ActId act) { return tl::expected<base::ActId, QString>(act); }};
    ui::onboarding::OnboardingServices m_services{m_studio.database(), m_catalogue, m_screens, m_look, m_clock, m_acts, m_dialogs, someMoment};
    ui::onboarding::MovementStep m_step{m_services};
};

}  // namespace chalk::test
