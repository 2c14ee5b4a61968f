#include "ui/settings/settings_section.h"

#include <QVBoxLayout>

namespace chalk::ui::settings {

SettingsSection::SettingsSection(QWidget* parent) : QWidget(parent), m_column(new QVBoxLayout)
{
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(12);
    outer->addLayout(m_column);
    outer->addStretch(1);
}

SettingsSection::~SettingsSection()
{
    for (QObject* part : findChildren<QObject*>()) {
        part->disconnect(this);
    }
}

}  // namespace chalk::ui::settings
