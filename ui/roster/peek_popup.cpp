#include "ui/roster/peek_popup.h"

#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/roster/peek_painting.h"

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace chalk::ui::roster {

namespace {

constexpr double kPeekWidth = 400;

}  // namespace

PeekPopup::PeekPopup(const common::Look& look, RosterReach reach, QWidget* parent) : QFrame(parent, Qt::Popup), m_look(look), m_reach(reach)
{
    connect(&look, &common::Look::changed, this, &QWidget::close);
}

QSize PeekPopup::sizeHint() const
{
    const common::Theme& theme = m_look.theme();
    const double width = theme.scaled(kPeekWidth);
    return {qRound(width), static_cast<int>(std::ceil(paintPeek(nullptr, width, m_row, theme, m_reach)))};
}

void PeekPopup::showFor(const RosterRow& row, const QRect& beside, const QRect& bounds)
{
    m_row = row;
    setAccessibleName(spokenText());
    const QSize size = sizeHint();
    const int left = std::min(beside.left() + beside.width() / 3, bounds.right() - size.width());
    const bool fitsBelow = beside.bottom() + 4 + size.height() <= bounds.bottom();
    const int top = fitsBelow ? beside.bottom() + 4 : std::max(bounds.top(), beside.top() - 4 - size.height());
    setGeometry(QRect(QPoint(left, top), size));
    show();
    update();
}

QString PeekPopup::spokenText() const
{
    QStringList parts{m_row.name, m_row.detail, m_row.when, m_row.where};
    parts += m_row.cautions;
    if (m_reach == RosterReach::Training) {
        parts << common::liftStripText(m_row.strip);
    }
    parts.removeAll(QString());
    return parts.join(QStringLiteral(". "));
}

void PeekPopup::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    QPainter painter(this);
    // Square: round corners of a window are black where nothing blends windows.
    painter.fillRect(rect(), theme.ctl);
    painter.fillRect(rect().adjusted(1, 1, -1, -1), theme.raised);
    painter.setRenderHint(QPainter::Antialiasing);
    paintPeek(&painter, width(), m_row, theme, m_reach);
}

void PeekPopup::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Up:
        Q_EMIT moveAsked(-1);
        return;
    case Qt::Key_Down:
        Q_EMIT moveAsked(1);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        close();
        Q_EMIT openAsked();
        return;
    case Qt::Key_P:
        close();
        Q_EMIT cardAsked();
        return;
    case Qt::Key_Space:
    case Qt::Key_Escape:
        close();
        return;
    default:
        QFrame::keyPressEvent(event);
    }
}

}  // namespace chalk::ui::roster
