#pragma once

#include "ui/roster/roster_row.h"

#include <QStyledItemDelegate>

#include <optional>
#include <vector>

namespace chalk::ui::common {
class Look;
struct Theme;
}

namespace chalk::ui::roster {

/// Paints the cells of the roster: it lays ready pieces side by side and works nothing out.
class RosterDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    /// `look` outlives the delegate.
    RosterDelegate(const common::Look& look, QObject* parent);

    /// The row of the view that the mouse is over; -1 for none.
    void setHoveredRow(int row) { m_hoveredRow = row; }
    /// Whether the ring of the focus is drawn around the selected row.
    void setRingShown(bool isShown) { m_isRingShown = isShown; }

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    void paintGround(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index, const common::Theme& theme) const;

    const common::Look& m_look;
    int m_hoveredRow = -1;
    bool m_isRingShown = false;
};

/// Which of a client's flags fit into `width`, and whether a number for the others is drawn after them.
struct ShownFlags {
    int shown = 0;
    int others = 0;
};
[[nodiscard]] ShownFlags shownFlags(const std::vector<checkin::ClientFlag>& flags, double width, const common::Theme& theme);
/// The flag drawn at `x` of a cell; nothing beside them.
[[nodiscard]] std::optional<checkin::ClientFlag> rosterFlagAt(const std::vector<checkin::ClientFlag>& flags, const QRectF& cell, double x,
                                                              const common::Theme& theme);

}  // namespace chalk::ui::roster
