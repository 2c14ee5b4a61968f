#include "ui/lock/passphrase_field.h"

#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/common/style_sheet.h"

#include <QHBoxLayout>
#include <QLineEdit>

namespace chalk::ui::lock {

namespace {

constexpr double kFieldWidth = 320;  ///< pixels at a text size of 100 %

}  // namespace

PassphraseField::PassphraseField(const common::Look& look, const QString& name, QWidget* parent)
    : QWidget(parent), m_field(new QLineEdit(this)), m_show(new common::ActionButton(look, tr("Show"), this))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    m_field->setEchoMode(QLineEdit::Password);
    m_field->setAccessibleName(name);
    m_field->setInputMethodHints(Qt::ImhHiddenText | Qt::ImhNoPredictiveText | Qt::ImhSensitiveData);
    m_field->setMinimumWidth(qRound(look.theme().scaled(kFieldWidth)));
    m_show->setCheckable(true);
    m_show->setKind(common::ButtonKind::Plain);
    m_show->setAccessibleName(tr("Show what is typed"));
    row->addWidget(m_field, 1);
    row->addWidget(m_show);
    setFocusProxy(m_field);
    connect(m_show, &QPushButton::toggled, this, &PassphraseField::show);
    connect(m_field, &QLineEdit::textChanged, this, &PassphraseField::changed);
    connect(m_field, &QLineEdit::returnPressed, this, &PassphraseField::entered);
}

QString PassphraseField::text() const
{
    return m_field->text();
}

seal::Passphrase PassphraseField::passphrase() const
{
    return seal::Passphrase(m_field->text());
}

void PassphraseField::clear()
{
    m_field->setText(QString());  // which forgets what could be undone
    m_show->setChecked(false);
}

void PassphraseField::setInvalid(bool isInvalid)
{
    if (m_field->property("invalid").toBool() != isInvalid) {
        m_field->setProperty("invalid", isInvalid);
        common::restyle(*m_field);
    }
}

void PassphraseField::show(bool isShown)
{
    m_field->setEchoMode(isShown ? QLineEdit::Normal : QLineEdit::Password);
    m_show->setText(isShown ? tr("Hide") : tr("Show"));
    m_field->setFocus(Qt::OtherFocusReason);
}

}  // namespace chalk::ui::lock
