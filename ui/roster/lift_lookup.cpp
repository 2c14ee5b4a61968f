#include "ui/roster/lift_lookup.h"

#include <algorithm>
#include <variant>

namespace chalk::ui::roster {

namespace {

/// So many of the last records are looked through for the pain that holds a lift.
constexpr int kRecordsLookedThrough = 12;

/// The pain of what was done; nothing for an act of the coach.
std::optional<int> painIn(const progression::EventBody& body)
{
    if (const auto* exposure = std::get_if<progression::Exposure>(&body)) {
        return exposure->pain;
    }
    if (const auto* rehearsal = std::get_if<progression::Rehearsal>(&body)) {
        return rehearsal->pain;
    }
    return std::nullopt;
}

checkin::LiftLoad loadIn(base::Load load, const progression::LiftMachine& machine)
{
    const progression::Kit& kit = machine.kit();
    return {load, machine.setup().unit, kit.pieces, std::holds_alternative<lifts::BodyAdded>(kit.equipment)};
}

}  // namespace

LiftLookup::LiftLookup(store::Database& database) : m_database(database), m_log(database), m_cache(database, m_log) {}

void LiftLookup::complete(checkin::ClientFacts& facts, const store::RosterEntry& entry, base::Date today)
{
    for (std::size_t i = 0; i < facts.lifts.size(); ++i) {
        checkin::LiftFacts& lift = facts.lifts[i];
        if (!lift.isOnHold && !lift.flags.has(progression::Flag::Stalled) && !store::mayHaveLayoff(lift, today)) {
            continue;
        }
        const store::Snapshot snapshot(m_database);  // forgets what another lift could not tell
        const auto cached = m_cache.read(entry.lifts[i].id);
        if (!cached) {
            continue;
        }
        if (lift.isOnHold) {
            lift.hold = holdOf(*cached);
            continue;
        }
        const auto next = cached->machine.prescriptionOn(today);
        store::applyLayoff(lift, next);
        if (next.kind == progression::PrescriptionKind::Work) {
            lift.load = loadIn(next.load, cached->machine);
        }
    }
}

std::optional<checkin::HoldFacts> LiftLookup::holdOf(const store::CachedLift& lift)
{
    const std::vector<store::LogEntry> entries = m_log.lastEntries(lift.id, kRecordsLookedThrough);
    const int limit = lift.machine.setup().policy.painHold;
    const auto held = std::find_if(entries.begin(), entries.end(), [limit](const store::LogEntry& entry) {
        return painIn(entry.event.body).value_or(0) >= limit;
    });
    if (held == entries.end()) {
        return std::nullopt;
    }
    checkin::HoldFacts hold{painIn(held->event.body).value_or(0), 0, held->event.date};
    for (auto entry = held; entry != entries.end(); ++entry) {
        const auto pain = painIn(entry->event.body);
        if (pain && *pain == 0) {
            break;
        }
        hold.painfulRecords += pain ? 1 : 0;
    }
    return hold;
}

}  // namespace chalk::ui::roster
