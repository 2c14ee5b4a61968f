#pragma once

#include "tests/ui/onboarding/onboarding_bench.h"
#include "ui/onboarding/movement_step.h"
#include "ui/onboarding/onboarding_case.h"

#include <gtest/gtest.h>

namespace chalk::test {

/// The movement step of Cleo Marsh, 36, who consented and is clear to start, on Tuesday 24 November 2026. The stopwatch stands until a test
/// moves it.
class MovementTest : public ::testing::Test, protected OnboardingBench {
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
    ui::onboarding::MovementStep m_step{m_services};
};

}  // namespace chalk::test
