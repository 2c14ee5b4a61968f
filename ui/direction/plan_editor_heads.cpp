#include "ui/direction/plan_editor_heads.h"

#include "ui/common/look.h"

#include <QAbstractItemModel>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace chalk::ui::direction {

namespace {

constexpr int kHeadPadding = 4;
constexpr double kHeadLine = 17;
constexpr double kHeadRoom = 10;

}  // namespace

PlanEditorHeads::PlanEditorHeads(const common::Look& look, Qt::Orientation orientation, QWidget* parent) : QHeaderView(orientation, parent), m_look(look)
{
    setSectionResizeMode(QHeaderView::Fixed);
    setHighlightSections(false);
}

QSize PlanEditorHeads::sizeHint() const
{
    const common::Theme& theme = m_look.theme();
    if (orientation() == Qt::Horizontal) {
        return {0, qRound(theme.scaled(2 * kHeadLine + kHeadRoom))};
    }
    const QFontMetricsF metrics(theme.font(common::TextStyle::Micro));
    double width = 0;
    for (int row = 0; model() != nullptr && row < model()->rowCount(); ++row) {
        width = std::max(width, metrics.horizontalAdvance(model()->headerData(row, Qt::Vertical, Qt::DisplayRole).toString()));
    }
    return {static_cast<int>(std::ceil(width)) + 3 * kHeadPadding, 0};
}

void PlanEditorHeads::paintSection(QPainter* painter, const QRect& rect, int section) const
{
    const common::Theme& theme = m_look.theme();
    painter->setFont(theme.font(common::TextStyle::Micro));
    painter->setPen(theme.ink2);
    const QString text = model()->headerData(section, orientation(), Qt::DisplayRole).toString();
    if (orientation() == Qt::Vertical) {
        painter->drawText(rect.adjusted(kHeadPadding, 0, -kHeadPadding, 0), Qt::AlignLeft | Qt::AlignVCenter, text);
    } else {
        const bool isNumber = model()->headerData(section, orientation(), Qt::TextAlignmentRole).value<Qt::Alignment>().testFlag(Qt::AlignRight);
        const int line = qRound(theme.scaled(kHeadLine));
        const QRect lower(rect.left() + kHeadPadding, rect.bottom() - line - kHeadPadding, rect.width() - 2 * kHeadPadding, line);
        const int side = isNumber ? Qt::AlignRight : Qt::AlignLeft;
        painter->drawText(lower, side | Qt::AlignVCenter, text.section(QLatin1Char('\n'), -1));
        painter->setPen(theme.ink);
        painter->drawText(lower.translated(0, -line), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, text.section(QLatin1Char('\n'), 0, -2));
    }
    painter->setPen(theme.line);
    painter->drawLine(rect.bottomLeft(), rect.bottomRight());
}

}  // namespace chalk::ui::direction
