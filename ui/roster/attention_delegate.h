#pragma once

#include <QStyledItemDelegate>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::roster {

/// Paints one thing that needs attention: icon, name, why, and the action as a link. The whole item is the target.
class AttentionDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    /// `look` outlives the delegate.
    AttentionDelegate(const common::Look& look, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    /// As high as the sentence needs in the width of the view.
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    const common::Look& m_look;
};

}  // namespace chalk::ui::roster
