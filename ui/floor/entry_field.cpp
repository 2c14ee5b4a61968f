#include "ui/floor/entry_field.h"

#include "ui/common/look.h"
#include "ui/common/tags.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QInputMethodEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QSignalBlocker>
#include <QTextCharFormat>

namespace chalk::ui::floor {

namespace {

constexpr double kFieldHeight = 48;
constexpr double kFieldSide = 14;

}  // namespace

EntryField::EntryField(const common::Look& look, QWidget* parent) : QLineEdit(parent), m_look(look)
{
    setProperty("sizing", QStringLiteral("large"));
    setAccessibleName(tr("Result of the lift"));
    connect(&look, &common::Look::changed, this, &EntryField::dress);
    dress();
}

void EntryField::dress()
{
    const common::Theme& theme = m_look.theme();
    setFont(theme.font(20, QFont::DemiBold));
    setFixedHeight(qRound(theme.scaled(kFieldHeight)));
    setTextMargins(4, 0, qRound(common::keyCapWidth({tr("Enter")}, theme) + theme.scaled(kFieldSide)), 0);
    update();
}

void EntryField::setHint(const QString& hint)
{
    m_hint = hint;
    setAccessibleDescription(hint);
    update();
}

void EntryField::setFault(int begin, int length)
{
    if (begin == m_begin && length == m_length) {
        return;
    }
    m_begin = begin;
    m_length = length;
    // A line edit has no formats of its own; those of an empty composition are shown on its text and change nothing in it.
    QList<QInputMethodEvent::Attribute> attributes;
    if (length > 0) {
        QTextCharFormat format;
        format.setUnderlineStyle(QTextCharFormat::WaveUnderline);
        format.setUnderlineColor(m_look.theme().warn);
        format.setForeground(m_look.theme().warn);
        attributes.append({QInputMethodEvent::TextFormat, begin - cursorPosition(), length, format});
    }
    QInputMethodEvent event(QString(), attributes);
    QCoreApplication::sendEvent(this, &event);
}

void EntryField::forgetTyping()
{
    const QSignalBlocker quiet(this);
    setText(text());
}

bool EntryField::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool isNotMine = (key->matches(QKeySequence::Undo) && !isUndoAvailable()) || (key->matches(QKeySequence::Redo) && !isRedoAvailable());
        if (isNotMine) {
            event->ignore();
            return false;
        }
    }
    return QLineEdit::event(event);
}

void EntryField::paintEvent(QPaintEvent* event)
{
    QLineEdit::paintEvent(event);
    const common::Theme& theme = m_look.theme();
    QPainter painter(this);
    const common::KeyCapView cap{tr("Enter")};
    const double side = theme.scaled(kFieldSide);
    const double capLeft = width() - side - common::keyCapWidth(cap, theme);
    common::paintKeyCap(painter, QRectF(capLeft, 0, width() - capLeft, height()), cap, theme);
    const QFont font = theme.font(13, QFont::Normal);
    const double typed = QFontMetricsF(this->font()).horizontalAdvance(text().isEmpty() ? placeholderText() : text());
    const double hint = QFontMetricsF(font).horizontalAdvance(m_hint);
    if (typed + hint + 4 * side > capLeft) {
        return;
    }
    painter.setFont(font);
    painter.setPen(theme.ink3);
    painter.drawText(QRectF(0, 0, capLeft - theme.scaled(10), height()), Qt::AlignRight | Qt::AlignVCenter, m_hint);
}

}  // namespace chalk::ui::floor
