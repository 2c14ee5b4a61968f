#include "ui/common/lift_strip.h"

#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPolygonF>
#include <QStringList>

namespace chalk::ui::common {

namespace {

using progression::Stage;

// Pixels at a text size of 100 %.
constexpr double kStripPitch = 17;
constexpr double kStripPairGap = 7;
constexpr double kStripHeight = 38;
constexpr double kStripRungWidth = 10;
constexpr double kStripRungHeight = 2.4;
constexpr double kStripHeadRoom = 9;  // for the dots of finished cycles
constexpr double kStripRungGap = (kStripHeight - kStripHeadRoom - 7 * kStripRungHeight) / 6;
constexpr int kStripColumns = 8;

constexpr const char* kStripCaptions[kStripColumns] = {
    QT_TRANSLATE_NOOP("LiftStrip", "Sq"), QT_TRANSLATE_NOOP("LiftStrip", "Hi"), QT_TRANSLATE_NOOP("LiftStrip", "HP"),
    QT_TRANSLATE_NOOP("LiftStrip", "HL"), QT_TRANSLATE_NOOP("LiftStrip", "VP"), QT_TRANSLATE_NOOP("LiftStrip", "VL"),
    QT_TRANSLATE_NOOP("LiftStrip", "1L"), QT_TRANSLATE_NOOP("LiftStrip", "Ca")};

QString stripWords(const char* text)
{
    return QCoreApplication::translate("LiftStrip", text);
}

double stripCentre(int column)
{
    return column * kStripPitch + column / 2 * kStripPairGap + kStripPitch / 2;
}

/// The top of a rung, 1 at the foot.
double rungTop(int rung)
{
    return kStripHeight - 1.5 - kStripRungHeight - (rung - 1) * (kStripRungHeight + kStripRungGap);
}

void paintRungs(QPainter& painter, double centre, std::optional<Stage> stage, const Theme& theme)
{
    for (const Stage rung : progression::kStages) {
        const bool isPresent = rung == stage;
        const double width = isPresent ? kStripRungWidth + 4 : kStripRungWidth - 2;
        const double height = isPresent ? kStripRungHeight + 2.2 : kStripRungHeight;
        const double top = rungTop(progression::numberOf(rung)) - (isPresent ? 1.1 : 0);
        painter.setBrush(isPresent ? theme.stage(rung) : rung < stage ? theme.rungPast : theme.line);
        painter.drawRoundedRect(QRectF(centre - width / 2, top, width, height), height / 2, height / 2);
    }
}

void paintCycles(QPainter& painter, double centre, int cycle, const Theme& theme)
{
    const int finished = std::min(cycle - 1, 3);  // more would run into the neighbour; the words have the number
    painter.setBrush(theme.ink2);
    for (int i = 0; i < finished; ++i) {
        painter.drawEllipse(QPointF(centre + (i - (finished - 1) / 2.0) * 5, 2.4), 1.7, 1.7);
    }
}

void paintMark(QPainter& painter, double centre, const LiftStripColumn& column, const Theme& theme)
{
    const double top = rungTop(progression::numberOf(*column.stage));
    if (column.mark == LiftMark::Pain) {
        painter.setPen(QPen(theme.surface, 1));
        painter.setBrush(theme.pain);
        painter.drawPolygon(QPolygonF({{centre - 4.5, top - 10}, {centre + 4.5, top - 10}, {centre, top - 3.5}}));
    } else if (column.mark == LiftMark::Plateau) {
        painter.setPen(QPen(theme.warn, 1.7, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QPointF(centre - 5, top - 6), QPointF(centre + 5, top - 6));
        painter.drawLine(QPointF(centre - 5, top - 9), QPointF(centre - 5, top - 3));
        painter.drawLine(QPointF(centre + 5, top - 9), QPointF(centre + 5, top - 3));
    }
    painter.setPen(Qt::NoPen);
}

/// Makes one unit of the strip one unit of the painter.
void enterStrip(QPainter& painter, const QRectF& rect, const Theme& theme)
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(rect.left(), rect.center().y() - theme.scaled(kStripHeight) / 2);
    painter.scale(theme.scaled(1), theme.scaled(1));
    painter.setPen(Qt::NoPen);
}

}  // namespace

QSizeF liftStripSize(const Theme& theme)
{
    return {theme.scaled(stripCentre(kStripColumns - 1) + kStripPitch / 2), theme.scaled(kStripHeight)};
}

void paintLiftStrip(QPainter& painter, const QRectF& rect, const LiftStripView& view, const Theme& theme)
{
    painter.save();
    enterStrip(painter, rect, theme);
    for (int i = 0; i < kStripColumns; ++i) {
        const LiftStripColumn& column = view.lifts[static_cast<std::size_t>(i)];
        const double centre = stripCentre(i);
        if (!column.stage) {
            painter.setBrush(theme.line2);
            painter.drawRect(QRectF(centre - 3, kStripHeight - 2.75, 6, 1.5));
            continue;
        }
        paintRungs(painter, centre, *column.stage, theme);
        paintCycles(painter, centre, column.cycle, theme);
        paintMark(painter, centre, column, theme);
    }
    painter.restore();
}

void paintUnclimbedStrip(QPainter& painter, const QRectF& rect, const Theme& theme)
{
    painter.save();
    enterStrip(painter, rect, theme);
    for (int i = 0; i < kStripColumns; ++i) {
        paintRungs(painter, stripCentre(i), std::nullopt, theme);
    }
    painter.restore();
}

void paintLiftStripCaptions(QPainter& painter, const QRectF& rect, const Theme& theme)
{
    painter.save();
    painter.setFont(theme.font(12, QFont::Medium));
    painter.setPen(theme.ink3);
    for (int i = 0; i < kStripColumns; ++i) {
        const double centre = rect.left() + theme.scaled(stripCentre(i));
        const double half = theme.scaled(kStripPitch);
        painter.drawText(QRectF(centre - half, rect.top(), 2 * half, rect.height()), Qt::AlignCenter, stripWords(kStripCaptions[i]));
    }
    painter.restore();
}

std::optional<lifts::Pattern> liftStripHit(const QRectF& rect, double x, const Theme& theme)
{
    for (int i = 0; i < kStripColumns; ++i) {
        if (std::abs((x - rect.left()) / theme.scaled(1) - stripCentre(i)) <= kStripPitch / 2) {
            return lifts::kPatterns[static_cast<std::size_t>(i)];
        }
    }
    return std::nullopt;
}

QString liftStripColumnText(lifts::Pattern pattern, const LiftStripColumn& column)
{
    if (!column.stage) {
        return stripWords(QT_TRANSLATE_NOOP("LiftStrip", "%1: not screened yet")).arg(patternName(pattern));
    }
    QString text = stripWords(QT_TRANSLATE_NOOP("LiftStrip", "%1: %2 %3"))
                       .arg(patternName(pattern), QString::number(progression::numberOf(*column.stage)), stageName(*column.stage));
    if (column.cycle > 1) {
        text += stripWords(QT_TRANSLATE_NOOP("LiftStrip", ", cycle %1")).arg(column.cycle);
    }
    if (column.mark == LiftMark::Pain) {
        text += stripWords(QT_TRANSLATE_NOOP("LiftStrip", ", pain"));
    } else if (column.mark == LiftMark::Plateau) {
        text += stripWords(QT_TRANSLATE_NOOP("LiftStrip", ", plateau"));
    }
    return text;
}

QString liftStripText(const LiftStripView& view)
{
    QStringList phrases;
    for (const lifts::Pattern pattern : lifts::kPatterns) {
        phrases.append(liftStripColumnText(pattern, view.lifts[static_cast<std::size_t>(pattern)]));
    }
    return phrases.join(QStringLiteral("; "));
}

}  // namespace chalk::ui::common
