#include "core/exchange/rotation_json.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <map>

namespace chalk::exchange {

namespace {

using planning::Rotation;
using planning::RotationClient;
using planning::RotationLift;
using planning::RotationRequest;
using planning::RotationStation;

/// A request with one station; `lift` is what the only lift of the only client has.
QByteArray rotationRequestWith(const QByteArray& lift)
{
    return R"({"stations": [{"key": "rack", "units": 2}], "clients": [{"name": "Ada", "lifts": [{)" + lift + "}]}]}";
}

JsonResult<RotationRequest> rotationRequestFrom(const QByteArray& text)
{
    return parseJson(text).and_then(readRotationRequest);
}

/// `place: reason`; `none` where nothing is wrong.
std::string faultOfRotation(const QByteArray& text)
{
    const auto read = rotationRequestFrom(text);
    return read ? "none" : read.error().field + ": " + read.error().reason;
}

/// A sound lift with one field put in or, where the value is empty, taken out.
QByteArray rotationLiftWith(const char* field, const QByteArray& value)
{
    std::map<QByteArray, QByteArray> fields{{"name", "\"Back squat\""}, {"pattern", "\"squat\""}, {"station", "\"rack\""}, {"block", "1"},
                                            {"sets", "3"}, {"work_seconds", "40"}, {"rest_seconds", "90"}, {"set_up_seconds", "60"}};
    fields[field] = value;
    QByteArrayList parts;
    for (const auto& [name, content] : fields) {
        if (!content.isEmpty()) {
            parts.append('"' + name + "\": " + content);
        }
    }
    return rotationRequestWith(parts.join(", "));
}

rc::Gen<RotationLift> anyRotationLift(const std::vector<RotationStation>& stations)
{
    return rc::gen::exec([stations] {
        RotationLift lift;
        lift.name = *rc::gen::element<std::string>("Back squat", "Row", "Kreuzheben, fünf");
        lift.pattern = *rc::gen::elementOf(std::vector<lifts::Pattern>(lifts::kPatterns.begin(), lifts::kPatterns.end()));
        if (!stations.empty() && *rc::gen::arbitrary<bool>()) {
            lift.station = (*rc::gen::elementOf(stations)).key;
        }
        lift.block = *rc::gen::inRange(0, 10);
        lift.timing = {*rc::gen::inRange(1, 13), *rc::gen::inRange(5, 601), *rc::gen::inRange(0, 901), *rc::gen::inRange(0, 901)};
        return lift;
    });
}

rc::Gen<RotationRequest> anyRotationRequest()
{
    return rc::gen::exec([] {
        RotationRequest request;
        const int stations = *rc::gen::inRange(0, 13);
        for (int i = 0; i < stations; ++i) {
            request.stations.push_back({"place_" + std::to_string(i), *rc::gen::inRange(1, 21)});
        }
        const int clients = *rc::gen::inRange(1, 7);
        for (int i = 0; i < clients; ++i) {
            const auto count = *rc::gen::inRange<std::size_t>(1, 9);
            auto lifts = *rc::gen::container<std::vector<RotationLift>>(count, anyRotationLift(request.stations));
            request.clients.push_back({"client " + std::to_string(i), std::move(lifts)});
        }
        return request;
    });
}

/// A list of `count` times the same.
QByteArray listOfEqual(int count, const QByteArray& item)
{
    return '[' + QByteArrayList(count, item).join(", ") + ']';
}

constexpr const char* kRowing = R"({"name": "Row", "pattern": "horizontal_pull", "sets": 1, "work_seconds": 60})";

QByteArray rotationClientWith(const QByteArray& lifts)
{
    return R"({"name": "Ada", "lifts": )" + lifts + '}';
}

}  // namespace

RC_GTEST_PROP(RotationJson, ReadsBackWhatItWrites, ())
{
    const RotationRequest request = *anyRotationRequest();
    const auto read = rotationRequestFrom(QJsonDocument(toJson(request)).toJson());
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == request);
}

TEST(RotationJson, ReadsEveryField)
{
    const auto read = rotationRequestFrom(rotationLiftWith("name", "\"Back squat\""));
    ASSERT_TRUE(read);
    const RotationLift lift{"Back squat", lifts::Pattern::Squat, "rack", 1, {3, 40, 90, 60}};
    EXPECT_EQ(*read, (RotationRequest{{{"rack", 2}}, {{"Ada", {lift}}}}));
}

TEST(RotationJson, WhatIsLeftOutIsNoneOfItAndOneUnit)
{
    const QByteArray clients = R"("clients": )" + listOfEqual(1, rotationClientWith(listOfEqual(1, kRowing)));
    const auto read = rotationRequestFrom('{' + clients + '}');
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, (RotationRequest{{}, {{"Ada", {{"Row", lifts::Pattern::HorizontalPull, {}, 0, {1, 60, 0, 0}}}}}}));
    const auto withStation = rotationRequestFrom(R"({"stations": [{"key": "rack"}], )" + clients + '}');
    ASSERT_TRUE(withStation);
    EXPECT_EQ(withStation->stations.front().units, 1);
}

TEST(RotationJson, FaultsOfALiftNameTheirPlace)
{
    struct Case {
        const char* field;
        QByteArray value;  ///< empty where the field is missing
        std::string reason;
    };
    for (const Case& one : std::initializer_list<Case>{{"name", "", "is required"},
                                                       {"name", "\" \"", "must not be empty"},
                                                       {"name", "7", "must be a text"},
                                                       {"name", R"("Back\nsquat")", "must be one line"},
                                                       {"pattern", "", "is required"},
                                                       {"pattern", "\"press\"", "must be one of the eight patterns"},
                                                       {"station", "\"\"", "must not be empty"},
                                                       {"station", "null", "must be a text"},
                                                       {"station", "\"yard\"", "yard is not among the stations"},
                                                       {"block", "0.5", "must be a whole number"},
                                                       {"sets", "", "is required"},
                                                       {"sets", "\"3\"", "must be a number"},
                                                       {"work_seconds", "", "is required"},
                                                       {"work_seconds", "40.5", "must be a whole number"},
                                                       {"rest_seconds", "null", "must be a number"},
                                                       {"set_up_seconds", "true", "must be a number"},
                                                       {"reps", "8", "is not a field that is known here"}}) {
        EXPECT_EQ(faultOfRotation(rotationLiftWith(one.field, one.value)), std::string("clients[0].lifts[0].") + one.field + ": " + one.reason);
    }
}

TEST(RotationJson, RangesOfALiftAreThoseOfTheDomain)
{
    struct Range {
        const char* field;
        int least;
        int most;
        int& (*figure)(RotationLift&);
    };
    const std::array ranges{Range{"block", 0, 9, [](RotationLift& lift) -> int& { return lift.block; }},
                            Range{"sets", 1, 12, [](RotationLift& lift) -> int& { return lift.timing.sets; }},
                            Range{"work_seconds", 5, 600, [](RotationLift& lift) -> int& { return lift.timing.workSeconds; }},
                            Range{"rest_seconds", 0, 900, [](RotationLift& lift) -> int& { return lift.timing.restSeconds; }},
                            Range{"set_up_seconds", 0, 900, [](RotationLift& lift) -> int& { return lift.timing.setUpSeconds; }}};
    for (const Range& range : ranges) {
        SCOPED_TRACE(range.field);
        for (const int value : {range.least, range.most}) {
            EXPECT_EQ(faultOfRotation(rotationLiftWith(range.field, QByteArray::number(value))), "none");
        }
        for (const int value : {range.least - 1, range.most + 1}) {
            RotationRequest request{{}, {{"Ada", {RotationLift{"Back squat", lifts::Pattern::Squat, {}, 0, {}}}}}};
            range.figure(request.clients[0].lifts[0]) = value;
            const auto fault = planning::faultOf(request);
            ASSERT_TRUE(fault);
            EXPECT_EQ(faultOfRotation(rotationLiftWith(range.field, QByteArray::number(value))), fault->field + ": " + fault->reason);
        }
    }
}

TEST(RotationJson, FaultsOfClientsNameTheirPlace)
{
    const auto fault = [](const QByteArray& clients) { return faultOfRotation(R"({"clients": )" + clients + '}'); };
    const QByteArray sound = rotationClientWith(listOfEqual(1, kRowing));
    EXPECT_EQ(fault(listOfEqual(6, sound)), "none");
    EXPECT_EQ(fault(listOfEqual(1, rotationClientWith(listOfEqual(8, kRowing)))), "none");
    EXPECT_EQ(fault("[]"), "clients: must be 1 to 6");
    EXPECT_EQ(fault(listOfEqual(7, sound)), "clients: must be 1 to 6");
    EXPECT_EQ(fault("{}"), "clients: must be a list");
    EXPECT_EQ(fault("[" + sound + ", 3]"), "clients[1]: must be an object");
    EXPECT_EQ(fault(R"([{"lifts": []}])"), "clients[0].name: is required");
    EXPECT_EQ(fault(R"([{"name": "Ada"}])"), "clients[0].lifts: is required");
    EXPECT_EQ(fault(R"([{"name": "Ada", "lifts": [], "age": 40}])"), "clients[0].age: is not a field that is known here");
    EXPECT_EQ(fault(listOfEqual(1, rotationClientWith("[]"))), "clients[0].lifts: must be 1 to 8");
    EXPECT_EQ(fault(listOfEqual(1, rotationClientWith(listOfEqual(9, kRowing)))), "clients[0].lifts: must be 1 to 8");
    EXPECT_EQ(fault("[" + sound + ", " + rotationClientWith(QByteArray("[") + kRowing + ", []]") + "]"), "clients[1].lifts[1]: must be an object");
}

TEST(RotationJson, FaultsOfStationsNameTheirPlace)
{
    const QByteArray clients = listOfEqual(1, rotationClientWith(listOfEqual(1, kRowing)));
    const auto fault = [&clients](const QByteArray& stations) { return faultOfRotation(R"({"stations": )" + stations + R"(, "clients": )" + clients + '}'); };
    EXPECT_EQ(fault("[]"), "none");
    EXPECT_EQ(fault(R"([{"key": "rack", "units": 1}, {"key": "bench", "units": 20}])"), "none");
    EXPECT_EQ(fault("7"), "stations: must be a list");
    EXPECT_EQ(fault("[7]"), "stations[0]: must be an object");
    EXPECT_EQ(fault("[{}]"), "stations[0].key: is required");
    EXPECT_EQ(fault(R"([{"key": "Rack 1"}])"), "stations[0].key: must be small letters, digits and underscores");
    EXPECT_EQ(fault(R"([{"key": "rack"}, {"key": "rack"}])"), "stations[1].key: rack is there twice");
    EXPECT_EQ(fault(R"([{"key": "rack", "units": 0}])"), "stations[0].units: must be 1 to 20");
    EXPECT_EQ(fault(R"([{"key": "rack", "units": 21}])"), "stations[0].units: must be 1 to 20");
    EXPECT_EQ(fault(R"([{"key": "rack", "count": 1}])"), "stations[0].count: is not a field that is known here");
    QByteArrayList many;
    for (int i = 0; i < 13; ++i) {
        many.append(R"({"key": "place_)" + QByteArray::number(i) + "\"}");
    }
    EXPECT_EQ(fault('[' + many.join(", ") + ']'), "stations: must be at most 12");
}

TEST(RotationJson, FaultsOfTheWholeNameTheirPlace)
{
    EXPECT_EQ(faultOfRotation("{}"), "clients: is required");
    EXPECT_EQ(faultOfRotation("[]"), "input: must be an object");
    EXPECT_EQ(faultOfRotation(R"({"clients": [], "slot": 60})"), "slot: is not a field that is known here");
}

TEST(RotationJson, WritesWhoDoesWhatWhen)
{
    const RotationLift squat{"Back squat", lifts::Pattern::Squat, "rack", 0, {1, 60, 240, 0}};
    const RotationLift row{"Row", lifts::Pattern::HorizontalPull, {}, 1, {1, 60, 60, 0}};
    const RotationRequest request{{{"rack", 1}}, {{"Ada", {row, squat}}, {"Ben", {squat}}}};
    const Rotation rotation{{{{{1, 0, 300, 0, 0}, {0, 300, 420, 0, {}}}, false}, {{{0, 300, 600, 300, 0}}, true}}, true, 12};
    const auto expected = QJsonDocument::fromJson(R"({
        "clients": [
            {"name": "Ada", "waited_seconds": 0, "end_seconds": 420, "pattern_repeated": false, "turns": [
                {"lift": 1, "name": "Back squat", "station": "rack", "unit": 1, "begin_seconds": 0, "end_seconds": 300, "waited_seconds": 0},
                {"lift": 0, "name": "Row", "station": null, "unit": null, "begin_seconds": 300, "end_seconds": 420, "waited_seconds": 0}]},
            {"name": "Ben", "waited_seconds": 300, "end_seconds": 600, "pattern_repeated": true, "turns": [
                {"lift": 0, "name": "Back squat", "station": "rack", "unit": 1, "begin_seconds": 300, "end_seconds": 600, "waited_seconds": 300}]}],
        "waited_seconds": 300, "end_seconds": 600, "proved": true})");
    ASSERT_TRUE(expected.isObject());
    EXPECT_EQ(toJson(rotation, request), expected.object());
}

}  // namespace chalk::exchange
