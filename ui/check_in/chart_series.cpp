#include "ui/check_in/chart_series.h"

#include <QtCharts/QAreaSeries>
#include <QtCharts/QBarSeries>
#include <QtCharts/QBarSet>
#include <QtCharts/QChart>
#include <QtCharts/QLineSeries>
#include <QtCharts/QValueAxis>

namespace chalk::ui::check_in {

namespace {

constexpr double kBarShare = 0.62;  // of a week

double dayOf(const ChartScene& scene, base::Date date)
{
    return date - scene.days.from + 0.5;
}

int weeksOf(const ChartScene& scene)
{
    return (scene.days.to - scene.days.from + 1) / 7;
}

/// The painter draws the lines and words of an axis, so that they agree with the shading; the chart only scales by it.
QValueAxis* hiddenAxis(double low, double high)
{
    auto* axis = new QValueAxis;
    axis->setRange(low, high);
    axis->setVisible(false);
    return axis;
}

void attach(QChart& chart, QAbstractSeries* series, QValueAxis* days, QValueAxis* values)
{
    chart.addSeries(series);
    series->attachAxis(days);
    series->attachAxis(values);
}

QLineSeries* lineOf(const ChartScene& scene, const ChartSeries& series, double (*value)(const ChartPoint&))
{
    auto* line = new QLineSeries;
    line->setName(series.name);
    for (const ChartPoint& point : series.points) {
        line->append(dayOf(scene, point.date), value(point));
    }
    return line;
}

void addBand(QChart& chart, const ChartScene& scene, const common::Theme& theme, QValueAxis* days, QValueAxis* values)
{
    const ChartSeries& series = scene.series.front();
    auto* upper = lineOf(scene, series, [](const ChartPoint& point) { return point.high.value_or(point.value); });
    auto* lower = lineOf(scene, series, [](const ChartPoint& point) { return point.low.value_or(point.value); });
    auto* band = new QAreaSeries(upper, lower);
    upper->setParent(band);
    lower->setParent(band);
    QColor fill = theme.axis;
    fill.setAlphaF(0.22F);
    band->setBrush(fill);
    band->setPen(QPen(theme.axis, 1));
    attach(chart, band, days, values);
}

void addLines(QChart& chart, const ChartScene& scene, const common::Theme& theme, QValueAxis* days, QValueAxis* values)
{
    for (const ChartSeries& series : scene.series) {
        auto* line = lineOf(scene, series, [](const ChartPoint& point) { return point.value; });
        const QColor ink = scene.style == ChartStyle::Band ? theme.ink : series.isDashed ? theme.ink2 : theme.link;
        line->setPen(QPen(ink, 2, series.isDashed ? Qt::DashLine : Qt::SolidLine));
        attach(chart, line, days, values);
    }
}

void addBars(QChart& chart, const ChartScene& scene, const common::Theme& theme, QValueAxis* values)
{
    auto* set = new QBarSet(scene.title);
    std::vector<double> byWeek(static_cast<std::size_t>(weeksOf(scene)), 0.0);
    for (const ChartPoint& point : scene.series.front().points) {
        const int week = (point.date - scene.days.from) / 7;
        if (week >= 0 && week < static_cast<int>(byWeek.size())) {
            byWeek[static_cast<std::size_t>(week)] = point.value;
        }
    }
    for (const double value : byWeek) {
        set->append(value);
    }
    set->setBrush(theme.attDot);
    set->setPen(Qt::NoPen);
    auto* bars = new QBarSeries;
    bars->append(set);
    bars->setBarWidth(kBarShare);
    auto* weeks = hiddenAxis(-0.5, weeksOf(scene) - 0.5);
    chart.addAxis(weeks, Qt::AlignBottom);
    attach(chart, bars, weeks, values);
}

}  // namespace

void fillChart(QChart& chart, const ChartScene& scene, const common::Theme& theme)
{
    chart.removeAllSeries();
    for (QAbstractAxis* axis : chart.axes()) {
        chart.removeAxis(axis);
        delete axis;
    }
    const bool isDrawnHere = scene.style != ChartStyle::Stages && scene.style != ChartStyle::Marks;
    if (!isDrawnHere || !scene.missing.isEmpty() || scene.series.empty()) {
        return;
    }
    auto* values = hiddenAxis(scene.axis.low, scene.axis.high);
    chart.addAxis(values, Qt::AlignLeft);
    if (scene.style == ChartStyle::Bars) {
        addBars(chart, scene, theme, values);
        return;
    }
    auto* days = hiddenAxis(0, weeksOf(scene) * 7);
    chart.addAxis(days, Qt::AlignBottom);
    if (scene.style == ChartStyle::Band) {
        addBand(chart, scene, theme, days, values);
    }
    addLines(chart, scene, theme, days, values);
}

}  // namespace chalk::ui::check_in
