#pragma once

#include "core/store/backup_shelf.h"
#include "ui/settings/backup_words.h"

#include <QDialog>
#include <QFutureWatcher>

#include <atomic>
#include <functional>
#include <memory>

class QGridLayout;
class QLabel;
class QListWidget;

namespace chalk::ui::common {
class ActionButton;
class Banner;
class Dialogs;
class Look;
}

namespace chalk::ui::settings {

/// Chooses a backup that takes the place of a studio: what each holds beside what is open now. A backup is opened and verified before it can be chosen, in a
/// thread of its own. It asks here, once, as it cannot be undone by Ctrl+Z; what is replaced is kept all the same.
class RestoreDialog : public QDialog {
    Q_OBJECT

public:
    /// Asks for the passphrase of a sealed backup that has other keys than the studio; null where the person leaves it sealed.
    using AskKeys = std::function<std::shared_ptr<store::KeyRing>(const QString& backup)>;

    /// `studio` is what is open now; a sealed backup is opened by its keys. `chosen` is the backup to begin with; empty: the latest.
    RestoreDialog(const common::Look& look, common::Dialogs& dialogs, store::BackupShelf shelf, const store::Access& studio, base::Date today,
                  const QString& chosen, AskKeys askKeys, QWidget* parent = nullptr);
    ~RestoreDialog() override;

    /// What was chosen, where the dialog was accepted.
    [[nodiscard]] const QString& file() const { return m_file; }
    /// What opens it: the keys of the studio, or others that were asked for.
    [[nodiscard]] const std::shared_ptr<store::KeyRing>& keys() const { return m_keys; }
    /// Whether the backup on show is being looked at.
    [[nodiscard]] bool isLooking() const { return m_isLooking; }

private:
    using Contents = std::shared_ptr<store::Result<store::StudioContents>>;

    void build();
    QWidget* makePreview();
    QLayout* makeFoot();
    void fillList(const QString& chosen);
    void addFile(const QString& file, const QString& text);
    void chooseOther();
    void unseal();
    void look();
    void take();
    void showLines(const std::vector<ContentLine>& lines);

    const common::Look& m_look;
    common::Dialogs& m_dialogs;
    store::BackupShelf m_shelf;
    std::shared_ptr<store::KeyRing> m_studioKeys;
    std::shared_ptr<store::KeyRing> m_keys;
    AskKeys m_askKeys;
    base::Date m_today;
    std::optional<store::StudioContents> m_present;
    QString m_file;
    QFutureWatcher<Contents> m_watcher;
    std::shared_ptr<std::atomic_bool> m_isStopped;
    bool m_isLooking = false;
    QListWidget* m_list;
    QLabel* m_title;
    QLabel* m_state;
    QGridLayout* m_lines;
    common::Banner* m_banner;
    common::ActionButton* m_unseal;
    common::ActionButton* m_restore;
};

}  // namespace chalk::ui::settings
