#pragma once

#include "core/store/database.h"
#include "ui/settings/settings_section.h"

class QLabel;

namespace chalk::ui::common {
class Look;
class Panel;
}

namespace chalk::ui::settings {

/// Where the studio lives, who works with it here and in which role, and who its coaches are.
class SharingSection : public SettingsSection {
    Q_OBJECT

public:
    /// Both outlive the section.
    SharingSection(const common::Look& look, store::Database& database, QWidget* parent = nullptr);

    void refresh() override;
    /// What is shown, line by line.
    [[nodiscard]] QStringList words() const;

private:
    QLabel* addLine(common::Panel& panel, const QString& name);

    const common::Look& m_look;
    store::Database& m_database;
    QLabel* m_place;
    QLabel* m_shared;
    QLabel* m_who;
    QLabel* m_role;
    QLabel* m_coaches;
};

}  // namespace chalk::ui::settings
