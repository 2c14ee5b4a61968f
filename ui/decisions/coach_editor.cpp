#include "ui/decisions/coach_editor.h"

#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/look.h"
#include "ui/common/plain_typing.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace chalk::ui::decisions {

namespace {

constexpr int kMostNoteLength = 200;

}  // namespace

CoachEditor::CoachEditor(const common::Look& look, const QString& title, const QString& notePrompt, QWidget* parent)
    : QWidget(parent),
      m_fields(new QVBoxLayout),
      m_hint(new common::Banner(look, this)),
      m_fault(new common::Banner(look, this)),
      m_note(new QLineEdit(this)),
      m_accept(new common::ActionButton(look, {}, this)),
      m_cancel(new common::ActionButton(look, tr("Leave as it is"), this))
{
    installEventFilter(this);
    setAccessibleName(title);
    auto* heading = new QLabel(title, this);
    heading->setTextFormat(Qt::PlainText);
    heading->setProperty("role", QStringLiteral("section"));
    heading->setWordWrap(true);
    m_note->setPlaceholderText(notePrompt);
    m_note->setAccessibleName(notePrompt);
    m_note->setMaxLength(kMostNoteLength);
    m_accept->setKind(common::ButtonKind::Primary);
    m_hint->hide();
    m_fault->hide();
    m_fields->setSpacing(8);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    buttons->addWidget(m_accept);
    buttons->addWidget(m_cancel);
    buttons->addStretch();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 14, 16, 16);
    column->setSpacing(12);
    column->addWidget(heading);
    column->addLayout(m_fields);
    column->addWidget(m_hint);
    column->addWidget(m_note);
    column->addWidget(m_fault);
    column->addLayout(buttons);
    column->addStretch();
    connect(m_note, &QLineEdit::textChanged, this, &CoachEditor::review);
    connect(m_accept, &QPushButton::clicked, this, &CoachEditor::acceptIfReady);
    connect(m_cancel, &QPushButton::clicked, this, &CoachEditor::cancelled);
}

QString CoachEditor::note() const
{
    return m_note->text().simplified();
}

QWidget* CoachEditor::firstField() const
{
    return m_note;
}

void CoachEditor::setHint(const QString& hint)
{
    m_hint->setMessage({common::Signal::Info, QStringLiteral("info"), {}, hint});
    m_hint->setVisible(!hint.isEmpty());
}

void CoachEditor::setFault(const QString& fault)
{
    m_fault->setMessage({common::Signal::Pain, QStringLiteral("warning"), {}, fault});
    m_fault->setVisible(!fault.isEmpty());
}

void CoachEditor::setAcceptText(const QString& text)
{
    m_accept->setText(text);
    m_accept->updateGeometry();
}

void CoachEditor::review()
{
    m_accept->setEnabled(isReady() && (!needsNote() || !note().isEmpty()));
}

void CoachEditor::acceptIfReady()
{
    review();
    if (m_accept->isEnabled()) {
        Q_EMIT accepted();
    }
}

bool CoachEditor::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == this && event->type() == QEvent::ShortcutOverride && common::isPlainTyping(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void CoachEditor::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT cancelled();
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        // Enter in any field accepts; on a button it presses that button.
        return window()->focusWidget() == m_cancel ? m_cancel->click() : acceptIfReady();
    }
    QWidget::keyPressEvent(event);
}

}  // namespace chalk::ui::decisions
