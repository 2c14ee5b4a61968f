#pragma once

#include "ui/settings/backup_scene.h"
#include "ui/settings/settings_section.h"

class QLabel;
class QListWidget;
class QProgressBar;
class QSettings;

namespace chalk::ui::common {
class ActionButton;
class Banner;
class Dialogs;
class Look;
}

namespace chalk::ui::settings {

class DamagedFiles;

/// What the section works with; all of it outlives the section.
struct BackupServices {
    const common::Look& look;
    common::Dialogs& dialogs;
    QSettings& settings;
    common::BackupKeeper& keeper;
};

/// The folder on another disk that is kept in the settings; empty for none.
[[nodiscard]] QString keptFurtherFolder(const QSettings& settings);

/// The backups: the last one, where they go besides, and those that are kept.
class BackupSection : public SettingsSection {
    Q_OBJECT

public:
    explicit BackupSection(const BackupServices& services, QWidget* parent = nullptr);

    void refresh() override;
    /// Stops a backup that is being made.
    bool closeOrClear() override;

    /// A further folder is asked for and kept.
    void chooseFurther();
    void leaveFurther();

Q_SIGNALS:
    /// One of the backups is to take the place of what is open; empty: any.
    void restoreAsked(const QString& file);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void addLast();
    void addFurther();
    void addList();
    void discard(const QString& file);
    void fillList();
    void fitList();
    void askForChosen();
    void setFurther(const QString& folder);
    void showMaking(bool isMaking);
    void showBanner(common::Banner& banner, const std::optional<common::BannerMessage>& message);
    common::ActionButton* makeButton(const QString& text, QWidget* parent);

    BackupServices m_services;
    BackupScene m_scene;
    common::Banner* m_trouble = nullptr;
    QLabel* m_last = nullptr;
    QLabel* m_place = nullptr;
    QProgressBar* m_progress = nullptr;
    common::ActionButton* m_backUp = nullptr;
    common::ActionButton* m_stop = nullptr;
    common::ActionButton* m_restore = nullptr;
    QLabel* m_further = nullptr;
    common::ActionButton* m_leave = nullptr;
    common::Banner* m_furtherTrouble = nullptr;
    QLabel* m_rule = nullptr;
    QListWidget* m_list = nullptr;
    DamagedFiles* m_damaged = nullptr;
};

}  // namespace chalk::ui::settings
