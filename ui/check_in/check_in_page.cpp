#include "ui/check_in/check_in_page.h"

#include "ui/check_in/decision_form.h"
#include "ui/check_in/evidence_pane.h"
#include "ui/check_in/form_facts.h"
#include "ui/check_in/queue_list.h"
#include "ui/check_in/queue_model.h"
#include "ui/common/act_history.h"
#include "ui/common/action_button.h"
#include "ui/common/banner.h"
#include "ui/common/check_in_words.h"
#include "ui/common/clock.h"
#include "ui/common/empty_state.h"
#include "ui/common/formats.h"
#include "ui/common/loading_rows.h"
#include "ui/common/page_header.h"
#include "ui/common/panel.h"

#include <QStackedLayout>

namespace chalk::ui::check_in {

namespace {

enum CentrePage { kEvidencePage, kLoadingPage, kEmptyPage };

}  // namespace

CheckInPage::CheckInPage(const CheckInServices& services, std::unique_ptr<CheckInSource> source, QWidget* parent)
    : Page(parent),
      m_services(services),
      m_desk(new CheckInDesk(std::move(source), services.clock, services.acts, this)),
      m_model(new QueueModel(this))
{
    buildHeader();
    buildBody();
    buildActions();
    connect(m_desk, &CheckInDesk::queueLoaded, this, &CheckInPage::showQueue);
    connect(m_desk, &CheckInDesk::pageChanged, this, &CheckInPage::showPage);
    connect(m_desk, &CheckInDesk::failed, this, &CheckInPage::showFailure);
    showQueue();
    showPage();
    m_desk->refresh();
}

CheckInPage::~CheckInPage() = default;

void CheckInPage::open(const shell::Place& place)
{
    if (!place.client.isNone()) {
        m_desk->go(place.client);
    }
    m_list->setFocus(Qt::OtherFocusReason);
}

shell::Place CheckInPage::place() const
{
    shell::Place place;
    place.client = m_desk->client();
    return place;
}

void CheckInPage::refresh()
{
    m_desk->refresh();
}

std::vector<shell::KeyHint> CheckInPage::keyHints() const
{
    return {{tr("J K"), tr("Next, previous")}, {tr("1–9"), tr("Choose")}, {tr("[ ]"), tr("Lift")}};
}

std::optional<shell::OpenClient> CheckInPage::openClient() const
{
    const CheckInCase* page = m_desk->page();
    return page == nullptr ? std::nullopt : std::optional(shell::OpenClient{page->evidence.client, common::qstring(page->evidence.name)});
}

bool CheckInPage::canPrint() const
{
    return m_desk->page() != nullptr;
}

void CheckInPage::print()
{
    if (canPrint()) {
        Q_EMIT reportAsked(m_desk->client());
    }
}

bool CheckInPage::closeOrClear()
{
    if (!m_form->isEditing()) {
        return false;
    }
    m_form->closeEditor();
    return true;
}

void CheckInPage::showQueue()
{
    std::vector<QueueRow> rows;
    for (const checkin::QueueEntry& entry : m_desk->queue()) {
        const checkin::FindingKind kind = entry.finding.kind;
        rows.push_back({entry.client, common::qstring(entry.name), common::findingName(kind), common::queueWhyText(entry, m_services.catalogue), iconOf(kind),
                        signalOf(kind), entry.decided.has_value(), m_desk->isSkipped(entry.client)});
    }
    const int count = static_cast<int>(rows.size());
    m_model->setRows(std::move(rows));
    m_list->showClient(m_desk->client());
    m_queuePanel->setTitle(tr("Queue"), m_desk->hasQueue() ? QString::number(count) : QString());
    m_header->setSubtitle(m_desk->hasQueue() ? tr("Week %1 · %2 of %3 decided").arg(m_desk->day().isoWeek().week).arg(m_desk->decidedCount()).arg(count)
                                             : QString());
    if (m_desk->hasQueue()) {
        m_trouble->hide();
    }
    if (m_desk->page() == nullptr) {
        showEmpty();
    }
}

void CheckInPage::showPage()
{
    const CheckInCase* page = m_desk->page();
    m_list->showClient(m_desk->client());
    m_form->setPage(page, m_desk->lift(), m_desk->day());
    m_copy->setText(tr("Copy summary"));
    for (common::ActionButton* button : {m_copy, m_report}) {
        button->setEnabled(page != nullptr);
    }
    if (page == nullptr) {
        showEmpty();
    } else {
        m_loading->end();
        m_trouble->hide();
        m_form->show();
        m_evidence->setPage(*page, m_desk->lift());
        m_centre->setCurrentIndex(kEvidencePage);
    }
    Q_EMIT pageChanged();
}

void CheckInPage::showEmpty()
{
    if (!m_desk->client().isNone() || !m_desk->hasQueue()) {
        m_form->show();
        m_centre->setCurrentIndex(kLoadingPage);
        m_loading->begin();
        return;
    }
    m_loading->end();
    const int decided = m_desk->decidedCount();
    const auto count = static_cast<int>(m_desk->queue().size());
    m_printReports->setVisible(decided > 0);
    if (count == 0) {
        m_empty->setWords(tr("Nobody is due."), tr("Clients stand here from the day of their next review on. Add clients on the roster."));
    } else {
        m_empty->setWords(tr("That was everybody."), tr("%1 of %2 decided, %3 skipped. Skipped clients stay in the queue.").arg(decided).arg(count).arg(count - decided));
    }
    m_form->hide();
    m_centre->setCurrentIndex(kEmptyPage);
}

void CheckInPage::showFailure(const QString& message)
{
    m_trouble->setMessage({common::Signal::Warn, QStringLiteral("warning"), tr("The check-in could not be read."),
                           message + QLatin1Char(' ') + tr("What was decided before is safe. Try again with F5.")});
    m_trouble->show();
    m_loading->end();
}

void CheckInPage::decide()
{
    const auto draft = m_form->draft();
    if (!draft) {
        return;
    }
    const base::ClientId client = m_desk->client();
    const QString fault = m_desk->decide(*draft);
    if (!fault.isEmpty()) {
        m_form->setFault(fault);
        return;
    }
    Q_EMIT studioChanged();
    if (draft->choice == checkin::ChoiceKind::Direction) {
        Q_EMIT placeAsked({.page = QStringLiteral("client"), .client = client, .tab = QStringLiteral("direction")});
    }
}

void CheckInPage::stepLift(int by)
{
    const CheckInCase* page = m_desk->page();
    const auto lift = static_cast<std::ptrdiff_t>(m_desk->lift()) + by;
    if (page != nullptr && lift >= 0 && lift < std::ssize(page->evidence.lifts)) {
        m_desk->chooseLift(static_cast<std::size_t>(lift));
    }
}

}  // namespace chalk::ui::check_in
