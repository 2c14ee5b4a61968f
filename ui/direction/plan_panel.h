#pragma once

#include "ui/common/panel.h"
#include "ui/direction/plan_chart_scene.h"

#include <QStringList>

class QLabel;

namespace chalk::ui::direction {

class PlanChart;
class PlanLegend;
class PlanTable;

/// What the panel of a plan shows.
struct PlanPanelView {
    QString title;   ///< `Strength, 12 weeks`
    QString note;    ///< `30 November 2026 – 21 February 2027`
    PlanChartScene chart;
    QStringList heads;
    std::vector<QStringList> rows;   ///< of the main lifts
    QString footnote;
};

/// A plan: its chart and the table of its main lifts.
class PlanPanel : public common::Panel {
    Q_OBJECT

public:
    /// `look` outlives the panel.
    explicit PlanPanel(const common::Look& look, QWidget* parent = nullptr);

    void setView(const PlanPanelView& view);
    void setRoom(bool isNarrow, bool isLow);
    [[nodiscard]] PlanChart* chart() const { return m_chart; }
    [[nodiscard]] PlanTable* table() const { return m_table; }

private:
    PlanLegend* m_legend;
    PlanChart* m_chart;
    PlanTable* m_table;
    QLabel* m_footnote;
};

}  // namespace chalk::ui::direction
