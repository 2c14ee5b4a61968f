#include "ui/common/page_header.h"

#include "ui/common/look.h"

#include <QHBoxLayout>
#include <QLabel>

namespace chalk::ui::common {

namespace {

constexpr double kHeaderHeight = 64;

}  // namespace

PageHeader::PageHeader(const Look& look, QWidget* parent)
    : QWidget(parent), m_look(look), m_title(new QLabel(this)), m_subtitle(new QLabel(this)), m_row(new QHBoxLayout(this))
{
    m_title->setProperty("role", QStringLiteral("title"));
    m_subtitle->setProperty("role", QStringLiteral("secondary"));
    m_subtitle->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_row->setContentsMargins(24, 0, 24, 0);
    m_row->setSpacing(16);
    m_row->addWidget(m_title);
    m_row->addWidget(m_subtitle, 1);
    connect(&look, &Look::changed, this, &PageHeader::dress);
    dress();
}

void PageHeader::setTitle(const QString& title)
{
    m_title->setText(title);
}

void PageHeader::setSubtitle(const QString& subtitle)
{
    m_subtitleText = subtitle;
    m_subtitle->setToolTip(subtitle);
    fitSubtitle();
}

void PageHeader::addLead(QWidget* widget)
{
    m_row->insertWidget(m_leads++, widget);
}

void PageHeader::addTool(QWidget* widget)
{
    m_row->addWidget(widget);
}

void PageHeader::dress()
{
    setFixedHeight(qRound(m_look.theme().scaled(kHeaderHeight)));
    fitSubtitle();
}

void PageHeader::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    m_row->activate();
    fitSubtitle();
}

void PageHeader::fitSubtitle()
{
    m_subtitle->setText(m_subtitle->fontMetrics().elidedText(m_subtitleText, Qt::ElideRight, m_subtitle->width()));
}

}  // namespace chalk::ui::common
