#pragma once

#include <QStyledItemDelegate>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::direction {

class PlanEditorSheet;

/// The cells of the plan editor: what leaves its published range has a corner and a heavier line below it, what is over is paler. What is typed is
/// refused in the cell: it stays open with a red edge, and the reason is told.
class PlanEditorCells : public QStyledItemDelegate {
    Q_OBJECT

public:
    /// Both outlive the delegate.
    PlanEditorCells(const common::Look& look, PlanEditorSheet& sheet, QObject* parent = nullptr);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

Q_SIGNALS:
    /// What was typed was kept; the cell below, or beside (`isBackward`: before it), is next.
    void downAsked() const;
    void acrossAsked(bool isBackward) const;
    /// Why what was typed is not kept, a sentence.
    void refused(const QString& sentence) const;

protected:
    bool editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option, const QModelIndex& index) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    /// Keeps what was typed where it can be; false where it is refused.
    bool keep(QWidget& editor);

    const common::Look& m_look;
    PlanEditorSheet& m_sheet;
};

}  // namespace chalk::ui::direction
