#pragma once

#include "tests/ui/onboarding/onboarding_bench.h"
#include "ui/onboarding/onboarding_page.h"

#include <QString>

#include <gtest/gtest.h>

class QComboBox;
class QLineEdit;
class QPushButton;

namespace chalk::test {

/// The small studio with its onboarding page in a window, on Tuesday 24 November 2026.
class OnboardingTest : public ::testing::Test, protected OnboardingBench {
protected:
    OnboardingTest();

    /// Opens the page for somebody new, or for a client; `tab` is the key of a step.
    void open(base::ClientId client = {}, const char* tab = "");
    /// The visible field with that accessible name; it is there.
    [[nodiscard]] QLineEdit& field(const char* name);
    /// Types into a field from its start and leaves it with Tab.
    void enter(const char* name, const char* text);
    /// Whether a visible label of the page says this.
    [[nodiscard]] bool says(const char* text);
    /// The visible button that says this, the box with that accessible name; nothing where there is none.
    [[nodiscard]] QPushButton* button(const char* text);
    [[nodiscard]] QComboBox* box(const char* name);
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);

    [[nodiscard]] clients::Client clientOf(base::ClientId client);
    [[nodiscard]] clients::Profile profileOf(base::ClientId client);
    [[nodiscard]] std::size_t people();

    std::unique_ptr<ui::onboarding::OnboardingPage> m_page;
    ui::shell::Place m_asked;
};

}  // namespace chalk::test
