#pragma once

#include "ui/roster/attention_model.h"

#include <QListView>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::roster {

/// The list of what needs attention. Enter, a digit or a click runs an item's action; other keys go on to its parents.
class AttentionList : public QListView {
    Q_OBJECT

public:
    /// `look` outlives the list, `model` as well.
    AttentionList(const common::Look& look, AttentionModel& model, QWidget* parent = nullptr);

    /// What stands in the list while it is empty; nothing at first.
    void setEmptyText(const QString& text);
    /// Runs the action of an item, 0 the first; false where there is none.
    bool run(int row);

Q_SIGNALS:
    void itemChosen(const chalk::ui::roster::AttentionItem& item);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    const common::Look& m_look;
    AttentionModel& m_model;
    QString m_emptyText;
};

}  // namespace chalk::ui::roster
