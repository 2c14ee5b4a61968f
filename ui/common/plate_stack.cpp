#include "ui/common/plate_stack.h"

#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QStringList>

#include <algorithm>

namespace chalk::ui::common {

namespace {

constexpr double kStackHeight = 52;
constexpr double kStackLabelHeight = 14;
constexpr double kSleeveStart = 46;  // where the first plate stands
constexpr double kSleeveEnd = 20;    // what sticks out beyond the last plate

/// How a plate is drawn: pixels at a text size of 100 %.
struct PlateShape {
    double kilograms;
    double height;
    double width;
};

// Heights follow the masses only as far as they can be told apart at a glance; the number stands below.
constexpr PlateShape kPlateShapes[] = {{25, 46, 12}, {20, 46, 10}, {15, 40, 9}, {10, 34, 8}, {5, 26, 7}, {2.5, 20, 6}, {1.25, 15, 5}};
constexpr PlateShape kLeastPlate{0, 11, 4};

PlateShape shapeOf(base::Load plate, base::MassUnit unit)
{
    const double kilograms = base::Mass::of(plate, unit).kilograms();
    for (const PlateShape& shape : kPlateShapes) {
        if (kilograms > shape.kilograms * 0.88) {  // 45 lb is drawn as 20 kg, 10 lb as 5 kg
            return shape;
        }
    }
    return kLeastPlate;
}

/// Where a plate stands, and the room that it and its label take.
struct PlacedPlate {
    QRectF body;
    double labelCentre = 0;
    QString label;
};

struct PlateLayout {
    std::vector<PlacedPlate> plates;
    double axis = 0;
    double end = 0;  ///< where the clip is drawn
};

PlateLayout layoutOf(const PlateStackView& view, const Theme& theme)
{
    const QFontMetricsF metrics(theme.font(12, QFont::DemiBold));
    PlateLayout layout;
    layout.axis = (kStackHeight - (view.isLabelled ? kStackLabelHeight : 0)) / 2;
    double x = kSleeveStart;
    for (const base::Load plate : view.plates) {
        const PlateShape shape = shapeOf(plate, view.unit);
        const QString label = numberText(plate);
        const double height = shape.height * (view.isLabelled ? 0.78 : 1.0);
        const double width = shape.width + (view.isLabelled ? 11 : -1);
        const double labelWidth = view.isLabelled ? metrics.horizontalAdvance(label) / theme.scaled(1) + 6 : 0;
        const double room = std::max(width + 3, labelWidth);
        const double left = x + (room - 3 - width) / 2;
        layout.plates.push_back({QRectF(left, layout.axis - height / 2, width, height), left + width / 2, label});
        x += room;
    }
    layout.end = x + 2;
    return layout;
}

void paintSleeve(QPainter& painter, const PlateLayout& layout, const Theme& theme)
{
    painter.setPen(QPen(theme.ink, 4, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(2, layout.axis), QPointF(40, layout.axis));
    QColor faint = theme.ink;
    if (theme.tone != Tone::Print) {
        faint.setAlphaF(0.55F);
    }
    painter.setPen(QPen(faint, 3, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(43, layout.axis), QPointF(layout.end + kSleeveEnd - 4, layout.axis));
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.ink);
    painter.drawRoundedRect(QRectF(38, layout.axis - 7, 5, 14), 1.5, 1.5);
}

}  // namespace

QSizeF plateStackSize(const PlateStackView& view, const Theme& theme)
{
    return {theme.scaled(layoutOf(view, theme).end + kSleeveEnd), theme.scaled(kStackHeight)};
}

void paintPlateStack(QPainter& painter, const QRectF& rect, const PlateStackView& view, const Theme& theme)
{
    const PlateLayout layout = layoutOf(view, theme);
    const QSizeF size = plateStackSize(view, theme);
    const double fit = std::min({1.0, rect.width() / size.width(), rect.height() / size.height()});
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(rect.left(), rect.center().y() - size.height() * fit / 2);
    painter.scale(theme.scaled(fit), theme.scaled(fit));
    paintSleeve(painter, layout, theme);
    Theme unscaled = theme;
    unscaled.textPercent = 100;
    painter.setFont(unscaled.font(12, QFont::DemiBold));
    for (const PlacedPlate& plate : layout.plates) {
        painter.setPen(QPen(theme.ink, 1.5));
        painter.setBrush(theme.sunken);
        painter.drawRoundedRect(plate.body, 2.5, 2.5);
        if (view.isLabelled) {
            painter.drawText(QRectF(plate.labelCentre - 30, kStackHeight - kStackLabelHeight - 1, 60, kStackLabelHeight + 1),
                             Qt::AlignHCenter | Qt::AlignBottom, plate.label);
        }
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.ink);
    painter.drawRoundedRect(QRectF(layout.end, layout.axis - 5, 6, 10), 1.5, 1.5);
    painter.restore();
}

QString plateStackText(const PlateStackView& view)
{
    QStringList plates;
    for (const base::Load plate : view.plates) {
        plates.append(numberText(plate));
    }
    return plates.isEmpty() ? QCoreApplication::translate("PlateStack", "no plates") : plates.join(QStringLiteral(" + "));
}

}  // namespace chalk::ui::common
