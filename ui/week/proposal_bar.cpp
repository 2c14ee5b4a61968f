#include "ui/week/proposal_bar.h"

#include "ui/common/action_button.h"
#include "ui/common/icon_store.h"
#include "ui/common/look.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

namespace chalk::ui::week {

using common::Theme;

ProposalBar::ProposalBar(const common::Look& look, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_row(new QHBoxLayout(this)),
      m_icon(new QLabel(this)),
      m_text(new QLabel(this)),
      m_leave(new common::ActionButton(look, {}, this)),
      m_keep(new common::ActionButton(look, {}, this))
{
    m_text->setWordWrap(true);
    m_text->setTextFormat(Qt::RichText);
    m_leave->setKind(common::ButtonKind::Plain);
    m_leave->setKeyText(tr("Esc"));
    m_keep->setKind(common::ButtonKind::Primary);
    m_keep->setKeyText(tr("Enter"));
    m_row->addWidget(m_icon, 0, Qt::AlignVCenter);
    m_row->addWidget(m_text, 1);
    for (common::ActionButton* button : {m_leave, m_keep}) {
        button->setButtonSize(common::ButtonSize::Small);
        m_row->addWidget(button, 0, Qt::AlignVCenter);
    }
    connect(m_leave, &QPushButton::clicked, this, &ProposalBar::left);
    connect(m_keep, &QPushButton::clicked, this, &ProposalBar::kept);
    connect(&look, &common::Look::changed, this, &ProposalBar::dress);
    setVisible(false);
    dress();
}

void ProposalBar::setWords(const ProposalWords& words)
{
    if (words == m_words) {
        return;
    }
    m_words = words;
    dress();
    setVisible(!words.lead.isEmpty());
    if (isVisible()) {
        QAccessibleEvent told(this, QAccessible::Alert);
        QAccessible::updateAccessibility(&told);
    }
}

void ProposalBar::dress()
{
    const Theme& theme = m_look.theme();
    m_row->setContentsMargins(qRound(theme.scaled(14)), qRound(theme.scaled(5)), qRound(theme.scaled(8)), qRound(theme.scaled(5)));
    m_row->setSpacing(qRound(theme.scaled(10)));
    const QColor ink = m_words.isTrouble ? theme.pain : theme.ink;
    const int side = qRound(theme.scaled(18));
    if (theme.icons != nullptr) {
        m_icon->setPixmap(theme.icons->pixmap(m_words.isTrouble ? QStringLiteral("warning") : QStringLiteral("board"), side, ink, devicePixelRatioF()));
    }
    m_text->setText(QStringLiteral("<span style=\"color:%1\"><b>%2</b> %3</span>").arg(ink.name(), m_words.lead.toHtmlEscaped(), m_words.text.toHtmlEscaped()));
    setAccessibleName(m_words.lead + QLatin1Char(' ') + m_words.text);
    m_leave->setText(m_words.leave);
    m_leave->setVisible(!m_words.leave.isEmpty());
    m_keep->setText(m_words.keep);
    m_keep->setVisible(!m_words.keep.isEmpty());
    update();
}

void ProposalBar::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = m_look.theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_words.isTrouble ? theme.painLine : theme.mark, 1));
    painter.setBrush(m_words.isTrouble ? theme.painBg : theme.wash);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 8, 8);
}

}  // namespace chalk::ui::week
