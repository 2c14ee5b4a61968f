#include "ui/roster/roster_header.h"

#include "ui/common/lift_strip.h"
#include "ui/common/look.h"
#include "ui/roster/roster_layout.h"

#include <QPainter>

namespace chalk::ui::roster {

namespace {

constexpr double kHeadHeight = 36;

}  // namespace

RosterHeader::RosterHeader(const common::Look& look, QWidget* parent) : QHeaderView(Qt::Horizontal, parent), m_look(look)
{
    setSectionsClickable(false);
    setSectionResizeMode(QHeaderView::Fixed);
    setMinimumSectionSize(0);
    setHighlightSections(false);
    setFocusPolicy(Qt::NoFocus);
}

QSize RosterHeader::sizeHint() const
{
    return {QHeaderView::sizeHint().width(), qRound(m_look.theme().scaled(kHeadHeight))};
}

void RosterHeader::paintSection(QPainter* painter, const QRect& rect, int section) const
{
    const common::Theme& theme = m_look.theme();
    const auto column = static_cast<RosterColumn>(section);
    const QRectF cell = QRectF(rect).adjusted(rosterCellLeft(column, theme), 0, 0, -1);
    painter->save();
    painter->fillRect(rect, theme.surface);
    painter->fillRect(QRectF(rect.left(), rect.bottom(), rect.width(), 1), theme.line);
    if (column == RosterColumn::Lifts) {
        common::paintLiftStripCaptions(*painter, cell, theme);
    } else {
        painter->setFont(theme.font(12, QFont::DemiBold));
        painter->setPen(theme.ink3);
        painter->drawText(cell, Qt::AlignLeft | Qt::AlignVCenter, model()->headerData(section, Qt::Horizontal).toString());
    }
    painter->restore();
}

}  // namespace chalk::ui::roster
