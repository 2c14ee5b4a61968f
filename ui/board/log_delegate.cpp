#include "ui/board/log_delegate.h"

#include "ui/board/fitted_text.h"
#include "ui/board/log_model.h"
#include "ui/board/log_row.h"
#include "ui/common/look.h"

#include <QFontMetricsF>
#include <QPainter>

namespace chalk::ui::board {

namespace {

using common::Theme;

constexpr double kRowHeight = 56;
constexpr double kRulesWidth = 64;

/// One cell on its way to the painter.
struct LogCell {
    QPainter& painter;
    QRectF rect;
    QString text;
    QString note;
    bool isReplaced;
    const Theme& theme;

    void line(double baseline, const QString& words, QFont font, const QColor& colour) const
    {
        font.setStrikeOut(isReplaced);
        painter.setFont(font);
        painter.setPen(isReplaced ? theme.ink3 : colour);
        painter.drawText(QPointF(rect.left(), baseline), QFontMetricsF(font).elidedText(words, Qt::ElideRight, rect.width()));
    }
};

void paintTwoLines(const LogCell& cell, bool isStrong)
{
    const double middle = cell.rect.center().y();
    const QFont first = cell.theme.font(14, isStrong ? QFont::DemiBold : QFont::Normal);
    if (cell.note.isEmpty()) {
        return cell.line(middle + cell.theme.scaled(5), cell.text, first, cell.theme.ink);
    }
    cell.line(middle - cell.theme.scaled(4), cell.text, first, cell.theme.ink);
    cell.line(middle + cell.theme.scaled(14), cell.note, cell.theme.font(12, QFont::Normal), cell.theme.ink3);
}

void paintDecision(const LogCell& cell)
{
    const double codes = cell.theme.scaled(kRulesWidth);
    LogCell rules = cell;
    rules.rect.setWidth(codes - cell.theme.scaled(8));
    const FittedLines sentence = fittedLines(cell.text, cell.rect.width() - codes, 3, cell.theme, {13, 12}, QFont::Normal);
    const double pitch = cell.theme.scaled(sentence.lines.size() > 2 ? 15 : 18);
    double y = cell.rect.center().y() + cell.theme.scaled(5) - pitch * (static_cast<double>(sentence.lines.size()) - 1) / 2;
    rules.line(y, cell.note, cell.theme.font(12, QFont::DemiBold), cell.theme.ink3);
    cell.painter.setFont(sentence.font);
    cell.painter.setPen(cell.theme.ink2);
    for (const QString& line : sentence.lines) {
        cell.painter.drawText(QPointF(cell.rect.left() + codes, y), line);
        y += pitch;
    }
}

}  // namespace

LogDelegate::LogDelegate(const common::Look& look, QObject* parent) : QStyledItemDelegate(parent), m_look(look)
{
}

int LogDelegate::rowHeight() const
{
    return qRound(m_look.theme().scaled(kRowHeight));
}

QSize LogDelegate::sizeHint(const QStyleOptionViewItem& /*option*/, const QModelIndex& /*index*/) const
{
    return {qRound(m_look.theme().scaled(100)), rowHeight()};
}

void LogDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const Theme& theme = m_look.theme();
    const bool isSelected = (option.state & QStyle::State_Selected) != 0;
    const auto kind = static_cast<LogRowKind>(index.data(LogModel::RowRole).toInt());
    painter->save();
    painter->fillRect(option.rect, isSelected ? theme.wash : theme.surface);
    painter->fillRect(QRectF(option.rect.left(), option.rect.bottom(), option.rect.width(), 1), theme.line);
    if (isSelected && index.column() == 0) {
        painter->fillRect(QRectF(option.rect.left(), option.rect.top(), 3, option.rect.height()), theme.mark);
    }
    const double left = theme.scaled(index.column() == 0 ? 16 : 8);
    const QRectF inner = QRectF(option.rect).adjusted(left, 0, -theme.scaled(8), 0);
    const LogCell cell{*painter, inner, index.data().toString(), index.data(LogModel::NoteRole).toString(), kind == LogRowKind::Replaced,
                       theme};
    if (index.column() == LogModel::Decision) {
        paintDecision(cell);
    } else {
        paintTwoLines(cell, index.column() == LogModel::What || index.column() == LogModel::Next);
    }
    painter->restore();
}

}  // namespace chalk::ui::board
