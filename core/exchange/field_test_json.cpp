#include "core/exchange/field_test_json.h"

#include "core/exchange/json_writing.h"
#include "core/exchange/word_reading.h"

#include <QJsonArray>

#include <fmt/core.h>

#include <algorithm>

namespace chalk::exchange {

namespace {

using screens::FieldTest;
using screens::NormRange;

constexpr int kMostTestReps = 1000;
constexpr int kMostTestMs = 3'600'000;
constexpr int kMostTestMm = 2000;
constexpr int kMostTestAge = 120;

FieldTest readChairStand(ObjectReader& reader)
{
    reader.allowOnly({"test", "age", "sex", "stands", "arms_used"});
    return screens::ChairStand{base::Reps(reader.wholeNumber("stands", 0, kMostTestReps)), reader.flag("arms_used", false)};
}

FieldTest readPushUps(ObjectReader& reader)
{
    reader.allowOnly({"test", "age", "sex", "reps", "form"});
    const base::Reps reps(reader.wholeNumber("reps", 0, kMostTestReps));
    return screens::PushUps{reps, enumAt<screens::PushUpForm>(reader, "form", screens::pushUpFormOf)};
}

int heldMsIn(ObjectReader& reader)
{
    reader.allowOnly({"test", "age", "sex", "seconds"});
    return reader.decimal("seconds", 3, 0, kMostTestMs);
}

FieldTest readStance(ObjectReader& reader)
{
    return screens::SingleLegStance{heldMsIn(reader)};
}

FieldTest readPlank(ObjectReader& reader)
{
    return screens::Plank{heldMsIn(reader)};
}

FieldTest readLunge(ObjectReader& reader)
{
    reader.allowOnly({"test", "age", "sex", "left_cm", "right_cm"});
    return screens::WeightBearingLunge{reader.decimal("left_cm", 1, 0, kMostTestMm), reader.decimal("right_cm", 1, 0, kMostTestMm)};
}

FieldTest readReach(ObjectReader& reader)
{
    reader.allowOnly({"test", "age", "sex", "reach_cm", "zero_cm"});
    return screens::SitAndReach{reader.decimal("reach_cm", 1, -kMostTestMm, kMostTestMm), reader.decimal("zero_cm", 1, 0, kMostTestMm)};
}

struct TestReader {
    FieldTest example;
    FieldTest (*read)(ObjectReader&);
};

FieldTest readByName(ObjectReader& reader)
{
    const TestReader readers[] = {{screens::ChairStand{}, readChairStand}, {screens::PushUps{}, readPushUps},
                                  {screens::SingleLegStance{}, readStance}, {screens::Plank{}, readPlank},
                                  {screens::WeightBearingLunge{}, readLunge}, {screens::SitAndReach{}, readReach}};
    const std::string name = reader.text("test");
    for (const TestReader& one : readers) {
        if (keyOf(one.example) == name) {
            return one.read(reader);
        }
    }
    reader.fail("test", "is no test that is known here");
    return {};
}

FieldTest readTestOfDay(const QJsonValue& value, const std::string& path, ObjectReader& outer)
{
    ObjectReader reader(value, path);
    const FieldTest test = readByName(reader);
    for (const char* field : {"age", "sex"}) {
        if (reader.isSound() && reader.has(field)) {
            reader.fail(field, "is the client's, not the result's");
        }
    }
    if (reader.fault()) {
        outer.take(*reader.fault());
    }
    return test;
}

/// Writes the fields that the readers above read.
struct TestWriter {
    QJsonObject& object;

    void operator()(const screens::ChairStand& test) const
    {
        put(object, "stands", test.stands.value());
        put(object, "arms_used", test.areArmsUsed);
    }
    void operator()(const screens::PushUps& test) const
    {
        put(object, "reps", test.reps.value());
        put(object, "form", textOf(keyOf(test.form)));
    }
    void operator()(const screens::SingleLegStance& test) const { put(object, "seconds", test.heldMs / 1000.0); }
    void operator()(const screens::Plank& test) const { put(object, "seconds", test.heldMs / 1000.0); }
    void operator()(const screens::WeightBearingLunge& test) const
    {
        put(object, "left_cm", test.leftMm / 10.0);
        put(object, "right_cm", test.rightMm / 10.0);
    }
    void operator()(const screens::SitAndReach& test) const
    {
        put(object, "reach_cm", test.reachMm / 10.0);
        put(object, "zero_cm", test.zeroMm / 10.0);
    }
};

QJsonValue toJson(const NormRange& range, int units)
{
    if (!range.from && !range.to) {
        return QJsonValue::Null;
    }
    const auto shown = [units](const std::optional<int>& value) { return value ? QJsonValue(static_cast<double>(*value) / units) : QJsonValue(QJsonValue::Null); };
    return QJsonObject{{QStringLiteral("from"), shown(range.from)}, {QStringLiteral("to"), shown(range.to)}};
}

QString unitKeyOf(int units)
{
    return units == 1 ? QStringLiteral("reps") : units == 10 ? QStringLiteral("cm") : QStringLiteral("s");
}

}  // namespace

JsonResult<FieldTestResult> readFieldTest(const QJsonValue& value)
{
    ObjectReader reader(value, {});
    FieldTestResult result;
    result.test = readByName(reader);
    result.person.age = reader.wholeNumber("age", 0, kMostTestAge);
    if (reader.has("sex")) {
        result.person.sex = enumAt<clients::NormSex>(reader, "sex", [](std::string_view key) { return clients::normSexOf(key); });
    }
    return resultOf(reader, std::move(result));
}

JsonResult<screens::FieldTestDay> readFieldTestDay(const QJsonValue& value, const std::string& path)
{
    ObjectReader reader(value, path);
    reader.allowOnly({"date", "tests"});
    screens::FieldTestDay day;
    if (const auto date = base::Date::parse(reader.text("date"))) {
        day.date = *date;
    } else {
        reader.fail("date", "is no day");
    }
    const QJsonArray tests = reader.array("tests");
    for (qsizetype i = 0; i < tests.size(); ++i) {
        const std::string place = fmt::format("{}[{}]", reader.pathOf("tests"), i);
        const FieldTest test = readTestOfDay(tests[i], place, reader);
        if (std::any_of(day.tests.begin(), day.tests.end(), [&test](const FieldTest& other) { return other.index() == test.index(); })) {
            reader.take({place + ".test", "is there twice"});
        }
        day.tests.push_back(test);
    }
    return resultOf(reader, std::move(day));
}

QJsonObject toJson(const screens::FieldTestDay& day)
{
    QJsonArray tests;
    for (const FieldTest& test : day.tests) {
        QJsonObject object{{QStringLiteral("test"), textOf(keyOf(test))}};
        std::visit(TestWriter{object}, test);
        tests.append(object);
    }
    return {{QStringLiteral("date"), textOf(day.date.toString())}, {QStringLiteral("tests"), tests}};
}

QJsonObject toJson(const FieldTest& test, const screens::NormResult& result)
{
    const int units = unitsShownOf(test);
    QJsonArray remarks;
    for (const screens::NormRemark remark : result.remarks) {
        remarks.append(textOf(keyOf(remark)));
    }
    return {{QStringLiteral("test"), textOf(keyOf(test))},
            {QStringLiteral("class"), textOf(keyOf(result.normClass))},
            {QStringLiteral("has_class"), screens::isClass(result.normClass)},
            {QStringLiteral("value"), static_cast<double>(result.value) / units},
            {QStringLiteral("unit"), unitKeyOf(units)},
            {QStringLiteral("range"), toJson(result.range, units)},
            {QStringLiteral("usual"), toJson(result.usual, units)},
            {QStringLiteral("ages"), toJson(result.ages, 1)},
            {QStringLiteral("source"), textOf(result.source)},
            {QStringLiteral("remarks"), remarks}};
}

int unitsShownOf(const FieldTest& test)
{
    if (std::holds_alternative<screens::SingleLegStance>(test) || std::holds_alternative<screens::Plank>(test)) {
        return 1000;
    }
    return std::holds_alternative<screens::WeightBearingLunge>(test) || std::holds_alternative<screens::SitAndReach>(test) ? 10 : 1;
}

}  // namespace chalk::exchange
