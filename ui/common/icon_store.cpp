#include "ui/common/icon_store.h"

#include "ui/common/theme.h"

#include <QFile>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QSvgRenderer>

#include <algorithm>

namespace chalk::ui::common {

namespace {

constexpr qsizetype kMostDrawnIcons = 2000;  // a bound against ever new sizes and colours, far above what one look needs

QString iconPath(const QString& name)
{
    return QStringLiteral(":/chalkrung/icons/%1.svg").arg(name);
}

QByteArray svgIn(const QString& name, const QColor& colour)
{
    QFile file(iconPath(name));
    if (!file.open(QIODevice::ReadOnly)) {
        return {};
    }
    return file.readAll().replace("currentColor", colour.name().toLatin1());
}

QPixmap drawnIcon(const QByteArray& svg, int px, double opacity, qreal devicePixelRatio)
{
    QPixmap pixmap(QSize(px, px) * devicePixelRatio);
    pixmap.setDevicePixelRatio(devicePixelRatio);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setOpacity(opacity);
    QSvgRenderer(svg).render(&painter, QRectF(0, 0, px, px));
    return pixmap;
}

}  // namespace

QPixmap IconStore::pixmap(const QString& name, int px, const QColor& colour, qreal devicePixelRatio) const
{
    const QString key = QStringLiteral("%1/%2/%3/%4").arg(name).arg(px).arg(colour.name(QColor::HexArgb)).arg(devicePixelRatio);
    if (const auto found = m_drawn.constFind(key); found != m_drawn.constEnd()) {
        return *found;
    }
    const QByteArray svg = svgIn(name, colour);
    if (svg.isEmpty() || px <= 0) {
        return {};
    }
    const QPixmap pixmap = drawnIcon(svg, px, colour.alphaF(), devicePixelRatio);
    if (m_drawn.size() >= kMostDrawnIcons) {
        m_drawn.clear();
    }
    m_drawn.insert(key, pixmap);
    return pixmap;
}

bool IconStore::has(const QString& name)
{
    return QFile::exists(iconPath(name));
}

void paintIcon(QPainter& painter, const QRectF& rect, const QString& name, const QColor& colour, const Theme& theme)
{
    const double side = std::min(rect.width(), rect.height());
    const QRectF square(rect.center() - QPointF(side / 2, side / 2), QSizeF(side, side));
    const QPaintEngine* engine = painter.paintEngine();
    if (theme.tone == Tone::Print || theme.icons == nullptr || engine == nullptr || engine->type() == QPaintEngine::Pdf) {
        QSvgRenderer(svgIn(name, colour)).render(&painter, square);
        return;
    }
    painter.drawPixmap(square.topLeft(),
                       theme.icons->pixmap(name, qRound(side), colour, painter.device()->devicePixelRatioF()));
}

}  // namespace chalk::ui::common
