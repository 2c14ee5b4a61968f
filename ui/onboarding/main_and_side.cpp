#include "ui/onboarding/main_and_side.h"

#include "ui/common/look.h"

#include <QBoxLayout>

namespace chalk::ui::onboarding {

namespace {

// Pixels at a text size of 100 %.
constexpr double kSideWide = 352;
constexpr double kSideNarrow = 304;
constexpr double kLeastBeside = 760;  ///< below this the side goes under the main part
// Below each other both have at least this height, and the whole scrolls.
constexpr double kMainHeight = 520;
constexpr double kSideHeight = 400;

}  // namespace

MainAndSide::MainAndSide(const common::Look& look, QWidget* main, QWidget* side, QWidget* parent)
    : QWidget(parent), m_look(look), m_main(main), m_side(side), m_row(new QBoxLayout(QBoxLayout::LeftToRight, this))
{
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(16);
    m_row->addWidget(main, 1);
    m_row->addWidget(side);
    connect(&look, &common::Look::changed, this, &MainAndSide::arrange);
    arrange();
}

void MainAndSide::setNarrow(bool isNarrow)
{
    m_isNarrow = isNarrow;
    arrange();
}

bool MainAndSide::isBelow() const
{
    return width() < m_look.theme().scaled(kLeastBeside);
}

void MainAndSide::setViewHeight(int height)
{
    m_viewHeight = height;
    arrange();
}

void MainAndSide::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    arrange();
}

void MainAndSide::arrange()
{
    const common::Theme& theme = m_look.theme();
    const bool isBelow = this->isBelow();
    m_row->setDirection(isBelow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_main->setMinimumHeight(isBelow ? qRound(theme.scaled(kMainHeight)) : 0);
    m_side->setMinimumHeight(isBelow ? qRound(theme.scaled(kSideHeight)) : 0);
    setMaximumHeight(isBelow ? QWIDGETSIZE_MAX : m_viewHeight);
    if (isBelow) {
        m_side->setMinimumWidth(0);
        m_side->setMaximumWidth(QWIDGETSIZE_MAX);
    } else {
        m_side->setFixedWidth(qRound(theme.scaled(m_isNarrow ? kSideNarrow : kSideWide)));
    }
}

}  // namespace chalk::ui::onboarding
