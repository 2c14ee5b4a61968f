#include "core/exchange/week_problem_json.h"

#include "core/exchange/studio_fields.h"

#include <QJsonArray>

#include <algorithm>
#include <unordered_map>

namespace chalk::exchange {

namespace {

using week::ClientWeek;
using week::CoachWeek;
using week::DaySpan;
using week::kDayMinutes;
using week::kWeekDays;
using week::PastSession;
using week::Recovery;
using week::RecoveryKind;
using week::SessionWish;
using week::Station;
using week::StationNeed;
using week::WeekProblem;
using week::Weights;

constexpr int kMostCost = 100'000;
constexpr int kMostSessionMinutes = 8 * 60;
constexpr int kMostAtOnce = 200;
constexpr qsizetype kMostCoaches = 60;
constexpr qsizetype kMostClients = 1000;
constexpr qsizetype kMostSessions = 3000;
constexpr qsizetype kMostStations = 60;

/// Where each id stands in its list.
using WeekPlaces = std::unordered_map<std::string, std::size_t>;

/// The ids of a problem that were met so far.
struct ProblemPlaces {
    WeekPlaces stations;
    WeekPlaces coaches;
    WeekPlaces clients;
    WeekPlaces sessions;
};

std::string newIdAt(ObjectReader& reader, WeekPlaces& places)
{
    std::string id = labelAt(reader, "id");
    if (reader.isSound() && !places.emplace(id, places.size()).second) {
        reader.fail("id", id + " is there twice");
    }
    return id;
}

std::size_t placeOfId(ObjectReader& reader, const char* field, const WeekPlaces& places, const char* list)
{
    const std::string id = labelAt(reader, field);
    const auto found = places.find(id);
    if (reader.isSound() && found == places.end()) {
        reader.fail(field, id + " is not among the " + list);
    }
    return found == places.end() ? 0 : found->second;
}

bool checkCount(ObjectReader& reader, const char* field, qsizetype least, qsizetype most)
{
    const qsizetype count = reader.array(field).size();
    if (reader.isSound() && (count < least || count > most)) {
        reader.fail(field, fmt::format("must be {} to {}", least, most));
    }
    return reader.isSound();
}

/// `least` minutes long or longer.
JsonResult<DaySpan> daySpanOf(const QJsonValue& value, const std::string& path, int least)
{
    const QJsonArray parts = value.toArray();
    if (!value.isArray() || parts.size() != 3) {
        return jsonFault(path, "must be [day, from, to]");
    }
    const auto day = exactDecimal(parts[0], path + "[0]", 0, 0, kWeekDays - 1);
    const auto from = exactDecimal(parts[1], path + "[1]", 0, 0, kDayMinutes - 1);
    const auto to = exactDecimal(parts[2], path + "[2]", 0, 0, kDayMinutes);
    for (const auto* part : {&day, &from, &to}) {
        if (!*part) {
            return tl::make_unexpected(part->error());
        }
    }
    if (*to - *from < least) {
        return jsonFault(path, *to == *from ? "is empty" : "ends before it begins");
    }
    return DaySpan{*day, *from, *to};
}

std::vector<DaySpan> daySpansAt(ObjectReader& reader, const char* field, int least = 1)
{
    std::vector<DaySpan> spans;
    const QJsonArray array = reader.array(field);
    for (qsizetype i = 0; i < array.size() && reader.isSound(); ++i) {
        spans.push_back(taken(reader, daySpanOf(array[i], fmt::format("{}[{}]", reader.pathOf(field), i), least)));
    }
    return spans;
}

std::vector<DaySpan> optionalDaySpansAt(ObjectReader& reader, const char* field, int least = 1)
{
    return reader.has(field) ? daySpansAt(reader, field, least) : std::vector<DaySpan>();
}

std::vector<std::string> patternsAt(ObjectReader& reader)
{
    std::vector<std::string> patterns;
    const QJsonArray array = reader.has("patterns") ? reader.array("patterns") : QJsonArray();
    for (qsizetype i = 0; i < array.size() && reader.isSound(); ++i) {
        const std::string pattern = array[i].toString().toStdString();
        if (pattern.empty()) {
            reader.take({fmt::format("{}[{}]", reader.pathOf("patterns"), i), "must be a text that is not empty"});
        }
        patterns.push_back(pattern);
    }
    return patterns;
}

Weights weightsOf(ObjectReader& reader)
{
    reader.allowOnly({"unplaced", "dayMove", "timeMoveBase", "timeMovePer15", "timeMoveCap", "coachMove", "prefPer15", "prefCap", "gapPer15",
                      "overPer15", "consecutive"});
    Weights weights;
    const auto weightAt = [&reader](const char* field, int& weight) {
        weight = reader.optionalWholeNumber(field, 0, kMostCost).value_or(weight);
    };
    weightAt("unplaced", weights.unplaced);
    weightAt("dayMove", weights.dayMove);
    weightAt("timeMoveBase", weights.timeMoveBase);
    weightAt("timeMovePer15", weights.timeMovePer15);
    weightAt("timeMoveCap", weights.timeMoveCap);
    weightAt("coachMove", weights.coachMove);
    weightAt("prefPer15", weights.prefPer15);
    weightAt("prefCap", weights.prefCap);
    weightAt("gapPer15", weights.gapPer15);
    weightAt("overPer15", weights.overPer15);
    weightAt("consecutive", weights.consecutive);
    return weights;
}

week::StationClosure closureOf(ObjectReader& reader)
{
    reader.allowOnly({"day", "from", "to", "units"});
    week::StationClosure closure;
    closure.span.day = reader.wholeNumber("day", 0, kWeekDays - 1);
    closure.span.from = reader.wholeNumber("from", 0, kDayMinutes - 1);
    closure.span.to = reader.wholeNumber("to", 1, kDayMinutes);
    closure.units = reader.wholeNumber("units", 0, kMostAtOnce);
    if (reader.isSound() && closure.span.from >= closure.span.to) {
        reader.fail("to", "must be after from");
    }
    return closure;
}

Station stationOf(ObjectReader& reader, ProblemPlaces& places)
{
    reader.allowOnly({"id", "units", "closures"});
    Station station;
    station.id = newIdAt(reader, places.stations);
    station.units = reader.optionalWholeNumber("units", 0, kMostAtOnce).value_or(station.units);
    if (reader.has("closures")) {
        eachOf(reader, "closures", [&station](ObjectReader& item) { station.closures.push_back(closureOf(item)); });
    }
    return station;
}

CoachWeek coachWeekOf(ObjectReader& reader, ProblemPlaces& places)
{
    reader.allowOnly({"id", "capacity", "softMaxMin", "windows", "breaks", "absences"});
    CoachWeek coach;
    coach.id = newIdAt(reader, places.coaches);
    coach.capacity = reader.wholeNumber("capacity", 1, kMostAtOnce);
    coach.softMaxMinutes = reader.optionalWholeNumber("softMaxMin", 0, kDayMinutes).value_or(coach.softMaxMinutes);
    coach.windows = daySpansAt(reader, "windows");
    coach.breaks = optionalDaySpansAt(reader, "breaks");
    coach.absences = optionalDaySpansAt(reader, "absences");
    return coach;
}

Recovery recoveryOf(ObjectReader& reader)
{
    reader.allowOnly({"type", "hours"});
    Recovery recovery;
    const auto kindOf = [](const std::string& key) {
        return key == keyOf(RecoveryKind::Hours)     ? std::optional(RecoveryKind::Hours)
               : key == keyOf(RecoveryKind::RestDay) ? std::optional(RecoveryKind::RestDay)
                                                     : std::nullopt;
    };
    recovery.kind = wordAt(reader, "type", kindOf, "hours or restDay");
    if (recovery.kind == RecoveryKind::Hours) {
        recovery.hours = reader.wholeNumber("hours", 0, kWeekDays * 24);
    } else if (reader.has("hours")) {
        reader.fail("hours", "is of hours alone");
    }
    return recovery;
}

PastSession pastSessionOf(ObjectReader& reader)
{
    reader.allowOnly({"start", "patterns"});
    PastSession past;
    past.start = reader.wholeNumber("start", -2 * kWeekDays * kDayMinutes, -1);
    past.patterns = patternsAt(reader);
    return past;
}

std::vector<week::AcceptedCoach> acceptedCoachesAt(ObjectReader& reader, const WeekPlaces& coaches)
{
    std::vector<week::AcceptedCoach> accepted;
    const QJsonValue value = reader.required("coaches");
    if (reader.isSound() && !value.isObject()) {
        reader.fail("coaches", "must be an object: what each coach costs, by id");
    }
    const QJsonObject costs = value.toObject();
    for (auto it = costs.constBegin(); it != costs.constEnd() && reader.isSound(); ++it) {
        const std::string id = it.key().toStdString();
        const auto found = coaches.find(id);
        if (found == coaches.end()) {
            reader.take({reader.pathOf("coaches"), id + " is not among the coaches"});
            break;
        }
        const auto cost = exactDecimal(it.value(), reader.pathOf("coaches") + "." + id, 0, 0, kMostCost);
        accepted.push_back({found->second, taken(reader, cost)});
    }
    std::sort(accepted.begin(), accepted.end(), [](const auto& one, const auto& other) { return one.coach < other.coach; });
    return accepted;
}

ClientWeek clientWeekOf(ObjectReader& reader, ProblemPlaces& places)
{
    reader.allowOnly({"id", "priority", "maxGroup", "recovery", "available", "preferred", "coaches", "lastWeek"});
    ClientWeek client;
    client.id = newIdAt(reader, places.clients);
    client.priority = reader.optionalWholeNumber("priority", 1, 100).value_or(client.priority);
    client.maxGroup = reader.optionalWholeNumber("maxGroup", 1, kMostAtOnce).value_or(client.maxGroup);
    if (reader.has("recovery")) {
        ObjectReader recovery(reader.required("recovery"), reader.pathOf("recovery"));
        client.recovery = recoveryOf(recovery);
        if (recovery.fault()) {
            reader.take(*recovery.fault());
        }
    }
    client.available = daySpansAt(reader, "available");
    client.preferred = optionalDaySpansAt(reader, "preferred", 0);
    client.coaches = acceptedCoachesAt(reader, places.coaches);
    if (reader.has("lastWeek")) {
        eachOf(reader, "lastWeek", [&client](ObjectReader& item) { client.lastWeek.push_back(pastSessionOf(item)); });
    }
    return client;
}

StationNeed stationNeedOf(ObjectReader& reader, const ProblemPlaces& places, int minutes)
{
    reader.allowOnly({"id", "share", "from", "to"});
    StationNeed need;
    need.station = placeOfId(reader, "id", places.stations, "equipment");
    need.share = reader.wholeNumber("share", 1, 100 * kMostAtOnce);
    need.from = reader.optionalWholeNumber("from", 0, kMostSessionMinutes - 1).value_or(0);
    need.to = reader.optionalWholeNumber("to", 1, kMostSessionMinutes).value_or(minutes);
    if (reader.isSound() && need.to > minutes) {
        reader.fail("to", "is after the session's end");
    }
    if (reader.isSound() && need.from >= need.to) {
        reader.fail("from", "must be before to");
    }
    return need;
}

std::optional<week::Slot> standingSlotAt(ObjectReader& reader, const ProblemPlaces& places)
{
    if (reader.optional("standing").isNull() || !reader.has("standing")) {
        return std::nullopt;
    }
    ObjectReader standing(reader.optional("standing"), reader.pathOf("standing"));
    standing.allowOnly({"coach", "start"});
    week::Slot slot;
    slot.coach = placeOfId(standing, "coach", places.coaches, "coaches");
    slot.start = standing.wholeNumber("start", 0, kWeekDays * kDayMinutes - 1);
    if (standing.fault()) {
        reader.take(*standing.fault());
    }
    return slot;
}

SessionWish sessionWishOf(ObjectReader& reader, ProblemPlaces& places)
{
    reader.allowOnly({"id", "client", "duration", "patterns", "equipment", "standing", "locked"});
    SessionWish session;
    session.id = newIdAt(reader, places.sessions);
    session.client = placeOfId(reader, "client", places.clients, "clients");
    session.minutes = reader.wholeNumber("duration", 5, kMostSessionMinutes);
    session.patterns = patternsAt(reader);
    if (reader.has("equipment")) {
        eachOf(reader, "equipment", [&](ObjectReader& item) { session.needs.push_back(stationNeedOf(item, places, session.minutes)); });
    }
    session.standing = standingSlotAt(reader, places);
    session.isLocked = reader.flag("locked", false);
    if (reader.isSound() && session.isLocked && !session.standing) {
        reader.fail("locked", "needs a standing slot to be locked on");
    }
    return session;
}

int gridOf(ObjectReader& reader)
{
    const int grid = reader.wholeNumber("grid", 15, 30);
    if (reader.isSound() && grid != 15 && grid != 30) {
        reader.fail("grid", "must be 15 or 30");
    }
    return grid == 30 ? 30 : 15;
}

void readWeights(ObjectReader& reader, Weights& weights)
{
    if (reader.has("weights")) {
        ObjectReader weightsReader(reader.required("weights"), reader.pathOf("weights"));
        weights = weightsOf(weightsReader);
        if (weightsReader.fault()) {
            reader.take(*weightsReader.fault());
        }
    }
}

}  // namespace

JsonResult<WeekProblem> readWeekProblem(const QJsonValue& value)
{
    ObjectReader reader(value, {});
    reader.allowOnly({"name", "grid", "open", "weights", "equipment", "coaches", "clients", "sessions", "level", "holiday", "seed"});
    WeekProblem problem;
    ProblemPlaces places;
    problem.name = labelAt(reader, "name");
    problem.grid = gridOf(reader);
    problem.open = daySpansAt(reader, "open");
    readWeights(reader, problem.weights);
    if (reader.has("equipment") && checkCount(reader, "equipment", 0, kMostStations)) {
        eachOf(reader, "equipment", [&](ObjectReader& item) { problem.stations.push_back(stationOf(item, places)); });
    }
    if (checkCount(reader, "coaches", 1, kMostCoaches)) {
        eachOf(reader, "coaches", [&](ObjectReader& item) { problem.coaches.push_back(coachWeekOf(item, places)); });
    }
    if (checkCount(reader, "clients", 0, kMostClients)) {
        eachOf(reader, "clients", [&](ObjectReader& item) { problem.clients.push_back(clientWeekOf(item, places)); });
    }
    if (checkCount(reader, "sessions", 0, kMostSessions)) {
        eachOf(reader, "sessions", [&](ObjectReader& item) { problem.sessions.push_back(sessionWishOf(item, places)); });
    }
    return resultOf(reader, std::move(problem));
}

}  // namespace chalk::exchange
