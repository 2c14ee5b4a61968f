#include "ui/week/week_page.h"

#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/empty_state.h"
#include "ui/common/look.h"
#include "ui/common/page_header.h"
#include "ui/common/panel.h"
#include "ui/common/segmented_choice.h"
#include "ui/floor/add_session_dialog.h"
#include "ui/week/hours_dialog.h"
#include "ui/week/left_over_tray.h"
#include "ui/week/month_grid.h"
#include "ui/week/month_strip.h"
#include "ui/week/proposal_bar.h"
#include "ui/week/slot_menu.h"
#include "ui/week/week_grid.h"
#include "ui/week/week_legend.h"
#include "ui/week/week_words.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QMenu>
#include <QStackedLayout>

#include <algorithm>

namespace chalk::ui::week {

using chalk::week::kDayMinutes;
using chalk::week::kWeekDays;

namespace {

constexpr int kTrayWidth = 280;
constexpr int kNarrowTrayWidth = 220;
constexpr double kMostTrayGrowth = 1.25;
constexpr double kLegendHeight = 580;  ///< at a text size of 100 %: a lower page leaves its room to what is left over
constexpr int kThursday = 3;  ///< a week belongs to the month of its Thursday
constexpr int kMidMonth = 14;
constexpr int kMostMonthDays = 31;
constexpr int kMidMorningMinute = 10 * 60;

/// Whether an offer leads to a client's or the studio's own data.
bool needsMoreThanBooking(OfferKind kind)
{
    switch (kind) {
    case OfferKind::OpenHealth:
    case OfferKind::OpenHours:
    case OfferKind::EditHours:
    case OfferKind::OneFewer:
    case OfferKind::UsualNumber:
        return true;
    case OfferKind::None:
    case OfferKind::Place:
    case OfferKind::Rearrange:
    case OfferKind::Mend:
    case OfferKind::CopyWords:
        return false;
    }
    return false;
}

}  // namespace

WeekPage::WeekPage(const WeekServices& services, QWidget* parent)
    : Page(parent), m_services(services), m_desk(services.studio)
{
    build();
    buildActions();
    connect(&m_filling, &WeekFilling::found, this, [this](const chalk::week::WeekPlan& plan) { takeFound(plan); });
    connect(&m_filling, &WeekFilling::finished, this, &WeekPage::endSearch);
    connect(&m_offers, &OfferSearch::found, this, [this](const std::vector<LeftOverItem>& items) {
        m_desk.setItems(doable(items));
        m_items->setItems(m_desk.items());
        m_grid->viewport()->update();
    });
    connect(&services.look, &common::Look::changed, this, [this] { setRoom(m_isNarrow, m_hint->isHidden()); });
}

WeekPage::~WeekPage()
{
    m_filling.disconnect(this);
}

void WeekPage::open(const shell::Place& /*place*/)
{
    m_desk.read();
    showWeek(true);
}

void WeekPage::refresh()
{
    m_filling.stop();  // its plan is of a week that is not there any more
    m_desk.read();
    showWeek(false);
}

void WeekPage::goTo(base::Date day)
{
    m_filling.stop();
    m_news = {};
    m_desk.goTo(day);
    showWeek(true);
}

void WeekPage::step(int by)
{
    const base::Date thursday = m_desk.monday() + kThursday;
    const base::Date first = thursday - (static_cast<int>(static_cast<unsigned>(thursday.ymd().day())) - 1);
    const base::Date other = by < 0 ? first - kMidMonth : first + (kMostMonthDays + kMidMonth);
    goTo(m_isMonth ? other : m_desk.monday() + by * kWeekDays);
}

void WeekPage::showWeek(bool isFocusMoved)
{
    m_grid->setScene(m_desk.scene());
    showItems();
    m_tray->setTitle(m_desk.changes().empty() ? tr("Left over") : tr("To be told, and left over"), QString::number(m_desk.leftOver()));
    m_strip->setWeeks(m_desk.strip(), m_desk.monday(), m_services.studio.clock.today());
    showHeader();
    showBar();
    showEmpty();
    const bool isRead = m_desk.failure().isEmpty();
    m_trouble->setVisible(!isRead || !m_desk.refusal().isEmpty());
    m_trouble->setMessage({common::Signal::Pain, QStringLiteral("warning"), isRead ? tr("Not changed.") : tr("The week could not be read."), isRead ? m_desk.refusal() : m_desk.failure()});
    if (isFocusMoved) {
        QWidget* shown = m_stack->currentWidget();
        (shown == m_empty && !m_copy->isHidden() ? m_copy : shown)->setFocus(Qt::OtherFocusReason);
    }
    Q_EMIT pageChanged();
}

void WeekPage::showItems()
{
    m_desk.setItems(doable(m_desk.items()));
    m_items->setItems(m_desk.items());
    if (isFilling()) {
        m_offers.stop();  // the plan is not the last one
    } else {
        m_offers.start({m_desk.facts(), m_desk.week(), m_desk.plan(), m_desk.scene()});
    }
}

bool WeekPage::isTrainingShown() const
{
    return m_services.studio.database.may(store::Right::SeeHealth);
}

std::vector<LeftOverItem> WeekPage::doable(std::vector<LeftOverItem> items) const
{
    for (LeftOverItem& item : items) {
        if (!isTrainingShown() && needsMoreThanBooking(item.kind)) {
            item.kind = OfferKind::None;
            item.offer.clear();
        }
    }
    return items;
}

void WeekPage::showHeader()
{
    const std::vector<int>& days = m_desk.scene().days;
    const base::Date monday = m_desk.monday();
    m_header->setTitle(m_isMonth       ? monthText(monday + kThursday)
                       : days.empty() ? rangeText(monday, monday + (kWeekDays - 1)) : rangeText(monday + days.front(), monday + days.back()));
    const QString placed = tr("%1 of %2 sessions placed").arg(m_desk.placed()).arg(m_desk.wanted());
    m_header->setSubtitle(m_isNarrow ? placed : tr("Week %1 · %2").arg(monday.isoWeek().week).arg(placed));
    m_fill->setText(isFilling() ? tr("Stop filling") : tr("Fill the week"));
    m_print->setText(m_isNarrow ? QString() : tr("Print"));
    m_hours->setText(m_isNarrow ? QString() : tr("Hours"));
}

void WeekPage::showBar()
{
    const int proposed = m_desk.proposed();
    if (m_grid->isMoving()) {
        m_bar->setWords({m_movingWhere + QLatin1Char('.'), m_movingReason.isEmpty() ? tr("Free. Enter puts it there.") : m_movingReason, tr("Leave it"), {}, false});
    } else if (isFilling() && m_isMending) {
        m_bar->setWords({tr("Looking for what has to move …"), {}, tr("Stop here"), {}, false});
    } else if (isFilling()) {
        m_bar->setWords({tr("Filling the week:"), tr("%1 placed, %2 left over so far.").arg(proposed).arg(m_desk.leftOver()), tr("Stop here"), {}, false});
    } else if (!m_desk.changes().empty()) {
        m_bar->setWords(changeWords());
    } else if (proposed > 0) {
        const QString lead = proposed == 1 ? tr("1 session proposed,") : tr("%1 sessions proposed,").arg(proposed);
        m_bar->setWords({lead, tr("%1 left over. Nothing is saved until you keep them.").arg(m_desk.leftOver()), tr("Undo"), tr("Keep all"), false});
    } else {
        m_bar->setWords(m_news);
    }
}

void WeekPage::showEmpty()
{
    const bool isEmpty = m_desk.scene().isEmpty() && !m_grid->isMoving();
    const bool hasClients = !m_desk.facts().clients.empty();
    m_empty->setWords(hasClients ? tr("Nothing is booked in this week") : tr("No clients yet"),
                      hasClients ? tr("Take the times of last week, or let the week be filled. Both only propose.") : tr("Add a client on the roster; their sessions stand here then."));
    m_copy->setVisible(hasClients);
    m_stack->setCurrentWidget(m_isMonth ? static_cast<QWidget*>(m_month) : isEmpty ? static_cast<QWidget*>(m_empty) : m_grid);
    if (m_isMonth) {
        m_month->setMonth(m_desk.monthOf(m_desk.monday() + kThursday), std::max(m_desk.monday(), std::min(m_services.studio.clock.today(), m_desk.monday() + (kWeekDays - 1))), m_services.studio.clock.today());
    }
}

void WeekPage::showMonth(bool isMonth)
{
    m_isMonth = isMonth;
    m_span->setChosen(isMonth ? 1 : 0);
    showWeek(true);
}

void WeekPage::settle(bool isDone)
{
    if (isDone) {
        m_filling.stop();  // its plan is of the week before this
        m_news = {};
    }
    showWeek(false);
    if (isDone) {
        Q_EMIT studioChanged();
    }
}

std::optional<int> WeekPage::conflictRow(std::size_t block) const
{
    const WeekScene& scene = m_desk.scene();
    if (block >= scene.blocks.size() || scene.blocks[block].faults.empty()) {
        return std::nullopt;
    }
    return static_cast<int>(m_desk.changes().size() + scene.blocks[block].faults.front());
}

ConflictWords WeekPage::conflictOf(std::size_t block) const
{
    const auto row = conflictRow(block);
    if (!row) {
        return {};
    }
    const LeftOverItem& item = m_desk.items()[static_cast<std::size_t>(*row)];
    return {item.reason, item.offer};
}

void WeekPage::openBlock(int index, const QPoint& at)
{
    const WeekBlock block = m_grid->scene().blocks[static_cast<std::size_t>(index)];
    QMenu menu(this);
    fillSlotMenu(menu, m_desk, block, m_services.studio.clock, actsOf(block));
    menu.exec(at);
}

SlotActs WeekPage::actsOf(const WeekBlock& block)
{
    SlotActs acts;
    acts.add = [this] { addSession(); };
    acts.keep = [this, wishes = block.wishes()] { settle(m_desk.keep(wishes)); };
    acts.lock = [this] { toggleLock(); };
    acts.move = [this](const Wishes& wishes, const QString& names) { names.isEmpty() ? move() : beginMove(wishes, names); };
    acts.takeAway = [this](const std::vector<BlockMember>& members) { settle(m_desk.takeAway(members)); };
    acts.setState = [this](const BlockMember& member, sessions::SessionState state) { settle(m_desk.setState(member, state)); };
    acts.saveCalendar = [this](const BlockMember& member) { sendCalendar({{std::to_string(member.client.value()), {}}, member.name}); };
    acts.copyWeek = [this](const BlockMember& member) { copyWeek({{std::to_string(member.client.value()), {}}, member.name}); };
    if (isTrainingShown()) {
        acts.openClient = [this](const BlockMember& member) { openPlace(QStringLiteral("client"), member.client, QStringLiteral("board")); };
        const base::SessionId first = block.members.front().booking;
        const base::ClientId client = block.members.front().client;
        acts.openFloor = [this, first, client] {
            shell::Place place{QStringLiteral("floor")};
            place.client = client;
            place.session = first;
            Q_EMIT placeAsked(place);
        };
        acts.printGroup = [this, first, day = m_desk.monday() + block.day] { Q_EMIT groupAsked(day, first); };
    }
    return acts;
}

void WeekPage::addSession()
{
    floor::BookingChoices choices;
    for (const chalk::week::ClientOfWeek& client : m_desk.facts().clients) {
        choices.clients.push_back(client.client);
    }
    std::sort(choices.clients.begin(), choices.clients.end(), [](const clients::Client& a, const clients::Client& b) { return a.name < b.name; });
    for (const chalk::week::CoachOfWeek& coach : m_desk.facts().coaches) {
        choices.coaches.push_back(coach.coach);
    }
    const auto place = m_grid->place();
    const int start = place ? place->start : m_desk.scene().now.value_or(kMidMorningMinute);
    floor::AddSessionDialog dialog(m_services.look, choices, m_desk.monday() + start / kDayMinutes, start % kDayMinutes, this);
    if (dialog.exec() == QDialog::Accepted && dialog.session()) {
        settle(m_desk.book(*dialog.session()));
    }
}

void WeekPage::editHours()
{
    HoursDialog dialog(m_services.look, m_services.studio.database, m_services.dialogs, m_services.studio.clock.today(), this);
    bool isChanged = false;
    connect(&dialog, &HoursDialog::changed, this, [&isChanged] { isChanged = true; });
    dialog.exec();
    if (isChanged) {
        refresh();
        Q_EMIT studioChanged();
    }
}

void WeekPage::toggleLock()
{
    if (const WeekBlock* block = m_grid->selectedBlock()) {
        settle(m_desk.toggleLock(WeekBlock(*block)));
    }
}

void WeekPage::takeAway()
{
    if (const WeekBlock* block = m_grid->selectedBlock()) {
        settle(m_desk.takeAway(std::vector<BlockMember>(block->members)));
    }
}

void WeekPage::move()
{
    if (m_list->hasFocus() && m_list->currentIndex().isValid()) {
        const LeftOverItem item = m_items->item(m_list->currentIndex().row());
        if (item.wish) {
            beginMove({*item.wish}, item.name.section(QLatin1Char(' '), 0, 0));
        }
        return;
    }
    if (const WeekBlock* block = m_grid->selectedBlock()) {
        QStringList names;
        for (const BlockMember& member : block->members) {
            names.append(member.firstName);
        }
        beginMove(block->wishes(), names.join(QStringLiteral(", ")));
    }
}

void WeekPage::beginMove(const Wishes& wishes, const QString& names)
{
    if (wishes.empty() || m_isMonth) {
        return;
    }
    const auto& slot = m_desk.plan()[wishes.front()];
    const auto wanted = slot ? slot : m_desk.week().problem.sessions[wishes.front()].standing;
    m_stack->setCurrentWidget(m_grid);
    m_grid->setFocus(Qt::OtherFocusReason);
    m_grid->beginMove(wishes, wanted, m_desk.week().problem.sessions[wishes.front()].minutes, names);
}

void WeekPage::takeOffer(int row)
{
    const LeftOverItem item = m_items->item(row);
    switch (item.kind) {
    case OfferKind::Place:
        if (item.wish && item.slot) {
            settle(m_desk.move({*item.wish}, *item.slot));
        }
        return;
    case OfferKind::Rearrange:
        if (item.wish && item.slot && item.other && item.otherSlot) {
            m_desk.rearrange(*item.wish, *item.slot, *item.other, *item.otherSlot);
            showWeek(true);
        }
        return;
    case OfferKind::EditHours:
        return editHours();
    case OfferKind::OpenHealth:
        return openPlace(QStringLiteral("client"), item.client, QStringLiteral("health"));
    case OfferKind::OpenHours:
        return openPlace(QStringLiteral("onboarding"), item.client, QStringLiteral("time"));
    case OfferKind::OneFewer:
    case OfferKind::UsualNumber: {
        const bool isDone = item.kind == OfferKind::OneFewer ? m_desk.wantOneFewer(item.client) : m_desk.wantUsual(item.client);
        settle(isDone);
        if (isDone) {
            fill();
        }
        return;
    }
    case OfferKind::Mend:
        return mend();
    case OfferKind::CopyWords:
        QGuiApplication::clipboard()->setText(item.words);
        return say({tr("Copied."), item.words, tr("Close"), {}, false});
    case OfferKind::None:
        return;
    }
}

void WeekPage::openPlace(const QString& page, base::ClientId client, const QString& tab)
{
    shell::Place place{page};
    place.client = client;
    place.tab = tab;
    Q_EMIT placeAsked(place);
}

bool WeekPage::eventFilter(QObject* watched, QEvent* event)
{
    // In the tray Enter takes the offer; on the grid it keeps what is proposed.
    if (watched == m_grid && event->type() == QEvent::KeyPress && !m_grid->isMoving() && m_desk.proposed() > 0) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            goOn();
            return true;
        }
    }
    if (watched == m_list && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if ((key == Qt::Key_Return || key == Qt::Key_Enter) && m_list->currentIndex().isValid()) {
            takeOffer(m_list->currentIndex().row());
            return true;
        }
    }
    return Page::eventFilter(watched, event);
}

std::vector<shell::KeyHint> WeekPage::keyHints() const
{
    return {{QStringLiteral("← →"), tr("Day")}, {QStringLiteral("L"), tr("Lock")}, {QStringLiteral("M"), tr("Move")}, {QStringLiteral("F"), tr("Fill")}};
}

bool WeekPage::closeOrClear()
{
    if (m_grid->isMoving()) {
        m_grid->cancelMove();
        return true;
    }
    if (isFilling()) {
        m_filling.stop();
        return true;
    }
    if (m_desk.proposed() > 0) {
        m_desk.dropProposals();
        showWeek(true);
        return true;
    }
    if (!m_news.lead.isEmpty()) {
        say({});
        return true;
    }
    return false;
}

void WeekPage::resizeEvent(QResizeEvent* event)
{
    Page::resizeEvent(event);
    m_legend->setVisible(height() >= m_services.look.theme().scaled(kLegendHeight));
}

void WeekPage::setRoom(bool isNarrow, bool isLow)
{
    m_isNarrow = isNarrow;
    const double growth = std::clamp(m_services.look.theme().scaled(1), 1.0, kMostTrayGrowth);
    m_tray->setFixedWidth(qRound((isNarrow ? kNarrowTrayWidth : kTrayWidth) * growth));
    m_hint->setVisible(!isLow);
    m_legend->setVisible(height() >= m_services.look.theme().scaled(kLegendHeight));
    showHeader();
}

}  // namespace chalk::ui::week
