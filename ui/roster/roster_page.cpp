#include "ui/roster/roster_page.h"

#include "ui/common/action_button.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/page_header.h"
#include "ui/common/panel.h"
#include "ui/common/search_field.h"
#include "ui/roster/attention_list.h"
#include "ui/roster/client_pane.h"
#include "ui/roster/peek_popup.h"
#include "ui/roster/roster_table.h"

#include <QAction>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QMenu>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::roster {

namespace {

// Pixels at a text size of 100 %.
constexpr double kAttentionWidth = 356;
constexpr double kNarrowAttentionWidth = 304;
constexpr double kFieldWidth = 300;
constexpr double kNarrowFieldWidth = 220;
constexpr int kPageEdge = 24;
constexpr int kPageGap = 16;

shell::Place clientPlace(base::ClientId client, std::optional<lifts::Pattern> lift = {}, const QString& tab = {})
{
    shell::Place place;
    place.page = QStringLiteral("client");
    place.client = client;
    place.lift = lift;
    place.tab = tab;
    return place;
}

}  // namespace

RosterPage::RosterPage(const common::Look& look, const common::Clock& clock, std::unique_ptr<RosterSource> source, QWidget* parent, RosterReach reach)
    : shell::Page(parent),
      m_look(look),
      m_reach(reach),
      m_presenter(std::move(source), clock),
      m_attention(new AttentionModel(this)),
      m_header(new common::PageHeader(look, this)),
      m_field(new common::SearchField(look, isTrainingShown() ? tr("Find a client or lift") : tr("Find a client"), QStringLiteral("/"), this)),
      m_filterButton(new common::ActionButton(look, tr("Filter"), this)),
      m_pane(new ClientPane(look, reach, this)),
      m_attentionPanel(new common::Panel(look, this)),
      m_list(new AttentionList(look, *m_attention, this)),
      m_peek(new PeekPopup(look, reach, this))
{
    buildHeader();
    buildBody();
    if (isTrainingShown()) {
        addTrainingActions();
        connectTraining();
    }
    addActions();
    connectParts();
    dress();
    setFocusProxy(&m_pane->table());
    m_presenter.refresh();
}

void RosterPage::buildHeader()
{
    m_header->setTitle(tr("Roster"));
    m_header->addTool(m_field);
    m_header->addTool(m_filterButton);
    m_filterButton->setIconName(QStringLiteral("filter"));
    connect(m_filterButton, &QAbstractButton::clicked, this, &RosterPage::chooseFilters);
}

void RosterPage::buildBody()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_header);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(kPageEdge, 0, kPageEdge, kPageGap);
    row->setSpacing(kPageGap);
    row->addWidget(m_pane, 1);
    row->addWidget(m_attentionPanel);
    column->addLayout(row, 1);
    m_attentionPanel->setTitle(tr("Needs attention today"));
    m_attentionPanel->body()->addWidget(m_list);
    m_attentionPanel->setVisible(isTrainingShown());
    setTabOrder(m_filterButton, m_pane);
    setTabOrder(&m_pane->table(), m_list);
}

void RosterPage::addPageAction(const QString& text, const QKeySequence& key, void (RosterPage::*run)())
{
    // The keys work while the table has the focus: a chip is pressed by Space, and letters are typed into the field.
    auto* action = new QAction(text, this);
    action->setShortcut(key);
    action->setShortcutContext(Qt::WidgetShortcut);
    connect(action, &QAction::triggered, this, run);
    addAction(action);
    m_pane->table().addAction(action);
}

void RosterPage::addActions()
{
    addPageAction(tr("Peek at the selected client"), QKeySequence(Qt::Key_Space), &RosterPage::peek);
    addPageAction(tr("Order the list"), QKeySequence(Qt::Key_O), &RosterPage::chooseOrder);
    addPageAction(tr("Choose filters"), QKeySequence(Qt::Key_F), &RosterPage::chooseFilters);
}

void RosterPage::addTrainingActions()
{
    addPageAction(tr("Open the selected client"), QKeySequence(Qt::Key_Return), &RosterPage::openSelected);
    addPageAction(tr("Print the card of the selected client"), QKeySequence(Qt::Key_P), &RosterPage::askForCard);
    addPageAction(tr("Trends of the selected client"), QKeySequence(Qt::Key_T), &RosterPage::showTrends);
    addPageAction(tr("Go to what needs attention"), QKeySequence(Qt::Key_A), &RosterPage::goToAttention);
    addPageAction(tr("Import a list…"), QKeySequence(Qt::Key_I), &RosterPage::goToImport);
    addPageAction(tr("Merge the selected client with another…"), QKeySequence(Qt::Key_M), &RosterPage::goToDuplicates);
}

void RosterPage::connectParts()
{
    connect(&m_look, &common::Look::changed, this, &RosterPage::dress);
    connect(&m_presenter, &RosterPresenter::begun, m_pane, &ClientPane::beginLoading);
    connect(&m_presenter, &RosterPresenter::loaded, this, &RosterPage::showView);
    connect(&m_presenter, &RosterPresenter::failed, m_pane, &ClientPane::setFailure);
    connect(m_pane, &ClientPane::retryAsked, this, &RosterPage::refresh);
    connect(m_pane, &ClientPane::criteriaChanged, this, &RosterPage::applyCriteria);
    connect(m_field, &QLineEdit::textChanged, this, [this](const QString& text) {
        RosterCriteria criteria = m_pane->criteria();
        criteria.text = text;
        m_pane->setCriteria(criteria);
    });
    connect(&m_pane->table(), &RosterTable::selectedClientChanged, this, &RosterPage::readSelection);
    connect(m_peek, &PeekPopup::moveAsked, this, &RosterPage::peekOn);
}

void RosterPage::connectTraining()
{
    connect(m_pane, &ClientPane::newClientAsked, this, [this] { Q_EMIT placeAsked({.page = QStringLiteral("onboarding")}); });
    connect(m_pane, &ClientPane::importAsked, this, &RosterPage::goToImport);
    connect(m_field, &QLineEdit::returnPressed, this, &RosterPage::openSelected);
    RosterTable& table = m_pane->table();
    connect(&table, &RosterTable::clientChosen, this, &RosterPage::goToClient);
    connect(&table, &RosterTable::liftChosen, this, &RosterPage::goToLift);
    connect(&table, &RosterTable::flagChosen, this, &RosterPage::settleFlag);
    connect(&table, &RosterTable::loadChosen, this, &RosterPage::goToTrends);
    connect(m_list, &AttentionList::itemChosen, this, &RosterPage::runItem);
    connect(m_peek, &PeekPopup::openAsked, this, &RosterPage::openSelected);
    connect(m_peek, &PeekPopup::cardAsked, this, &RosterPage::askForCard);
}

void RosterPage::dress()
{
    const common::Theme& theme = m_look.theme();
    m_attentionPanel->setFixedWidth(qRound(theme.scaled(m_isNarrow ? kNarrowAttentionWidth : kAttentionWidth)));
    m_field->setFixedWidth(qRound(theme.scaled(m_isNarrow ? kNarrowFieldWidth : kFieldWidth)));
}

void RosterPage::setRoom(bool isNarrow, bool /*isLow*/)
{
    m_isNarrow = isNarrow;
    dress();
}

QString RosterPage::title() const
{
    return tr("Roster");
}

void RosterPage::open(const shell::Place& place)
{
    if (!place.client.isNone()) {
        m_pane->selectClient(place.client);
    }
    if (!place.text.isEmpty()) {
        m_field->setText(place.text);
    }
    m_pane->table().setFocus();
}

shell::Place RosterPage::place() const
{
    shell::Place place;
    if (const RosterRow* row = m_pane->table().selectedRow()) {
        place.client = row->client;
    }
    return place;
}

void RosterPage::refresh()
{
    m_presenter.refresh();
}

std::vector<shell::KeyHint> RosterPage::keyHints() const
{
    if (!isTrainingShown()) {
        return {{QStringLiteral("↑ ↓"), tr("Move")}, {tr("Space"), tr("Peek")}, {QStringLiteral("O"), tr("Order")}, {QStringLiteral("F"), tr("Filter")}};
    }
    return {{QStringLiteral("↑ ↓"), tr("Move")}, {tr("Enter"), tr("Open")}, {tr("Space"), tr("Peek")}, {QStringLiteral("P"), tr("Card")},
            {QStringLiteral("1–9"), tr("Attention")}};
}

bool RosterPage::canPrint() const
{
    return isTrainingShown() && m_pane->table().selectedRow() != nullptr;
}

void RosterPage::print()
{
    askForCard();
}

QWidget* RosterPage::filterField()
{
    return m_field;
}

bool RosterPage::closeOrClear()
{
    if (m_peek->isVisible()) {
        m_peek->close();
        return true;
    }
    if (m_pane->criteria().isEmpty()) {
        return false;
    }
    m_pane->setCriteria({});
    m_pane->table().setFocus();
    return true;
}

void RosterPage::showView()
{
    const RosterView& view = m_presenter.view();
    const QString day = common::longDayText(m_presenter.day());
    const QString count = view.sessionsToday == 0   ? tr("no session today")
                          : view.sessionsToday == 1 ? tr("1 session today")
                                                    : tr("%1 sessions today").arg(view.sessionsToday);
    m_header->setSubtitle(day + QStringLiteral(" · ") + count);
    m_pane->setView(view);
    readSelection();
    const int kept = m_list->currentIndex().row();
    m_attention->setItems(view.attention);
    if (kept >= 0 && m_attention->rowCount() > 0) {
        m_list->setCurrentIndex(m_attention->index(std::min(kept, m_attention->rowCount() - 1)));
    }
    m_list->setEmptyText(tr("Nobody needs attention. What comes up is listed here, the most pressing first."));
    m_attentionPanel->setTitle(tr("Needs attention today"), QString::number(view.attention.size()));
}

void RosterPage::applyCriteria(const RosterCriteria& criteria)
{
    if (m_field->text() != criteria.text) {
        m_field->setText(criteria.text);
    }
}

void RosterPage::keyPressEvent(QKeyEvent* event)
{
    const int digit = event->key() - Qt::Key_0;
    const bool isPlain = (event->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
    if (event->key() == Qt::Key_Down && m_field->hasFocus()) {
        m_pane->table().setFocus(Qt::OtherFocusReason);  // from the filter into what it left
        return;
    }
    if (isTrainingShown() && isPlain && digit >= 1 && digit <= 9 && m_list->run(digit - 1)) {
        return;
    }
    shell::Page::keyPressEvent(event);
}

void RosterPage::openSelected()
{
    if (const RosterRow* row = m_pane->table().selectedRow()) {
        goToClient(row->client);
    }
}

void RosterPage::askForCard()
{
    if (const RosterRow* row = m_pane->table().selectedRow()) {
        Q_EMIT cardAsked(row->client);
    }
}

void RosterPage::readSelection()
{
    if (canPrint() != m_hasSelected) {
        m_hasSelected = !m_hasSelected;
        Q_EMIT pageChanged();
    }
}

void RosterPage::peek()
{
    if (const RosterRow* row = m_pane->table().selectedRow()) {
        m_peek->showFor(*row, m_pane->table().selectedRectangle(), QRect(mapToGlobal(QPoint(0, 0)), size()));
    }
}

void RosterPage::chooseOrder()
{
    m_pane->chooseOrder();
}

void RosterPage::chooseFilters()
{
    QMenu* menu = m_pane->filterMenu();
    menu->popup(m_filterButton->mapToGlobal(QPoint(0, m_filterButton->height() + 2)));
}

void RosterPage::goToAttention()
{
    m_list->setFocus(Qt::ShortcutFocusReason);
}

void RosterPage::peekOn(int lines)
{
    m_pane->table().moveSelection(lines);
    peek();
}

void RosterPage::goToClient(base::ClientId client)
{
    shell::Place place = clientPlace(client);
    const auto& rows = m_presenter.view().rows;
    const auto row = std::find_if(rows.begin(), rows.end(), [client](const RosterRow& one) { return one.client == client; });
    if (row != rows.end() && row->lifts.empty()) {
        place.page = QStringLiteral("onboarding");  // nothing is trained yet: the steps go on where they were left
    }
    Q_EMIT placeAsked(place);
}

void RosterPage::goToLift(base::ClientId client, lifts::Pattern pattern)
{
    Q_EMIT placeAsked(clientPlace(client, pattern));
}

void RosterPage::goToTrends(base::ClientId client)
{
    shell::Place place;
    place.page = QStringLiteral("trends");
    place.client = client;
    Q_EMIT placeAsked(place);
}

void RosterPage::goToImport()
{
    Q_EMIT placeAsked({.page = QStringLiteral("import")});
}

void RosterPage::goToDuplicates()
{
    const RosterRow* row = m_pane->table().selectedRow();
    Q_EMIT placeAsked({.page = QStringLiteral("duplicates"), .client = row == nullptr ? base::ClientId() : row->client});
}

void RosterPage::showTrends()
{
    if (const RosterRow* row = m_pane->table().selectedRow()) {
        goToTrends(row->client);
    }
}

void RosterPage::settleFlag(base::ClientId client, checkin::ClientFlag flag)
{
    const auto& items = m_attention->items();
    const auto item = std::find_if(items.begin(), items.end(), [&](const AttentionItem& one) { return one.client == client && one.flag == flag; });
    if (item == items.end()) {
        goToClient(client);
    } else {
        runItem(*item);
    }
}

void RosterPage::runItem(const AttentionItem& item)
{
    Q_EMIT placeAsked(clientPlace(item.client, item.lift, item.tab));
}

}  // namespace chalk::ui::roster
