#include "ui/records/erase_dialog.h"

#include "ui/common/action_button.h"
#include "ui/records/erasure_words.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace chalk::ui::records {

namespace {

constexpr double kEraseWidth = 520;

}  // namespace

EraseDialog::EraseDialog(const common::Look& look, const store::ErasurePreview& preview, QWidget* parent)
    : QDialog(parent),
      m_look(look),
      m_wanted(common::qstring(preview.name)),
      m_name(new QLineEdit(this)),
      m_erase(new common::ActionButton(look, tr("Erase for good"), this))
{
    setWindowTitle(tr("Erase %1").arg(m_wanted));
    build(preview);
    this->look(QString());
    m_name->setFocus(Qt::OtherFocusReason);
}

void EraseDialog::build(const store::ErasurePreview& preview)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 18, 20, 16);
    column->setSpacing(12);
    const int width = qRound(m_look.theme().scaled(kEraseWidth));
    QStringList spoken;
    for (const QString& line : erasurePreviewLines(preview)) {
        auto* label = new QLabel(line, this);
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        label->setFixedWidth(width);
        column->addWidget(label);
        spoken.append(line);
    }
    auto* asked = new QLabel(tr("Type the name, %1, to erase this client.").arg(m_wanted), this);
    asked->setTextFormat(Qt::PlainText);
    asked->setWordWrap(true);
    asked->setProperty("role", QStringLiteral("strong"));
    asked->setFixedWidth(width);
    asked->setBuddy(m_name);
    m_name->setAccessibleName(asked->text());
    m_name->setAccessibleDescription(spoken.join(QLatin1Char(' ')));
    column->addWidget(asked);
    column->addWidget(m_name);
    m_erase->setKind(common::ButtonKind::Danger);
    m_erase->setAutoDefault(false);
    auto* leave = new common::ActionButton(m_look, tr("Keep the client"), this);
    leave->setKeyText(tr("Esc"));
    leave->setDefault(true);
    connect(m_name, &QLineEdit::textChanged, this, &EraseDialog::look);
    connect(m_erase, &QPushButton::clicked, this, &QDialog::accept);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    auto* foot = new QHBoxLayout;
    foot->addStretch(1);
    foot->addWidget(m_erase);
    foot->addWidget(leave);
    column->addLayout(foot);
}

QString EraseDialog::typedName() const
{
    return m_name->text().trimmed();
}

void EraseDialog::look(const QString& typed)
{
    m_erase->setEnabled(typed.trimmed() == m_wanted);
}

}  // namespace chalk::ui::records
