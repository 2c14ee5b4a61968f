#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/empty_state.h"
#include "ui/common/look.h"
#include "ui/common/page_header.h"
#include "ui/common/panel.h"
#include "ui/common/segmented_choice.h"
#include "ui/week/left_over_tray.h"
#include "ui/week/month_grid.h"
#include "ui/week/month_strip.h"
#include "ui/week/proposal_bar.h"
#include "ui/week/week_grid.h"
#include "ui/week/week_legend.h"
#include "ui/week/week_page.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QStackedLayout>
#include <QVBoxLayout>

namespace chalk::ui::week {

namespace {

constexpr int kMargin = 24;
constexpr int kPageFoot = 16;

QFrame* weekRule(QWidget* parent)
{
    auto* rule = new QFrame(parent);
    rule->setProperty("rule", true);
    rule->setFixedHeight(1);
    return rule;
}

}  // namespace

void WeekPage::build()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    buildHeader();
    column->addWidget(m_header);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(kMargin, 0, kMargin, kPageFoot);
    row->setSpacing(12);
    column->addLayout(row, 1);
    auto* left = new QWidget(this);
    buildWeek(left);
    row->addWidget(left, 1);
    buildTray();
    row->addWidget(m_tray);
}

void WeekPage::buildHeader()
{
    m_header = new common::PageHeader(m_services.look, this);
    const auto addStep = [this](const QString& icon, const QString& spoken, int by) {
        auto* button = new common::ActionButton(m_services.look, {}, m_header);
        button->setIconName(icon);
        button->setAccessibleName(spoken);
        button->setToolTip(spoken);
        connect(button, &QPushButton::clicked, this, [this, by] { step(by); });
        m_header->addLead(button);
    };
    addStep(QStringLiteral("left"), tr("The week before, Page Up"), -1);
    addStep(QStringLiteral("right"), tr("The week after, Page Down"), 1);
    m_span = new common::SegmentedChoice(tr("What is shown"), {{tr("Week")}, {tr("Month")}}, m_header);
    m_span->setChosen(0);
    connect(m_span, &common::SegmentedChoice::choiceMade, this, [this](int index) { showMonth(index == 1); });
    m_header->addTool(m_span);
    m_hours = new common::ActionButton(m_services.look, tr("Hours"), m_header);
    m_hours->setIconName(QStringLiteral("closed"));
    m_hours->setAccessibleName(tr("Hours and closures, H"));
    m_hours->setToolTip(m_hours->accessibleName());
    connect(m_hours, &QPushButton::clicked, this, &WeekPage::editHours);
    m_hours->setVisible(isTrainingShown());
    m_header->addTool(m_hours);
    m_print = new common::ActionButton(m_services.look, tr("Print"), m_header);
    m_print->setIconName(QStringLiteral("print"));
    m_print->setAccessibleName(tr("Print or send the week"));
    m_print->setToolTip(m_print->accessibleName());
    connect(m_print, &QPushButton::clicked, this, &WeekPage::offerPapers);
    m_header->addTool(m_print);
    m_fill = new common::ActionButton(m_services.look, tr("Fill the week"), m_header);
    m_fill->setIconName(QStringLiteral("board"));
    m_fill->setKind(common::ButtonKind::Primary);
    m_fill->setKeyText(tr("F"));
    connect(m_fill, &QPushButton::clicked, this, &WeekPage::fill);
    m_header->addTool(m_fill);
}

void WeekPage::buildWeek(QWidget* left)
{
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    m_strip = new MonthStrip(m_services.look, left);
    connect(m_strip, &MonthStrip::weekAsked, this, &WeekPage::goTo);
    column->addWidget(m_strip);
    m_trouble = new common::Banner(m_services.look, left);
    column->addWidget(m_trouble);
    m_bar = new ProposalBar(m_services.look, left);
    connect(m_bar, &ProposalBar::left, this, [this] { closeOrClear(); });
    connect(m_bar, &ProposalBar::kept, this, &WeekPage::goOn);
    column->addWidget(m_bar);
    auto* panel = new common::Panel(m_services.look, left);
    column->addWidget(panel, 1);
    auto* body = new QWidget(panel);
    m_stack = new QStackedLayout(body);
    panel->body()->setContentsMargins(1, 1, 1, 1);
    panel->body()->addWidget(body);
    m_grid = new WeekGrid(m_services.look,
                          {[this](const Wishes& wishes, const chalk::week::Slot& slot) { return m_desk.reasonAgainst(wishes, slot); },
                           [this](const Wishes& wishes) { return m_desk.closedFor(wishes); }, [this](std::size_t block) { return conflictOf(block); }},
                          body);
    m_grid->installEventFilter(this);
    m_stack->addWidget(m_grid);
    m_month = new MonthGrid(m_services.look, body);
    connect(m_month, &MonthGrid::weekAsked, this, [this](base::Date day) {
        showMonth(false);
        goTo(day);
    });
    m_stack->addWidget(m_month);
    m_empty = new common::EmptyState(m_services.look, body);
    m_empty->setPicture(QStringLiteral("week"));
    m_copy = m_empty->addButton(tr("Copy last week"));
    connect(m_copy, &QPushButton::clicked, this, &WeekPage::copyLastWeek);
    connect(m_empty->addButton(tr("Fill the week")), &QPushButton::clicked, this, &WeekPage::fill);
    m_stack->addWidget(m_empty);
    connect(m_grid, &WeekGrid::blockOpened, this, &WeekPage::openBlock);
    connect(m_grid, &WeekGrid::blockClicked, this, [this](int index) {
        const WeekBlock& block = m_grid->scene().blocks[static_cast<std::size_t>(index)];
        if (block.state == BlockState::Proposed && !isFilling()) {
            settle(m_desk.keep(block.wishes()));
        }
    });
    connect(m_grid, &WeekGrid::offerTaken, this, [this](int block) {
        if (const auto row = conflictRow(static_cast<std::size_t>(block))) {
            takeOffer(*row);
        }
    });
    connect(m_grid, &WeekGrid::emptyOpened, this, &WeekPage::addSession);
    connect(m_grid, &WeekGrid::dropped, this, [this](const Wishes& wishes, const chalk::week::Slot& slot) { settle(m_desk.move(wishes, slot)); });
    connect(m_grid, &WeekGrid::moving, this, [this](const QString& where, const QString& reason) {
        m_movingWhere = where;
        m_movingReason = reason;
        showBar();
    });
}

void WeekPage::buildTray()
{
    m_tray = new common::Panel(m_services.look, this);
    m_tray->setTitle(tr("Left over"));
    m_items = new LeftOverModel(this);
    m_list = new QListView(m_tray);
    m_list->setAccessibleName(tr("Left over"));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setResizeMode(QListView::Adjust);
    m_list->setWordWrap(true);  // heights follow the width, also when the bar comes
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setMouseTracking(true);
    m_list->setDragEnabled(true);
    m_list->setModel(m_items);
    m_list->setItemDelegate(new LeftOverDelegate(m_services.look, *m_items, m_list));
    m_list->installEventFilter(this);
    connect(m_list, &QListView::clicked, this, [this](const QModelIndex& at) { takeOffer(at.row()); });
    connect(&m_services.look, &common::Look::changed, m_list, &QListView::doItemsLayout);
    m_tray->body()->addWidget(m_list, 1);
    m_hint = new QLabel(tr("Drag a name onto the grid, or press M and use the arrow keys."), m_tray);
    m_hint->setProperty("role", QStringLiteral("secondary"));
    m_hint->setWordWrap(true);
    m_hint->setContentsMargins(14, 10, 14, 10);
    m_tray->body()->addWidget(m_hint);
    m_tray->body()->addWidget(weekRule(m_tray));
    m_legend = new WeekLegend(m_services.look, m_tray);
    m_tray->body()->addWidget(m_legend);
}

void WeekPage::addPageAction(const QString& text, const QList<QKeySequence>& keys, std::function<void()> act)
{
    auto* action = new QAction(text, this);
    action->setShortcuts(keys);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(action, &QAction::triggered, this, std::move(act));
    addAction(action);
}

void WeekPage::buildActions()
{
    addPageAction(tr("Fill the week"), {Qt::Key_F}, [this] { fill(); });
    addPageAction(tr("Mend what a change has broken"), {Qt::Key_R}, [this] { mend(); });
    addPageAction(tr("Keep all that is proposed"), {Qt::CTRL | Qt::Key_Return, Qt::CTRL | Qt::Key_Enter}, [this] { goOn(); });
    if (isTrainingShown()) {
        addPageAction(tr("The cards of the week"), {Qt::CTRL | Qt::SHIFT | Qt::Key_P}, [this] { printCards(); });
        addPageAction(tr("Hours and closures"), {Qt::Key_H}, [this] { editHours(); });
    }
    addPageAction(tr("Copy last week"), {Qt::CTRL | Qt::SHIFT | Qt::Key_C}, [this] { copyLastWeek(); });
    addPageAction(tr("Add a session"), {Qt::Key_A}, [this] { addSession(); });
    addPageAction(tr("Lock or unlock"), {Qt::Key_L}, [this] { toggleLock(); });
    addPageAction(tr("Move"), {Qt::Key_M}, [this] { move(); });
    addPageAction(tr("Take away"), {Qt::Key_Delete}, [this] { takeAway(); });
    addPageAction(tr("This week"), {Qt::Key_T}, [this] { goTo(m_services.studio.clock.today()); });
    addPageAction(tr("The week before"), {Qt::Key_PageUp}, [this] { step(-1); });
    addPageAction(tr("The week after"), {Qt::Key_PageDown}, [this] { step(1); });
    addPageAction(tr("Week or month"), {Qt::ALT | Qt::Key_M}, [this] { showMonth(!m_isMonth); });
}

}  // namespace chalk::ui::week
