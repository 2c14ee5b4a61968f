#include "ui/common/formats.h"
#include "ui/common/stage_glyph.h"
#include "ui/print/cut_line.h"
#include "ui/print/print_text.h"
#include "ui/print/report_parts.h"
#include "ui/print/report_sheet.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::print {

namespace {

using checkin::ProgressReport;
using checkin::ReportLift;
using progression::Stage;

constexpr double kStageColumn = 32;
constexpr double kRungHeight = 6;
constexpr int kRungs = 7;
constexpr double kNameLine = 3.7;
constexpr int kNameLines = 3;
constexpr double kNowWidth = 6;
constexpr double kNowHeight = 4.8;
constexpr double kThenRadius = 1.5;
constexpr double kLadderStroke = 0.25;

/// Those on the ladder: all, or those with the latest work, in their order.
std::vector<const ReportLift*> liftsOnLadder(const ProgressReport& report)
{
    std::vector<const ReportLift*> lifts;
    for (const ReportLift& lift : report.lifts) {
        lifts.push_back(&lift);
    }
    while (lifts.size() > kMostReportLifts) {
        const auto last = [](const ReportLift* lift) { return lift->work.empty() ? base::Date() : lift->work.back().date; };
        lifts.erase(std::min_element(lifts.begin(), lifts.end(), [&last](const ReportLift* a, const ReportLift* b) { return last(a) < last(b); }));
    }
    return lifts;
}

double middleOf(Stage stage, const QRectF& grid)
{
    return grid.bottom() - (progression::numberOf(stage) - 0.5) * kRungHeight;
}

void addRungs(Sheet& sheet, const QRectF& grid)
{
    for (int rung = 0; rung <= kRungs; ++rung) {
        const double y = grid.bottom() - rung * kRungHeight;
        sheet.rules.push_back({{grid.left(), y, grid.right(), y}, kLadderStroke});
    }
    for (const double x : {grid.left(), grid.right()}) {
        sheet.rules.push_back({{x, grid.top(), x, grid.bottom()}, kLadderStroke});
    }
    for (const Stage stage : progression::kStages) {
        const double y = middleOf(stage, grid);
        const double left = grid.left() - kStageColumn;
        sheet.shapes.push_back(common::stageGlyph(stage, {left, y - 1.3, 2.6, 2.6}));
        const QString text = QStringLiteral("%1 %2").arg(progression::numberOf(stage)).arg(common::stageName(stage));
        const FittedPrint fit = fitted(text, kStageColumn - 5, {9, 8.5, kLeastPoints}, QFont::Medium);
        const QRectF cell(left + 4, y - kRungHeight / 2, kStageColumn - 5, kRungHeight);
        sheet.texts.push_back({fit.text, fit.font, cell, {cell.left(), y + capHeightOf(fit.font) / 2}, false});
    }
}

void addLadderName(Sheet& sheet, const std::string& name, const QRectF& column)
{
    const QFont font = printFont(kLeastPoints, QFont::DemiBold);
    QStringList lines = wrapped(common::qstring(name), font, column.width() - 1);
    if (lines.size() > kNameLines) {
        lines.erase(lines.begin() + kNameLines, lines.end());
        lines.last() = fitted(lines.last() + QStringLiteral(" …………"), column.width() - 1, {kLeastPoints}, QFont::DemiBold).text;
    }
    double y = column.bottom() - static_cast<double>(lines.size()) * kNameLine;
    for (const QString& line : lines) {
        const double wide = widthOf(line, font);
        const QRectF cell(column.center().x() - wide / 2, y, wide, kNameLine);
        sheet.texts.push_back({line, font, cell, {cell.left(), cell.center().y() + capHeightOf(font) / 2}, false});
        y += kNameLine;
    }
}

/// Black with the stage's shape in white.
QPainterPath nowMark(Stage stage, const QPointF& middle)
{
    QPainterPath box;
    box.addRoundedRect(QRectF(middle.x() - kNowWidth / 2, middle.y() - kNowHeight / 2, kNowWidth, kNowHeight), 0.9, 0.9);
    return box.subtracted(common::stageGlyph(stage, {middle.x() - 1.3, middle.y() - 1.3, 2.6, 2.6}));
}

void addThenMark(Sheet& sheet, const QPointF& middle)
{
    sheet.boxes.push_back({{middle.x() - kThenRadius, middle.y() - kThenRadius, 2 * kThenRadius, 2 * kThenRadius}, 0.5, kThenRadius - 0.25});
}

/// From where it stood to where it stands; a lift that began another round is shown beside where it stood.
void addWay(Sheet& sheet, const ReportLift& lift, double x, const QRectF& grid)
{
    const bool isRoundAgain = lift.cycleNow > lift.cycleThen;
    const double nowX = lift.cycleNow > 1 ? x - 1 : x;  // the round stands beside it
    const QPointF then(isRoundAgain ? x - 5.5 : nowX, middleOf(lift.stageThen, grid));
    const QPointF now(nowX, middleOf(lift.stageNow, grid));
    const bool isSamePlace = !isRoundAgain && lift.stageThen == lift.stageNow;
    if (!isSamePlace) {
        QPainterPath way(then + QPointF(0, lift.stageNow > lift.stageThen || isRoundAgain ? -kThenRadius : kThenRadius));
        if (isRoundAgain) {
            way.lineTo(then.x(), grid.top() + 1);
            way.lineTo(now.x(), grid.top() + 1);
        }
        way.lineTo(now.x(), now.y() + (now.y() > then.y() || isRoundAgain ? -kNowHeight / 2 : kNowHeight / 2));
        sheet.shapes.push_back(strokedPath(way, 0.3, {0.9, 0.7}));
        addThenMark(sheet, then);
    }
    sheet.shapes.push_back(nowMark(lift.stageNow, now));
    if (lift.cycleNow > 1) {
        const QFont font = printFont(kLeastPoints, QFont::Medium);
        const QString text = QStringLiteral("c%1").arg(lift.cycleNow);
        const QRectF cell(now.x() + kNowWidth / 2 + 0.6, now.y() - kRungHeight / 2, widthOf(text, font), kRungHeight);
        sheet.texts.push_back({text, font, cell, {cell.left(), cell.center().y() + capHeightOf(font) / 2}, false});
    }
}

}  // namespace

double addLadder(Sheet& sheet, const ProgressReport& report, const QRectF& area)
{
    const auto lifts = liftsOnLadder(report);
    const double names = kNameLines * kNameLine + 1;
    const QRectF grid(area.left() + kStageColumn, area.top() + names, area.width() - kStageColumn, kRungs * kRungHeight);
    addRungs(sheet, grid);
    const double width = grid.width() / static_cast<double>(std::max<std::size_t>(lifts.size(), 5));
    for (std::size_t i = 0; i < lifts.size(); ++i) {
        const double left = grid.left() + static_cast<double>(i) * width;
        addLadderName(sheet, lifts[i]->name, {left, area.top(), width, names - 1});
        addWay(sheet, *lifts[i], left + width / 2, grid);
    }
    const QString key = QCoreApplication::translate("Report", "Open circle: at the beginning. Black: now. c2: the second time round, with more load.");
    return addReportLine(sheet, key, 8.5, QFont::Medium, {area.left(), grid.bottom() + 1, area.width(), 5});
}

}  // namespace chalk::ui::print
