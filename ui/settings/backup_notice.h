#pragma once

#include "ui/common/backup_keeper.h"
#include "ui/common/banner.h"

namespace chalk::ui::settings {

/// Across the window, above its page: the backup of the day did not go. It goes when a backup was made, and stays away while the backups
/// themselves are on show and say it.
class BackupNotice : public QWidget {
    Q_OBJECT

public:
    BackupNotice(const common::Look& look, common::BackupKeeper& keeper, QWidget* parent = nullptr);

Q_SIGNALS:
    /// The backups are to be shown.
    void backupsAsked();

private:
    void read();

    common::BackupKeeper& m_keeper;
    common::Banner* m_banner;
};

}  // namespace chalk::ui::settings
