#include "core/store/plan_rows.h"

#include "core/exchange/client_plan_json.h"

#include <QJsonDocument>

namespace chalk::store {

namespace {

constexpr int kContentColumn = 5;

QString contentOf(const direction::ClientPlan& plan)
{
    return QString::fromUtf8(QJsonDocument(exchange::planContentToJson(plan)).toJson(QJsonDocument::Compact));
}

/// The row that counts now of the plan with an id; 0 where there is none.
std::int64_t latestVersion(Database& database, base::PlanId plan)
{
    Statement latest(database, QStringLiteral("SELECT p.id FROM plan p WHERE coalesce(p.root_id, p.id) = ? AND ") + planCounts());
    return latest.run(plan) && latest.next() ? latest.integer(0) : 0;
}

bool isChangedSince(Database& database, base::ActId act)
{
    Statement later(database, QStringLiteral("SELECT 1 FROM plan p WHERE p.act_id = ? AND EXISTS (SELECT 1 FROM plan later WHERE later.replaces_id = p.id)"));
    return later.run(act) && later.next();
}

}  // namespace

const QString& planColumns()
{
    static const QString columns = QStringLiteral("coalesce(p.root_id, p.id), p.client_id, p.begun_day, p.ended_day, p.note, p.content");
    return columns;
}

const QString& planCounts()
{
    static const QString condition = QStringLiteral("p.is_void = 0 AND NOT EXISTS (SELECT 1 FROM plan later WHERE later.replaces_id = p.id)");
    return condition;
}

direction::ClientPlan planOf(const Statement& row)
{
    direction::ClientPlan plan;
    plan.id = base::PlanId(row.integer(0));
    plan.client = base::ClientId(row.integer(1));
    plan.begunOn = row.date(2);
    plan.endedOn = row.isNull(3) ? std::nullopt : std::optional(row.date(3));
    const SealedRow sealed = row.sealedRow("plan", plan.client, plan.begunOn.daysSince1970());
    plan.note = row.openedText(4, sealed, "note");
    auto content = exchange::readPlanContent(QJsonDocument::fromJson(row.opened(kContentColumn, sealed, "content").toUtf8()).object(), "plan");
    if (content) {
        plan.plan = std::move(content->plan);
        plan.singles = std::move(content->singles);
    } else {
        plan = row.known(std::optional<direction::ClientPlan>(), kContentColumn, "plan", 0);
    }
    return plan;
}

void insertPlan(Database& database, const direction::ClientPlan& plan, base::ActId act)
{
    std::int64_t replaced = 0;
    if (!plan.id.isNone() && (replaced = latestVersion(database, plan.id)) == 0) {
        database.fail({StoreError::Kind::Refused, QStringLiteral("There is no plan %1 any more").arg(plan.id.value())});
        return;
    }
    Vault& vault = database.vault();
    const SealedRow row = vault.toWrite("plan", plan.client, plan.begunOn.daysSince1970());
    const auto version = replaced == 0 ? std::optional<std::int64_t>() : std::optional(replaced);
    Statement(database, QStringLiteral("INSERT INTO plan (root_id, replaces_id, act_id, is_void, client_id, begun_day, last_day, ended_day, note, content) "
                                       "VALUES (?, ?, ?, 0, ?, ?, ?, ?, ?, ?)"))
        .run(plan.id, version, act, plan.client, plan.begunOn, direction::lastDayOf(plan), plan.endedOn,
             vault.sealed(row, "note", plan.note), vault.sealed(row, "content", contentOf(plan)));
}

void takeBackPlans(Database& database, base::ActId act, base::ActId by)
{
    if (isChangedSince(database, act)) {
        database.fail({StoreError::Kind::Refused, QStringLiteral("The plan was changed since: take that change back first")});
        return;
    }
    // What the row replaced comes back; a first version becomes void.
    Statement(database,
              QStringLiteral("INSERT INTO plan (root_id, replaces_id, act_id, is_void, client_id, begun_day, last_day, ended_day, note, content) "
                             "SELECT coalesce(p.root_id, p.id), p.id, ?, CASE WHEN former.id IS NULL THEN 1 ELSE former.is_void END, p.client_id, "
                             "coalesce(former.begun_day, p.begun_day), coalesce(former.last_day, p.last_day), "
                             "CASE WHEN former.id IS NULL THEN p.ended_day ELSE former.ended_day END, coalesce(former.note, p.note), "
                             "coalesce(former.content, p.content) "
                             "FROM plan p LEFT JOIN plan former ON former.id = p.replaces_id WHERE p.act_id = ? ORDER BY p.id"))
        .run(by, act);
}

const QString& testedMaximumColumns()
{
    static const QString columns = QStringLiteral("m.id, (SELECT r.act_id FROM tested_maximum r WHERE r.id = coalesce(m.root_id, m.id)), "
                                                  "m.client_id, m.lift_id, m.day, m.load_centi, m.reps, m.ending, m.note");
    return columns;
}

const QString& testedMaximumCounts()
{
    static const QString condition =
        QStringLiteral("m.is_void = 0 AND NOT EXISTS (SELECT 1 FROM tested_maximum later WHERE later.replaces_id = m.id)");
    return condition;
}

direction::TestedMaximum testedMaximumOf(const Statement& row)
{
    direction::TestedMaximum test;
    test.act = base::ActId(row.integer(1));
    test.client = base::ClientId(row.integer(2));
    test.lift = base::LiftId(row.integer(3));
    test.day = row.date(4);
    test.load = base::Load::fromCenti(row.number(5));
    test.reps = base::Reps(row.number(6));
    test.end = row.known(direction::testEndOf(row.text(7)), 7, "tested_maximum", 0);
    test.note = row.openedText(8, row.sealedRow("tested_maximum", test.client, test.lift, test.day.daysSince1970()), "note");
    return test;
}

void insertTestedMaximum(Database& database, const direction::TestedMaximum& test)
{
    Vault& vault = database.vault();
    Statement(database, QStringLiteral("INSERT INTO tested_maximum (act_id, is_void, client_id, lift_id, day, load_centi, reps, ending, note) "
                                       "VALUES (?, 0, ?, ?, ?, ?, ?, ?, ?)"))
        .run(test.act, test.client, test.lift, test.day, test.load.centi(), test.reps.value(), direction::keyOf(test.end),
             vault.sealed(vault.toWrite("tested_maximum", test.client, test.lift, test.day.daysSince1970()), "note", test.note));
}

void takeBackTestedMaxima(Database& database, base::ActId act, base::ActId by)
{
    Statement(database, QStringLiteral("INSERT INTO tested_maximum (root_id, replaces_id, act_id, is_void, client_id, lift_id, day, load_centi, reps, ending, note) "
                                       "SELECT coalesce(m.root_id, m.id), m.id, ?, 1 - m.is_void, m.client_id, m.lift_id, m.day, m.load_centi, "
                                       "m.reps, m.ending, m.note FROM tested_maximum m WHERE m.act_id = ? ORDER BY m.id"))
        .run(by, act);
}

}  // namespace chalk::store
