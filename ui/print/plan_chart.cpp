#include "core/direction/plan_curves.h"
#include "ui/common/direction_words.h"
#include "ui/common/formats.h"
#include "ui/print/cut_line.h"
#include "ui/print/plan_parts.h"
#include "ui/print/report_parts.h"
#include "ui/print/runs.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace chalk::ui::print {

namespace {

using chalk::direction::WeekCurve;

constexpr double kChartLabels = 22;   ///< millimetres at the left
constexpr double kChartRow = 4.4;
constexpr double kCurveHeight = 10;
constexpr double kBarsHeight = 12;
constexpr double kBarPart = 0.55;     ///< of a week's width
constexpr double kDot = 0.8;          ///< radius
constexpr double kLeastDateWidth = 10.8;
constexpr double kPhaseGap = 0.8;

QString chartWords(const char* text)
{
    return QCoreApplication::translate("PlanPaper", text);
}

/// Where the weeks stand beside each other.
struct WeekColumns {
    double left = 0;
    double pitch = 1;

    [[nodiscard]] QRectF cell(std::size_t week, double top, double height, std::size_t weeks = 1) const
    {
        return {left + static_cast<double>(week) * pitch, top, static_cast<double>(weeks) * pitch, height};
    }
    [[nodiscard]] double middle(std::size_t week) const { return left + (static_cast<double>(week) + 0.5) * pitch; }
};

void addCentred(Sheet& sheet, const QString& text, const QRectF& cell)
{
    placeCentred(sheet, {{text, kLeastPoints}}, cell);
}

void addPhases(Sheet& sheet, const std::vector<WeekCurve>& curves, const WeekColumns& columns, double top)
{
    for (std::size_t first = 0; first < curves.size();) {
        std::size_t next = first;
        while (next < curves.size() && curves[next].phase == curves[first].phase) {
            ++next;
        }
        const QRectF cell = columns.cell(first, top, kChartRow, next - first);
        const FittedPrint name = fitted(common::phaseName(curves[first].phase), cell.width(), {8.5, kLeastPoints}, QFont::Bold);
        placeCentred(sheet, {{name.text, pointsOf(name.font), QFont::Bold}}, cell);
        sheet.rules.push_back({{cell.left() + kPhaseGap, cell.bottom() + 0.6, cell.right() - kPhaseGap, cell.bottom() + 0.6}, kRuleStroke});
        first = next;
    }
}

void addCurve(Sheet& sheet, const std::vector<WeekCurve>& curves, const WeekColumns& columns, double top)
{
    const auto [least, most] =
        std::minmax_element(curves.begin(), curves.end(), [](const WeekCurve& a, const WeekCurve& b) { return a.intensity < b.intensity; });
    const double span = std::max(most->intensity - least->intensity, 0.01);
    QPainterPath line;
    for (std::size_t i = 0; i < curves.size(); ++i) {
        const QPointF at(columns.middle(i), top + kDot + (kCurveHeight - 2 * kDot) * (most->intensity - curves[i].intensity) / span);
        if (i == 0) {
            line.moveTo(at);
        } else {
            line.lineTo(at);
        }
        QPainterPath dot;
        dot.addEllipse(at, kDot, kDot);
        sheet.shapes.push_back(dot);
    }
    sheet.shapes.push_back(strokedPath(line, 0.4, {}));
}

void addBars(Sheet& sheet, const std::vector<WeekCurve>& curves, const WeekColumns& columns, double top)
{
    const int most = std::max(
        1, std::max_element(curves.begin(), curves.end(), [](const auto& a, const auto& b) { return a.hardSets < b.hardSets; })->hardSets);
    for (std::size_t i = 0; i < curves.size(); ++i) {
        const double height = std::max(0.8, kBarsHeight * curves[i].hardSets / most);
        const QRectF bar(columns.middle(i) - columns.pitch * kBarPart / 2, top + kBarsHeight - height, columns.pitch * kBarPart, height);
        if (curves[i].kind == chalk::direction::WeekKind::Work) {
            QPainterPath black;
            black.addRect(bar);
            sheet.shapes.push_back(black);
        } else {
            sheet.boxes.push_back({bar, 0.3, 0});
        }
    }
}

void addWeekDates(Sheet& sheet, const std::vector<WeekCurve>& curves, const WeekColumns& columns, double top)
{
    const auto step = static_cast<std::size_t>(std::ceil(kLeastDateWidth / columns.pitch));
    for (std::size_t i = 0; i < curves.size(); i += step) {
        addCentred(sheet, common::shortDayText(curves[i].monday), columns.cell(i, top, kChartRow, std::min(step, curves.size() - i)));
    }
}

}  // namespace

double addPlanChart(Sheet& sheet, const chalk::direction::BlockPlan& plan, const QRectF& area)
{
    const std::vector<WeekCurve> curves = chalk::direction::curvesOf(plan);
    const WeekColumns columns{area.left() + kChartLabels, (area.width() - kChartLabels) / static_cast<double>(curves.size())};
    const auto label = [&](const char* text, double y, double height) {
        addReportLine(sheet, chartWords(text), 8.5, QFont::Medium, {area.left(), y, kChartLabels, height});
    };
    double y = area.top();
    addPhases(sheet, curves, columns, y);
    y += kChartRow + 1.4;
    label(QT_TRANSLATE_NOOP("PlanPaper", "Intensity, %"), y, kChartRow);
    for (std::size_t i = 0; i < curves.size(); ++i) {
        addCentred(sheet, QString::number(std::lround(curves[i].intensity * 100)), columns.cell(i, y, kChartRow));
    }
    y += kChartRow;
    addCurve(sheet, curves, columns, y);
    y += kCurveHeight + 1;
    label(QT_TRANSLATE_NOOP("PlanPaper", "Hard sets"), y + kBarsHeight, kChartRow);
    addBars(sheet, curves, columns, y);
    y += kBarsHeight + 0.2;
    for (std::size_t i = 0; i < curves.size(); ++i) {
        addCentred(sheet, QString::number(curves[i].hardSets), columns.cell(i, y, kChartRow));
    }
    y += kChartRow;
    label(QT_TRANSLATE_NOOP("PlanPaper", "Week from"), y, kChartRow);
    addWeekDates(sheet, curves, columns, y);
    return y + kChartRow;
}

}  // namespace chalk::ui::print
