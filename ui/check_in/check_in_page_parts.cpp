#include "ui/check_in/check_in_page.h"
#include "ui/check_in/decision_form.h"
#include "ui/check_in/evidence_pane.h"
#include "ui/check_in/queue_list.h"
#include "ui/check_in/queue_model.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/empty_state.h"
#include "ui/common/loading_rows.h"
#include "ui/common/look.h"
#include "ui/common/page_header.h"
#include "ui/common/panel.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QStackedLayout>
#include <QVBoxLayout>

// How the page is put together.

namespace chalk::ui::check_in {

namespace {

constexpr int kPageEdge = 24;
constexpr int kPageFoot = 16;
// Pixels at a text size of 100 %.
constexpr double kQueueWide = 212;
constexpr double kQueueNarrow = 180;
constexpr double kFormWide = 348;
constexpr double kFormNarrow = 308;

}  // namespace

void CheckInPage::buildHeader()
{
    m_header = new common::PageHeader(m_services.look, this);
    m_header->setTitle(title());
    const auto add = [this](const QString& text, const QString& icon, const QString& spoken, auto does) {
        auto* button = new common::ActionButton(m_services.look, text, m_header);
        button->setIconName(icon);
        button->setAccessibleName(spoken);
        button->setToolTip(spoken);
        connect(button, &QPushButton::clicked, this, does);
        m_header->addTool(button);
        return button;
    };
    m_copy = add(tr("Copy summary"), QStringLiteral("send"), tr("Copy a short message for the client, Ctrl+Shift+C"), [this] { copySummary(); });
    m_report = add(tr("Report"), QStringLiteral("print"), tr("The client’s progress report, Ctrl+P"), [this] { print(); });
    m_previous = add(tr("Previous"), QStringLiteral("left"), tr("The client before, K"), [this] { m_desk->step(-1); });
    m_next = add(tr("Next"), QStringLiteral("right"), tr("The next client, J"), [this] { m_desk->step(1); });
}

void CheckInPage::buildBody()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_header);
    m_trouble = new common::Banner(m_services.look, this);
    m_trouble->hide();
    auto* above = new QHBoxLayout;
    above->setContentsMargins(kPageEdge, 0, kPageEdge, 0);
    above->addWidget(m_trouble);
    column->addLayout(above);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(kPageEdge, 0, kPageEdge, kPageFoot);
    row->setSpacing(16);
    column->addLayout(row, 1);
    buildQueue();
    row->addWidget(m_queuePanel);
    auto* centre = new QWidget(this);
    m_centre = new QStackedLayout(centre);
    buildCentre();
    row->addWidget(centre, 1);
    buildForm();
    row->addWidget(m_form);
}

void CheckInPage::buildQueue()
{
    m_queuePanel = new common::Panel(m_services.look, this);
    m_queuePanel->setTitle(tr("Queue"));
    m_list = new QueueList(m_services.look, *m_model, m_queuePanel);
    m_queuePanel->body()->setContentsMargins(1, 0, 1, 1);
    m_queuePanel->body()->addWidget(m_list, 1);
    auto* order = new QLabel(tr("Pain comes first, then clearance, then plateaus."), m_queuePanel);
    order->setProperty("role", QStringLiteral("muted"));
    order->setWordWrap(true);
    order->setMargin(12);
    m_queuePanel->body()->addWidget(order);
    connect(m_list, &QueueList::clientChosen, m_desk, &CheckInDesk::go);
}

void CheckInPage::buildCentre()
{
    m_evidence = new EvidencePane(m_services.look, m_services.dialogs, this);
    connect(m_evidence, &EvidencePane::liftChosen, this, [this](int lift) { m_desk->chooseLift(static_cast<std::size_t>(lift)); });
    m_centre->addWidget(m_evidence);
    auto* waiting = new common::Panel(m_services.look, this);
    m_loading = new common::LoadingRows(m_services.look, waiting);
    waiting->body()->addWidget(m_loading, 1);
    m_centre->addWidget(waiting);
    auto* ended = new common::Panel(m_services.look, this);
    m_empty = new common::EmptyState(m_services.look, ended);
    m_empty->setPicture(QStringLiteral("checkin"), common::Signal::Ok);
    m_printReports = m_empty->addButton(tr("Print reports"));
    connect(m_printReports, &QPushButton::clicked, this, &CheckInPage::printReports);
    ended->body()->addWidget(m_empty, 1);
    m_centre->addWidget(ended);
}

void CheckInPage::buildForm()
{
    m_form = new DecisionForm(m_services.look, m_services.catalogue, this);
    connect(m_form, &DecisionForm::decideAsked, this, &CheckInPage::decide);
    connect(m_form, &DecisionForm::skipAsked, m_desk, &CheckInDesk::skip);
    connect(m_form, &DecisionForm::editorAsked, this, &CheckInPage::openEditor);
    setRoom(false, false);
    connect(&m_services.look, &common::Look::changed, this, [this] { setRoom(m_isNarrow, false); });
}

void CheckInPage::setRoom(bool isNarrow, bool /*isLow*/)
{
    m_isNarrow = isNarrow;
    const common::Theme& theme = m_services.look.theme();
    m_queuePanel->setFixedWidth(qRound(theme.scaled(isNarrow ? kQueueNarrow : kQueueWide)));
    m_form->setFixedWidth(qRound(theme.scaled(isNarrow ? kFormNarrow : kFormWide)));
    m_evidence->setRoom(isNarrow);
}

void CheckInPage::addPageAction(const QString& text, const QList<QKeySequence>& keys, std::function<void()> act)
{
    auto* action = new QAction(text, this);
    action->setShortcuts(keys);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(action, &QAction::triggered, this, std::move(act));
    addAction(action);
}

void CheckInPage::buildActions()
{
    addPageAction(tr("Next client"), {Qt::Key_J, Qt::ALT | Qt::Key_Down}, [this] { m_desk->step(1); });
    addPageAction(tr("Previous client"), {Qt::Key_K, Qt::ALT | Qt::Key_Up}, [this] { m_desk->step(-1); });
    addPageAction(tr("Next lift"), {Qt::Key_BracketRight}, [this] { stepLift(1); });
    addPageAction(tr("Previous lift"), {Qt::Key_BracketLeft}, [this] { stepLift(-1); });
    for (int digit = 1; digit <= 9; ++digit) {
        addPageAction(tr("Choose %1").arg(digit), {QKeySequence(Qt::Key_0 + digit)}, [this, digit] { m_form->choose(static_cast<std::size_t>(digit - 1)); });
    }
    addPageAction(tr("Decide and next"), {Qt::CTRL | Qt::Key_Return, Qt::CTRL | Qt::Key_Enter}, [this] { decide(); });
    addPageAction(tr("Skip for now"), {Qt::CTRL | Qt::Key_J}, [this] { m_desk->skip(); });
    addPageAction(tr("Copy the summary for the client"), {Qt::CTRL | Qt::SHIFT | Qt::Key_C}, [this] { copySummary(); });
}

}  // namespace chalk::ui::check_in
