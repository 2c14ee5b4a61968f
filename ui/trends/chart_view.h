#pragma once

#include "ui/common/theme.h"

#include <QRectF>
#include <QString>
#include <QWidget>

#include <functional>
#include <vector>

class QPainter;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::trends {

/// A place on a chart that has something to say.
struct HotSpot {
    QRectF area;
    QString words;
};

using HotSpots = std::vector<HotSpot>;

/// Paints a chart into a rectangle and answers where it says what.
using ChartPaint = std::function<HotSpots(QPainter&, const QRectF&, const common::Theme&)>;

/// A chart: what stands under the pointer is told, and a press on a place chooses it. It takes the focus, so that keys can work on it.
class ChartView : public QWidget {
    Q_OBJECT

public:
    /// `look` outlives the view.
    explicit ChartView(const common::Look& look, QWidget* parent = nullptr);

    /// `words` are for screen readers: what it shows; its numbers stand in the table.
    void setChart(ChartPaint paint, const QString& words);
    [[nodiscard]] const ChartPaint& chart() const { return m_paint; }
    /// Where it said what when it was last painted.
    [[nodiscard]] const HotSpots& spots() const { return m_spots; }

Q_SIGNALS:
    /// A place was pressed: its index among the spots.
    void spotChosen(int spot);

protected:
    bool event(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] int spotAt(const QPointF& place) const;

    const common::Look& m_look;
    ChartPaint m_paint;
    HotSpots m_spots;
};

}  // namespace chalk::ui::trends
