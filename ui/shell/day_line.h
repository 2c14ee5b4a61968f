#pragma once

#include "ui/shell/ledge_day.h"

#include <QWidget>

#include <optional>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::shell {

/// Today as a line: a bar per slot, a row per coach, the hours below and where the clock stands. A click opens a session.
class DayLine : public QWidget {
    Q_OBJECT

public:
    explicit DayLine(const common::Look& look, QWidget* parent = nullptr);

    void setDay(const LedgeDay& day);
    [[nodiscard]] const LedgeDay& day() const { return m_day; }
    /// Where a bar is drawn, in the widget's coordinates.
    [[nodiscard]] QRectF barRect(const LedgeBar& bar) const;

Q_SIGNALS:
    void sessionChosen(chalk::base::SessionId session);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    bool event(QEvent* event) override;

private:
    [[nodiscard]] double xOf(double minute) const;
    [[nodiscard]] double axisY() const;
    [[nodiscard]] const LedgeBar* barAt(const QPointF& point) const;
    void paintHours(QPainter& painter) const;
    void paintBars(QPainter& painter) const;
    void paintNow(QPainter& painter) const;

    const common::Look& m_look;
    LedgeDay m_day;
};

}  // namespace chalk::ui::shell
