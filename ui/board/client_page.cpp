#include "ui/board/client_page.h"

#include "ui/board/board_tab.h"
#include "ui/board/client_presenter.h"
#include "ui/board/client_words.h"
#include "ui/board/grid_rows.h"
#include "ui/board/health_tab.h"
#include "ui/board/initials_tile.h"
#include "ui/board/lift_decisions.h"
#include "ui/board/lift_inspector.h"
#include "ui/board/painted.h"
#include "ui/board/sessions_tab.h"
#include "ui/board/stage_board.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/clock.h"
#include "ui/common/empty_state.h"
#include "ui/common/formats.h"
#include "ui/common/lock_words.h"
#include "ui/common/look.h"
#include "ui/common/page_header.h"
#include "ui/common/prose.h"
#include "ui/direction/direction_tab.h"
#include "ui/history/history_tab.h"

#include <QAction>
#include <QLabel>
#include <QStackedLayout>
#include <QTabBar>
#include <QVBoxLayout>

namespace chalk::ui::board {

namespace {

constexpr std::array<const char*, 5> kTabKeys{"board", "sessions", "health", "direction", "history"};

int tabOf(const QString& key)
{
    for (std::size_t i = 0; i < kTabKeys.size(); ++i) {
        if (key == QLatin1String(kTabKeys[i])) {
            return static_cast<int>(i);
        }
    }
    return 0;
}

}  // namespace

ClientPage::ClientPage(ClientPageServices services, QWidget* parent)
    : shell::Page(parent),
      m_services(std::move(services)),
      m_presenter(std::make_unique<ClientPresenter>(m_services.database, m_services.catalogue, m_services.atUtc)),
      m_header(new common::PageHeader(m_services.look, this)),
      m_initials(new Painted(m_services.look, m_header)),
      m_nextSession(new QLabel(m_header)),
      m_report(new common::ActionButton(m_services.look, tr("Report"), m_header)),
      m_card(new common::ActionButton(m_services.look, tr("Card"), m_header)),
      m_record(new common::ActionButton(m_services.look, tr("Record session"), m_header)),
      m_tabs(new QTabBar(this)),
      m_bannerBox(new QWidget(this)),
      m_banners(new QVBoxLayout(m_bannerBox)),
      m_pages(new QStackedLayout),
      m_board(new BoardTab(m_services.look)),
      m_sessions(new SessionsTab(m_services.look)),
      m_health(new HealthTab(m_services.look)),
      m_direction(new direction::DirectionTab({m_services.database, m_services.catalogue, m_services.look, m_services.acts, m_services.dialogs,
                                               m_services.atUtc})),
      m_history(new history::HistoryTab(m_services.look, m_services.database, m_services.catalogue, m_services.dialogs)),
      m_decisions(new LiftDecisions(m_services.look, *m_board, *m_presenter, m_services.dialogs, m_services.acts, this)),
      m_failure(new common::EmptyState(m_services.look))
{
    makeHeader();
    makeBody();
    makeActions();
}

ClientPage::~ClientPage() = default;

void ClientPage::makeHeader()
{
    m_initials->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    m_nextSession->setTextFormat(Qt::RichText);
    m_nextSession->setProperty("role", QStringLiteral("small"));
    m_nextSession->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_report->setIconName(QStringLiteral("trends"));
    m_report->setAccessibleName(tr("Progress report, Ctrl+Shift+P"));
    m_report->setToolTip(m_report->accessibleName());
    m_card->setIconName(QStringLiteral("print"));
    m_record->setKind(common::ButtonKind::Primary);
    m_record->setKeyText(QStringLiteral("R"));
    m_header->addLead(m_initials);
    m_header->addTool(m_nextSession);
    m_header->addTool(m_report);
    m_header->addTool(m_card);
    m_header->addTool(m_record);
    connect(m_report, &QPushButton::clicked, this, &ClientPage::askForReport);
    connect(m_card, &QPushButton::clicked, this, [this] { Q_EMIT cardAsked(m_client); });
    connect(m_record, &QPushButton::clicked, this, &ClientPage::record);
}

void ClientPage::makeBody()
{
    for (const QString& name : {tr("Board"), tr("Sessions"), tr("Health"), tr("Direction"), tr("History")}) {
        m_tabs->addTab(name);
    }
    m_tabs->setExpanding(false);
    m_tabs->setAccessibleName(tr("Parts of the client page"));
    m_banners->setContentsMargins(24, 12, 24, 0);
    m_banners->setSpacing(8);
    m_failure->setPicture(QStringLiteral("warning"), common::Signal::Pain);
    for (QWidget* page : {static_cast<QWidget*>(m_board), static_cast<QWidget*>(m_sessions), static_cast<QWidget*>(m_health),
                          static_cast<QWidget*>(m_direction), static_cast<QWidget*>(m_history), static_cast<QWidget*>(m_failure)}) {
        m_pages->addWidget(page);
    }
    auto* line = new QFrame(this);
    line->setProperty("rule", true);
    line->setFixedHeight(1);
    auto* tabRow = new QVBoxLayout;
    tabRow->setContentsMargins(24, 0, 24, 0);
    tabRow->addWidget(m_tabs);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_header);
    column->addLayout(tabRow);
    column->addWidget(line);
    column->addWidget(m_bannerBox);
    column->addLayout(m_pages, 1);
    connect(m_tabs, &QTabBar::currentChanged, this, &ClientPage::showTab);
    connect(m_board, &BoardTab::liftSelected, this, &ClientPage::readActions);
    connect(m_board, &BoardTab::sessionsAsked, this, [this](lifts::Pattern pattern, std::optional<progression::Stage> stage) {
        m_sessions->setFilter(pattern, stage);
        m_tabs->setCurrentIndex(static_cast<int>(Tab::Sessions));
        m_sessions->takeFocus();
    });
    connect(m_board, &BoardTab::screenAsked, this, [this] { goToStep(QStringLiteral("movement")); });
    connect(m_health, &HealthTab::stepAsked, this, &ClientPage::goToStep);
    connect(m_direction, &direction::DirectionTab::planAsked, this, &ClientPage::planAsked);
    connect(m_direction, &direction::DirectionTab::written, this, &ClientPage::readAfterWriting);
    LiftInspector* inspector = m_board->inspector();
    connect(inspector, &LiftInspector::changeAsked, m_decisions, &LiftDecisions::change);
    connect(inspector, &LiftInspector::holdAsked, m_decisions, &LiftDecisions::hold);
    connect(inspector, &LiftInspector::swapAsked, m_decisions, &LiftDecisions::swap);
    connect(inspector, &LiftInspector::testAsked, m_decisions, &LiftDecisions::test);
    connect(inspector, &LiftInspector::releaseAsked, m_decisions, &LiftDecisions::release);
    connect(m_decisions, &LiftDecisions::written, this, &ClientPage::readAfterWriting);
    connect(inspector, &LiftInspector::healthAsked, this, [this] { m_tabs->setCurrentIndex(static_cast<int>(Tab::Health)); });
}

QAction* ClientPage::addPageAction(const QString& text, const QKeySequence& key, std::function<void()> does)
{
    auto* action = new QAction(text, this);
    action->setShortcut(key);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(action, &QAction::triggered, this, std::move(does));
    addAction(action);
    return action;
}

void ClientPage::makeActions()
{
    m_recordAction = addPageAction(tr("Record session"), Qt::Key_R, [this] { record(); });
    m_changeAction = addPageAction(tr("Change what is next"), Qt::Key_E, [this] { m_decisions->change(); });
    m_holdAction = addPageAction(tr("Hold here"), Qt::Key_H, [this] { m_decisions->hold(); });
    m_swapAction = addPageAction(tr("Swap the exercise"), Qt::Key_S, [this] { m_decisions->swap(); });
    m_testAction = addPageAction(tr("Test a maximum"), Qt::Key_T, [this] { m_decisions->test(); });
    m_releaseAction = addPageAction(tr("Release the lift"), Qt::Key_L, [this] { m_decisions->release(); });
    m_reportAction = addPageAction(tr("Progress report"), Qt::CTRL | Qt::SHIFT | Qt::Key_P, [this] { askForReport(); });
    addPageAction(tr("Profile, health, screen and plan"), Qt::Key_I, [this] { goToStep(QStringLiteral("profile")); });
    for (int tab = 0; tab < m_tabs->count(); ++tab) {
        addPageAction(m_tabs->tabText(tab), QKeySequence(Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + tab)), [this, tab] {
            m_tabs->setCurrentIndex(tab);
            m_pages->currentWidget()->setFocus(Qt::ShortcutFocusReason);
        });
    }
    makeRecordActions();
    addActions(m_direction->actions());
    connect(m_direction, &direction::DirectionTab::keysChanged, this, &ClientPage::pageChanged);
}

void ClientPage::makeRecordActions()
{
    addPageAction(tr("Make the client’s dossier"), {}, [this] {
        if (m_case) {
            Q_EMIT dossierAsked(m_client);
        }
    });
    addPageAction(tr("Same person as…"), {}, [this] {
        if (m_case) {
            Q_EMIT placeAsked({.page = QStringLiteral("duplicates"), .client = m_client});
        }
    });
    addPageAction(tr("Erase this client"), {}, [this] {
        if (m_case) {
            Q_EMIT erasureAsked(m_client);
        }
    });
}

void ClientPage::goToStep(const QString& step)
{
    Q_EMIT placeAsked({.page = QStringLiteral("onboarding"), .client = m_client, .tab = step});
}

void ClientPage::readAfterWriting()
{
    refresh();
    Q_EMIT studioChanged();
}

QString ClientPage::title() const
{
    return m_case ? common::qstring(m_case->client.name) : tr("Client");
}

void ClientPage::open(const shell::Place& place)
{
    if (!place.client.isNone() && place.client != m_client) {
        m_client = place.client;
        m_board->inspector()->closeEditor();
        m_sessions->clearFilter();
    }
    refresh();
    if (place.lift) {
        m_board->selectPattern(*place.lift);
    }
    m_tabs->setCurrentIndex(tabOf(place.tab));
    showTab(m_tabs->currentIndex());
    m_pages->currentWidget()->setFocus(Qt::OtherFocusReason);
}

shell::Place ClientPage::place() const
{
    shell::Place place;
    place.client = m_client;
    place.tab = QLatin1String(kTabKeys[static_cast<std::size_t>(m_tabs->currentIndex())]);
    if (const LiftCase* lift = m_case ? m_board->selectedLift() : nullptr) {
        place.lift = lift->pattern;
    }
    return place;
}

void ClientPage::refresh()
{
    auto read = m_presenter->read(m_client, m_services.clock.today());
    if (!read) {
        return showFailure(read.error().message);
    }
    auto next = std::make_unique<ClientCase>(*std::move(read));
    m_decisions->setCase(next.get());
    m_board->setCase(*next);  // before the case that it shows now goes
    m_case = std::move(next);
    showCase();
}

void ClientPage::showCase()
{
    m_header->setTitle(common::qstring(m_case->client.name));
    m_header->setSubtitle(subtitleOf(*m_case));
    setInitials(*m_initials, common::qstring(clients::initialsOf(m_case->client.name)));
    const NextSessionWords next = nextSessionWordsOf(*m_case);
    const QString places = next.places.isEmpty() ? QString() : QLatin1String("<br>") + next.places.toHtmlEscaped();
    m_nextSession->setText(common::proseHtml(QStringLiteral("<b>%1</b>").arg(next.when.toHtmlEscaped()) + places));
    m_sessions->setCase(*m_case);
    m_health->setCase(*m_case);
    m_direction->setClient(m_client, m_case->today);
    m_history->setClient(m_client, common::qstring(m_case->client.name));
    m_tabs->setVisible(true);
    showBanners();
    showTab(m_tabs->currentIndex());
    readActions();
    Q_EMIT pageChanged();
}

void ClientPage::showFailure(const QString& message)
{
    m_failure->setWords(tr("This client cannot be shown"), message.toHtmlEscaped());
    m_bannerBox->hide();
    m_tabs->setVisible(false);
    m_pages->setCurrentWidget(m_failure);
}

void ClientPage::showBanners()
{
    while (QLayoutItem* item = m_banners->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    const auto add = [this](const common::BannerMessage& message) {
        auto* banner = new common::Banner(m_services.look, m_bannerBox);
        banner->setMessage(message);
        if (m_banners->isEmpty()) {
            connect(banner->addButton(tr("Open health")), &QPushButton::clicked, this,
                    [this] { m_tabs->setCurrentIndex(static_cast<int>(Tab::Health)); });
        }
        m_banners->addWidget(banner);
        banner->show();  // at once: the layout shows it later, and gives it no room until then
    };
    if (const common::LockWords lock = common::lockWordsOf(m_case->clearance, m_case->client, m_case->today); !lock.headline.isEmpty()) {
        add({common::Signal::Pain, QStringLiteral("clearance"), lock.headline + QLatin1Char('.'), lock.text});
    }
    for (const clients::Caution& caution : m_case->cautions) {
        add({common::Signal::Warn, QStringLiteral("warning"), common::qstring(caution.bodyPart) + QLatin1Char('.'),
             common::qstring(caution.text)});
    }
}

void ClientPage::showTab(int tab)
{
    if (!m_case) {
        return;
    }
    m_pages->setCurrentIndex(tab);
    m_bannerBox->setVisible(tab != static_cast<int>(Tab::Health) && !m_banners->isEmpty());
    readActions();
    Q_EMIT pageChanged();
}

void ClientPage::readActions()
{
    const bool isOpen = m_case && !m_case->isBlocked();
    const bool isBoard = m_tabs->currentIndex() == static_cast<int>(Tab::Board);
    m_direction->setInFront(m_tabs->currentIndex() == static_cast<int>(Tab::Direction));
    m_recordAction->setEnabled(isOpen);
    m_record->setEnabled(isOpen);
    m_card->setEnabled(isOpen);
    m_report->setEnabled(m_case != nullptr);
    m_reportAction->setEnabled(m_case != nullptr);
    m_changeAction->setEnabled(isBoard && m_decisions->canChange());
    m_holdAction->setEnabled(isBoard && m_decisions->canHold());
    m_swapAction->setEnabled(isBoard && m_decisions->canSwap());
    m_testAction->setEnabled(isBoard && m_decisions->canTest());
    m_releaseAction->setEnabled(isBoard && m_decisions->canRelease());
}

std::vector<shell::KeyHint> ClientPage::keyHints() const
{
    if (m_tabs->currentIndex() == static_cast<int>(Tab::Direction)) {
        return m_direction->keyHints();
    }
    if (m_tabs->currentIndex() != static_cast<int>(Tab::Board)) {
        return {{QStringLiteral("R"), tr("Record")}, {QStringLiteral("Alt+1"), tr("Board")}};
    }
    return {{QStringLiteral("← →"), tr("Lift")},
            {QStringLiteral("R"), tr("Record")},
            {QStringLiteral("↑ ↓"), tr("Rung")},
            {QStringLiteral("Enter"), tr("Sessions")}};
}

std::optional<shell::OpenClient> ClientPage::openClient() const
{
    return m_case ? std::optional(shell::OpenClient{m_client, title()}) : std::nullopt;
}

bool ClientPage::isPlanInFront() const
{
    return m_tabs->currentIndex() == static_cast<int>(Tab::Direction) && m_direction->canPrint();
}

bool ClientPage::canPrint() const
{
    return m_case && (!m_case->isBlocked() || isPlanInFront());
}

void ClientPage::print()
{
    if (m_case && isPlanInFront()) {
        Q_EMIT planAsked(m_client);
    } else if (canPrint()) {
        Q_EMIT cardAsked(m_client);
    }
}

void ClientPage::askForReport()
{
    if (m_case) {
        Q_EMIT reportAsked(m_client);
    }
}

bool ClientPage::closeOrClear()
{
    switch (static_cast<Tab>(m_tabs->currentIndex())) {
    case Tab::Board:
        return m_board->closeOrClear();
    case Tab::Sessions:
        return m_sessions->clearFilter();
    case Tab::Health:
    case Tab::Direction:
    case Tab::History:
        break;
    }
    return false;
}

void ClientPage::setRoom(bool isNarrow, bool isLow)
{
    m_nextSession->setVisible(!isNarrow);
    m_board->setRoom(isNarrow, isLow);
    m_direction->setRoom(isNarrow, isLow);
}

void ClientPage::record()
{
    if (!m_case || m_case->isBlocked()) {
        return;
    }
    shell::Place floor;
    floor.page = QStringLiteral("floor");
    floor.client = m_client;
    if (m_case->nextSession && m_case->nextSession->date == m_case->today) {
        floor.session = m_case->nextSession->id;
    }
    Q_EMIT placeAsked(floor);
}

}  // namespace chalk::ui::board
