#include "core/store/trend_lifts.h"

#include "core/progression/kit_change.h"
#include "core/store/lift_codec.h"
#include "core/store/lift_setup_rows.h"
#include "core/store/statement.h"

#include <algorithm>
#include <unordered_map>

namespace chalk::store {

namespace {

void failAtLift(Database& database, std::int64_t lift)
{
    database.fail({StoreError::Kind::Damaged, QStringLiteral("%1 is damaged: lift %2 cannot be read").arg(database.target()).arg(lift)});
}

std::vector<TrendLift> readSetups(Database& database, base::ClientId client)
{
    const QString sql = QStringLiteral("SELECT id, client_id, pattern, unit, region, body_mass_centi, kit, start_stage, policy FROM lift");
    Statement rows(database, client.isNone() ? sql : sql + QStringLiteral(" WHERE client_id = ?"));
    client.isNone() ? rows.run() : rows.run(client);
    std::vector<TrendLift> lifts;
    while (rows.next()) {
        const auto pattern = lifts::patternOf(rows.text(2));
        auto setup = setupIn(rows, 3);
        if (!pattern || !setup) {
            failAtLift(database, rows.integer(0));
            return {};
        }
        lifts.push_back({base::LiftId(rows.integer(0)), base::ClientId(rows.integer(1)), *pattern, *std::move(setup), {}});
    }
    std::sort(lifts.begin(), lifts.end(), [](const TrendLift& a, const TrendLift& b) {
        return std::tuple(a.client, a.pattern, a.id) < std::tuple(b.client, b.pattern, b.id);
    });
    return lifts;
}

void readSwaps(Database& database, std::vector<TrendLift>& lifts)
{
    std::unordered_map<std::int64_t, TrendLift*> byId;
    for (TrendLift& lift : lifts) {
        byId.emplace(lift.id.value(), &lift);
    }
    Statement rows(database, QStringLiteral("SELECT e.lift_id, e.day, coalesce(e.root_id, e.id), e.type, e.detail FROM event e WHERE e.type = 'swap' AND "
                                            "e.is_void = 0 AND NOT EXISTS (SELECT 1 FROM event later WHERE later.replaces_id = e.id) "
                                            "ORDER BY e.lift_id, e.day, coalesce(e.root_id, e.id)"));
    rows.run();
    while (rows.next()) {
        const auto lift = byId.find(rows.integer(0));
        if (lift == byId.end()) {
            continue;
        }
        const auto body = bodyOf(rows.qtext(3), rows.opened(4, rows.sealedRow("event", rows.integer(0), rows.integer(1), rows.text(3)), "detail"), 0);
        const auto* swap = body ? std::get_if<progression::Swap>(&*body) : nullptr;
        if (swap == nullptr) {
            failAtLift(database, rows.integer(0));
            return;
        }
        TrendLift& of = *lift->second;
        of.changes.push_back({rows.date(1), rows.integer(2), progression::kitAfter(*swap, of.kitAt(rows.date(1), rows.integer(2)))});
    }
}

}  // namespace

const progression::Kit& TrendLift::kitAt(base::Date day, std::int64_t root) const
{
    const progression::Kit* kit = &setup.kit;
    for (const KitChange& change : changes) {
        if (std::pair(change.day, change.root) > std::pair(day, root)) {
            break;
        }
        kit = &change.kit;
    }
    return *kit;
}

std::vector<TrendLift> readTrendLifts(Database& database, base::ClientId client)
{
    std::vector<TrendLift> lifts = readSetups(database, client);
    readSwaps(database, lifts);
    return lifts;
}

}  // namespace chalk::store
