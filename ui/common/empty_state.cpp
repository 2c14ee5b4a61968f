#include "ui/common/empty_state.h"

#include "ui/common/action_button.h"
#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPixmap>
#include <QVBoxLayout>

namespace chalk::ui::common {

namespace {

constexpr double kEmptyTextWidth = 340;

/// A ladder of four rungs; the first one stands, the others are to come.
QPixmap ladderPicture(const Theme& theme, qreal devicePixelRatio)
{
    const QSizeF size(theme.scaled(120), theme.scaled(64));
    QPixmap pixmap((size * devicePixelRatio).toSize());
    pixmap.setDevicePixelRatio(devicePixelRatio);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(theme.scaled(1), theme.scaled(1));
    painter.setPen(QPen(theme.line2, 3, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(14, 2), QPointF(14, 62));
    painter.drawLine(QPointF(106, 2), QPointF(106, 62));
    for (const int y : {10, 24, 38}) {
        QPen dots(theme.line2, 4, Qt::CustomDashLine, Qt::RoundCap);
        dots.setDashPattern({0.25, 2.25});
        painter.setPen(dots);
        painter.drawLine(QPointF(22, y), QPointF(100, y));
    }
    painter.setPen(QPen(theme.attDot, 4, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(17, 52), QPointF(103, 52));
    return pixmap;
}

}  // namespace

EmptyState::EmptyState(const Look& look, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_picture(new QLabel(this)),
      m_headline(new QLabel(this)),
      m_text(new QLabel(this)),
      m_buttons(new QHBoxLayout)
{
    m_headline->setProperty("role", QStringLiteral("emptyHeadline"));
    m_headline->setAlignment(Qt::AlignCenter);
    m_headline->setWordWrap(true);
    m_text->setProperty("role", QStringLiteral("emptyText"));
    m_text->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
    m_text->setWordWrap(true);
    m_picture->setAlignment(Qt::AlignCenter);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(6);
    column->addStretch();
    column->addWidget(m_picture);
    column->addSpacing(6);
    column->addWidget(m_headline);
    auto* textRow = new QHBoxLayout;
    textRow->addStretch(1);
    textRow->addWidget(m_text, 100);
    textRow->addStretch(1);
    column->addLayout(textRow);
    column->addSpacing(8);
    column->addLayout(m_buttons);
    column->addStretch();
    m_buttons->setSpacing(8);
    m_buttons->addStretch();
    m_buttons->addStretch();
    connect(m_text, &QLabel::linkActivated, this, &EmptyState::linkChosen);
    connect(&look, &Look::changed, this, &EmptyState::dress);
    dress();
}

void EmptyState::setPicture(const QString& icon, Signal signal)
{
    m_iconName = icon;
    m_signal = signal;
    dress();
}

void EmptyState::setWords(const QString& headline, const QString& text)
{
    m_headline->setText(headline);
    m_text->setText(proseHtml(text));
}

ActionButton* EmptyState::addButton(const QString& text)
{
    auto* button = new ActionButton(m_look, text, this);
    m_buttons->insertWidget(m_buttons->count() - 1, button);
    return button;
}

void EmptyState::dress()
{
    const Theme& theme = m_look.theme();
    m_text->setMaximumWidth(qRound(theme.scaled(kEmptyTextWidth)));
    m_picture->setPixmap(m_iconName.isEmpty() || theme.icons == nullptr
                             ? ladderPicture(theme, devicePixelRatioF())
                             : theme.icons->pixmap(m_iconName, qRound(theme.scaled(32)), theme.signal(m_signal).ink, devicePixelRatioF()));
}

}  // namespace chalk::ui::common
