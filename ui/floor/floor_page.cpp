#include "ui/floor/floor_page.h"

#include "ui/common/act_history.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/empty_state.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/page_header.h"
#include "ui/common/panel.h"
#include "ui/floor/entry_words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QTabBar>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::floor {

namespace {

QString slotState(const RunSlot& slot)
{
    if (slot.isRecorded()) {
        return FloorPage::tr("%1 · recorded").arg(slot.coach);
    }
    return slot.coach;
}

LiftRow::Box boxOf(const QString& text, bool isEntered, bool isLow = false)
{
    return {text, isEntered, isLow};
}

}  // namespace

FloorPage::FloorPage(const FloorServices& services, QWidget* parent) : Page(parent), m_services(services)
{
    build();
    buildActions();
}

void FloorPage::build()
{
    const common::Look& look = m_services.look;
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_header = new common::PageHeader(look, this);
    m_header->setTitle(tr("Floor"));
    column->addWidget(m_header);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(24, 0, 24, 16);
    row->setSpacing(16);
    column->addLayout(row, 1);

    m_runPanel = new common::Panel(look, this);
    m_runPanel->setTitle(tr("Today’s run"));
    m_runPanel->setFixedWidth(212);
    m_runList = new QListWidget(m_runPanel);
    m_runList->setAccessibleName(tr("Today’s run"));
    m_runList->setWordWrap(true);
    m_runList->setFrameShape(QFrame::NoFrame);
    m_runPanel->body()->addWidget(m_runList);
    connect(m_runList, &QListWidget::currentRowChanged, this, &FloorPage::showSlot);
    row->addWidget(m_runPanel);

    auto* panel = new common::Panel(look, this);
    buildEntry(*panel);
    row->addWidget(panel, 1);
}

void FloorPage::buildEntry(common::Panel& panel)
{
    const common::Look& look = m_services.look;
    m_entry = new QWidget(&panel);
    auto* column = new QVBoxLayout(m_entry);
    column->setContentsMargins(16, 8, 16, 12);
    column->setSpacing(8);
    m_tabs = new QTabBar(m_entry);
    m_tabs->setDrawBase(false);
    m_tabs->setExpanding(false);
    m_tabs->setAccessibleName(tr("Clients of this session"));
    connect(m_tabs, &QTabBar::currentChanged, this, &FloorPage::showClient);
    m_liftName = new QLabel(m_entry);
    m_liftName->setTextFormat(Qt::RichText);
    m_liftName->setWordWrap(true);
    m_line = new QLineEdit(m_entry);
    m_line->setMinimumHeight(48);
    m_line->setAccessibleName(tr("Result of the lift"));
    connect(m_line, &QLineEdit::textChanged, this, &FloorPage::readLine);
    connect(m_line, &QLineEdit::returnPressed, this, &FloorPage::save);
    m_chips = new QLabel(m_entry);
    m_chips->setTextFormat(Qt::RichText);
    m_chips->setWordWrap(true);
    m_message = new common::Banner(look, m_entry);
    m_rows = new LiftRowsModel(this);
    m_table = new QListView(m_entry);
    m_table->setModel(m_rows);
    m_table->setItemDelegate(new LiftRowDelegate(look, *m_rows, m_table));
    m_table->setFrameShape(QFrame::NoFrame);
    m_table->setResizeMode(QListView::Adjust);
    m_table->setAccessibleName(tr("Lifts of this session"));
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) { showLift(current.row()); });
    for (QWidget* widget : {static_cast<QWidget*>(m_tabs), static_cast<QWidget*>(m_liftName), static_cast<QWidget*>(m_line),
                            static_cast<QWidget*>(m_chips), static_cast<QWidget*>(m_message)}) {
        column->addWidget(widget);
    }
    column->addWidget(m_table, 1);
    m_empty = new common::EmptyState(look, &panel);
    m_empty->setPicture(QStringLiteral("floor"));
    panel.body()->addWidget(m_entry, 1);
    panel.body()->addWidget(m_empty, 1);
}

void FloorPage::buildActions()
{
    const auto add = [this](const QString& text, const QKeySequence& keys, auto&& act) {
        auto* action = new QAction(text, this);
        action->setShortcut(keys);
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        connect(action, &QAction::triggered, this, act);
        addAction(action);
    };
    add(tr("Save and go to the next client"), Qt::CTRL | Qt::Key_Return, [this] {
        save();
        if (m_failure.isEmpty() && !m_isDoubtAsked) {
            moveClient(1);
        }
    });
    add(tr("Next lift"), Qt::Key_Down, [this] { moveLift(1); });
    add(tr("Previous lift"), Qt::Key_Up, [this] { moveLift(-1); });
    add(tr("Next client"), Qt::ALT | Qt::Key_Right, [this] { moveClient(1); });
    add(tr("Previous client"), Qt::ALT | Qt::Key_Left, [this] { moveClient(-1); });
    add(tr("Skip this lift today"), Qt::ALT | Qt::Key_X, [this] { skipLift(); });
}

void FloorPage::open(const shell::Place& place)
{
    refresh();
    for (std::size_t i = 0; i < m_run.size(); ++i) {
        for (const sessions::Session& session : m_run[i].sessions) {
            const bool isWanted = (!place.session.isNone() && session.id == place.session) || (!place.client.isNone() && session.client == place.client);
            if (isWanted) {
                m_runList->setCurrentRow(static_cast<int>(i));
                const auto at = std::find_if(m_clients.begin(), m_clients.end(), [&session](const FloorClient& one) { return one.client.id == session.client; });
                m_tabs->setCurrentIndex(static_cast<int>(at - m_clients.begin()));
            }
        }
    }
    if (!place.text.isEmpty()) {
        m_line->setText(place.text);
    }
    m_line->setFocus();
}

shell::Place FloorPage::place() const
{
    shell::Place place;
    if (m_clientIndex >= 0 && m_clientIndex < static_cast<int>(m_clients.size())) {
        place.client = m_clients[static_cast<std::size_t>(m_clientIndex)].client.id;
    }
    return place;
}

void FloorPage::refresh()
{
    const int slot = m_slot;
    const int client = m_clientIndex;
    const int lift = m_liftIndex;
    const auto run = m_services.presenter.run(m_services.clock.today());
    m_failure = run ? QString() : run.error().message;
    m_run = run ? *run : std::vector<RunSlot>();
    showRun();
    if (slot >= 0 && slot < static_cast<int>(m_run.size())) {
        m_runList->setCurrentRow(slot);
        m_tabs->setCurrentIndex(std::min(client, m_tabs->count() - 1));
        showLift(std::min(lift, m_rows->rowCount() - 1));
        return;
    }
    const auto open = std::find_if(m_run.begin(), m_run.end(), [](const RunSlot& one) { return one.isOpen(); });
    m_runList->setCurrentRow(open == m_run.end() ? static_cast<int>(m_run.size()) - 1 : static_cast<int>(open - m_run.begin()));
}

void FloorPage::showRun()
{
    const QSignalBlocker quiet(m_runList);
    m_runList->clear();
    int recorded = 0;
    for (const RunSlot& slot : m_run) {
        recorded += slot.isRecorded() ? 1 : 0;
        const QString time = common::qstring(sessions::clockText(slot.startMinute));
        m_runList->addItem(QStringLiteral("%1   %2\n%3").arg(time, slot.names, slotState(slot)));
    }
    m_header->setSubtitle(tr("%1 · %2 of %3 sessions recorded").arg(common::longDayText(m_services.clock.today())).arg(recorded).arg(m_run.size()));
    m_slot = -1;
    m_entry->setVisible(!m_run.empty());
    m_empty->setVisible(m_run.empty());
    m_empty->setWords(m_failure.isEmpty() ? tr("No sessions today") : tr("The run could not be read"),
                      m_failure.isEmpty() ? tr("What is booked for today stands here, ready to be recorded.") : m_failure.toHtmlEscaped());
}

void FloorPage::showSlot(int index)
{
    m_slot = index;
    m_clients.clear();
    if (index >= 0 && index < static_cast<int>(m_run.size())) {
        auto clients = m_services.presenter.clients(m_run[static_cast<std::size_t>(index)], m_services.clock.today());
        m_failure = clients ? QString() : clients.error().message;
        m_clients = clients ? *std::move(clients) : std::vector<FloorClient>();
    }
    {
        const QSignalBlocker quiet(m_tabs);
        while (m_tabs->count() > 0) {
            m_tabs->removeTab(0);
        }
        for (const FloorClient& one : m_clients) {
            const auto done = std::count_if(one.lifts.begin(), one.lifts.end(), [](const FloorLift& lift) { return lift.isDone(); });
            m_tabs->addTab(QStringLiteral("%1  %2/%3").arg(common::qstring(one.client.name).section(QLatin1Char(' '), 0, 0)).arg(done).arg(one.lifts.size()));
        }
    }
    showClient(m_clients.empty() ? -1 : 0);
}

void FloorPage::showClient(int index)
{
    m_clientIndex = index;
    m_liftIndex = -1;
    std::vector<LiftRow> rows;
    if (const FloorClient* shown = client()) {
        for (const FloorLift& one : shown->lifts) {
            rows.push_back(rowOf(one));
        }
    }
    m_rows->setRows(std::move(rows));
    int first = 0;
    if (const FloorClient* shown = client()) {
        const auto open = std::find_if(shown->lifts.begin(), shown->lifts.end(), [](const FloorLift& one) { return !one.isDone(); });
        first = open == shown->lifts.end() ? 0 : static_cast<int>(open - shown->lifts.begin());
    }
    showLift(m_rows->rowCount() > 0 ? first : -1);
}

void FloorPage::showLift(int index)
{
    m_liftIndex = index;
    m_isDoubtAsked = false;
    m_changed.clear();
    if (index >= 0) {
        m_table->setCurrentIndex(m_rows->index(index));
    }
    const FloorLift* shown = lift();
    m_line->setEnabled(shown != nullptr && !client()->isBlocked);
    QString heading;
    if (shown != nullptr) {
        heading = QStringLiteral("<b>%1</b> &nbsp; %2 %3").arg(common::qstring(shown->exercise.name).toHtmlEscaped(), QString::number(numberOf(shown->due.stage)),
                                                              common::stageName(shown->due.stage));
        if (shown->due.cycle > 1) {
            heading += tr(" · cycle %1").arg(shown->due.cycle);
        }
        for (const clients::Caution& caution : client()->cautions) {
            heading += QStringLiteral(" &nbsp; ⚠ %1: %2").arg(common::qstring(caution.bodyPart).toHtmlEscaped(), common::qstring(caution.shortText).toHtmlEscaped());
        }
        const bool isRehearsal = shown->due.kind == progression::PrescriptionKind::Rehearse;
        m_line->setPlaceholderText(isRehearsal ? tr("met, partly or not, then reps and pauses t1 m1 b1") : tr("reps set by set, then @load r left, 2:15 rest, p pain, s shaky, x skip"));
    }
    m_liftName->setText(heading);
    const QSignalBlocker quiet(m_line);
    m_line->setText(shown == nullptr ? QString() : shown->savedBody && shown->line.isEmpty() ? lineOf(*shown->savedBody, *shown) : shown->line);
    showMessage();
}

void FloorPage::readLine()
{
    m_isDoubtAsked = false;
    m_failure.clear();
    m_changed.clear();
    if (FloorLift* shown = lift()) {
        shown->line = m_line->text();
    }
    showMessage();
}

void FloorPage::showMessage()
{
    const FloorLift* shown = lift();
    m_message->setVisible(shown != nullptr);
    m_chips->clear();
    if (shown == nullptr) {
        return;
    }
    using common::BannerMessage;
    using common::Signal;
    if (client()->isBlocked) {
        m_message->setMessage({Signal::Pain, QStringLiteral("clearance"), tr("Waiting for clearance."), tr("Nothing loaded is recorded before the answer is on file.")});
        return;
    }
    const auto line = sessions::parseEntryLine(m_line->text().toStdString());
    if (!m_failure.isEmpty()) {
        m_message->setMessage({Signal::Pain, QStringLiteral("warning"), tr("Not saved."), m_failure});
        return;
    }
    if (!line.isUnderstood()) {
        const auto bad = std::find_if(line.tokens.begin(), line.tokens.end(), [](const auto& token) { return token.part == sessions::EntryPart::Unknown; });
        const QString word = QString::fromStdString(m_line->text().toStdString().substr(bad->begin, bad->length));
        m_message->setMessage({Signal::Warn, QStringLiteral("warning"), tr("“%1” is not understood.").arg(word), tr("Nothing is saved until it is changed.")});
        return;
    }
    const auto body = sessions::eventOf(line, shown->plan());
    if (!body) {
        const bool isHold = shown->due.kind == progression::PrescriptionKind::Hold;
        m_message->setMessage({Signal::Muted, QStringLiteral("info"), line.isSkipped ? tr("Skipped today.") : isHold ? tr("On hold.") : tr("A rehearsal."),
                               line.isSkipped ? tr("Enter keeps it so; nothing is written.")
                               : isHold       ? tr("The lift waits for the coach to release it on the client’s board.")
                                              : tr("Say met, partly or not, and the pauses in seconds: met 5 t1 m1 b1.")});
        return;
    }
    QStringList chips;
    for (const QString& chip : chipsOf(*body, line, *shown)) {
        chips.append(QStringLiteral("<span style='white-space:nowrap'>%1</span>").arg(chip.toHtmlEscaped()));
    }
    m_chips->setText(chips.join(QStringLiteral(" &nbsp;·&nbsp; ")));
    const auto preview = previewOf(*shown, *body, m_services.clock.today());
    if (m_isDoubtAsked && std::holds_alternative<progression::Exposure>(*body)) {
        const auto doubts = sessions::doubtsAbout(std::get<progression::Exposure>(*body), shown->plan(), shown->machine.loads());
        m_message->setMessage({Signal::Warn, QStringLiteral("warning"), tr("Is that right?"), doubts.empty() ? QString() : doubtText(doubts.front(), *shown)});
    } else if (preview) {
        m_message->setMessage({preview->next.kind == progression::PrescriptionKind::Hold ? Signal::Pain : Signal::Info, QStringLiteral("right"),
                               nextTimeText(*preview, *shown), whyText(*preview, *shown) + m_changed});
    }
}

void FloorPage::save()
{
    FloorLift* shown = lift();
    if (shown == nullptr || client()->isBlocked) {
        return;
    }
    const auto line = sessions::parseEntryLine(m_line->text().toStdString());
    if (line.isSkipped && line.isUnderstood()) {
        skipLift();
        return;
    }
    const auto body = sessions::eventOf(line, shown->plan());
    if (!body) {
        showMessage();
        return;
    }
    if (const auto* exposure = std::get_if<progression::Exposure>(&*body); exposure != nullptr && !m_isDoubtAsked) {
        if (!sessions::doubtsAbout(*exposure, shown->plan(), shown->machine.loads()).empty()) {
            m_isDoubtAsked = true;
            showMessage();
            return;
        }
    }
    m_isDoubtAsked = false;
    saveBody(*body);
}

void FloorPage::saveBody(const progression::EventBody& body)
{
    FloorLift* shown = lift();
    const bool isCorrection = !shown->saved.isNone();
    const auto outcome = m_services.presenter.save(*client(), *shown, body);
    if (!outcome) {
        m_failure = outcome.error().message;
        showMessage();
        return;
    }
    const QString who = common::qstring(client()->client.name).section(QLatin1Char(' '), 0, 0);
    const QString what = common::qstring(shown->exercise.name);
    m_services.acts.add(outcome->act, isCorrection ? tr("%1 corrected for %2").arg(what, who) : tr("%1 recorded for %2").arg(what, who));
    const int slot = m_slot;
    const int clientIndex = m_clientIndex;
    const int next = m_liftIndex + (isCorrection ? 0 : 1);
    refresh();
    m_runList->setCurrentRow(slot);
    m_tabs->setCurrentIndex(clientIndex);
    showLift(std::min(next, m_rows->rowCount() - 1));
    if (isCorrection) {
        m_changed = outcome->changed.empty() ? tr(" Nothing after it is different.") : tr(" %n later decision(s) changed.", nullptr, static_cast<int>(outcome->changed.size()));
        showMessage();
    }
    Q_EMIT studioChanged();
}

void FloorPage::skipLift()
{
    FloorLift* shown = lift();
    if (shown == nullptr || !shown->saved.isNone()) {
        return;
    }
    shown->isSkipped = true;
    shown->line.clear();
    m_rows->setRow(m_liftIndex, rowOf(*shown));
    moveLift(1);
}

void FloorPage::moveLift(int by)
{
    const int to = m_liftIndex + by;
    if (to >= 0 && to < m_rows->rowCount()) {
        showLift(to);
    }
    m_line->setFocus();
}

void FloorPage::moveClient(int by)
{
    const int to = m_clientIndex + by;
    if (to >= 0 && to < m_tabs->count()) {
        m_tabs->setCurrentIndex(to);
    }
    m_line->setFocus();
}

LiftRow FloorPage::rowOf(const FloorLift& lift) const
{
    LiftRow row;
    row.name = common::qstring(lift.exercise.name);
    row.due = dueText(lift.due, lift);
    row.stage = lift.due.stage;
    row.isSaved = !lift.saved.isNone();
    row.isSkipped = lift.isSkipped;
    const auto* exposure = lift.savedBody ? std::get_if<progression::Exposure>(&*lift.savedBody) : nullptr;
    const bool isEntered = exposure != nullptr;
    if (lift.due.kind != progression::PrescriptionKind::Work && !isEntered) {
        return row;
    }
    const auto planned = sessions::eventOf({}, lift.plan());
    const auto* shown = isEntered ? exposure : planned ? std::get_if<progression::Exposure>(&*planned) : nullptr;
    if (shown == nullptr || shown->sets.empty()) {
        return row;
    }
    const int least = lift.due.repsLow == lift.due.repsHigh ? sessions::plannedAmount(lift.plan()) : 0;
    const progression::SetRecord* last = &shown->sets.front();
    for (const progression::SetRecord& set : shown->sets) {
        if (!set.isWarmup) {
            row.amounts.push_back(boxOf(QString::number(set.amount), isEntered, isEntered && set.amount < least));
            last = &set;
        }
    }
    const bool hasRir = last->rir != progression::SetRecord::kNotRecorded;
    row.left = boxOf(hasRir ? QString::number(last->rir) : QStringLiteral("–"), isEntered && hasRir);
    row.rest = boxOf(common::restText(base::Seconds(std::max<int>(0, last->restSeconds))), isEntered);
    row.felt = boxOf(last->steadiness == progression::Steadiness::Steady ? tr("steady") : last->steadiness == progression::Steadiness::Shaky ? tr("shaky") : tr("lost"),
                     isEntered);
    row.pain = boxOf(QString::number(shown->pain), isEntered, shown->pain > 0);
    if (isEntered) {
        if (const auto preview = previewOf(lift, *lift.savedBody, m_services.clock.today())) {
            row.next = nextTimeText(*preview, lift);
        }
    }
    return row;
}

FloorClient* FloorPage::client()
{
    return m_clientIndex >= 0 && m_clientIndex < static_cast<int>(m_clients.size()) ? &m_clients[static_cast<std::size_t>(m_clientIndex)] : nullptr;
}

FloorLift* FloorPage::lift()
{
    FloorClient* shown = client();
    return shown != nullptr && m_liftIndex >= 0 && m_liftIndex < static_cast<int>(shown->lifts.size()) ? &shown->lifts[static_cast<std::size_t>(m_liftIndex)] : nullptr;
}

std::vector<shell::KeyHint> FloorPage::keyHints() const
{
    return {{QStringLiteral("Enter"), tr("Save")}, {QStringLiteral("↑ ↓"), tr("Lift")}, {QStringLiteral("Ctrl Enter"), tr("Save, next client")}};
}

bool FloorPage::closeOrClear()
{
    const bool hasText = !m_line->text().isEmpty();
    m_line->clear();
    return hasText;
}

void FloorPage::setRoom(bool isNarrow, bool isLow)
{
    Q_UNUSED(isLow)
    m_runPanel->setFixedWidth(isNarrow ? 172 : 212);
}

}  // namespace chalk::ui::floor
