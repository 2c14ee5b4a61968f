#include "ui/trends/chart_export.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QSvgGenerator>

namespace chalk::ui::trends {

namespace {

constexpr double kExportEdge = 16;
constexpr double kExportTitle = 32;
constexpr int kExportScale = 2;

QSize exportSize(const NamedChart& chart)
{
    return QSizeF(chart.size.width() + 2 * kExportEdge, chart.size.height() + 2 * kExportEdge + kExportTitle).toSize();
}

void paintExport(QPainter& painter, const NamedChart& chart, const common::Theme& theme)
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRectF(QPointF(), QSizeF(exportSize(chart))), theme.surface);
    painter.setFont(theme.font(common::TextStyle::Section));
    painter.setPen(theme.ink);
    painter.drawText(QRectF(kExportEdge, kExportEdge / 2, chart.size.width(), kExportTitle), Qt::AlignLeft | Qt::AlignVCenter, chart.title);
    painter.translate(kExportEdge, kExportEdge + kExportTitle);
    chart.paint(painter, QRectF(QPointF(), chart.size), theme);
}

}  // namespace

QByteArray pngOf(const NamedChart& chart, const common::Theme& theme)
{
    QImage image(exportSize(chart) * kExportScale, QImage::Format_RGB32);
    image.setDevicePixelRatio(kExportScale);
    QPainter painter(&image);
    paintExport(painter, chart, theme);
    painter.end();
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return buffer.data();
}

QByteArray svgOf(const NamedChart& chart, const common::Theme& theme)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setTitle(chart.title.toHtmlEscaped());
    generator.setSize(exportSize(chart));
    generator.setViewBox(QRect(QPoint(), exportSize(chart)));
    QPainter painter(&generator);
    paintExport(painter, chart, theme);
    painter.end();
    return buffer.data();
}

}  // namespace chalk::ui::trends
