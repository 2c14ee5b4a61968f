#include "ui/roster/roster_source.h"

#include "core/store/roster_reader.h"
#include "core/store/session_reader.h"
#include "ui/roster/lift_lookup.h"
#include "ui/roster/roster_view_building.h"

#include <set>
#include <utility>

namespace chalk::ui::roster {

namespace {

/// Slots of the day that take or took place: those of one coach at one time are one.
int slotsOf(const std::vector<store::NamedSession>& sessions)
{
    std::set<std::pair<base::CoachId, int>> slots;
    for (const store::NamedSession& named : sessions) {
        if (!sessions::isCalledOff(named.session.state)) {
            slots.emplace(named.session.coach, named.session.startMinute);
        }
    }
    return static_cast<int>(slots.size());
}

}  // namespace

StudioRosterSource::StudioRosterSource(store::Access access, lifts::Catalogue catalogue)
    : m_access(std::move(access)), m_catalogue(std::move(catalogue))
{
}

store::Result<RosterView> StudioRosterSource::read(base::Date today)
{
    auto database = store::Database::open(m_access, store::OpenMode::ReadOnly);
    if (!database) {
        return tl::make_unexpected(database.error());
    }
    auto entries = store::RosterReader(**database).read(today);
    if (!entries) {
        return tl::make_unexpected(entries.error());
    }
    const auto sessions = store::SessionReader(**database).on(today);
    if (!sessions) {
        return tl::make_unexpected(sessions.error());
    }
    std::vector<KnownClient> clients;
    LiftLookup lookup(**database);
    for (store::RosterEntry& entry : *entries) {
        auto facts = factsOf(entry);
        lookup.complete(facts, entry, today);
        clients.push_back({std::move(entry), std::move(facts)});
    }
    RosterView view = viewOf(clients, today, m_catalogue);
    view.sessionsToday = slotsOf(*sessions);
    return view;
}

}  // namespace chalk::ui::roster
