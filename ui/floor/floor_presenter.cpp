#include "ui/floor/floor_presenter.h"

#include "core/sessions/session_lifts.h"
#include "core/store/client_reader.h"
#include "core/store/report_reader.h"
#include "core/store/roster_reader.h"
#include "core/store/session_reader.h"
#include "core/store/studio_reader.h"
#include "core/store/week_settings.h"
#include "ui/common/formats.h"
#include "ui/floor/session_words.h"

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using sessions::SessionState;

constexpr int kMostDaysAhead = 21;

QString firstNameOf(const std::string& name)
{
    return common::qstring(name).section(QLatin1Char(' '), 0, 0);
}

/// `Joaquin, Adaeze (missed)`: where one state holds for all it is said elsewhere.
QString namesOf(const RunSlot& slot)
{
    const bool isOneState = std::all_of(slot.sessions.begin(), slot.sessions.end(), [&slot](const sessions::Session& one) { return one.state == slot.sessions.front().state; });
    QStringList names;
    for (std::size_t i = 0; i < slot.sessions.size(); ++i) {
        const QString state = isOneState ? QString() : absenceText(slot.sessions[i].state);
        names.append(state.isEmpty() ? slot.firstNames[static_cast<qsizetype>(i)] : QStringLiteral("%1 (%2)").arg(slot.firstNames[static_cast<qsizetype>(i)], state));
    }
    return names.join(QStringLiteral(", "));
}

RehearsalPoints pointsFor(const FloorLift& lift, const screens::PatternGuide& guide)
{
    const auto* saved = lift.savedBody ? std::get_if<progression::Rehearsal>(&*lift.savedBody) : nullptr;
    return saved == nullptr ? rehearsalPoints(guide) : pointsOf(*saved, guide);
}

bool isTraining(const progression::EventBody& body)
{
    return std::holds_alternative<progression::Exposure>(body) || std::holds_alternative<progression::Rehearsal>(body);
}

}  // namespace

QString FloorClient::firstName() const
{
    return firstNameOf(client.name);
}

bool RunSlot::isRecorded() const
{
    return std::any_of(sessions.begin(), sessions.end(), [](const auto& session) { return session.state == SessionState::Recorded; }) && !isOpen();
}

bool RunSlot::isOpen() const
{
    return std::any_of(sessions.begin(), sessions.end(), [](const sessions::Session& session) { return sessions::isOpen(session.state); });
}

bool RunSlot::isCalledOff() const
{
    return std::all_of(sessions.begin(), sessions.end(), [](const sessions::Session& session) { return sessions::isCalledOff(session.state); });
}

bool RunSlot::isPrinted() const
{
    return std::none_of(sessions.begin(), sessions.end(), [](const sessions::Session& session) { return session.state == SessionState::Planned; });
}

FloorPresenter::FloorPresenter(store::Database& database, const lifts::Catalogue& catalogue, const screens::ScreenCatalogue& screens,
                               std::function<QString()> atUtc)
    : m_database(database), m_catalogue(catalogue), m_screens(screens), m_atUtc(std::move(atUtc))
{
}

store::Result<std::vector<RunSlot>> FloorPresenter::run(base::Date day)
{
    const auto sessions = store::SessionReader(m_database).on(day);
    if (!sessions) {
        return tl::make_unexpected(sessions.error());
    }
    std::vector<RunSlot> slots;
    for (const store::NamedSession& one : *sessions) {
        const QString coach = common::qstring(one.coachName);
        if (slots.empty() || slots.back().startMinute != one.session.startMinute || slots.back().coach != coach) {
            slots.push_back({one.session.startMinute, coach, {}, {}, {}});
        }
        RunSlot& slot = slots.back();
        slot.firstNames.append(firstNameOf(one.clientName));
        slot.sessions.push_back(one.session);
    }
    for (RunSlot& slot : slots) {
        slot.names = namesOf(slot);
    }
    return slots;
}

std::optional<FloorLift> FloorPresenter::floorLift(const progression::LiftMachine& present, base::LiftId id, const sessions::Session& session)
{
    const auto history = store::HistoryReader(m_database).read(id);
    auto machine = progression::LiftMachine::create(present.setup());
    if (!history || !machine) {
        return std::nullopt;
    }
    const auto here = std::find_if(history->begin(), history->end(), [&session](const store::HistoryEntry& entry) {
        return !session.id.isNone() && entry.session == session.id;
    });
    const bool isSaved = here != history->end();
    std::vector<progression::Event> later;
    std::optional<base::Date> lastTrained;
    for (auto entry = history->begin(); entry != history->end(); ++entry) {
        if (isSaved ? entry < here : entry->event.date <= session.date) {
            machine->apply(entry->event.date, entry->event.body);
            lastTrained = isTraining(entry->event.body) ? entry->event.date : lastTrained;
        } else if (entry != here) {
            later.push_back(entry->event);
        }
    }
    const lifts::Exercise* exercise = m_catalogue.find(machine->kit().exerciseKey);
    lifts::Exercise named = exercise == nullptr ? lifts::Exercise{} : *exercise;
    if (exercise == nullptr) {
        named.name = machine->kit().exerciseKey;
    }
    const auto due = machine->prescriptionOn(session.date);
    FloorLift lift{id, std::move(named), *std::move(machine), due, lastTrained, std::move(later)};
    std::transform(history->begin(), history->end(), std::back_inserter(lift.entries), [](const store::HistoryEntry& entry) { return entry.id; });
    if (isSaved) {
        lift.saved = here->id;
        lift.savedBody = here->event.body;
    }
    return lift;
}

store::Result<FloorClient> FloorPresenter::client(const sessions::Session& session, const QString& coach, base::Date today)
{
    const store::Snapshot snapshot(m_database);  // what is chosen here is compared with the logs that belong to it
    const auto file = store::ClientReader(m_database).read(session.client, session.date);
    if (!file) {
        return tl::make_unexpected(file.error());
    }
    FloorClient client{file->client, coach, file->cautions, file->clearance, clients::isBlocked(file->clearance, session.date), session, {}, {}};
    store::SessionReader reader(m_database);
    const auto report = reader.report(session.id);
    const auto isHealthKept = reader.isHealthKept(session.id);
    if (!report || !isHealthKept) {
        return tl::make_unexpected(report ? isHealthKept.error() : report.error());
    }
    client.report = *report;
    client.isHealthKept = *isHealthKept;
    std::vector<sessions::LiftCandidate> candidates;
    std::vector<FloorLift> all;
    for (const store::ClientLift& one : file->lifts) {
        if (auto lift = floorLift(one.lift.machine, one.lift.id, session)) {
            lift->exercise.pattern = one.lift.pattern;
            lift->points = pointsFor(*lift, m_screens.of(one.lift.pattern));
            candidates.push_back({one.lift.id, one.lift.pattern, lift->lastTrained});
            all.push_back(*std::move(lift));
        }
    }
    const auto saved = static_cast<std::size_t>(std::count_if(all.begin(), all.end(), [](const FloorLift& lift) { return !lift.saved.isNone(); }));
    const bool isOver = saved > 0 && session.date < today;
    std::size_t room = isOver ? 0 : sessions::kLiftsOfSession - std::min(saved, sessions::kLiftsOfSession);
    const auto planned = store::SessionReader(m_database).lifts(session.id);
    if (!planned) {
        return tl::make_unexpected(planned.error());
    }
    client.planned = *planned;
    const auto placeOf = [&planned](base::LiftId id) { return std::find_if(planned->begin(), planned->end(), [id](const sessions::SessionLift& one) { return one.lift == id; }); };
    std::vector<base::LiftId> chosen = planned->empty() ? sessions::chooseLifts(candidates) : std::vector<base::LiftId>();
    for (const sessions::SessionLift& one : *planned) {
        chosen.push_back(one.lift);
    }
    room = planned->empty() || isOver ? room : planned->size();
    std::stable_sort(all.begin(), all.end(), [&placeOf](const FloorLift& a, const FloorLift& b) { return placeOf(a.id) < placeOf(b.id); });
    for (FloorLift& lift : all) {
        if (const auto place = placeOf(lift.id); place != planned->end() && place->leftOut && lift.saved.isNone()) {
            lift.isSkipped = true;
            lift.skipWhy = *place->leftOut;
        }
    }
    for (FloorLift& lift : all) {
        const bool isChosen = lift.saved.isNone() && room > 0 && std::find(chosen.begin(), chosen.end(), lift.id) != chosen.end();
        room -= isChosen ? 1 : 0;
        const bool isShown = !lift.saved.isNone() || isChosen;
        if (!client.isBlocked || !lift.saved.isNone()) {
            (isShown ? client.lifts : client.others).push_back(std::move(lift));
        }
    }
    return client;
}

store::Result<std::vector<FloorClient>> FloorPresenter::clients(const RunSlot& slot, base::Date today, const std::set<base::SessionId>& begun)
{
    std::vector<FloorClient> clients;
    for (const sessions::Session& session : slot.sessions) {
        if (sessions::isCalledOff(session.state)) {
            continue;
        }
        auto one = client(session, slot.coach, begun.count(session.id) > 0 ? session.date : today);
        if (!one) {
            return tl::make_unexpected(one.error());
        }
        clients.push_back(*std::move(one));
    }
    return clients;
}

store::Result<FloorClient> FloorPresenter::forCard(base::ClientId id, base::Date day, int minute)
{
    const auto today = store::SessionReader(m_database).on(day);
    const auto file = store::ClientReader(m_database).read(id, day);
    if (!today || !file) {
        return tl::make_unexpected(today ? file.error() : today.error());
    }
    for (const store::NamedSession& one : *today) {
        if (one.session.client == id && !sessions::isCalledOff(one.session.state)) {
            return client(one.session, common::qstring(one.coachName), day);
        }
    }
    sessions::Session session;
    session.client = id;
    session.coach = file->client.coach;
    session.date = day;
    session.startMinute = minute;
    return client(file->next.session.value_or(session), common::qstring(file->coachName), day);
}

std::optional<base::Date> FloorPresenter::dayOf(base::ClientId client, base::SessionId session)
{
    const auto all = store::SessionReader(m_database).of(client);
    if (!all) {
        return std::nullopt;
    }
    const auto at = std::find_if(all->begin(), all->end(), [session](const store::NamedSession& one) { return one.session.id == session; });
    return at == all->end() ? std::nullopt : std::optional(at->session.date);
}

std::optional<base::Date> FloorPresenter::nextBusyDay(base::Date day)
{
    for (int ahead = 1; ahead <= kMostDaysAhead; ++ahead) {
        if (const auto sessions = store::SessionReader(m_database).on(day + ahead); sessions && !sessions->empty()) {
            return day + ahead;
        }
    }
    return std::nullopt;
}

sessions::CardContent FloorPresenter::cardOf(const FloorClient& client) const
{
    std::vector<sessions::LiftDue> due;
    for (const FloorLift& lift : client.lifts) {
        if (!lift.isSkipped) {
            due.push_back({&lift.exercise, &lift.machine});
        }
    }
    return sessions::cardContentOf({client.client, client.session, client.coach.toStdString(), 0, client.cautions, due, m_catalogue});
}

store::Result<store::CardsRead> FloorPresenter::weekCards(base::Date day, base::ClientId client)
{
    constexpr int kDaysOfWeek = 7;
    return store::CardReader(m_database, m_catalogue).read({day - day.weekday(), kDaysOfWeek, true, {}, client});
}

store::Result<BookingChoices> FloorPresenter::bookingChoices(base::Date day)
{
    const auto roster = store::RosterReader(m_database).read(day);
    const auto coaches = store::StudioReader(m_database).coaches();
    if (!roster || !coaches) {
        return tl::make_unexpected(roster ? coaches.error() : roster.error());
    }
    BookingChoices choices;
    for (const store::RosterEntry& entry : *roster) {
        choices.clients.push_back(entry.client);
    }
    choices.coaches = *coaches;
    return choices;
}

store::Result<planning::FloorStations> FloorPresenter::stations()
{
    return store::WeekSettings(m_database).studioWeek().map([](const week::StudioWeek& studio) { return studio.stations; });
}

store::Result<checkin::ProgressReport> FloorPresenter::reportOf(base::ClientId client, base::Date to)
{
    return store::ReportReader(m_database, m_catalogue).read(client, to);
}

store::Result<std::vector<decisions::SwapOffer>> FloorPresenter::swapOffers(const FloorClient& client, const FloorLift& lift)
{
    return decisions::swapOffers(m_database, m_catalogue, decisions::swappedLiftOf(lift.machine, lift.exercise, lift.exercise.pattern),
                                 client.cautions);
}

std::optional<TakenBack> takenBackOf(const FloorLift& lift, base::Date day)
{
    if (!lift.savedBody) {
        return std::nullopt;
    }
    progression::LiftMachine with = lift.machine;
    progression::LiftMachine without = lift.machine;
    with.apply(day, *lift.savedBody);
    TakenBack taken{with.prescriptionOn(day), without.prescriptionOn(day)};
    for (const progression::Event& event : lift.later) {
        if (without.faultOf(event.body) || with.faultOf(event.body)) {
            return std::nullopt;
        }
        const auto rulesWith = with.apply(event.date, event.body);
        const auto rulesWithout = without.apply(event.date, event.body);
        taken.laterDecisions += rulesWith == rulesWithout ? 0 : 1;
        taken.present = with.prescriptionOn(event.date);
        taken.without = without.prescriptionOn(event.date);
    }
    return taken;
}

std::optional<Preview> previewOf(const FloorLift& lift, const progression::EventBody& body, base::Date day)
{
    if (lift.machine.faultOf(body)) {
        return std::nullopt;
    }
    progression::LiftMachine copy = lift.machine;
    const auto rules = copy.apply(day, body);
    Preview preview{copy.prescriptionOn(day), rules};
    for (const progression::Event& event : lift.later) {
        if (copy.faultOf(event.body)) {
            return preview;
        }
        copy.apply(event.date, event.body);
        day = event.date;
    }
    if (!lift.later.empty()) {
        preview.present = copy.prescriptionOn(day);
    }
    return preview;
}

}  // namespace chalk::ui::floor
