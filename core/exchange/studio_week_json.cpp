#include "core/exchange/studio_week_json.h"

#include "core/exchange/hours_json.h"
#include "core/exchange/json_writing.h"
#include "core/exchange/studio_fields.h"
#include "core/sessions/session.h"

#include <array>

#include <fmt/core.h>

namespace chalk::exchange {

namespace {

using week::ClientPlanning;
using week::Closure;
using week::CoachWork;
using week::StudioWeek;
using week::Weights;

constexpr int kMostStationUnits = 20;
constexpr int kMostWeight = 1'000'000;

struct WeightField {
    const char* name;
    int Weights::*weight;
};

constexpr std::array<WeightField, 11> kWeightFields{{{"unplaced", &Weights::unplaced},
                                                     {"day_move", &Weights::dayMove},
                                                     {"time_move_base", &Weights::timeMoveBase},
                                                     {"time_move_per_15", &Weights::timeMovePer15},
                                                     {"time_move_cap", &Weights::timeMoveCap},
                                                     {"coach_move", &Weights::coachMove},
                                                     {"preference_per_15", &Weights::prefPer15},
                                                     {"preference_cap", &Weights::prefCap},
                                                     {"gap_per_15", &Weights::gapPer15},
                                                     {"over_per_15", &Weights::overPer15},
                                                     {"consecutive", &Weights::consecutive}}};

/// The value of a reader that read soundly and is none of faultOf().
template <class T>
JsonResult<T> checked(ObjectReader& reader, T value)
{
    if (reader.isSound()) {
        if (const auto fault = faultOf(value)) {
            reader.fail(fault->field.c_str(), fault->reason);
        }
    }
    return resultOf(reader, std::move(value));
}

base::CoachId coachAt(ObjectReader& reader, const CoachNames& coaches)
{
    const auto coach = coaches.idOf(reader.text("coach"));
    if (!coach) {
        reader.fail("coach", "is none of the studio's coaches");
    }
    return coach.value_or(base::CoachId());
}

planning::FloorStations stationsAt(ObjectReader& parent)
{
    planning::FloorStations stations;
    const QJsonObject object = parent.required("stations").toObject();
    ObjectReader reader(object, parent.pathOf("stations"));
    for (const QString& key : object.keys()) {
        const std::string name = key.toStdString();
        const auto station = lifts::stationOf(name);
        if (!station) {
            reader.fail(name.c_str(), "is no station: floor, rack, bench, machine, pull_up_bar or lane");
            break;
        }
        stations[*station] = reader.wholeNumber(name.c_str(), 0, kMostStationUnits);
    }
    if (reader.fault()) {
        parent.take(*reader.fault());
    }
    return stations;
}

Weights weightsAt(ObjectReader& parent)
{
    Weights weights;
    ObjectReader reader(parent.required("weights"), parent.pathOf("weights"));
    reader.allowOnly({"unplaced", "day_move", "time_move_base", "time_move_per_15", "time_move_cap", "coach_move", "preference_per_15", "preference_cap",
                      "gap_per_15", "over_per_15", "consecutive"});
    for (const WeightField& field : kWeightFields) {
        weights.*field.weight = reader.optionalWholeNumber(field.name, 0, kMostWeight).value_or(weights.*field.weight);
    }
    if (reader.fault()) {
        parent.take(*reader.fault());
    }
    return weights;
}

QJsonObject changedWeights(const Weights& weights)
{
    QJsonObject object;
    for (const WeightField& field : kWeightFields) {
        if (weights.*field.weight != Weights().*field.weight) {
            put(object, field.name, weights.*field.weight);
        }
    }
    return object;
}

void readStanding(ObjectReader& reader, ClientPlanning& planning, const CoachNames& coaches)
{
    if (reader.has("standing")) {
        eachOf(reader, "standing", [&](ObjectReader& item) {
            item.allowOnly({"day", "at", "coach"});
            planning.standing.push_back({weekdayAt(item, "day"), wordAt(item, "at", sessions::parseClock, "a time, HH:MM"), coachAt(item, coaches)});
        });
    }
}

}  // namespace

std::string CoachNames::textOf(base::CoachId id) const
{
    for (const auto& [name, coach] : ids) {
        if (coach == id) {
            return name;
        }
    }
    return std::to_string(id.value());
}

std::optional<base::CoachId> CoachNames::idOf(const std::string& text) const
{
    if (!ids.empty()) {
        const auto found = ids.find(text);
        return found == ids.end() ? std::nullopt : std::optional(found->second);
    }
    bool isNumber = false;
    const qlonglong id = QString::fromStdString(text).toLongLong(&isNumber);
    return isNumber && id > 0 ? std::optional(base::CoachId(id)) : std::nullopt;
}

CoachNames coachNamesOf(const std::vector<clients::Coach>& coaches)
{
    CoachNames names;
    for (const clients::Coach& coach : coaches) {
        names.ids[coach.name] = coach.id;
    }
    return names;
}

JsonResult<StudioWeek> readStudioWeek(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"hours", "stations", "weights"});
    StudioWeek week;
    if (reader.has("hours")) {
        week.open = hoursAt(reader, "hours");
    }
    if (reader.has("stations")) {
        week.stations = stationsAt(reader);
    }
    if (reader.has("weights")) {
        week.weights = weightsAt(reader);
    }
    return checked(reader, std::move(week));
}

QJsonObject toJson(const StudioWeek& week)
{
    QJsonObject object;
    if (week.open != StudioWeek::usualOpeningHours()) {
        put(object, "hours", toJson(week.open));
    }
    if (week.stations != planning::usualStations()) {
        QJsonObject stations;
        for (const auto& [station, units] : week.stations) {
            stations.insert(textOf(lifts::keyOf(station)), units);
        }
        put(object, "stations", stations);
    }
    if (week.weights != Weights()) {
        put(object, "weights", changedWeights(week.weights));
    }
    return object;
}

JsonResult<CoachWork> readCoachWork(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"hours", "capacity", "soft_max_minutes"});
    CoachWork work;
    if (reader.has("hours")) {
        work.hours = hoursAt(reader, "hours");
    }
    work.capacity = reader.optionalWholeNumber("capacity", 1, week::kMostCapacity).value_or(work.capacity);
    work.softMaxMinutes = reader.optionalWholeNumber("soft_max_minutes", 60, 960).value_or(work.softMaxMinutes);
    return checked(reader, std::move(work));
}

QJsonObject toJson(const CoachWork& work)
{
    QJsonObject object;
    const CoachWork usual;
    if (work.hours) {
        put(object, "hours", toJson(*work.hours));
    }
    if (work.capacity != usual.capacity) {
        put(object, "capacity", work.capacity);
    }
    if (work.softMaxMinutes != usual.softMaxMinutes) {
        put(object, "soft_max_minutes", work.softMaxMinutes);
    }
    return object;
}

JsonResult<ClientPlanning> readClientPlanning(const QJsonValue& value, const std::string& path, const CoachNames& coaches)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"priority", "max_group", "rest_day", "recovery_hours", "other_coaches", "standing"});
    ClientPlanning planning;
    planning.priority = reader.optionalWholeNumber("priority", 1, week::kMostPriority).value_or(planning.priority);
    planning.maxGroup = reader.optionalWholeNumber("max_group", 1, week::kMostCapacity);
    if (reader.flag("rest_day", false)) {
        planning.recovery.kind = week::RecoveryKind::RestDay;
    }
    planning.recovery.hours = reader.optionalWholeNumber("recovery_hours", 0, 168).value_or(planning.recovery.hours);
    if (reader.has("other_coaches")) {
        eachOf(reader, "other_coaches", [&](ObjectReader& item) {
            item.allowOnly({"coach", "cost"});
            planning.otherCoaches.push_back({coachAt(item, coaches), item.wholeNumber("cost", 0, 100)});
        });
    }
    readStanding(reader, planning, coaches);
    return checked(reader, std::move(planning));
}

QJsonObject toJson(const ClientPlanning& planning, const CoachNames& coaches)
{
    QJsonObject object;
    const ClientPlanning usual;
    if (planning.priority != usual.priority) {
        put(object, "priority", planning.priority);
    }
    if (planning.maxGroup) {
        put(object, "max_group", *planning.maxGroup);
    }
    if (planning.recovery.kind == week::RecoveryKind::RestDay) {
        put(object, "rest_day", true);
    }
    if (planning.recovery.hours != usual.recovery.hours) {
        put(object, "recovery_hours", planning.recovery.hours);
    }
    QJsonArray others;
    for (const week::CoachWish& wish : planning.otherCoaches) {
        others.append(QJsonObject{{QStringLiteral("coach"), textOf(coaches.textOf(wish.coach))}, {QStringLiteral("cost"), wish.cost}});
    }
    if (!others.isEmpty()) {
        put(object, "other_coaches", others);
    }
    QJsonArray standing;
    for (const week::StandingSlot& slot : planning.standing) {
        standing.append(QJsonObject{{QStringLiteral("day"), textOfWeekday(slot.weekday)},
                                    {QStringLiteral("at"), textOf(sessions::clockText(slot.startMinute))},
                                    {QStringLiteral("coach"), textOf(coaches.textOf(slot.coach))}});
    }
    if (!standing.isEmpty()) {
        put(object, "standing", standing);
    }
    return object;
}

JsonResult<Closure> readClosure(const QJsonValue& value, const std::string& path, const CoachNames& coaches)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"first", "last", "from", "to", "coach", "station", "units", "why"});
    Closure closure;
    closure.first = dayAt(reader, "first");
    closure.last = optionalDayAt(reader, "last").value_or(closure.first);
    closure.fromMinute = reader.has("from") ? minuteAt(reader, "from") : closure.fromMinute;
    closure.toMinute = reader.has("to") ? minuteAt(reader, "to") : closure.toMinute;
    if (reader.has("coach")) {
        closure.coach = coachAt(reader, coaches);
    }
    if (reader.has("station")) {
        closure.station = wordAt(reader, "station", lifts::stationOf, "floor, rack, bench, machine, pull_up_bar or lane");
        closure.units = reader.wholeNumber("units", 0, kMostStationUnits);
    }
    closure.why = reader.has("why") ? labelAt(reader, "why") : std::string();
    return checked(reader, std::move(closure));
}

QJsonObject toJson(const Closure& closure, const CoachNames& coaches)
{
    QJsonObject object;
    put(object, "first", textOf(closure.first.toString()));
    if (closure.last != closure.first) {
        put(object, "last", textOf(closure.last.toString()));
    }
    if (closure.fromMinute != 0) {
        put(object, "from", textOfMinute(closure.fromMinute));
    }
    if (closure.toMinute != week::kDayMinutes) {
        put(object, "to", textOfMinute(closure.toMinute));
    }
    if (!closure.coach.isNone()) {
        put(object, "coach", textOf(coaches.textOf(closure.coach)));
    }
    if (closure.station) {
        put(object, "station", textOf(lifts::keyOf(*closure.station)));
        put(object, "units", closure.units);
    }
    if (!closure.why.empty()) {
        put(object, "why", textOf(closure.why));
    }
    return object;
}

JsonResult<week::BookingPlace> readBookingPlace(const QJsonValue& value, const std::string& path, const CoachNames& coaches)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"coach", "date", "at", "minutes", "place", "places", "locked"});
    week::BookingPlace place;
    place.coach = coachAt(reader, coaches);
    place.date = dayAt(reader, "date");
    place.startMinute = wordAt(reader, "at", sessions::parseClock, "a time, HH:MM");
    place.minutes = reader.wholeNumber("minutes", 5, 480);
    place.place = reader.optionalText("place").value_or(std::string());
    place.placeCapacity = reader.wholeNumber("places", 1, 100);
    place.isLocked = reader.flag("locked", false);
    return resultOf(reader, std::move(place));
}

QJsonObject toJson(const week::BookingPlace& place, const CoachNames& coaches)
{
    QJsonObject object;
    put(object, "coach", textOf(coaches.textOf(place.coach)));
    put(object, "date", textOf(place.date.toString()));
    put(object, "at", textOf(sessions::clockText(place.startMinute)));
    put(object, "minutes", place.minutes);
    put(object, "place", textOf(place.place));
    put(object, "places", place.placeCapacity);
    put(object, "locked", place.isLocked);
    return object;
}

}  // namespace chalk::exchange
