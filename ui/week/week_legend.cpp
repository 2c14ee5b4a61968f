#include "ui/week/week_legend.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"

#include <QPainter>
#include <QStringList>

#include <algorithm>

namespace chalk::ui::week {

namespace {

using common::Theme;

// Pixels at a text size of 100 %.
constexpr double kLegendRow = 24;
constexpr double kLegendPadding = 10;
constexpr double kSwatch = 18;
constexpr int kEntries = 6;
constexpr int kLocked = 4;
constexpr int kRacks = 5;

QStringList legendWords()
{
    return {WeekLegend::tr("Places free"), WeekLegend::tr("Full or done"), WeekLegend::tr("Proposed"), WeekLegend::tr("Conflict"), WeekLegend::tr("Locked"), WeekLegend::tr("Racks")};
}

void paintSwatch(QPainter& painter, const QRectF& rect, int entry, const Theme& theme)
{
    if (entry == kLocked) {
        common::paintIcon(painter, QRectF(rect.center().x() - 7, rect.center().y() - 7, 14, 14), QStringLiteral("lock"), theme.ink2, theme);
        return;
    }
    if (entry == kRacks) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.attDot);
        painter.drawRoundedRect(QRectF(rect.left() + 2, rect.top(), 6, rect.height()), 2, 2);
        painter.setPen(QPen(theme.line2, 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(rect.left() + 10.5, rect.top() + 0.5, 5, rect.height() - 1), 2, 2);
        return;
    }
    const QColor fills[] = {theme.raised, theme.sunken, theme.wash, theme.painBg};
    const QColor edges[] = {theme.line2, theme.line2, theme.mark, theme.pain};
    painter.setPen(QPen(edges[entry], entry < 2 ? 1 : 1.5, entry == 2 ? Qt::DashLine : Qt::SolidLine));
    painter.setBrush(fills[entry]);
    painter.drawRoundedRect(rect.adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
}

}  // namespace

WeekLegend::WeekLegend(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    setAccessibleName(legendWords().join(QStringLiteral(", ")));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&look, &common::Look::changed, this, [this] {
        updateGeometry();
        update();
    });
}

int WeekLegend::columns() const
{
    const Theme& theme = m_look.theme();
    const QFontMetricsF metrics(theme.font(12, QFont::Normal));
    double widest = 0;
    for (const QString& word : legendWords()) {
        widest = std::max(widest, metrics.horizontalAdvance(word));
    }
    return width() >= 2 * (widest + kSwatch + 8) + 2 * theme.scaled(kLegendPadding) ? 2 : 1;
}

QSize WeekLegend::sizeHint() const
{
    const Theme& theme = m_look.theme();
    return {qRound(theme.scaled(200)), qRound(theme.scaled(kLegendRow) * kEntries / columns() + 2 * theme.scaled(kLegendPadding - 2))};
}

void WeekLegend::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    updateGeometry();
}

void WeekLegend::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme& theme = m_look.theme();
    const QStringList words = legendWords();
    const double padding = theme.scaled(kLegendPadding);
    const double wide = (width() - 2 * padding) / columns();
    const double high = theme.scaled(kLegendRow);
    painter.setFont(theme.font(12, QFont::Normal));
    for (int i = 0; i < kEntries; ++i) {
        const QRectF at(padding + i % columns() * wide, padding - 2 + i / columns() * high, wide, high);
        paintSwatch(painter, QRectF(at.left(), at.center().y() - 6, kSwatch, 12), i, theme);
        painter.setPen(theme.ink2);
        painter.drawText(at.adjusted(kSwatch + 6, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, words[i]);
    }
}

}  // namespace chalk::ui::week
