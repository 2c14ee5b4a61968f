#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/empty_state.h"
#include "ui/common/look.h"
#include "ui/common/page_header.h"
#include "ui/common/scroll_column.h"
#include "ui/floor/card_pane.h"
#include "ui/floor/client_tabs.h"
#include "ui/floor/entry_pane.h"
#include "ui/floor/floor_page.h"
#include "ui/floor/entry_fields.h"
#include "ui/floor/lift_rows.h"
#include "ui/floor/lift_table.h"
#include "ui/floor/report_strip.h"
#include "ui/floor/rest_timer_strip.h"
#include "ui/floor/run_list.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QScrollArea>
#include <QStackedLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

constexpr int kRunWidth = 212;
constexpr int kNarrowRunWidth = 172;
constexpr int kCardWidth = 306;
constexpr int kNarrowCardWidth = 250;
constexpr double kMostRunGrowth = 1.25;  ///< the run grows with the text, up to this
constexpr double kTightWidth = 880;      ///< at a text size of 100 %: below it the card gives way to the results
constexpr double kLeastTable = 150;
constexpr double kLowHeight = 640;       ///< at a text size of 100 %: below it a rest alone is no larger than others

QFrame* floorRule(QWidget* parent)
{
    auto* rule = new QFrame(parent);
    rule->setProperty("rule", true);
    rule->setFixedHeight(1);
    return rule;
}

void asPaintedList(QListView& list, const QString& name)
{
    list.setAccessibleName(name);
    list.setFrameShape(QFrame::NoFrame);
    list.setResizeMode(QListView::Adjust);
    list.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list.setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
}

}  // namespace

void FloorPage::build()
{
    buildRests();
    auto* column = new QVBoxLayout(m_stack->widget(0));
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    buildHeader();
    column->addWidget(m_header);
    column->addWidget(m_strip);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(24, 0, 24, 16);
    row->setSpacing(16);
    column->addLayout(row, 1);
    buildRun();
    row->addWidget(m_runPanel);
    auto* middle = new common::Panel(m_services.look, this);
    row->addWidget(middle, 1);
    auto* strip = new QWidget(middle);
    strip->setProperty("ground", QStringLiteral("win"));
    auto* tabs = new QHBoxLayout(strip);
    tabs->setContentsMargins(0, 0, 14, 0);
    m_tabs = new ClientTabs(m_services.look, strip);
    connect(m_tabs, &QTabBar::currentChanged, this, [this](int index) {
        m_desk.chooseClient(index);
        showDesk(true);
    });
    m_nextHint = new QLabel(tr("Ctrl Tab: next client"), strip);
    m_nextHint->setProperty("role", QStringLiteral("caption"));
    tabs->addWidget(m_tabs, 1);
    tabs->addWidget(m_nextHint);
    middle->body()->addWidget(strip);
    m_trouble = new common::Banner(m_services.look, middle);
    middle->body()->addWidget(m_trouble);
    buildRecording();
    middle->body()->addWidget(m_recording, 1);
    m_empty = new common::EmptyState(m_services.look, middle);
    m_emptyAction = m_empty->addButton(QString());
    connect(m_emptyAction, &QPushButton::clicked, this, &FloorPage::emptyAction);
    middle->body()->addWidget(m_empty, 1);
    buildReport(middle);
    middle->body()->addWidget(m_reportBox);
    m_foot = buildFoot(middle);
    middle->body()->addWidget(m_foot);
    m_card = new CardPane(m_services.look, this);
    m_card->setFixedWidth(kCardWidth);
    connect(m_card, &CardPane::printAsked, this, &FloorPage::print);
    row->addWidget(m_card);
    connect(&m_services.look, &common::Look::changed, this, &FloorPage::fitColumns);
}

void FloorPage::buildHeader()
{
    m_header = new common::PageHeader(m_services.look, this);
    m_header->setTitle(tr("Floor"));
    const auto add = [this](const QString& text, const QString& icon, const QString& spoken, auto&& act) {
        auto* button = new common::ActionButton(m_services.look, text, m_header);
        button->setIconName(icon);
        button->setAccessibleName(spoken);
        button->setToolTip(spoken);
        connect(button, &QPushButton::clicked, this, act);
        m_header->addTool(button);
        return button;
    };
    m_today = add(tr("Today"), QString(), tr("Back to today"), [this] { goToDay(m_services.clock.today()); });
    add(QString(), QStringLiteral("left"), tr("The day before, Ctrl+Page Up"), [this] { goToDay(m_desk.day() - 1); });
    add(QString(), QStringLiteral("right"), tr("The day after, Ctrl+Page Down"), [this] { goToDay(m_desk.day() + 1); });
    auto* cards = add(tr("All cards"), QStringLiteral("print"), tr("All cards of the day"), [this] { Q_EMIT dayCardsAsked(m_desk.day()); });
    cards->setKeyText(tr("Ctrl Shift P"));
}

void FloorPage::buildRun()
{
    m_runPanel = new common::Panel(m_services.look, this);
    m_runPanel->setFixedWidth(kRunWidth);
    m_runModel = new RunModel(this);
    m_runList = new QListView(m_runPanel);
    asPaintedList(*m_runList, tr("Run of the day"));
    m_runList->setModel(m_runModel);
    m_runList->setMouseTracking(true);
    m_runList->installEventFilter(this);
    m_runList->viewport()->installEventFilter(this);
    m_runList->setItemDelegate(new RunDelegate(m_services.look, *m_runModel, m_runList));
    m_runPanel->body()->addWidget(m_runList, 1);
    m_runPanel->body()->addWidget(floorRule(m_runPanel));
    m_runPanel->body()->addWidget(buildRunFoot());
    m_runList->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(m_runList, &QListView::customContextMenuRequested, this, [this](const QPoint& at) {
        const QModelIndex row = m_runList->indexAt(at);
        offerStates(row.isValid() ? row.row() : m_desk.slotIndex(), m_runList->viewport()->mapToGlobal(at));
    });
    connect(m_runList->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& current) {
        // A list with the keys in it keeps them: Up and Down go on through the run.
        m_desk.chooseSlot(current.row());
        showDesk(!m_runList->hasFocus());
    });
    connect(m_runList, &QListView::clicked, this, [this] { showDesk(true); });
    connect(m_runList, &QListView::activated, this, [this] { showDesk(true); });
}

QWidget* FloorPage::buildRunFoot()
{
    auto* foot = new QWidget(m_runPanel);
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(10, 8, 10, 8);
    row->setSpacing(6);
    auto* add = new common::ActionButton(m_services.look, tr("Add"), foot);
    add->setIconName(QStringLiteral("plus"));
    add->setAccessibleName(tr("Add a session, Alt+S"));
    m_states = new common::ActionButton(m_services.look, tr("State"), foot);
    m_states->setAccessibleName(tr("What became of the session, Alt+M"));
    for (common::ActionButton* button : {add, m_states}) {
        button->setButtonSize(common::ButtonSize::Small);
        button->setToolTip(button->accessibleName());
        row->addWidget(button, 1);
    }
    connect(add, &QPushButton::clicked, this, &FloorPage::addSession);
    connect(m_states, &QPushButton::clicked, this, [this] { offerStates(m_desk.slotIndex(), m_states->mapToGlobal(QPoint(0, 0))); });
    return foot;
}

void FloorPage::buildRecording()
{
    m_recording = new QWidget(this);
    auto* column = new QVBoxLayout(m_recording);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_entry = new EntryPane(m_services.look, m_recording);
    connect(m_entry, &EntryPane::typed, this, [this](const QString& line) {
        m_desk.type(line);
        showDesk(false);
    });
    connect(m_entry, &EntryPane::judged, this, [this](const RehearsalDraft& draft) {
        m_desk.judge(draft);
        showDesk(false);
    });
    connect(m_entry, &EntryPane::saveAsked, this, [this] { save(false); });
    buildTable();
    auto* work = new QWidget(m_recording);
    auto* rows = new QVBoxLayout(work);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    rows->addWidget(m_entry);
    rows->addWidget(new LiftCaptions(m_services.look, work));
    rows->addWidget(m_table, 1);
    auto* scroll = new QScrollArea(m_recording);
    scroll->setFrameShape(QFrame::NoFrame);
    common::holdColumn(*scroll, work);
    column->addWidget(scroll, 1);
}

void FloorPage::buildTable()
{
    m_rows = new LiftRowsModel(this);
    m_table = new LiftTable(m_services.look, *m_rows, [this](LiftField field, int set) { return m_desk.lift() == nullptr ? QString() : fieldText(*m_desk.lift(), field, set); },
                            m_recording);
    asPaintedList(*m_table, tr("Lifts of this session"));
    m_table->setModel(m_rows);
    m_table->setItemDelegate(new LiftRowDelegate(m_services.look, *m_rows, m_table));
    m_table->setFocusPolicy(Qt::ClickFocus);
    connect(m_table, &LiftTable::rowAsked, this, [this](int row) {
        m_desk.chooseLift(row);
        m_justSaved = {};
        showDesk(true);
    });
    m_table->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(m_table, &LiftTable::customContextMenuRequested, this, [this](const QPoint& at) {
        offerLiftMenu(m_table->indexAt(at).row(), m_table->viewport()->mapToGlobal(at));
    });
    connect(m_table, &LiftTable::fieldTyped, this, &FloorPage::typeField);
    connect(m_table, &LiftTable::lineAsked, this, [this] { showDesk(true); });
    m_table->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
}

void FloorPage::buildReport(QWidget* parent)
{
    m_reportBox = new QWidget(parent);
    auto* column = new QVBoxLayout(m_reportBox);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_report = new ReportStrip(m_services.look, m_reportBox);
    column->addWidget(floorRule(m_reportBox));
    column->addWidget(m_report);
    connect(m_report, &ReportStrip::left, this, &FloorPage::focusWork);
    connect(m_report, &ReportStrip::told, this, [this](base::SessionId session, const sessions::SessionReport& report) {
        if (m_desk.saveReport(session, report) == SaveState::Saved) {
            Q_EMIT studioChanged();
        }
        showDesk(false);
    });
}

QWidget* FloorPage::buildFoot(QWidget* parent)
{
    auto* foot = new QWidget(parent);
    auto* column = new QVBoxLayout(foot);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(floorRule(foot));
    auto* row = new QHBoxLayout;
    column->addLayout(row);
    row->setContentsMargins(16, 10, 16, 10);
    row->setSpacing(8);
    m_skip = new common::ActionButton(m_services.look, tr("Skip lift"), foot);
    m_swap = new common::ActionButton(m_services.look, tr("Swap"), foot);
    m_swap->setAccessibleName(tr("Swap the exercise, Alt+W"));
    m_swap->setToolTip(m_swap->accessibleName());
    m_test = new common::ActionButton(m_services.look, tr("Test"), foot);
    m_test->setAccessibleName(tr("Test a maximum, Alt+T"));
    m_test->setToolTip(m_test->accessibleName());
    m_delete = new common::ActionButton(m_services.look, tr("Delete record"), foot);
    m_add = new common::ActionButton(m_services.look, tr("Add a lift"), foot);
    m_next = new common::ActionButton(m_services.look, tr("Save, next client"), foot);
    m_next->setKind(common::ButtonKind::Primary);
    m_next->setKeyText(tr("Ctrl Enter"));
    connect(m_skip, &QPushButton::clicked, this, &FloorPage::skipLift);
    connect(m_swap, &QPushButton::clicked, this, &FloorPage::swapLift);
    connect(m_test, &QPushButton::clicked, this, &FloorPage::testLift);
    connect(m_add, &QPushButton::clicked, this, &FloorPage::offerLifts);
    connect(m_next, &QPushButton::clicked, this, [this] { save(true); });
    connect(m_delete, &QPushButton::clicked, this, &FloorPage::deleteRecord);
    row->addWidget(m_skip);
    row->addWidget(m_test);
    row->addWidget(m_swap);
    row->addWidget(m_delete);
    row->addWidget(m_add);
    row->addStretch(1);
    row->addWidget(m_next);
    return foot;
}

QAction* FloorPage::addPageAction(const QString& text, const QKeySequence& keys, std::function<void()> act)
{
    auto* action = new QAction(text, this);
    action->setShortcut(keys);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(action, &QAction::triggered, this, std::move(act));
    addAction(action);
    return action;
}

void FloorPage::buildActions()
{
    const auto add = [this](const QString& text, const QKeySequence& keys, auto&& act) { return addPageAction(text, keys, act); };
    auto* saveNext = add(tr("Save and go to the next client"), Qt::CTRL | Qt::Key_Return, [this] { save(true); });
    saveNext->setShortcuts({Qt::CTRL | Qt::Key_Return, Qt::CTRL | Qt::Key_Enter});
    add(tr("Next lift"), Qt::Key_Down, [this] { moveLift(1); })->setShortcuts({Qt::Key_Down, Qt::Key_PageDown});
    add(tr("Previous lift"), Qt::Key_Up, [this] { moveLift(-1); })->setShortcuts({Qt::Key_Up, Qt::Key_PageUp});
    add(tr("Next client"), Qt::ALT | Qt::Key_Right, [this] { moveClient(1); });
    add(tr("Previous client"), Qt::ALT | Qt::Key_Left, [this] { moveClient(-1); });
    add(tr("Next session of the run"), Qt::ALT | Qt::Key_Down, [this] { moveSlot(1); });
    add(tr("Previous session of the run"), Qt::ALT | Qt::Key_Up, [this] { moveSlot(-1); });
    add(tr("Type in the fields of the lift"), Qt::Key_F2, [this] { m_table->editBox(); });
    m_liftActions.skip = add(tr("Skip this lift today"), Qt::ALT | Qt::Key_X, [this] { skipLift(); });
    m_liftActions.swap = add(tr("Swap the exercise of this lift"), Qt::ALT | Qt::Key_W, [this] { swapLift(); });
    m_liftActions.test = add(tr("Test a maximum of this lift"), Qt::ALT | Qt::Key_T, [this] { testLift(); });
    m_liftActions.earlier = add(tr("Do this lift earlier today"), Qt::CTRL | Qt::ALT | Qt::Key_Up, [this] { shiftLift(-1); });
    m_liftActions.later = add(tr("Do this lift later today"), Qt::CTRL | Qt::ALT | Qt::Key_Down, [this] { shiftLift(1); });
    add(tr("Add a lift to this session"), Qt::ALT | Qt::Key_A, [this] { offerLifts(); });
    m_liftActions.remove = add(tr("Delete what is recorded for this lift"), Qt::ALT | Qt::Key_Delete, [this] { deleteRecord(); });
    add(tr("Add a session that was not planned"), Qt::ALT | Qt::Key_S, [this] { addSession(); });
    add(tr("What became of the session"), Qt::ALT | Qt::Key_M, [this] { offerStates(m_desk.slotIndex(), m_states->mapToGlobal(QPoint(0, 0))); });
    add(tr("How the session felt"), Qt::ALT | Qt::Key_E, [this] {
        if (m_reportBox->isVisible()) {
            m_report->takeFocus();
        }
    });
    add(tr("The day before"), Qt::CTRL | Qt::Key_PageUp, [this] { goToDay(m_desk.day() - 1); });
    add(tr("The day after"), Qt::CTRL | Qt::Key_PageDown, [this] { goToDay(m_desk.day() + 1); });
    add(tr("Back to today"), Qt::CTRL | Qt::Key_Home, [this] { goToDay(m_services.clock.today()); });
    add(tr("All cards of the day"), Qt::CTRL | Qt::SHIFT | Qt::Key_P, [this] { Q_EMIT dayCardsAsked(m_desk.day()); });
    m_workActions = actions();
    addRestActions();
}

void FloorPage::setRoom(bool isNarrow, bool isLow)
{
    Q_UNUSED(isLow)
    m_isNarrow = isNarrow;
    fitColumns();
}

bool FloorPage::isTight() const
{
    return width() < m_services.look.theme().scaled(kTightWidth);
}

void FloorPage::fitColumns()
{
    const common::Theme& theme = m_services.look.theme();
    const double growth = std::clamp(theme.scaled(1), 1.0, kMostRunGrowth);
    m_runPanel->setFixedWidth(qRound((m_isNarrow ? kNarrowRunWidth : kRunWidth) * growth));
    m_card->setFixedWidth(m_isNarrow ? kNarrowCardWidth : kCardWidth);
    m_card->setVisible(!isTight());
    m_nextHint->setVisible(m_hasNextClient && !isTight());
    m_table->setMinimumHeight(qRound(theme.scaled(kLeastTable)));
    m_strip->setTight(height() < theme.scaled(kLowHeight));
    m_report->setTight(height() < theme.scaled(kLowHeight));
}

void FloorPage::resizeEvent(QResizeEvent* event)
{
    shell::Page::resizeEvent(event);
    fitColumns();
}

}  // namespace chalk::ui::floor
