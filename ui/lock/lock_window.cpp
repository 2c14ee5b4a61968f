#include "ui/lock/lock_window.h"

#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/lock/passphrase_field.h"

#include <QAccessible>
#include <QCloseEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace chalk::ui::lock {

namespace {

constexpr double kCardWidth = 480;  ///< pixels at a text size of 100 %

}  // namespace

LockWindow::LockWindow(const common::Look& look, const QString& title, const QString& words, QWidget* parent)
    : QWidget(parent, Qt::Window),
      m_look(look),
      m_field(new PassphraseField(look, tr("Passphrase"), this)),
      m_open(new common::ActionButton(look, tr("Open"), this)),
      m_why(new QLabel(this))
{
    setWindowTitle(tr("Chalkrung"));
    setProperty("ground", QStringLiteral("win"));
    setAttribute(Qt::WA_StyledBackground);
    lay(title, words);
    connect(m_field, &PassphraseField::entered, this, &LockWindow::give);
    connect(m_field, &PassphraseField::changed, this, [this] { m_open->setEnabled(!m_field->text().isEmpty()); });
    connect(m_open, &QPushButton::clicked, this, &LockWindow::give);
    m_open->setEnabled(false);
    m_field->setFocus();
}

void LockWindow::lay(const QString& title, const QString& words)
{
    auto* card = new common::Panel(m_look, this);
    card->setTitle(title);
    card->setFixedWidth(qRound(m_look.theme().scaled(kCardWidth)));
    auto* body = new QVBoxLayout;
    body->setContentsMargins(18, 8, 18, 18);
    body->setSpacing(12);
    auto* text = new QLabel(words, card);
    text->setWordWrap(true);
    text->setProperty("role", QStringLiteral("secondary"));
    m_why->setWordWrap(true);
    m_why->setProperty("role", QStringLiteral("strong"));
    m_why->hide();
    m_open->setKind(common::ButtonKind::Primary);
    m_leave = new common::ActionButton(m_look, tr("Quit"), card);
    connect(m_leave, &QPushButton::clicked, this, &LockWindow::quitAsked);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    buttons->addWidget(m_open);
    buttons->addWidget(m_leave);
    buttons->addStretch(1);
    body->addWidget(text);
    body->addWidget(m_field);
    body->addWidget(m_why);
    body->addLayout(buttons);
    card->body()->addLayout(body);
    auto* page = new QVBoxLayout(this);
    page->addStretch(2);
    auto* middle = new QHBoxLayout;  // no alignment: that would not ask how high its words are at this width
    middle->addStretch(1);
    middle->addWidget(card);
    middle->addStretch(1);
    page->addLayout(middle);
    page->addStretch(3);
    setTabOrder(m_field, m_open);
    setTabOrder(m_open, m_leave);
}

void LockWindow::give()
{
    if (m_open->isEnabled()) {
        Q_EMIT passphraseGiven(m_field->passphrase());
    }
}

void LockWindow::setBusy(bool isBusy)
{
    m_open->setEnabled(!isBusy && !m_field->text().isEmpty());
    m_open->setText(isBusy ? tr("Trying…") : tr("Open"));
    m_field->setEnabled(!isBusy);
    if (isBusy) {
        m_why->hide();
    }
}

void LockWindow::setLeaveText(const QString& text)
{
    m_leave->setText(text);
}

void LockWindow::sayWhy(const QString& why)
{
    m_field->clear();
    m_field->setEnabled(true);
    m_field->setFocus(Qt::OtherFocusReason);
    m_why->setText(why);
    m_why->show();
    QAccessibleEvent announcement(m_why, QAccessible::Alert);
    QAccessible::updateAccessibility(&announcement);
}

QString LockWindow::saying() const
{
    return m_why->isHidden() ? QString() : m_why->text();
}

void LockWindow::closeEvent(QCloseEvent* event)
{
    event->ignore();
    Q_EMIT quitAsked();
}

}  // namespace chalk::ui::lock
