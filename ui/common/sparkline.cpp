#include "ui/common/sparkline.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPolygonF>

#include <algorithm>

namespace chalk::ui::common {

namespace {

constexpr double kSparkWidth = 60;
constexpr double kSparkHeight = 28;
constexpr double kSparkTextAt = 70;

struct SparkRange {
    double low = 0;
    double high = 0;
    int count = 0;
};

SparkRange rangeOf(const SparklineView& view)
{
    SparkRange range;
    for (const std::optional<double>& value : view.values) {
        if (value) {
            range.low = range.count == 0 ? *value : std::min(range.low, *value);
            range.high = range.count == 0 ? *value : std::max(range.high, *value);
            ++range.count;
        }
    }
    return range;
}

void paintSparkPieces(QPainter& painter, const SparklineView& view, const SparkRange& range, const Theme& theme)
{
    const double span = range.high - range.low;
    const double step = (kSparkWidth - 8) / static_cast<double>(view.values.size() - 1);
    QPolygonF piece;
    QPointF last;
    for (std::size_t i = 0; i < view.values.size(); ++i) {
        if (!view.values[i]) {
            painter.drawPolyline(piece);
            piece.clear();
            continue;
        }
        const double height = span > 0 ? (*view.values[i] - range.low) / span : 0.5;
        last = QPointF(3 + static_cast<double>(i) * step, kSparkHeight - 4 - height * (kSparkHeight - 8));
        piece.append(last);
    }
    painter.drawPolyline(piece);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.ink2);
    painter.drawEllipse(last, 2.6, 2.6);
}

}  // namespace

void paintSparkline(QPainter& painter, const QRectF& rect, const SparklineView& view, const Theme& theme)
{
    const SparkRange range = rangeOf(view);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    double textLeft = rect.left();
    if (range.count >= 2) {
        painter.save();
        painter.translate(rect.left(), rect.center().y() - theme.scaled(kSparkHeight) / 2);
        painter.scale(theme.scaled(1), theme.scaled(1));
        painter.setPen(QPen(theme.line, 1));
        painter.drawLine(QPointF(3, kSparkHeight - 1.5), QPointF(kSparkWidth - 5, kSparkHeight - 1.5));
        painter.setPen(QPen(theme.ink2, 1.75, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        paintSparkPieces(painter, view, range, theme);
        painter.restore();
        textLeft += theme.scaled(kSparkTextAt);
    }
    const QFont font = theme.font(13, view.isFall ? QFont::DemiBold : QFont::Normal);
    const QRectF textRect(textLeft, rect.top(), std::max(0.0, rect.right() - textLeft), rect.height());
    painter.setFont(font);
    painter.setPen(view.isFall ? theme.warn : theme.ink2);
    painter.drawText(textRect, Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetricsF(font).elidedText(view.change, Qt::ElideRight, textRect.width()));
    painter.restore();
}

}  // namespace chalk::ui::common
