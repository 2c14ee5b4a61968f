#pragma once

#include "ui/week/week_painter.h"

#include <QAbstractScrollArea>

#include <functional>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::week {

inline constexpr char kWishMime[] = "application/x-chalkrung-wish";  ///< a session that is dragged onto the grid: its index in the case

/// What may be moved where, asked while something is moved.
struct MoveRules {
    /// In words; empty where it is allowed.
    std::function<QString(const std::vector<std::size_t>&, const chalk::week::Slot&)> reasonAgainst;
    std::function<std::vector<chalk::week::Slot>(const std::vector<std::size_t>&)> closedFor;
    /// Why block `index` is a conflict, and what would help; empty for none.
    std::function<ConflictWords(std::size_t)> conflictOf;
};

/// The week by day and coach. The arrows go from block to block; while something is moved they move it by a quarter of an hour or a lane, Enter
/// puts it down and Esc lets it be. Blocks are dragged with the mouse; what is left over is dropped onto it.
class WeekGrid : public QAbstractScrollArea {
    Q_OBJECT

public:
    WeekGrid(const common::Look& look, MoveRules rules, QWidget* parent = nullptr);

    /// The chosen block stays chosen where one with the same start and coach is there.
    void setScene(const WeekScene& scene);
    [[nodiscard]] const WeekScene& scene() const { return m_scene; }
    /// From the top left of what is scrolled.
    [[nodiscard]] const WeekGeometry& geometryNow() const { return m_geometry; }
    [[nodiscard]] QPointF offset() const;

    [[nodiscard]] int selected() const { return m_selected; }
    [[nodiscard]] const WeekBlock* selectedBlock() const;
    void select(int index);
    /// Where a new session would go: the empty place that was clicked last, else the chosen block's.
    [[nodiscard]] std::optional<chalk::week::Slot> place() const;

    /// Begins to move sessions from `from`, or from the first hour on show.
    void beginMove(const std::vector<std::size_t>& wishes, std::optional<chalk::week::Slot> from, int minutes, const QString& names);
    [[nodiscard]] bool isMoving() const { return m_isMoving; }
    void cancelMove();
    [[nodiscard]] const MoveGhost& ghost() const { return m_ghost; }

    [[nodiscard]] QSize sizeHint() const override { return {720, 480}; }

Q_SIGNALS:
    void selectionChanged();
    /// Enter, a double click or the menu key on a block; where its menu may open.
    void blockOpened(int index, const QPoint& at);
    void blockClicked(int index);
    /// What would help with the conflict of a block is wanted.
    void offerTaken(int index);
    /// A double click on an empty place.
    void emptyOpened();
    /// Put down on a place where nothing is in its way.
    void dropped(const std::vector<std::size_t>& wishes, const chalk::week::Slot& slot);
    /// Something moves, and why it may not lie there; empty where it may. Not moving any more: both are empty.
    void moving(const QString& where, const QString& reason);

protected:
    bool viewportEvent(QEvent* event) override;
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void layOut();
    [[nodiscard]] QPointF toContents(const QPointF& at) const { return at + offset(); }
    [[nodiscard]] int blockAtPoint(const QPointF& at) const;
    [[nodiscard]] int firstConflict() const;
    [[nodiscard]] WeekPicture picture() const;
    /// Whether the offer beside the first conflict lies there.
    [[nodiscard]] bool isOfferAt(const QPointF& at) const;
    void reveal(const QRectF& rect);
    void step(int byDay, int byBlock);
    void stepGhost(int byLane, int bySlot);
    void moveGhost(const chalk::week::Slot& slot);
    void putDown();
    void endMove();
    void openSelected();
    [[nodiscard]] QString toolTipAt(const QPointF& at) const;

    const common::Look& m_look;
    MoveRules m_rules;
    WeekScene m_scene;
    WeekGeometry m_geometry;
    int m_selected = -1;
    std::optional<chalk::week::Slot> m_place;  ///< empty, clicked last
    bool m_isMoving = false;
    std::vector<std::size_t> m_wishes;         ///< that move
    MoveGhost m_ghost;
    std::optional<QPoint> m_pressed;           ///< where the mouse went down on a block
    int m_grabMinutes = 0;                     ///< from the block's start to where it was taken
};

}  // namespace chalk::ui::week
