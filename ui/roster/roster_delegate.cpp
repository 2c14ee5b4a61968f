#include "ui/roster/roster_delegate.h"

#include "ui/common/look.h"
#include "ui/roster/roster_layout.h"
#include "ui/roster/roster_model.h"

#include <QFontMetricsF>
#include <QPainter>

namespace chalk::ui::roster {

namespace {

using common::Theme;

// Pixels at a text size of 100 %.
constexpr double kFirstLine = 8;
constexpr double kFirstLineHeight = 20;
constexpr double kSecondLineHeight = 16;
constexpr double kCellGap = 10;
constexpr double kFlagGap = 4;
constexpr double kMarkWidth = 3;

void paintElided(QPainter& painter, const QRectF& rect, const QString& text, const QFont& font, const QColor& ink)
{
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(rect, Qt::AlignLeft | Qt::AlignVCenter, QFontMetricsF(font).elidedText(text, Qt::ElideRight, rect.width()));
}

/// Two lines as the columns of the client and of the next session have them.
void paintTwoLines(QPainter& painter, const QRectF& cell, const QString& first, bool isStrong, const QString& second, const Theme& theme)
{
    const double top = cell.top() + theme.scaled(kFirstLine);
    const double firstHeight = theme.scaled(kFirstLineHeight);
    const QFont strong = theme.font(14, isStrong ? QFont::DemiBold : QFont::Normal);
    paintElided(painter, QRectF(cell.left(), top, cell.width(), firstHeight), first, strong, theme.ink);
    paintElided(painter, QRectF(cell.left(), top + firstHeight, cell.width(), theme.scaled(kSecondLineHeight)), second,
                theme.font(12, QFont::Normal), theme.ink3);
}

void paintFlags(QPainter& painter, const QRectF& cell, const std::vector<checkin::ClientFlag>& flags, const Theme& theme)
{
    const ShownFlags fitting = shownFlags(flags, cell.width(), theme);
    double left = cell.left();
    for (int i = 0; i < fitting.shown; ++i) {
        const common::FlagTagView tag = tagOf(flags[static_cast<std::size_t>(i)]);
        common::paintFlagTag(painter, QRectF(left, cell.top(), cell.right() - left, cell.height()), tag, theme);
        left += common::flagTagWidth(tag, theme) + theme.scaled(kFlagGap);
    }
    if (fitting.others > 0) {
        paintElided(painter, QRectF(left, cell.top(), cell.right() - left, cell.height()), QStringLiteral("+%1").arg(fitting.others),
                    theme.font(12, QFont::Medium), theme.ink2);
    }
}

void paintColumn(QPainter& painter, const QRectF& cell, RosterColumn column, const RosterRow& row, const Theme& theme)
{
    switch (column) {
    case RosterColumn::Client:
        paintTwoLines(painter, cell, row.name, true, row.detail, theme);
        return;
    case RosterColumn::Next:
        paintTwoLines(painter, cell, row.when, row.position.isToday, row.where, theme);
        return;
    case RosterColumn::Lifts:
        common::paintLiftStrip(painter, cell, row.strip, theme);
        return;
    case RosterColumn::Sessions:
        if (row.attendance.sessions.empty()) {
            paintElided(painter, cell, QStringLiteral("–"), theme.font(common::TextStyle::Body), theme.ink3);
        } else {
            common::paintAttendance(painter, cell, row.attendance, theme);
        }
        return;
    case RosterColumn::Load:
        common::paintSparkline(painter, cell, row.load, theme);
        return;
    case RosterColumn::Flags:
        paintFlags(painter, cell, row.flags, theme);
        return;
    }
}

}  // namespace

ShownFlags shownFlags(const std::vector<checkin::ClientFlag>& flags, double width, const Theme& theme)
{
    const double number = theme.scaled(20);
    const int count = static_cast<int>(flags.size());
    double used = 0;
    ShownFlags shown;
    for (const checkin::ClientFlag flag : flags) {
        used += common::flagTagWidth(tagOf(flag), theme) + (shown.shown > 0 ? theme.scaled(kFlagGap) : 0);
        const bool isLast = shown.shown + 1 == count;
        if (shown.shown > 0 && used + (isLast ? 0 : number) > width) {
            break;
        }
        ++shown.shown;
    }
    shown.others = count - shown.shown;
    return shown;
}

std::optional<checkin::ClientFlag> rosterFlagAt(const std::vector<checkin::ClientFlag>& flags, const QRectF& cell, double x, const Theme& theme)
{
    const ShownFlags fitting = shownFlags(flags, cell.width() - theme.scaled(kCellGap), theme);
    double left = cell.left();
    for (int i = 0; i < fitting.shown; ++i) {
        const checkin::ClientFlag flag = flags[static_cast<std::size_t>(i)];
        const double right = left + common::flagTagWidth(tagOf(flag), theme);
        if (x >= left && x <= right) {
            return flag;
        }
        left = right + theme.scaled(kFlagGap);
    }
    return std::nullopt;
}

RosterDelegate::RosterDelegate(const common::Look& look, QObject* parent) : QStyledItemDelegate(parent), m_look(look) {}

QSize RosterDelegate::sizeHint(const QStyleOptionViewItem& /*option*/, const QModelIndex& /*index*/) const
{
    return {0, rosterRowHeight(m_look.theme())};
}

void RosterDelegate::paintGround(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index, const Theme& theme) const
{
    const QRectF cell(option.rect);
    const bool isSelected = option.state.testFlag(QStyle::State_Selected);
    painter.fillRect(cell, isSelected ? theme.wash : index.row() == m_hoveredRow ? theme.hover : theme.surface);
    painter.fillRect(QRectF(cell.left(), cell.bottom() - 1, cell.width(), 1), theme.line);
    if (isSelected && index.column() == 0) {
        painter.fillRect(QRectF(cell.left(), cell.top(), kMarkWidth, cell.height() - 1), theme.mark);
    }
    if (isSelected && m_isRingShown) {
        painter.fillRect(QRectF(cell.left(), cell.top(), cell.width(), 2), theme.focus);
        painter.fillRect(QRectF(cell.left(), cell.bottom() - 2, cell.width(), 2), theme.focus);
    }
}

void RosterDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const RosterRow* row = RosterModel::rowAt(index);
    if (row == nullptr) {
        return;
    }
    const Theme& theme = m_look.theme();
    const auto column = static_cast<RosterColumn>(index.column());
    painter->save();
    paintGround(*painter, option, index, theme);
    const double left = rosterCellLeft(column, theme);
    const double right = column == RosterColumn::Load ? 0 : theme.scaled(kCellGap);
    paintColumn(*painter, QRectF(option.rect).adjusted(left, 0, -right, -1), column, *row, theme);
    painter->restore();
}

}  // namespace chalk::ui::roster
