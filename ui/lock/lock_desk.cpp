#include "ui/lock/lock_desk.h"

#include "core/seal/sealed_file.h"
#include "core/store/key_ring.h"
#include "core/store/sealing.h"
#include "ui/common/look.h"
#include "ui/common/sentence_text.h"
#include "ui/lock/lock_window.h"

#include <QApplication>
#include <QDialog>
#include <QEventLoop>
#include <QFileInfo>
#include <QKeyEvent>
#include <QSettings>
#include <QWindow>

#include <algorithm>

namespace chalk::ui::lock {

namespace {

constexpr QLatin1String kMinutesKey("lock/minutes");

/// While it lives, the program stays though its last window goes.
class StayingWithoutWindows {
public:
    StayingWithoutWindows() { QApplication::setQuitOnLastWindowClosed(false); }
    ~StayingWithoutWindows() { QApplication::setQuitOnLastWindowClosed(m_wasQuitting); }
    StayingWithoutWindows(const StayingWithoutWindows&) = delete;
    StayingWithoutWindows& operator=(const StayingWithoutWindows&) = delete;

private:
    bool m_wasQuitting = QApplication::quitOnLastWindowClosed();
};

/// Takes a dialog out of sight and leaves it open. QDialog::hide would be an answer to whoever waits for one. A dialog of the desktop's own is none of
/// this program's windows: that is answered as by Esc, which is false.
bool hideOpenDialog(QDialog& dialog)
{
    QWindow* handle = dialog.windowHandle();
    if (handle == nullptr || !handle->isVisible()) {
        dialog.reject();
        return false;
    }
    handle->setVisible(false);
    return true;
}

void showAgain(QWidget& window)
{
    if (qobject_cast<QDialog*>(&window) != nullptr && window.windowHandle() != nullptr) {
        window.windowHandle()->setVisible(true);
    } else {
        window.show();
    }
}

/// Returns when the lock is open; until then a dialog that is about to show does not, and whoever opened it waits. Where the program ends before
/// that, it never shows.
void holdBack(const LockDesk& desk, QDialog& dialog)
{
    const QPointer<QDialog> held(&dialog);
    QEventLoop loop;
    QObject::connect(&desk, &LockDesk::unlocked, &loop, &QEventLoop::quit);
    loop.exec();
    if (held != nullptr && desk.isLocked()) {
        held->setAttribute(Qt::WA_DontShowOnScreen);
    }
}

/// How many widgets a dialog is inside of: one that another opened is further in.
int depthOf(const QWidget* dialog)
{
    int depth = 0;
    for (const QWidget* around = dialog->parentWidget(); around != nullptr; around = around->parentWidget()) {
        ++depth;
    }
    return depth;
}

QString wordsFor(const store::StoreError& error)
{
    return error.kind == store::StoreError::Kind::Locked ? LockWindow::tr("That is not the passphrase. Nothing was changed.") : common::sentenceText(error.message);
}

}  // namespace

const std::vector<int>& LockDesk::choices()
{
    static const std::vector<int> minutes{0, 2, 5, 15, 60};
    return minutes;
}

LockDesk::LockDesk(const common::Look& look, store::Database& database, QSettings& settings, QObject* parent)
    : QObject(parent), m_look(look), m_database(database), m_settings(settings)
{
    connect(&m_idle, &IdleWatch::idled, this, &LockDesk::lock);
    connect(&m_work, &SealingWork::done, this, &LockDesk::showWindows);
    connect(&m_work, &SealingWork::failed, this, [this](const store::StoreError& error) {
        if (m_window) {
            m_window->setBusy(false);
            m_window->sayWhy(wordsFor(error));
        }
    });
    QCoreApplication::instance()->installEventFilter(this);
    refresh();
}

bool LockDesk::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Show && isLocked() && !m_isEnding) {
        if (auto* dialog = qobject_cast<QDialog*>(watched); dialog != nullptr && dialog->isWindow()) {
            holdBack(*this, *dialog);
        }
    }
    if (event->type() == QEvent::KeyPress && !isLocked() && canLock() && QApplication::activeModalWidget() != nullptr) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_L && key->modifiers() == Qt::ControlModifier) {
            QMetaObject::invokeMethod(this, &LockDesk::lock, Qt::QueuedConnection);
            return true;
        }
    }
    return QObject::eventFilter(watched, event);
}

LockDesk::~LockDesk()
{
    m_work.disconnect(this);
}

bool LockDesk::canLock() const
{
    return m_database.vault().isSealed();
}

int LockDesk::minutes() const
{
    const int minutes = m_settings.value(kMinutesKey, kUsualMinutes).toInt();
    return std::find(choices().begin(), choices().end(), minutes) != choices().end() ? minutes : kUsualMinutes;
}

void LockDesk::setMinutes(int minutes)
{
    m_settings.setValue(kMinutesKey, minutes);
    refresh();
}

void LockDesk::refresh()
{
    { const store::Snapshot snapshot(m_database); }  // where it begins, the vault looks whether the studio is sealed
    m_idle.setMinutes(canLock() && !isLocked() ? minutes() : 0);
}

void LockDesk::lock()
{
    if (isLocked() || !canLock()) {
        return;
    }
    m_idle.pause();
    m_window = std::make_unique<LockWindow>(m_look, tr("Locked"), tr("Your studio is locked. What you typed is kept and comes back."));
    connect(m_window.get(), &LockWindow::passphraseGiven, this, &LockDesk::tryPassphrase);
    connect(m_window.get(), &LockWindow::quitAsked, this, &LockDesk::quitAsked);
    const StayingWithoutWindows staying;
    hideWindows();
    m_database.access().keys->lock();
    m_window->show();
    m_window->activateWindow();
}

void LockDesk::hideWindows()
{
    m_hidden.clear();
    std::vector<QPointer<QWidget>> dialogs;
    const QWidgetList windows = QApplication::topLevelWidgets();
    for (QWidget* window : windows) {
        if (window == m_window.get() || window->isHidden()) {
            continue;
        }
        if (auto* dialog = qobject_cast<QDialog*>(window)) {
            if (hideOpenDialog(*dialog)) {
                dialogs.emplace_back(dialog);
            }
        } else if (window->windowType() == Qt::Window) {
            m_window->setGeometry(window->geometry());
            m_window->setWindowState(window->windowState());
            m_hidden.emplace_back(window);
            window->hide();
        } else {
            window->hide();  // menus, tips
        }
    }
    std::stable_sort(dialogs.begin(), dialogs.end(), [](const auto& one, const auto& other) { return depthOf(one) < depthOf(other); });
    m_hidden.insert(m_hidden.end(), dialogs.begin(), dialogs.end());
}

void LockDesk::tryPassphrase(const seal::Passphrase& passphrase)
{
    if (!m_work.isBusy()) {
        m_window->setBusy(true);
        m_work.start([access = m_database.access(), passphrase](const store::Progress&) { return store::unlock(access, passphrase); });
    }
}

void LockDesk::showWindows()
{
    LockWindow* const lockWindow = m_window.release();  // what is shown from here on is held back no more
    for (const QPointer<QWidget>& window : m_hidden) {
        if (window != nullptr) {
            showAgain(*window);
            window->activateWindow();
        }
    }
    m_hidden.clear();
    lockWindow->deleteLater();  // it is in the middle of a signal
    refresh();
    Q_EMIT unlocked();
}

namespace {

/// Shows `window` until a passphrase that was offered to the ring of `access` lets `attempt` go. False where the person gives up.
bool askUntil(LockWindow& window, const store::Access& access, const SealingWork::Work& attempt)
{
    const StayingWithoutWindows staying;
    SealingWork work;
    QEventLoop loop;
    bool isOpen = false;
    QObject::connect(&window, &LockWindow::passphraseGiven, &work, [&](const seal::Passphrase& passphrase) {
        window.setBusy(true);
        access.keys->offer(passphrase);
        work.start(attempt);
    });
    QObject::connect(&work, &SealingWork::done, &loop, [&] {
        isOpen = true;
        loop.quit();
    });
    QObject::connect(&work, &SealingWork::failed, &window, [&](const store::StoreError& error) {
        window.setBusy(false);
        window.sayWhy(wordsFor(error));
    });
    QObject::connect(&window, &LockWindow::quitAsked, &loop, &QEventLoop::quit);
    window.setWindowModality(Qt::ApplicationModal);
    window.resize(720, 480);
    window.show();
    loop.exec();
    return isOpen;
}

}  // namespace

bool askBeforeOpening(const common::Look& look, const store::Access& access)
{
    LockWindow window(look, LockWindow::tr("Your studio is sealed"),
                      LockWindow::tr("%1 opens with its passphrase only.").arg(QFileInfo(access.target).fileName()));
    return askUntil(window, access, [access](const store::Progress&) { return store::Database::open(access, store::OpenMode::MustExist).map([](const auto&) {}); });
}

bool askForBackup(const common::Look& look, const store::Access& access, const QString& backup)
{
    LockWindow window(look, LockWindow::tr("The backup is sealed"),
                      LockWindow::tr("%1 opens with the passphrase that the studio had when it was made.").arg(QFileInfo(backup).fileName()));
    window.setLeaveText(LockWindow::tr("Leave it sealed"));
    return askUntil(window, access, [access, backup](const store::Progress&) {
        const auto wrapped = seal::sealedHeadOf(backup);
        return wrapped ? access.keys->open(*wrapped, backup) : tl::make_unexpected(store::errorOfSeal(wrapped.error(), backup));
    });
}

}  // namespace chalk::ui::lock
