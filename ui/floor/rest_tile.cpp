#include "ui/floor/rest_tile.h"

#include "ui/common/action_button.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"

#include <QAccessible>
#include <QFontMetricsF>
#include <QHBoxLayout>
#include <QPainter>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using common::Theme;

constexpr double kTilePad = 12;
constexpr double kTileTop = 8;
constexpr double kRowDigits = 48;
constexpr double kAloneDigits = 64;
constexpr double kWordPx = 15;
constexpr double kWordGap = 8;
constexpr double kLeastNamePx = 12;
constexpr double kDigitsLine = 1.1;  ///< the height of a line of digits, in their size
constexpr double kRestNameLine = 1.4;
constexpr double kWallNamePart = 0.2;  ///< the size of the name on the wall, in that of the digits
constexpr double kMostWallName = 48;
constexpr double kButtonsHeight = 32;
constexpr double kButtonsWidth = 112;  ///< three of them

double advance(const QString& text, const QFont& font)
{
    return QFontMetricsF(font).horizontalAdvance(text);
}

/// A font of a size on the screen, whatever the size of the text.
QFont screenFont(const Theme& theme, double px, QFont::Weight weight)
{
    return theme.font(px / theme.scaled(1), weight);
}

double barHeight(RestTileSize size)
{
    return size == RestTileSize::Wall ? 16 : size == RestTileSize::Alone ? 8 : 6;
}

}  // namespace

RestTile::RestTile(const common::Look& look, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_hold(new common::ActionButton(look, QString(), this)),
      m_again(new common::ActionButton(look, QString(), this)),
      m_stop(new common::ActionButton(look, QString(), this))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 8, 8, 8);
    row->setSpacing(4);
    row->addStretch(1);
    for (common::ActionButton* button : {m_hold, m_again, m_stop}) {
        button->setButtonSize(common::ButtonSize::Small);
        row->addWidget(button, 0, Qt::AlignTop);
    }
    m_again->setIconName(QStringLiteral("again"));
    m_stop->setIconName(QStringLiteral("cross"));
    connect(m_hold, &QPushButton::clicked, this, [this] { Q_EMIT holdAsked(m_rest.plan.client); });
    connect(m_again, &QPushButton::clicked, this, [this] { Q_EMIT restartAsked(m_rest.plan.client); });
    connect(m_stop, &QPushButton::clicked, this, [this] { Q_EMIT stopAsked(m_rest.plan.client); });
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&look, &common::Look::changed, this, &RestTile::dress);
}

void RestTile::setRest(const Rest& rest)
{
    if (rest == m_rest) {
        return;
    }
    const bool isOther = rest.plan != m_rest.plan || rest.isOver != m_rest.isOver || rest.isHeld != m_rest.isHeld;
    m_rest = rest;
    if (isOther) {
        nameButtons();
        announce();
    }
    update();
}

void RestTile::setTileSize(RestTileSize size)
{
    if (size != m_size) {
        m_size = size;
        setSizePolicy(QSizePolicy::Expanding, size == RestTileSize::Wall ? QSizePolicy::Expanding : QSizePolicy::Fixed);
        dress();
    }
}

void RestTile::dress()
{
    updateGeometry();
    update();
}

void RestTile::nameButtons()
{
    const QString who = m_rest.plan.firstName;
    const auto name = [](common::ActionButton* button, const QString& words) {
        button->setAccessibleName(words);
        button->setToolTip(words);
    };
    m_hold->setIconName(m_rest.isHeld ? QStringLiteral("go-on") : QStringLiteral("hold"));
    name(m_hold, m_rest.isHeld ? tr("Let the rest of %1 go on").arg(who) : tr("Hold the rest of %1").arg(who));
    name(m_again, tr("Start the rest of %1 again").arg(who));
    name(m_stop, tr("Stop the rest of %1").arg(who));
    setToolTip(QStringLiteral("%1 · %2").arg(who, m_rest.plan.lift));
}

void RestTile::announce()
{
    const QString state = m_rest.isOver ? tr("rest over") : tr("rest of %1").arg(common::restText(m_rest.plan.planned));
    const QString text = QStringLiteral("%1, %2: %3").arg(m_rest.plan.firstName, m_rest.plan.lift, state);
    setAccessibleName(m_rest.isHeld ? tr("%1, held").arg(text) : text);
    if (isVisible()) {
        QAccessibleEvent event(this, QAccessible::Alert);
        QAccessible::updateAccessibility(&event);
    }
}

QString RestTile::digits() const
{
    return common::restText(m_rest.isOver ? m_rest.over : m_rest.left);
}

QString RestTile::word() const
{
    if (m_rest.isOver) {
        return m_rest.isHeld ? tr("held, over by") : tr("over by");
    }
    return m_rest.isHeld ? tr("held") : tr("of %1").arg(common::restText(m_rest.plan.planned));
}

double RestTile::digitsPx() const
{
    const Theme& theme = m_look.theme();
    const double wanted = m_size == RestTileSize::Wall ? timeRect().height() / kDigitsLine : theme.scaled(m_size == RestTileSize::Alone ? kAloneDigits : kRowDigits);
    const bool isWordBeside = m_size != RestTileSize::Wall;
    const double besides = isWordBeside ? advance(word(), theme.font(kWordPx, QFont::DemiBold)) + theme.scaled(kWordGap) : 0;
    constexpr double kTry = 100;
    const double width = advance(digits(), screenFont(theme, kTry, QFont::Bold)) / kTry;
    return std::min(wanted, (timeRect().width() - besides) / width);
}

double RestTile::namePx() const
{
    const Theme& theme = m_look.theme();
    switch (m_size) {
    case RestTileSize::Row:
        return theme.scaled(15);
    case RestTileSize::Alone:
        return theme.scaled(18);
    case RestTileSize::Wall:
        break;
    }
    return std::clamp(height() * kWallNamePart / 2, theme.scaled(18), theme.scaled(kMostWallName));
}

QRectF RestTile::barRect() const
{
    const Theme& theme = m_look.theme();
    const double pad = theme.scaled(kTilePad);
    const double thick = theme.scaled(barHeight(m_size));
    return {pad, height() - theme.scaled(10) - thick, width() - 2 * pad, thick};
}

QRectF RestTile::nameRect() const
{
    const double pad = m_look.theme().scaled(kTilePad);
    const double line = namePx() * kRestNameLine;
    return {pad, barRect().top() - m_look.theme().scaled(4) - line, width() - 2 * pad, line};
}

QRectF RestTile::timeRect() const
{
    const Theme& theme = m_look.theme();
    const double pad = theme.scaled(kTilePad);
    if (m_size == RestTileSize::Wall) {
        const double top = theme.scaled(kTileTop + kButtonsHeight + 4);
        return {pad, top, width() - 2 * pad, nameRect().top() - top};
    }
    return {pad, theme.scaled(kTileTop), m_hold->x() - theme.scaled(8) - pad, nameRect().top() - theme.scaled(kTileTop)};
}

int RestTile::rowWidth(const Theme& theme)
{
    const double digits = advance(QStringLiteral("00:00"), theme.font(kRowDigits, QFont::Bold));
    const double word = advance(tr("over by"), theme.font(kWordPx, QFont::DemiBold));
    return qCeil(digits + word + theme.scaled(kWordGap + kTilePad + kTileTop + kButtonsWidth));
}

QSize RestTile::sizeHint() const
{
    const Theme& theme = m_look.theme();
    const double digits = theme.scaled(m_size == RestTileSize::Alone ? kAloneDigits : kRowDigits);
    const double name = m_size == RestTileSize::Wall ? theme.scaled(18) : namePx();
    const double above = m_size == RestTileSize::Wall ? theme.scaled(kButtonsHeight + 4) : 0;
    const double height = theme.scaled(kTileTop + 4 + 10 + barHeight(m_size)) + above + digits * kDigitsLine + name * kRestNameLine;
    return {rowWidth(theme), qCeil(height)};
}

QSize RestTile::minimumSizeHint() const
{
    return sizeHint();
}

void RestTile::paintEvent(QPaintEvent* /*event*/)
{
    const Theme& theme = m_look.theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_rest.isOver ? theme.chalk : theme.line2, 1));
    painter.setBrush(m_rest.isOver ? theme.chalk : theme.surface);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
    paintTime(painter);
    paintName(painter);
    paintBar(painter);
}

void RestTile::paintTime(QPainter& painter) const
{
    const Theme& theme = m_look.theme();
    const QRectF rect = timeRect();
    const QFont large = screenFont(theme, digitsPx(), QFont::Bold);
    const QFont small = theme.font(m_size == RestTileSize::Wall ? 20 : kWordPx, QFont::DemiBold);
    const QFontMetricsF metrics(large);
    const double base = rect.center().y() + metrics.capHeight() / 2;
    painter.setPen(m_rest.isOver ? theme.chalkInk : m_rest.isHeld ? theme.ink2 : theme.ink);
    painter.setFont(large);
    if (m_size == RestTileSize::Wall) {
        painter.drawText(QPointF(rect.center().x() - metrics.horizontalAdvance(digits()) / 2, base), digits());
        painter.setFont(small);
        const double line = theme.scaled(kButtonsHeight);
        painter.drawText(QRectF(rect.left(), theme.scaled(kTileTop), m_hold->x() - rect.left(), line), Qt::AlignVCenter, word());
        return;
    }
    // As it is read: `over by 0:12`, `1:20 of 2:30`.
    const double gap = theme.scaled(kWordGap);
    const double digitsLeft = m_rest.isOver ? rect.left() + advance(word(), small) + gap : rect.left();
    const double wordLeft = m_rest.isOver ? rect.left() : rect.left() + metrics.horizontalAdvance(digits()) + gap;
    painter.drawText(QPointF(digitsLeft, base), digits());
    painter.setFont(small);
    painter.setPen(m_rest.isOver ? theme.chalkInk : theme.ink2);
    painter.drawText(QPointF(wordLeft, base), word());
}

void RestTile::paintName(QPainter& painter) const
{
    const Theme& theme = m_look.theme();
    const QRectF rect = nameRect();
    const QString name = m_rest.plan.firstName + QStringLiteral("  ");
    double px = namePx();
    const double least = theme.scaled(kLeastNamePx);
    const auto wide = [&](double size) {
        return advance(name, screenFont(theme, size, QFont::DemiBold)) + advance(m_rest.plan.lift, screenFont(theme, size, QFont::Normal));
    };
    while (px > least && wide(px) > rect.width()) {
        px -= 1;
    }
    px = std::max(px, least);
    const QFont bold = screenFont(theme, px, QFont::DemiBold);
    const QFont plain = screenFont(theme, px, QFont::Normal);
    const QString who = QFontMetricsF(bold).elidedText(name, Qt::ElideRight, rect.width());
    const double whole = std::min(rect.width(), wide(px));
    const double left = m_size == RestTileSize::Wall ? rect.center().x() - whole / 2 : rect.left();
    const double used = advance(who, bold);
    painter.setPen(m_rest.isOver ? theme.chalkInk : theme.ink);
    painter.setFont(bold);
    painter.drawText(QRectF(left, rect.top(), rect.right() - left, rect.height()), Qt::AlignVCenter, who);
    painter.setFont(plain);
    painter.setPen(m_rest.isOver ? theme.chalkInk : theme.ink2);
    const QRectF after(left + used, rect.top(), rect.right() - left - used, rect.height());
    painter.drawText(after, Qt::AlignVCenter, QFontMetricsF(plain).elidedText(m_rest.plan.lift, Qt::ElideRight, after.width()));
}

void RestTile::paintBar(QPainter& painter) const
{
    const Theme& theme = m_look.theme();
    const QRectF whole = barRect();
    const double round = whole.height() / 2;
    painter.setPen(QPen(m_rest.isOver ? theme.chalkInk : theme.ctl, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(whole.adjusted(0.5, 0.5, -0.5, -0.5), round, round);
    QRectF left = whole;
    left.setWidth(whole.width() * m_rest.partLeft());
    if (left.width() > 0) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_rest.isHeld ? theme.ink3 : theme.ink);
        painter.drawRoundedRect(left, std::min(round, left.width() / 2), round);
    }
}

}  // namespace chalk::ui::floor
