#include "ui/common/sign_in_dialog.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace chalk::ui::common {

namespace {

constexpr int kSignInMargin = 20;
constexpr int kSignInWidth = 440;

}  // namespace

SignInDialog::SignInDialog(const QString& server, const QString& login, Attempt attempt, QWidget* parent)
    : QDialog(parent),
      m_attempt(std::move(attempt)),
      m_login(new QLineEdit(login, this)),
      m_password(new QLineEdit(this)),
      m_fault(new QLabel(this)),
      m_enter(new QPushButton(tr("Sign in"), this))
{
    setWindowTitle(tr("Sign in"));
    setMinimumWidth(kSignInWidth);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(12);
    column->setContentsMargins(kSignInMargin, kSignInMargin, kSignInMargin, kSignInMargin);
    auto* where = new QLabel(tr("The studio at %1").arg(server), this);
    where->setTextFormat(Qt::PlainText);
    where->setWordWrap(true);
    column->addWidget(where);
    auto* form = new QFormLayout;
    m_password->setEchoMode(QLineEdit::Password);
    m_login->setAccessibleName(tr("Login"));
    m_password->setAccessibleName(tr("Password"));
    form->addRow(tr("&Login"), m_login);
    form->addRow(tr("&Password"), m_password);
    column->addLayout(form);
    m_fault->setTextFormat(Qt::PlainText);
    m_fault->setWordWrap(true);
    m_fault->setProperty("role", QStringLiteral("secondary"));
    m_fault->hide();
    column->addWidget(m_fault);
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    auto* leave = new QPushButton(tr("Cancel"), this);
    row->addWidget(leave);
    row->addWidget(m_enter);
    column->addLayout(row);
    m_enter->setDefault(true);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_enter, &QPushButton::clicked, this, &SignInDialog::signIn);
    (login.isEmpty() ? m_login : m_password)->setFocus(Qt::OtherFocusReason);
}

QString SignInDialog::login() const
{
    return m_login->text().trimmed();
}

QString SignInDialog::fault() const
{
    return m_fault->text();
}

void SignInDialog::sayFault(const QString& fault)
{
    m_fault->setText(fault);
    m_fault->setVisible(!fault.isEmpty());
}

void SignInDialog::signIn()
{
    if (login().isEmpty()) {
        sayFault(tr("Type the login that the owner of the studio gave you."));
        m_login->setFocus(Qt::OtherFocusReason);
        return;
    }
    const QString fault = m_attempt(login(), m_password->text());
    if (fault.isEmpty()) {
        accept();
        return;
    }
    sayFault(fault);
    m_password->selectAll();
    m_password->setFocus(Qt::OtherFocusReason);
}

}  // namespace chalk::ui::common
