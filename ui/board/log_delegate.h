#pragma once

#include <QStyledItemDelegate>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::board {

/// Two lines in a cell; a decision has its rules before it and takes up to three. What a correction replaced is struck out.
class LogDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    /// `look` outlives the delegate.
    explicit LogDelegate(const common::Look& look, QObject* parent = nullptr);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

    /// The height of a row in pixels, at the present text size.
    [[nodiscard]] int rowHeight() const;

private:
    const common::Look& m_look;
};

}  // namespace chalk::ui::board
