#include "core/exchange/json_writing.h"
#include "core/exchange/week_problem_json.h"

#include <QJsonArray>

namespace chalk::exchange {

namespace {

using week::DaySpan;
using week::WeekProblem;

QJsonArray spansJson(const std::vector<DaySpan>& spans)
{
    QJsonArray array;
    for (const DaySpan& span : spans) {
        array.append(QJsonArray{span.day, span.from, span.to});
    }
    return array;
}

QJsonArray patternsJson(const std::vector<std::string>& patterns)
{
    QJsonArray array;
    for (const std::string& pattern : patterns) {
        array.append(textOf(pattern));
    }
    return array;
}

QJsonObject weightsJson(const week::Weights& weights)
{
    QJsonObject object;
    put(object, "unplaced", weights.unplaced);
    put(object, "dayMove", weights.dayMove);
    put(object, "timeMoveBase", weights.timeMoveBase);
    put(object, "timeMovePer15", weights.timeMovePer15);
    put(object, "timeMoveCap", weights.timeMoveCap);
    put(object, "coachMove", weights.coachMove);
    put(object, "prefPer15", weights.prefPer15);
    put(object, "prefCap", weights.prefCap);
    put(object, "gapPer15", weights.gapPer15);
    put(object, "overPer15", weights.overPer15);
    put(object, "consecutive", weights.consecutive);
    return object;
}

QJsonObject stationJson(const week::Station& station)
{
    QJsonArray closures;
    for (const week::StationClosure& closure : station.closures) {
        QJsonObject object;
        put(object, "day", closure.span.day);
        put(object, "from", closure.span.from);
        put(object, "to", closure.span.to);
        put(object, "units", closure.units);
        closures.append(object);
    }
    QJsonObject object;
    put(object, "id", textOf(station.id));
    put(object, "units", station.units);
    put(object, "closures", closures);
    return object;
}

QJsonObject coachJson(const week::CoachWeek& coach)
{
    QJsonObject object;
    put(object, "id", textOf(coach.id));
    put(object, "capacity", coach.capacity);
    put(object, "softMaxMin", coach.softMaxMinutes);
    put(object, "windows", spansJson(coach.windows));
    put(object, "breaks", spansJson(coach.breaks));
    put(object, "absences", spansJson(coach.absences));
    return object;
}

QJsonObject recoveryJson(const week::Recovery& recovery)
{
    QJsonObject object;
    put(object, "type", textOf(keyOf(recovery.kind)));
    if (recovery.kind == week::RecoveryKind::Hours) {
        put(object, "hours", recovery.hours);
    }
    return object;
}

QJsonObject clientJson(const week::ClientWeek& client, const WeekProblem& problem)
{
    QJsonObject coaches;
    for (const week::AcceptedCoach& accepted : client.coaches) {
        coaches.insert(textOf(problem.coaches.at(accepted.coach).id), accepted.cost);
    }
    QJsonArray lastWeek;
    for (const week::PastSession& past : client.lastWeek) {
        QJsonObject object;
        put(object, "start", past.start);
        put(object, "patterns", patternsJson(past.patterns));
        lastWeek.append(object);
    }
    QJsonObject object;
    put(object, "id", textOf(client.id));
    put(object, "priority", client.priority);
    put(object, "maxGroup", client.maxGroup);
    put(object, "recovery", recoveryJson(client.recovery));
    put(object, "available", spansJson(client.available));
    put(object, "preferred", spansJson(client.preferred));
    put(object, "coaches", coaches);
    put(object, "lastWeek", lastWeek);
    return object;
}

QJsonValue standingJson(const std::optional<week::Slot>& standing, const WeekProblem& problem)
{
    if (!standing) {
        return QJsonValue::Null;
    }
    QJsonObject object;
    put(object, "coach", textOf(problem.coaches.at(standing->coach).id));
    put(object, "start", standing->start);
    return object;
}

QJsonObject sessionJson(const week::SessionWish& session, const WeekProblem& problem)
{
    QJsonArray needs;
    for (const week::StationNeed& need : session.needs) {
        QJsonObject object;
        put(object, "id", textOf(problem.stations.at(need.station).id));
        put(object, "share", need.share);
        put(object, "from", need.from);
        put(object, "to", need.to);
        needs.append(object);
    }
    QJsonObject object;
    put(object, "id", textOf(session.id));
    put(object, "client", textOf(problem.clients.at(session.client).id));
    put(object, "duration", session.minutes);
    put(object, "patterns", patternsJson(session.patterns));
    put(object, "equipment", needs);
    put(object, "standing", standingJson(session.standing, problem));
    put(object, "locked", session.isLocked);
    return object;
}

template <class Item, class Write>
QJsonArray listJson(const std::vector<Item>& items, Write&& write)
{
    QJsonArray array;
    for (const Item& item : items) {
        array.append(write(item));
    }
    return array;
}

}  // namespace

QJsonObject toJson(const WeekProblem& problem)
{
    QJsonObject object;
    put(object, "name", textOf(problem.name));
    put(object, "grid", problem.grid);
    put(object, "open", spansJson(problem.open));
    put(object, "weights", weightsJson(problem.weights));
    put(object, "equipment", listJson(problem.stations, stationJson));
    put(object, "coaches", listJson(problem.coaches, coachJson));
    put(object, "clients", listJson(problem.clients, [&problem](const week::ClientWeek& client) { return clientJson(client, problem); }));
    put(object, "sessions", listJson(problem.sessions, [&problem](const week::SessionWish& session) { return sessionJson(session, problem); }));
    return object;
}

}  // namespace chalk::exchange
