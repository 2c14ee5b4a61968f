#include "app/studio_window.h"

#include "app/commands/command.h"
#include "app/ending_signals.h"
#include "app/logging.h"
#include "app/long_undo.h"
#include "app/studio_opening.h"
#include "app/studio_rescue.h"
#include "core/exchange/catalogue_json.h"
#include "core/exchange/screen_json.h"
#include "core/store/audit.h"
#include "core/store/key_ring.h"
#include "core/store/roster_reader.h"
#include "core/store/session_reader.h"
#include "core/store/studio_reader.h"
#include "ui/board/client_page.h"
#include "ui/check_in/check_in_page.h"
#include "ui/check_in/studio_check_in_source.h"
#include "ui/common/act_history.h"
#include "ui/common/backup_keeper.h"
#include "ui/common/connection_words.h"
#include "ui/common/dialogs.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/studio_watch.h"
#include "ui/common/write_desk.h"
#include "ui/floor/card_desk.h"
#include "ui/floor/floor_page.h"
#include "ui/floor/scan_desk.h"
#include "ui/lock/lock_desk.h"
#include "ui/lock/lock_section.h"
#include "ui/onboarding/onboarding_page.h"
#include "ui/print/paper_dialog.h"
#include "ui/print/plan_dialog.h"
#include "ui/people/duplicates_page.h"
#include "ui/people/import_page.h"
#include "ui/people/import_section.h"
#include "ui/people/people_actions.h"
#include "ui/roster/findable_clients.h"
#include "ui/roster/roster_page.h"
#include "ui/records/client_records.h"
#include "ui/settings/appearance_section.h"
#include "ui/settings/author_section.h"
#include "ui/settings/backup_notice.h"
#include "ui/settings/backup_section.h"
#include "ui/settings/export_section.h"
#include "ui/settings/restore_dialog.h"
#include "ui/settings/settings_page.h"
#include "ui/settings/sharing_section.h"
#include "ui/shell/client_finder.h"
#include "ui/shell/ledge.h"
#include "ui/shell/ledge_note.h"
#include "ui/shell/main_window.h"
#include "ui/shell/scanner_listener.h"
#include "ui/trends/trends_page.h"
#include "ui/week/week_page.h"

#include <QAction>
#include <QApplication>
#include <QDate>
#include <QSettings>

#include <cstdio>

namespace chalk::app {

namespace {

using ui::shell::PageEntry;
using ui::shell::RailSlot;

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
        if (isFile()) {
            m_database->setAuthor(ui::settings::keptAuthor(m_settings, *m_database));
        } else if (const auto noted = store::noteInAudit(*m_database, store::AuditWhat::SignedIn, {}); !noted) {
            qCWarning(appLog) << "the sign-in was not written down:" << noted.error().message;
        }
        ui::shell::MainWindow window({m_look, m_acts, m_clock, m_settings, studioName(), [this] { return sessionsToday(); }}, pages());
        window.addFinder(std::make_unique<ui::shell::ClientFinder>(
            ui::shell::ClientPages{QStringLiteral("client"), QStringLiteral("floor"), QStringLiteral("onboarding")}, [this] { return findableClients(); }, [&window](const ui::shell::Place& place) { window.goTo(place); }));
        ui::floor::ScanDesk scans({*m_database, [&window](const ui::shell::Place& place) { window.goTo(place); },
                                   [&window](const QString& why) { window.ledge()->note()->sayTrouble(why); }});
        const ui::shell::ScannerListener scanner;
        QObject::connect(&scanner, &ui::shell::ScannerListener::codeScanned, &window, [&scans](const QString& code) { scans.take(code); });
        addLocking(window);
        if (m_database->may(store::Right::SeeHealth)) {
            ui::people::addPeopleActions(window);
        }
        ui::common::StudioWatch watch(*m_database, m_writes);
        connectWatch(watch, window);
        window.openLastPlace();
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
        const EndingSignals endings;
        const int status = QApplication::exec();
        QApplication::setQuitOnLastWindowClosed(false);
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
        QObject::connect(&m_writes, &WriteDesk::waitingChanged, &window, [&watch, show] {
            watch.look();
            show();
        });
        QObject::connect(&m_writes, &WriteDesk::sent, &window, [&window](int count) {
            window.takeNews(count == 1 ? QApplication::translate("StudioWindow", "What waited was sent")
                                       : QApplication::translate("StudioWindow", "%1 changes that waited were sent").arg(count));
        });
        if (!m_writes.trouble().isEmpty()) {
            window.ledge()->note()->sayTrouble(m_writes.trouble());
        }
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

    /// A page that can ask for the card of a client.
    template <class Page>
    Page* withCards(Page* page, void (Page::*asked)(base::ClientId))
    {
        QObject::connect(page, asked, &m_cards, [this, page](base::ClientId client) { m_cards.showClient(client, page->window()); });
        readAfterPrinting(page);
        return page;
    }

    /// The page on show reads again and tells the others to.
    void readAfterPrinting(ui::shell::Page* page)
    {
        QObject::connect(&m_cards, &ui::floor::CardDesk::studioChanged, page, [page] {
            if (page->isVisible()) {
                page->refresh();
                Q_EMIT page->studioChanged();
            }
        });
    }

    ui::floor::FloorPage* floorPage(QWidget* parent)
    {
        auto* page = new ui::floor::FloorPage({m_look, m_clock, m_acts, m_floor, {&m_settings}}, parent);
        QObject::connect(page, &ui::floor::FloorPage::cardAsked, &m_cards,
                         [this, page](const ui::floor::FloorClient& client) { m_cards.showSession(client, page->window()); });
        QObject::connect(page, &ui::floor::FloorPage::dayCardsAsked, &m_cards, [this, page](base::Date day) { m_cards.showDay(day, page->window()); });
        QObject::connect(page, &ui::floor::FloorPage::restEnded, page, [page](const QString& words) {
            if (auto* window = qobject_cast<ui::shell::MainWindow*>(page->window())) {
                window->ledge()->note()->sayNews(words);
            }
        });
        readAfterPrinting(page);
        return page;
    }

    void showOnPaper(const ui::print::RosterWeek& week, QWidget* parent)
    {
        const QString name = QStringLiteral("week-%1").arg(ui::common::qstring(base::toString(week.monday.isoWeek())));
        const auto sheets = [week](ui::print::PaperSize paper) { return ui::print::rosterWeekSheets(week, paper); };
        ui::print::PaperDialog dialog({m_look, m_dialogs, ui::print::CardDialogServices::standardPrinterChoice()},
                                      QApplication::translate("Pages", "The week for the wall"), name, sheets,
                                      QDate(1970, 1, 1).addDays(m_clock.today().daysSince1970()), parent);
        dialog.exec();
    }

    /// The plan that a client follows, or the last one, as it will be printed.
    void printPlan(base::ClientId client, QWidget* parent)
    {
        const ui::print::CardDialogServices services{m_look, m_dialogs, ui::print::CardDialogServices::standardPrinterChoice()};
        const auto dialog = ui::print::planDialog(services, *m_database, m_catalogue, client, m_clock.today(), parent);
        if (dialog && *dialog) {
            (*dialog)->exec();
            return;
        }
        const QString why = dialog ? QApplication::translate("StudioWindow", "No plan was begun with this client yet.") : dialog.error().message;
        m_dialogs.ask(parent, {ui::common::Signal::Warn, QApplication::translate("StudioWindow", "There is no plan to print."), why, {}, {}, 0});
    }

    ui::week::WeekPage* weekPage(QWidget* parent)
    {
        auto* page = new ui::week::WeekPage({m_look, {*m_database, m_catalogue, m_clock, m_acts, SystemClock::nowUtc, &m_writes}, m_dialogs}, parent);
        QObject::connect(page, &ui::week::WeekPage::weekPaperAsked, page, [this, page](const ui::print::RosterWeek& week) { showOnPaper(week, page->window()); });
        QObject::connect(page, &ui::week::WeekPage::weekCardsAsked, &m_cards, [this, page](base::Date day) { m_cards.showWeek(day, page->window()); });
        QObject::connect(page, &ui::week::WeekPage::groupAsked, &m_cards,
                         [this, page](base::Date day, base::SessionId session) { m_cards.showGroup(day, session, page->window()); });
        readAfterPrinting(page);
        return page;
    }

    ui::check_in::CheckInPage* checkInPage(QWidget* parent)
    {
        auto source = std::make_unique<ui::check_in::StudioCheckInSource>(*m_database, m_catalogue, SystemClock::nowUtc, &m_dialogs);
        auto* page = new ui::check_in::CheckInPage({m_look, m_clock, m_acts, m_dialogs, m_catalogue}, std::move(source), parent);
        QObject::connect(page, &ui::check_in::CheckInPage::reportAsked, &m_cards, [this, page](base::ClientId client) { m_cards.showReport(client, page->window()); });
        QObject::connect(page, &ui::check_in::CheckInPage::reportsAsked, &m_cards,
                         [this, page](const std::vector<base::ClientId>& clients) { m_cards.showReports(clients, page->window()); });
        readAfterPrinting(page);
        return page;
    }

    ui::settings::BackupSection* backupSection(QWidget* parent)
    {
        auto* section = new ui::settings::BackupSection({m_look, m_dialogs, m_settings, m_backups}, parent);
        QObject::connect(section, &ui::settings::BackupSection::restoreAsked, section, [this, section](const QString& backup) {
            ui::settings::RestoreDialog dialog(m_look, m_dialogs, m_backups.shelf(), m_database->access(), m_backups.now().at.day, backup,
                                               [this](const QString& file) { return keysOfBackup(m_look, file); }, section->window());
            if (dialog.exec() == QDialog::Accepted) {
                m_backupToOpen = dialog.file();
                m_keysToOpen = dialog.keys();
                section->window()->close();
            }
        });
        return section;
    }

    ui::settings::SettingsPage* settingsPage(QWidget* parent)
    {
        std::vector<ui::settings::SectionEntry> sections;
        sections.push_back({QStringLiteral("appearance"), QApplication::translate("Pages", "Appearance"), QStringLiteral("theme"),
                            [this](QWidget* in) { return new ui::settings::AppearanceSection(m_look, in); }});
        if (mayBackUp()) {
            sections.push_back({QStringLiteral("backup"), QApplication::translate("Pages", "Backup"), QStringLiteral("backup"),
                                [this](QWidget* in) { return backupSection(in); }});
        }
        sections.push_back({QStringLiteral("lock"), QApplication::translate("Pages", "Lock"), QStringLiteral("lock"),
                            [this](QWidget* in) { return new ui::lock::LockSection(m_look, *m_database, m_lock, in); }});
        sections.push_back({QStringLiteral("import"), QApplication::translate("Pages", "Import"), QStringLiteral("roster"),
                            [this](QWidget* in) { return new ui::people::ImportSection(m_look, in); }});
        sections.push_back({QStringLiteral("sharing"), QApplication::translate("Settings", "Coaches and sharing"), QStringLiteral("client"),
                            [this](QWidget* in) { return new ui::settings::SharingSection(m_look, *m_database, in); }});
        sections.push_back({QStringLiteral("export"), QApplication::translate("Pages", "Export"), QStringLiteral("send"), [this](QWidget* in) {
                                return new ui::settings::ExportSection({m_database->access(), [this] { return m_database->author(); }, m_look, m_clock, m_dialogs}, in);
                            }});
        if (isFile()) {
            sections.push_back({QStringLiteral("author"), QApplication::translate("Pages", "Who works here"), QStringLiteral("client"),
                                [this](QWidget* in) { return new ui::settings::AuthorSection(m_look, *m_database, m_settings, in); }});
        }
        return new ui::settings::SettingsPage(m_look, std::move(sections), studioName(), parent);
    }

    /// What a client asks about their own records.
    void takeRecordWishes(ui::board::ClientPage* page)
    {
        QObject::connect(page, &ui::board::ClientPage::dossierAsked, &m_records, [this, page](base::ClientId client) { m_records.makeDossier(client, page->window()); });
        QObject::connect(page, &ui::board::ClientPage::erasureAsked, &m_records, [this, page](base::ClientId client) { m_records.erase(client, page->window()); });
        QObject::connect(&m_records, &ui::records::ClientRecords::done, page, [page](const QString& words) {
            if (auto* window = qobject_cast<ui::shell::MainWindow*>(page->window())) {
                window->ledge()->note()->sayNews(words);
            }
        });
        QObject::connect(&m_records, &ui::records::ClientRecords::erased, page, [page](base::ClientId client) {
            Q_EMIT page->studioChanged();
            if (auto* window = qobject_cast<ui::shell::MainWindow*>(page->window())) {
                window->goTo({.page = QStringLiteral("roster")});
                window->forgetClient(client);
            }
        });
    }

    /// Where lists come in, and where two records become one.
    void addPeoplePages(ui::shell::PageRegistry& registry)
    {
        registry.add({QStringLiteral("import"), QApplication::translate("Pages", "Import a list"), QStringLiteral("roster"), RailSlot::None, {},
                      [this](QWidget* parent) {
                          return new ui::people::ImportPage({m_look, m_acts, m_dialogs}, {*m_database, m_catalogue, m_clock, m_settings, SystemClock::nowUtc}, parent);
                      },
                      QStringLiteral("roster")});
        registry.add({QStringLiteral("duplicates"), QApplication::translate("Pages", "Duplicates"), QStringLiteral("client"), RailSlot::None, {},
                      [this](QWidget* parent) { return new ui::people::DuplicatesPage({m_look, *m_database, m_clock, m_acts, SystemClock::nowUtc}, parent); },
                      QStringLiteral("roster")});
    }

    /// Pages that show health and training: who may not see that has none of them.
    void addHealthPages(ui::shell::PageRegistry& registry)
    {
        registry.add({QStringLiteral("floor"), QApplication::translate("Pages", "Floor"), QStringLiteral("floor"), RailSlot::Top, Qt::CTRL | Qt::Key_3,
                      [this](QWidget* parent) {
                          return floorPage(parent);
                      }});
        registry.add({QStringLiteral("checkin"), QApplication::translate("Pages", "Check-in"), QStringLiteral("checkin"), RailSlot::Top, Qt::CTRL | Qt::Key_4,
                      [this](QWidget* parent) { return checkInPage(parent); }});
        registry.add({QStringLiteral("trends"), QApplication::translate("Pages", "Trends"), QStringLiteral("trends"), RailSlot::Top, Qt::CTRL | Qt::Key_5,
                      [this](QWidget* parent) {
                          auto* page = new ui::trends::TrendsPage({m_look, m_clock, m_dialogs},
                                                                  std::make_unique<ui::trends::StudioTrendsSource>(m_database->access(), m_catalogue), parent);
                          QObject::connect(page, &ui::trends::TrendsPage::reportAsked, &m_cards,
                                           [this, page](base::ClientId client) { m_cards.showReport(client, page->window()); });
                          return page;
                      }});
        registry.add({QStringLiteral("onboarding"), QApplication::translate("Pages", "New client"), QStringLiteral("plus"), RailSlot::None, {},
                      [this](QWidget* parent) {
                          return new ui::onboarding::OnboardingPage(
                              {*m_database, m_catalogue, m_screens, m_look, m_clock, m_acts, m_dialogs, SystemClock::nowUtc}, parent);
                      },
                      QStringLiteral("roster")});
        registry.add({QStringLiteral("client"), QApplication::translate("Pages", "Client"), QStringLiteral("client"), RailSlot::None, {},
                      [this](QWidget* parent) {
                          auto* page = new ui::board::ClientPage({*m_database, m_catalogue, m_look, m_clock, m_acts, SystemClock::nowUtc, m_dialogs}, parent);
                          QObject::connect(page, &ui::board::ClientPage::reportAsked, &m_cards,
                                           [this, page](base::ClientId client) { m_cards.showReport(client, page->window()); });
                          QObject::connect(page, &ui::board::ClientPage::planAsked, page, [this, page](base::ClientId client) { printPlan(client, page->window()); });
                          takeRecordWishes(page);
                          return withCards(page, &ui::board::ClientPage::cardAsked);
                      }});
    }

    ui::shell::PageRegistry pages()
    {
        ui::shell::PageRegistry registry;
        registry.add({QStringLiteral("roster"), QApplication::translate("Pages", "Roster"), QStringLiteral("roster"), RailSlot::Top, Qt::CTRL | Qt::Key_1,
                      [this](QWidget* parent) {
                          auto* page = new ui::roster::RosterPage(
                              m_look, m_clock, std::make_unique<ui::roster::StudioRosterSource>(m_database->access(), m_catalogue), parent);
                          return withCards(page, &ui::roster::RosterPage::cardAsked);
                      }});
        registry.add({QStringLiteral("week"), QApplication::translate("Pages", "Week"), QStringLiteral("week"), RailSlot::Top, Qt::CTRL | Qt::Key_2,
                      [this](QWidget* parent) { return weekPage(parent); }});
        if (m_database->may(store::Right::SeeHealth)) {
            addHealthPages(registry);
            addPeoplePages(registry);
        }
        registry.add({QStringLiteral("settings"), QApplication::translate("Pages", "Settings"), QStringLiteral("settings"), RailSlot::Bottom,
                      Qt::CTRL | Qt::Key_Comma, [this](QWidget* parent) { return settingsPage(parent); }});
        return registry;
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
        auto database = openOrRescue(access, mode, look, dialogs);
        if (!database && database.error().kind == store::StoreError::Kind::Cancelled) {
            return kDone;
        }
        if (!database) {
            sayThatItCannotOpen(database.error());
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
