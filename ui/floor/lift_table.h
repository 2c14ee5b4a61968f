#pragma once

#include "ui/floor/lift_boxes.h"

#include <QListView>

#include <functional>
#include <optional>

class QLineEdit;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::floor {

class LiftRowsModel;

/// The rows of a client's lifts, whose boxes can be typed over: a click opens one, Tab goes to the next, Enter and Esc close it.
class LiftTable : public QListView {
    Q_OBJECT

public:
    /// Answers what stands in a field of a row.
    using FieldText = std::function<QString(LiftField field, int set)>;

    LiftTable(const common::Look& look, const LiftRowsModel& model, FieldText textOf, QWidget* parent = nullptr);

    /// Opens a box of the present row; the first amount where none is said.
    void editBox(LiftField field = LiftField::Amount, int set = 0);
    [[nodiscard]] bool isEditing() const { return m_open.has_value(); }
    void closeEditor();
    /// Says what is wrong with the text of the open box; empty: nothing, and the box is done with.
    void setFault(const QString& fault);

Q_SIGNALS:
    /// A row was clicked: it becomes the present one.
    void rowAsked(int row);
    /// A field of the present row was typed; setFault() answers.
    void fieldTyped(chalk::ui::floor::LiftField field, int set, const QString& text);
    /// The boxes are done with: work goes on in the line.
    void lineAsked();

protected:
    void mouseReleaseEvent(QMouseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] std::vector<LiftBox> boxesOf(const QModelIndex& row) const;
    /// Hands over what is typed. False where it makes no sense.
    bool commit();
    /// Whether the key goes on to another lift, client or session.
    [[nodiscard]] static bool leavesLift(const QKeyEvent& key);
    void step(int by);
    void place(const LiftBox& box);

    const common::Look& m_look;
    const LiftRowsModel& m_rows;
    FieldText m_textOf;
    QLineEdit* m_editor;
    std::optional<LiftBox> m_open;
    bool m_isFaulty = false;
};

}  // namespace chalk::ui::floor
