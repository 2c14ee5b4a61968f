#include "core/store/lift_edit.h"

#include "core/exchange/event_json.h"
#include "core/store/lift_codec.h"

#include <algorithm>

namespace chalk::store {

namespace {

using progression::Decision;
using progression::Event;

void refuse(Database& database, lifts::Pattern pattern, const std::string& field, const std::string& reason)
{
    database.fail({StoreError::Kind::Refused, QStringLiteral("%1: %2 %3").arg(qstringOf(lifts::keyOf(pattern)), qstringOf(field), qstringOf(reason))});
}

/// The decisions by the first versions of their entries.
std::map<base::EventId, const Decision*> byRoot(const LoggedReplay& logged)
{
    std::map<base::EventId, const Decision*> map;
    for (const Decision& decision : logged.replay.decisions) {
        map.emplace(logged.entries[decision.index].root, &decision);
    }
    return map;
}

}  // namespace

bool LiftEdit::isWritable(const Event& event, lifts::Measure measure, lifts::Pattern pattern)
{
    const auto read = exchange::readEvent(exchange::toJson(event, measure), {}, measure, {true, true});
    if (!read) {
        refuse(m_database, pattern, read.error().field, read.error().reason);
        return false;
    }
    return true;
}

void LiftEdit::add(base::LiftId id, const Event& event, base::SessionId session)
{
    auto lift = m_cache.read(id);
    if (!lift) {
        return;
    }
    const bool isLate = lift->lastEvent && event.date < *lift->lastEvent;
    // What it was counted in then, a swap since may have changed: metres have the widest range.
    if (!isWritable(event, isLate ? lifts::Measure::Metres : lift->machine.kit().measure, lift->pattern)) {
        return;
    }
    const NewEntry entry{id, event, m_outcome.act, session, {}, false};
    if (isLate) {
        rewrite(entry);
    } else {
        addLast(*std::move(lift), entry);
    }
}

void LiftEdit::addLast(CachedLift lift, const NewEntry& entry)
{
    if (const auto fault = lift.machine.faultOf(entry.event.body)) {
        refuse(m_database, lift.pattern, fault->field, fault->reason);
        return;
    }
    LiftOutcome outcome{lift.id, {}, lift.machine.prescriptionOn(entry.event.date), {}, lift.machine.state(), {}};
    m_log.append(entry);
    outcome.rules = m_cache.append(lift, entry.event);
    outcome.after = lift.machine.prescriptionOn(entry.event.date);
    outcome.stateAfter = lift.machine.state();
    m_outcome.lifts.push_back(std::move(outcome));
}

void LiftEdit::replace(const LogEntry& old, const Event& event, bool isVoid)
{
    const auto lift = m_cache.readFresh(old.lift);
    if (lift && (isVoid || isWritable(event, lifts::Measure::Metres, lift->pattern))) {
        rewrite({old.lift, event, m_outcome.act, old.session, old.id, isVoid});
    }
}

void LiftEdit::rewrite(const NewEntry& entry)
{
    writeLater(entry);
    settle();
}

void LiftEdit::writeLater(const NewEntry& entry)
{
    if (m_written.count(entry.lift) == 0) {
        auto before = m_cache.replay(entry.lift);
        if (!before) {
            return;
        }
        m_written.emplace(entry.lift, Written{*std::move(before), {}});
    }
    const base::EventId id = m_log.append(entry);
    const auto written = m_log.entry(id);
    m_written.at(entry.lift).roots.insert(written ? written->root : id);
}

void LiftEdit::settle()
{
    for (const auto& [lift, written] : m_written) {
        const auto after = m_cache.replay(lift);
        if (!after) {
            break;
        }
        m_cache.keep(after->replay);
        m_cache.changeVolumes(after->replay.lift.client, written.before.replay.weeks, after->replay.weeks);
        note(written.before, *after, written.roots);
    }
    m_written.clear();
}

void LiftEdit::note(const LoggedReplay& before, const LoggedReplay& after, const std::set<base::EventId>& roots)
{
    const CachedLift& was = before.replay.lift;
    const CachedLift& is = after.replay.lift;
    const base::Date day = std::max(was.lastEvent.value_or(was.started), is.lastEvent.value_or(is.started));
    LiftOutcome outcome{is.id, {}, was.machine.prescriptionOn(day), is.machine.prescriptionOn(day), was.machine.state(), is.machine.state()};
    const auto old = byRoot(before);
    for (const auto& [entry, decision] : byRoot(after)) {
        const auto former = old.find(entry);
        if (roots.count(entry) > 0) {
            outcome.rules = decision->rules;
        } else if (former != old.end() && !(former->second->rules == decision->rules && former->second->after == decision->after)) {
            m_outcome.changed.push_back({is.id, entry, decision->date, former->second->rules, decision->rules, former->second->after, decision->after});
        }
    }
    std::stable_sort(m_outcome.changed.begin(), m_outcome.changed.end(), [](const auto& a, const auto& b) { return a.date < b.date; });
    m_outcome.lifts.push_back(std::move(outcome));
}

}  // namespace chalk::store
