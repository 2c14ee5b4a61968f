#include "ui/direction/padded_cells.h"

#include <QTableView>

namespace chalk::ui::direction {

namespace {

constexpr int kPadOfCell = 4;
constexpr int kPadOfFirst = 13;
constexpr int kPadOfNumber = 14;   // a head keeps room for the arrow of an order

int padLeft(const QModelIndex& index)
{
    return index.column() == 0 ? kPadOfFirst : kPadOfCell;
}

int padRight(const QModelIndex& index)
{
    const auto alignment = index.data(Qt::TextAlignmentRole).value<Qt::Alignment>();
    return alignment.testFlag(Qt::AlignRight) ? kPadOfNumber : 0;
}

}  // namespace

void PaddedCells::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    QStyleOptionViewItem padded = option;
    padded.rect.adjust(padLeft(index), 0, -padRight(index), 0);
    QStyledItemDelegate::paint(painter, padded, index);
}

QSize PaddedCells::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    return QStyledItemDelegate::sizeHint(option, index) + QSize(padLeft(index) + padRight(index) + kPadOfCell, 0);
}

void setPlainCells(QTableView& table)
{
    table.setItemDelegate(new PaddedCells(&table));
    table.setShowGrid(false);
    table.setFrameShape(QFrame::NoFrame);
}

}  // namespace chalk::ui::direction
