#include "ui/shell/main_window.h"

#include "ui/common/act_history.h"
#include "ui/common/clock.h"
#include "ui/common/look.h"
#include "ui/shell/action_finder.h"
#include "ui/shell/day_line.h"
#include "ui/shell/find_dialog.h"
#include "ui/shell/key_sections.h"
#include "ui/shell/ledge.h"
#include "ui/shell/page_deck.h"
#include "ui/shell/rail.h"
#include "ui/shell/undo_keys.h"
#include "ui/shell/window_menu.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QGridLayout>
#include <QMenuBar>
#include <QScreen>
#include <QTimer>
#include <QVBoxLayout>

namespace chalk::ui::shell {

namespace {

constexpr int kTickMs = 5'000;  // the clock shows minutes; five seconds late is not seen
constexpr int kTextStep = 10;
// The pages that the frame itself leads to; where one is not registered, the way there is closed.
constexpr QLatin1String kClientPage("client");
constexpr QLatin1String kFloorPage("floor");
constexpr QLatin1String kNewClientPage("onboarding");

}  // namespace

MainWindow::MainWindow(const WindowServices& services, PageRegistry pages)
    : m_services(services),
      m_pages(std::move(pages)),
      m_memory(services.settings),
      m_day(services.clock.today()),
      m_deck(new PageDeck(m_pages, this)),
      m_trouble(new common::Banner(services.look, this)),
      m_rail(new Rail(services.look, m_pages, this)),
      m_ledge(new Ledge(services.look, services.acts, this)),
      m_find(nullptr),
      m_keys(nullptr),
      m_minutes(new QTimer(this))
{
    m_memory.restoreLook(services.look);
    dress();
    layFrame();
    m_find = new FindDialog(services.look, centralWidget());
    m_keys = new KeySheet(services.look, centralWidget());
    makeActions();
    connectFrame();
    setMinimumSize(kLeastWidth, kLeastHeight);
    if (!m_memory.restoreWindow(*this)) {
        resize(QSize(1440, 900).boundedTo(screen()->availableSize()).expandedTo(minimumSize()));
    }
    readSessions();
    readActs();
    m_minutes->start(kTickMs);
}

MainWindow::~MainWindow()
{
    disconnect(qApp, nullptr, this, nullptr);  // its parts go after it, and the focus with them
}

void MainWindow::layFrame()
{
    auto* frame = new QWidget(this);
    frame->setProperty("ground", QStringLiteral("win"));
    auto* grid = new QGridLayout(frame);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(0);
    m_notices = new QVBoxLayout;
    m_notices->addWidget(m_trouble);
    grid->addWidget(m_rail, 0, 0, 2, 1);
    grid->addLayout(m_notices, 0, 1);
    grid->addWidget(m_deck, 1, 1);
    grid->addWidget(m_ledge, 2, 0, 1, 2);
    grid->setRowStretch(1, 1);
    m_trouble->hide();
    setCentralWidget(frame);
}

QAction* MainWindow::addWindowAction(const QString& text, const QString& icon, const QList<QKeySequence>& keys,
                                     void (MainWindow::*slot)())
{
    auto* action = new QAction(text, this);
    action->setShortcuts(keys);
    action->setProperty(kActionIcon, icon);
    connect(action, &QAction::triggered, this, slot);
    addAction(action);
    return action;
}

void MainWindow::makeActions()
{
    const QList<QAction*> go = makeGoActions();
    m_filter = addWindowAction(tr("&Filter this list"), QStringLiteral("filter"), {Qt::Key_Slash}, &MainWindow::filter);
    m_print = addWindowAction(tr("&Print"), QStringLiteral("print"), {QKeySequence::Print}, &MainWindow::print);
    m_undo = addWindowAction(tr("&Undo"), QStringLiteral("undo"), {QKeySequence(tr("Ctrl+Z"))}, &MainWindow::undo);
    m_redo = addWindowAction(tr("Do &again"), QStringLiteral("again"), {QKeySequence(tr("Ctrl+Shift+Z")), QKeySequence(tr("Ctrl+Y"))},
                             &MainWindow::redo);
    if (m_pages.find(kNewClientPage) != nullptr) {
        m_newClient = addWindowAction(tr("&New client"), QStringLiteral("plus"), {Qt::Key_N}, &MainWindow::newClient);
    }
    makeMenu(go);
}

QList<QAction*> MainWindow::makeGoActions()
{
    QList<QAction*> go;
    for (const PageEntry& entry : m_pages.entries()) {
        if (entry.slot == RailSlot::None) {
            continue;
        }
        auto* action = new QAction(entry.name, this);
        action->setShortcut(entry.shortcut);
        action->setProperty(kActionIcon, entry.icon);
        action->setProperty(kActionGoes, true);
        connect(action, &QAction::triggered, this, [this, key = entry.key] { goTo({.page = key}); });
        addAction(action);
        go.append(action);
    }
    go.append(nullptr);
    go.append(addWindowAction(tr("Next open client"), QStringLiteral("client"), {QKeySequence(tr("Ctrl+Tab"))}, &MainWindow::nextClient));
    return go;
}

void MainWindow::makeMenu(const QList<QAction*>& go)
{
    MenuPlan plan;
    plan.go = go;
    if (m_newClient != nullptr) {
        plan.studio.append(m_newClient);
    }
    plan.studio += {addWindowAction(tr("Find or &do"), QStringLiteral("search"), {QKeySequence(tr("Ctrl+K"))}, &MainWindow::find), m_print,
                    addWindowAction(tr("&Reload"), QStringLiteral("again"), {Qt::Key_F5}, &MainWindow::reload), nullptr};
    auto* quit = new QAction(tr("&Quit"), this);
    quit->setShortcut(QKeySequence(tr("Ctrl+Q")));
    quit->setProperty(kActionIcon, QStringLiteral("cross"));
    connect(quit, &QAction::triggered, this, &QWidget::close);
    addAction(quit);
    plan.studio.append(quit);
    plan.edit = {m_undo, m_redo, nullptr, m_filter,
                 addWindowAction(tr("Close or &clear"), QStringLiteral("cross"), {Qt::Key_Escape}, &MainWindow::escape)};
    plan.view = {
        addWindowAction(tr("&Larger text"), QStringLiteral("plus"), {QKeySequence(tr("Ctrl++")), QKeySequence(tr("Ctrl+="))},
                        &MainWindow::largerText),
        addWindowAction(tr("&Smaller text"), QStringLiteral("theme"), {QKeySequence(tr("Ctrl+-"))}, &MainWindow::smallerText),
        addWindowAction(tr("&Normal text"), QStringLiteral("theme"), {QKeySequence(tr("Ctrl+0"))}, &MainWindow::normalText), nullptr,
        addWindowAction(tr("Paper or Slate &theme"), QStringLiteral("theme"), {QKeySequence(tr("Ctrl+Shift+L"))},
                        &MainWindow::toggleTheme)};
    plan.help = {addWindowAction(tr("&Keyboard"), QStringLiteral("keyboard"), {Qt::Key_F1, Qt::Key_Question}, &MainWindow::showKeys)};
    m_menu = new WindowMenu(menuBar(), plan);
    new UndoKeys(this);
}

void MainWindow::connectFrame()
{
    m_find->addProvider(std::make_unique<ActionFinder>([this] { return allActions(); }));
    connect(m_rail, &Rail::pageChosen, this, [this](const QString& key) { goTo({.page = key}); });
    connect(m_rail, &Rail::clientChosen, this, [this](base::ClientId client) { goTo({.page = kClientPage, .client = client}); });
    connect(m_ledge->dayLine(), &DayLine::sessionChosen, this,
            [this](base::SessionId session) { goTo({.page = kFloorPage, .session = session}); });
    connect(m_deck, &PageDeck::placeAsked, this, &MainWindow::goTo);
    connect(m_deck, &PageDeck::presentChanged, this, &MainWindow::readPresentPage);
    connect(m_deck, &PageDeck::written, this, &MainWindow::readSessions);
    connect(&m_services.acts, &common::ActHistory::changed, this, &MainWindow::readActs);
    connect(&m_services.acts, &common::ActHistory::studioChanged, this, &MainWindow::reload);
    connect(&m_services.look, &common::Look::changed, this, &MainWindow::dress);
    connect(m_minutes, &QTimer::timeout, this, &MainWindow::tick);
    connect(qApp, &QApplication::focusChanged, this, &MainWindow::readNews);
}

void MainWindow::openLastPlace(const std::function<bool(base::ClientId)>& isThere)
{
    const auto last = m_memory.place();
    const bool isOfSomebodyGone = last && !last->client.isNone() && isThere && !isThere(last->client);
    if (last && m_pages.find(last->page) != nullptr && !isOfSomebodyGone) {
        goTo(*last);
    } else if (!m_pages.entries().empty()) {
        goTo({.page = m_pages.entries().front().key});
    }
}

void MainWindow::goTo(const Place& place)
{
    closeOverlays();
    m_deck->goTo(place);
}

void MainWindow::forgetClient(base::ClientId client)
{
    m_open.forget(client);
    m_rail->setOpenClients(m_open);
}

void MainWindow::addFinder(std::unique_ptr<FindProvider> finder)
{
    m_find->addProvider(std::move(finder));
}

void MainWindow::startFind(const QString& query)
{
    m_keys->close();
    m_find->start(query);
}

Page* MainWindow::presentPage() const
{
    return m_deck->present();
}

void MainWindow::readPresentPage()
{
    Page* page = m_deck->present();
    setWindowTitle(QStringLiteral("%1 – %2").arg(page->title(), m_services.studioName));
    const PageEntry* entry = m_pages.find(m_deck->presentKey());
    m_rail->setPresentPage(entry->markedPage.isEmpty() ? entry->key : entry->markedPage);
    if (const auto client = page->openClient()) {
        m_open.show(*client);
    } else {
        m_open.showNone();
    }
    m_rail->setOpenClients(m_open);
    std::vector<KeyHint> hints = page->keyHints();
    hints.push_back({tr("Ctrl+K"), tr("Find or do")});
    hints.push_back({tr("F1"), tr("Keys")});
    m_ledge->setHints(hints);
    m_print->setEnabled(page->canPrint());
    m_filter->setEnabled(page->filterField() != nullptr);
    m_menu->setPageActions(entry->name, page->actions());
    m_memory.rememberPlace(m_deck->place());
}

void MainWindow::readActs()
{
    m_undo->setEnabled(m_services.acts.lastDone().has_value());
    m_redo->setEnabled(m_services.acts.lastTakenBack().has_value());
}

void MainWindow::readSessions()
{
    m_sessions = m_services.sessionsToday();
    m_ledge->setDay(ledgeDayOf(m_sessions, m_services.clock.minuteOfDay()));
}

void MainWindow::tick()
{
    readNews();
    if (m_services.clock.today() != m_day) {
        m_day = m_services.clock.today();
        reload();
        return;
    }
    m_ledge->setDay(ledgeDayOf(m_sessions, m_services.clock.minuteOfDay()));
}

void MainWindow::dress()
{
    common::applyTheme(*qApp, m_services.look.theme());
    m_memory.rememberLook(m_services.look);
    fitRoom();
}

void MainWindow::fitRoom()
{
    const common::Theme& theme = m_services.look.theme();
    const bool isNarrow = width() < theme.scaled(kNarrowBelow);
    m_deck->setRoom(isNarrow, height() < theme.scaled(kLowBelow));
    m_ledge->setNarrow(isNarrow);
}

void MainWindow::resizeEvent(QResizeEvent* event)
{
    QMainWindow::resizeEvent(event);
    fitRoom();
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    m_memory.rememberWindow(*this);
    m_memory.rememberPlace(m_deck->place());
    QMainWindow::closeEvent(event);
}

QList<QAction*> MainWindow::allActions() const
{
    QList<QAction*> all = m_deck->present() == nullptr ? QList<QAction*>() : m_deck->present()->actions();
    return all + actions();
}

void MainWindow::closeOverlays()
{
    m_find->close();
    m_keys->close();
}

void MainWindow::find()
{
    startFind();
}

void MainWindow::filter()
{
    if (QWidget* field = m_deck->present() == nullptr ? nullptr : m_deck->present()->filterField()) {
        field->setFocus(Qt::ShortcutFocusReason);
    }
}

void MainWindow::print()
{
    if (m_deck->present() != nullptr && m_deck->present()->canPrint()) {
        m_deck->present()->print();
    }
}

void MainWindow::undo()
{
    m_services.acts.undo();
}

void MainWindow::redo()
{
    m_services.acts.redo();
}

void MainWindow::reload()
{
    m_deck->refreshAll();
    readSessions();
}

void MainWindow::escape()
{
    if (m_find->isVisible() || m_keys->isVisible()) {
        closeOverlays();
    } else if (m_deck->present() != nullptr) {
        m_deck->present()->closeOrClear();
    }
}

void MainWindow::showKeys()
{
    const Page* page = m_deck->present();
    if (page == nullptr) {
        return;
    }
    m_find->close();
    const QString name = m_pages.find(m_deck->presentKey())->name;
    std::vector<KeySection> sections = menuSections(*menuBar(), name);
    sections.insert(sections.begin(), pageSection(name, *page));
    m_keys->start(sections);
}

void MainWindow::nextClient()
{
    if (m_deck->present() != nullptr && m_deck->present()->showNextClient()) {
        return;
    }
    if (const auto next = m_open.next()) {
        goTo({.page = kClientPage, .client = *next});
    }
}

void MainWindow::newClient()
{
    goTo({.page = kNewClientPage});
}

void MainWindow::largerText()
{
    m_services.look.setTextPercent(m_services.look.theme().textPercent + kTextStep);
}

void MainWindow::smallerText()
{
    m_services.look.setTextPercent(m_services.look.theme().textPercent - kTextStep);
}

void MainWindow::normalText()
{
    m_services.look.setTextPercent(100);
}

void MainWindow::toggleTheme()
{
    m_services.look.toggleTone();
}

}  // namespace chalk::ui::shell
