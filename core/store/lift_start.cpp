#include "core/store/lift_start.h"

#include "core/store/audit.h"
#include "core/store/lift_cache.h"
#include "core/store/lift_codec.h"

namespace chalk::store {

namespace {

void refuseLift(Database& database, const NewLift& lift, const QString& reason)
{
    database.fail({StoreError::Kind::Refused, QStringLiteral("%1%2").arg(qstringOf(lifts::keyOf(lift.pattern)), reason)});
}

void beginLift(Database& database, base::ClientId client, const NewLift& lift, std::vector<base::LiftId>& started)
{
    Statement present(database, QStringLiteral("SELECT 1 FROM lift WHERE client_id = ? AND pattern = ?"));
    if (present.run(client, qstringOf(lifts::keyOf(lift.pattern))) && present.next()) {
        refuseLift(database, lift, QStringLiteral(" has begun already"));
    }
    const base::LiftId id = ClientInserts(database).lift(client, lift);
    EventLog log(database);
    LiftCache cache(database, log);
    auto fresh = database.failure() ? std::nullopt : cache.readFresh(id);
    if (!fresh) {
        return;
    }
    if (const auto replay = replayOf(*std::move(fresh), {})) {
        cache.keep(*replay);
        started.push_back(id);
    }
}

}  // namespace

std::vector<base::LiftId> beginLifts(Database& database, base::ClientId client, const std::vector<NewLift>& lifts)
{
    AuditedChange audited(database, AuditWhat::LiftsStarted, client);
    std::vector<base::LiftId> started;
    for (const NewLift& lift : lifts) {
        if (auto machine = progression::LiftMachine::create(lift.setup); !machine) {
            refuseLift(database, lift, QStringLiteral(": %1 %2").arg(qstringOf(machine.error().field), qstringOf(machine.error().reason)));
        }
        beginLift(database, client, lift, started);
    }
    audited.keep();
    return started;
}

void closeOpenForm(Database& database, base::ClientId client, FormKind kind)
{
    Statement(database, QStringLiteral("UPDATE form SET is_finished = 1 WHERE client_id = ? AND kind = ? AND is_finished = 0")).run(client, keyOf(kind));
}

}  // namespace chalk::store
