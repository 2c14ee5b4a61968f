#pragma once

#include <QTableView>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::direction {

class PlanEditorCells;
class PlanEditorSheet;

/// The table of the plan editor. Digits write over a cell, F2 opens it; Enter goes down, Tab across what can be edited; Space sets marks and changes the
/// kind of a week; Ctrl+D copies a row down.
class PlanEditorTable : public QTableView {
    Q_OBJECT

public:
    /// Both outlive the table.
    PlanEditorTable(const common::Look& look, PlanEditorSheet& sheet, QWidget* parent = nullptr);

Q_SIGNALS:
    /// Another cell is the current one, or what it says has changed: its remark, empty for none.
    void cellRead(const QString& remark);
    void refused(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    bool focusNextPrevChild(bool isNext) override;

private:
    void goDown(int rows);
    /// False at the end of the table.
    bool goAcross(bool isBackward);
    void fitColumns();
    void readCell();
    /// The current cell at a row after a reset: the first one that can be edited.
    void settle();

    const common::Look& m_look;
    PlanEditorSheet& m_sheet;
    PlanEditorCells* m_cells;
};

}  // namespace chalk::ui::direction
