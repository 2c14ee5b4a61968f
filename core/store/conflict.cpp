#include "core/store/conflict.h"

#include "core/store/audit.h"
#include "core/store/statement.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>
#include <memory>

namespace chalk::store {

namespace {

const QLatin1String kNoteField("note");
const QLatin1String kTestField("test");
const QLatin1String kMondayField("monday");  ///< of the wishes for one week alone

/// What a change of it is called in the audit; nothing where it is an act.
std::optional<AuditWhat> auditedAs(const Conflict& conflict)
{
    switch (conflict.about) {
    case ConflictAbout::Entry:
    case ConflictAbout::Report:
    case ConflictAbout::SessionState:
    case ConflictAbout::Booking:
    case ConflictAbout::Plan:
    case ConflictAbout::Decision:
    case ConflictAbout::Choice:
    case ConflictAbout::SessionLifts: return std::nullopt;
    case ConflictAbout::Template: return AuditWhat::Templates;
    case ConflictAbout::Client: return AuditWhat::ClientDetails;
    case ConflictAbout::Profile: return AuditWhat::Profile;
    case ConflictAbout::HealthIntake: return AuditWhat::HealthIntake;
    case ConflictAbout::BodyMeasures: return AuditWhat::BodyMeasures;
    case ConflictAbout::MovementScreen: return AuditWhat::MovementScreen;
    case ConflictAbout::FieldTests: return AuditWhat::FieldTests;
    case ConflictAbout::StartingPlan: return AuditWhat::StartingPlan;
    case ConflictAbout::Caution: return AuditWhat::Cautions;
    case ConflictAbout::Planning: return conflict.yours.contains(kMondayField) ? AuditWhat::WeekQuota : AuditWhat::Planning;
    case ConflictAbout::CoachWork: return AuditWhat::CoachWork;
    case ConflictAbout::StudioWeek: return AuditWhat::StudioWeek;
    case ConflictAbout::RestingLimits: return AuditWhat::RestingLimits;
    }
    return std::nullopt;
}

/// Fills in who wrote what is no act last, and when.
void nameLastAudit(Database& database, Conflict& conflict)
{
    const auto what = auditedAs(conflict);
    Statement last(database, QStringLiteral("SELECT audit.at_utc, coach.name FROM audit LEFT JOIN coach ON coach.id = audit.coach_id "
                                            "WHERE audit.what = ? AND coalesce(audit.client_id, 0) = ? ORDER BY audit.id DESC LIMIT 1"));
    if (what && last.run(keyOf(*what), conflict.client.value()) && last.next()) {
        conflict.atUtc = last.qtext(0);
        conflict.coach = last.qtext(1);
    }
}

/// As it would be read from a file: numbers are of one kind then.
QJsonObject asRead(const QJsonObject& object)
{
    return QJsonDocument::fromJson(QJsonDocument(object).toJson(QJsonDocument::Compact)).object();
}

/// A note that both went on with has both ends.
std::optional<QJsonValue> bothNotes(const QString& seen, const QString& yours, const QString& theirs)
{
    if (!yours.startsWith(seen) || !theirs.startsWith(seen)) {
        return std::nullopt;
    }
    const QString added = yours.mid(seen.size()).trimmed();
    return QJsonValue(theirs.trimmed() + (theirs.trimmed().isEmpty() ? QString() : QStringLiteral("\n")) + added);
}

/// Rows of one list stand for the same thing where they have the same key.
bool areSameRows(const QJsonArray& one, const QJsonArray& other)
{
    return one.size() == other.size() && std::equal(one.begin(), one.end(), other.begin(), [](const QJsonValue& a, const QJsonValue& b) {
               const auto keyed = [&](QLatin1String key) { return a.toObject().contains(key) && a.toObject().value(key) == b.toObject().value(key); };
               return keyed(QLatin1String("pattern")) || keyed(QLatin1String("key"));
           });
}

std::optional<QJsonValue> mergedValue(const QString& field, const QJsonValue& seen, const QJsonValue& yours, const QJsonValue& theirs);

std::optional<QJsonObject> mergedObject(const QJsonObject& seen, const QJsonObject& yours, const QJsonObject& theirs)
{
    QJsonObject merged;
    QStringList fields = yours.keys() + theirs.keys();
    fields.removeDuplicates();
    for (const QString& field : fields) {
        const auto value = mergedValue(field, seen.value(field), yours.value(field), theirs.value(field));
        if (!value) {
            return std::nullopt;
        }
        if (!value->isUndefined()) {
            merged.insert(field, *value);
        }
    }
    return merged;
}

/// The result of a field test in a list of them; undefined where it is not there.
QJsonValue testIn(const QJsonArray& tests, const QJsonValue& test)
{
    const auto at = std::find_if(tests.begin(), tests.end(), [&test](const QJsonValue& one) { return one.toObject().value(kTestField) == test; });
    return at == tests.end() ? QJsonValue(QJsonValue::Undefined) : QJsonValue(*at);
}

/// Results of field tests stand for themselves, and come and go one by one.
std::optional<QJsonValue> mergedTests(const QJsonArray& seen, const QJsonArray& yours, const QJsonArray& theirs)
{
    QJsonArray names;
    for (const QJsonArray& tests : {theirs, yours}) {
        for (const QJsonValue& one : tests) {
            if (const QJsonValue name = one.toObject().value(kTestField); !names.contains(name)) {
                names.append(name);
            }
        }
    }
    QJsonArray merged;
    for (const QJsonValue& name : std::as_const(names)) {
        const auto test = mergedValue({}, testIn(seen, name), testIn(yours, name), testIn(theirs, name));
        if (!test) {
            return std::nullopt;
        }
        if (!test->isUndefined()) {
            merged.append(*test);
        }
    }
    return QJsonValue(merged);
}

bool areTests(const QJsonArray& rows)
{
    return std::all_of(rows.begin(), rows.end(), [](const QJsonValue& one) { return one.toObject().contains(kTestField); });
}

std::optional<QJsonValue> mergedRows(const QJsonArray& seen, const QJsonArray& yours, const QJsonArray& theirs)
{
    if (areTests(seen) && areTests(yours) && areTests(theirs)) {
        return mergedTests(seen, yours, theirs);
    }
    if (!areSameRows(seen, yours) || !areSameRows(seen, theirs)) {
        return std::nullopt;
    }
    QJsonArray merged;
    for (qsizetype i = 0; i < seen.size(); ++i) {
        const auto row = mergedObject(seen[i].toObject(), yours[i].toObject(), theirs[i].toObject());
        if (!row) {
            return std::nullopt;
        }
        merged.append(*row);
    }
    return QJsonValue(merged);
}

std::optional<QJsonValue> mergedValue(const QString& field, const QJsonValue& seen, const QJsonValue& yours, const QJsonValue& theirs)
{
    if (yours == theirs || theirs == seen) {
        return yours;
    }
    if (yours == seen) {
        return theirs;
    }
    if (field == kNoteField && yours.isString() && theirs.isString()) {
        return bothNotes(seen.toString(), yours.toString(), theirs.toString());
    }
    if (yours.isArray() && theirs.isArray()) {
        return mergedRows(seen.toArray(), yours.toArray(), theirs.toArray());
    }
    if (yours.isObject() && theirs.isObject()) {
        const auto merged = mergedObject(seen.toObject(), yours.toObject(), theirs.toObject());
        return merged ? std::optional<QJsonValue>(*merged) : std::nullopt;
    }
    return std::nullopt;
}

}  // namespace

std::optional<QJsonObject> bothOf(const Conflict& conflict)
{
    switch (conflict.about) {
    case ConflictAbout::Entry:
    case ConflictAbout::SessionState:
    case ConflictAbout::Booking:
    case ConflictAbout::Plan:
    case ConflictAbout::Decision:
    case ConflictAbout::Choice:
    case ConflictAbout::SessionLifts:
    case ConflictAbout::Template:
        return std::nullopt;
    case ConflictAbout::Report:
    case ConflictAbout::Client:
    case ConflictAbout::Profile:
    case ConflictAbout::HealthIntake:
    case ConflictAbout::BodyMeasures:
    case ConflictAbout::MovementScreen:
    case ConflictAbout::FieldTests:
    case ConflictAbout::StartingPlan:
    case ConflictAbout::Caution:
    case ConflictAbout::Planning:
    case ConflictAbout::CoachWork:
    case ConflictAbout::StudioWeek:
    case ConflictAbout::RestingLimits:
        return mergedObject(conflict.seen, conflict.yours, conflict.theirs);
    }
    return std::nullopt;
}

void refuseChanged(Database& database, Conflict conflict, const Seen& seen)
{
    if (!seen || database.failure()) {
        return;
    }
    conflict.seen = asRead(*seen);
    conflict.yours = asRead(conflict.yours);
    conflict.theirs = asRead(conflict.theirs);
    if (conflict.theirs != conflict.seen && conflict.theirs != conflict.yours) {
        refuseAsConflict(database, std::move(conflict));
    }
}

void refuseAsConflict(Database& database, Conflict conflict)
{
    if (Statement lift(database, QStringLiteral("SELECT pattern FROM lift WHERE id = ?")); !conflict.lift.isNone() && lift.run(conflict.lift) && lift.next()) {
        conflict.pattern = lifts::patternOf(lift.text(0));
    }
    nameLastAudit(database, conflict);
    const QString who = conflict.coach.isEmpty() ? QStringLiteral("Somebody else") : conflict.coach;
    database.fail({StoreError::Kind::Conflict, QStringLiteral("%1 changed this in the meantime: nothing was written").arg(who),
                   std::make_shared<const Conflict>(std::move(conflict))});
}

void nameLastAct(Database& database, Conflict& conflict, const QString& table, const QString& column, std::int64_t id)
{
    Statement last(database, QStringLiteral("SELECT act.at_utc, coach.name FROM %1 JOIN act ON act.id = %1.act_id LEFT JOIN coach ON coach.id = act.coach_id "
                                            "WHERE %1.%2 = ? ORDER BY act.id DESC LIMIT 1")
                                 .arg(table, column));
    if (last.run(id) && last.next()) {
        conflict.atUtc = last.qtext(0);
        conflict.coach = last.qtext(1);
    }
}

}  // namespace chalk::store
