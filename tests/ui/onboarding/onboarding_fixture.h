#pragma once

#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"
#include "core/store/client_reader.h"
#include "core/store/client_writer.h"
#include "tests/support/fake_clock.h"
#include "tests/support/scripted_dialogs.h"
#include "tests/support/small_studio.h"
#include "ui/common/act_history.h"
#include "ui/common/look.h"
#include "ui/onboarding/onboarding_page.h"

#include <QString>

#include <gtest/gtest.h>

class QLineEdit;

namespace chalk::test {

/// The small studio with its onboarding page in a window, on Tuesday 24 November 2026.
class OnboardingTest : public ::testing::Test {
protected:
    OnboardingTest();

    /// Opens the page for somebody new, or for a client; `tab` is the key of a step.
    void open(base::ClientId client = {}, const char* tab = "");
    [[nodiscard]] ui::onboarding::OnboardingServices services();
    /// The visible field with that accessible name; it is there.
    [[nodiscard]] QLineEdit& field(const char* name);
    /// Types into a field from its start and leaves it with Tab.
    void enter(const char* name, const char* text);
    /// Whether a visible label of the page says this.
    [[nodiscard]] bool says(const char* text);
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);

    [[nodiscard]] clients::Client clientOf(base::ClientId client);
    [[nodiscard]] clients::Profile profileOf(base::ClientId client);
    [[nodiscard]] std::size_t people();
    /// Cleo Marsh, who agreed that health data is kept.
    base::ClientId addCleo();

    StudioOnTest m_studio;
    const lifts::Catalogue m_catalogue = exchange::builtInCatalogue();
    const screens::ScreenCatalogue m_screens = exchange::builtInScreenCatalogue(m_catalogue);
    ui::common::Look m_look;
    const tests::FakeClock m_clock;
    tests::ScriptedDialogs m_dialogs;
    ui::common::ActHistory m_acts{m_clock, [](base::ActId) { return tl::make_unexpected(QStringLiteral("not here")); }};
    std::unique_ptr<ui::onboarding::OnboardingPage> m_page;
    ui::shell::Place m_asked;
};

}  // namespace chalk::test
