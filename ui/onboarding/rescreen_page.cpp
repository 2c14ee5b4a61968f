#include "ui/onboarding/rescreen_page.h"

#include "ui/common/look.h"
#include "ui/common/prose.h"
#include "ui/onboarding/rescreen_words.h"

#include <QLabel>
#include <QVBoxLayout>

namespace chalk::ui::onboarding {

RescreenPage::RescreenPage(const common::Look& look, const screens::ScreenCatalogue& catalogue, QWidget* parent)
    : QScrollArea(parent), m_look(look), m_catalogue(catalogue), m_table(new QLabel), m_running(new QLabel)
{
    auto* contents = new QWidget;
    auto* column = new QVBoxLayout(contents);
    column->setContentsMargins(20, 14, 20, 14);
    column->setSpacing(12);
    m_running->setWordWrap(true);
    m_running->setProperty("role", QStringLiteral("secondary"));
    m_table->setWordWrap(true);
    m_table->setTextFormat(Qt::RichText);
    column->addWidget(m_running);
    column->addWidget(m_table);
    column->addStretch(1);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("The screen before and this one"));
    setWidget(contents);
    viewport()->setAutoFillBackground(false);
    contents->setAutoFillBackground(false);
    m_running->setText(runningLiftsSentence());
    connect(&look, &common::Look::changed, this, &RescreenPage::dress);
}

void RescreenPage::setScreens(const screens::MovementScreen& before, const screens::MovementScreen& after, const progression::Policy& policy)
{
    m_before = before;
    m_after = after;
    m_policy = policy;
    dress();
}

void RescreenPage::dress()
{
    if (!m_before) {
        return;
    }
    const QString html = comparisonHtml(*m_before, m_after, m_catalogue, m_policy, m_look.theme());
    m_table->setText(html);
    setAccessibleDescription(common::plainText(html));
}

}  // namespace chalk::ui::onboarding
