#pragma once

#include <QStyledItemDelegate>

class QTableView;

namespace chalk::ui::direction {

/// Text of a table's cells that stands under the text of its head, away from the borders.
class PaddedCells : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

/// Gives a table padded cells, and takes its frame and its grid away, as all tables of the plan have it.
void setPlainCells(QTableView& table);

}  // namespace chalk::ui::direction
