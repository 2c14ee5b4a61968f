#include "ui/trends/trends_page.h"

#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/clock.h"
#include "ui/common/formats.h"
#include "ui/common/loading_rows.h"
#include "ui/common/look.h"
#include "ui/common/page_header.h"
#include "ui/common/segmented_choice.h"
#include "ui/trends/trend_cards.h"
#include "ui/trends/trend_tables.h"
#include "ui/trends/trend_words.h"

#include <QAction>
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QStackedLayout>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::trends {

namespace {

constexpr int kWaiting = 0;  // in the stack, before the first view

/// The notes under the tables: what the numbers do not say by themselves.
QStringList tableNotes(const TrendsView& view)
{
    if (view.client() == nullptr) {
        return {};
    }
    const checkin::Trends& trends = view.client()->trends;
    QStringList notes{trends.monotonyGap ? QString() : monotonyNote(trends), ratioNote(trends), carriesNote(trends)};
    notes.removeAll(QString());
    return notes;
}

}  // namespace

TrendsPage::TrendsPage(const TrendsServices& services, std::unique_ptr<TrendsSource> source, QWidget* parent)
    : shell::Page(parent), m_services(services), m_presenter(std::move(source))
{
    buildHeader();
    buildBody();
    addActions();
    connectParts();
}

QString TrendsPage::title() const
{
    const TrendsView* view = m_presenter.view();
    return view != nullptr && view->client() != nullptr ? tr("Trends, %1").arg(common::qstring(view->client()->name)) : tr("Trends");
}

void TrendsPage::open(const shell::Place& place)
{
    if (!place.client.isNone()) {
        m_ask.client = place.client;
    }
    refresh();
    focusContent();
}

shell::Place TrendsPage::place() const
{
    shell::Place place;
    place.client = m_ask.client;
    return place;
}

void TrendsPage::refresh()
{
    m_ask.day = m_services.clock.today();
    m_presenter.ask(m_ask);
}

std::vector<shell::KeyHint> TrendsPage::keyHints() const
{
    return {{tr("← →"), tr("Week")}, {tr("T"), tr("Table")}, {tr("E"), tr("Export")}};
}

std::optional<shell::OpenClient> TrendsPage::openClient() const
{
    const TrendsView* view = m_presenter.view();
    if (view == nullptr || view->client() == nullptr) {
        return std::nullopt;
    }
    return shell::OpenClient{view->client()->client, common::qstring(view->client()->name)};
}

bool TrendsPage::closeOrClear()
{
    if (m_news->isVisible()) {
        m_news->hide();
        return true;
    }
    if (m_stack->currentWidget() == m_tables) {
        toggleTable();
        return true;
    }
    return false;
}

void TrendsPage::setRoom(bool isNarrow, bool /*isLow*/)
{
    m_cards->setNarrow(isNarrow);
}

void TrendsPage::showReading()
{
    if (m_presenter.view() == nullptr) {
        m_loading->begin();
    } else {
        m_header->setSubtitle(tr("reading …"));
    }
}

void TrendsPage::showRange()
{
    if (const TrendsView* view = m_presenter.view()) {
        m_header->setSubtitle(rangeText(view->client() != nullptr ? view->client()->trends.days : view->studio()->days));
    }
}

void TrendsPage::showView()
{
    m_loading->end();
    const TrendsView& view = *m_presenter.view();
    const bool isTable = m_stack->currentWidget() == m_tables;
    // The tables are made anew, and the charts come in the place of what stood there while they were read.
    const bool losesFocus = m_stack->currentIndex() == kWaiting || m_tables->isAncestorOf(focusWidget());
    fillClients();
    m_cards->setView(view);
    m_tables->setSheets(view.client() != nullptr ? sheetsOf(*view.client()) : sheetsOf(*view.studio()), tableNotes(view));
    for (QTableView* table : m_tables->tables()) {
        for (QAction* action : m_keys) {
            table->addAction(action);
        }
    }
    showRange();
    const bool isLearning = view.client() != nullptr && view.client()->trends.isLearning;
    m_learning->setVisible(isLearning);
    if (isLearning) {
        m_learning->setMessage({common::Signal::Info, QStringLiteral("info"), tr("Still in the learning stages."),
                                tr("Loads are small on purpose, so the charts of load start slowly. Watch the board instead.")});
    }
    m_stack->setCurrentWidget(isTable ? static_cast<QWidget*>(m_tables) : m_cards);
    m_export->setEnabled(true);
    m_report->setVisible(canPrint());
    if (losesFocus) {
        focusContent();
    }
    Q_EMIT pageChanged();
}

void TrendsPage::fillClients()
{
    const TrendsView& view = *m_presenter.view();
    m_who->clear();
    m_who->addItem(tr("Everybody"), QVariant::fromValue(qlonglong{0}));
    for (const auto& [id, name] : view.clients) {
        m_who->addItem(name, QVariant::fromValue(static_cast<qlonglong>(id.value())));
    }
    m_who->setCurrentIndex(std::max(0, m_who->findData(QVariant::fromValue(static_cast<qlonglong>(m_ask.client.value())))));
}

void TrendsPage::chooseClient(int index)
{
    m_ask.client = base::ClientId(m_who->itemData(index).toLongLong());
    m_news->hide();
    refresh();
}

void TrendsPage::setWeeks(int choice)
{
    m_ask.weeks = checkin::kTrendWeeks[static_cast<std::size_t>(choice)];
    refresh();
}

void TrendsPage::goBack()
{
    m_cards->selectWeek(m_cards->selectedWeek() - 1);
}

void TrendsPage::goOn()
{
    m_cards->selectWeek(m_cards->selectedWeek() + 1);
}

void TrendsPage::toggleTable()
{
    if (m_presenter.view() == nullptr) {
        return;
    }
    m_stack->setCurrentWidget(m_stack->currentWidget() == m_tables ? static_cast<QWidget*>(m_cards) : m_tables);
    focusContent();
}

void TrendsPage::focusContent()
{
    if (m_stack->currentWidget() == m_tables) {
        m_tables->focusFirst();
    } else {
        m_cards->views().front()->setFocus();
    }
}

void TrendsPage::copyNumbers()
{
    if (m_presenter.view() != nullptr) {
        QGuiApplication::clipboard()->setText(m_tables->copyText());
        sayNews(tr("Copied."), tr("The numbers are on the clipboard, with tabs between the columns."), false);
    }
}

void TrendsPage::openBoard()
{
    if (!m_ask.client.isNone()) {
        Q_EMIT placeAsked({.page = QStringLiteral("client"), .client = m_ask.client});
    }
}

void TrendsPage::sayNews(const QString& lead, const QString& text, bool isTrouble)
{
    m_news->setMessage({isTrouble ? common::Signal::Warn : common::Signal::Ok, isTrouble ? QStringLiteral("warning") : QStringLiteral("check"), lead, text});
    m_news->show();
}

}  // namespace chalk::ui::trends
