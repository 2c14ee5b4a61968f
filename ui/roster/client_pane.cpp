#include "ui/roster/client_pane.h"

#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/empty_state.h"
#include "ui/common/loading_rows.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/common/prose.h"
#include "ui/roster/did_you_mean.h"
#include "ui/roster/filter_bar.h"
#include "ui/roster/roster_table.h"

#include <QEvent>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <initializer_list>

namespace chalk::ui::roster {

namespace {

constexpr int kPaneGap = 10;

}  // namespace

ClientPane::ClientPane(const common::Look& look, RosterReach reach, QWidget* parent)
    : QWidget(parent),
      m_reach(reach),
      m_model(new RosterModel(this)),
      m_filter(new RosterFilter(this)),
      m_bar(new FilterBar(look, *m_model, this)),
      m_banner(new common::Banner(look, this)),
      m_stack(new QStackedWidget),
      m_table(nullptr),
      m_noMatch(new common::EmptyState(look)),
      m_noClients(new common::EmptyState(look)),
      m_loading(nullptr)
{
    m_filter->setSourceModel(m_model);
    m_table = new RosterTable(look, *m_model, *m_filter);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kPaneGap);
    column->addWidget(m_bar);
    column->addWidget(m_banner);
    connect(m_banner->addButton(tr("Try again")), &QAbstractButton::clicked, this, &ClientPane::retryAsked);
    m_banner->hide();
    auto* panel = new common::Panel(look, this);
    panel->body()->addWidget(m_stack);
    column->addWidget(panel, 1);
    for (QWidget* page : std::initializer_list<QWidget*>{m_table, m_noMatch, m_noClients}) {
        m_stack->addWidget(page);
    }
    m_loading = new common::LoadingRows(look, m_stack);
    m_stack->installEventFilter(this);
    buildEmptyStates();
    connect(m_bar, &FilterBar::criteriaChanged, this, &ClientPane::apply);
    connect(m_bar, &FilterBar::orderChanged, this, [this](checkin::RosterOrder order) {
        m_filter->setOrder(order);
        m_table->scrollTo(m_table->currentIndex());
    });
}

void ClientPane::buildEmptyStates()
{
    m_noMatch->setPicture(QStringLiteral("search"));
    common::ActionButton* clear = m_noMatch->addButton(tr("Clear the search"));
    clear->setKeyText(tr("Esc"));
    connect(clear, &QAbstractButton::clicked, this, [this] {
        setCriteria({});
        m_table->setFocus();
    });
    connect(m_noMatch, &common::EmptyState::linkChosen, this, &ClientPane::followLink);
    if (m_reach == RosterReach::Names) {
        m_noClients->setWords(tr("No clients yet"), tr("A coach takes in the first one."));
        return;
    }
    m_noClients->setWords(tr("No clients yet"), tr("Take in the first one: a name is enough to begin."));
    common::ActionButton* add = m_noClients->addButton(tr("New client"));
    add->setKind(common::ButtonKind::Primary);
    add->setKeyText(QStringLiteral("N"));
    connect(add, &QAbstractButton::clicked, this, &ClientPane::newClientAsked);
    connect(m_noClients->addButton(tr("Import a list…")), &QAbstractButton::clicked, this, &ClientPane::importAsked);
}

void ClientPane::chooseOrder()
{
    m_bar->chooseOrder();
}

QMenu* ClientPane::filterMenu() const
{
    return m_bar->filterMenu();
}

const RosterCriteria& ClientPane::criteria() const
{
    return m_bar->criteria();
}

void ClientPane::setCriteria(const RosterCriteria& criteria)
{
    m_bar->setCriteria(criteria);
}

void ClientPane::apply(const RosterCriteria& criteria)
{
    const RosterRow* selected = m_table->selectedRow();
    const base::ClientId client = selected == nullptr ? base::ClientId() : selected->client;
    m_filter->setCriteria(criteria);
    keepSelection(client);
    showWhatIsThere();
    Q_EMIT criteriaChanged(criteria);
}

void ClientPane::setView(const RosterView& view)
{
    const RosterRow* selected = m_table->selectedRow();
    const base::ClientId client = !m_wanted.isNone() ? m_wanted : selected == nullptr ? base::ClientId() : selected->client;
    m_loading->end();
    m_hasView = true;
    m_model->setRows(view.rows);
    m_bar->setCoaches(view.coaches);
    setFailure({});
    keepSelection(client);
    showWhatIsThere();
}

void ClientPane::keepSelection(base::ClientId client)
{
    const bool isKept = m_table->selectClient(client);
    if (isKept && client == m_wanted) {
        m_wanted = {};
    }
    if (!isKept && m_filter->rowCount() > 0) {
        m_table->setCurrentIndex(m_filter->index(0, 0));
    }
}

void ClientPane::selectClient(base::ClientId client)
{
    m_wanted = m_table->selectClient(client) ? base::ClientId() : client;
}

void ClientPane::setFailure(const QString& message)
{
    if (!message.isEmpty()) {
        m_loading->end();
        const QString rest = m_hasView ? tr("%1. What was read last is still shown.").arg(message) : message + QLatin1Char('.');
        m_banner->setMessage({common::Signal::Pain, QStringLiteral("info"), tr("The roster cannot be read."), rest});
    }
    m_banner->setVisible(!message.isEmpty());
}

void ClientPane::beginLoading()
{
    if (!m_hasView) {
        m_loading->raise();
        m_loading->begin();
    }
}

void ClientPane::showWhatIsThere()
{
    const bool isEmpty = m_hasView && m_model->rowCount() == 0;
    const bool isNoMatch = !isEmpty && m_model->rowCount() > 0 && m_filter->rowCount() == 0;
    if (isNoMatch) {
        describeNoMatch();
    }
    m_stack->setCurrentWidget(isEmpty ? static_cast<QWidget*>(m_noClients) : isNoMatch ? static_cast<QWidget*>(m_noMatch) : m_table);
}

void ClientPane::describeNoMatch()
{
    const QString typed = criteria().text.trimmed();
    if (typed.isEmpty()) {
        m_noMatch->setWords(tr("No client fits these filters"), tr("Take one away, or clear them all."));
        return;
    }
    RosterCriteria onlyTyped;
    onlyTyped.text = typed;
    const int elsewhere = countOf(m_model->rows(), onlyTyped);
    QString hint = m_reach == RosterReach::Training ? tr("Names, goals, lifts and flags were searched.") : tr("Names were searched.");
    if (elsewhere > 0) {
        hint = elsewhere == 1 ? tr("One client does without the filters.") : tr("%1 clients do without the filters.").arg(elsewhere);
    } else if (const RosterRow* meant = didYouMean(typed, m_model->rows())) {
        hint = tr("Did you mean %1?").arg(common::linkHtml(QString::number(meant->client.value()), meant->name));
    }
    m_noMatch->setWords(tr("No client matches “%1”").arg(typed), hint);
}

void ClientPane::followLink(const QString& link)
{
    const base::ClientId client(link.toLongLong());
    const int row = m_model->rowOf(client);
    if (row >= 0) {
        RosterCriteria criteria;
        criteria.text = m_model->rows()[static_cast<std::size_t>(row)].name;
        setCriteria(criteria);
        m_table->selectClient(client);
        m_table->setFocus();
    }
}

bool ClientPane::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_stack && event->type() == QEvent::Resize) {
        m_loading->setGeometry(m_stack->rect());
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace chalk::ui::roster
