#include "ui/print/cut_line.h"

#include <QPen>

namespace chalk::ui::print {

QPainterPath strokedPath(const QPainterPath& path, double stroke, const QList<double>& dashes)
{
    QPen pen(Qt::black, stroke, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    if (!dashes.isEmpty()) {
        // A pen counts its dashes in its own widths.
        QList<double> inWidths;
        for (const double length : dashes) {
            inWidths.append(length / stroke);
        }
        pen.setDashPattern(inWidths);
    }
    QPainterPathStroker stroker(pen);
    stroker.setCurveThreshold(0.01);
    return stroker.createStroke(path);
}

void addCutLine(Sheet& sheet, const QLineF& line)
{
    QPainterPath path(line.p1());
    path.lineTo(line.p2());
    sheet.shapes.push_back(strokedPath(path, 0.25, {2, 1.5}));
}

}  // namespace chalk::ui::print
