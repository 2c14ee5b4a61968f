#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/loading_rows.h"
#include "ui/common/page_header.h"
#include "ui/common/segmented_choice.h"
#include "ui/trends/trend_cards.h"
#include "ui/trends/trend_tables.h"
#include "ui/trends/trends_page.h"

#include <QAction>
#include <QComboBox>
#include <QStackedLayout>
#include <QVBoxLayout>

// How the page is put together.

namespace chalk::ui::trends {

namespace {

constexpr int kTrendsEdge = 24;
constexpr int kTrendsFoot = 16;
constexpr int kTrendsGap = 12;
constexpr int kMostNamesInSight = 16;

}  // namespace

void TrendsPage::buildHeader()
{
    m_header = new common::PageHeader(m_services.look, this);
    m_header->setTitle(tr("Trends"));
    m_who = new QComboBox(m_header);
    m_who->setAccessibleName(tr("Whose trends"));
    m_who->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_who->setMaxVisibleItems(kMostNamesInSight);
    m_header->addTool(m_who);
    m_span = new common::SegmentedChoice(tr("How many weeks"), {{tr("4 weeks")}, {tr("12 weeks")}, {tr("26 weeks")}}, m_header);
    m_span->setChosen(1);
    m_header->addTool(m_span);
    m_export = new common::ActionButton(m_services.look, tr("Export"), m_header);
    m_export->setIconName(QStringLiteral("send"));
    m_export->setKeyText(tr("E"));
    m_export->setEnabled(false);
    m_header->addTool(m_export);
    m_report = new common::ActionButton(m_services.look, tr("Report"), m_header);
    m_report->setIconName(QStringLiteral("print"));
    m_report->hide();
    connect(m_report, &QPushButton::clicked, this, &TrendsPage::print);
    m_header->addTool(m_report);
}

void TrendsPage::buildBody()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_header);
    auto* body = new QVBoxLayout;
    body->setContentsMargins(kTrendsEdge, 0, kTrendsEdge, kTrendsFoot);
    body->setSpacing(kTrendsGap);
    column->addLayout(body, 1);
    m_news = new common::Banner(m_services.look, this);
    m_news->hide();
    body->addWidget(m_news);
    m_learning = new common::Banner(m_services.look, this);
    m_learning->hide();
    connect(m_learning->addButton(tr("Open the board")), &QPushButton::clicked, this, &TrendsPage::openBoard);
    body->addWidget(m_learning);
    auto* pane = new QWidget(this);
    m_stack = new QStackedLayout(pane);
    auto* waiting = new QWidget(pane);
    m_loading = new common::LoadingRows(m_services.look, waiting);
    auto* rows = new QVBoxLayout(waiting);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->addWidget(m_loading);
    m_cards = new TrendCards(m_services.look, pane);
    m_tables = new TrendTables(m_services.look, pane);
    m_stack->addWidget(waiting);
    m_stack->addWidget(m_cards);
    m_stack->addWidget(m_tables);
    body->addWidget(pane, 1);
}

QAction* TrendsPage::addKey(const QString& text, const QKeySequence& key, void (TrendsPage::*run)())
{
    // The keys work on the charts and the tables: in the list of clients letters find a name.
    auto* action = new QAction(text, this);
    action->setShortcut(key);
    action->setShortcutContext(Qt::WidgetShortcut);
    connect(action, &QAction::triggered, this, run);
    addAction(action);
    m_keys.push_back(action);
    for (ChartView* view : m_cards->views()) {
        view->addAction(action);
    }
    return action;
}

void TrendsPage::addActions()
{
    addKey(tr("The week before"), QKeySequence(Qt::Key_Left), &TrendsPage::goBack);
    addKey(tr("The week after"), QKeySequence(Qt::Key_Right), &TrendsPage::goOn);
    addKey(tr("Charts or table"), QKeySequence(Qt::Key_T), &TrendsPage::toggleTable);
    addKey(tr("Export the numbers or a chart"), QKeySequence(Qt::Key_E), &TrendsPage::offerExports);
    addKey(tr("Copy the numbers"), QKeySequence::Copy, &TrendsPage::copyNumbers);
    addKey(tr("Open the client's board"), QKeySequence(Qt::Key_B), &TrendsPage::openBoard);
}

void TrendsPage::connectParts()
{
    connect(m_who, &QComboBox::activated, this, &TrendsPage::chooseClient);
    connect(m_span, &common::SegmentedChoice::choiceMade, this, &TrendsPage::setWeeks);
    connect(m_export, &QPushButton::clicked, this, &TrendsPage::offerExports);
    connect(&m_presenter, &TrendsPresenter::begun, this, &TrendsPage::showReading);
    connect(&m_presenter, &TrendsPresenter::loaded, this, &TrendsPage::showView);
    connect(&m_presenter, &TrendsPresenter::failed, this, [this](const QString& message) {
        m_loading->end();
        showRange();
        sayNews(tr("The trends cannot be read."), message + QStringLiteral(" ") + tr("What is shown is what was read last. F5 reads again."), true);
    });
}

}  // namespace chalk::ui::trends
