#pragma once

#include "ui/direction/plan_chart_painter.h"

#include <QWidget>

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::direction {

/// A plan week by week. The pointer reads the week under it; Left and Right, Home and End go from week to week and say it.
class PlanChart : public QWidget {
    Q_OBJECT

public:
    /// `look` outlives the chart.
    explicit PlanChart(const common::Look& look, QWidget* parent = nullptr);

    void setScene(PlanChartScene scene);
    [[nodiscard]] const PlanChartScene& scene() const { return m_scene; }
    /// The week that is read; nothing for none.
    [[nodiscard]] std::optional<std::size_t> chosen() const { return m_chosen; }
    /// What a screen reader says as the chart's value: the week that is read, else all weeks behind each other.
    [[nodiscard]] QString reading() const;
    [[nodiscard]] PlanChartFrame frame() const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void choose(std::optional<std::size_t> week);

    const common::Look& m_look;
    PlanChartScene m_scene;
    std::optional<std::size_t> m_chosen;
};

}  // namespace chalk::ui::direction
