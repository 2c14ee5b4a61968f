#pragma once

#include "ui/week/month_weeks.h"

#include <QWidget>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::week {

/// Nine weeks as bars, the one on show marked: a click, or the arrows, go to a week. Closures are hatched, short days have a flag; the next of
/// them are said at the right.
class MonthStrip : public QWidget {
    Q_OBJECT

public:
    explicit MonthStrip(const common::Look& look, QWidget* parent = nullptr);

    /// `shown` is the Monday on show.
    void setWeeks(const MonthWeeks& weeks, base::Date shown, base::Date today);
    /// Where the week of that number in the strip is drawn.
    [[nodiscard]] QRectF weekRect(std::size_t index) const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    void weekAsked(base::Date monday);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;

private:
    [[nodiscard]] double notesWidth() const;
    void paintWeek(QPainter& painter, std::size_t index) const;
    void paintNotes(QPainter& painter) const;

    const common::Look& m_look;
    MonthWeeks m_weeks;
    base::Date m_shown;
    base::Date m_today;
};

}  // namespace chalk::ui::week
