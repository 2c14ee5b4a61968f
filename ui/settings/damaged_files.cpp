#include "ui/settings/damaged_files.h"

#include "ui/common/action_button.h"
#include "ui/common/dialogs.h"
#include "ui/common/look.h"

#include <QDir>
#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace chalk::ui::settings {

DamagedFiles::DamagedFiles(const common::Look& look, common::Dialogs& dialogs, QWidget* parent)
    : common::Panel(look, parent), m_look(look), m_dialogs(dialogs), m_column(new QVBoxLayout)
{
    setTitle(tr("Damaged files that are kept"));
    auto* words = new QLabel(tr("A backup took their place. They stay until you delete them here."), this);
    words->setProperty("role", QStringLiteral("secondary"));
    words->setWordWrap(true);
    m_column->setContentsMargins(18, 8, 18, 16);
    m_column->setSpacing(8);
    m_column->addWidget(words);
    body()->addLayout(m_column);
    hide();
}

void DamagedFiles::show(const std::vector<BackupRow>& rows)
{
    if (rows == m_rows) {
        return;
    }
    m_rows = rows;
    for (QWidget* line : m_lines) {
        line->hide();
        line->deleteLater();  // its button may be what asks
    }
    m_lines.clear();
    for (const BackupRow& row : rows) {
        addRow(row);
    }
    setVisible(!rows.empty());
}

void DamagedFiles::addRow(const BackupRow& row)
{
    auto* line = new QWidget(this);
    auto* words = new QLabel(row.text, line);
    words->setTextFormat(Qt::PlainText);
    words->setToolTip(QDir::toNativeSeparators(row.file));
    auto* discard = new common::ActionButton(m_look, tr("Delete…"), line);
    discard->setAutoDefault(false);
    discard->setAccessibleName(tr("Delete the damaged file: %1").arg(row.text));
    auto* across = new QHBoxLayout(line);
    across->setContentsMargins(0, 0, 0, 0);
    across->addWidget(words, 1);
    across->addWidget(discard);
    m_column->addWidget(line);
    m_lines.push_back(line);
    connect(discard, &QPushButton::clicked, this, [this, row] { ask(row); });
}

void DamagedFiles::ask(const BackupRow& row)
{
    const int answer = m_dialogs.ask(this, {common::Signal::Warn, tr("Delete the damaged file?"),
                                            tr("%1. What can still be read from it is gone then. The studio and its backups stay.").arg(row.text),
                                            QDir::toNativeSeparators(row.file), {tr("Keep it"), tr("Delete the file")}, 0});
    if (answer == 1) {
        Q_EMIT discardAsked(row.file);
    }
}

}  // namespace chalk::ui::settings
