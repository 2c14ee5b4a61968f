#include "core/store/studio_export.h"

#include "core/exchange/catalogue_json.h"
#include "core/store/decision_rows.h"
#include "core/store/document_rows.h"
#include "core/store/plan_rows.h"
#include "core/store/profile_rows.h"
#include "core/store/report_rows.h"
#include "core/store/studio_reader.h"
#include "core/store/studio_settings.h"
#include "core/store/week_settings.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace chalk::store {

/// Reads what belongs to the clients; ids become those of the document.
class StudioExport::Reading {
public:
    Reading(Database& database, const std::vector<clients::Coach>& coaches) : m_database(database), m_log(database), m_cache(database, m_log)
    {
        for (std::size_t i = 0; i < coaches.size(); ++i) {
            m_coaches[coaches[i].id] = base::CoachId(static_cast<std::int64_t>(i) + 1);
        }
    }

    std::vector<clients::Client> clients()
    {
        std::vector<clients::Client> clients;
        Statement rows(m_database, QStringLiteral("SELECT ") + clientColumns() + QStringLiteral(" FROM client c WHERE c.is_withdrawn = 0 ORDER BY c.id"));
        rows.run();
        while (rows.next()) {
            clients.push_back(clientOf(rows));
        }
        return clients;
    }

    exchange::DocumentClient read(const clients::Client& client, base::ClientId inDocument)
    {
        exchange::DocumentClient document{client, readCautions(m_database, client.id, {}), readClearance(m_database, client.id), {}, {}};
        document.client.id = inDocument;
        document.client.coach = m_coaches[client.coach];
        for (clients::Caution& caution : document.cautions) {
            caution.id = {};
        }
        document.sessions = readSessions(client.id);
        document.lifts = readLifts(client.id);
        document.plannedLifts = readPlannedLifts(m_database, client.id);
        document.leftOut = readLeftOutLifts(m_database, client.id);
        document.forms = readDocumentForms(m_database, client.id);
        document.letters = readDocumentLetters(m_database, client.id);
        document.planning = planningOf(client.id);
        document.quotas = readQuotas(client.id);
        document.decisions = readDecisions(client.id);
        document.plans = readPlans(client.id);
        document.tests = readTests(client.id);
        for (auto& [session, report] : readReports(m_database, client.id)) {
            document.reports[m_codes[session]] = std::move(report);
        }
        return document;
    }

private:
    week::ClientPlanning planningOf(base::ClientId client)
    {
        week::ClientPlanning planning = WeekSettings(m_database).planning(client).value_or(week::ClientPlanning());
        for (week::CoachWish& wish : planning.otherCoaches) {
            wish.coach = m_coaches[wish.coach];
        }
        for (week::StandingSlot& slot : planning.standing) {
            slot.coach = m_coaches[slot.coach];
        }
        return planning;
    }

    std::map<base::Date, int> readQuotas(base::ClientId client)
    {
        std::map<base::Date, int> quotas;
        Statement rows(m_database, QStringLiteral("SELECT monday, sessions FROM week_quota WHERE client_id = ?"));
        rows.run(client);
        while (rows.next()) {
            quotas[rows.date(0)] = rows.number(1);
        }
        return quotas;
    }

    /// After the lifts, which say the patterns.
    std::vector<exchange::DocumentDecision> readDecisions(base::ClientId client)
    {
        std::vector<exchange::DocumentDecision> decisions;
        Statement rows(m_database, QStringLiteral("SELECT ") + decisionColumns() + QStringLiteral(" FROM decision d WHERE ") + decisionCounts() +
                                       QStringLiteral(" AND d.client_id = ? ORDER BY d.day, coalesce(d.root_id, d.id)"));
        rows.run(client);
        while (rows.next()) {
            checkin::Decision one = decisionOf(rows);
            const auto lift = one.lift ? m_patterns.find(*one.lift) : m_patterns.end();
            decisions.push_back({one.day, lift == m_patterns.end() ? std::nullopt : std::optional(lift->second), one.about, one.choice,
                                 std::move(one.note), one.nextReview});
        }
        return decisions;
    }

    /// After the lifts, which say the numbers.
    std::vector<direction::ClientPlan> readPlans(base::ClientId client)
    {
        std::vector<direction::ClientPlan> plans;
        Statement rows(m_database, QStringLiteral("SELECT ") + planColumns() + QStringLiteral(" FROM plan p WHERE ") + planCounts() +
                                       QStringLiteral(" AND p.client_id = ? ORDER BY coalesce(p.root_id, p.id)"));
        rows.run(client);
        while (rows.next()) {
            direction::ClientPlan& plan = plans.emplace_back(planOf(rows));
            plan.id = {};
            plan.client = {};
            for (direction::PlannedLift& lift : plan.plan.wishes.lifts) {
                lift.lift = m_liftNumbers[lift.lift];
            }
        }
        return plans;
    }

    std::vector<exchange::DocumentTest> readTests(base::ClientId client)
    {
        std::vector<exchange::DocumentTest> tests;
        Statement rows(m_database, QStringLiteral("SELECT ") + testedMaximumColumns() + QStringLiteral(" FROM tested_maximum m WHERE ") +
                                       testedMaximumCounts() + QStringLiteral(" AND m.client_id = ? ORDER BY coalesce(m.root_id, m.id)"));
        rows.run(client);
        while (rows.next()) {
            direction::TestedMaximum test = testedMaximumOf(rows);
            tests.push_back({m_patterns[test.lift], test.day, test.load, test.reps, test.end, std::move(test.note)});
        }
        return tests;
    }

    std::vector<sessions::Session> readSessions(base::ClientId client)
    {
        std::vector<sessions::Session> sessions;
        Statement rows(m_database, QStringLiteral("SELECT ") + sessionColumns() + QStringLiteral(" FROM session s WHERE s.client_id = ? AND s.state <> 'withdrawn' ORDER BY s.id"));
        rows.run(client);
        m_codes.clear();
        while (rows.next()) {
            sessions::Session& session = sessions.emplace_back(sessionOf(rows));
            m_codes[session.id] = session.code;
            session.id = {};
            session.client = {};
            session.coach = m_coaches[session.coach];
        }
        return sessions;
    }

    std::vector<exchange::DocumentLift> readLifts(base::ClientId client)
    {
        std::vector<std::pair<base::LiftId, std::string>> ids;
        Statement rows(m_database, QStringLiteral("SELECT id, equipment_key FROM lift WHERE client_id = ? ORDER BY id"));
        rows.run(client);
        while (rows.next()) {
            ids.emplace_back(rows.integer(0), rows.text(1));
        }
        std::vector<exchange::DocumentLift> lifts;
        m_patterns.clear();
        m_liftNumbers.clear();
        for (const auto& [id, equipmentKey] : ids) {
            if (const auto lift = m_cache.readFresh(id)) {
                m_patterns[id] = lift->pattern;
                m_liftNumbers[id] = base::LiftId(static_cast<std::int64_t>(lifts.size()) + 1);
                const progression::LiftSetup& setup = lift->machine.setup();
                lifts.push_back({lift->pattern, setup.kit.exerciseKey, equipmentKey, setup, lift->started, readEvents(id)});
            }
        }
        return lifts;
    }

    std::vector<exchange::DocumentEvent> readEvents(base::LiftId lift)
    {
        std::vector<exchange::DocumentEvent> events;
        std::map<base::EventId, std::size_t> places;  // of first versions
        for (LogEntry& row : m_log.allEntries(lift)) {
            const auto [place, isFirst] = places.try_emplace(row.root, events.size());
            if (isFirst) {
                const auto code = m_codes.find(row.session);
                events.push_back({std::move(row.event), code == m_codes.end() ? std::nullopt : std::optional(code->second)});
                continue;
            }
            exchange::DocumentEvent& entry = events[place->second];
            entry.isTakenBack = row.isVoid;
            if (!row.isVoid && row.event != entry.event) {
                entry.former.push_back(std::exchange(entry.event, std::move(row.event)));
            }
        }
        return events;
    }

    Database& m_database;
    EventLog m_log;
    LiftCache m_cache;
    std::map<base::CoachId, base::CoachId> m_coaches;   ///< ids in the document
    std::map<base::SessionId, std::string> m_codes;     ///< of the present client
    std::map<base::LiftId, lifts::Pattern> m_patterns;  ///< of the present client
    std::map<base::LiftId, base::LiftId> m_liftNumbers; ///< of the present client's document, from 1
};

namespace {

/// What weeks are planned from, with the coaches of the studio still in their own ids.
void readWeek(Database& database, exchange::StudioDocument& document)
{
    WeekSettings settings(database);
    document.week = settings.studioWeek().value_or(week::StudioWeek());
    for (const auto& [coach, work] : settings.coachWork().value_or(std::map<base::CoachId, week::CoachWork>())) {
        if (work != week::CoachWork()) {
            document.coachWork[coach] = work;
        }
    }
    Statement desk(database, QStringLiteral("SELECT id FROM coach WHERE is_coaching = 0"));
    desk.run();
    while (desk.next()) {
        document.deskOnly.insert(base::CoachId(desk.integer(0)));
    }
    for (const KeptClosure& kept : settings.closures(base::Date()).value_or(std::vector<KeptClosure>())) {
        document.closures.push_back(kept.closure);
    }
}

/// Gives coaches the ids of a document: counted from 1.
void renumberCoaches(exchange::StudioDocument& document)
{
    std::map<base::CoachId, base::CoachId> ids;
    for (std::size_t i = 0; i < document.coaches.size(); ++i) {
        ids[document.coaches[i].id] = base::CoachId(static_cast<std::int64_t>(i) + 1);
        document.coaches[i].id = base::CoachId(static_cast<std::int64_t>(i) + 1);
    }
    std::map<base::CoachId, week::CoachWork> work;
    for (const auto& [coach, own] : document.coachWork) {
        work[ids[coach]] = own;
    }
    document.coachWork = std::move(work);
    std::set<base::CoachId> desk;
    for (const base::CoachId coach : document.deskOnly) {
        desk.insert(ids[coach]);
    }
    document.deskOnly = std::move(desk);
    for (week::Closure& closure : document.closures) {
        closure.coach = closure.coach.isNone() ? closure.coach : ids[closure.coach];
    }
    for (exchange::ErasedSession& session : document.erasedSessions) {
        session.coach = ids[session.coach];
    }
}

/// The last day that something is known of which cannot lie ahead.
base::Date lastKnownDay(Database& database, base::Date today)
{
    Statement row(database, QStringLiteral("SELECT max(known.day) FROM (SELECT day FROM event UNION ALL SELECT day FROM form UNION ALL SELECT day FROM letter "
                                           "UNION ALL SELECT day FROM decision UNION ALL SELECT begun_day FROM plan UNION ALL SELECT ended_day FROM plan "
                                           "UNION ALL SELECT day FROM tested_maximum UNION ALL SELECT started_day FROM lift UNION ALL SELECT started_day FROM client "
                                           "UNION ALL SELECT asked_day FROM clearance UNION ALL SELECT granted_day FROM clearance "
                                           "UNION ALL SELECT day FROM session WHERE state IN ('recorded', 'missed')) AS known"));
    return row.run() && row.next() && !row.isNull(0) ? std::max(today, row.date(0)) : today;
}

void readErased(Database& database, exchange::StudioDocument& document)
{
    std::map<std::int64_t, int> numbers;
    Statement clients(database, QStringLiteral("SELECT id, erased_day FROM erased_client ORDER BY id"));
    clients.run();
    while (clients.next()) {
        document.erasedOn.push_back(clients.date(1));
        numbers[clients.integer(0)] = static_cast<int>(document.erasedOn.size());
    }
    Statement rows(database, QStringLiteral("SELECT id, erased_client_id, coach_id, day, start_minute, minutes, kind, state FROM erased_session ORDER BY id"));
    rows.run();
    while (rows.next()) {
        document.erasedSessions.push_back({numbers[rows.integer(1)], base::CoachId(rows.integer(2)), rows.date(3), rows.number(4), rows.number(5),
                                           rows.known(sessions::sessionKindOf(rows.text(6)), 6, "erased session", 0),
                                           rows.known(sessions::sessionStateOf(rows.text(7)), 7, "erased session", 0)});
    }
}

}  // namespace

StudioExport::StudioExport(Database& database, base::Date today) : m_database(database), m_snapshot(database)
{
    StudioReader studio(database);
    const auto coaches = studio.everybody();
    const auto equipment = studio.equipment();
    const auto name = studio.name();
    const auto limits = StudioSettings(database).restingLimits();
    m_header.today = lastKnownDay(database, today);
    if (!coaches || !equipment || !name || !limits) {
        return;  // the database has failed
    }
    m_header.name = *name;
    m_header.coaches = *coaches;
    m_header.equipment = *equipment;
    m_header.restingLimits = *limits;
    m_header.templates = readDocumentTemplates(database, exchange::builtInCatalogue());
    m_reading = std::make_unique<Reading>(database, *coaches);
    m_clients = m_reading->clients();
    readWeek(database, m_header);
    readErased(database, m_header);
    renumberCoaches(m_header);
}

StudioExport::~StudioExport() = default;

Result<void> StudioExport::onlyClient(base::ClientId client)
{
    std::erase_if(m_clients, [client](const clients::Client& one) { return one.id != client; });
    m_header.erasedOn.clear();
    m_header.erasedSessions.clear();
    return m_clients.empty() ? storeError(StoreError::Kind::Refused, QStringLiteral("There is no client %1").arg(client.value())) : Result<void>();
}

Result<exchange::StudioDocument> StudioExport::header() const
{
    return m_database.resultOf(m_header);
}

Result<exchange::DocumentClient> StudioExport::client(std::size_t index)
{
    if (m_database.failure()) {
        return tl::make_unexpected(*m_database.failure());
    }
    exchange::DocumentClient client = m_reading->read(m_clients[index], base::ClientId(static_cast<std::int64_t>(index) + 1));
    return m_database.resultOf(std::move(client));
}

Result<exchange::StudioDocument> exportStudio(Database& database, base::Date today, const Progress& progress)
{
    StudioExport reading(database, today);
    auto document = reading.header();
    const int count = static_cast<int>(reading.clientCount());
    for (int i = 0; i < count && document; ++i) {
        if (progress && !progress(i, count)) {
            return storeError(StoreError::Kind::Cancelled, QStringLiteral("Stopped"));
        }
        auto client = reading.client(static_cast<std::size_t>(i));
        if (!client) {
            return tl::make_unexpected(client.error());
        }
        document->clients.push_back(*std::move(client));
    }
    return document;
}

}  // namespace chalk::store
