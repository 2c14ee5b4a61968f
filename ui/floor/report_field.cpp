#include "ui/floor/report_field.h"

#include "ui/common/look.h"
#include "ui/common/report_words.h"
#include "ui/common/style_sheet.h"

#include <QFontMetricsF>
#include <QKeyEvent>
#include <QRegularExpression>
#include <QSignalBlocker>

namespace chalk::ui::floor {

namespace {

constexpr int kMostMinutes = 480;
constexpr int kHighestEffort = 100;
constexpr int kSpareWidth = 16;  ///< the frame, its padding and the cursor
constexpr int kNoteWidth = 150;

/// Between the lines of a note where it stands in one.
const QString& noteGap()
{
    static const QString gap = QStringLiteral(" · ");
    return gap;
}

}  // namespace

ReportField::ReportField(const common::Look& look, ReportFieldKind kind, const QString& name, QWidget* parent) : QLineEdit(parent), m_look(look), m_kind(kind)
{
    setProperty("sizing", QStringLiteral("figure"));
    setAccessibleName(name);
    setAccessibleDescription(rangeText());
    setToolTip(QStringLiteral("%1: %2").arg(name, rangeText()));
    setMaxLength(kind == ReportFieldKind::Note ? 2000 : 4);
    if (kind != ReportFieldKind::Note) {
        setAlignment(Qt::AlignCenter);
    }
    connect(this, &QLineEdit::editingFinished, this, &ReportField::given);
    connect(&look, &common::Look::changed, this, &QWidget::updateGeometry);
}

QString ReportField::rangeText() const
{
    switch (m_kind) {
    case ReportFieldKind::Scale:
        return tr("1 to 5");
    case ReportFieldKind::Effort:
        return tr("0 to 10, halves as 7.5");
    case ReportFieldKind::Minutes:
        return tr("1 to 480");
    case ReportFieldKind::Note:
        return tr("words to keep with the session");
    }
    return {};
}

void ReportField::stretchTo(int width)
{
    if (width != m_width) {
        m_width = width;
        updateGeometry();
    }
}

QSize ReportField::sizeHint() const
{
    return minimumSizeHint().expandedTo({m_width, 0});
}

QSize ReportField::minimumSizeHint() const
{
    const QString widest = m_kind == ReportFieldKind::Scale ? QStringLiteral("5") : m_kind == ReportFieldKind::Effort ? QStringLiteral("7.5") : QStringLiteral("480");
    const double wide = m_kind == ReportFieldKind::Note ? m_look.theme().scaled(kNoteWidth) : fontMetrics().horizontalAdvance(widest) + m_look.theme().scaled(kSpareWidth);
    return {qRound(wide), QLineEdit::sizeHint().height()};
}

std::optional<int> ReportField::numberIn(const QString& text) const
{
    bool isNumber = false;
    if (m_kind == ReportFieldKind::Effort) {
        static const QRegularExpression halves(QStringLiteral("^\\d{1,2}([.,][05])?$"));
        const double value = QString(text).replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&isNumber);
        const int tenths = qRound(value * 10);
        return isNumber && halves.match(text).hasMatch() && tenths <= kHighestEffort ? std::optional(tenths) : std::nullopt;
    }
    const int value = text.toInt(&isNumber);
    const int most = m_kind == ReportFieldKind::Scale ? 5 : kMostMinutes;
    return isNumber && value >= 1 && value <= most ? std::optional(value) : std::nullopt;
}

QString ReportField::textFor(std::optional<int> value) const
{
    if (!value) {
        return {};
    }
    return m_kind == ReportFieldKind::Effort ? common::effortText(*value) : QString::number(*value);
}

bool ReportField::isSound() const
{
    return m_kind == ReportFieldKind::Note || text().trimmed().isEmpty() || numberIn(text().trimmed());
}

std::optional<int> ReportField::number() const
{
    return numberIn(isSound() ? text().trimmed() : m_said);
}

QString ReportField::words() const
{
    return text().trimmed().replace(noteGap(), QLatin1String("\n"));
}

void ReportField::show(const QString& text)
{
    const bool isTyping = isPending() && hasFocus();
    m_said = text;
    if (!isTyping) {
        reset();
    }
}

void ReportField::reset()
{
    const QSignalBlocker quiet(this);
    if (text() != m_said || isUndoAvailable()) {
        setText(m_said);
        setCursorPosition(m_kind == ReportFieldKind::Note ? 0 : static_cast<int>(m_said.size()));
    }
}

void ReportField::setFaulty(bool isFaulty)
{
    if (property("invalid").toBool() != isFaulty) {
        setProperty("invalid", isFaulty);
        common::restyle(*this);
    }
}

void ReportField::showNumber(std::optional<int> value)
{
    show(textFor(value));
}

void ReportField::showWords(const QString& words)
{
    show(QString(words).replace(QLatin1Char('\n'), noteGap()));
}

bool ReportField::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride) {
        // With nothing typed, Ctrl+Z takes back what was said: it is the window's.
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool isNotMine = (key->matches(QKeySequence::Undo) && !isUndoAvailable()) || (key->matches(QKeySequence::Redo) && !isRedoAvailable());
        if (isNotMine) {
            event->ignore();
            return false;
        }
    }
    return QLineEdit::event(event);
}

bool ReportField::takeDigit(QKeyEvent* event)
{
    const QString typed = event->text();
    const bool isWritten = typed.size() == 1 && typed.front().isPrint() && (event->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
    if (m_kind != ReportFieldKind::Scale || !isWritten) {
        return false;
    }
    if (numberIn(typed)) {
        setText(typed);
        selectAll();
        Q_EMIT given();
    }
    return true;
}

void ReportField::keyPressEvent(QKeyEvent* event)
{
    if (takeDigit(event)) {
        return;
    }
    QLineEdit::keyPressEvent(event);
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        Q_EMIT left();
    }
}

void ReportField::focusInEvent(QFocusEvent* event)
{
    QLineEdit::focusInEvent(event);
    if (m_kind != ReportFieldKind::Note) {
        selectAll();
    } else {
        end(false);
    }
}

}  // namespace chalk::ui::floor
