#include "ui/onboarding/onboarding_step.h"

#include "ui/onboarding/main_and_side.h"

#include <QVBoxLayout>

namespace chalk::ui::onboarding {

void OnboardingStep::layOut(const common::Look& look, QWidget* work, QWidget* side)
{
    m_parts = new MainAndSide(look, work, side, this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_parts);
}

void OnboardingStep::setRoom(bool isNarrow, bool /*isLow*/)
{
    if (m_parts != nullptr) {
        m_parts->setNarrow(isNarrow);
    }
}

}  // namespace chalk::ui::onboarding
