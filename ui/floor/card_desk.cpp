#include "ui/floor/card_desk.h"

#include "ui/common/formats.h"
#include "ui/print/report_sheet.h"

#include <algorithm>

namespace chalk::ui::floor {

namespace {

QDate qdateOf(base::Date date)
{
    return QDate(1970, 1, 1).addDays(date.daysSince1970());
}

}  // namespace

CardDesk::CardDesk(const CardDeskServices& services, QObject* parent) : QObject(parent), m_services(services) {}

CardDesk::~CardDesk()
{
    delete m_dialog;
}

void CardDesk::showClient(base::ClientId client, QWidget* parent)
{
    const base::Date today = m_services.clock.today();
    auto one = m_services.presenter.forCard(client, today, m_services.clock.minuteOfDay());
    if (one) {
        show({*std::move(one)}, today, client, {}, parent);
    } else {
        show({}, today, client, one.error().message, parent);
    }
}

void CardDesk::showReport(base::ClientId client, QWidget* parent)
{
    showClient(client, parent);
    m_dialog->showReport();
}

void CardDesk::showReports(const std::vector<base::ClientId>& clients, QWidget* parent)
{
    if (clients.size() < 2) {
        if (!clients.empty()) {
            showReport(clients.front(), parent);
        }
        return;
    }
    showClient(clients.front(), parent);
    m_dialog->offerReport(tr("%1 clients").arg(clients.size()), [this, clients](print::PaperSize paper, bool hasInitialsOnly) {
        std::vector<print::Sheet> all;
        for (const base::ClientId client : clients) {
            auto sheets = readReport(client, paper, hasInitialsOnly);
            all.insert(all.end(), std::make_move_iterator(sheets.begin()), std::make_move_iterator(sheets.end()));
        }
        return all;
    });
    m_dialog->showReport();
}

void CardDesk::showSession(const FloorClient& client, QWidget* parent)
{
    show({client}, client.session.date, client.client.id, {}, parent);
}

std::vector<FloorClient> CardDesk::openClientsOf(const std::vector<RunSlot>& run, QString& failure)
{
    std::vector<FloorClient> all;
    for (const RunSlot& slot : run) {
        auto clients = m_services.presenter.clients(slot, m_services.clock.today());
        if (!clients) {
            failure = clients.error().message;
            break;
        }
        // Who has trained needs no card any more.
        clients->erase(std::remove_if(clients->begin(), clients->end(),
                                      [](const FloorClient& one) { return one.session.state == sessions::SessionState::Recorded; }),
                       clients->end());
        all.insert(all.end(), std::make_move_iterator(clients->begin()), std::make_move_iterator(clients->end()));
    }
    return all;
}

void CardDesk::showDay(base::Date day, QWidget* parent)
{
    const auto run = m_services.presenter.run(day);
    QString failure = run ? QString() : run.error().message;
    const std::vector<FloorClient> all = openClientsOf(run.value_or(std::vector<RunSlot>()), failure);
    show(all, day, {}, failure, parent);
}

void CardDesk::showGroup(base::Date day, base::SessionId session, QWidget* parent)
{
    auto run = m_services.presenter.run(day).value_or(std::vector<RunSlot>());
    const auto at = std::find_if(run.begin(), run.end(), [session](const RunSlot& slot) {
        return std::any_of(slot.sessions.begin(), slot.sessions.end(), [session](const sessions::Session& one) { return one.id == session; });
    });
    if (at == run.end()) {
        showDay(day, parent);
        return;
    }
    QString failure;
    const std::vector<FloorClient> all = openClientsOf({*at}, failure);
    show(all, day, {}, failure, parent);
    m_dialog->setLayoutOfSheets(print::SheetLayout::Group);
}

void CardDesk::showWeek(base::Date day, QWidget* parent)
{
    showDay(day, parent);
    m_dialog->setWholeWeek(true);
}

std::vector<sessions::CardContent> CardDesk::readWeek(base::Date day, base::ClientId client)
{
    auto week = m_services.presenter.weekCards(day, client);
    if (!week) {
        m_dialog->sayFailure(week.error().message);
        return {};
    }
    m_weekSessions = std::move(week->sessions);
    return std::move(week->cards);
}

std::vector<print::Sheet> CardDesk::readReport(base::ClientId client, print::PaperSize paper, bool hasInitialsOnly)
{
    auto report = m_services.presenter.reportOf(client, m_services.clock.today());
    if (!report) {
        m_dialog->sayFailure(report.error().message);
        return {};
    }
    if (!report->hasRecords()) {
        return {};
    }
    if (hasInitialsOnly) {
        report->clientName = clients::dottedInitialsOf(report->clientName);
    }
    return print::reportSheets(*report, paper);
}

void CardDesk::show(const std::vector<FloorClient>& clients, base::Date day, base::ClientId weekOf, const QString& failure, QWidget* parent)
{
    std::vector<sessions::CardContent> cards;
    std::vector<sessions::Session> sessions;
    QStringList withheld;
    for (const FloorClient& client : clients) {
        if (client.isBlocked) {
            withheld.append(QString::fromStdString(client.client.name));
        } else if (!client.lifts.empty()) {
            cards.push_back(m_services.presenter.cardOf(client));
            sessions.push_back(client.session);
        }
    }
    delete m_dialog;
    m_dialog = new print::CardDialog(m_services.dialog, std::move(cards), qdateOf(day), withheld, parent);
    m_dialog->setAttribute(Qt::WA_DeleteOnClose);
    if (const auto stations = m_services.presenter.stations()) {
        m_dialog->setStations(*stations);
    } else {
        m_dialog->sayFailure(stations.error().message);
    }
    if (!failure.isEmpty()) {
        m_dialog->sayFailure(failure);
    }
    m_dialog->offerWeek(m_services.clock.today(), [this, day, weekOf] { return readWeek(day, weekOf); });
    if (!weekOf.isNone() && !clients.empty()) {
        m_dialog->offerReport(common::qstring(clients.front().client.name),
                              [this, weekOf](print::PaperSize paper, bool hasInitialsOnly) { return readReport(weekOf, paper, hasInitialsOnly); });
    }
    connect(m_dialog, &print::CardDialog::cardsMade, this, [this, sessions] { note(m_dialog->isWholeWeek() ? m_weekSessions : sessions); });
    m_dialog->open();
}

void CardDesk::note(const std::vector<sessions::Session>& sessions)
{
    const auto outcome = m_services.presenter.markPrinted(sessions);
    if (!outcome) {
        m_dialog->sayFailure(outcome.error().message);
        return;
    }
    if (*outcome) {
        m_services.acts.add((*outcome)->act, tr("%n card(s) printed", nullptr, static_cast<int>(sessions.size())));
        Q_EMIT studioChanged();
    }
}

}  // namespace chalk::ui::floor
