#include "ui/people/import_section.h"

#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace chalk::ui::people {

namespace {

/// A panel with a sentence and a button below it.
common::ActionButton* addWay(QVBoxLayout& column, const common::Look& look, const QString& title, const QString& text, const QString& button, QWidget* parent)
{
    auto* panel = new common::Panel(look, parent);
    panel->setTitle(title);
    auto* words = new QLabel(text, panel);
    words->setProperty("role", QStringLiteral("secondary"));
    words->setWordWrap(true);
    words->setContentsMargins(18, 12, 18, 8);
    panel->body()->addWidget(words);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(18, 0, 18, 14);
    auto* go = new common::ActionButton(look, button, panel);
    row->addWidget(go);
    row->addStretch(1);
    panel->body()->addLayout(row);
    column.addWidget(panel);
    return go;
}

}  // namespace

ImportSection::ImportSection(const common::Look& look, QWidget* parent) : SettingsSection(parent)
{
    auto* import = addWay(*column(), look, tr("Import"), tr("Clients and past sessions from lists (CSV), contacts from vCards. How a list is read is shown first, and the whole import can be taken back."),
                          tr("Import a list…"), this);
    auto* merge = addWay(*column(), look, tr("Duplicates"), tr("Two records of one person become one: their lifts, sessions and cautions are put together. It can be taken back."),
                         tr("Find duplicates…"), this);
    connect(import, &QAbstractButton::clicked, this, [this] { Q_EMIT placeAsked({.page = QStringLiteral("import")}); });
    connect(merge, &QAbstractButton::clicked, this, [this] { Q_EMIT placeAsked({.page = QStringLiteral("duplicates")}); });
}

}  // namespace chalk::ui::people
