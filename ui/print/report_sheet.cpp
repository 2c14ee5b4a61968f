#include "ui/print/report_sheet.h"

#include "ui/common/formats.h"
#include "ui/print/cut_line.h"
#include "ui/print/print_text.h"
#include "ui/print/report_parts.h"
#include "ui/print/report_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::print {

namespace {

using checkin::ProgressReport;

constexpr double kReportSide = 16;
constexpr double kReportTop = 13;
constexpr double kReportFoot = 10;
constexpr double kSection = 5;          ///< between the parts
constexpr double kSentencePoints = 13;
constexpr double kLinesShare = 0.64;    ///< of the width: the loads; sessions and what comes next stand beside them
constexpr double kLinesHeight = 64;
constexpr double kLeastNote = 18;
constexpr double kNoteLine = 8;

QString reportWords(const char* text)
{
    return QCoreApplication::translate("Report", text);
}

/// As many lines as a text takes, at most `most`; answers the lower edge.
double addReportParagraph(Sheet& sheet, const QString& text, double points, const QRectF& area, qsizetype most)
{
    const QFont font = printFont(points, QFont::Medium);
    const double lineHeight = points * 1.4 * kMmPerPoint;
    QStringList lines = wrapped(text, font, area.width());
    if (lines.size() > most) {
        lines.erase(lines.begin() + most, lines.end());
        lines.last() += QStringLiteral(" …");
    }
    double y = area.top();
    for (const QString& line : lines) {
        y = addReportLine(sheet, line, points, QFont::Medium, {area.left(), y, area.width(), lineHeight});
    }
    return y;
}

double addReportHead(Sheet& sheet, const ProgressReport& report, const QRectF& area)
{
    double y = addReportLine(sheet, common::qstring(report.studioName), 9.5, QFont::Bold, {area.left(), area.top(), area.width(), 5});
    const FittedPrint name = fitted(common::qstring(report.clientName), area.width(), {24, 22, 20, 18, 16, 14, 12}, QFont::Bold, true);
    const QRectF cell(area.left(), y, area.width(), 11);
    sheet.texts.push_back({name.text, name.font, cell, {cell.left(), cell.center().y() + capHeightOf(name.font) / 2}, false});
    y = addReportLine(sheet, reportSpan(report), 10, QFont::Medium, {area.left(), cell.bottom(), area.width(), 5});
    return addReportParagraph(sheet, reportSentence(report), kSentencePoints, {area.left(), y + kSection - 1, area.width(), 0}, 3);
}

double addFigures(Sheet& sheet, const ProgressReport& report, const QRectF& area)
{
    constexpr double kFigureGap = 5;
    const std::vector<ReportFigure> figures = reportFigures(report);
    const double width = (area.width() - 3 * kFigureGap) / 4;
    double bottom = area.top();
    for (std::size_t i = 0; i < figures.size(); ++i) {
        const double x = area.left() + static_cast<double>(i) * (width + kFigureGap);
        sheet.rules.push_back({{x, area.top(), x + width, area.top()}, kRuleStroke});
        const FittedPrint large = fitted(figures[i].figure, width, {18, 16, 14, 12, 10, kLeastPoints}, QFont::Bold, true);
        const QRectF cell(x, area.top() + 1.5, width, 8);
        sheet.texts.push_back({large.text, large.font, cell, {x, cell.center().y() + capHeightOf(large.font) / 2}, false});
        double y = cell.bottom();
        for (const QString& line : figures[i].below) {
            y = addReportParagraph(sheet, line, 8.5, {x, y, width, 0}, 2);
        }
        bottom = std::max(bottom, y);
    }
    return bottom;
}

double addNext(Sheet& sheet, const ProgressReport& report, const QRectF& area)
{
    double y = addReportLine(sheet, reportWords(QT_TRANSLATE_NOOP("Report", "What comes next")), 11, QFont::Bold, {area.left(), area.top(), area.width(), 6});
    const double lineHeight = 8.5 * 1.4 * kMmPerPoint;
    for (const QString& text : nextTexts(report)) {
        const auto room = static_cast<qsizetype>((area.bottom() - y) / lineHeight);
        if (room < 1) {
            break;
        }
        y = addReportParagraph(sheet, text, 8.5, {area.left(), y, area.width(), 0}, std::min<qsizetype>(room, 2));
    }
    return y;
}

/// A box to write in by hand.
void addNoteBox(Sheet& sheet, const ProgressReport& report, const QRectF& area)
{
    if (area.height() < kLeastNote) {
        return;
    }
    sheet.boxes.push_back({area, kBoxStroke, 1.5});
    const QRectF inside = area.adjusted(4, 2.5, -4, -2);
    const QString from = report.coachName.empty() ? reportWords(QT_TRANSLATE_NOOP("Report", "A note"))
                                                  : reportWords(QT_TRANSLATE_NOOP("Report", "From %1")).arg(common::qstring(report.coachName));
    double y = addReportLine(sheet, from, 10, QFont::Bold, {inside.left(), inside.top(), inside.width(), 5});
    for (y += kNoteLine; y < inside.bottom(); y += kNoteLine) {
        sheet.rules.push_back({{inside.left(), y, inside.right(), y}, 0.2});
    }
}

}  // namespace

double addReportLine(Sheet& sheet, const QString& text, double points, QFont::Weight weight, const QRectF& cell)
{
    const FittedPrint fit = fitted(text, cell.width(), {points, std::max(points - 1, kLeastPoints), kLeastPoints}, weight);
    if (!fit.text.isEmpty()) {
        sheet.texts.push_back({fit.text, fit.font, cell, {cell.left(), cell.center().y() + capHeightOf(fit.font) / 2}, false});
    }
    return cell.bottom();
}

double addAttendance(Sheet& sheet, const ProgressReport& report, const QRectF& area)
{
    double y = addReportLine(sheet, reportWords(QT_TRANSLATE_NOOP("Report", "Sessions, by week")), 11, QFont::Bold, {area.left(), area.top(), area.width(), 6});
    std::size_t most = 1;
    for (const checkin::ReportWeek& week : report.weeks) {
        most = std::max(most, week.came.size());
    }
    const double pitch = std::min(4.8, area.width() / static_cast<double>(std::max<std::size_t>(1, report.weeks.size())));
    const double side = pitch * 0.8;
    for (std::size_t w = 0; w < report.weeks.size(); ++w) {
        for (std::size_t s = 0; s < report.weeks[w].came.size(); ++s) {
            const QRectF square(area.left() + static_cast<double>(w) * pitch, y + 1 + static_cast<double>(s) * pitch, side, side);
            if (report.weeks[w].came[s]) {
                QPainterPath black;
                black.addRoundedRect(square, 0.5, 0.5);
                sheet.shapes.push_back(black);
            } else {
                sheet.boxes.push_back({square, 0.25, 0.5});
                QPainterPath cross(square.topLeft() + QPointF(side * 0.3, side * 0.3));
                cross.lineTo(square.bottomRight() - QPointF(side * 0.3, side * 0.3));
                cross.moveTo(square.topRight() + QPointF(-side * 0.3, side * 0.3));
                cross.lineTo(square.bottomLeft() + QPointF(side * 0.3, -side * 0.3));
                sheet.shapes.push_back(strokedPath(cross, 0.3, {}));
            }
        }
    }
    y += 1 + static_cast<double>(most) * pitch;
    return addReportLine(sheet, reportWords(QT_TRANSLATE_NOOP("Report", "Black: came. Cross: missed.")), 8.5, QFont::Medium, {area.left(), y, area.width(), 5});
}

std::vector<Sheet> reportSheets(const ProgressReport& report, PaperSize paper)
{
    Sheet sheet;
    sheet.size = millimetresOf(paper);
    const QRectF area = QRectF(QPointF(), sheet.size).adjusted(kReportSide, kReportTop, -kReportSide, -kReportFoot);
    const QRectF foot(area.left(), area.bottom() - 5, area.width(), 5);
    double y = addReportHead(sheet, report, area) + kSection;
    y = addFigures(sheet, report, {area.left(), y, area.width(), 0}) + kSection;
    y = addReportLine(sheet, reportWords(QT_TRANSLATE_NOOP("Report", "Where each lift stands")), 11, QFont::Bold, {area.left(), y, area.width(), 6});
    y = addLadder(sheet, report, {area.left(), y, area.width(), 0}) + kSection - 1;
    const double room = foot.top() - 2 - y;
    const QRectF band(area.left(), y, area.width(), std::max(40.0, std::min(kLinesHeight, room - kLeastNote - kSection)));
    const double left = band.width() * kLinesShare;
    addLoadLines(sheet, report, {band.left(), band.top(), left, band.height()});
    const QRectF beside(band.left() + left + kSection, band.top(), band.width() - left - kSection, band.height());
    const double next = addAttendance(sheet, report, beside) + 1.5;
    addNext(sheet, report, {beside.left(), next, beside.width(), band.bottom() - next});
    addNoteBox(sheet, report, {area.left(), band.bottom() + kSection, area.width(), foot.top() - 2 - band.bottom() - kSection});
    addReportLine(sheet, reportWords(QT_TRANSLATE_NOOP("Report", "Loads are those of the sets you did, not of a test.")), 8.5, QFont::Medium,
                  {foot.left(), foot.top(), foot.width() * 0.7, foot.height()});
    const QString day = QStringLiteral("%1 %2").arg(common::shortDayText(report.to)).arg(static_cast<int>(report.to.ymd().year()));
    const double wide = widthOf(day, printFont(8.5, QFont::Medium));
    addReportLine(sheet, day, 8.5, QFont::Medium, {foot.right() - wide, foot.top(), wide + 0.1, foot.height()});
    return {sheet};
}

}  // namespace chalk::ui::print
