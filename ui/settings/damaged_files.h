#pragma once

#include "ui/common/panel.h"
#include "ui/settings/backup_scene.h"

class QVBoxLayout;

namespace chalk::ui::common {
class Dialogs;
class Look;
}

namespace chalk::ui::settings {

/// Damaged studios that were kept when a backup took their place: each with its date, to be deleted by hand. Out of sight where there is none.
class DamagedFiles : public common::Panel {
    Q_OBJECT

public:
    DamagedFiles(const common::Look& look, common::Dialogs& dialogs, QWidget* parent = nullptr);

    void show(const std::vector<BackupRow>& rows);

Q_SIGNALS:
    /// The person agreed to it.
    void discardAsked(const QString& file);

private:
    void addRow(const BackupRow& row);
    void ask(const BackupRow& row);

    const common::Look& m_look;
    common::Dialogs& m_dialogs;
    QVBoxLayout* m_column;
    std::vector<BackupRow> m_rows;
    std::vector<QWidget*> m_lines;
};

}  // namespace chalk::ui::settings
