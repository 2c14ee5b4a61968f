#include "ui/common/formats.h"
#include "ui/print/cut_line.h"
#include "ui/print/print_text.h"
#include "ui/print/report_parts.h"
#include "ui/print/report_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>

namespace chalk::ui::print {

namespace {

using checkin::ProgressReport;
using checkin::ReportLift;
using checkin::WorkDone;

constexpr std::size_t kMostLines = 3;
constexpr double kAxisWidth = 11;
constexpr double kNamesWidth = 38;
constexpr double kNamesHeight = 8.6;
constexpr double kDaysHeight = 6.5;
constexpr double kLineStroke = 0.6;
const std::array<QList<double>, kMostLines> kDashes{QList<double>{}, QList<double>{2.6, 1.2}, QList<double>{0.6, 0.8}};

/// Where days and loads stand on the sheet.
struct LoadScale {
    QRectF plot;
    base::Date from;
    base::Date to;
    double least = 0;
    double most = 1;

    [[nodiscard]] double x(base::Date day) const
    {
        const double days = std::max(1, to - from);
        return plot.left() + plot.width() * std::clamp((day - from) / days, 0.0, 1.0);
    }
    [[nodiscard]] double y(double load) const { return plot.bottom() - plot.height() * (load - least) / (most - least); }
};

double plainLoad(base::Load load)
{
    return load.centi() / 100.0;
}

/// A step of 1, 2 or 5 times a power of ten that divides a span into about five.
double niceStep(double span)
{
    const double rough = std::max(span, 1.0) / 5;
    const double power = std::pow(10, std::floor(std::log10(rough)));
    for (const double factor : {1.0, 2.0, 5.0}) {
        if (factor * power >= rough) {
            return factor * power;
        }
    }
    return 10 * power;
}

std::vector<const ReportLift*> risenLifts(const ProgressReport& report)
{
    std::vector<const ReportLift*> lifts;
    for (const std::size_t i : report.byRise()) {
        const bool isAlike = lifts.empty() || lifts.front()->unit == report.lifts[i].unit;
        if (lifts.size() < kMostLines && isAlike) {
            lifts.push_back(&report.lifts[i]);
        }
    }
    std::sort(lifts.begin(), lifts.end(), [](const ReportLift* a, const ReportLift* b) { return a->work.back().load > b->work.back().load; });
    return lifts;
}

LoadScale scaleOf(const std::vector<const ReportLift*>& lifts, const ProgressReport& report, const QRectF& area, double& step)
{
    LoadScale scale;
    scale.plot = area.adjusted(kAxisWidth, 3, -kNamesWidth, -kDaysHeight);
    scale.from = report.from;
    scale.to = report.to;
    double least = plainLoad(lifts.front()->work.front().load);
    double most = least;
    for (const ReportLift* lift : lifts) {
        for (const WorkDone& work : lift->work) {
            least = std::min(least, plainLoad(work.load));
            most = std::max(most, plainLoad(work.load));
        }
    }
    step = niceStep(most - least);
    scale.least = std::floor(least / step) * step;
    scale.most = std::max(std::ceil(most / step) * step, scale.least + step);
    return scale;
}

void addLoadGrid(Sheet& sheet, const LoadScale& scale, double step)
{
    const QFont font = printFont(kLeastPoints, QFont::Medium);
    for (double load = scale.least; load <= scale.most + step / 2; load += step) {
        const double y = scale.y(load);
        sheet.rules.push_back({{scale.plot.left(), y, scale.plot.right(), y}, 0.15});
        const QString text = QString::number(load, 'g', 6);
        const double wide = widthOf(text, font);
        const QRectF cell(scale.plot.left() - 1.5 - wide, y - 2, wide, 4);
        sheet.texts.push_back({text, font, cell, {cell.left(), y + capHeightOf(font) / 2}, false});
    }
    constexpr int kDays = 4;
    for (int i = 0; i < kDays; ++i) {
        const base::Date day = scale.from + (scale.to - scale.from) * i / (kDays - 1);
        const QString text = common::shortDayText(day);
        const double wide = widthOf(text, font);
        const QRectF cell(scale.x(day) - wide / 2, scale.plot.bottom() + 2.2, wide, kDaysHeight - 2.5);
        sheet.texts.push_back({text, font, cell, {cell.left(), cell.center().y() + capHeightOf(font) / 2}, false});
    }
}

void addLoadLine(Sheet& sheet, const ReportLift& lift, const LoadScale& scale, const QList<double>& dashes)
{
    const auto pointOf = [&scale](const WorkDone& work) { return QPointF(scale.x(work.date), scale.y(plainLoad(work.load))); };
    QPainterPath path(pointOf(lift.work.front()));
    for (const WorkDone& work : lift.work) {
        path.lineTo(pointOf(work));
    }
    sheet.shapes.push_back(strokedPath(path, kLineStroke, dashes));
    QPainterPath end;
    end.addEllipse(path.currentPosition(), 1.1, 1.1);
    sheet.shapes.push_back(end);
}

/// Names at the ends of the lines, moved apart where these are close.
void addNames(Sheet& sheet, const std::vector<const ReportLift*>& lifts, const LoadScale& scale)
{
    double lowest = scale.plot.top() - 2;
    const double left = scale.plot.right() + 3;
    for (std::size_t i = 0; i < lifts.size(); ++i) {
        const double mostTop = scale.plot.bottom() + kDaysHeight - static_cast<double>(lifts.size() - i) * kNamesHeight;
        const double wanted = scale.y(plainLoad(lifts[i]->work.back().load)) - kNamesHeight / 2;
        const double top = std::max(lowest, std::min(wanted, mostTop));
        const QRectF cell(left, top, kNamesWidth - 3, kNamesHeight / 2);
        addReportLine(sheet, common::qstring(lifts[i]->name), 8.5, QFont::Bold, cell);
        addReportLine(sheet, riseText(*lifts[i]), 8.5, QFont::Medium, cell.translated(0, kNamesHeight / 2 - 0.3));
        lowest = top + kNamesHeight;
    }
}

}  // namespace

double addLoadLines(Sheet& sheet, const ProgressReport& report, const QRectF& area)
{
    const auto lifts = risenLifts(report);
    if (lifts.empty()) {
        return addReportLine(sheet, QCoreApplication::translate("Report", "No lift has two loads to compare yet."), 9, QFont::Medium, {area.left(), area.top(), area.width(), 5});
    }
    const QString title = QCoreApplication::translate("Report", "Working load, %1").arg(common::unitText(lifts.front()->unit));
    const double top = addReportLine(sheet, title, 11, QFont::Bold, {area.left(), area.top(), area.width() - 2, 6});
    double step = 1;
    const LoadScale scale = scaleOf(lifts, report, area.adjusted(0, top - area.top(), 0, 0), step);
    addLoadGrid(sheet, scale, step);
    for (std::size_t i = 0; i < lifts.size(); ++i) {
        addLoadLine(sheet, *lifts[i], scale, kDashes[i]);
    }
    addNames(sheet, lifts, scale);
    return area.bottom();
}

}  // namespace chalk::ui::print
