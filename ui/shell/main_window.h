#pragma once

#include "ui/common/banner.h"
#include "ui/shell/find_provider.h"
#include "ui/shell/open_clients.h"
#include "ui/shell/page_registry.h"
#include "ui/shell/window_memory.h"
#include "ui/shell/window_services.h"

#include <QMainWindow>
#include <QVBoxLayout>

#include <functional>
#include <memory>
#include <optional>

class QTimer;

namespace chalk::ui::shell {

class FindDialog;
class KeySheet;
class Ledge;
class Overlay;
class PageDeck;
class Rail;
class WindowMenu;

/// The window: the rail at the left, the ledge at the foot, and the page on show between them. It moves between pages and keeps
/// what is common to them; it decides nothing about clients.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    static constexpr int kLeastWidth = 1200;
    static constexpr int kLeastHeight = 740;
    /// Below these a page has less room; they grow with the text.
    static constexpr int kNarrowBelow = 1320;
    static constexpr int kLowBelow = 820;

    MainWindow(const WindowServices& services, PageRegistry pages);
    ~MainWindow() override;

    /// Opens where the last run ended, or the first page.
    void openLastPlace(const std::function<bool(base::ClientId)>& isThere = {});
    /// Shows a place; does nothing where no page has its key.
    void goTo(const Place& place);
    /// A client who is gone leaves the rail.
    void forgetClient(base::ClientId client);
    /// What Ctrl+K finds besides the actions, asked before them.
    void addFinder(std::unique_ptr<FindProvider> finder);
    /// Puts a notice above the page on show, below those that are there; it shows and hides itself.
    void addNotice(QWidget* notice) { m_notices->addWidget(notice); }
    /// Opens the find box with `query` in it.
    void startFind(const QString& query = {});

    /// Somebody wrote, and `words` say who and what, empty where this window's own work did: the pages read again, as soon as nothing is being typed that this could take away.
    void takeNews(const QString& words);
    /// Says across the page what is wrong as long as it is, as a server that does not answer; nothing: all is well again.
    void showTrouble(const std::optional<common::BannerMessage>& trouble);

    [[nodiscard]] Page* presentPage() const;
    [[nodiscard]] Ledge* ledge() const { return m_ledge; }
    [[nodiscard]] FindDialog* findDialog() const { return m_find; }

protected:
    void closeEvent(QCloseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    QAction* addWindowAction(const QString& text, const QString& icon, const QList<QKeySequence>& keys, void (MainWindow::*slot)());
    void layFrame();
    void makeActions();
    QList<QAction*> makeGoActions();
    void makeMenu(const QList<QAction*>& go);
    void connectFrame();

    void dress();
    void fitRoom();
    void readPresentPage();
    void readActs();
    void readSessions();
    void tick();
    void readNews();
    void closeOverlays();
    [[nodiscard]] QList<QAction*> allActions() const;

    void find();
    void filter();
    void print();
    void undo();
    void redo();
    void reload();
    void escape();
    void showKeys();
    void nextClient();
    void newClient();
    void largerText();
    void smallerText();
    void normalText();
    void toggleTheme();

    WindowServices m_services;
    PageRegistry m_pages;
    WindowMemory m_memory;
    OpenClients m_open;
    std::vector<LedgeSession> m_sessions;
    base::Date m_day;
    bool m_hasNews = false;  ///< others wrote, and it is not read yet
    PageDeck* m_deck;
    QVBoxLayout* m_notices = nullptr;
    common::Banner* m_trouble;
    Rail* m_rail;
    Ledge* m_ledge;
    FindDialog* m_find;
    KeySheet* m_keys;
    WindowMenu* m_menu = nullptr;
    QTimer* m_minutes;
    QAction* m_undo = nullptr;
    QAction* m_redo = nullptr;
    QAction* m_print = nullptr;
    QAction* m_filter = nullptr;
    QAction* m_newClient = nullptr;
};

}  // namespace chalk::ui::shell
