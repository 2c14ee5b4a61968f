#pragma once

#include "ui/board/board_column.h"
#include "ui/board/board_geometry.h"
#include "ui/board/board_painter.h"

#include <QWidget>

#include <optional>

class QScrollBar;
class QVariantAnimation;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::board {

/// The ladder of a client: a column per lift, a rung per stage. Left and Right choose a lift, Up and Down read its rungs,
/// Enter opens its sessions. It decides nothing: it shows columns and says what was asked for.
class StageBoard : public QWidget {
    Q_OBJECT

public:
    /// `look` outlives the board.
    explicit StageBoard(const common::Look& look, QWidget* parent = nullptr);

    /// Keeps the selected lift where it is still there, else selects the first.
    void setColumns(BoardColumns columns);
    [[nodiscard]] const BoardColumns& columns() const { return m_columns; }

    /// -1 where there is no column.
    [[nodiscard]] int selected() const { return m_focus.selected; }
    /// Selects a column and brings it into view.
    void select(int column);
    /// The rung being read, if any.
    [[nodiscard]] std::optional<progression::Stage> rung() const { return m_focus.rung; }
    /// Ends the reading of rungs; false where none was read.
    bool stopReading();

    /// Off: the wash of the selection jumps instead of gliding.
    void setMotion(bool isOn) { m_hasMotion = isOn; }

    [[nodiscard]] BoardGeometry geometryNow() const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void selectionChanged(int column);
    /// A rung of the selected lift is read now; nothing where the reading ended.
    void rungRead(std::optional<progression::Stage> stage);
    /// The lift's sessions were asked for; of one stage, where a rung was pointed at.
    void sessionsAsked(int column, std::optional<progression::Stage> stage);
    void evidenceAsked(int column);
    void screenAsked(lifts::Pattern pattern);

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void activate(const BoardBox& box);
    void openSelected();
    void readRung(int step);
    void setRung(std::optional<progression::Stage> stage);
    void moveWash(double to);
    void placeScrollBar();
    [[nodiscard]] QString toolTipAt(QPoint point) const;

    const common::Look& m_look;
    BoardColumns m_columns;
    BoardFocus m_focus;
    bool m_hasMotion = true;
    QVariantAnimation* m_glide;
    QScrollBar* m_scroll;
};

}  // namespace chalk::ui::board
