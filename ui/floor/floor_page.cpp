#include "ui/floor/floor_page.h"

#include "ui/common/act_history.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/empty_state.h"
#include "ui/common/formats.h"
#include "ui/common/lock_words.h"
#include "ui/common/look.h"
#include "ui/common/page_header.h"
#include "ui/floor/add_session_dialog.h"
#include "ui/floor/card_pane.h"
#include "ui/floor/client_tabs.h"
#include "ui/floor/entry_fields.h"
#include "ui/floor/entry_pane.h"
#include "ui/floor/lift_row_words.h"
#include "ui/floor/lift_table.h"
#include "ui/floor/report_strip.h"
#include "ui/floor/run_list.h"
#include "ui/floor/session_menu.h"

#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QMenu>
#include <QResizeEvent>
#include <QSignalBlocker>
#include <QTimer>

#include <algorithm>

namespace chalk::ui::floor {

FloorPage::FloorPage(const FloorServices& services, QWidget* parent)
    : Page(parent), m_services(services), m_desk(services.presenter, services.clock, services.acts)
{
    build();
    buildActions();
}

FloorPage::~FloorPage() = default;

void FloorPage::open(const shell::Place& place)
{
    showWall(false);
    if (!place.session.isNone()) {
        const auto day = m_services.presenter.dayOf(place.client, place.session);
        m_desk.goToDay(day.value_or(m_services.clock.today()));
    } else if (!place.client.isNone()) {
        m_desk.goToDay(m_services.clock.today());
    } else {
        m_desk.read();
    }
    const bool isWanted = !place.client.isNone() || !place.session.isNone();
    const bool isThere = !isWanted || m_desk.choose(place.client, place.session);
    const bool hasLift = isThere && (!place.lift || m_desk.choosePattern(*place.lift));
    if (!place.text.isEmpty() && hasLift && m_desk.lift() != nullptr) {
        m_desk.type(place.text);  // never into a line that it was not meant for
    }
    showDesk(true);
}

shell::Place FloorPage::place() const
{
    shell::Place place;
    if (m_desk.client() != nullptr) {
        place.client = m_desk.client()->client.id;
    }
    return place;
}

void FloorPage::refresh()
{
    m_desk.read();
    m_cardOf = {};
    showDesk(false);
}

bool FloorPage::hasEntry() const
{
    return m_desk.lift() != nullptr && !m_desk.client()->isBlocked;
}

void FloorPage::showDesk(bool isFocusMoved)
{
    showRun();
    showTabs();
    const bool isRead = m_desk.failure().isEmpty();
    m_trouble->setVisible(!isRead || !m_desk.runRefusal().isEmpty());
    m_trouble->setMessage({common::Signal::Pain, QStringLiteral("warning"), isRead ? tr("Not changed.") : tr("The run could not be read."),
                           isRead ? m_desk.runRefusal() : m_desk.failure()});
    const QWidget* focused = focusWidget();
    const bool isFocusLost = !hasEntry() && (m_recording->isAncestorOf(focused) || m_foot->isAncestorOf(focused));
    m_recording->setVisible(hasEntry());
    m_foot->setVisible(hasEntry());
    m_reportBox->setVisible(m_desk.client() != nullptr);
    m_empty->setVisible(!hasEntry());
    if (hasEntry()) {
        m_entry->showDesk(m_desk);
        showRows();
    } else {
        showEmpty();
    }
    if (const FloorClient* client = m_desk.client()) {
        m_report->setReport(client->session.id, client->report, client->isHealthKept);
    }
    showCard();
    if (isFocusMoved || isFocusLost) {
        focusWork();
    }
    Q_EMIT pageChanged();
}

void FloorPage::focusWork()
{
    if (hasEntry()) {
        m_entry->focusEntry();
    } else {
        m_emptyAction->setFocus(Qt::OtherFocusReason);
    }
}

void FloorPage::showRun()
{
    const auto& run = m_desk.run();
    const auto recorded = std::count_if(run.begin(), run.end(), [](const RunSlot& slot) { return slot.isRecorded(); });
    m_header->setSubtitle(tr("%1 · %2 of %3 sessions recorded").arg(common::longDayText(m_desk.day())).arg(recorded).arg(run.size()));
    m_runPanel->setTitle(m_desk.isToday() ? tr("Today’s run") : tr("Run of %1").arg(common::shortDayText(m_desk.day())));
    m_today->setVisible(!m_desk.isToday());
    const QSignalBlocker quiet(m_runList->selectionModel());
    m_runModel->setRun(run, m_desk.slotIndex(), m_desk.isSlotOpen());
    m_runList->doItemsLayout();
    m_runList->setCurrentIndex(m_runModel->index(m_desk.slotIndex()));
}

void FloorPage::showTabs()
{
    std::vector<ClientTab> tabs;
    for (const FloorClient& one : m_desk.clients()) {
        const auto done = std::count_if(one.lifts.begin(), one.lifts.end(), [](const FloorLift& lift) { return lift.isDone(); });
        tabs.push_back({one.firstName(), static_cast<int>(done), static_cast<int>(one.lifts.size())});
    }
    m_tabs->parentWidget()->setVisible(!tabs.empty());
    m_hasNextClient = tabs.size() > 1;
    m_nextHint->setVisible(m_hasNextClient && !isTight());
    m_next->setText(m_desk.clientIndex() + 1 < static_cast<int>(tabs.size()) ? tr("Save, next client") : tr("Save"));
    m_tabs->setClients(tabs, m_desk.clientIndex());
}

void FloorPage::showRows()
{
    std::vector<LiftRow> rows;
    for (const FloorLift& one : m_desk.client()->lifts) {
        rows.push_back(liftRowOf(*m_desk.client(), one));
    }
    rows[static_cast<std::size_t>(m_desk.liftIndex())].next.clear();
    const QSignalBlocker quiet(m_table->selectionModel());
    m_rows->setRows(std::move(rows));
    m_table->doItemsLayout();
    m_table->setCurrentIndex(m_rows->index(m_desk.liftIndex()));
    m_table->scrollTo(m_rows->index(m_desk.liftIndex()));
    const FloorLift& lift = *m_desk.lift();
    m_skip->setText(lift.isSkipped ? tr("Take it in again") : tr("Skip lift"));
    m_skip->setVisible(lift.saved.isNone());
    m_swap->setVisible(lift.saved.isNone());
    m_test->setVisible(lift.saved.isNone() && lift.due.block && lift.due.block->isTest);
    m_delete->setVisible(!lift.saved.isNone());
    m_add->setEnabled(!m_desk.client()->others.empty());
}

void FloorPage::showCard()
{
    const FloorClient* client = m_desk.client();
    if (client == nullptr || client->isBlocked || client->lifts.empty()) {
        m_cardOf = {};
        m_card->clearCard(client == nullptr ? QString() : client->isBlocked ? tr("No card: %1.").arg(common::lockWordsOf(client->clearance, client->client, client->session.date).brief.toLower()) : tr("No lifts, no card yet."));
        m_card->setUp().clear();
        return;
    }
    if (m_cardOf != client->session.id || !m_card->hasCard()) {
        m_card->setCard(m_services.presenter.cardOf(*client));
        m_cardOf = client->session.id;
    }
    if (const FloorLift* lift = m_desk.lift()) {
        base::Load load = lift->due.load;
        if (const auto read = m_desk.reading(); read.body && !lift->line.isEmpty()) {
            const auto* exposure = std::get_if<progression::Exposure>(&*read.body);
            load = exposure == nullptr || exposure->sets.empty() ? load : exposure->sets.back().load;
        }
        m_card->setUp().setLift(*lift, load, common::qstring(client->session.place));
    }
}

void FloorPage::showEmpty()
{
    const FloorClient* client = m_desk.client();
    if (client != nullptr && client->isBlocked) {
        const common::LockWords lock = common::lockWordsOf(client->clearance, client->client, client->session.date);
        m_empty->setPicture(QStringLiteral("clearance"), common::Signal::Pain);
        m_empty->setWords(lock.headline.toHtmlEscaped(), lock.text.toHtmlEscaped());
        m_emptyAction->setText(tr("Open the health page"));
    } else if (client != nullptr) {
        m_empty->setPicture(QString());
        m_empty->setWords(tr("%1 has no lifts yet").arg(client->firstName().toHtmlEscaped()), tr("Screen the movements first; the lifts follow from that."));
        m_emptyAction->setText(tr("Open the board"));
    } else {
        const auto next = m_services.presenter.nextBusyDay(m_desk.day());
        m_empty->setPicture(QStringLiteral("floor"));
        const bool isRun = m_desk.slotIndex() >= 0;
        const QString who = isRun ? m_desk.run()[static_cast<std::size_t>(m_desk.slotIndex())].names.toHtmlEscaped() : QString();
        m_empty->setWords(isRun ? tr("%1 called off").arg(who) : tr("No sessions on %1").arg(common::dayText(m_desk.day())),
                          tr("What is booked for a day stands here, ready to be recorded."));
        m_emptyAction->setText(next ? tr("Go to %1").arg(common::dayText(*next)) : tr("Open the roster"));
    }
}

void FloorPage::emptyAction()
{
    shell::Place place;
    if (const FloorClient* client = m_desk.client()) {
        place.page = QStringLiteral("client");
        place.client = client->client.id;
        place.tab = client->isBlocked ? QStringLiteral("health") : QStringLiteral("board");
    } else if (const auto next = m_services.presenter.nextBusyDay(m_desk.day())) {
        goToDay(*next);
        return;
    } else {
        place.page = QStringLiteral("roster");
    }
    Q_EMIT placeAsked(place);
}

void FloorPage::save(bool goesToNextClient)
{
    if (!hasEntry()) {
        return;
    }
    const bool isEntered = !m_desk.lift()->line.isEmpty() || !m_desk.lift()->rehearsal.isEmpty();
    if (goesToNextClient && !isEntered) {
        moveClient(1);
        return;
    }
    const EntryReading reading = m_desk.reading();
    const std::pair entered{m_desk.client()->session.id, m_desk.lift()->id};
    const SaveState state = m_desk.save();
    if (state == SaveState::Saved) {
        m_justSaved = entered;
        m_cardOf = {};
        Q_EMIT studioChanged();
    }
    const bool isDone = state == SaveState::Saved || state == SaveState::Skipped || state == SaveState::Waits;
    if (isDone && goesToNextClient) {
        m_desk.moveClient(1);
    }
    showDesk(isDone);
    if (isDone) {
        m_entry->forgetTyping();
    }
    if (state == SaveState::Refused) {
        m_entry->focusFault(reading);
    }
}

void FloorPage::goToDay(base::Date day)
{
    m_desk.goToDay(day);
    showDesk(true);
}

void FloorPage::moveLift(int by)
{
    m_desk.moveLift(by);
    m_justSaved = {};
    showDesk(true);
}

void FloorPage::moveClient(int by)
{
    m_desk.moveClient(by);
    showDesk(true);
}

void FloorPage::moveSlot(int by)
{
    m_desk.moveSlot(by);
    showDesk(true);
}

bool FloorPage::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_runList->viewport() && event->type() == QEvent::Resize) {
        const auto* resize = static_cast<QResizeEvent*>(event);
        if (resize->size().width() != resize->oldSize().width()) {
            QTimer::singleShot(0, m_runList, &QListView::doItemsLayout);  // its rows are as high as their width makes them
        }
    }
    // In the run Up and Down move through the run, though elsewhere on the page they go to another lift.
    if (watched == m_runList && event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->modifiers() == Qt::NoModifier && (key->key() == Qt::Key_Up || key->key() == Qt::Key_Down)) {
            event->accept();
            return true;
        }
    }
    return Page::eventFilter(watched, event);
}

void FloorPage::typeField(LiftField field, int set, const QString& text)
{
    if (!hasEntry()) {
        return;
    }
    const auto line = lineWithField(*m_desk.lift(), field, set, text);
    m_table->setFault(line ? QString() : line.error());
    if (line) {
        m_desk.type(*line);
        showDesk(false);
    }
}

void FloorPage::addSession()
{
    const auto choices = m_services.presenter.bookingChoices(m_desk.day());
    if (!choices) {
        m_desk.refuseRun(tr("Who can be booked could not be read: %1").arg(choices.error().message));
        showDesk(false);
        return;
    }
    constexpr int kMidMorning = 10 * 60;
    AddSessionDialog dialog(m_services.look, *choices, m_desk.day(), m_desk.isToday() ? m_services.clock.minuteOfDay() : kMidMorning, this);
    if (dialog.exec() != QDialog::Accepted || !dialog.session()) {
        return;
    }
    if (m_desk.book(*dialog.session())) {
        Q_EMIT studioChanged();
    }
    showDesk(true);
}

void FloorPage::offerStates(int slot, const QPoint& at)
{
    if (slot < 0 || slot >= static_cast<int>(m_desk.run().size())) {
        return;
    }
    QMenu menu(this);
    fillSessionMenu(menu, m_desk.run()[static_cast<std::size_t>(slot)], m_services.clock.today(), m_services.clock.minuteOfDay(),
                    [this](const sessions::Session& session, sessions::SessionState state) {
                        if (m_desk.setState(session, state)) {
                            m_cardOf = {};
                            Q_EMIT studioChanged();
                        }
                        showDesk(false);
                    });
    menu.exec(at);
}

std::vector<shell::KeyHint> FloorPage::keyHints() const
{
    if (isWallShown()) {
        return {{QStringLiteral("F11"), tr("Back to the floor")}};
    }
    return {{QStringLiteral("Enter"), tr("Save")}, {QStringLiteral("↑ ↓"), tr("Lift")}, {QStringLiteral("Ctrl+Enter"), tr("Save, next client")}, {QStringLiteral("Ctrl+R"), tr("Rest")}};
}

bool FloorPage::canPrint() const
{
    return m_desk.client() != nullptr && m_card->hasCard();
}

void FloorPage::print()
{
    if (canPrint()) {
        Q_EMIT cardAsked(*m_desk.client());
    }
}

bool FloorPage::closeOrClear()
{
    if (isWallShown()) {
        showWall(false);
        return true;
    }
    const FloorLift* lift = m_desk.lift();
    if (lift == nullptr || (lift->line.isEmpty() && lift->rehearsal.isEmpty())) {
        return false;
    }
    m_desk.type({});
    m_desk.judge({});
    showDesk(true);
    return true;
}

bool FloorPage::showNextClient()
{
    const int count = static_cast<int>(m_desk.clients().size());
    if (count < 2) {
        return false;
    }
    m_desk.chooseClient((m_desk.clientIndex() + 1) % count);
    showDesk(true);
    return true;
}

}  // namespace chalk::ui::floor
