#include "ui/settings/backup_notice.h"

#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/settings/backup_scene.h"

#include <QVBoxLayout>

namespace chalk::ui::settings {

BackupNotice::BackupNotice(const common::Look& look, common::BackupKeeper& keeper, QWidget* parent)
    : QWidget(parent), m_keeper(keeper), m_banner(new common::Banner(look, this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(24, 12, 24, 0);
    column->addWidget(m_banner);
    connect(m_banner->addButton(tr("Try again")), &QPushButton::clicked, this, [this] { m_keeper.makeNow(); });
    connect(m_banner->addButton(tr("Show the backups")), &QPushButton::clicked, this, &BackupNotice::backupsAsked);
    connect(&keeper, &common::BackupKeeper::made, this, &BackupNotice::read);
    connect(&keeper, &common::BackupKeeper::failed, this, &BackupNotice::read);
    connect(&keeper, &common::BackupKeeper::placeChanged, this, &BackupNotice::read);
    hide();
}

void BackupNotice::read()
{
    const auto& fault = m_keeper.fault();
    const bool isTrouble = fault && fault->kind != store::StoreError::Kind::Cancelled && !m_keeper.isAtPlace();
    if (isTrouble) {
        m_banner->setMessage(backupTrouble(*fault));
    }
    setVisible(isTrouble);
}

}  // namespace chalk::ui::settings
