#pragma once

#include "core/store/database.h"
#include "ui/lock/idle_watch.h"
#include "ui/lock/sealing_work.h"

#include <QPointer>

#include <memory>
#include <vector>

class QSettings;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::lock {

class LockWindow;

/// Locks the program: at once, or when nobody has touched it for some minutes. Every window of it goes out of sight, dialogs too, and the keys of the
/// studio's texts are wiped, so that no page can read or write them. What was typed stays in its fields: a dialog stays open while nobody sees it, and
/// whoever waits for its answer goes on waiting. A dialog that would open meanwhile opens afterwards. What a page has read stays in memory.
class LockDesk : public QObject {
    Q_OBJECT

public:
    /// The minutes to choose from; 0 is never.
    static const std::vector<int>& choices();
    static constexpr int kUsualMinutes = 15;

    /// All of these outlive the desk.
    LockDesk(const common::Look& look, store::Database& database, QSettings& settings, QObject* parent = nullptr);
    ~LockDesk() override;

    /// Whether there is a passphrase to unlock by.
    [[nodiscard]] bool canLock() const;
    [[nodiscard]] int minutes() const;
    void setMinutes(int minutes);
    /// Reads anew whether the studio is sealed; after its passphrase was set or taken away.
    void refresh();
    void lock();
    /// Dialogs are held back no more: the program ends, nobody will unlock it, and what it says at its end must not wait for that.
    void beginEnd() { m_isEnding = true; }
    [[nodiscard]] bool isLocked() const { return m_window != nullptr; }
    [[nodiscard]] LockWindow* window() const { return m_window.get(); }

Q_SIGNALS:
    void unlocked();
    void quitAsked();

protected:
    /// Hears Ctrl+L in a dialog too, which keeps it from the window's own shortcut.
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void hideWindows();
    void showWindows();
    void tryPassphrase(const seal::Passphrase& passphrase);

    const common::Look& m_look;
    store::Database& m_database;
    QSettings& m_settings;
    IdleWatch m_idle;
    SealingWork m_work;
    std::vector<QPointer<QWidget>> m_hidden;  ///< in the order in which they are shown again
    std::unique_ptr<LockWindow> m_window;
    bool m_isEnding = false;
};

/// Asks for the passphrase of a sealed studio until it opens, and puts the keys on the ring of `access`. False where the person would rather quit.
[[nodiscard]] bool askBeforeOpening(const common::Look& look, const store::Access& access);

/// The same for a sealed backup, whose keys may be others than those of the studio that is open. False where the person leaves it sealed.
[[nodiscard]] bool askForBackup(const common::Look& look, const store::Access& access, const QString& backup);

}  // namespace chalk::ui::lock
