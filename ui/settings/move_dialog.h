#pragma once

#include "core/store/access.h"
#include "core/store/progress.h"
#include "core/store/store_error.h"

#include <QDialog>
#include <QFutureWatcher>

#include <atomic>
#include <cstdint>
#include <memory>

class QLabel;
class QLineEdit;
class QProgressBar;

namespace chalk::ui::common {
class ActionButton;
class Banner;
class Dialogs;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::settings {

enum class MoveTarget : std::uint8_t { Server, File };

/// What is moved, and what with. What is referred to outlives the dialog.
struct MoveServices {
    const common::Look& look;
    common::Dialogs& dialogs;
    store::Access studio;
    bool isSealed = false;  ///< by a passphrase: a server takes none that is
};

/// Takes the studio to a server or to a file: asks where to, copies beside the window's thread with progress and a stop, and says at the end how the
/// studio is opened there. What is open stays as it is. A password is typed unseen and forgotten with the dialog.
class MoveDialog : public QDialog {
    Q_OBJECT

public:
    MoveDialog(MoveServices services, MoveTarget target, QWidget* parent = nullptr);
    /// Stops what is under way and waits for it.
    ~MoveDialog() override;

    [[nodiscard]] bool isMoving() const { return m_isMoving; }
    /// Whether the studio is at its new place.
    [[nodiscard]] bool isMoved() const { return m_isMoved; }
    /// Esc and closing it stop what is under way, and only then leave.
    void reject() override;

private:
    using Outcome = std::shared_ptr<store::Result<qint64>>;

    void build();
    QLayout* makeFields();
    void addFoot();
    void chooseFile();
    void begin();
    /// What was typed; a password in it goes to its own field.
    [[nodiscard]] store::Access typed();
    /// What is wrong with it before anybody is asked; empty where nothing is.
    [[nodiscard]] QString faultOf(const store::Access& to) const;
    void run(const store::Access& to);
    void showProgress(int done);
    void take();
    void showMoved(qint64 rows);
    void sayFault(QLineEdit& field, QLabel& line, const QString& fault);
    /// Taller where what is said below the fields needs it.
    void makeRoom();
    void clearFaults();
    void showState();

    MoveServices m_services;
    MoveTarget m_target;
    QLineEdit* m_place;
    QLabel* m_placeFault;
    QLineEdit* m_password;
    QLabel* m_passwordFault;
    QProgressBar* m_progress;
    QLabel* m_note;
    common::Banner* m_banner;
    QLineEdit* m_command;  ///< how the studio is opened there, to be copied
    common::ActionButton* m_choose;
    common::ActionButton* m_leave;
    common::ActionButton* m_move;
    QString m_goal;        ///< where it goes, without a password
    QFutureWatcher<Outcome> m_watcher;
    std::shared_ptr<std::atomic_bool> m_isStopped;
    bool m_isMoving = false;
    bool m_isMoved = false;
};

}  // namespace chalk::ui::settings
