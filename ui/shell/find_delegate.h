#pragma once

#include <QStyledItemDelegate>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::shell {

/// Draws the rows of the find box: headings and results of 48 px at a text size of 100 %.
class FindDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    explicit FindDelegate(const common::Look& look, QObject* parent = nullptr);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    const common::Look& m_look;
};

}  // namespace chalk::ui::shell
