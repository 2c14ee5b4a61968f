#pragma once

#include <QFont>
#include <QLineF>
#include <QPainterPath>
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QString>

#include <vector>

class QPainter;

namespace chalk::ui::print {

/// How thick the lines of a sheet are, in millimetres.
inline constexpr double kHeavyStroke = 0.7;
inline constexpr double kRuleStroke = 0.5;
inline constexpr double kBoxStroke = 0.4;

/// One line of text. Its ink stays inside `cell`, and the cells of a sheet do not overlap.
struct SheetText {
    QString text;
    QFont font;            ///< made by printFont
    QRectF cell;           ///< millimetres
    QPointF baseline;      ///< where the first letter stands, millimetres
    bool isWhite = false;  ///< on black
};

/// A box with a line around it.
struct SheetBox {
    QRectF outside;  ///< the outer edge of the line, millimetres
    double stroke = kBoxStroke;
    double radius = 1;
};

/// A straight line.
struct SheetRule {
    QLineF line;  ///< millimetres
    double stroke = kRuleStroke;
};

/// One printed page: what stands where, in millimetres from its top left corner, black on white. It holds no painter and no
/// device, so that paper, PDF and preview show the same, and a test can look at every text.
struct Sheet {
    QSizeF size;
    std::vector<SheetText> texts;
    std::vector<SheetBox> boxes;
    std::vector<SheetRule> rules;
    std::vector<QPainterPath> shapes;  ///< filled black
};

/// Draws a sheet with its top left corner at `corner`. The painter's unit is the millimetre; its state is as before afterwards.
void paintSheet(QPainter& painter, const Sheet& sheet, const QPointF& corner);

}  // namespace chalk::ui::print
