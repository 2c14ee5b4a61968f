#include "ui/roster/findable_clients.h"

#include "ui/common/formats.h"
#include "ui/roster/attention_words.h"
#include "ui/roster/row_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::roster {

namespace {

QString standText(const store::LiftStand& lift)
{
    if (lift.isOnHold) {
        return QCoreApplication::translate("Roster", "on hold");
    }
    const QString stage = QStringLiteral("%1 %2").arg(progression::numberOf(lift.stage)).arg(common::stageName(lift.stage));
    return lift.cycle > 1 ? QCoreApplication::translate("Roster", "%1, cycle %2").arg(stage).arg(lift.cycle) : stage;
}

}  // namespace

std::vector<shell::FindableClient> findableClientsOf(std::span<const store::RosterEntry> entries, std::span<const store::NamedSession> sessions,
                                                     const lifts::Catalogue& catalogue, base::Date today)
{
    std::vector<shell::FindableClient> clients;
    clients.reserve(entries.size());
    for (const store::RosterEntry& entry : entries) {
        shell::FindableClient& client = clients.emplace_back();
        client.id = entry.client.id;
        client.name = common::qstring(entry.client.name);
        client.about = detailText(entry.client, today);
        client.unit = entry.client.unit;
        client.isBlocked = clients::isBlocked(entry.clearance, today);
        for (const store::LiftStand& lift : entry.lifts) {
            client.lifts.push_back({lift.pattern, exerciseName(lift.exerciseKey, lift.pattern, catalogue), standText(lift)});
        }
        const auto session = std::find_if(sessions.begin(), sessions.end(), [&entry](const store::NamedSession& one) {
            return one.session.client == entry.client.id && !sessions::isCalledOff(one.session.state);
        });
        if (session != sessions.end()) {
            client.sessionToday = session->session.id;
            client.todayAt = common::qstring(sessions::clockText(session->session.startMinute));
        }
    }
    return clients;
}

}  // namespace chalk::ui::roster
