#include "app/studio_window.h"

#include "app/commands/command.h"
#include "app/ending_signals.h"
#include "app/logging.h"
#include "app/long_undo.h"
#include "app/studio_opening.h"
#include "app/studio_pages.h"
#include "app/studio_rescue.h"
#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"
#include "core/store/audit.h"
#include "core/store/client_reader.h"
#include "core/store/key_ring.h"
#include "core/store/roster_reader.h"
#include "core/store/session_reader.h"
#include "core/store/studio_reader.h"
#include "ui/common/act_history.h"
#include "ui/common/backup_keeper.h"
#include "ui/common/connection_words.h"
#include "ui/common/dialogs.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/studio_watch.h"
#include "ui/common/write_desk.h"
#include "ui/floor/card_desk.h"
#include "ui/floor/scan_desk.h"
#include "ui/lock/lock_desk.h"
#include "ui/print/plan_dialog.h"
#include "ui/people/people_actions.h"
#include "ui/roster/findable_clients.h"
#include "ui/records/client_records.h"
#include "ui/settings/backup_notice.h"
#include "ui/shell/client_finder.h"
#include "ui/shell/ledge.h"
#include "ui/shell/ledge_note.h"
#include "ui/shell/main_window.h"
#include "ui/shell/scanner_listener.h"

#include <QAction>
#include <QApplication>
#include <QDate>
#include <QSettings>

#include <algorithm>
#include <cstdio>

namespace chalk::app {

namespace {

/// What the pages share, made once and outliving the window.
class StudioWindow {
public:
    StudioWindow(std::unique_ptr<store::Database> database, const SystemClock& clock)
        : m_database(std::move(database)),
          m_backups(m_database->access(), SystemClock::localMoment),
          m_clock(clock),
          m_catalogue(exchange::builtInCatalogue()),
          m_screens(exchange::builtInScreenCatalogue(m_catalogue)),
          m_lock(m_look, *m_database, m_settings),
          m_undo(*m_database, m_look),
          m_acts(clock, [this](base::ActId act) { return m_undo.undo(act); }),
          m_writes(*m_database, m_dialogs, SystemClock::nowUtc, store::Outbox::fileFor(m_database->target())),
          m_floor(*m_database, m_catalogue, m_screens, SystemClock::nowUtc),
          m_cards({m_floor, m_clock, m_acts, {m_look, m_dialogs, ui::print::CardDialogServices::standardPrinterChoice()}})
    {
        m_floor.writeThrough(m_writes);
    }

    int run()
    {
        const EndingSignals endings;
        if (isFile()) {
            m_database->setAuthor(ui::settings::keptAuthor(m_settings, *m_database));
        } else if (const auto noted = store::noteInAudit(*m_database, store::AuditWhat::SignedIn, {}); !noted) {
            qCWarning(appLog) << "the sign-in was not written down:" << noted.error().message;
        }
        ui::shell::MainWindow window({m_look, m_acts, m_clock, m_settings, studioName(), [this] { return sessionsToday(); }}, studioPages(services()));
        ui::floor::ScanDesk scans({*m_database, [&window](const ui::shell::Place& place) { window.goTo(place); },
                                   [&window](const QString& why) { window.ledge()->note()->sayTrouble(why); }});
        const ui::shell::ScannerListener scanner;
        QObject::connect(&scanner, &ui::shell::ScannerListener::codeScanned, &window, [&scans](const QString& code) { scans.take(code); });
        addLocking(window);
        if (m_database->may(store::Right::SeeHealth)) {
            window.addFinder(std::make_unique<ui::shell::ClientFinder>(
                ui::shell::ClientPages{QStringLiteral("client"), QStringLiteral("floor"), QStringLiteral("onboarding")}, [this] { return findableClients(); },
                [&window](const ui::shell::Place& place) { window.goTo(place); }));
            ui::people::addPeopleActions(window);
        }
        ui::common::StudioWatch watch(*m_database, m_writes);
        connectWatch(watch, window);
        window.openLastPlace([this](base::ClientId client) {
            const auto names = store::ClientReader(*m_database).names();
            return names && std::any_of(names->begin(), names->end(), [client](const auto& one) { return one.first == client; });
        });
        window.show();
        watch.start();
        qCInfo(appLog) << "window shown";
        auto* notice = new ui::settings::BackupNotice(m_look, m_backups, &window);
        window.addNotice(notice);
        QObject::connect(notice, &ui::settings::BackupNotice::backupsAsked, &window,
                         [&window] { window.goTo({.page = QStringLiteral("settings"), .tab = QStringLiteral("backup")}); });
        m_backups.setFurtherFolder(ui::settings::keptFurtherFolder(m_settings));
        if (mayBackUp()) {
            m_backups.start();
        }
        const int status = QApplication::exec();
        QApplication::setQuitOnLastWindowClosed(false);
        m_lock.beginEnd();
        // A server is copied on days, not at the end: whoever leaves waits for no network.
        if (m_backupToOpen.isEmpty() && isFile()) {
            makeClosingBackup(m_backups, m_look, m_dialogs);
        }
        if (!m_writes.waiting().empty()) {
            std::fprintf(stderr, "chalkrung: %zu changes wait for the server; they are kept and sent at the next start\n", m_writes.waiting().size());
        }
        return status;
    }

    /// The backup that is to take the studio's place before the window opens anew; empty where it ended for good.
    [[nodiscard]] const QString& backupToOpen() const { return m_backupToOpen; }
    /// What opens that.
    [[nodiscard]] const std::shared_ptr<store::KeyRing>& keysToOpen() const { return m_keysToOpen; }

private:
    /// A studio in a file knows nobody by a sign-in: who works with it is chosen in the settings.
    [[nodiscard]] bool isFile() const { return m_database->engine().driver() == QLatin1String("QSQLITE"); }

    /// A server has people for that: its owners.
    [[nodiscard]] bool mayBackUp() const { return isFile() || m_database->may(store::Right::ChangeStudio); }

    void addLocking(ui::shell::MainWindow& window)
    {
        auto* lock = new QAction(QApplication::translate("StudioWindow", "Lock"), &window);
        lock->setShortcut(Qt::CTRL | Qt::Key_L);
        window.addAction(lock);
        QObject::connect(lock, &QAction::triggered, &window, [this, &window] {
            if (m_lock.canLock()) {
                m_lock.lock();
            } else {
                window.ledge()->note()->sayNews(QApplication::translate("StudioWindow", "Set a passphrase first: Settings, Lock"));
            }
        });
        QObject::connect(&m_lock, &ui::lock::LockDesk::quitAsked, &window, [&window] {
            window.close();
            QApplication::exit(kDone);
        });
    }

    void connectWatch(ui::common::StudioWatch& watch, ui::shell::MainWindow& window)
    {
        using ui::common::StudioWatch;
        using ui::common::WriteDesk;
        const auto show = [this, &watch, &window] {
            const auto& waiting = m_writes.waiting();
            window.showTrouble(watch.isLost() ? std::optional(ui::common::lostConnection(m_lostMinute, waiting)) : ui::common::stillWaiting(waiting));
        };
        QObject::connect(&watch, &StudioWatch::changed, &window, &ui::shell::MainWindow::takeNews);
        QObject::connect(&watch, &StudioWatch::lost, &window, [this, show] {
            m_lostMinute = m_clock.minuteOfDay();
            qCWarning(appLog) << "the server does not answer";
            show();
        });
        QObject::connect(&watch, &StudioWatch::found, &window, [&window, show] {
            qCInfo(appLog) << "the server answers again";
            show();
            window.takeNews(QApplication::translate("StudioWindow", "The server answers again"));
        });
        QObject::connect(&m_writes, &WriteDesk::waitingChanged, &window, show);
        QObject::connect(&m_writes, &WriteDesk::sent, &window, [&window](int count) {
            window.takeNews(count == 1 ? QApplication::translate("StudioWindow", "What waited was sent")
                                       : QApplication::translate("StudioWindow", "%1 changes that waited were sent").arg(count));
        });
        if (!m_writes.trouble().isEmpty()) {
            window.ledge()->note()->sayTrouble(m_writes.trouble());
        }
    }

    StudioServices services()
    {
        return {*m_database, m_backups, m_clock, m_catalogue, m_screens, m_look, m_settings, m_lock, m_acts, m_dialogs, m_writes, m_floor, m_cards, m_records,
                mayBackUp(), [this] { return studioName(); },
                [this](const QString& backup, const std::shared_ptr<store::KeyRing>& keys) {
                    m_backupToOpen = backup;
                    m_keysToOpen = keys;
                }};
    }

    /// On a server with the role of who works here.
    QString studioName()
    {
        const QString name = ui::common::qstring(store::StudioReader(*m_database).name().value_or(std::string()));
        return m_database->isOnServer() ? QStringLiteral("%1 (%2)").arg(name, ui::common::roleName(m_database->role())) : name;
    }

    std::vector<ui::shell::LedgeSession> sessionsToday()
    {
        const auto sessions = store::SessionReader(*m_database).on(m_clock.today());
        return sessions ? ui::shell::ledgeSessionsOf(*sessions) : std::vector<ui::shell::LedgeSession>();
    }

    std::vector<ui::shell::FindableClient> findableClients()
    {
        const auto entries = store::RosterReader(*m_database).read(m_clock.today());
        const auto sessions = store::SessionReader(*m_database).on(m_clock.today());
        return ui::roster::findableClientsOf(entries.value_or(std::vector<store::RosterEntry>()),
                                             sessions.value_or(std::vector<store::NamedSession>()), m_catalogue, m_clock.today());
    }

    std::unique_ptr<store::Database> m_database;
    ui::common::BackupKeeper m_backups;
    QString m_backupToOpen;
    std::shared_ptr<store::KeyRing> m_keysToOpen;
    const SystemClock& m_clock;
    lifts::Catalogue m_catalogue;
    screens::ScreenCatalogue m_screens;
    ui::common::Look m_look;
    QSettings m_settings;
    ui::lock::LockDesk m_lock;
    LongUndo m_undo;
    ui::common::ActHistory m_acts;
    ui::common::ScreenDialogs m_dialogs;
    ui::common::WriteDesk m_writes;
    int m_lostMinute = 0;  ///< of the day, when the server last stopped to answer
    ui::floor::FloorPresenter m_floor;
    ui::floor::CardDesk m_cards;
    ui::records::ClientRecords m_records{{*m_database, m_catalogue, m_look, m_clock, m_dialogs}};
};

/// Whether Qt will find a place for a window: it ends the program where it does not.
bool hasDisplay()
{
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") || qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

}  // namespace

int runStudioWindow(int& argc, char** argv, const QString& studioFile, bool isNamed, const seal::Passphrase& passphrase, const SystemClock& clock)
{
    if (!hasDisplay()) {
        std::fputs("chalkrung: there is no display to open a window on; chalkrung --help says what goes without one\n", stderr);
        return kFailed;
    }
    const QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("chalkrung"));
    QApplication::setOrganizationName(QStringLiteral("chalkrung"));
    ui::common::loadFonts();
    store::Access access(studioFile);
    access.keys = std::make_shared<store::KeyRing>(passphrase);
    const auto mode = isNamed ? store::OpenMode::MustExist : store::OpenMode::CreateIfMissing;
    QString backup;
    int status = kDone;
    do {
        // The boxes on the way are no windows whose end is the program's.
        QApplication::setQuitOnLastWindowClosed(false);
        const ui::common::Look look;
        ui::common::ScreenDialogs dialogs;
        if (!backup.isEmpty()) {
            restoreForWindow(backup, access, look, dialogs);
        }
        auto [database, isTold] = openOrRescue(access, mode, look, dialogs);
        if (!database && database.error().kind == store::StoreError::Kind::Cancelled) {
            return kDone;
        }
        if (!database) {
            sayThatItCannotOpen(database.error(), isTold);
            return kWrongUse;
        }
        QApplication::setQuitOnLastWindowClosed(true);
        StudioWindow window(*std::move(database), clock);
        status = window.run();
        backup = window.backupToOpen();
        if (!backup.isEmpty() && window.keysToOpen()) {
            access.keys = window.keysToOpen();
        }
    } while (!backup.isEmpty());
    qCInfo(appLog) << "window ended with" << status;
    return status;
}

}  // namespace chalk::app
