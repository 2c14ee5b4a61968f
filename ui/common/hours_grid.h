#pragma once

#include "core/clients/availability.h"

#include <QWidget>

namespace chalk::ui::common {

class Look;

/// What a half-hour is painted with.
enum class HourBrush : std::uint8_t { Free, Rather, None };

/// The hours of a week by the half-hour, a column for each day: free, free and preferred, or not. Painted with the mouse or the keys: the
/// arrows move, Shift and an arrow selects on, Space paints with the brush, F, R and Delete paint at once. Hours before six and after ten in
/// the evening are folded unless something is set there.
class HoursGrid : public QWidget {
    Q_OBJECT

public:
    explicit HoursGrid(const Look& look, QWidget* parent = nullptr);

    void setHours(const clients::WeekHours& free, const clients::WeekHours& preferred);
    [[nodiscard]] const clients::WeekHours& free() const { return m_free; }
    [[nodiscard]] const clients::WeekHours& preferred() const { return m_preferred; }
    void setBrush(HourBrush brush) { m_brush = brush; }
    /// Folds the night away, or shows all 24 hours.
    void setWholeDay(bool isWhole);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    /// A stroke or a key is done.
    void painted();

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;

private:
    struct Cell {
        int weekday = 0;
        int slot = 0;
    };

    [[nodiscard]] int firstSlot() const;
    [[nodiscard]] int endSlot() const;
    [[nodiscard]] QRectF grid() const;
    [[nodiscard]] QRectF rectOf(int weekday, int slot) const;
    [[nodiscard]] std::optional<Cell> cellAt(const QPointF& at) const;
    void paintCells(QPainter& painter) const;
    void paintCaptions(QPainter& painter) const;
    void set(Cell from, Cell to, HourBrush brush);
    void moveTo(Cell cell, bool isSelecting);
    void say();

    const Look& m_look;
    clients::WeekHours m_free;
    clients::WeekHours m_preferred;
    HourBrush m_brush = HourBrush::Free;
    bool m_isWholeDay = false;
    bool m_isPainting = false;
    Cell m_at{0, 18};
    Cell m_anchor{0, 18};
};

}  // namespace chalk::ui::common
