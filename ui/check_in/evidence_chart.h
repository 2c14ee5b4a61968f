#pragma once

#ifndef Q_MOC_RUN  // moc stumbles over the standard library behind it
#include "ui/check_in/chart_geometry.h"
#endif

#include <QtCharts/QChartView>

class QMenu;

namespace chalk::ui::common {
class Dialogs;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::check_in {

/// One chart of the evidence. Left and Right go from value to value and say it, Up and Down to another line or lift; the pointer shows the
/// value under it. S offers to save it as PNG, SVG or CSV, as its menu does.
class EvidenceChart : public QChartView {
    Q_OBJECT

public:
    /// Both outlive the chart.
    EvidenceChart(const common::Look& look, common::Dialogs& dialogs, QWidget* parent = nullptr);
    ~EvidenceChart() override;

    void setScene(ChartScene scene);
    [[nodiscard]] const ChartScene& scene() const { return m_scene; }
    /// The point that is shown; nothing for none.
    [[nodiscard]] std::optional<PointIndex> chosen() const { return m_chosen; }
    [[nodiscard]] const ChartFrame& frame() const { return m_frame; }

    /// Asks where, and writes the chart there. `suffix` is `png`, `svg` or `csv`.
    void save(const QString& suffix);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    class Layer;

    void dress();
    void layOut();
    void choose(std::optional<PointIndex> point);
    void say();
    void offerToSave(const QPoint& at);
    [[nodiscard]] QByteArray picture(const QString& suffix);

    const common::Look& m_look;
    common::Dialogs& m_dialogs;
    ChartScene m_scene;
    ChartFrame m_frame;
    std::optional<PointIndex> m_chosen;
    Layer* m_behind;
    Layer* m_before;
};

}  // namespace chalk::ui::check_in
