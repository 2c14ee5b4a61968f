#include "core/store/past_writer.h"

#include "core/progression/kit_change.h"
#include "core/store/lift_codec.h"
#include "core/store/people_changes.h"
#include "core/store/report_rows.h"

#include <algorithm>

namespace chalk::store {

namespace {

using lifts::Exercise;
using lifts::Pattern;
using progression::Event;
using progression::Kit;
using tables::PastExposure;
using tables::PastSession;

constexpr int kPastNoon = 12 * 60;  // the files do not say when it was

bool hasPattern(const PastSession& session, Pattern pattern)
{
    return std::any_of(session.done.begin(), session.done.end(), [pattern](const PastExposure& one) { return one.exercise->pattern == pattern; });
}

/// The same past with its loads in another unit.
std::vector<PastSession> inUnit(std::vector<PastSession> past, base::MassUnit from, base::MassUnit to)
{
    for (PastSession& session : past) {
        for (PastExposure& one : session.done) {
            for (progression::SetRecord& set : one.exposure.sets) {
                set.load = from == to ? set.load : base::Mass::of(set.load, from).in(to);
            }
        }
    }
    return past;
}

}  // namespace

Kit kitOn(base::Date day, Kit kit, const std::vector<LogEntry>& entries)
{
    for (const LogEntry& entry : entries) {
        const auto* swap = std::get_if<progression::Swap>(&entry.event.body);
        if (swap != nullptr && entry.event.date <= day) {
            kit = progression::kitAfter(*swap, kit);
        }
    }
    return kit;
}

PastWriter::PastWriter(Database& database, ActWork& work, std::vector<planning::EquipmentOnHand> kilogramKit, std::vector<planning::EquipmentOnHand> poundKit, SessionCodes newCode)
    : m_database(database),
      m_work(work),
      m_kilogramKit(std::move(kilogramKit)),
      m_poundKit(std::move(poundKit)),
      m_newCode(std::move(newCode)),
      m_inserts(database),
      m_insertSession(database, QStringLiteral("INSERT INTO session (client_id, coach_id, day, start_minute, minutes, place, place_capacity, kind, state, code) "
                                               "VALUES (?, ?, ?, ?, ?, 'Floor', 1, 'training', 'recorded', ?) RETURNING id")),
      m_insertChange(database, QStringLiteral("INSERT INTO session_change (act_id, session_id, state_before, state_after) VALUES (?, ?, 'withdrawn', 'recorded')")),
      m_runningLift(database, QStringLiteral("SELECT id, unit FROM lift WHERE client_id = ? AND pattern = ? ORDER BY id"))
{
}

std::vector<base::SessionId> PastWriter::writeSessions(const PastOwner& owner, const std::vector<PastSession>& past)
{
    std::vector<base::SessionId> ids;
    for (const PastSession& session : past) {
        const base::SessionId id(m_insertSession.runForId(owner.client, owner.coach, session.day, kPastNoon, session.minutes, freeSessionCode(m_database, m_newCode)));
        m_insertChange.run(m_work.outcome().act, id);
        if (!session.note.empty()) {
            sessions::SessionReport report;
            report.note = session.note;
            putReport(m_database, id, report);
        }
        ids.push_back(id);
    }
    return ids;
}

std::optional<PastWriter::RunningLift> PastWriter::runningLift(base::ClientId client, Pattern pattern)
{
    if (m_runningLift.run(client, lifts::keyOf(pattern)) && m_runningLift.next()) {
        return RunningLift{base::LiftId(m_runningLift.integer(0)), unitOf(m_runningLift.qtext(1))};
    }
    return std::nullopt;
}

Kit PastWriter::pastKitOf(const Exercise& exercise, base::MassUnit unit, std::optional<base::Load> bodyMass, const std::vector<PastSession>& past) const
{
    return tables::pastSetupOf(exercise, unit, bodyMass, unit == base::MassUnit::Kilogram ? m_kilogramKit : m_poundKit, past).setup.kit;
}

base::ClientId PastWriter::holderFor(const PastOwner& owner, base::Date startedOn)
{
    base::ClientId& holder = m_holders[owner.client];
    if (holder.isNone()) {
        clients::Client kept;
        kept.name = owner.name;
        kept.coach = owner.coach;
        kept.unit = owner.unit;
        kept.startedOn = startedOn;
        holder = m_inserts.client(kept);
        Statement(m_database, QStringLiteral("UPDATE client SET is_withdrawn = 1 WHERE id = ?")).run(holder);
    }
    return holder;
}

void PastWriter::judgeFresh(base::LiftId lift, const std::vector<PastEntry>& entries)
{
    LiftCache& cache = m_work.edit().cache();
    auto fresh = m_database.failure() ? std::nullopt : cache.readFresh(lift);
    if (!fresh) {
        return;
    }
    std::vector<const Event*> events;
    for (const PastEntry& entry : entries) {
        events.push_back(&entry.event);
    }
    const QString pattern = qstringOf(lifts::keyOf(fresh->pattern));
    const base::ClientId client = fresh->client;
    const auto replay = replayOf(*std::move(fresh), events);
    if (!replay) {
        const progression::ReplayFault& fault = replay.error();
        m_work.refuse(QStringLiteral("%1, entry of %2: %3 %4").arg(pattern, qstringOf(events[fault.index.value_or(0)]->date.toString()), qstringOf(fault.fault.field),
                                                                  qstringOf(fault.fault.reason)));
        return;
    }
    cache.keep(*replay);
    cache.changeVolumes(client, {}, replay->weeks);
}

void PastWriter::begin(const PastOwner& owner, Pattern pattern, const std::vector<PastSession>& past, const std::vector<base::SessionId>& sessions)
{
    std::vector<PastEntry> entries;
    std::optional<base::LiftId> lift;
    Kit kit;
    for (std::size_t i = 0; i < past.size(); ++i) {
        for (const PastExposure& one : past[i].done) {
            if (one.exercise->pattern != pattern) {
                continue;
            }
            if (!lift) {
                tables::PastSetup setup = tables::pastSetupOf(*one.exercise, owner.unit, owner.bodyMass,
                                                              owner.unit == base::MassUnit::Kilogram ? m_kilogramKit : m_poundKit, past);
                kit = setup.setup.kit;
                lift = m_inserts.lift(owner.client, {pattern, setup.equipmentKey, std::move(setup.setup), past[i].day});
            } else if (kit.exerciseKey != one.exercise->key) {
                kit = pastKitOf(*one.exercise, owner.unit, owner.bodyMass, past);
                entries.push_back({{past[i].day, tables::swapToKit(kit)}, sessions[i]});
            }
            entries.push_back({{past[i].day, one.exposure}, sessions[i]});
        }
    }
    for (const PastEntry& entry : entries) {
        m_work.edit().log().append({*lift, entry.event, m_work.outcome().act, entry.session, {}, false});
    }
    judgeFresh(*lift, entries);
    const base::ClientId before = owner.isNew ? owner.client : holderFor(owner, past.front().day);
    Statement(m_database, QStringLiteral("INSERT INTO owner_change (act_id, thing, thing_id, client_before, client_after) VALUES (?, 'lift', ?, ?, ?)"))
        .run(m_work.outcome().act, *lift, before, owner.client);
}

void PastWriter::goOn(const RunningLift& lift, Pattern pattern, const std::vector<PastSession>& past, const std::vector<base::SessionId>& sessions)
{
    const auto fresh = m_work.edit().cache().readFresh(lift.id);
    const std::vector<LogEntry> entries = m_work.edit().log().presentEntries(lift.id);
    if (!fresh) {
        return;
    }
    const auto write = [&](const Event& event, base::SessionId session) {
        m_work.edit().writeLater({lift.id, event, m_work.outcome().act, session, {}, false});
    };
    for (std::size_t i = 0; i < past.size(); ++i) {
        const Kit own = kitOn(past[i].day, fresh->machine.kit(), entries);
        Kit kit = own;
        for (const PastExposure& one : past[i].done) {
            if (one.exercise->pattern != pattern) {
                continue;
            }
            if (kit.exerciseKey != one.exercise->key) {
                kit = pastKitOf(*one.exercise, lift.unit, fresh->machine.setup().bodyMass, past);
                write({past[i].day, tables::swapToKit(kit)}, sessions[i]);
            }
            write({past[i].day, one.exposure}, sessions[i]);
        }
        if (kit.exerciseKey != own.exerciseKey) {
            write({past[i].day, tables::swapToKit(own)}, sessions[i]);
        }
    }
    m_work.edit().settle();
}

int PastWriter::write(const PastOwner& owner, const std::vector<PastSession>& past)
{
    const std::vector<base::SessionId> sessions = writeSessions(owner, past);
    int begun = 0;
    for (const Pattern pattern : lifts::kPatterns) {
        if (m_database.failure() || std::none_of(past.begin(), past.end(), [pattern](const PastSession& one) { return hasPattern(one, pattern); })) {
            continue;
        }
        const auto running = owner.isNew ? std::nullopt : runningLift(owner.client, pattern);
        if (running) {
            goOn(*running, pattern, inUnit(past, owner.unit, running->unit), sessions);
        } else {
            begin(owner, pattern, past, sessions);
            ++begun;
        }
    }
    return begun;
}

}  // namespace chalk::store
