#include "ui/shell/rail.h"

#include "core/clients/client.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/shell/rail_button.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

namespace chalk::ui::shell {

namespace {

constexpr int kRailWidth80 = 80;
constexpr int kSignHeight = 48;

/// The sign of the program: four rungs of chalk.
void paintSign(QPainter& painter, const common::Theme& theme)
{
    const struct {
        double y;
        double width;
        QColor colour;
    } rungs[] = {{41, 12, theme.railInk.darker(130)}, {31, 20, theme.railInk}, {21, 29, theme.railOn}, {11, 17, theme.chalk}};
    for (const auto& rung : rungs) {
        painter.setPen(QPen(rung.colour, 3.4, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(QPointF(28, 12 + rung.y * 0.75), QPointF(28 + rung.width * 0.75, 12 + rung.y * 0.75));
    }
}

}  // namespace

Rail::Rail(const common::Look& look, const PageRegistry& pages, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_column(new QVBoxLayout(this)),
      m_clientColumn(new QVBoxLayout),
      m_clientCaption(new QLabel(tr("Open"), this)),
      m_clientLine(new QWidget(this))
{
    setFixedWidth(kRailWidth80);
    setAccessibleName(tr("Pages"));
    m_column->setContentsMargins(0, 12 + kSignHeight, 0, 8);
    m_column->setSpacing(0);
    m_clientCaption->setObjectName(QStringLiteral("railCaption"));
    m_clientCaption->setAlignment(Qt::AlignCenter);
    m_clientLine->setFixedHeight(17);
    addPages(pages, RailSlot::Top);
    m_column->addWidget(m_clientLine);
    m_column->addWidget(m_clientCaption);
    m_column->addLayout(m_clientColumn);
    m_column->addStretch();
    addPages(pages, RailSlot::Bottom);
    setOpenClients({});
    connect(&look, &common::Look::changed, this, qOverload<>(&QWidget::update));
}

void Rail::addPages(const PageRegistry& pages, RailSlot slot)
{
    for (const PageEntry& entry : pages.entries()) {
        if (entry.slot != slot) {
            continue;
        }
        auto* button = new RailButton(m_look, RailButtonKind::Page, entry.name, entry.icon, this);
        button->setAccessibleName(entry.name);
        button->setToolTip(entry.shortcut.toString(QKeySequence::NativeText));
        const QString key = entry.key;
        connect(button, &QAbstractButton::clicked, this, [this, key, button] {
            button->setChecked(true);  // a click on the present page leaves it marked
            Q_EMIT pageChosen(key);
        });
        m_pages[key] = button;
        m_column->addWidget(button);
    }
}

void Rail::setPresentPage(const QString& key)
{
    for (const auto& [page, button] : m_pages) {
        button->setChecked(page == key);
    }
}

void Rail::setOpenClients(const OpenClients& clients)
{
    for (RailButton* button : m_clients) {
        button->hide();
        button->deleteLater();
    }
    m_clients.clear();
    for (const OpenClient& client : clients.clients()) {
        const QString initials = common::qstring(clients::initialsOf(client.name.toStdString()));
        auto* button = new RailButton(m_look, RailButtonKind::Client, initials, {}, this);
        button->setToolTip(client.name);
        button->setAccessibleName(tr("Open client: %1").arg(client.name));
        button->setChecked(client.id == clients.present());
        const base::ClientId id = client.id;
        connect(button, &QAbstractButton::clicked, this, [this, id, button] {
            button->setChecked(true);
            Q_EMIT clientChosen(id);
        });
        m_clients.push_back(button);
        m_clientColumn->addWidget(button);
        button->show();
    }
    m_clientCaption->setVisible(!m_clients.empty());
    m_clientLine->setVisible(!m_clients.empty());
}

void Rail::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), theme.rail);
    paintSign(painter, theme);
    if (!m_clients.empty()) {
        painter.setPen(QPen(theme.railLine, 1));
        const double y = m_clientLine->geometry().center().y() + 0.5;
        painter.drawLine(QPointF(20, y), QPointF(width() - 20, y));
    }
}

}  // namespace chalk::ui::shell
