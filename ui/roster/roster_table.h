#pragma once

#include "ui/roster/roster_filter.h"
#include "ui/roster/roster_model.h"

#include <QTableView>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::roster {

class RosterDelegate;

/// The table of clients. A row opens the client, a ladder of its strip that lift, a flag what settles it. Keys that it has no use for
/// go on to its parents.
class RosterTable : public QTableView {
    Q_OBJECT

public:
    /// `look` outlives the table; `filter` shows a RosterModel.
    RosterTable(const common::Look& look, RosterModel& model, RosterFilter& filter, QWidget* parent = nullptr);

    /// The selected client's line; nothing where none is selected.
    [[nodiscard]] const RosterRow* selectedRow() const;
    /// Selects a client where it is shown, and brings it into view; false where it is not.
    bool selectClient(base::ClientId client);
    /// Selects the row so many lines further on, as far as there are any.
    void moveSelection(int lines);
    /// Where the selected row is on the screen; a null rectangle where none is selected.
    [[nodiscard]] QRect selectedRectangle() const;

Q_SIGNALS:
    void clientChosen(base::ClientId client);
    void liftChosen(base::ClientId client, lifts::Pattern pattern);
    void flagChosen(base::ClientId client, checkin::ClientFlag flag);
    /// The load over the weeks was pressed.
    void loadChosen(base::ClientId client);
    /// Another client is selected, or none.
    void selectedClientChanged();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool viewportEvent(QEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
    void dress();
    void layOut();
    void hover(int row);
    void choose(const QModelIndex& index, const QPoint& point);
    [[nodiscard]] QRectF contentsOf(const QModelIndex& index) const;
    [[nodiscard]] std::optional<lifts::Pattern> liftAt(const QModelIndex& index, const QPoint& point) const;
    [[nodiscard]] std::optional<checkin::ClientFlag> flagAt(const QModelIndex& index, const QPoint& point) const;
    [[nodiscard]] QString tipAt(const QPoint& point) const;

    const common::Look& m_look;
    RosterModel& m_model;
    RosterFilter& m_filter;
    RosterDelegate* m_delegate;
    int m_hoveredRow = -1;
};

}  // namespace chalk::ui::roster
