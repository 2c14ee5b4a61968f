#pragma once

#include "ui/week/month_weeks.h"

#include <QWidget>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::week {

/// A month as cells of days: the number of sessions, closures in their word. The arrows move, Enter or a click opens the week of a day.
class MonthGrid : public QWidget {
    Q_OBJECT

public:
    explicit MonthGrid(const common::Look& look, QWidget* parent = nullptr);

    /// The weeks of the month; days of other months are muted.
    void setMonth(const MonthWeeks& weeks, base::Date shown, base::Date today);
    [[nodiscard]] base::Date chosen() const { return m_chosen; }
    [[nodiscard]] QRectF cellRect(base::Date day) const;

    [[nodiscard]] QSize sizeHint() const override { return {640, 420}; }

Q_SIGNALS:
    void weekAsked(base::Date day);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void paintCell(QPainter& painter, base::Date date, const StripDay& day) const;
    [[nodiscard]] bool isInside(base::Date day) const;

    const common::Look& m_look;
    MonthWeeks m_weeks;
    base::Date m_chosen;
    base::Date m_today;
    unsigned m_month = 1;
};

}  // namespace chalk::ui::week
