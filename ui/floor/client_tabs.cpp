#include "ui/floor/client_tabs.h"

#include "ui/common/look.h"
#include "ui/common/tags.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QSignalBlocker>

namespace chalk::ui::floor {

namespace {

constexpr double kTabHeight = 44;
constexpr double kTabSide = 16;
constexpr double kTabGapToPips = 8;

}  // namespace

ClientTabs::ClientTabs(const common::Look& look, QWidget* parent) : QTabBar(parent), m_look(look)
{
    setDrawBase(false);
    setExpanding(false);
    setUsesScrollButtons(true);
    setAccessibleName(tr("Clients of this session"));
    connect(&look, &common::Look::changed, this, qOverload<>(&QWidget::update));
}

void ClientTabs::setClients(const std::vector<ClientTab>& clients, int chosen)
{
    const QSignalBlocker quiet(this);
    m_clients = clients;
    while (count() > static_cast<int>(clients.size())) {
        removeTab(count() - 1);
    }
    for (int i = 0; i < static_cast<int>(clients.size()); ++i) {
        const ClientTab& one = clients[static_cast<std::size_t>(i)];
        if (i >= count()) {
            addTab(one.name);
        }
        setTabText(i, one.name);
        setAccessibleTabName(i, tr("%1, %2 of %3 lifts done").arg(one.name).arg(one.done).arg(one.lifts));
    }
    setCurrentIndex(chosen);
    updateGeometry();
    update();
}

QSize ClientTabs::tabSizeHint(int index) const
{
    const common::Theme& theme = m_look.theme();
    const ClientTab one = index < static_cast<int>(m_clients.size()) ? m_clients[static_cast<std::size_t>(index)] : ClientTab();
    const double name = QFontMetricsF(theme.font(14, QFont::DemiBold)).horizontalAdvance(one.name);
    const double pips = one.lifts > 0 ? theme.scaled(kTabGapToPips) + common::pipsWidth(one.lifts, theme) : 0;
    return {qCeil(name + pips + theme.scaled(2 * kTabSide)), qRound(theme.scaled(kTabHeight))};
}

void ClientTabs::paintTab(QPainter& painter, int index) const
{
    const common::Theme& theme = m_look.theme();
    const ClientTab& one = m_clients[static_cast<std::size_t>(index)];
    const QRectF tab = tabRect(index);
    const bool isOn = index == currentIndex();
    if (isOn) {
        painter.fillRect(tab, theme.surface);
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.mark);
        painter.drawRoundedRect(QRectF(tab.left() + 12, tab.bottom() - 3, tab.width() - 24, 3), 1.5, 1.5);
    }
    painter.fillRect(QRectF(tab.right() - 1, tab.top(), 1, tab.height()), theme.line);
    const QFont font = theme.font(14, isOn ? QFont::DemiBold : QFont::Medium);
    painter.setFont(font);
    painter.setPen(isOn ? theme.ink : theme.ink2);
    const double left = tab.left() + theme.scaled(kTabSide);
    painter.drawText(QRectF(left, tab.top(), tab.width(), tab.height()), Qt::AlignVCenter, one.name);
    const double pips = left + QFontMetricsF(font).horizontalAdvance(one.name) + theme.scaled(kTabGapToPips);
    common::paintPips(painter, QRectF(pips, tab.top(), tab.right() - pips, tab.height()), {one.done, one.lifts, theme.attDot}, theme);
    if (isOn && hasFocus()) {
        painter.setPen(QPen(theme.focus, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(tab.adjusted(3, 3, -4, -5), 4, 4);
    }
}

void ClientTabs::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (int i = 0; i < std::min(count(), static_cast<int>(m_clients.size())); ++i) {
        paintTab(painter, i);
    }
}

}  // namespace chalk::ui::floor
