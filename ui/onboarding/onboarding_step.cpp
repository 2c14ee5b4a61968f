#include "ui/onboarding/onboarding_step.h"

#include "ui/common/scroll_column.h"
#include "ui/onboarding/main_and_side.h"

#include <QApplication>
#include <QVBoxLayout>

namespace chalk::ui::onboarding {

void OnboardingStep::layOut(const common::Look& look, QWidget* work, QWidget* side)
{
    m_parts = new MainAndSide(look, work, side, this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* scroll = new QScrollArea(this);
    common::holdColumn(*scroll, m_parts);
    column->addWidget(scroll);
    connect(qApp, &QApplication::focusChanged, scroll, [this, scroll](QWidget* /*before*/, QWidget* now) {
        if (now != nullptr && m_parts->isAncestorOf(now)) {
            scroll->ensureWidgetVisible(now, 0, 0);
        }
    });
}

void OnboardingStep::tell(const store::StoreError& error)
{
    if (error.kind == store::StoreError::Kind::Conflict) {
        Q_EMIT saved();
    } else {
        Q_EMIT refused(error.message);
    }
}

void OnboardingStep::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    if (m_parts != nullptr) {
        m_parts->setViewHeight(height());
    }
}

void OnboardingStep::setRoom(bool isNarrow, bool /*isLow*/)
{
    if (m_parts != nullptr) {
        m_parts->setNarrow(isNarrow);
    }
}

}  // namespace chalk::ui::onboarding
