#include "core/exchange/rotation_json.h"

#include "core/exchange/json_writing.h"
#include "core/exchange/studio_fields.h"

#include <QJsonArray>

namespace chalk::exchange {

namespace {

using planning::ClientRotation;
using planning::LiftTiming;
using planning::RotationClient;
using planning::RotationLift;
using planning::RotationRequest;
using planning::RotationStation;
using planning::RotationTurn;

RotationStation rotationStationOf(ObjectReader& reader)
{
    reader.allowOnly({"key", "units"});
    RotationStation station;
    station.key = keyAt(reader, "key");
    station.units = reader.optionalWholeNumber("units", 1, 20).value_or(station.units);
    return station;
}

LiftTiming liftTimingOf(ObjectReader& reader)
{
    LiftTiming timing;
    timing.sets = reader.wholeNumber("sets", 1, 12);
    timing.workSeconds = reader.wholeNumber("work_seconds", 5, 600);
    timing.restSeconds = reader.optionalWholeNumber("rest_seconds", 0, 900).value_or(0);
    timing.setUpSeconds = reader.optionalWholeNumber("set_up_seconds", 0, 900).value_or(0);
    return timing;
}

RotationLift rotationLiftOf(ObjectReader& reader)
{
    reader.allowOnly({"name", "pattern", "station", "block", "sets", "work_seconds", "rest_seconds", "set_up_seconds"});
    RotationLift lift;
    lift.name = labelAt(reader, "name");
    lift.pattern = wordAt(reader, "pattern", lifts::patternOf, "one of the eight patterns");
    lift.station = reader.has("station") ? labelAt(reader, "station") : std::string();
    lift.block = reader.optionalWholeNumber("block", 0, 9).value_or(0);
    lift.timing = liftTimingOf(reader);
    return lift;
}

RotationClient rotationClientOf(ObjectReader& reader)
{
    reader.allowOnly({"name", "lifts"});
    RotationClient client;
    client.name = labelAt(reader, "name");
    eachOf(reader, "lifts", [&client](ObjectReader& item) { client.lifts.push_back(rotationLiftOf(item)); });
    return client;
}

void putUnlessZero(QJsonObject& object, const char* field, int value)
{
    if (value != 0) {
        put(object, field, value);
    }
}

QJsonObject rotationLiftJson(const RotationLift& lift)
{
    QJsonObject object;
    put(object, "name", textOf(lift.name));
    put(object, "pattern", textOf(keyOf(lift.pattern)));
    if (!lift.station.empty()) {
        put(object, "station", textOf(lift.station));
    }
    putUnlessZero(object, "block", lift.block);
    put(object, "sets", lift.timing.sets);
    put(object, "work_seconds", lift.timing.workSeconds);
    putUnlessZero(object, "rest_seconds", lift.timing.restSeconds);
    putUnlessZero(object, "set_up_seconds", lift.timing.setUpSeconds);
    return object;
}

QJsonObject turnJson(const RotationTurn& turn, const RotationLift& lift)
{
    QJsonObject object;
    put(object, "lift", static_cast<int>(turn.lift));
    put(object, "name", textOf(lift.name));
    put(object, "begin_seconds", turn.beginSecond);
    put(object, "end_seconds", turn.endSecond);
    put(object, "waited_seconds", turn.waitedSeconds);
    put(object, "station", turn.unit ? QJsonValue(textOf(lift.station)) : QJsonValue(QJsonValue::Null));
    put(object, "unit", turn.unit ? QJsonValue(*turn.unit + 1) : QJsonValue(QJsonValue::Null));
    return object;
}

QJsonObject clientRotationJson(const ClientRotation& rotation, const RotationClient& client)
{
    QJsonArray turns;
    for (const RotationTurn& turn : rotation.turns) {
        turns.append(turnJson(turn, client.lifts.at(turn.lift)));
    }
    QJsonObject object;
    put(object, "name", textOf(client.name));
    put(object, "turns", turns);
    put(object, "waited_seconds", rotation.waitedSeconds());
    put(object, "end_seconds", rotation.endSecond());
    put(object, "pattern_repeated", rotation.isPatternRepeated);
    return object;
}

}  // namespace

JsonResult<RotationRequest> readRotationRequest(const QJsonValue& value)
{
    ObjectReader reader(value, {});
    reader.allowOnly({"stations", "clients"});
    RotationRequest request;
    if (reader.has("stations")) {
        eachOf(reader, "stations", [&request](ObjectReader& item) { request.stations.push_back(rotationStationOf(item)); });
    }
    eachOf(reader, "clients", [&request](ObjectReader& item) { request.clients.push_back(rotationClientOf(item)); });
    if (reader.isSound()) {
        if (const auto fault = planning::faultOf(request)) {
            reader.take({fault->field, fault->reason});
        }
    }
    return resultOf(reader, std::move(request));
}

QJsonObject toJson(const RotationRequest& request)
{
    QJsonArray stations;
    for (const RotationStation& station : request.stations) {
        QJsonObject object;
        put(object, "key", textOf(station.key));
        put(object, "units", station.units);
        stations.append(object);
    }
    QJsonArray clients;
    for (const RotationClient& client : request.clients) {
        QJsonArray lifts;
        for (const RotationLift& lift : client.lifts) {
            lifts.append(rotationLiftJson(lift));
        }
        QJsonObject object;
        put(object, "name", textOf(client.name));
        put(object, "lifts", lifts);
        clients.append(object);
    }
    QJsonObject object;
    if (!stations.isEmpty()) {
        put(object, "stations", stations);
    }
    put(object, "clients", clients);
    return object;
}

QJsonObject toJson(const planning::Rotation& rotation, const RotationRequest& request)
{
    QJsonArray clients;
    for (std::size_t i = 0; i < rotation.clients.size(); ++i) {
        clients.append(clientRotationJson(rotation.clients[i], request.clients.at(i)));
    }
    QJsonObject object;
    put(object, "clients", clients);
    put(object, "waited_seconds", rotation.waitedSeconds());
    put(object, "end_seconds", rotation.endSecond());
    put(object, "proved", rotation.isProved);
    return object;
}

}  // namespace chalk::exchange
