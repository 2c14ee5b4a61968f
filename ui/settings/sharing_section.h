#pragma once

#include "core/store/database.h"
#include "ui/settings/settings_section.h"

class QLabel;

namespace chalk::ui::common {
class Dialogs;
class Look;
class Panel;
}

namespace chalk::ui::settings {

/// Where the studio lives and the way to another place; who works with it here and in which role, and who its coaches are. An owner sees who may sign
/// in at a server, and who is there.
class SharingSection : public SettingsSection {
    Q_OBJECT

public:
    /// All of them outlive the section.
    SharingSection(const common::Look& look, store::Database& database, common::Dialogs& dialogs, QWidget* parent = nullptr);

    void refresh() override;
    /// What is shown, line by line.
    [[nodiscard]] QStringList words() const;

private:
    /// Who may sign in and who is there, for an owner.
    void refreshLogins();
    QLabel* addLine(common::Panel& panel, const QString& name);
    /// For who may move the studio as a whole.
    void addMove(common::Panel& panel);
    void move();

    const common::Look& m_look;
    store::Database& m_database;
    common::Dialogs& m_dialogs;
    QLabel* m_place;
    QLabel* m_shared;
    QLabel* m_who;
    QLabel* m_role;
    QLabel* m_coaches;
    QLabel* m_logins = nullptr;     ///< for an owner at a server only
    QLabel* m_connected = nullptr;  ///< the same
};

}  // namespace chalk::ui::settings
