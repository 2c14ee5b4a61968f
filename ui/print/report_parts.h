#pragma once

#include "core/checkin/progress_report.h"
#include "ui/print/sheet.h"

#include <QRectF>
#include <QString>

namespace chalk::ui::print {

// The parts that a progress report is laid out from. Each begins at the top of its area and answers its lower edge.

/// A line of type at the left of a cell; answers its lower edge.
double addReportLine(Sheet& sheet, const QString& text, double points, QFont::Weight weight, const QRectF& cell);
/// Where each lift stood (an open circle) and stands (black): seven rungs, a column for each lift, at most kMostReportLifts.
double addLadder(Sheet& sheet, const checkin::ProgressReport& report, const QRectF& area);
/// The loads of at most three lifts that rose, told apart by their dash, each named at its end. Nothing where none rose.
double addLoadLines(Sheet& sheet, const checkin::ProgressReport& report, const QRectF& area);
/// A black square for each session that was come to, a cross for each missed, a column for each week.
double addAttendance(Sheet& sheet, const checkin::ProgressReport& report, const QRectF& area);

}  // namespace chalk::ui::print
