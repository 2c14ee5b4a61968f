#include "app/studio_pages.h"

#include "app/studio_rescue.h"
#include "ui/board/client_page.h"
#include "ui/check_in/check_in_page.h"
#include "ui/check_in/studio_check_in_source.h"
#include "ui/common/formats.h"
#include "ui/floor/card_desk.h"
#include "ui/floor/floor_page.h"
#include "ui/lock/lock_desk.h"
#include "ui/lock/lock_section.h"
#include "ui/onboarding/onboarding_page.h"
#include "ui/people/duplicates_page.h"
#include "ui/people/import_page.h"
#include "ui/people/import_section.h"
#include "ui/people/people_actions.h"
#include "ui/print/paper_dialog.h"
#include "ui/print/plan_dialog.h"
#include "ui/records/client_records.h"
#include "ui/roster/roster_page.h"
#include "ui/settings/appearance_section.h"
#include "ui/settings/author_section.h"
#include "ui/settings/backup_notice.h"
#include "ui/settings/backup_section.h"
#include "ui/settings/export_section.h"
#include "ui/settings/restore_dialog.h"
#include "ui/settings/settings_page.h"
#include "ui/settings/sharing_section.h"
#include "ui/shell/ledge.h"
#include "ui/shell/ledge_note.h"
#include "ui/shell/main_window.h"
#include "ui/trends/trends_page.h"
#include "ui/week/week_page.h"

#include <QApplication>
#include <QDate>
#include <QSettings>

#include <memory>

namespace chalk::app {

namespace {

using ui::shell::RailSlot;

/// Makes the pages as they are first gone to, and connects what one asks of another.
class PageMaking {
public:
    explicit PageMaking(StudioServices studio) : m_studio(std::move(studio)) {}

    ui::shell::PageRegistry pages()
    {
        ui::shell::PageRegistry registry;
        registry.add({QStringLiteral("roster"), QApplication::translate("Pages", "Roster"), QStringLiteral("roster"), RailSlot::Top, Qt::CTRL | Qt::Key_1,
                      [this](QWidget* parent) {
                          const bool isTrainingShown = m_studio.database.may(store::Right::SeeHealth);
                          auto* page = new ui::roster::RosterPage(
                              m_studio.look, m_studio.clock, std::make_unique<ui::roster::StudioRosterSource>(m_studio.database.access(), m_studio.catalogue), parent,
                              isTrainingShown ? ui::roster::RosterReach::Training : ui::roster::RosterReach::Names);
                          return withCards(page, &ui::roster::RosterPage::cardAsked);
                      }});
        registry.add({QStringLiteral("week"), QApplication::translate("Pages", "Week"), QStringLiteral("week"), RailSlot::Top, Qt::CTRL | Qt::Key_2,
                      [this](QWidget* parent) { return weekPage(parent); }});
        if (m_studio.database.may(store::Right::SeeHealth)) {
            addHealthPages(registry);
            addPeoplePages(registry);
        }
        registry.add({QStringLiteral("settings"), QApplication::translate("Pages", "Settings"), QStringLiteral("settings"), RailSlot::Bottom,
                      Qt::CTRL | Qt::Key_Comma, [this](QWidget* parent) { return settingsPage(parent); }});
        return registry;
    }

private:
    /// A page that can ask for the card of a client.
    template <class Page>
    Page* withCards(Page* page, void (Page::*asked)(base::ClientId))
    {
        QObject::connect(page, asked, &m_studio.cards, [this, page](base::ClientId client) { m_studio.cards.showClient(client, page->window()); });
        readAfterPrinting(page);
        return page;
    }

    /// The page on show reads again and tells the others to.
    void readAfterPrinting(ui::shell::Page* page)
    {
        QObject::connect(&m_studio.cards, &ui::floor::CardDesk::studioChanged, page, [page] {
            if (page->isVisible()) {
                page->refresh();
                Q_EMIT page->studioChanged();
            }
        });
    }

    ui::floor::FloorPage* floorPage(QWidget* parent)
    {
        auto* page = new ui::floor::FloorPage({m_studio.look, m_studio.clock, m_studio.acts, m_studio.floor, {&m_studio.settings}}, parent);
        QObject::connect(page, &ui::floor::FloorPage::cardAsked, &m_studio.cards,
                         [this, page](const ui::floor::FloorClient& client) { m_studio.cards.showSession(client, page->window()); });
        QObject::connect(page, &ui::floor::FloorPage::dayCardsAsked, &m_studio.cards, [this, page](base::Date day) { m_studio.cards.showDay(day, page->window()); });
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
        ui::print::PaperDialog dialog({m_studio.look, m_studio.dialogs, ui::print::CardDialogServices::standardPrinterChoice()},
                                      QApplication::translate("Pages", "The week for the wall"), name, sheets,
                                      QDate(1970, 1, 1).addDays(m_studio.clock.today().daysSince1970()), parent);
        dialog.exec();
    }

    /// The plan that a client follows, or the last one, as it will be printed.
    void printPlan(base::ClientId client, QWidget* parent)
    {
        const ui::print::CardDialogServices services{m_studio.look, m_studio.dialogs, ui::print::CardDialogServices::standardPrinterChoice()};
        const auto dialog = ui::print::planDialog(services, m_studio.database, m_studio.catalogue, client, m_studio.clock.today(), parent);
        if (dialog && *dialog) {
            (*dialog)->exec();
            return;
        }
        const QString why = dialog ? QApplication::translate("StudioWindow", "No plan was begun with this client yet.") : dialog.error().message;
        m_studio.dialogs.ask(parent, {ui::common::Signal::Warn, QApplication::translate("StudioWindow", "There is no plan to print."), why, {}, {}, 0});
    }

    ui::week::WeekPage* weekPage(QWidget* parent)
    {
        auto* page = new ui::week::WeekPage({m_studio.look, {m_studio.database, m_studio.catalogue, m_studio.clock, m_studio.acts, SystemClock::nowUtc, &m_studio.writes}, m_studio.dialogs}, parent);
        QObject::connect(page, &ui::week::WeekPage::weekPaperAsked, page, [this, page](const ui::print::RosterWeek& week) { showOnPaper(week, page->window()); });
        QObject::connect(page, &ui::week::WeekPage::weekCardsAsked, &m_studio.cards, [this, page](base::Date day) { m_studio.cards.showWeek(day, page->window()); });
        QObject::connect(page, &ui::week::WeekPage::groupAsked, &m_studio.cards,
                         [this, page](base::Date day, base::SessionId session) { m_studio.cards.showGroup(day, session, page->window()); });
        readAfterPrinting(page);
        return page;
    }

    ui::check_in::CheckInPage* checkInPage(QWidget* parent)
    {
        auto source = std::make_unique<ui::check_in::StudioCheckInSource>(m_studio.database, m_studio.catalogue, SystemClock::nowUtc, &m_studio.dialogs);
        auto* page = new ui::check_in::CheckInPage({m_studio.look, m_studio.clock, m_studio.acts, m_studio.dialogs, m_studio.catalogue}, std::move(source), parent);
        QObject::connect(page, &ui::check_in::CheckInPage::reportAsked, &m_studio.cards, [this, page](base::ClientId client) { m_studio.cards.showReport(client, page->window()); });
        QObject::connect(page, &ui::check_in::CheckInPage::reportsAsked, &m_studio.cards,
                         [this, page](const std::vector<base::ClientId>& clients) { m_studio.cards.showReports(clients, page->window()); });
        readAfterPrinting(page);
        return page;
    }

    ui::settings::BackupSection* backupSection(QWidget* parent)
    {
        auto* section = new ui::settings::BackupSection({m_studio.look, m_studio.dialogs, m_studio.settings, m_studio.backups}, parent);
        QObject::connect(section, &ui::settings::BackupSection::restoreAsked, section, [this, section](const QString& backup) {
            ui::settings::RestoreDialog dialog(m_studio.look, m_studio.dialogs, m_studio.backups.shelf(), m_studio.database.access(), m_studio.backups.now().at.day, backup,
                                               [this](const QString& file) { return keysOfBackup(m_studio.look, file); }, section->window());
            if (dialog.exec() == QDialog::Accepted) {
                m_studio.openAnew(dialog.file(), dialog.keys());
                section->window()->close();
            }
        });
        return section;
    }

    ui::settings::SettingsPage* settingsPage(QWidget* parent)
    {
        std::vector<ui::settings::SectionEntry> sections;
        sections.push_back({QStringLiteral("appearance"), QApplication::translate("Pages", "Appearance"), QStringLiteral("theme"),
                            [this](QWidget* in) { return new ui::settings::AppearanceSection(m_studio.look, in); }});
        if (m_studio.mayBackUp) {
            sections.push_back({QStringLiteral("backup"), QApplication::translate("Pages", "Backup"), QStringLiteral("backup"),
                                [this](QWidget* in) { return backupSection(in); }});
        }
        sections.push_back({QStringLiteral("lock"), QApplication::translate("Pages", "Lock"), QStringLiteral("lock"),
                            [this](QWidget* in) { return new ui::lock::LockSection(m_studio.look, m_studio.database, m_studio.lock, in); }});
        if (m_studio.database.may(store::Right::SeeHealth)) {
            sections.push_back({QStringLiteral("import"), QApplication::translate("Pages", "Import"), QStringLiteral("roster"),
                                [this](QWidget* in) { return new ui::people::ImportSection(m_studio.look, in); }});
        }
        sections.push_back({QStringLiteral("sharing"), QApplication::translate("Settings", "Coaches and sharing"), QStringLiteral("client"),
                            [this](QWidget* in) { return new ui::settings::SharingSection(m_studio.look, m_studio.database, m_studio.dialogs, in); }});
        if (m_studio.database.may(store::Right::SeeHealth)) {
            sections.push_back({QStringLiteral("export"), QApplication::translate("Pages", "Export"), QStringLiteral("send"), [this](QWidget* in) {
                                    return new ui::settings::ExportSection({m_studio.database.access(), [this] { return m_studio.database.author(); }, m_studio.look, m_studio.clock, m_studio.dialogs}, in);
                                }});
        }
        if (!m_studio.database.isOnServer()) {
            sections.push_back({QStringLiteral("author"), QApplication::translate("Pages", "Who works here"), QStringLiteral("client"),
                                [this](QWidget* in) { return new ui::settings::AuthorSection(m_studio.look, m_studio.database, m_studio.settings, in); }});
        }
        return new ui::settings::SettingsPage(m_studio.look, std::move(sections), m_studio.name(), parent);
    }

    /// What a client asks about their own records.
    void takeRecordWishes(ui::board::ClientPage* page)
    {
        QObject::connect(page, &ui::board::ClientPage::dossierAsked, &m_studio.records, [this, page](base::ClientId client) { m_studio.records.makeDossier(client, page->window()); });
        QObject::connect(page, &ui::board::ClientPage::erasureAsked, &m_studio.records, [this, page](base::ClientId client) { m_studio.records.erase(client, page->window()); });
        QObject::connect(&m_studio.records, &ui::records::ClientRecords::done, page, [page](const QString& words) {
            if (auto* window = qobject_cast<ui::shell::MainWindow*>(page->window())) {
                window->ledge()->note()->sayNews(words);
            }
        });
        QObject::connect(&m_studio.records, &ui::records::ClientRecords::erased, page, [page](base::ClientId client) {
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
                          return new ui::people::ImportPage({m_studio.look, m_studio.acts, m_studio.dialogs}, {m_studio.database, m_studio.catalogue, m_studio.clock, m_studio.settings, SystemClock::nowUtc}, parent);
                      },
                      QStringLiteral("roster")});
        registry.add({QStringLiteral("duplicates"), QApplication::translate("Pages", "Duplicates"), QStringLiteral("client"), RailSlot::None, {},
                      [this](QWidget* parent) { return new ui::people::DuplicatesPage({m_studio.look, m_studio.database, m_studio.clock, m_studio.acts, SystemClock::nowUtc}, parent); },
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
                          auto* page = new ui::trends::TrendsPage({m_studio.look, m_studio.clock, m_studio.dialogs},
                                                                  std::make_unique<ui::trends::StudioTrendsSource>(m_studio.database.access(), m_studio.catalogue), parent);
                          QObject::connect(page, &ui::trends::TrendsPage::reportAsked, &m_studio.cards,
                                           [this, page](base::ClientId client) { m_studio.cards.showReport(client, page->window()); });
                          return page;
                      }});
        registry.add({QStringLiteral("onboarding"), QApplication::translate("Pages", "New client"), QStringLiteral("plus"), RailSlot::None, {},
                      [this](QWidget* parent) {
                          return new ui::onboarding::OnboardingPage(
                              {m_studio.database, m_studio.catalogue, m_studio.screens, m_studio.look, m_studio.clock, m_studio.acts, m_studio.dialogs, SystemClock::nowUtc}, parent);
                      },
                      QStringLiteral("roster")});
        registry.add({QStringLiteral("client"), QApplication::translate("Pages", "Client"), QStringLiteral("client"), RailSlot::None, {},
                      [this](QWidget* parent) {
                          auto* page = new ui::board::ClientPage({m_studio.database, m_studio.catalogue, m_studio.look, m_studio.clock, m_studio.acts, SystemClock::nowUtc, m_studio.dialogs}, parent);
                          QObject::connect(page, &ui::board::ClientPage::reportAsked, &m_studio.cards,
                                           [this, page](base::ClientId client) { m_studio.cards.showReport(client, page->window()); });
                          QObject::connect(page, &ui::board::ClientPage::planAsked, page, [this, page](base::ClientId client) { printPlan(client, page->window()); });
                          takeRecordWishes(page);
                          return withCards(page, &ui::board::ClientPage::cardAsked);
                      }});
    }

    StudioServices m_studio;
};

}  // namespace

ui::shell::PageRegistry studioPages(const StudioServices& studio)
{
    // The registry's makers outlive this call.
    const auto making = std::make_shared<PageMaking>(studio);
    const ui::shell::PageRegistry made = making->pages();
    ui::shell::PageRegistry registry;
    for (ui::shell::PageEntry entry : made.entries()) {
        entry.make = [making, make = std::move(entry.make)](QWidget* parent) { return make(parent); };
        registry.add(std::move(entry));
    }
    return registry;
}

}  // namespace chalk::app
