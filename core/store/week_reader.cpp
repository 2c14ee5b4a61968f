#include "core/store/week_reader.h"

#include "core/exchange/plan_draft_json.h"
#include "core/exchange/profile_json.h"
#include "core/store/profile_rows.h"
#include "core/store/roster_reader.h"
#include "core/store/studio_reader.h"
#include "core/store/week_settings.h"

#include <QJsonDocument>

#include <algorithm>
#include <map>

namespace chalk::store {

namespace {

week::ClientOfWeek* clientIn(week::WeekFacts& facts, base::ClientId id)
{
    const auto at = std::find_if(facts.clients.begin(), facts.clients.end(), [id](const week::ClientOfWeek& one) { return one.client.id == id; });
    return at == facts.clients.end() ? nullptr : &*at;
}

/// What the newest forms of a kind say, by client.
std::map<base::ClientId, QJsonObject> newestForms(Database& database, const char* kind)
{
    std::map<base::ClientId, QJsonObject> forms;
    Statement rows(database, QStringLiteral("SELECT client_id, detail, id FROM form WHERE kind = ? ORDER BY client_id, day, id"));
    rows.run(QLatin1String(kind));
    while (rows.next()) {
        forms[base::ClientId(rows.integer(0))] = QJsonDocument::fromJson(rows.opened(1, rows.sealedRow("form", rows.integer(2)), "detail").toUtf8()).object();
    }
    return forms;
}

/// Takes the lift's station: the floor while it is rehearsed without load.
lifts::Station stationOfLift(const LiftStand& lift, const lifts::Catalogue& catalogue)
{
    const lifts::Exercise* exercise = catalogue.find(lift.exerciseKey);
    return exercise == nullptr || !progression::isLoaded(lift.stage) ? lifts::Station::Floor : exercise->station;
}

/// When a client can come stands in the profile. Who does not read that judges nobody by it: so all hours are as good.
void leaveHoursOpen(week::WeekFacts& facts)
{
    clients::WeekHours all;
    for (int weekday = 0; weekday < week::kWeekDays; ++weekday) {
        for (int slot = 0; slot < clients::WeekHours::kSlotsPerDay; ++slot) {
            all.set(weekday, slot, true);
        }
    }
    for (week::ClientOfWeek& client : facts.clients) {
        client.free = all;
    }
}

}  // namespace

void WeekReader::addClients(week::WeekFacts& facts, base::Date today)
{
    const auto roster = RosterReader(m_database).read(today);
    const auto planning = WeekSettings(m_database).allPlanning();
    const auto quotas = WeekSettings(m_database).quotas(facts.monday);
    if (!roster || !planning || !quotas) {
        return;
    }
    for (const RosterEntry& entry : *roster) {
        week::ClientOfWeek& client = facts.clients.emplace_back();
        client.client = entry.client;
        client.isBlocked = clients::isBlocked(entry.clearance, std::max(today, facts.monday));
        if (const auto own = planning->find(entry.client.id); own != planning->end()) {
            client.planning = own->second;
        }
        if (const auto own = quotas->find(entry.client.id); own != quotas->end()) {
            client.quota = own->second;
        }
        for (const LiftStand& lift : entry.lifts) {
            if (!lift.isOnHold) {
                client.lifts.push_back({lift.id, lift.pattern, stationOfLift(lift, m_catalogue), lift.lastWork});
            }
        }
    }
}

void WeekReader::addProfiles(week::WeekFacts& facts)
{
    for (const auto& [id, detail] : newestForms(m_database, "profile")) {
        week::ClientOfWeek* client = clientIn(facts, id);
        const auto profile = exchange::readProfile(detail, {});
        if (!profile) {
            m_database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: the profile of client %2, %3 %4")
                                                            .arg(m_database.target()).arg(id.value())
                                                            .arg(QString::fromStdString(profile.error().field), QString::fromStdString(profile.error().reason))});
            return;
        }
        if (client != nullptr) {
            client->free = profile->free;
            client->preferred = profile->preferred;
            client->sessionMinutes = profile->sessionMinutes;
            client->isInGroup = profile->isInGroup;
        }
    }
}

void WeekReader::addContents(week::WeekFacts& facts)
{
    for (const auto& [id, detail] : newestForms(m_database, "starting_plan")) {
        week::ClientOfWeek* client = clientIn(facts, id);
        const auto draft = exchange::readPlanDraft(detail, {});
        if (!draft) {
            m_database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: the plan of client %2, %3 %4")
                                                            .arg(m_database.target()).arg(id.value())
                                                            .arg(QString::fromStdString(draft.error().field), QString::fromStdString(draft.error().reason))});
            return;
        }
        if (client != nullptr) {
            client->contents = draft->contents;
        }
    }
}

void WeekReader::addSessions(week::WeekFacts& facts)
{
    std::map<base::SessionId, std::vector<base::LiftId>> lifts;
    const base::Date first = facts.monday - week::kWeekDays;
    const base::Date last = facts.monday + (week::kWeekDays - 1);
    Statement planned(m_database, QStringLiteral("SELECT p.session_id, p.lift_id FROM session_lift p JOIN session s ON s.id = p.session_id "
                                                 "WHERE s.day BETWEEN ? AND ? AND p.left_out IS NULL ORDER BY p.session_id, p.position"));
    const bool isRead = m_database.may(Right::SeeHealth) && planned.run(first, last);
    while (isRead && planned.next()) {
        lifts[base::SessionId(planned.integer(0))].push_back(base::LiftId(planned.integer(1)));
    }
    Statement rows(m_database, QStringLiteral("SELECT ") + sessionColumns() +
                                   QStringLiteral(", (SELECT count(*) FROM booking_change b WHERE b.session_id = s.id) + "
                                                  "(SELECT count(*) FROM session_change c WHERE c.session_id = s.id)"
                                                  " FROM session s WHERE s.day BETWEEN ? AND ? AND s.state <> 'withdrawn' ORDER BY s.day, s.start_minute, s.id"));
    rows.run(first, last);
    while (rows.next()) {
        sessions::Session session = sessionOf(rows);
        if (week::ClientOfWeek* client = clientIn(facts, session.client)) {
            const auto own = lifts.find(session.id);
            client->sessions.push_back({std::move(session), own == lifts.end() ? std::vector<base::LiftId>() : own->second, rows.number(kSessionColumns)});
        }
    }
}

Result<week::WeekFacts> WeekReader::read(base::Date monday, base::Date today, int minute)
{
    const Snapshot snapshot(m_database);
    week::WeekFacts facts;
    facts.monday = monday;
    facts.nowMinute = (today - monday) * week::kDayMinutes + minute;
    const auto studio = WeekSettings(m_database).studioWeek();
    const auto coaches = StudioReader(m_database).coaches();
    const auto work = WeekSettings(m_database).coachWork();
    const auto closures = WeekSettings(m_database).closures(monday);
    if (!studio || !coaches || !work || !closures) {
        return tl::make_unexpected(*m_database.failure());
    }
    facts.studio = *studio;
    for (const clients::Coach& coach : *coaches) {
        const auto own = work->find(coach.id);
        facts.coaches.push_back({coach, own == work->end() ? week::CoachWork() : own->second});
    }
    for (const KeptClosure& kept : *closures) {
        if (kept.closure.first < monday + week::kWeekDays) {
            facts.closures.push_back(kept.closure);
        }
    }
    addClients(facts, today);
    if (m_database.may(Right::SeeHealth)) {
        addProfiles(facts);
        addContents(facts);
    } else {
        leaveHoursOpen(facts);
    }
    addSessions(facts);
    return m_database.resultOf(std::move(facts));
}

}  // namespace chalk::store
